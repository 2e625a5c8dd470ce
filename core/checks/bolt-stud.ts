import { bolted, boltClassAt, boltInputs, factorOfEither, fixingAt, nothingLeft } from './bolt-inputs.ts';
import { boltForceCautions, tensionBounds, tensionInputs, tensionSteps } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import { missing, type Check, type Input, type SecondOpinion, type Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { d, A_s, t_w, f_yw, f_uw } = boltInputs;

/** The stud's strength, once a procedure stands behind its weld. */
const f_us: Input = {
  ...boltInputs.f_ub,
  meaning: 'ultimate strength of the stud',
  read: (model, bay) =>
    fixingAt(model, bay).stud
      ? boltClassAt(model, bay).ultimate
      : missing('the procedure by which the studs are welded and tested, EN ISO 14555 ("stud" of the fixing)'),
};

const resistance = (factor: 'gamma_M2' | 'Omega_J', thread: string): readonly Step[] => [
  { symbol: 'F_st', expression: `${thread} * f_us * A_s / ${factor}`, unit: 'kN', meaning: 'the thread of the stud' },
  {
    symbol: 'F_pw',
    expression: `0.6 * pi * d * t_w * f_uw / ${factor}`,
    unit: 'kN',
    meaning: 'the wall punched out round the foot of the stud',
  },
  { symbol: 'F_s_Rd', expression: 'min(F_st, F_pw)', unit: 'kN', meaning: 'the lesser' },
];

/** Bounds of F_s_Rd by flow rules on the same two surfaces. */
const bounds: SecondOpinion = {
  title:
    'Resistance: below, two thirds of the thread’s strength or the wall flowing by Tresca; above, the whole strength of the thread or the wall breaking by von Mises',
  source: [{ document: 'H. Tresca’s and R. von Mises’ flow rules; cylinder round the stud derived by hand' }],
  steps: [
    {
      symbol: 'R_low',
      expression: 'min(2 / 3 * f_us * A_s, pi * d * t_w * f_yw / 2) / gamma_R',
      unit: 'kN',
      meaning: 'smaller resistance',
    },
    {
      symbol: 'R_high',
      expression: 'min(f_us * A_s, pi / sqrt(3) * 1.05 * d * t_w * f_uw) / gamma_R',
      unit: 'kN',
      meaning: 'larger resistance, with a twentieth for the collar of the weld',
    },
  ],
  of: 'F_s_Rd',
  low: 'R_low',
  high: 'R_high',
};

/** A threaded stud welded onto the tube's wall. */
export const boltStud: Check = {
  id: 'bolt-stud',
  title: 'Stud welded onto the tube',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4, tension and punching', safety: 'partial factors' },
    {
      document: 'EN 1994-1-1',
      edition: '2004',
      clause: '6.6.5.7(5), stud no thicker than 2.5 walls',
      safety: 'partial factors',
      memory: true,
    },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J3.6, J4.2; I8.1, stud no thicker than 2.5 walls',
      safety: 'allowable stress',
      memory: true,
    },
    { document: 'EN ISO 13918, EN ISO 14555', clause: 'studs and their welding', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = bolted(model, bay);
    if (applies !== true) return applies;
    return fixingAt(model, bay).into === 'welded stud' || 'the bolt is no welded stud';
  },
  rule: (model, bay, situation) => {
    const { family, ultimate, title } = boltClassAt(model, bay);
    if (family === 'carbon steel' && ultimate > 520e6)
      return `${title} is quenched and tempered or cold worked beyond what may be stud welded: EN ISO 13918 has studs of class 4.8 and of stainless steel`;
    return nothingLeft(model, bay, situation);
  },
  inputs: {
    ...tensionInputs,
    ...{ d, A_s, t_w, f_yw, f_uw },
    f_us,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on rupture', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M2', 'Omega_J', 'factor on rupture, of either kind of basis'),
  },
  steps: {
    'partial factors': [...tensionSteps, ...resistance('gamma_M2', '0.9')],
    'allowable stress': [...tensionSteps, ...resistance('Omega_J', '0.75')],
  },
  solved: { inputs: solvedBoltForces },
  demand: 'F_t',
  capacity: 'F_s_Rd',
  range: [
    {
      holds: 'd <= 2.5 * t_w',
      otherwise:
        'the stud is thicker than 2.5 walls of the tube: it would pull a plug out of the wall or burn through it',
    },
  ],
  second: boltSecondOpinion(tensionBounds, bounds),
  cautions: [
    ...boltForceCautions,
    'Bend tests and visual inspection of every stud by EN ISO 14555 stand behind this number; a stud cannot be replaced at sea.',
    'Welding studs on a closed tube heats the air in it: vent it first.',
  ],
};
