import { contactToBegin, type ReadyPlate } from '../../core/plate/solve-plate.ts';
import type { StiffnessSystem } from '../../core/solve/sparse/stiffness-system.ts';
import { withContact } from '../../core/solve/structure/contact.ts';
import { holdFreedoms } from '../../core/solve/structure/hold-freedoms.ts';
import { partNumbers } from '../../core/solve/structure/part-numbers.ts';
import type { Situation } from '../../core/loads/situation.ts';

/** What a solver session is given. */
export interface SystemInParts {
  readonly system: StiffnessSystem;
  readonly parts: Int32Array;
}

/** A plate as the first contact step of a situation has it. */
export function firstContactStep(plate: ReadyPlate, situation: Situation): SystemInParts {
  const { structure, elements } = plate;
  return {
    system: {
      coordinates: structure.coordinates,
      elements: withContact(elements, structure, contactToBegin(plate, situation)),
      held: holdFreedoms(structure),
    },
    parts: partNumbers(structure),
  };
}
