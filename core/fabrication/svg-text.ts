import type { Cutout } from '../geometry/geometry.ts';
import { slotCorners } from '../geometry/slot.ts';
import type { FlatPattern } from './flat-pattern.ts';

/**
 * A flat pattern as SVG at 1:1: one unit is a millimetre, datum corner at lower left, seen from above.
 * Groups are named as the layers of the DXF. Source: SVG 2, W3C.
 */
export function svgText({ contour, holes, width, height }: FlatPattern, mark: string): string {
  const mm = (metres: number): string => String(Number((1000 * metres).toFixed(6)));
  const up = (y: number): string => mm(height - y);
  const path = contour.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${mm(x)} ${up(y)}`).join(' ');
  /** Straight, half circle, straight, half circle; counter-clockwise as seen, y being turned over. */
  const slotPath = (hole: Cutout): string => {
    const [a, b, c, d] = slotCorners(hole).map(([x, y]) => `${mm(x)} ${up(y)}`);
    const arc = `A${mm(hole.diameter / 2)} ${mm(hole.diameter / 2)} 0 0 0`;
    return `    <path d="M${a} L${b} ${arc} ${c} L${d} ${arc} ${a} Z"/>`;
  };
  const size = Math.min(width, height) / 12;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}" fill="none" stroke="black" stroke-width="0.1">`,
    `  <title>Part ${mark}, 1:1, seen from above, kerf not taken off</title>`,
    `  <g id="outside-contour"><path d="${path} Z"/></g>`,
    '  <g id="inside-contour">',
    ...holes.map((hole) => (hole.slot ? slotPath(hole) : `    <circle cx="${mm(hole.x)}" cy="${up(hole.y)}" r="${mm(hole.diameter / 2)}"/>`)), // prettier-ignore
    '  </g>',
    `  <g id="marking"><text x="${mm(width / 2)}" y="${up(height / 2)}" font-size="${mm(size)}" text-anchor="middle" fill="black" stroke="none">${escaped(mark)}</text></g>`,
    '</svg>',
    '',
  ].join('\n');
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
