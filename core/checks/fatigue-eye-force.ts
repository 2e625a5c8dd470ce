import type { Model } from '../model.ts';
import type { Input, Missing } from './check.ts';
import { eyeAt, eyeForceInputs, materialOfEye, onTube } from './eye-inputs.ts';
import { carbonSteel } from './fatigue-steel.ts';
import { fromSwing, graverAtEnd, restOfPlate, type End } from './fatigue-swing.ts';
import { solvedLegs } from './solved-inputs.ts';

type Force = keyof typeof eyeForceInputs;

/** A pull at the eye at one end of the cycle, no load factor: nothing where the line is slack. */
const at = (force: Force, end: End): Input => ({
  ...eyeForceInputs[force],
  meaning: `${eyeForceInputs[force].meaning}, force of the water ${end}, no load factor`,
  from: fromSwing('legs'),
  read: (model, id) => {
    const situation = model.loads.swing[end];
    const hand = eyeForceInputs[force].read(model, id, situation);
    if (typeof hand !== 'number') return hand;
    return graverAtEnd(model, end, restOfPlate.read(model, id, situation), hand, () =>
      solvedLegs[force].read(model, id, situation),
    );
  },
});

/** The pulls at both ends: symbols `…_up` and `…_dn`. */
export const eyeSwing = (...forces: readonly Force[]): Readonly<Record<string, Input>> =>
  Object.fromEntries(
    forces.flatMap((force) => [
      [`${force}_up`, at(force, 'up')],
      [`${force}_dn`, at(force, 'down')],
    ]),
  );

/** Eyes that the suspension pulls at in every cycle. */
export const isSuspended = (model: Model, id: string): true | string =>
  eyeAt(model, id).kind === 'suspension' || 'this eye is for lifting: it sees no cycles in service';

/** What keeps the eye or the tube under it from having a curve, or undefined. */
export function steelOfEye(model: Model, id: string): Missing | undefined {
  const under = onTube(model, id, () => 0);
  if (typeof under !== 'number') return under;
  return carbonSteel(materialOfEye(model, id)) ?? carbonSteel(eyeAt(model, id).tube!.material);
}

export const eyeFatigueCaution =
  'A single load path: take the eye out of service before its calculated life, and inspect its weld on every recovery.';
