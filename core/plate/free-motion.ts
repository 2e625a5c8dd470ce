import { Refusal } from '../refusal.ts';
import type { Mechanism } from '../solve/sparse/mechanism.ts';
import { mechanismText } from './mechanism-words.ts';
import type { ReadyPlate } from './solve-plate.ts';

/** A plate of which something moves freely: refused in words, with the motion itself (6N, 1 at its largest) to be shown. */
export class FreeMotion extends Refusal {
  readonly plate: ReadyPlate;
  readonly motion: Float64Array;

  constructor(plate: ReadyPlate, error: Mechanism) {
    super([mechanismText(error, plate.structure)]);
    this.plate = plate;
    this.motion = error.motion;
  }
}
