import { requirePositive } from '../refusal.ts';
import type { SnCurve } from './sn-curve.ts';

/** What a stress range is multiplied by for a part of thickness t, m: (t / t_ref)^k beyond the curve's reference
 *  thickness, 1 below. Refuses a thickness that is not positive. Source: DNV-RP-C203, 2.4.3; EN 1993-1-9, Table 8.3. */
export function thicknessFactor({ t_ref, k }: Pick<SnCurve, 't_ref' | 'k'>, t: number): number {
  requirePositive({ thickness: t });
  return t > t_ref ? (t / t_ref) ** k : 1;
}
