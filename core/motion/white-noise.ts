import { deviation } from './deviation.ts';
import { filtered } from './filtered.ts';

/** Standard deviation of white noise that would fill the spectrum of readings dt s apart as its fastest quarter does. */
export function whiteNoise(readings: Float64Array, dt: number): number {
  const fast = filtered(readings, dt, (omega) => (omega >= 0.75 * (Math.PI / dt) ? 1 : 0));
  return 2 * deviation(fast);
}
