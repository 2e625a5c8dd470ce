import { bolted, boltInputs, fixingAt } from './bolt-inputs.ts';
import { boltForceCautions, boltForcesInputs, boltForcesSteps, tensionBounds } from './bolt-force-steps.ts';
import { missing, type Check, type Input, type Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';
import type { Quantity } from '../quantity/kinds.ts';

type Maker = NonNullable<ReturnType<typeof fixingAt>['oneSided']>;

const ofMaker = (meaning: string, value: (maker: Maker) => Quantity): Input => ({
  unit: 'kN',
  meaning,
  from: 'document: fixing, by its maker',
  read: (model, bay) => {
    const { oneSided } = fixingAt(model, bay);
    return oneSided
      ? value(oneSided).si
      : missing(
          'the resistances of the one-sided fixing from its maker’s approval ("oneSided" of the fixing): no published rule holds for it',
        );
  },
});

const resistance = (factor: 'gamma_M2' | 'Omega_J'): readonly Step[] => [
  { symbol: 'F_t_Rd', expression: `F_tk / ${factor}`, unit: 'kN', meaning: 'tension resistance' },
  { symbol: 'F_v_Rd', expression: `F_vk / ${factor}`, unit: 'kN', meaning: 'shear resistance' },
  { symbol: 'u', expression: 'F_t / F_t_Rd + F_v / F_v_Rd', unit: '1', meaning: 'both together, on a straight line' },
  { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
];

/** A one-sided fixing by the resistances that its maker states. */
export const boltAnchorage: Check = {
  id: 'bolt-anchorage',
  title: 'One-sided fixing in the tube',
  limitState: 'strength',
  source: [
    { document: 'the maker’s approval that the document names', clause: 'resistances of one fixing' },
    { document: 'straight line between tension and shear: common practice, no source' },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = bolted(model, bay);
    if (applies !== true) return applies;
    const { into } = fixingAt(model, bay);
    return into === 'one-sided' || `the bolt is no one-sided fixing (${into})`;
  },
  inputs: {
    ...boltForcesInputs,
    F_tk: ofMaker('characteristic tension of one fixing', ({ tension }) => tension),
    F_vk: ofMaker('characteristic shear of one fixing', ({ shear }) => shear),
    A_s: boltInputs.A_s,
    f_ub: boltInputs.f_ub,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
  },
  steps: {
    'partial factors': [...boltForcesSteps, ...resistance('gamma_M2')],
    'allowable stress': [...boltForcesSteps, ...resistance('Omega_J')],
  },
  solved: { inputs: solvedBoltForces },
  demand: 'u',
  capacity: 'u_Rd',
  range: [
    {
      holds: 'F_tk <= f_ub * A_s',
      otherwise: 'the stated tension is more than a bolt of this size and class has: check the maker’s values',
    },
  ],
  second: tensionBounds,
  cautions: [
    ...boltForceCautions,
    'The maker’s values hold for his wall thickness, hole and tightening: compare them with this tube. Ask him for fatigue and for sea water.',
  ],
};
