import { aluminiumPanel, bolted, boltInputs, factorOfEither, fixingAt } from './bolt-inputs.ts';
import { boltForceCautions, shearBound, shearInputs, shearSteps } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import type { Check, Input, SecondOpinion, Step } from './check.ts';
import { fieldPlaces, panelAt, panelYieldFactor } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { d_0, e_1, f_yp, f_u } = boltInputs;

/** A slot that runs along its row takes its whole length out of the panel there, and at the ends of the row too, which is safe. */
const d_0AlongRow: Input = {
  ...d_0,
  meaning: 'size of the hole along its row',
  read: (model, bay, situation) => {
    const [bolt] = panelAt(model, bay).bolts;
    return bolt?.slot && fixingAt(model, bay).slot === 'along the edge'
      ? bolt.slot.length
      : d_0.read(model, bay, situation);
  },
};

/** Areas for each bolt of a row: the plane in tension along the row, and its share of the two planes in shear at the ends. */
const areas = (row: 'x' | 'y'): readonly Step[] => [
  {
    symbol: `A_nt${row}`,
    expression: `(n_${row} - 1) * (s_${row} - d_0) * t / n_${row}`,
    unit: 'mm^2',
    meaning: `net plane along a row along ${row}, for each bolt`,
  },
  {
    symbol: `A_nv${row}`,
    expression: `2 * (e_1 - d_0 / 2) * t / n_${row}`,
    unit: 'mm^2',
    meaning: 'net planes from its end bolts to the edge, for each bolt',
  },
];

const net = (strength: string): Step => ({
  symbol: 'B_net',
  expression: `${strength} * (min(s_x, s_y) - d_0) * t`,
  unit: 'kN',
  meaning: 'panel torn from hole to hole beside the row, for each bolt',
});
const least: Step = {
  symbol: 'B_Rd',
  expression: 'min(B_x, B_y, B_net)',
  unit: 'kN',
  meaning: 'the least of both rows and of the net section',
};

/** Bounds of B_Rd from what a pitch of panel has. */
const bounds: SecondOpinion = {
  title:
    'Resistance: below, half of the plane between the holes by Tresca; above, a whole pitch of panel and both edges at the ultimate strength, no factor taken',
  source: [{ document: 'H. Tresca’s flow rule; areas counted by hand' }],
  steps: [
    {
      symbol: 'R_low',
      expression: '0.5 * f_yp * (min(s_x, s_y) - d_0) * t / (2 * gamma_R)',
      unit: 'kN',
      meaning: 'smaller resistance',
    },
    { symbol: 'R_high', expression: 'f_u * t * (min(s_x, s_y) + 2 * e_1)', unit: 'kN', meaning: 'larger resistance' },
  ],
  of: 'B_Rd',
  low: 'R_low',
  high: 'R_high',
};

/** The strip of panel outside a row of bolts torn off as a block, or the panel torn along its holes. */
export const boltBlockTear: Check = {
  id: 'bolt-block-tear',
  title: 'Panel torn along a row of bolts',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: '3.10.2, read in Steel Buildings in Europe, Part 5, 2.2.5.3',
      safety: 'partial factors',
    },
    {
      document: 'EN 1993-1-1',
      edition: '2005',
      clause: '6.2.3(2), net section',
      safety: 'partial factors',
      memory: true,
    },
    aluminiumPanel('8.5.2.2, 6.2.5: the same with γ_M1 on aluminium'),
    { document: 'AISC 360', edition: '2016', clause: 'J4.1, J4.3, from a public copy', safety: 'allowable stress' },
  ],
  places: fieldPlaces,
  applies: bolted,
  inputs: {
    ...shearInputs,
    ...{ d_0: d_0AlongRow, e_1, f_yp, f_u },
    gamma_M0: panelYieldFactor,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on rupture', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on rupture', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M2', 'Omega_J', 'factor on rupture, of either kind of basis'),
  },
  steps: {
    'partial factors': [
      ...shearSteps,
      ...areas('x'),
      ...areas('y'),
      ...(['x', 'y'] as const).map((row) => ({
        symbol: `B_${row}`,
        expression: `f_u * A_nt${row} / gamma_M2 + f_yp * A_nv${row} / (sqrt(3) * gamma_M0)`,
        unit: 'kN',
        meaning: `block of a row along ${row}, for each bolt`,
      })),
      net('0.9 / gamma_M2 * f_u'),
      least,
    ],
    'allowable stress': [
      ...shearSteps,
      ...areas('x'),
      ...areas('y'),
      ...(['x', 'y'] as const).map((row) => ({
        symbol: `B_${row}`,
        expression: `(f_u * A_nt${row} + min(0.6 * f_u * A_nv${row}, 0.6 * f_yp * 2 * e_1 * t / n_${row})) / Omega_J`,
        unit: 'kN',
        meaning: `block of a row along ${row}, for each bolt`,
      })),
      net('1 / Omega_J * f_u'),
      least,
    ],
  },
  solved: { inputs: solvedBoltForces },
  demand: 'F_v',
  capacity: 'B_Rd',
  second: boltSecondOpinion(shearBound, bounds),
  cautions: [...boltForceCautions, 'Every bolt of the row is taken as loaded like the worst one, which is safe.'],
};
