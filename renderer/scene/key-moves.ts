import { orbited, panned, zoomed, type View, type ViewName } from './camera.ts';
import type { Size } from './camera.ts';

/** px a key press */
const step = 40;

/** Keys while the picture has the focus, as the help lists them. */
export function viewAfterKey(key: string, shift: boolean, view: View, size: Size): View | null {
  const way = { ArrowLeft: [1, 0], ArrowRight: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[key];
  if (way) {
    const [dx, dy] = [way[0]! * step, way[1]! * step];
    return shift ? panned(view, dx, dy) : orbited(view, -dx, -dy);
  }
  const middle = [size.width / 2, size.height / 2] as const;
  if (key === '+' || key === '=') return zoomed(view, 1.2, ...middle, size);
  if (key === '-') return zoomed(view, 1 / 1.2, ...middle, size);
  return null;
}

/** Letter of each named view, while the picture has the focus. */
export const viewKeys: Readonly<Record<string, ViewName>> = { p: 'plan', s: 'side', e: 'end', o: 'oblique' };
