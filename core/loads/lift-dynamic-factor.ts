import { requirePositive } from '../refusal.ts';
import type { Source } from '../source.ts';

export const liftDynamicFactorSource: Source = {
  document: '0027/ND Guidelines for Marine Lifting',
  edition: 'Rev 11',
  clause: '5.5.1',
};

/** Dynamic factor of a lift in air by one crane offshore, from the mass on the hook in kg:
 *    1 + 0.25 √(100/m) from 3 t to 100 t with m in t (below 3 t as at 3 t), then 1.25, 1.20, 1.15, 1.10
 *  up to 300 t, 1000 t, 2500 t and above. Refuses a mass that is not positive. Below the surface it does not hold.
 *  Source: 0027/ND Rev 11, 5.5.1. */
export function liftDynamicFactor(mass: number): number {
  requirePositive({ mass });
  const tonnes = mass / 1000;
  if (tonnes <= 100) return 1 + 0.25 * Math.sqrt(100 / (tonnes < 3 ? 3 : tonnes));
  if (tonnes <= 300) return 1.25;
  if (tonnes <= 1000) return 1.2;
  return tonnes <= 2500 ? 1.15 : 1.1;
}

/** Dynamic factor of a lift with the words that say where it is from: the stated one, or that of the mass on the hook in kg. */
export function liftDynamics(
  mass: number,
  stated: { readonly value: number; readonly source: string } | undefined,
): { readonly value: number; readonly source: string } {
  if (stated) return stated;
  const { document, edition, clause } = liftDynamicFactorSource;
  const light = mass < 3000 ? '; items below 3 t are taken as 3 t' : '';
  return {
    value: liftDynamicFactor(mass),
    source: `${document}, ${edition}, ${clause}, offshore, for ${(mass / 1000).toFixed(2)} t on the hook${light}`,
  };
}
