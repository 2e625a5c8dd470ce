import type { Check, Step } from './check.ts';
import { eyeCautions, eyePlaces } from './eye-inputs.ts';
import { footBoltPull, footCautions, footPlateInputs, footPullSteps, onFootPlate, stemRange } from './eye-foot-plate-inputs.ts'; // prettier-ignore
import { eyeTubeWall } from './eye-tube-wall.ts';
import { factorOfEither } from './bolt-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedLegs } from './solved-inputs.ts';
import { wallUnderBolt, wallUnderBoltBounds } from './wall-under-bolt.ts';

const { F_z, F_l, F_q, t_e, h_e, a_w, w_f, e, p_f, n_p } = footPlateInputs;
const { t_0, f_y0 } = eyeTubeWall.inputs;

const wall = (factor: 'gamma_M0' | 'Omega_b'): readonly Step[] => [
  ...footPullSteps,
  footBoltPull,
  wallUnderBolt('f_y0', 't_0', factor),
];

/** Wall of the tube under a bolt of an eye's foot plate: the far wall, on which its nut pulls. */
export const eyeFootWall: Check = {
  id: 'eye-foot-wall',
  title: 'Tube wall under the bolts of an eye’s foot',
  limitState: 'strength',
  source: [
    { document: 'K. W. Johansen, Yield-line Theory', edition: '1962', clause: 'fan of yield lines round a point', memory: true },
  ],
  places: eyePlaces,
  applies: onFootPlate,
  inputs: {
    ...{ F_z, F_l, F_q, t_e, h_e, a_w, w_f, e, p_f, n_p, t_0: t_0!, f_y0: f_y0! },
    gamma_M0: basisFactor('gamma_M0', 'partial factor on yielding', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M0', 'Omega_b', 'factor on yielding, of either kind of basis'),
  },
  steps: { 'partial factors': wall('gamma_M0'), 'allowable stress': wall('Omega_b') },
  solved: { inputs: solvedLegs },
  demand: 'B',
  capacity: 'F_w_Rd',
  range: stemRange,
  second: {
    title: 'below, 2 π plastic moments, that ring moments alone carry; above, straight yield lines across the whole wall, 16 plastic moments',
    ...wallUnderBoltBounds('f_y0', 't_0'),
  },
  cautions: [
    ...eyeCautions,
    ...footCautions,
    'Each bolt is judged by itself: bolts nearer than the width of the wall share one field of yield lines, which carries less than their sum. Plate washers under the nuts spread the pull.',
  ],
}; // prettier-ignore
