import type { Model } from '../model.ts';
import type { HeaveSystem } from '../motion/heave-system.ts';
import { seaQuantities, type MotionQuantity } from '../motion/motion-quantities.ts';
import { naturalPeriods } from '../motion/natural-periods.ts';
import { seaHistory } from '../motion/sea-history.ts';
import { steppedResponse, type SteppedResponse } from '../motion/stepped-response.ts';
import { stochasticResponse } from '../motion/stochastic-response.ts';
import { waveForcing } from '../motion/wave-forcing.ts';
import { seaSpectrum } from '../water/waves/sea-spectrum.ts';
import { heaveSystemOf } from './heave-system-of.ts';
import { hydrodynamicsOf } from './hydrodynamics-of.ts';
import { motionInWave } from './motion-in-wave.ts';
import { testedWater } from './tested-water.ts';

/** Float, link and plate in the document's sea: one seeded history by time steps, and spectra beside it. SI. */
export interface MotionInSea {
  readonly system: HeaveSystem;
  readonly addedMass: number;
  /** Drag coefficient times its area, m². */
  readonly dragArea: number;
  /** Where both are from. */
  readonly from: 'the test that the design uses' | 'theory, at the motion in a wave of the significant height';
  readonly periods: readonly number[];
  readonly quantities: Readonly<Record<string, MotionQuantity>>;
  readonly stepped: SteppedResponse;
  /** Step at which the history counts from. */
  readonly countFrom: number;
}

/** s. */
export const [seaStep, dyingAway, seaDuration] = [0.02, 200, 1200];
export const seaSeed = 1;

/** The motion left over, and what would have to be stated for it. Takes a second or two. */
export function motionInSea(model: Model): MotionInSea | { readonly missing: string } {
  const { sea } = model.document.hydrodynamics ?? {};
  if (!sea) return { missing: 'the sea is not stated' };
  const stated = heaveSystemOf(model, 0, 0);
  if ('missing' in stated) return stated;
  const water = waterOf(model);
  if ('missing' in water) return water;
  const made = heaveSystemOf(model, water.addedMass, water.dragArea);
  if ('missing' in made) return made;
  const { system, field } = made;
  const transfer = (omega: number) => waveForcing(field, omega);
  const peak = (2 * Math.PI) / sea.peakPeriod.si;
  const S = seaSpectrum(sea);
  const band = [0.4 * peak, 5 * peak] as const;
  const omegas = Float64Array.from({ length: 401 }, (_, i) => band[0] + (i / 400) * (band[1] - band[0]));
  const steps = Math.round((seaDuration + dyingAway) / seaStep);
  const countFrom = Math.round(dyingAway / seaStep);
  const forcing = seaHistory(S, band, transfer, { dt: seaStep, steps, components: 200, seed: seaSeed });
  const stepped = steppedResponse(system, forcing, { dt: seaStep, steps, countFrom });
  return {
    ...{ system, stepped, countFrom, ...water },
    periods: naturalPeriods(system),
    quantities: seaQuantities(stepped, countFrom, stochasticResponse(system, S, omegas, transfer)),
  };
}

function waterOf(model: Model): Pick<MotionInSea, 'addedMass' | 'dragArea' | 'from'> | { readonly missing: string } {
  const tested = testedWater(model);
  if (tested && !('missing' in tested))
    return { addedMass: tested.addedMass.value, dragArea: tested.dragCoefficient.value * tested.area, from: 'the test that the design uses' }; // prettier-ignore
  const { report, curve } = hydrodynamicsOf(model);
  const area = report.quantities['drag.referenceArea']!.value;
  const wave = motionInWave(model, curve, area);
  if ('missing' in wave) return wave;
  return { addedMass: wave.addedMass, dragArea: wave.drag * area, from: 'theory, at the motion in a wave of the significant height' }; // prettier-ignore
}
