import type { SourceOfRow, StockPlate } from './rows.ts';

const source: SourceOfRow = {
  document: 'common practice, no source',
  clause: 'sizes that merchants keep',
  memory: true,
};

const m = (millimetres: number): number => millimetres / 1000;
const foot = 0.3048;
const inch = 0.0254;

const small = [
  [1000, 2000],
  [1250, 2500],
  [1500, 3000],
] as const;
const large = [[2000, 6000]] as const;
const sheets = (sizes: readonly (readonly [number, number])[], unit: number): StockPlate['sheets'] =>
  sizes.map(([width, length]) => ({ width: width * unit, length: length * unit }));

const metric = [1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 16, 20, 25, 30] as const;
const inches = [
  ['1/8', 1 / 8],
  ['3/16', 3 / 16],
  ['1/4', 1 / 4],
  ['5/16', 5 / 16],
  ['3/8', 3 / 8],
  ['1/2', 1 / 2],
  ['5/8', 5 / 8],
  ['3/4', 3 / 4],
  ['1', 1],
] as const;

/** Plate thicknesses and the sheets they come in. A merchant's list decides; ask before cutting plans are made. */
export const stockPlates: readonly StockPlate[] = [
  ...metric.map((t) => ({
    id: `${t} mm`,
    title: `Plate ${t} mm`,
    thickness: m(t),
    series: 'metric' as const,
    sheets: sheets(t < 4 ? small : [...small, ...large], 1e-3),
    source,
  })),
  ...inches.map(([name, t]) => ({
    id: `${name} in`,
    title: `Plate ${name} in`,
    thickness: t * inch,
    series: 'inch' as const,
    sheets: sheets(
      t < 1 / 4
        ? [
            [4, 8],
            [4, 10],
            [5, 10],
          ]
        : [
            [4, 8],
            [4, 10],
            [5, 10],
            [6, 20],
            [8, 20],
          ],
      foot,
    ),
    source,
  })),
];
