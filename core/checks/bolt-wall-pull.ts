import { bolted, boltInputs, nothingLeft } from './bolt-inputs.ts';
import { boltForceCautions, tensionInputs, tensionSteps } from './bolt-force-steps.ts';
import type { Check } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';

const { t_w, f_yw } = boltInputs;

/** Collapse of the tube's wall under the pull of one bolt. */
export const boltWallPull: Check = {
  id: 'bolt-wall-pull',
  title: "Tube's wall under the pull of a bolt",
  limitState: 'strength',
  source: [
    {
      document: 'K. W. Johansen, Yield-line Theory',
      edition: '1962',
      clause: 'fan of yield lines round a point',
      memory: true,
    },
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.1', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'F1', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: bolted,
  rule: nothingLeft,
  inputs: {
    ...tensionInputs,
    ...{ t_w, f_yw },
    gamma_M0: basisFactor('gamma_M0', 'partial factor on yielding', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...tensionSteps,
      {
        symbol: 'F_w_Rd',
        expression: 'pi * f_yw * t_w^2 / gamma_M0',
        unit: 'kN',
        meaning: 'resistance of one wall: 4 pi times its plastic moment',
      },
    ],
    'allowable stress': [
      ...tensionSteps,
      {
        symbol: 'F_w_Rd',
        expression: 'pi * f_yw * t_w^2 / Omega_b',
        unit: 'kN',
        meaning: 'allowable pull of one wall: 4 pi times its plastic moment',
      },
    ],
  },
  demand: 'F_t',
  capacity: 'F_w_Rd',
  second: {
    title: 'a welded joint of a vanishing brace on the same wall, by straight yield lines: 4 f_y t²',
    source: [{ document: 'EN 1993-1-8', edition: '2005', clause: 'Table 7.11, brace width to zero', memory: true }],
    steps: [
      {
        symbol: 'F_joint',
        expression: '4 * f_yw * t_w^2',
        unit: 'kN',
        meaning: 'straight yield lines, without a factor',
      },
    ],
    of: 'F_w_Rd',
    high: 'F_joint',
  },
  cautions: [
    ...boltForceCautions,
    'One wall is counted. A through-bolt with a sleeve pulls on the far wall and leans on the near one through the sleeve: the far wall is as thick.',
    'A yield-line load is an upper bound of the collapse load of a flat wall; the membrane action that it leaves out helps.',
  ],
};
