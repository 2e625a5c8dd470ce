import type { Check, Step } from './check.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { constant } from './inputs.ts';
import { partsAt, weldAt, welded } from './weld-inputs.ts';

const thinner: Step = { symbol: 't_1', expression: 'min(t_p, t_w)', unit: 'mm', meaning: 'thinner part' };

/** Least throat of the weld along a panel's edge, as made. */
export const weldSize: Check = {
  id: 'weld-size',
  title: 'Least throat of the weld',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.2(2), from public summaries', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'Table J2.4, from public copies', safety: 'allowable stress' },
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
    t_w: {
      unit: 'mm',
      meaning: 'thinnest wall of the tubes',
      from: 'catalogue: sections',
      read: (model, bay) =>
        Math.min(
          ...partsAt(model, bay)
            .slice(1)
            .map(({ thickness }) => thickness),
        ),
    },
    a_3: { ...constant(3, 'mm', 'least throat', 'EN 1993-1-8, 4.5.2(2)'), only: 'partial factors' },
    ...legs(),
  },
  steps: {
    'partial factors': [
      thinner,
      { symbol: 'a_min', expression: 'a_3', unit: 'mm', meaning: 'least throat, whatever the thickness' },
    ],
    'allowable stress': [
      thinner,
      {
        symbol: 'z_min',
        expression: 't_1 <= t_6 ? z_3 : (t_1 <= t_13 ? z_5 : (t_1 <= t_19 ? z_6 : z_8))',
        unit: 'mm',
        meaning: 'least leg by the thinner part',
      },
      { symbol: 'a_min', expression: 'z_min / sqrt(2)', unit: 'mm', meaning: 'least throat' },
    ],
  },
  demand: 'a_min',
  capacity: 'a_0',
  second: {
    title: 'either code asks for a throat between 2 and 6 mm',
    source: [{ document: 'AISC 360', edition: '2016', clause: 'Table J2.4, from public copies' }],
    steps: [
      { symbol: 'a_high', expression: 'a_6', unit: 'mm', meaning: 'throat of the largest leg, rounded up' },
      { symbol: 'a_low', expression: 'a_2', unit: 'mm', meaning: 'throat of the smallest leg, rounded down' },
    ],
    of: 'a_min',
    low: 'a_low',
    high: 'a_high',
  },
  cautions: [
    'Both rules were made for steel. On aluminium the same least throat is common practice, no source.',
    'A small weld on a thick part cools too fast and cracks: preheat by the welding procedure.',
  ],
};

function legs() {
  const row = (value: number, meaning: string) => ({
    ...constant(value, 'mm', meaning, 'AISC 360, Table J2.4'),
    only: 'allowable stress' as const,
  });
  return {
    a_2: constant(2, 'mm', 'least that either code asks for, rounded down', 'EN 1993-1-8, 4.5.2; AISC 360, Table J2.4'),
    a_6: constant(6, 'mm', 'most that either code asks for, rounded up', 'EN 1993-1-8, 4.5.2; AISC 360, Table J2.4'),
    t_6: row(6, 'thinner part of the first row, up to'),
    t_13: row(13, 'second row, up to'),
    t_19: row(19, 'third row, up to'),
    z_3: row(3, 'least leg, first row'),
    z_5: row(5, 'least leg, second row'),
    z_6: row(6, 'least leg, third row'),
    z_8: row(8, 'least leg, fourth row'),
  };
}
