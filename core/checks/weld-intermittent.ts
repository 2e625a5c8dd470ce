import type { Check } from './check.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { constant } from './inputs.ts';
import { partsAt, weldAt, welded } from './weld-inputs.ts';

/** Gaps of an intermittent weld; under water such a weld fails by rule. */
export const weldIntermittent: Check = {
  id: 'weld-intermittent',
  title: 'Gaps of an intermittent weld',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.3.2.2 and Figure 4.1', memory: true },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J3.5 (spacing of stitches), taken from EN 1993-1-8 here',
      safety: 'allowable stress',
      memory: true,
    },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = welded(model, bay);
    if (applies !== true) return applies;
    return weldAt(model, bay).pattern === 'intermittent' || 'the weld is continuous';
  },
  once: true,
  detailing: true,
  rule: () =>
    'intermittent welds leave open crevices in sea water: EN 1993-1-8, 4.3.2.2, keeps them out of corrosive service. Weld all round, or seal the gaps',
  inputs: {
    g_w: {
      unit: 'mm',
      meaning: 'gap between runs',
      from: 'document: fixing',
      read: (model, bay) => weldAt(model, bay).gap!.si,
    },
    t_1: {
      unit: 'mm',
      meaning: 'thinner part',
      from: 'document: designs',
      read: (model, bay) => Math.min(...partsAt(model, bay).map(({ thickness }) => thickness)),
    },
    b_p: {
      unit: 'mm',
      meaning: 'shorter side of the panel',
      from: 'geometry',
      read: (model, bay) => {
        const { x0, x1, y0, y1 } = panelAt(model, bay).outline;
        return Math.min(x1 - x0, y1 - y0);
      },
    },
    g_200: constant(200, 'mm', 'largest gap', 'EN 1993-1-8, Figure 4.1'),
  },
  steps: { 'partial factors': gaps(), 'allowable stress': gaps() },
  demand: 'g_w',
  capacity: 'g_max',
  second: {
    title: 'the rule for a part in compression is the strictest; none is looser than 16 thicknesses',
    source: [{ document: 'EN 1993-1-8', edition: '2005', clause: 'Figure 4.1', memory: true }],
    steps: [{ symbol: 'g_high', expression: '16 * t_1', unit: 'mm', meaning: 'gap of a part in tension' }],
    of: 'g_max',
    high: 'g_high',
  },
  cautions: [
    'End each side with a run of three quarters of the panel’s width or return the weld round the corner.',
    'Shown for comparison only: the weld fails in sea water whatever its gaps.',
  ],
};

function gaps() {
  return [
    {
      symbol: 'g_max',
      expression: 'min(12 * t_1, 0.25 * b_p, g_200)',
      unit: 'mm',
      meaning: 'largest gap, part in compression',
    },
  ] as const;
}
