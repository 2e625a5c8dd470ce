import type { Check } from './check.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { constant } from './inputs.ts';
import { weldAt, welded } from './weld-inputs.ts';

/** Largest leg of the weld along a panel's edge: it must leave the edge to be seen. */
export const weldEdge: Check = {
  id: 'weld-edge',
  title: "Largest weld on the panel's edge",
  limitState: 'strength',
  source: [
    { document: 'common practice, no source', clause: 'leg no larger than the edge', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J2.2b', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: welded,
  once: true,
  detailing: true,
  inputs: {
    a_0: {
      unit: 'mm',
      meaning: 'throat as made',
      from: 'document: fixing',
      read: (model, bay) => weldAt(model, bay).throat.si,
    },
    t_p: {
      unit: 'mm',
      meaning: 'thickness of the panel',
      from: 'document: designs',
      read: (model, bay) => panelAt(model, bay).thickness,
    },
    t_6: {
      ...constant(6, 'mm', 'edge from which some of it must stay free', 'AISC 360, J2.2b'),
      only: 'allowable stress',
    },
    t_2: { ...constant(2, 'mm', 'what must stay free', 'AISC 360, J2.2b'), only: 'allowable stress' },
  },
  steps: {
    'partial factors': [
      { symbol: 'z', expression: 'sqrt(2) * a_0', unit: 'mm', meaning: 'leg of the weld' },
      { symbol: 'z_max', expression: 't_p', unit: 'mm', meaning: 'largest leg on that edge' },
    ],
    'allowable stress': [
      { symbol: 'z', expression: 'sqrt(2) * a_0', unit: 'mm', meaning: 'leg of the weld' },
      { symbol: 'z_max', expression: 't_p < t_6 ? t_p : t_p - t_2', unit: 'mm', meaning: 'largest leg on that edge' },
    ],
  },
  demand: 'z',
  capacity: 'z_max',
  second: {
    title: 'no rule allows a leg above the edge, or forbids one of half of it',
    source: [{ document: 'derived by hand' }],
    steps: [
      { symbol: 'z_high', expression: 't_p', unit: 'mm', meaning: 'whole edge' },
      { symbol: 'z_low', expression: 't_p / 2', unit: 'mm', meaning: 'half the edge' },
    ],
    of: 'z_max',
    low: 'z_low',
    high: 'z_high',
  },
  cautions: ['A weld that melts the edge away has a smaller throat than its leg shows.'],
};
