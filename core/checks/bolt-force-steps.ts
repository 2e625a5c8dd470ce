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
    expression: 'h_x * h_y > 0 ? max(M_held, M_lost) : p * (h_x > 0 ? a : b)^2 / 12',
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

/** Bounds of F_t by equilibrium and beam theory: no plate theory in them. */
export const tensionBounds: SecondOpinion = {
  title:
    'Tension: mean of all bolts below; above, twice what a strip across the shorter side hands to its bolts (with a row lost: the whole load on one bolt), and the moment of a strip on hinges (of a cantilever)',
  source: [{ document: 'equilibrium and beam theory, derived by hand; compared with plates on 2 to 20 bolts a row' }],
  steps: [
    { symbol: 'F_all', expression: 'p_off * a_p * b_p', unit: 'kN', meaning: 'whole force on the bolts of the field' },
    { symbol: 'F_low', expression: 'F_all / (2 * n_x + 2 * n_y - 4)', unit: 'kN', meaning: 'mean of all bolts' },
    {
      symbol: 'F_strip',
      expression: 'p_off * (max(s_x, s_y) + 2 * max(i_x, i_y)) * min(a_p, b_p)',
      unit: 'kN',
      meaning: 'twice the end force of a strip across the shorter side, over a pitch and the overhang beside it',
    },
    {
      symbol: 'L_m',
      expression: 'h_x * h_y > 0 ? min(a, b) : (h_x > 0 ? a : b)',
      unit: 'mm',
      meaning: 'span of the strip that bends over the edge',
    },
    {
      symbol: 'M_high',
      expression: '(lost > 0 ? 1 / 2 : 1 / 8) * p * L_m^2',
      unit: 'N*m/m',
      meaning: 'moment of a cantilever (a row lost) or of a hinged strip on that span',
    },
    {
      symbol: 'F_high',
      expression: '(lost > 0 ? F_all : F_strip) + M_high * max(s_x, s_y) / min(l_x, l_y)',
      unit: 'kN',
      meaning: 'the larger tension',
    },
  ],
  of: 'F_t',
  low: 'F_low',
  high: 'F_high',
};

/** Bounds of F_v: the panel without its stretch, and as a cable without bending stiffness. */
export const shearBound: SecondOpinion = {
  title:
    'Shear: above, the stretch of a strip bent as if nothing held its ends, or a cable of no bending stiffness (Poisson’s ratio at its most, 1/2); below, the same stretch with the deflection that such a pull leaves',
  source: [
    { document: 'statics of a shallow parabola, derived by hand' },
    {
      document: 'Timoshenko & Gere, Theory of Elastic Stability',
      edition: '2nd',
      clause: 'art. 1.11',
      memory: true,
    },
  ],
  steps: [
    {
      symbol: 'N_bent',
      expression: '17 / 280 * p^2 * L_n^6 * (1 - nu^2) / (E * t^5)',
      unit: 'kN/m',
      meaning:
        'pull that undoes the stretch of a strip bent freely, E t / (1 - nu²) times half the mean square of its slope',
    },
    {
      symbol: 'N_cable',
      expression: 'cbrt(E * t * (p * L_n)^2 / 18)',
      unit: 'kN/m',
      meaning: 'pull of the cable, cbrt(E t (p L)² / 24 (1 - nu²)) with nu = 1/2',
    },
    { symbol: 'N_high', expression: 'min(N_bent, N_cable)', unit: 'kN/m', meaning: 'the larger pull' },
    {
      symbol: 'N_E',
      expression: 'pi^2 * E * t^3 / (12 * (1 - nu^2) * L_n^2)',
      unit: 'kN/m',
      meaning: "Euler's load of the strip: a pull N divides its deflection by 1 + N / N_E",
    },
    {
      symbol: 'N_low',
      expression: 'N_bent / (1 + N_high / N_E)^2',
      unit: 'kN/m',
      meaning: 'pull that undoes the stretch that is left under the larger pull',
    },
    {
      symbol: 'F_most',
      expression: 'N_high * max(h_y * s_x, h_x * s_y)',
      unit: 'kN',
      meaning: 'shear of a bolt under the larger pull',
    },
    {
      symbol: 'F_least',
      expression: 'N_low * max(h_y * s_x, h_x * s_y)',
      unit: 'kN',
      meaning: 'shear of a bolt under the smaller pull',
    },
  ],
  of: 'F_v',
  low: 'F_least',
  high: 'F_most',
};

export const boltForceCautions = [
  'Prying and in-plane pull are upper estimates: full edge fixity, and edges that cannot move together.',
  'Tighten and lock the nuts: a nut that backs off under reversing load takes its bolt out of the row.',
] as const;
