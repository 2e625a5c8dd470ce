import { demoDocument } from '../geometry/demo-document.ts';

/** Service force of the water alone, so that weight is added by the cases. */
export const waterOnly = { loads: { service: { includes: ['inertia', 'drag'] } } };

/** All the cases have their data. */
export const allCases = {
  loads: {
    crossing: { speed: '0.5 m/s' },
    liftOut: { speed: '0.3 m/s', dragCoefficient: { value: 2.5, source: 'invented' } },
    deck: {
      supports: [
        { id: 'D1', x: '0 m', y: '0 m' },
        { id: 'D2', x: '3.3 m', y: '0 m' },
        { id: 'D3', x: '0 m', y: '2.6 m' },
        { id: 'D4', x: '3.3 m', y: '2.6 m' },
        { id: 'D5', x: '1.1 m', y: '1.3 m' },
      ],
      dynamicFactor: { value: 1.2, source: 'invented' },
    },
  },
};

const corner = (x: string, y: string, id: string) => ({ id, x, y });
export const fourCorners = [
  corner('0 m', '0 m', 'S1'),
  corner('3.3 m', '0 m', 'S2'),
  corner('3.3 m', '2.6 m', 'S3'),
  corner('0 m', '2.6 m', 'S4'),
];

export const hungBy = (kind: 'line' | 'bridle' | 'strut', attachments: object[], apex: string | null = null) => ({
  grid: { suspension: { kind, attachments, apex: kind === 'bridle' ? (apex ?? '3 m') : null } },
});

/** Invented plates of every kind of suspension and both arrangements, by what is odd about them. */
export const plates = {
  'two-legged bridle': demoDocument(waterOnly, allCases),
  'one line at the middle': demoDocument(waterOnly, allCases, hungBy('line', [corner('1.65 m', '1.3 m', 'L1')])),
  'one line beside the middle': demoDocument(waterOnly, allCases, hungBy('line', [corner('1.1 m', '1.3 m', 'L1')])),
  'four-legged bridle': demoDocument(waterOnly, allCases, hungBy('bridle', fourCorners)),
  'four struts': demoDocument(waterOnly, allCases, hungBy('strut', fourCorners)),
  'three-legged bridle': demoDocument(waterOnly, allCases, hungBy('bridle', fourCorners.slice(0, 3))),
  'a light force, so that the legs stay tight': demoDocument(waterOnly, allCases, hungBy('bridle', fourCorners), {
    loads: { service: { force: '2 kN' } },
  }),
  'panels on one side only': demoDocument(waterOnly, allCases, hungBy('bridle', fourCorners), {
    panels: { A3: null, B3: null, B1: null },
  }),
  'stacked, topside on cross tubes': demoDocument(waterOnly, allCases, hungBy('strut', fourCorners), {
    grid: { arrangement: 'stacked' },
    designs: { deck: { support: 'cross tubes' } },
  }),
  'stacked, underside on main tubes': demoDocument(waterOnly, allCases, hungBy('bridle', fourCorners), {
    grid: { arrangement: 'stacked' },
    designs: { deck: { support: 'main tubes', side: 'underside' } },
  }),
  'welded over two bays': demoDocument(
    waterOnly,
    allCases,
    hungBy('bridle', fourCorners),
    {
      designs: { deck: { fixing: null } },
      panels: { A1: null, B1: null, 'A1:B1': 'deck' },
    },
    { designs: { deck: { fixing: { kind: 'welded', throat: '5 mm', pattern: 'all round' } } } },
  ),
  'pad eyes for lifting': demoDocument(waterOnly, allCases, hungBy('line', [corner('1.65 m', '1.3 m', 'L1')]), {
    grid: { padEyes: { points: fourCorners, eye: demoDocument().grid.suspension.eye, apex: '4 m' } },
  }),
  'the number holds the weight': demoDocument(allCases, hungBy('strut', fourCorners)),
  'sealed tubes that float': demoDocument(waterOnly, allCases, hungBy('strut', fourCorners), {
    grid: { mainTubes: { flooding: 'sealed' }, crossTubes: { flooding: 'sealed' } },
  }),
  'inches and pounds, allowable stress': demoDocument(waterOnly, {
    units: 'inch',
    basis: { table: 'AISC 360 ASD' },
    grid: {
      mainTubes: { spacing: '4 ft 3 in', overhang: '3 in' },
      crossTubes: { spacing: '43 1/4 in', overhang: '3 in' },
      suspension: {
        kind: 'bridle',
        apex: '13 ft',
        attachments: [
          corner('0 in', '0 in', 'S1'),
          corner('129 3/4 in', '0 in', 'S2'),
          corner('64 7/8 in', '8 ft 6 in', 'S3'),
        ],
      },
    },
    designs: { deck: { thickness: '3/8 in' } },
    loads: { service: { force: '10000 lbf' }, crossing: { speed: '1.5 ft/s' } },
  }),
  'no panels yet': demoDocument(waterOnly, allCases, { panels: { A1: null, A3: null, B1: null, B3: null } }),
};
