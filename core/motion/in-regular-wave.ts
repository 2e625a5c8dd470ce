import { harmonicResponse } from './harmonic-response.ts';
import type { HeaveSystem } from './heave-system.ts';
import { regularQuantities, type MotionQuantity } from './motion-quantities.ts';
import { harmonicHistory } from './sea-history.ts';
import { steppedResponse } from './stepped-response.ts';
import { waveForcing, type WaveField } from './wave-forcing.ts';

const stepsInCycle = 400;
const cyclesBefore = 40;
const cyclesShown = 10;

/** Float, link and plate in a regular wave: by time steps, the first 40 cycles left to die away, and linearised. Height m, period s. */
export function inRegularWave(
  system: HeaveSystem,
  field: WaveField,
  height: number,
  period: number,
): Readonly<Record<string, MotionQuantity>> {
  const omega = (2 * Math.PI) / period;
  const unit = waveForcing(field, omega);
  const times = ([re, im]: readonly [number, number]) => [(height / 2) * re, (height / 2) * im] as const;
  const forcing = { float: times(unit.float), plate: times(unit.plate), water: times(unit.water) };
  const from = cyclesBefore * stepsInCycle;
  const stepped = steppedResponse(system, harmonicHistory(omega, forcing), {
    dt: period / stepsInCycle,
    steps: from + cyclesShown * stepsInCycle,
    countFrom: from,
  });
  const rise = Math.hypot(...forcing.water) / omega;
  return regularQuantities(stepped, from, harmonicResponse(system, omega, forcing), rise);
}
