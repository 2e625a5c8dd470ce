import { bolted, boltInputs, factorOfEither, fixingAt, nothingLeft, wallYieldFactor } from './bolt-inputs.ts';
import { boltForceCautions, tensionBounds, tensionInputs, tensionSteps } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import type { Check, SecondOpinion } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';
import { wallUnderBolt, wallUnderBoltBounds } from './wall-under-bolt.ts';

const { t_w, f_yw } = boltInputs;

/** Bounds of F_w_Rd: a field of moments that carries it below, another mechanism above. */
const bounds: SecondOpinion = {
  title:
    'Resistance: below, 2 π plastic moments, the load that Tresca’s rule carries by ring moments alone, however the wall is held; above, straight yield lines across the whole wall to a brace of no width, 16 plastic moments',
  ...wallUnderBoltBounds('f_yw', 't_w'),
};

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
  applies: (model, bay) => {
    const applies = bolted(model, bay);
    if (applies !== true) return applies;
    return fixingAt(model, bay).into !== 'clamp' || 'the clamp leans on the far corners of the tube, not on one wall';
  },
  rule: nothingLeft,
  inputs: {
    ...tensionInputs,
    ...{ t_w, f_yw },
    gamma_M0: wallYieldFactor,
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
    gamma_R: factorOfEither(wallYieldFactor, 'Omega_b', 'factor on yielding, of either kind of basis'),
  },
  steps: {
    'partial factors': [...tensionSteps, wallUnderBolt('f_yw', 't_w', 'gamma_M0')],
    'allowable stress': [...tensionSteps, wallUnderBolt('f_yw', 't_w', 'Omega_b', 'allowable pull')],
  },
  solved: { inputs: solvedBoltForces, second: bounds },
  demand: 'F_t',
  capacity: 'F_w_Rd',
  second: boltSecondOpinion(tensionBounds, bounds),
  cautions: [
    ...boltForceCautions,
    'One wall is counted. A through-bolt with a sleeve pulls on the far wall and leans on the near one through the sleeve: the far wall is as thick.',
    'A yield-line load is an upper bound of the collapse load of a flat wall; the membrane action that it leaves out helps.',
  ],
};
