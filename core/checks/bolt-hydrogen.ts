import { bolted, boltClassAt, boltInputs, fixingAt } from './bolt-inputs.ts';
import { missing, type Check } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { constant } from './inputs.ts';

/** Pa: the least strength of class 8.8 in its larger sizes, ISO 898-1 Table 3. A steel above it whose hardness nothing limits is above class 8.8. */
const most88 = 830e6;

/** Hydrogen from cathodic protection cracks hard bolts. */
export const boltHydrogen: Check = {
  id: 'bolt-hydrogen',
  title: 'Hardness of bolts under cathodic protection',
  limitState: 'strength',
  source: [
    { document: 'DNV-RP-B401', clause: 'hydrogen-induced stress cracking, 350 HV', memory: true },
    { document: 'ISO 898-1', clause: 'Table 3, largest hardness of the class' },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = bolted(model, bay);
    if (applies !== true) return applies;
    if (!model.document.protection.cathodic) return 'there is no cathodic protection';
    const { hardnessLimit } = fixingAt(model, bay);
    return !hardnessLimit || `the hardness of these bolts is limited by ${hardnessLimit}`;
  },
  once: true,
  detailing: true,
  rule: (model, bay) => {
    const { title, family, ultimate, hardnessMax } = boltClassAt(model, bay);
    const hard = hardnessMax === null ? family === 'carbon steel' && ultimate > most88 : hardnessMax > 350;
    return hard
      ? `${title} may be harder than 350 HV and can crack under cathodic protection: take class 8.8, or name the document that limits its hardness`
      : undefined;
  },
  inputs: {
    H_max: {
      unit: '1',
      meaning: 'largest Vickers hardness that the class allows',
      from: 'catalogue: fasteners',
      read: (model, bay) =>
        boltClassAt(model, bay).hardnessMax ??
        missing(
          `a limit of the hardness of ${boltClassAt(model, bay).title}: name the document that sets it ("hardnessLimit" of the fixing)`,
        ),
    },
    H_lim: constant(
      350,
      '1',
      'Vickers hardness up to which hydrogen has not cracked bolts',
      'DNV-RP-B401, from memory',
    ),
    f_ub: boltInputs.f_ub,
    c_H: constant(
      3.4,
      'MPa',
      'strength of steel for one unit of Vickers hardness, at the most',
      'ISO 18265 Table A.1, from memory: 3.2 to 3.3 MPa',
    ),
  },
  // The hardness is compared as it stands: no factor of either basis enters.
  steps: {
    'partial factors': [{ symbol: 'H_Ed', expression: 'H_max', unit: '1', meaning: 'hardness to reckon with' }],
    'allowable stress': [{ symbol: 'H_Ed', expression: 'H_max', unit: '1', meaning: 'hardness to reckon with' }],
  },
  demand: 'H_Ed',
  capacity: 'H_lim',
  second: {
    title: 'hardness from the least tensile strength of the class',
    source: [{ document: 'ISO 18265', clause: 'Table A.1', memory: true }],
    steps: [
      {
        symbol: 'H_least',
        expression: 'f_ub / c_H',
        unit: '1',
        meaning: 'a bolt of the least strength has this hardness',
      },
    ],
    of: 'H_Ed',
    low: 'H_least',
  },
  cautions: [
    'Electroplated and acid-cleaned bolts take up hydrogen before they are fitted: ask for baking, or for another coating.',
  ],
};
