import type { Check, Step } from './check.ts';
import { fieldInputs, fieldPlaces } from './field-inputs.ts';
import { lineForceSteps, simplifiedResistance } from './fillet-steps.ts';
import { basisFactor } from './inputs.ts';
import { solvedWeldForces } from './solved-inputs.ts';
import {
  anyOnCorner,
  cornerInputs,
  cornerLoss,
  cornerSources,
  cornerThroatSteps,
  gapRange,
} from './weld-corner-inputs.ts';
import { weldForceSteps } from './weld-force-steps.ts';
import { allowableLineForce } from './weld-group-inputs.ts';
import { welded, weldForceInputs, weldRule, weldStrengthInputs } from './weld-inputs.ts';

const { p, a, b, t, E, nu } = fieldInputs;
const { h_x, h_y, k_r } = weldForceInputs;
const { f_u, beta_w, F_EXX, f_yb, t_b } = weldStrengthInputs;

/** Lines of a weld on flats, from one symbol to another. */
const lines = (first: string, last: string): readonly Step[] => {
  const at = (symbol: string): number => weldForceSteps.findIndex((step) => step.symbol === symbol);
  return weldForceSteps.slice(at(first), at(last) + 1);
};

const forces: readonly Step[] = [
  ...cornerThroatSteps,
  { symbol: 'a_w', expression: 'a_e - c_w', unit: 'mm', meaning: 'throat at the end of life' },
  ...lines('V_hinged', 'M_e'),
  {
    symbol: 'f_c',
    expression: 'h_x * h_y > 0 ? abs(R_c) / (2 * t) : 0 * V_e',
    unit: 'N/mm',
    meaning: 'corner force over a thickness of the panel along both edges: there the twist goes over into shear',
  },
  {
    symbol: 'f_z',
    expression: 'k_r * max(V_e, f_c)',
    unit: 'N/mm',
    meaning: 'force per length square to the tube, off it or onto it: nothing beside the weld takes any of it',
  },
  ...lines('N_pull', 'e_r'),
  {
    symbol: 'm_r',
    expression: 'f_z * e_r + k_r * M_e',
    unit: 'N',
    meaning: 'moment about the weld: the force off its throat, and the whole edge moment, since no flat is heeled on',
  },
  ...lineForceSteps({ along: false, root: true }),
];

/** Strength of a weld on a tube's rounded corner: it alone carries the panel's edge, both ways. */
export const weldCorner: Check = {
  id: 'weld-corner',
  title: "Weld of a panel on the tube's corner, strength",
  limitState: 'strength',
  source: [
    ...cornerSources,
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.3.2.1, 4.5.3.3, 4.12', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J2.4, J4.2', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = welded(model, bay);
    return applies === true ? anyOnCorner(model, bay) : applies;
  },
  rule: weldRule,
  inputs: {
    ...{ p, a, b, t, E, nu, h_x, h_y, k_r },
    ...cornerInputs,
    c_w: cornerLoss,
    ...{ f_u, beta_w, F_EXX, f_yb, t_b },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on welds and rupture', 'allowable stress'),
    Omega_v: basisFactor('Omega_v', 'safety factor on yielding in shear', 'allowable stress'),
  },
  steps: {
    'partial factors': [...forces, simplifiedResistance],
    'allowable stress': [...forces, allowableLineForce],
  },
  solved: solvedWeldForces,
  demand: 'f_w',
  capacity: 'f_Rd',
  range: [
    gapRange,
    {
      holds: 'a_t > 0 * a_0 or s <= R / 2',
      otherwise:
        'the weld’s faces meet at less than 60°, where EN 1993-1-8, 4.3.2.1, knows no fillet: lap the panel half way over the corner radius or farther, or show the throat by a section through a trial weld',
    },
    { holds: 'a_w > 0 * a_0', otherwise: 'gap and corrosion leave no throat' },
  ],
  second: {
    title: 'stress on the throat by its parts: the force as shear alone below, force and moment at √3 of their sum above',
    source: [{ document: 'von Mises', clause: 'a stress of any direction counts between 1/√3 and 1 of its shear limit', memory: true }],
    steps: [
      { symbol: 'f_low', expression: 'max(f_r, 6 * m_r / a_w) / sqrt(3)', unit: 'N/mm', meaning: 'the larger part alone, square to the throat' },
      { symbol: 'f_high', expression: 'sqrt(3) * (abs(f_z) + abs(f_h) + abs(6 * m_r / a_w))', unit: 'N/mm', meaning: 'all parts plainly added' },
    ],
    of: 'f_w',
    low: 'f_low',
    high: 'f_high',
  },
  cautions: [
    'The panel stands off the tube: it hangs on this weld when pulled off and stands on it when pressed on, so that the weld turns from pull to push with every wave.',
    'One fillet against the edge moment: its throat bends elastically. Lap the panel past the corner radius if it can be done: the heel then takes the moment.',
    'A cold-formed corner may only be welded within limits of its radius and thickness (EN 1993-1-8, 4.14).',
    'In-plane pull is an upper estimate: edges that cannot move together.',
  ],
}; // prettier-ignore
