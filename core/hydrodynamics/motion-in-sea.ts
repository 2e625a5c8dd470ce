import type { Model } from '../model.ts';
import type { HeaveSystem } from '../motion/heave-system.ts';
import { inSeaState, type InSeaState } from '../motion/in-sea-state.ts';
import { naturalPeriods } from '../motion/natural-periods.ts';
import { seaSpectrum } from '../water/waves/sea-spectrum.ts';
import { movingCurve, type MovingCurve } from './moving-curve.ts';
import { throughSea } from './through-sea.ts';
import { heaveSystemOf } from './heave-system-of.ts';

/** Float, link and plate in the document's sea: one seeded history by time steps, and spectra beside it. SI. */
export interface MotionInSea extends InSeaState {
  readonly system: HeaveSystem;
  readonly addedMass: number;
  /** Drag coefficient times its area, m². */
  readonly dragArea: number;
  /** Where both are from. */
  readonly from: MovingCurve['from'];
  /** Amplitude of the sine through the water at which theory gives them, m. */
  readonly amplitude: number;
  readonly periods: readonly number[];
}

/** s. */
export const [dyingAway, seaDuration] = [200, 1200];
export const seaSeed = 1;

/** The motion left over, and what would have to be stated for it. Takes a second or two. */
export function motionInSea(model: Model): MotionInSea | { readonly missing: string } {
  const { sea } = model.document.hydrodynamics ?? {};
  if (!sea) return { missing: 'the sea is not stated' };
  const stated = heaveSystemOf(model, 0, 0);
  if ('missing' in stated) return stated;
  const { curve, area, from } = movingCurve(model, sea.significantHeight.si);
  const state = { S: seaSpectrum(sea), peakPeriod: sea.peakPeriod.si };
  const found = throughSea(model, state, curve, area);
  if ('missing' in found) return found;
  const { point, made } = found;
  const { system, field } = made;
  return {
    ...inSeaState(system, field, state, { dyingAway, duration: seaDuration, components: 200, seed: seaSeed }),
    ...{ system, from, addedMass: point.addedMass, dragArea: point.drag * area, amplitude: point.amplitude },
    periods: naturalPeriods(system),
  };
}
