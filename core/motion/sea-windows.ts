import { deviation } from './deviation.ts';
import type { SeaResult } from './sea-record.ts';
import { swings } from './swings.ts';

/** A stretch of a deployment over which the sea hardly changes. SI. */
export interface SeaWindow {
  /** From the first reading, s. */
  readonly from: number;
  /** Significant double amplitudes, m. */
  readonly float: number;
  readonly plate: number;
  /** Mean period of the float, s. */
  readonly period: number;
}

/** Length of a window, s: some twenty waves. A height scatters by a tenth or so over them, its ratio to another far less. */
export const windowLength = 150;

/** Motion of float and plate, window by window; what is left at the end is dropped, as is a window in which the float hardly swings. */
export function seaWindows({
  dt,
  begins,
  plate,
  float,
}: Pick<SeaResult, 'dt' | 'begins' | 'plate' | 'float'>): SeaWindow[] {
  // prettier-ignore
  const n = Math.round(windowLength / dt);
  return Array.from({ length: Math.floor(float.length / n) }, (_, i): SeaWindow[] => {
    const own = float.subarray(i * n, (i + 1) * n);
    const period = swings(own, dt).meanPeriod;
    if (period === null) return [];
    return [{ from: begins + i * windowLength, float: 4 * deviation(own), plate: 4 * deviation(plate.subarray(i * n, (i + 1) * n)), period }]; // prettier-ignore
  }).flat();
}
