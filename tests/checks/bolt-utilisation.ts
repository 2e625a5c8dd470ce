import { expect } from 'vitest';
import type { Check } from '../../core/checks/check.ts';
import type { Safety } from '../../core/source.ts';
import { valuesGiven } from './bolt-values.ts';

/** What the second opinion of a bolt judges: symbols of the force, of the capacity, and of the bounds of the force. */
interface Symbols {
  readonly force: string;
  readonly capacity: string;
  readonly least: string;
  readonly most: string;
}

export const ofTension = { force: 'F_t', least: 'F_low', most: 'F_high' } as const;
export const ofShear = { force: 'F_v', least: 'F_least', most: 'F_most' } as const;

/** Holds the utilisation to the bounds of force and capacity, by hand: whichever lies nearer counts. */
export function expectUtilisationBounds(
  check: Check,
  { force, capacity, least, most }: Symbols,
  safety: Safety = 'partial factors',
): void {
  expect([check.second.of, check.second.low, check.second.high]).toEqual(['u', 'u_low', 'u_high']);
  const at = (F: number, R: number, [l, h]: readonly [number, number], [rl, rh]: readonly [number, number]) => {
    const given = { [force]: F, [capacity]: R, [least]: l, [most]: h, R_low: rl, R_high: rh };
    const { u, u_low, u_high } = valuesGiven(check, safety, given);
    return [u, u_low, u_high];
  };
  // The force decides below and above, then the capacity.
  expect(at(10, 20, [8, 11], [15, 40])).toEqual([0.5, 0.4, 0.55]);
  expect(at(10, 20, [2, 16], [16, 25])).toEqual([0.5, 0.4, 0.625]);
  // Nothing carries the force.
  expect(at(10, 0, [8, 11], [15, 40])).toEqual([0, 0, 0]);
  expect(at(10, -5, [8, 11], [15, 40])).toEqual([0, 0, 0]);
}

/** That the second opinion on the capacity holds it between R_low and R_high (to rounding), and how wide it is at the most. */
export function expectBetween(values: Readonly<Record<string, number>>, capacity: string): void {
  const R = values[capacity]!;
  expect(R).toBeGreaterThanOrEqual(values.R_low! * (1 - 1e-9));
  expect(R).toBeLessThanOrEqual(values.R_high! * (1 + 1e-9));
}
