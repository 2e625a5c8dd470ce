import { requirePositive } from '../refusal.ts';

export interface Drain {
  /** Plan area of the compartment, m². */
  readonly area: number;
  /** Open area that the liquid or gas leaves through, m². */
  readonly hole: number;
  /** Head at the start, m. */
  readonly height: number;
  /** Acceleration that drives it, m/s²: g for water through a floor; g ρ_water / ρ_air for air through a roof. */
  readonly drive: number;
}

/** Discharge coefficient of a sharp-edged hole: common practice, from memory. */
export const dischargeCoefficient = 0.6;

/**
 * Time in s in which a compartment with upright walls empties through holes in its floor:
 *   A dh/dt = −C_d a √(2 g h)   →   t = 2 A √h_0 / (C_d a √(2 g)),   C_d = 0.6
 * Refuses what is not positive. Error: C_d from 0.6 to 0.65, and more for a panel much thicker than its hole is wide.
 * Source: Torricelli's law; any handbook of fluid mechanics, from memory.
 */
export function drainTime({ area: A, hole: a, height: h_0, drive }: Drain): number {
  requirePositive({ A, a, h_0, drive });
  return (2 * A * Math.sqrt(h_0)) / (dischargeCoefficient * a * Math.sqrt(2 * drive));
}
