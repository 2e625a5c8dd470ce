import type { Model } from '../model.ts';
import { inRegularWave } from '../motion/in-regular-wave.ts';
import type { MotionQuantity } from '../motion/motion-quantities.ts';
import { Refusal } from '../refusal.ts';
import { heaveSystemOf } from './heave-system-of.ts';
import { motionInWave } from './motion-in-wave.ts';
import { movingCurve, type MovingCurve } from './moving-curve.ts';

/** Float, link and plate in the document's regular wave, by time steps and linearised. SI. */
export interface MotionInRegularWave {
  readonly quantities: Readonly<Record<string, MotionQuantity>>;
  readonly addedMass: number;
  readonly dragArea: number;
  readonly from: MovingCurve['from'];
}

/** Null where no wave is stated; what is missing, where it cannot be had. */
export function motionInRegularWave(model: Model): MotionInRegularWave | { readonly missing: string } | null {
  const { document } = model;
  const { wave } = document.hydrodynamics ?? {};
  if (!wave) return null;
  const { height, period } = wave;
  const { curve, area, from } = movingCurve(model, height.si);
  const found = motionInWave(model, curve, area, { wave: { height: height.si, period: period.si } });
  if ('missing' in found) return found;
  const dragArea = found.drag * area;
  const made = heaveSystemOf(model, found.addedMass, dragArea);
  if ('missing' in made) return made;
  try {
    return { quantities: inRegularWave(made.system, made.field, height.si, period.si), addedMass: found.addedMass, dragArea, from }; // prettier-ignore
  } catch (error) {
    if (error instanceof Refusal) return { missing: error.what };
    throw error;
  }
}
