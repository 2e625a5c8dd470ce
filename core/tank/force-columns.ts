import type { HarmonicMotion } from './harmonic-motion.ts';
import type { Also } from './tank-setup.ts';

/** Unknowns of the force on a driven plate, in the order of the columns. */
export type Unknown = 'inertia' | 'drag' | 'zero' | Also;

/** What the drag refers to: density (kg/m³) and area (m²). */
export interface DragReference {
  readonly density: number;
  readonly area: number;
}

/**
 * Columns of  F = inertia · z″ + drag · ½ρS z′|z′| + zero + b z′ + f sign z′ + d t + τ F′  at the readings `at` of a motion;
 * t: their times from the record's beginning, s.
 * theta: the unknowns of the turn before, which give F′ its shape (all zero in the first turn: the inertia's rate).
 */
export function forceColumns(
  unknowns: readonly Unknown[],
  motion: HarmonicMotion,
  { at, t }: { readonly at: Int32Array; readonly t: Float64Array },
  theta: Float64Array,
  { density: rho, area: S }: DragReference,
): Float64Array[] {
  const { v, a, jerk } = motion;
  const each = (value: (i: number) => number): Float64Array => eachOf(at, value);
  return unknowns.map((name) => {
    switch (name) {
      case 'inertia':
        return each((i) => a[i]!);
      case 'drag':
        return each((i) => 0.5 * rho * S * v[i]! * Math.abs(v[i]!));
      case 'zero':
        return each(() => 1);
      case 'linear damping':
        return each((i) => v[i]!);
      case 'dry friction':
        return each((i) => Math.sign(v[i]!));
      case 'force drift':
        return t;
      case 'delay':
        return theta[0] === 0
          ? each((i) => -jerk[i]!)
          : forceRate(motion, at, theta, { density: rho, area: S }).map((rate) => -rate);
    }
  });
}

/** How fast the modelled force changes, N/s: a force read τ late is F(t − τ) = F − τ F′. */
export const forceRate = (
  { v, a, jerk }: HarmonicMotion,
  at: Int32Array,
  theta: Float64Array,
  { density: rho, area: S }: DragReference,
): Float64Array => eachOf(at, (i) => theta[0]! * jerk[i]! + rho * S * theta[1]! * Math.abs(v[i]!) * a[i]!);

function eachOf(at: Int32Array, value: (i: number) => number): Float64Array {
  const all = new Float64Array(at.length);
  for (let p = 0; p < all.length; p++) all[p] = value(at[p]!);
  return all;
}
