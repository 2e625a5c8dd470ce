import { boltAt, boltInputs, factorOfEither, fixingAt, nothingLeft, tubesUnder } from './bolt-inputs.ts';
import { boltForceCautions, tensionBounds, tensionInputs, tensionSteps } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import { leastPreload, tightened, tighteningCautions, tighteningInputs } from './bolt-tightening.ts';
import { missing, type Check, type Input, type SecondOpinion, type Step } from './check.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { basisFactor, constant } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { d, A_s, t_w } = boltInputs;
const { T_t, k_low, k_high, c_c } = tighteningInputs;

/** Modulus of the softest tube that the panel is bolted to. */
export const softestTube: Input = {
  unit: 'GPa',
  meaning: 'modulus of elasticity of the softest tube under the bolts',
  from: 'catalogue: materials',
  read: (model, bay) => {
    const moduli = tubesUnder(model, bay).map(({ material }) => material.youngModulus);
    return moduli.length ? Math.min(...moduli) : missing('a tube that the panel is bolted to');
  },
};

const apart = (factor: 'gamma_M3' | 'Omega_slip'): readonly Step[] => [
  leastPreload,
  {
    symbol: 'k_m',
    kernel: 'bolts.clampedStiffness',
    arguments: ['t', 'E', 't_w', 'E_w', 'd_w', 'd'],
    unit: 'N/mm',
    meaning: 'stiffness of panel and wall as clamped, frusta of 30°',
  },
  {
    symbol: 'k_b',
    expression: 'E_b * A_s / g_b',
    unit: 'N/mm',
    meaning: 'stiffness of the bolt, thread over the whole grip',
  },
  { symbol: 'C', expression: 'k_b / (k_b + k_m)', unit: '1', meaning: 'part of a pull that the bolt feels' },
  { symbol: 'F_Z', expression: 'f_Z * C * k_m', unit: 'kN', meaning: 'preload lost as faces and threads bed in' },
  {
    symbol: 'F_o',
    expression: `(F_lo - F_Z) / ((1 - C) * ${factor})`,
    unit: 'kN',
    meaning: 'pull at which the joint opens',
  },
];

/** Bounds of F_o. */
const bounds: SecondOpinion = {
  title:
    'Resistance: below, half of the least preload and nothing shared with the bolt; above, twice the largest preload, as if bolt and parts were equally stiff',
  source: [{ document: 'equilibrium of a preloaded joint, derived by hand' }],
  steps: [
    { symbol: 'R_low', expression: '0.5 * F_lo / gamma_R', unit: 'kN', meaning: 'smaller resistance' },
    { symbol: 'R_high', expression: '2 * T_t / (k_low * d * gamma_R)', unit: 'kN', meaning: 'larger resistance' },
  ],
  of: 'F_o',
  low: 'R_low',
  high: 'R_high',
};

/** A preloaded joint opening under the pull of the panel, with the preload that is left. */
export const boltSeparation: Check = {
  id: 'bolt-separation',
  title: 'Joint opening under the bolt',
  limitState: 'serviceability',
  source: [
    {
      document: 'Shigley, Mechanical Engineering Design',
      clause: 'tension joints: T = k d F, member stiffness, separation',
      memory: true,
    },
    { document: 'VDI 2230-1', clause: 'loss by embedding', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = tightened(model, bay);
    if (applies !== true) return applies;
    return fixingAt(model, bay).into !== 'clamp' || 'a clamp is judged by its friction';
  },
  rule: nothingLeft,
  inputs: {
    ...tensionInputs,
    ...{ d, A_s, t_w, k_low, k_high, c_c },
    T_t,
    E_w: softestTube,
    E_b: constant(210, 'GPa', 'modulus of elasticity of the bolt', 'EN 1993-1-1, 3.2.6'),
    f_Z: constant(
      11,
      'um',
      'bedding in of thread, head, nut and one face, rough, under tension',
      'VDI 2230-1, from memory',
    ),
    g_b: {
      unit: 'mm',
      meaning: 'grip of the bolt: panel and wall, or the whole tube of a through-bolt',
      from: 'geometry',
      read: (model, bay) => {
        const tubes = tubesUnder(model, bay);
        const { thickness } = panelAt(model, bay);
        const through = fixingAt(model, bay).into === 'through-bolt with sleeve';
        const beyond = tubes.map(({ section }) => (through ? section.height : section.nominalWall));
        return tubes.length ? thickness + Math.max(...beyond) + boltAt(model, bay).washerThickness : missing('a tube');
      },
    },
    gamma_M3: basisFactor('gamma_M3', 'partial factor on slip, taken for opening', 'partial factors'),
    Omega_slip: basisFactor('Omega_slip', 'safety factor on slip, taken for opening', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M3', 'Omega_slip', 'factor on slip, of either kind of basis'),
  },
  steps: {
    'partial factors': [...tensionSteps, ...apart('gamma_M3')],
    'allowable stress': [...tensionSteps, ...apart('Omega_slip')],
  },
  solved: { inputs: solvedBoltForces },
  demand: 'F_t',
  capacity: 'F_o',
  second: boltSecondOpinion(tensionBounds, bounds),
  cautions: [
    ...boltForceCautions,
    ...tighteningCautions,
    'Prying is in the pull: a joint that opens wears, fretting and water get in, and the bolt feels the whole swing of the force.',
  ],
};
