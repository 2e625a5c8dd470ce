import type { Check } from './check.ts';

/** A line cannot push: under the upward force of service the plate's weight in water must keep it taut. */
export const suspensionSlack: Check = {
  id: 'suspension-slack',
  title: 'Suspension stays taut',
  limitState: 'stability',
  source: [{ document: 'equilibrium: a line pulls only', clause: 'load without its factor' }],
  places: () => ['suspension'],
  applies: (model, _, situation) => {
    if (model.document.grid.suspension.kind === 'strut') return 'a strut pushes as well as pulls';
    return (situation.loadCase === 'service' && situation.direction === 'up') || 'no force of service lifts the plate';
  },
  inputs: {
    F: {
      unit: 'kN',
      meaning: 'upward force on the plate, load factor included',
      from: 'loads: situation',
      read: (_model, _place, { force }) => force,
    },
    gamma_F: {
      unit: '1',
      meaning: 'load factor, taken off again',
      from: 'loads: situation',
      read: (_model, _place, { loadFactor }) => loadFactor,
    },
    W: {
      unit: 'kN',
      meaning: 'weight in water',
      from: 'mass: as built',
      read: ({ mass }) => mass.submergedWeight.asBuilt,
    },
    W_flooded: {
      unit: 'kN',
      meaning: 'weight in water, every tube flooded',
      from: 'mass',
      read: ({ mass }) => mass.submergedWeight.flooded,
    },
    W_sealed: {
      unit: 'kN',
      meaning: 'weight in water, every tube sealed',
      from: 'mass',
      read: ({ mass }) => mass.submergedWeight.sealed,
    },
    i_W: {
      unit: '1',
      meaning: 'the stated force is net of the weight (1) or not (0)',
      from: 'document: loads',
      read: ({ document }) => (document.loads.service.includes.includes('weight') ? 1 : 0),
    },
  },
  steps: { 'partial factors': steps(), 'allowable stress': steps() },
  demand: 'F_up',
  capacity: 'W_Rd',
  second: {
    title: 'weight in water with every tube sealed below, with every tube flooded above',
    source: [{ document: 'Archimedes' }],
    steps: [
      { symbol: 'W_low', expression: '(1 - i_W) * W_sealed', unit: 'kN', meaning: 'every tube sealed' },
      { symbol: 'W_high', expression: '(1 - i_W) * W_flooded', unit: 'kN', meaning: 'every tube flooded' },
    ],
    of: 'W_Rd',
    low: 'W_low',
    high: 'W_high',
  },
  cautions: [
    'A line that goes slack comes taut with a jerk: the snap load is not judged here and can exceed every load that is.',
    'Weight of growth and lost sealing of tubes change the weight in water with time.',
  ],
};

function steps() {
  return [
    { symbol: 'F_up', expression: 'F / gamma_F', unit: 'kN', meaning: 'upward force without load factor' },
    {
      symbol: 'W_Rd',
      expression: '(1 - i_W) * W',
      unit: 'kN',
      meaning: 'what keeps the line taut: none of it where the force is net of it already',
    },
  ] as const;
}
