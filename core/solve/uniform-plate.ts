import { refusal, requirePositive } from '../refusal.ts';

/** A flat rectangular plate under uniform pressure: a along x, b along y, t thick, in m; E and q in Pa.
 *  Deflections are positive along q; a negative q turns all signs. */
export interface UniformPlate {
  readonly a: number;
  readonly b: number;
  readonly t: number;
  readonly E: number;
  readonly nu: number;
  readonly q: number;
}

/** Longest side ratio that the plate kernels take: beyond it the plate is a strip, and strip formulas are exact. */
export const longestRatio = 50;

/** Refuses a plate that thin plate theory cannot take: by name, with the reason. */
export function requirePlate({ a, b, t, E, nu, q }: UniformPlate): void {
  requirePositive({ a, b, t, E });
  if (!(nu >= 0 && nu < 0.5))
    throw refusal({
      what: `nu must be at least 0 and below 0.5, it is ${nu}`,
      where: { field: 'nu' },
      mend: "Give Poisson's ratio of the material, 0.3 for steel",
    });
  if (!Number.isFinite(q))
    throw refusal({
      what: `q must be a finite pressure, it is ${q}`,
      where: { field: 'q' },
      mend: 'Give the pressure in Pa',
    });
  if (Math.max(a / b, b / a) > longestRatio)
    throw refusal({
      what: `the plate is ${Math.max(a / b, b / a).toPrecision(3)} times as long as wide; plate results stop at ${longestRatio}`,
      where: { field: a > b ? 'a' : 'b' },
      mend: 'Check the sides, or judge it as a strip of unit width',
    });
}

/** Bending stiffness of a plate per unit width, D = E t³ / (12 (1 - ν²)), in N·m. E in Pa, t in m. */
export const plateRigidity = ({ E, t, nu }: Pick<UniformPlate, 'E' | 't' | 'nu'>): number =>
  (E * t ** 3) / (12 * (1 - nu ** 2));
