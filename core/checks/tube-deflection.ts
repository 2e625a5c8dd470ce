import type { Check } from './check.ts';
import { constant } from './inputs.ts';
import { tubeAt, tubeForceInputs, tubeForces, tubeInputs, tubePlaces } from './tube-inputs.ts';
import { fromSolution, solvedTubeForces } from './solved-inputs.ts';

const { M } = tubeForceInputs;
const { I, E } = tubeInputs;

/** Deflection of a tube under the load without its factor. */
export const tubeDeflection: Check = {
  id: 'tube-deflection',
  title: 'Deflection of a tube',
  limitState: 'serviceability',
  source: [{ document: 'common practice, no source', clause: 'length over 200' }],
  places: tubePlaces,
  applies: (_model, _id, { accidental }) => !accidental || 'nothing of the kind is asked of an accident',
  inputs: {
    w_F: {
      unit: 'mm',
      meaning: 'largest deflection, load factor included',
      from: 'loads: grid of tubes',
      read: (_, id, situation) => tubeForces(situation, id, ({ deflection }) => Math.abs(deflection)),
    },
    w_o: {
      unit: 'mm',
      meaning: 'largest deflection of the tubes that cross it, load factor included',
      from: 'loads: grid of tubes',
      read: (model, id, situation) => {
        let largest = 0;
        for (const [other, { deflection }] of situation.tubes)
          if (tubeAt(model, other).set !== tubeAt(model, id).set && Math.abs(deflection) > largest)
            largest = Math.abs(deflection);
        return largest;
      },
    },
    gamma_F: {
      unit: '1',
      meaning: 'load factor, taken off again',
      from: 'loads: situation',
      read: (_model, _id, { loadFactor }) => loadFactor,
    },
    L: {
      unit: 'm',
      meaning: 'length of the tube',
      from: 'geometry',
      read: (model, id) => tubeAt(model, id).to - tubeAt(model, id).from,
    },
    n_L: constant(200, '1', 'length over deflection, least', 'common practice, no source'),
    ...{ M, I, E },
  },
  steps: {
    'partial factors': [...deflections()],
    'allowable stress': [...deflections()],
  },
  solved: {
    inputs: {
      w_F: fromSolution('mm', 'largest deflection, load factor included', ({ tubes }, _, id) => tubes[id]?.rise),
      M: solvedTubeForces.M,
      w_o: fromSolution(
        'mm',
        'largest deflection of the tubes that cross it, load factor included',
        ({ tubes }, model, id) =>
          Math.max(
            0,
            ...Object.keys(tubes).flatMap((other) =>
              tubeAt(model, other).set === tubeAt(model, id).set ? [] : [tubes[other]!.rise],
            ),
          ),
      ),
    },
  },
  demand: 'w',
  capacity: 'w_lim',
  second: {
    title: 'a bar bent to the largest moment along its whole length, on top of the tubes that cross it',
    source: [
      {
        document: 'Timoshenko, Strength of Materials',
        clause: 'cantilever under an end moment, M L²/(2 E I)',
        memory: true,
      },
    ],
    steps: [
      {
        symbol: 'w_high',
        expression: '(M * L^2 / (2 * E * I) + w_o) / gamma_F',
        unit: 'mm',
        meaning: 'bound on the deflection',
      },
    ],
    of: 'w',
    high: 'w_high',
  },
  cautions: [
    'The limit is common practice for looks and fit-up, not for safety; what hangs on the plate may need less.',
  ],
};

function deflections() {
  return [
    { symbol: 'w', expression: 'w_F / gamma_F', unit: 'mm', meaning: 'largest deflection without load factor' },
    { symbol: 'w_lim', expression: 'L / n_L', unit: 'mm', meaning: 'limit' },
  ] as const;
}
