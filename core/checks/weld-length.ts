import { missing, type Check } from './check.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { constant } from './inputs.ts';
import { ofAluminium, weldAt, welded } from './weld-inputs.ts';

/** Least effective length of a run of the weld. */
export const weldLength: Check = {
  id: 'weld-length',
  title: 'Least length of a weld run',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.1, from a public summary', safety: 'partial factors' },
    {
      document: 'EN 1999-1-1',
      edition: '2007',
      clause: '8.6.3.3: eight throats on aluminium',
      safety: 'partial factors',
      metal: 'aluminium',
      memory: true,
    },
    { document: 'AISC 360', edition: '2016', clause: 'J2.2b, from a public copy', safety: 'allowable stress' },
  ],
  places: fieldPlaces,
  applies: welded,
  once: true,
  detailing: true,
  inputs: {
    l_0: {
      unit: 'mm',
      meaning: 'shortest run, end to end',
      from: 'geometry',
      read: (model, bay) => {
        const lengths = panelAt(model, bay).weldRuns.map(({ length }) => length);
        if (lengths.length === 0) return missing('a weld run: the panel meets none of its tubes at the same level');
        return Math.min(...lengths);
      },
    },
    a_0: {
      unit: 'mm',
      meaning: 'throat as made',
      from: 'document: fixing',
      read: (model, bay) => weldAt(model, bay).throat.si,
    },
    l_30: { ...constant(30, 'mm', 'least effective length', 'EN 1993-1-8, 4.5.1(2)'), only: 'partial factors' },
    k_l: {
      unit: '1',
      meaning: 'least effective length over throat: 6 on steel, 8 on aluminium (EN 1999-1-1, 8.6.3.3, from memory)',
      from: 'catalogue: materials',
      only: 'partial factors',
      read: (model, bay) => (ofAluminium(model, bay) ? 8 : 6),
    },
    l_38: constant(38, 'mm', 'least length of a run', 'AISC 360, J2.2b'),
  },
  steps: {
    'partial factors': [
      { symbol: 'l_eff', expression: 'l_0 - 2 * a_0', unit: 'mm', meaning: 'effective length, ends left out' },
      { symbol: 'l_min', expression: 'max(l_30, k_l * a_0)', unit: 'mm', meaning: 'least effective length' },
    ],
    'allowable stress': [
      { symbol: 'l_eff', expression: 'l_0', unit: 'mm', meaning: 'length of the run' },
      { symbol: 'l_min', expression: 'max(l_38, 4 * sqrt(2) * a_0)', unit: 'mm', meaning: 'least length: four legs' },
    ],
  },
  demand: 'l_min',
  capacity: 'l_eff',
  second: {
    title: 'four legs, the rule of AISC 360, below; both lengths of a rule added above',
    source: [{ document: 'AISC 360', edition: '2016', clause: 'J2.2b, from a public copy' }],
    steps: [
      { symbol: 'l_low', expression: '4 * sqrt(2) * a_0', unit: 'mm', meaning: 'four legs' },
      { symbol: 'l_high', expression: 'l_38 + 8 * a_0', unit: 'mm', meaning: 'sum' },
    ],
    of: 'l_min',
    low: 'l_low',
    high: 'l_high',
  },
  cautions: [],
};
