import { sleeveOf } from '../geometry/sleeve-of.ts';
import {
  bolted,
  boltAt,
  boltInputs,
  factorOfEither,
  fixingAt,
  tubesUnder,
  wallStabilityFactor,
} from './bolt-inputs.ts';
import { softestTube } from './bolt-separation.ts';
import { tightened, tighteningInputs } from './bolt-tightening.ts';
import { missing, type Check, type Input, type SecondOpinion, type Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';

const { d, f_yw } = boltInputs;
const { T_t, k_low } = tighteningInputs;

const sleeve: readonly Step[] = [
  { symbol: 'F_hi', expression: 'T_t / (k_low * d)', unit: 'kN', meaning: 'largest preload: the smoothest thread' },
  {
    symbol: 'A_c',
    expression: 'pi / 4 * (D_c^2 - d_c^2)',
    unit: 'mm^2',
    meaning: 'section of the sleeve',
  },
  {
    symbol: 'i_c',
    expression: 'sqrt(D_c^2 + d_c^2) / 4',
    unit: 'mm',
    meaning: 'radius of gyration of the sleeve',
  },
  {
    symbol: 'lambda',
    expression: 'l_c / (pi * i_c) * sqrt(f_yw / E_w)',
    unit: '1',
    meaning: 'slenderness, ends pinned',
  },
];

const ofSleeve = (meaning: string, size: (sleeve: ReturnType<typeof sleeveOf>) => number): Input => ({
  unit: 'mm',
  meaning: `${meaning}: as stated, else bore as the hole and a wall of a quarter of the bolt`,
  from: 'document: fixing',
  read: (model, bay, situation) => {
    const hole = boltInputs.d_0.read(model, bay, situation);
    return typeof hole === 'number' ? size(sleeveOf(fixingAt(model, bay), hole, boltAt(model, bay).diameter)) : hole;
  },
});

/** Bounds of F_c_Rd. */
const bounds: SecondOpinion = {
  title:
    'Resistance: below, nine tenths of Rankine’s and Gordon’s sum of squash and Euler load; above, the lesser of the two',
  source: [
    { document: 'L. Euler’s column; W. J. M. Rankine and L. Gordon’s formula for struts', memory: true },
    { document: 'the nine tenths: chosen here so that curve c up to a slenderness of 5 lies inside' },
  ],
  steps: [
    { symbol: 'N_y', expression: 'A_c * f_yw', unit: 'kN', meaning: 'squash load' },
    { symbol: 'N_E', expression: 'pi^2 * E_w * A_c * i_c^2 / l_c^2', unit: 'kN', meaning: 'Euler load' },
    {
      symbol: 'R_low',
      expression: '0.9 * N_y * N_E / ((N_y + N_E) * gamma_R)',
      unit: 'kN',
      meaning: 'smaller resistance',
    },
    { symbol: 'R_high', expression: 'min(N_y, N_E) / gamma_R', unit: 'kN', meaning: 'larger resistance' },
  ],
  of: 'F_c_Rd',
  low: 'R_low',
  high: 'R_high',
};

/** The crush sleeve between the walls of a hollow section, under the preload of its through-bolt. */
export const boltSleeve: Check = {
  id: 'bolt-sleeve',
  title: 'Sleeve crushed by the preload',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1993-1-1',
      edition: '2005',
      clause: '6.2.4, 6.3.1.2 with curve c',
      safety: 'partial factors',
      memory: true,
    },
    { document: 'AISC 360', edition: '2016', clause: 'E3', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = bolted(model, bay);
    if (applies !== true) return applies;
    if (fixingAt(model, bay).into !== 'through-bolt with sleeve') return 'the bolt has no sleeve';
    return tightened(model, bay);
  },
  rule: (model, bay) => {
    const { sleeve } = fixingAt(model, bay);
    return sleeve && sleeve.bore.si < boltAt(model, bay).diameter
      ? `the bolt does not pass the sleeve's bore of ${sleeve.bore.typed}`
      : undefined;
  },
  inputs: {
    ...{ d, f_yw, T_t, k_low },
    D_c: ofSleeve('outside of the sleeve', ({ outer }) => outer),
    d_c: ofSleeve('bore of the sleeve', ({ bore }) => bore),
    E_w: softestTube,
    l_c: {
      unit: 'mm',
      meaning: 'length of the sleeve: clear height of the highest tube under the bolts',
      from: 'geometry',
      read: (model, bay) => {
        const tubes = tubesUnder(model, bay);
        return tubes.length
          ? Math.max(...tubes.map(({ section }) => section.height - 2 * section.nominalWall))
          : missing('a tube that the panel is bolted to');
      },
    },
    gamma_M1: wallStabilityFactor,
    Omega_c: basisFactor('Omega_c', 'safety factor on compression', 'allowable stress'),
    gamma_R: factorOfEither(wallStabilityFactor, 'Omega_c', 'factor on compression, of either kind of basis'),
  },
  steps: {
    'partial factors': [
      ...sleeve,
      {
        symbol: 'Phi',
        expression: '0.5 * (1 + 0.49 * (lambda - 0.2) + lambda^2)',
        unit: '1',
        meaning: 'of curve c',
      },
      {
        symbol: 'chi',
        expression: 'lambda <= 0.2 ? 1 : 1 / (Phi + sqrt(Phi^2 - lambda^2))',
        unit: '1',
        meaning: 'reduction for buckling',
      },
      {
        symbol: 'F_c_Rd',
        expression: 'chi * A_c * f_yw / gamma_M1',
        unit: 'kN',
        meaning: 'compression that the sleeve resists',
      },
    ],
    'allowable stress': [
      ...sleeve,
      {
        symbol: 'chi',
        expression: 'lambda <= 1.5 ? 0.658^(lambda^2) : 0.877 / lambda^2',
        unit: '1',
        meaning: 'reduction for buckling: F_cr / F_y',
      },
      {
        symbol: 'F_c_Rd',
        expression: 'chi * A_c * f_yw / Omega_c',
        unit: 'kN',
        meaning: 'allowable compression of the sleeve',
      },
    ],
  },
  demand: 'F_hi',
  capacity: 'F_c_Rd',
  second: bounds,
  cautions: [
    'The sleeve is taken as weighed and drawn here, of steel as strong as the tube’s; order it so. All of the preload is taken to go through it, none round through the side walls of the tube: ends must be cut square and touch both walls.',
    'The largest preload is taken without a load factor: torque and k are stated as a range.',
  ],
};
