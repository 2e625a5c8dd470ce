import type { Point } from '../geometry/geometry.ts';
import type { Fill, Figure, Shape } from './note.ts';

/** A sketch of a detail with its crack, by the id of its check: what cracks, from where, and what pulls. No scale. */
export function fatiguePicture(id: string, title: string): Figure {
  const shapes = sketches[id];
  if (!shapes) throw new Error(`there is no picture of ${id}`);
  return {
    kind: 'figure',
    caption: title,
    alt: `Sketch: ${title}`,
    box: { x: 0, y: 0, width: 100, height: 60 },
    widthShare: 0.22,
    shapes,
  };
}

const ring = (points: readonly Point[], fill: Fill): Shape => ({
  kind: 'path',
  rings: [points],
  closed: true,
  pen: 'outline',
  fill,
});
const box = (x: number, y: number, width: number, height: number, fill: Fill): Shape =>
  ring([[x, y], [x + width, y], [x + width, y + height], [x, y + height]], fill); // prettier-ignore
const weld = (...points: Point[]): Shape => ring(points, 'section');
const hole = (x: number, y: number, radius: number): Shape => ({
  kind: 'circle',
  at: [x, y],
  radius,
  pen: 'outline',
  fill: 'paper',
});

/** A crack from one point to another, jagged as cracks are drawn. */
function crack(from: Point, to: Point): Shape {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const side = 0.12;
  const points = [0, 0.3, 0.55, 0.8, 1].map((part, n): Point => {
    const off = n === 0 || n === 4 ? 0 : n % 2 ? side : -side;
    return [from[0] + part * dx - off * dy, from[1] + part * dy + off * dx];
  });
  return { kind: 'path', rings: [points], closed: false, pen: 'accent' };
}

const arrow = (from: Point, to: Point): Shape => ({ kind: 'arrow', from, to, pen: 'accent' });
const along = (y: number): Shape[] => [arrow([14, y], [2, y]), arrow([86, y], [98, y])];

const lap = [box(0, 8, 100, 14, 'tube'), box(36, 22, 64, 14, 'panel'), weld([36, 22], [36, 36], [22, 22])];
/** The panel's edge stands over the rounding of a tube that ends beside it. */
const onCorner = [
  ring(
    [
      [0, 4],
      [58, 4],
      [58, 8],
      [55, 14],
      [50, 18],
      [42, 20],
      [0, 20],
    ],
    'tube',
  ),
  box(44, 24, 56, 12, 'panel'),
  weld([44, 19.5], [44, 36], [28, 20]),
];
const sideOfTube = [box(0, 8, 100, 18, 'tube'), box(42, 26, 58, 9, 'panel')];
const twoSheets = [box(0, 30, 70, 12, 'panel'), box(30, 18, 70, 12, 'tube')];
const crossing = [
  box(8, 4, 32, 52, 'tube'),
  box(13, 9, 22, 42, 'paper'),
  box(40, 18, 58, 24, 'tube'),
  weld([40, 42], [40, 50], [48, 42]),
  weld([40, 18], [40, 10], [48, 18]),
];
const eyeAcross = [
  box(0, 6, 100, 12, 'tube'),
  box(44, 18, 12, 38, 'panel'),
  weld([44, 18], [44, 27], [35, 18]),
  weld([56, 18], [56, 27], [65, 18]),
];
const eyeFront: readonly Point[] = [
  [28, 4], [28, 34], [33, 46], [42, 53], [50, 55], [58, 53], [67, 46], [72, 34], [72, 4],
]; // prettier-ignore

const sketches: Readonly<Record<string, readonly Shape[]>> = {
  'fatigue-weld-root': [...lap, crack([36, 22], [27, 31]), arrow([70, 40], [70, 54])],
  'fatigue-weld-toe': [...lap, crack([36, 36], [44, 22]), arrow([84, 29], [98, 29])],
  'fatigue-weld-corner': [...onCorner, crack([44, 24], [34, 29]), arrow([70, 36], [70, 50]), arrow([70, 20], [70, 6])],
  'fatigue-weld-end': [...sideOfTube, weld([42, 26], [42, 35], [33, 26]), crack([33, 26], [31, 12]), ...along(16)],
  'fatigue-weld-intermittent': [
    ...sideOfTube.slice(0, 1),
    box(4, 26, 92, 9, 'panel'),
    box(10, 24, 22, 5, 'section'),
    box(56, 24, 22, 5, 'section'),
    crack([32, 24], [33, 11]),
    crack([56, 24], [55, 11]),
    ...along(14),
  ],
  'fatigue-weld-plug': [
    box(0, 8, 100, 44, 'panel'),
    box(42, 22, 16, 16, 'section'),
    crack([50, 38], [51, 50]),
    crack([50, 22], [49, 10]),
    ...along(30),
  ],
  'fatigue-weld-plug-shear': [
    ...twoSheets,
    ring(
      [
        [40, 30],
        [60, 30],
        [60, 42],
        [40, 42],
      ],
      'section',
    ),
    crack([38, 30], [62, 30]),
    arrow([22, 36], [4, 36]),
    arrow([78, 24], [96, 24]),
  ],
  'fatigue-plate-edge': [
    box(4, 6, 92, 48, 'panel'),
    hole(64, 30, 9),
    crack([34, 6], [33, 20]),
    crack([64, 39], [65, 51]),
    ...along(30),
  ],
  'fatigue-bolt-hole-panel': [
    box(0, 8, 100, 44, 'panel'),
    hole(50, 30, 9),
    crack([50, 39], [51, 50]),
    crack([50, 21], [49, 10]),
    ...along(30),
  ],
  'fatigue-bolt-hole-tube': [
    box(0, 8, 100, 44, 'tube'),
    hole(50, 30, 9),
    crack([50, 39], [51, 50]),
    crack([50, 21], [49, 10]),
    ...along(30),
  ],
  'fatigue-bolt-tension': [
    box(14, 30, 72, 10, 'panel'),
    box(14, 20, 72, 10, 'tube'),
    box(44, 6, 12, 34, 'paper'),
    box(37, 40, 26, 9, 'section'),
    box(37, 9, 26, 9, 'section'),
    crack([44, 19], [56, 19]),
    arrow([24, 42], [24, 55]),
    arrow([24, 18], [24, 5]),
  ],
  'fatigue-bolt-shear': [
    ...twoSheets,
    box(44, 10, 12, 40, 'paper'),
    box(38, 44, 24, 8, 'section'),
    box(38, 8, 24, 8, 'section'),
    crack([44, 30], [56, 30]),
    arrow([18, 36], [2, 36]),
    arrow([82, 24], [98, 24]),
  ],
  'fatigue-crossing-toe': [...crossing, crack([40, 50], [34, 52]), arrow([88, 46], [88, 57]), arrow([88, 14], [88, 3])],
  'fatigue-crossing-root': [
    ...crossing,
    crack([40, 42], [45, 47]),
    arrow([88, 46], [88, 57]),
    arrow([88, 14], [88, 3]),
  ],
  'fatigue-eye-foot': [...eyeAcross, crack([44, 27], [56, 29]), arrow([50, 46], [50, 58])],
  'fatigue-eye-foot-bolts': [
    box(0, 4, 100, 10, 'tube'),
    box(20, 14, 60, 8, 'panel'),
    box(46, 22, 8, 34, 'panel'),
    weld([46, 22], [46, 28], [40, 22]),
    weld([54, 22], [54, 28], [60, 22]),
    ...[28, 66].flatMap((x) => [box(x, 2, 6, 20, 'paper'), box(x - 3, 22, 12, 5, 'section')]),
    crack([28, 12], [34, 13]),
    crack([66, 12], [72, 13]),
    arrow([50, 46], [50, 58]),
  ],
  'fatigue-eye-root': [...eyeAcross, crack([44, 18], [39, 24]), arrow([50, 46], [50, 58])],
  'fatigue-eye-hole': [
    ring(eyeFront, 'panel'),
    hole(50, 34, 10),
    crack([60, 34], [71, 35]),
    crack([40, 34], [29, 33]),
    arrow([50, 38], [50, 58]),
  ],
  'fatigue-eye-on-tube': [
    box(0, 8, 100, 16, 'tube'),
    box(36, 24, 30, 30, 'panel'),
    hole(51, 42, 6),
    weld([36, 24], [36, 32], [28, 24]),
    weld([66, 24], [66, 32], [74, 24]),
    crack([28, 24], [27, 11]),
    ...along(14),
  ],
  'fatigue-sealed-wall': [
    box(22, 6, 56, 48, 'tube'),
    box(28, 12, 44, 36, 'paper'),
    crack([50, 48], [51, 54]),
    arrow([2, 30], [20, 30]),
    arrow([98, 30], [80, 30]),
  ],
};
