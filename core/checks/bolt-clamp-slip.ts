import { bolted, boltInputs, factorOfEither, fixingAt, nothingLeft } from './bolt-inputs.ts';
import { boltForceCautions, boltForcesInputs, boltForcesSteps, shearBound } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import { leastPreload, tighteningCautions, tighteningInputs } from './bolt-tightening.ts';
import { missing, type Check, type SecondOpinion, type Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const slip = (factor: 'gamma_M3' | 'Omega_slip'): readonly Step[] => [
  leastPreload,
  {
    symbol: 'F_s_Rd',
    expression: `mu_c * (F_lo - F_t) / ${factor}`,
    unit: 'kN',
    meaning: 'friction of the panel on the tube, all of the pull taken off the preload',
  },
];

/** Bounds of F_s_Rd: friction with a fifth of the preload gone, and with nothing pulled off. */
const bounds: SecondOpinion = {
  title:
    'Resistance: below, friction with another fifth of the preload gone; above, friction of the largest preload, no pull taken off',
  source: [{ document: 'C. A. Coulomb’s friction' }],
  steps: [
    {
      symbol: 'R_low',
      expression: '0.8 * F_lo > F_t ? mu_c * (0.8 * F_lo - F_t) / gamma_R : F_s_Rd',
      unit: 'kN',
      meaning: 'smaller resistance; no bound where the smaller preload clamps nothing',
    },
    { symbol: 'R_high', expression: 'mu_c * T_t / (k_low * d * gamma_R)', unit: 'kN', meaning: 'larger resistance' },
  ],
  of: 'F_s_Rd',
  low: 'R_low',
  high: 'R_high',
};

/** Slip of a panel along the tube that its clamps hold it to. */
export const boltClampSlip: Check = {
  id: 'bolt-clamp-slip',
  title: 'Panel slipping under its clamps',
  limitState: 'strength',
  source: [
    { document: 'C. A. Coulomb’s friction, factor as EN 1993-1-8, 3.9', safety: 'partial factors' },
    { document: 'C. A. Coulomb’s friction, factor as AISC 360, J3.8', safety: 'allowable stress' },
    { document: 'T = k d F', clause: 'Shigley, Mechanical Engineering Design, bolt torque', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = bolted(model, bay);
    if (applies !== true) return applies;
    return fixingAt(model, bay).into === 'clamp' || 'the bolts go into the tube: they do not clamp round it';
  },
  rule: nothingLeft,
  inputs: {
    ...boltForcesInputs,
    ...tighteningInputs,
    d: boltInputs.d,
    mu_c: {
      unit: '1',
      meaning: 'friction of panel and tube',
      from: 'document: fixing',
      read: (model, bay) =>
        fixingAt(model, bay).clamp?.friction.value ??
        missing('the friction of panel and tube, with how it is known ("clamp" of the fixing)'),
    },
    gamma_M3: basisFactor('gamma_M3', 'partial factor on slip', 'partial factors'),
    Omega_slip: basisFactor('Omega_slip', 'safety factor on slip', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M3', 'Omega_slip', 'factor on slip, of either kind of basis'),
  },
  steps: {
    'partial factors': [...boltForcesSteps, ...slip('gamma_M3')],
    'allowable stress': [...boltForcesSteps, ...slip('Omega_slip')],
  },
  solved: { inputs: solvedBoltForces },
  demand: 'F_v',
  capacity: 'F_s_Rd',
  second: boltSecondOpinion(shearBound, bounds),
  cautions: [
    ...boltForceCautions,
    ...tighteningCautions,
    'Growth, grease and wear lower the friction under water. Stops welded to the tube hold where friction does not.',
    'The friction of the bar on the far side is left out, which is safe.',
  ],
};
