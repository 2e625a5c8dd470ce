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
    { document: 'AISC 360', edition: '2016', clause: 'J2.2b, from a public copy', safety: 'allowable stress' },
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
    t_8: constant(25.4 / 8, 'mm', 'twice 1/16 in', 'AISC 360, J2.2b'),
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
    title: 'the rule in inches, which keeps 1/16 in of the edge free: twice that below, the whole edge above',
    source: [{ document: 'AISC 360', clause: 'J2.2b in customary units, from a public copy; the margin is ours' }],
    steps: [
      { symbol: 'z_high', expression: 't_p', unit: 'mm', meaning: 'whole edge' },
      {
        symbol: 'z_low',
        expression: 't_p - t_8',
        unit: 'mm',
        meaning: 'edge less twice what the inch rule keeps free',
      },
    ],
    of: 'z_max',
    low: 'z_low',
    high: 'z_high',
  },
  cautions: ['A weld that melts the edge away has a smaller throat than its leg shows.'],
};
