import type { HeaveSystem } from './heave-system.ts';

/**
 * Undamped natural periods in heave, s, longest first:  det(K − ω² M) = 0  of the two bodies, or √(k/m) of the plate alone.
 * A body that nothing brings back has none.
 */
export function naturalPeriods({ float, plate, link }: HeaveSystem): readonly number[] {
  const k = link.stiffness;
  if (!float) return k > 0 ? [2 * Math.PI * Math.sqrt(plate.mass / k)] : [];
  const { mass: m1, stiffness: c } = float;
  const m2 = plate.mass;
  const b = m2 * (c + k) + m1 * k;
  const root = Math.sqrt(b * b - 4 * m1 * m2 * c * k);
  return [(b - root) / (2 * m1 * m2), (b + root) / (2 * m1 * m2)]
    .filter((square) => square > 1e-12 * ((c + k) / m1))
    .map((square) => (2 * Math.PI) / Math.sqrt(square));
}
