import type { SecondOpinion, Step } from './check.ts';
import { boltForceInputs } from './bolt-inputs.ts';
import { fieldInputs } from './field-inputs.ts';

const { p, a, b, t, E, nu } = fieldInputs;
const { pulled, lost, h_x, h_y, a_b, b_b, n_x, n_y, i_x, i_y, d_w, l_x, l_y } = boltForceInputs;
const plate = { p, a, b, t, E, nu };

/** What the tension in the worst bolt follows from. */
export const tensionInputs = { ...plate, pulled, lost, h_x, h_y, a_b, b_b, n_x, n_y, i_x, i_y, d_w, l_x, l_y };
/** What the shear in the worst bolt follows from. */
export const shearInputs = { ...plate, h_x, h_y, a_b, b_b, n_x, n_y };
/** Both. */
export const boltForcesInputs = { ...tensionInputs, ...shearInputs };

const pitches: readonly Step[] = [
  { symbol: 's_x', expression: 'a_b / (n_x - 1)', unit: 'mm', meaning: 'pitch of the rows along x' },
  { symbol: 's_y', expression: 'b_b / (n_y - 1)', unit: 'mm', meaning: 'pitch of the rows along y' },
];

const tension: readonly Step[] = [
  {
    symbol: 'p_off',
    expression: 'pulled * p',
    unit: 'kPa',
    meaning: 'pressure that hangs on the bolts: none when the panel is pressed onto its tubes',
  },
  { symbol: 'p_lost', expression: 'lost * p_off', unit: 'kPa', meaning: 'the same with a row of bolts lost' },
  { symbol: 'r_b', expression: 'd_w / 2 + t', unit: 'mm', meaning: 'washer spread through the plate' },
  { symbol: 'a_p', expression: 'a_b + 2 * i_x', unit: 'mm', meaning: 'plate from edge to edge, along x' },
  { symbol: 'b_p', expression: 'b_b + 2 * i_y', unit: 'mm', meaning: 'plate from edge to edge, along y' },
  {
    symbol: 'R_bolt',
    kernel: 'plate.bolted.boltPush',
    arguments: ['a_p', 'b_p', 't', 'E', 'nu', 'p_off', 'n_x', 'n_y', 'i_x', 'i_y', 'r_b'],
    unit: 'kN',
    meaning: 'largest force of the plate on a bolt, hung on its bolts, prying apart',
  },
  {
    symbol: 'R_group',
    kernel: 'bolts.rowLost.group',
    arguments: ['a_b', 'b_b', 'n_x', 'n_y', 'i_x', 'i_y', 'p_lost'],
    unit: 'kN',
    meaning: 'with a row lost: largest force, plate rigid on the bolts that are left (elastic group)',
  },
  {
    symbol: 'R_rest',
    kernel: 'bolts.rowLost.plate',
    arguments: ['a_b', 'b_b', 't', 'E', 'nu', 'p_lost', 'n_x', 'n_y', 'i_x', 'i_y'],
    unit: 'kN',
    meaning: 'with a row lost: largest force, plate bending between the bolts that are left',
  },
  {
    symbol: 'M_held',
    kernel: 'plate.held.momentEdge',
    arguments: ['a', 'b', 't', 'E', 'nu', 'p'],
    unit: 'N*m/m',
    meaning: 'largest moment across the middle of an edge, all four held',
  },
  {
    symbol: 'M_lost',
    kernel: 'bolts.rowLost.edgeMoment',
    arguments: ['a', 'b', 't', 'E', 'nu', 'p_lost'],
    unit: 'N*m/m',
    meaning: 'the same with a row lost: three edges held, one free',
  },
  {
    symbol: 'M_edge',
    expression: 'h_x * h_y > 0 ? max(M_held, M_lost) : p * (h_x * a + h_y * b)^2 / 12',
    unit: 'N*m/m',
    meaning:
      'edge moment that a full edge fixity would bring: the bolts and the wall of the tube carry it, whatever the bending check relies on',
  },
  {
    symbol: 'Q',
    expression: 'M_edge * max(h_x * s_y / l_x, h_y * s_x / l_y)',
    unit: 'kN',
    meaning:
      "force of the edge moment in a bolt: prying when pulled (it cannot be ruled out, the plate's outer edge touches the tube behind the bolt), holding down when pressed",
  },
  {
    symbol: 'F_t',
    expression: 'max(R_bolt, R_group, R_rest) + Q',
    unit: 'kN',
    meaning: 'tension in the worst bolt, prying included',
  },
];

const shear: readonly Step[] = [
  {
    symbol: 'L_n',
    expression: 'h_x > 0 ? (h_y > 0 ? min(a, b) : a) : b',
    unit: 'mm',
    meaning: 'span that pulls on the edges',
  },
  {
    symbol: 'N_pull',
    kernel: 'inPlanePull.hinged',
    arguments: ['L_n', 'L_n', 't', 'E', 'nu', 'p'],
    unit: 'kN/m',
    meaning: 'in-plane pull of the deflected panel on edges that cannot move, an upper estimate',
  },
  {
    symbol: 'F_v',
    expression: 'N_pull * max(h_y * s_x, h_x * s_y)',
    unit: 'kN',
    meaning: 'shear in the worst bolt, once holes have slipped into bearing',
  },
];

/** Tension in the worst bolt of a field: F_t. */
export const tensionSteps: readonly Step[] = [...pitches, ...tension];
/** Shear in the worst bolt of a field: F_v. */
export const shearSteps: readonly Step[] = [...pitches, ...shear];
/** Both. */
export const boltForcesSteps: readonly Step[] = [...pitches, ...tension, ...shear];

/** Bounds of F_t by equilibrium alone: no plate theory in them. */
export const tensionBounds: SecondOpinion = {
  title:
    'equilibrium: mean of all bolts below; above, the whole load on one bolt and a prying moment that no edge exceeds',
  source: [{ document: 'equilibrium of the panel, derived by hand' }],
  steps: [
    { symbol: 'F_all', expression: 'p_off * a_p * b_p', unit: 'kN', meaning: 'whole force on the bolts of the field' },
    { symbol: 'F_low', expression: 'F_all / (2 * n_x + 2 * n_y - 4)', unit: 'kN', meaning: 'mean of all bolts' },
    {
      symbol: 'M_high',
      expression: '(lost > 0 ? 1 / 2 : 1 / 8) * p * max(a, b)^2',
      unit: 'N*m/m',
      meaning: 'moment of a cantilever (a row lost) or of a hinged strip on the longer span',
    },
    {
      symbol: 'F_high',
      expression: 'F_all + M_high * max(s_x, s_y) / min(l_x, l_y)',
      unit: 'kN',
      meaning: 'everything on one bolt',
    },
  ],
  of: 'F_t',
  low: 'F_low',
  high: 'F_high',
};

/** Bound of F_v: the panel as a cable without bending stiffness. */
export const shearBound: SecondOpinion = {
  title: 'a cable across the span, without bending stiffness: N³ = E t (p L)² / 24 (1 - ν²), with ν at its most, 1/2',
  source: [{ document: 'statics of a shallow parabola, derived by hand' }],
  steps: [
    {
      symbol: 'N_cable',
      expression: 'cbrt(E * t * (p * L_n)^2 / 18)',
      unit: 'kN/m',
      meaning: 'pull of the cable',
    },
    {
      symbol: 'F_cable',
      expression: 'N_cable * max(h_y * s_x, h_x * s_y)',
      unit: 'kN',
      meaning: 'shear of a bolt under it',
    },
  ],
  of: 'F_v',
  high: 'F_cable',
};

export const boltForceCautions = [
  'Prying and in-plane pull are upper estimates: full edge fixity, and edges that cannot move together.',
  'Tighten and lock the nuts: a nut that backs off under reversing load takes its bolt out of the row.',
] as const;
