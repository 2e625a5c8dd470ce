import type { Step } from './check.ts';

const plate = ['a', 'b', 't', 'E', 'nu', 'p'] as const;

/** Forces per length at the worst point of the weld along a panel's edge: f_z, f_h and the moment m_r. */
export const weldForceSteps: readonly Step[] = [
  {
    symbol: 'V_hinged',
    kernel: 'plate.hinged.reaction',
    arguments: plate,
    unit: 'N/mm',
    meaning: 'largest edge force, four hinged edges',
  },
  {
    symbol: 'V_held',
    kernel: 'plate.held.reaction',
    arguments: plate,
    unit: 'N/mm',
    meaning: 'largest edge force, four held edges',
  },
  {
    symbol: 'M_held',
    kernel: 'plate.held.momentEdge',
    arguments: plate,
    unit: 'N*m/m',
    meaning: 'largest moment across the middle of an edge, four held edges',
  },
  {
    symbol: 'R_c',
    kernel: 'plate.hinged.cornerForce',
    arguments: plate,
    unit: 'N',
    meaning: 'force that holds a corner down, hinged edges',
  },
  {
    symbol: 'L_n',
    expression: 'h_x > 0 ? (h_y > 0 ? min(a, b) : a) : b',
    unit: 'mm',
    meaning: 'span between the welds',
  },
  {
    symbol: 'V_e',
    expression: 'h_x * h_y > 0 ? max(V_hinged, V_held) : p * L_n / 2',
    unit: 'N/mm',
    meaning: 'edge force per length, hinged or held, the larger',
  },
  {
    symbol: 'M_e',
    expression: 'h_x * h_y > 0 ? M_held : p * L_n^2 / 12',
    unit: 'N*m/m',
    meaning: 'edge moment of a held edge',
  },
  {
    symbol: 'f_c',
    expression: 'h_x * h_y > 0 ? abs(R_c) / (2 * l_f) : 0 * V_e',
    unit: 'N/mm',
    meaning: 'corner force over a lap along both edges',
  },
  {
    symbol: 'f_z',
    expression: 'k_r * (pulled > 0 ? V_e : max(M_e / l_f, f_c))',
    unit: 'N/mm',
    meaning:
      'pull per length off the tube: the edge force; pressed on, the edge moment held down against the heel, or the corner',
  },
  {
    symbol: 'N_pull',
    kernel: 'inPlanePull.hinged',
    arguments: ['L_n', 'L_n', 't', 'E', 'nu', 'p'],
    unit: 'N/mm',
    meaning: 'in-plane pull of the deflected panel on edges that cannot move, an upper estimate',
  },
  {
    symbol: 'f_h',
    expression: 'k_r * N_pull',
    unit: 'N/mm',
    meaning: 'pull per length across the weld, towards the panel',
  },
  { symbol: 'e_r', expression: 'a_w / (2 * sqrt(2))', unit: 'mm', meaning: "panel's edge to the middle of the throat" },
  {
    symbol: 'm_r',
    expression: 'f_z * e_r + k_r * pulled * h * M_e',
    unit: 'N',
    meaning:
      'moment about the weld that opens its root: the pull off the throat and, pulled off, the moment of edges relied on as held',
  },
];

export const weldForceCautions = [
  'Pressed on, the edge moment is taken as a pull in the weld against the heel at the end of the corner radius; pulled off, there is no heel and the weld is the hinge.',
  'A fillet on one side of a lap opens at its root under a pull off the tube (EN 1993-1-8, 4.12): its throat is judged elastically for that moment.',
  'In-plane pull is an upper estimate: edges that cannot move together.',
  'Fatigue starts at the root of such welds first and is not judged here.',
] as const;
