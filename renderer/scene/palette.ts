import { useEffect, useState, type RefObject } from 'react';
import type { Colour } from './colour-map.ts';

/** Colours of the scene, sRGB 0 to 1, from the custom properties that hold at the element. */
export interface Palette {
  readonly paper: Colour;
  readonly ink: Colour;
  readonly accent: Colour;
  readonly quiet: Colour;
  readonly fail: Colour;
  readonly tube: Colour;
  readonly panel: Colour;
  readonly bolt: Colour;
  readonly weld: Colour;
  readonly attachment: Colour;
  readonly bay: Colour;
  readonly unvalued: Colour;
  readonly water: Colour;
  readonly isDark: boolean;
}

const names = [
  'paper',
  'ink',
  'accent',
  'quiet',
  'fail',
  'tube',
  'panel',
  'bolt',
  'weld',
  'attachment',
  'bay',
  'unvalued',
  'water',
] as const;

/** Reads --scene-… of the element, which scene.css takes from the tokens. */
export function paletteOf(element: Element): Palette {
  const style = getComputedStyle(element);
  const colours = Object.fromEntries(
    names.map((name) => [name, colourOf(style.getPropertyValue(`--scene-${name}`))]),
  ) as Record<(typeof names)[number], Colour>;
  const [r, g, b] = colours.paper;
  return { ...colours, isDark: 0.2126 * r + 0.7152 * g + 0.0722 * b < 0.5 };
}

const probe = { context: null as CanvasRenderingContext2D | null };

/** Any CSS colour; a canvas turns it into numbers. */
function colourOf(css: string): Colour {
  probe.context ??= new OffscreenCanvas(1, 1).getContext('2d', {
    willReadFrequently: true,
  }) as unknown as CanvasRenderingContext2D;
  const { context } = probe;
  context.fillStyle = '#808080';
  context.fillStyle = css.trim();
  context.fillRect(0, 0, 1, 1);
  const [r = 0, g = 0, b = 0] = context.getImageData(0, 0, 1, 1).data;
  return [r / 255, g / 255, b / 255];
}

/** The palette, read again when the system turns light or dark, or an attribute of the page's root does. */
export function usePalette(element: RefObject<Element | null>): Palette | null {
  const [palette, setPalette] = useState<Palette | null>(null);
  useEffect(() => {
    const read = (): void => {
      if (element.current) setPalette(paletteOf(element.current));
    };
    read();
    const scheme = matchMedia('(prefers-color-scheme: dark)');
    const contrast = matchMedia('(prefers-contrast: more)');
    scheme.addEventListener('change', read);
    contrast.addEventListener('change', read);
    const observer = new MutationObserver(read);
    observer.observe(document.documentElement, { attributes: true });
    return () => {
      scheme.removeEventListener('change', read);
      contrast.removeEventListener('change', read);
      observer.disconnect();
    };
  }, [element]);
  return palette;
}
