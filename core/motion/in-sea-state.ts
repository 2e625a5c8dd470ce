import type { HeaveSystem } from './heave-system.ts';
import { seaQuantities, type MotionQuantity } from './motion-quantities.ts';
import { seaHistory } from './sea-history.ts';
import { steppedResponse, type SteppedResponse } from './stepped-response.ts';
import { stochasticResponse } from './stochastic-response.ts';
import { waveForcing, type WaveField } from './wave-forcing.ts';

/** One seeded history of a sea by time steps. */
export interface InSeaState {
  readonly quantities: Readonly<Record<string, MotionQuantity>>;
  readonly stepped: SteppedResponse;
  /** Step from which the history counts. */
  readonly countFrom: number;
}

/** s. */
export const seaStep = 0.02;

/** Float, link and plate in a sea by time steps, and by spectra beside them. S: m² s over rad/s; times in s: `dyingAway` is left out. */
export function inSeaState(
  system: HeaveSystem,
  field: WaveField,
  { S, peakPeriod }: { readonly S: (omega: number) => number; readonly peakPeriod: number },
  { dyingAway, duration, components, seed, dt = seaStep }: { readonly dyingAway: number; readonly duration: number; readonly components: number; readonly seed: number; readonly dt?: number }, // prettier-ignore
): InSeaState {
  const transfer = (omega: number) => waveForcing(field, omega);
  const peak = (2 * Math.PI) / peakPeriod;
  const band = [0.4 * peak, 5 * peak] as const;
  const lines = 2 * components;
  const omegas = Float64Array.from({ length: lines + 1 }, (_, i) => band[0] + (i / lines) * (band[1] - band[0]));
  const steps = Math.round((duration + dyingAway) / dt);
  const countFrom = Math.round(dyingAway / dt);
  const forcing = seaHistory(S, band, transfer, { dt, steps, components, seed });
  const stepped = steppedResponse(system, forcing, { dt, steps, countFrom });
  return { stepped, countFrom, quantities: seaQuantities(stepped, countFrom, stochasticResponse(system, S, omegas, transfer)) }; // prettier-ignore
}
