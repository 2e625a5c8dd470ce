import { bolted, fixingAt } from './bolt-inputs.ts';
import { boltForceCautions, tensionBounds, tensionInputs, tensionSteps } from './bolt-force-steps.ts';
import { missing, type Check, type Input } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';

/** Where the pull of the bolt goes at its other end, for which no published rule is held. */
const F_a_Rd: Input = {
  unit: 'kN',
  meaning: "pull that the bolt's end in the tube carries",
  from: 'not held',
  read: (model, bay) => {
    const { into } = fixingAt(model, bay);
    if (into === 'one-sided')
      return missing(
        "the pull-out force of the one-sided bolt from its maker's approval: no published rule holds for it",
      );
    if (into === 'welded stud')
      return missing('the resistance of the stud weld (procedure test by EN ISO 14555): no rule is held here');
    return missing('the thickness of the tapped pad and its weld: the document does not describe them');
  },
};

/** The bolt's end in the tube: nut, stud weld, tapped pad. */
export const boltAnchorage: Check = {
  id: 'bolt-anchorage',
  title: "Bolt's end in the tube",
  limitState: 'strength',
  source: [{ document: 'common practice, no source' }],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = bolted(model, bay);
    if (applies !== true) return applies;
    return (
      fixingAt(model, bay).into !== 'through-bolt with sleeve' ||
      'the bolt goes through both walls to a nut as strong as itself'
    );
  },
  inputs: { ...tensionInputs, F_a_Rd },
  steps: { 'partial factors': tensionSteps, 'allowable stress': tensionSteps },
  demand: 'F_t',
  capacity: 'F_a_Rd',
  second: tensionBounds,
  cautions: boltForceCautions,
};
