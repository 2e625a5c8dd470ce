const inherited = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'font-family',
  'font-size',
  'paint-order',
] as const;

/** A drawing of the page as a picture for the clipboard, on the sheet's ground, at twice its size on the screen. */
export function figureItem(svg: SVGSVGElement): ClipboardItem {
  return new ClipboardItem({ 'image/png': pictureOf(svg) });
}

async function pictureOf(svg: SVGSVGElement): Promise<Blob> {
  const { width, height } = svg.getBoundingClientRect();
  const copy = svg.cloneNode(true) as SVGSVGElement;
  copy.setAttribute('width', String(width * 2));
  copy.setAttribute('height', String(height * 2));
  // Alone, a drawing knows nothing of the page's styles: each shape takes its own along.
  const [from, to] = [
    [svg, ...svg.querySelectorAll('*')],
    [copy, ...copy.querySelectorAll('*')],
  ];
  from.forEach((element, n) => {
    const style = getComputedStyle(element);
    for (const name of inherited) to[n]!.setAttribute(name, style.getPropertyValue(name));
  });
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(new XMLSerializer().serializeToString(copy))}`;
  await image.decode();
  const canvas = new OffscreenCanvas(width * 2, height * 2);
  const context = canvas.getContext('2d')!;
  context.fillStyle = getComputedStyle(document.documentElement).getPropertyValue('--sheet');
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas.convertToBlob({ type: 'image/png' });
}
