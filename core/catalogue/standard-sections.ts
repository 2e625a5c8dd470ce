import { hollowSection } from './hollow-section.ts';
import type { HollowSection, SectionProcess, SourceOfRow } from './rows.ts';

const metricWalls = [2.5, 2.6, 3, 3.2, 3.6, 4, 5, 6, 6.3, 7.1, 8, 8.8, 10, 12, 12.5, 14.2, 16];

/** Side, thinnest and thickest wall, mm. */
const squares = [
  [40, 2.5, 5],
  [50, 2.5, 6.3],
  [60, 2.5, 8],
  [70, 2.5, 8],
  [80, 2.5, 8],
  [90, 3, 8],
  [100, 3, 10],
  [120, 3, 12.5],
  [140, 4, 12.5],
  [150, 4, 16],
  [160, 4, 16],
  [180, 4, 16],
  [200, 4, 16],
  [220, 5, 16],
  [250, 5, 16],
  [260, 6, 16],
  [300, 6, 16],
  [350, 8, 16],
  [400, 8, 16],
] as const;

/** Height, width, thinnest and thickest wall, mm. */
const rectangles = [
  [50, 30, 2.5, 5],
  [60, 40, 2.5, 6.3],
  [80, 40, 2.5, 8],
  [90, 50, 2.5, 8],
  [100, 50, 2.5, 8],
  [100, 60, 2.5, 8],
  [100, 80, 3, 8],
  [120, 60, 2.5, 10],
  [120, 80, 3, 10],
  [140, 80, 4, 10],
  [150, 100, 4, 12.5],
  [160, 80, 4, 12.5],
  [180, 100, 4, 12.5],
  [200, 100, 4, 16],
  [200, 120, 4, 14.2],
  [200, 150, 4, 14.2],
  [250, 100, 5, 14.2],
  [250, 150, 5, 16],
  [260, 140, 5, 16],
  [260, 180, 5, 16],
  [300, 100, 5, 14.2],
  [300, 150, 5, 16],
  [300, 200, 5, 16],
  [350, 150, 5, 16],
  [350, 250, 5, 16],
  [400, 200, 6, 16],
  [400, 300, 8, 16],
  [450, 250, 8, 16],
  [500, 300, 8, 16],
] as const;

/** Diameter, thinnest and thickest wall, mm. */
const rounds = [
  [33.7, 2.5, 4],
  [42.4, 2.5, 5],
  [48.3, 2.5, 5],
  [60.3, 2.5, 6.3],
  [76.1, 2.5, 8],
  [88.9, 2.5, 10],
  [101.6, 3, 10],
  [114.3, 3, 10],
  [139.7, 3, 12.5],
  [168.3, 3, 12.5],
  [177.8, 5, 12.5],
  [193.7, 4, 16],
  [219.1, 4, 16],
  [244.5, 5, 16],
  [273, 5, 16],
  [323.9, 5, 16],
  [355.6, 5, 16],
  [406.4, 6, 16],
  [457, 6, 16],
  [508, 6, 16],
] as const;

const inchWalls = { '3/16': 3 / 16, '1/4': 1 / 4, '5/16': 5 / 16, '3/8': 3 / 8, '1/2': 1 / 2 } as const;

/** Height, width, thickest wall, inch. */
const inchSizes = [
  [2, 2, '1/4'],
  [2.5, 2.5, '5/16'],
  [3, 3, '3/8'],
  [3.5, 3.5, '3/8'],
  [4, 4, '1/2'],
  [5, 5, '1/2'],
  [6, 6, '1/2'],
  [7, 7, '1/2'],
  [8, 8, '1/2'],
  [10, 10, '1/2'],
  [12, 12, '1/2'],
  [3, 2, '5/16'],
  [4, 2, '3/8'],
  [4, 3, '3/8'],
  [5, 3, '1/2'],
  [6, 3, '1/2'],
  [6, 4, '1/2'],
  [8, 4, '1/2'],
  [8, 6, '1/2'],
  [10, 6, '1/2'],
  [12, 6, '1/2'],
  [12, 8, '1/2'],
] as const;

const hotSource: SourceOfRow = {
  document: 'EN 10210-2',
  edition: '2006',
  clause: 'formulas of Annex B, held to printed rows; size list from memory',
  memory: true,
};
const coldSource: SourceOfRow = {
  document: 'EN 10219-2',
  edition: '2006',
  clause: 'formulas of Annex B, held to printed rows and radii; size list from memory',
  memory: true,
};
const inchSource: SourceOfRow = {
  document: 'ASTM A500',
  clause: 'sizes from memory; design wall 0.93 of nominal, AISC 360-16, B4.2; outer radius twice the design wall',
  memory: true,
};

/** Hollow sections that mills list, with their properties computed. Not every mill rolls every one: ask before ordering. */
export const standardSections: readonly HollowSection[] = [
  ...(['hot finished', 'cold formed'] as const).flatMap(metricSections),
  ...inchSections(),
];

function metricSections(process: SectionProcess): HollowSection[] {
  const word = process === 'hot finished' ? 'hot' : 'cold';
  const source = process === 'hot finished' ? hotSource : coldSource;
  const walls = (least: number, most: number): number[] => metricWalls.filter((t) => t >= least && t <= most);
  const m = (millimetres: number): number => millimetres / 1000;
  return [
    ...squares.flatMap(([b, least, most]) =>
      walls(least, most).map((t) =>
        hollowSection({ id: `SHS ${b}x${b}x${t} ${word}`, shape: 'square', process, height: m(b), wall: m(t), source }),
      ),
    ),
    ...rectangles.flatMap(([h, b, least, most]) =>
      walls(least, most).map((t) =>
        hollowSection({
          id: `RHS ${h}x${b}x${t} ${word}`,
          shape: 'rectangular',
          process,
          height: m(h),
          width: m(b),
          wall: m(t),
          source,
        }),
      ),
    ),
    ...rounds.flatMap(([d, least, most]) =>
      walls(least, most).map((t) =>
        hollowSection({ id: `CHS ${d}x${t} ${word}`, shape: 'round', process, height: m(d), wall: m(t), source }),
      ),
    ),
  ];
}

function inchSections(): HollowSection[] {
  const inch = 0.0254;
  const spelled = (size: number): string => (Number.isInteger(size) ? String(size) : `${Math.floor(size)}-1/2`);
  return inchSizes.flatMap(([h, b, most]) =>
    Object.entries(inchWalls)
      .filter(([, t]) => t <= inchWalls[most])
      .map(([name, t]) => {
        const wall = 0.93 * t * inch;
        return hollowSection({
          id: `HSS ${spelled(h)}x${spelled(b)}x${name}`,
          title: `${h === b ? 'Square' : 'Rectangular'} hollow section ${spelled(h)} × ${spelled(b)} × ${name} in, ASTM A500`,
          shape: h === b ? 'square' : 'rectangular',
          process: 'cold formed',
          height: h * inch,
          width: b * inch,
          wall,
          nominalWall: t * inch,
          outerRadius: 2 * wall,
          source: inchSource,
        });
      }),
  );
}
