import { refusal } from '../../refusal.ts';
import type { ShellShape } from './shell-shape.ts';

/** Cosine and sine of the angle from an element's own x axis to the direction of a panel's x axis, laid on the element. */
export function panelAxis(
  { axes }: ShellShape,
  direction: readonly [number, number, number],
): readonly [number, number] {
  const along = (r: number): number =>
    axes[3 * r]! * direction[0] + axes[3 * r + 1]! * direction[1] + axes[3 * r + 2]! * direction[2];
  const [c, s] = [along(0), along(1)];
  const length = Math.hypot(c, s);
  if (!(length > 1e-6 * Math.hypot(...direction)))
    throw refusal({
      what: 'A shell’s x direction stands square to it',
      mend: 'Give a direction that lies along the plate',
    });
  return [c / length, s / length];
}

/** Components x, y, xy of a symmetric tensor in axes turned by the angle with cosine c and sine s. */
export const turned = (x: number, y: number, xy: number, c: number, s: number): readonly [number, number, number] => [
  c * c * x + s * s * y + 2 * c * s * xy,
  s * s * x + c * c * y - 2 * c * s * xy,
  c * s * (y - x) + (c * c - s * s) * xy,
];
