import { isLoose } from '../geometry/panel-of.ts';
import type { Model } from '../model.ts';
import { yieldOf } from '../catalogue/strength-at-thickness.ts';
import {
  bolted,
  boltAt,
  boltClassAt,
  boltInputs,
  factorOfEither,
  fixingAt,
  nothingLeft,
  tubesUnder,
} from './bolt-inputs.ts';
import { boltForceCautions, boltForcesInputs, boltForcesSteps, shearBound } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import { missing, type Check, type Input, type Missing, type SecondOpinion } from './check.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import type { LoadCaseName } from '../loads/situation.ts';
import { solvedBoltForces } from './solved-inputs.ts';

/** Cases in which waves turn the force round. */
const reversing: ReadonlySet<LoadCaseName> = new Set([
  'service',
  'crossing the surface',
  'lost bolt row',
  'lost panel',
  'lost leg',
]);

const mu: Input = {
  unit: '1',
  meaning: 'slip factor of the faying surfaces',
  from: 'document: fixing',
  read: (model, bay) => {
    const stated = fixingAt(model, bay).slipFactor?.value;
    if (stated === undefined)
      return missing('the slip factor of the faying surfaces, with how it is known ("slipFactor" of the fixing)');
    return onAluminium(model, bay, stated) ?? stated;
  },
};

/** Largest slip factor between blasted surfaces of aluminium, by what the bolts clamp, up to m: EN 1999-1-1, Table 8.6, from memory. */
const slipOnAluminium: readonly (readonly [upTo: number, factor: number])[] = [
  [0.012, 0],
  [0.018, 0.27],
  [0.024, 0.33],
  [0.03, 0.37],
  [Infinity, 0.4],
];

/** Why friction on aluminium cannot be counted, or not by as much as is stated. EN 1999-1-1, 8.5.9, from memory. */
function onAluminium(model: Model, bay: string, stated: number): Missing | undefined {
  const panel = panelAt(model, bay);
  const parts = [
    { material: panel.material, thickness: panel.thickness },
    ...tubesUnder(model, bay).map(({ material, section }) => ({ material, thickness: section.nominalWall })),
  ];
  const soft = parts.find(({ material }) => material.family === 'aluminium');
  if (!soft || parts.length === 1) return undefined;
  const { title } = soft.material;
  if (model.basis.safety === 'allowable stress')
    return missing(`a rule for slip on ${title} under ${model.basis.title}: AISC 360 holds for steel`);
  if (parts.some(({ material, thickness }) => material.family === 'aluminium' && yieldOf(material, thickness) < 200e6))
    return missing(
      `tests of slip on ${title}: below a proof strength of 200 MPa no rule holds without them (EN 1999-1-1, 8.5.9). Fit the bolts, or take a stronger alloy`,
    );
  const clamped = panel.thickness + Math.min(...parts.slice(1).map(({ thickness }) => thickness));
  const [, most] = slipOnAluminium.find(([upTo]) => clamped < upTo)!;
  return stated <= most
    ? undefined
    : missing(
        `a slip factor that holds on ${title}: for panel and wall of ${(clamped * 1000).toFixed(1)} mm together EN 1999-1-1, Table 8.6, has ${most === 0 ? 'none below 12 mm' : `${most} at the most`}, and ${stated} is stated`,
      );
}

const k_s: Input = {
  unit: '1',
  meaning: 'by the kind of hole and the way a slot lies to the force: 1 for a standard hole',
  from: 'document: fixing',
  read: (model, bay) => slipOfHole(model, bay, fixingAt(model, bay).slot === 'along the edge' ? 'across' : 'along'),
};

/** In a plate solved as a whole the shear of a bolt may have any direction: the slot is taken along it. */
const k_sEitherWay: Input = { ...k_s, read: (model, bay) => slipOfHole(model, bay, 'along') };

/**
 * EN 1993-1-8, Table 3.6 (from memory), by the slot's axis to the force. AISC 360, J3.8: safety factors 1.50, 1.76 and 2.14
 * stand to each other as 1, 0.85 and 0.70. By hand the panel pulls square to its edges: a slot along the edge lies across
 * the pull. A bolt at a corner has half of that from either edge, 0.71 of it in all, which 0.76 and 0.63 carry.
 */
function slipOfHole(model: Model, bay: string, slot: 'across' | 'along'): number {
  const european = model.basis.safety === 'partial factors';
  switch (fixingAt(model, bay).hole) {
    case 'oversize':
      return 0.85;
    case 'short slot':
      return european ? { across: 0.85, along: 0.76 }[slot] : { across: 1, along: 0.85 }[slot];
    case 'long slot':
      return european ? { across: 0.7, along: 0.63 }[slot] : 0.7;
    default:
      return 1;
  }
}

/** Preload stands on the strength of classes that may be preloaded. */
const f_ub: Input = {
  ...boltInputs.f_ub,
  read: (model, bay) => {
    const { family, title } = panelAt(model, bay).material;
    if (family === 'thermoplastic' || family === 'laminate')
      return missing(
        `a rule for slip on ${title}: its creep takes the preload that friction stands on. Fit the bolts, or clamp steel to steel through a sleeve in the panel`,
      );
    const row = boltClassAt(model, bay);
    if (row.family === 'stainless steel')
      return missing(`procedure tests of preload and slip with ${row.title}: no rule holds without them`);
    const preloadable = row.id === '8.8' || row.id === '10.9' || (row.nominal !== null && row.ultimate >= 800e6);
    const small = model.basis.safety === 'partial factors' && boltAt(model, bay).diameter < 12e-3;
    if (preloadable && small)
      return missing('a preload of bolts below M12: assemblies for preloading begin at M12 (EN 14399, from memory)');
    return preloadable
      ? row.ultimate
      : missing(`a preload of ${row.title}: only classes 8.8 and 10.9, or ASTM F3125, may be preloaded by rule`);
  },
};

/** Bounds of F_s_Rd: friction under the least and the largest clamping force to be expected. */
const bounds: SecondOpinion = {
  title:
    'Resistance: friction under a preload a fifth short, one and a half times the tension lost and the largest reduction for holes; and under a bolt at yield, 0.8 f_ub A_s, half the tension lost and no reduction',
  source: [
    { document: 'C. A. Coulomb’s friction; scatter of tightening by torque from VDI 2230', memory: true },
    { document: 'AISC 360', edition: '2010', clause: 'J3.9, loss of clamping force' },
  ],
  steps: [
    {
      symbol: 'C_low',
      expression: '0.8 * 0.7 * f_ub * A_s - 1.5 * F_t',
      unit: 'kN',
      meaning: 'smaller clamping force',
    },
    {
      symbol: 'R_low',
      expression: 'C_low > 0 * C_low ? 0.63 * mu * C_low / gamma_R : F_s_Rd',
      unit: 'kN',
      meaning: 'smaller resistance; no bound where the smaller force clamps nothing',
    },
    {
      symbol: 'R_high',
      expression: 'mu * (0.8 * f_ub * A_s - 0.5 * F_t) / gamma_R',
      unit: 'kN',
      meaning: 'larger resistance',
    },
  ],
  of: 'F_s_Rd',
  low: 'R_low',
  high: 'R_high',
};

/** Slip of preloaded bolts under shear that reverses. */
export const boltSlip: Check = {
  id: 'bolt-slip',
  title: 'Slip under reversing shear',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '2.6, 3.9.1, 3.9.2', safety: 'partial factors' },
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.6, k_s', safety: 'partial factors', memory: true },
    {
      document: 'EN 1999-1-1',
      edition: '2007',
      clause: '8.5.9, Table 8.6: slip of aluminium',
      safety: 'partial factors',
      metal: 'aluminium',
      memory: true,
    },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J3.8, J3.9, read in the editions of 2005 and 2010',
      safety: 'allowable stress',
    },
  ],
  places: fieldPlaces,
  applies: (model, bay, { loadCase }) => {
    const applies = bolted(model, bay);
    if (applies !== true) return applies;
    const fixing = fixingAt(model, bay);
    const { shear } = fixing;
    if (shear === 'fitted' && !isLoose(fixing)) return 'fitted bolts bear at once: there is no slip to resist';
    if (shear !== 'slip-resistant' && !reversing.has(loadCase)) return 'the force does not reverse in this case';
    return true;
  },
  rule: (model, bay, situation) => {
    const { shear, hole } = fixingAt(model, bay);
    if (shear === 'slip-resistant') return nothingLeft(model, bay, situation);
    const holes = { oversize: 'oversize holes', 'short slot': 'short slots', 'long slot': 'long slots' }[
      hole as string
    ];
    const what = shear === 'clearance' ? `bolts in ${holes ?? 'clearance holes'}` : `bolts called fitted, in ${holes},`;
    return `${what} under shear that reverses: EN 1993-1-8, 2.6 asks for slip-resistant bolts, fitted bolts or welding`;
  },
  inputs: {
    ...boltForcesInputs,
    A_s: boltInputs.A_s,
    f_ub,
    mu,
    k_s,
    gamma_M3: basisFactor('gamma_M3', 'partial factor on slip', 'partial factors'),
    Omega_slip: basisFactor('Omega_slip', 'safety factor on slip', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M3', 'Omega_slip', 'factor on slip, of either kind of basis'),
  },
  steps: {
    'partial factors': [
      ...boltForcesSteps,
      { symbol: 'F_pC', expression: '0.7 * f_ub * A_s', unit: 'kN', meaning: 'preload' },
      {
        symbol: 'F_s_Rd',
        expression: 'k_s * mu * (F_pC - 0.8 * F_t) / gamma_M3',
        unit: 'kN',
        meaning: 'slip resistance, one friction face',
      },
    ],
    'allowable stress': [
      ...boltForcesSteps,
      { symbol: 'F_pC', expression: '0.7 * f_ub * A_s', unit: 'kN', meaning: 'preload, as Table J3.1' },
      {
        symbol: 'F_s_Rd',
        expression: 'k_s * mu * (1.13 * F_pC - 1.5 * F_t) / Omega_slip',
        unit: 'kN',
        meaning: 'allowable slip force, one friction face: 1.13 mu T_b (1 - 1.5 T_a / 1.13 T_b)',
      },
    ],
  },
  solved: { inputs: { ...solvedBoltForces, k_s: k_sEitherWay }, second: bounds },
  demand: 'F_v',
  capacity: 'F_s_Rd',
  second: boltSecondOpinion(shearBound, bounds),
  cautions: [
    ...boltForceCautions,
    'Locking stops the nut, not the slip. Preload under water and under coating falls with time: retighten after the coating has crept.',
  ],
};
