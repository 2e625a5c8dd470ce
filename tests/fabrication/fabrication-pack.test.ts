import { readFileSync } from 'node:fs';
import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { cutLengths } from '../../core/fabrication/cut-lengths.ts';
import { fabricationPack, type FabricationPack, type Stock } from '../../core/fabrication/fabrication-pack.ts';
import { generalArrangement } from '../../core/fabrication/general-arrangement.ts';
import { nestPlates } from '../../core/fabrication/nest-plates.ts';
import { quantityText } from '../../core/quantity/format-quantity.ts';
import { csvTable } from '../../core/quantity/csv-table.ts';
import type { Panel } from '../../core/geometry/geometry.ts';
import { demoModel } from '../checks/model-of.ts';

const stock: Stock = { sheet: { width: 3, height: 1.5 }, bar: 12, gap: 0.01, kerf: 0.003 };
const micrometre = 1e-3; // of a millimetre

function packOf(
  sample: string,
  option: string | null,
): { pack: FabricationPack; panels: readonly Panel[]; model: ReturnType<typeof appraise>['model'] } {
  const raw = readDocumentText(readFileSync(`samples/${sample}.stillplate.json`, 'utf8'));
  const document = readDocument(raw);
  const { model } = appraise(raw, document, option);
  return { pack: fabricationPack(model, stock), panels: model.geometry.panels, model };
}

interface Read {
  readonly contour: readonly { readonly x: number; readonly y: number }[];
  readonly holes: readonly { readonly center: { readonly x: number; readonly y: number }; readonly radius: number }[];
}

/** A drawing as a parser from the registries (dxf-parser) reads it. */
function readBack(text: string): Read {
  const drawing = new DxfParser().parseSync(text)!;
  const of = (type: string, layer: string) =>
    drawing.entities.filter((entity) => entity.type === type && entity.layer === layer);
  const [outline, ...more] = of('POLYLINE', 'OUTSIDE_CONTOUR') as unknown as {
    vertices: Read['contour'];
    shape: boolean;
  }[];
  expect(more).toEqual([]);
  expect(outline!.shape).toBe(true);
  return { contour: outline!.vertices, holes: of('CIRCLE', 'INSIDE_CONTOUR') as unknown as Read['holes'] };
}

/** Area inside a polygon (shoelace formula), mm². */
const areaOf = (points: Read['contour']): number =>
  points.reduce((sum, { x, y }, i) => {
    const next = points[(i + 1) % points.length]!;
    return sum + (x * next.y - next.x * y) / 2;
  }, 0);

describe('a pack of every sample, read back by another program’s parser', () => {
  it.each([
    ['small', null],
    ['middle', null],
    ['middle', 'top-4-welded'],
    ['large', null],
    ['inch', null],
  ] as const)('%s, option %s', (sample, option) => {
    const { pack, panels } = packOf(sample, option);
    expect(pack.parts.length).toBeGreaterThan(0);
    expect(pack.parts.flatMap((part) => part.panels).sort()).toEqual(panels.map(({ id }) => id).sort());
    for (const { number, panels: ids, pattern } of pack.parts) {
      const { contour, holes } = readBack(pack.files.find(({ name }) => name === `${number}.dxf`)!.text);
      const bored = holes.reduce((sum, { radius }) => sum + Math.PI * radius ** 2, 0);
      for (const id of ids) {
        const panel = panels.find((one) => one.id === id)!;
        // every hole of these samples lies whole inside its contour
        expect(Math.abs((areaOf(contour) - bored) / 1e6 / panel.area - 1)).toBeLessThan(1e-6);
        const wanted = panel.cutouts.map(({ x, y, diameter }) => [
          1000 * (x - panel.outline.x0),
          1000 * (y - panel.outline.y0),
          500 * diameter,
        ]);
        expect(holes).toHaveLength(wanted.length);
        for (const [x, y, radius] of wanted)
          expect(
            holes.some(
              ({ center, radius: r }) =>
                Math.abs(center.x - x!) < micrometre &&
                Math.abs(center.y - y!) < micrometre &&
                Math.abs(r - radius!) < micrometre,
            ),
          ).toBe(true);
      }
      expect(pattern.mass).toBeCloseTo(
        pattern.area * pattern.thickness * panels.find(({ id }) => id === ids[0])!.material.density,
        9,
      );
    }
  });

  it('the SVG at 1:1 says the same as the DXF', () => {
    const { pack } = packOf('middle', null);
    for (const { number, pattern } of pack.parts) {
      const svg = pack.files.find(({ name }) => name === `${number}.svg`)!.text;
      const circles = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"\/>/g)].map(([, x, y, r]) => [
        Number(x),
        Number(y),
        Number(r),
      ]);
      const { holes } = readBack(pack.files.find(({ name }) => name === `${number}.dxf`)!.text);
      expect(circles).toHaveLength(holes.length);
      holes.forEach(({ center, radius }, i) => {
        expect(circles[i]![0]).toBeCloseTo(center.x, 5);
        expect(1000 * pattern.height - circles[i]![1]!).toBeCloseTo(center.y, 5);
        expect(circles[i]![2]).toBeCloseTo(radius, 5);
      });
      expect(svg).toContain(`width="${Number((1000 * pattern.width).toFixed(6))}mm"`);
    }
  });

  it('lists as many bolts and tube holes as there are, each hole on its tube', () => {
    const { pack, panels, model } = packOf('middle', null);
    const bolts = panels.reduce((sum, panel) => sum + panel.bolts.length, 0);
    const rows = (name: string) =>
      pack.files
        .find((file) => file.name === name)!
        .text.trim()
        .split('\r\n')
        .slice(1)
        .map((line) => line.split(','));
    expect(rows('bolts.csv').reduce((sum, row) => sum + Number(row[5]), 0)).toBe(bolts);
    // Outside, bore and length between the walls; the count stays where it was.
    for (const row of rows('bolts.csv')) expect(row.at(-1)).toMatch(/^[\d.]+ × [\d.]+ × [\d.]+$/);
    const holes = rows('tube-holes.csv');
    expect(holes).toHaveLength(bolts);
    for (const [tube, , along, across] of holes) {
      const own = model.tubes.get(tube!)!;
      expect(Number(along)).toBeGreaterThan(0);
      expect(Number(along)).toBeLessThan(1000 * (own.to - own.from));
      expect(Math.abs(Number(across))).toBeLessThan(500 * own.section.width);
    }
  });
});

describe('plates nested by shelves', () => {
  const pieces = [{ id: 'a', width: 0.9, height: 0.6, count: 7 }, { id: 'b', width: 0.4, height: 1.3, count: 3 }, { id: 'c', width: 0.2, height: 0.2, count: 9 }]; // prettier-ignore
  const sheets = nestPlates(pieces, stock.sheet, 0.01);

  it('lays every piece once, inside its sheet, a gap from the edge and from the others', () => {
    for (const { id, count } of pieces)
      expect(sheets.flatMap((sheet) => sheet.pieces).filter((piece) => piece.id === id)).toHaveLength(count);
    for (const { pieces: laid } of sheets)
      laid.forEach((one, i) => {
        expect(one.x).toBeGreaterThanOrEqual(0.01 - 1e-9);
        expect(one.y).toBeGreaterThanOrEqual(0.01 - 1e-9);
        expect(one.x + one.width).toBeLessThanOrEqual(3 - 0.01 + 1e-9);
        expect(one.y + one.height).toBeLessThanOrEqual(1.5 - 0.01 + 1e-9);
        for (const other of laid.slice(i + 1)) {
          const apart = Math.max(
            other.x - one.x - one.width,
            one.x - other.x - other.width,
            other.y - one.y - one.height,
            one.y - other.y - other.height,
          );
          expect(apart).toBeGreaterThanOrEqual(0.01 - 1e-9);
        }
      });
  });

  it('stands pieces upright where that takes fewer sheets: three of 0.82 × 1.36 m on one of 3 × 1.5 m (by hand)', () => {
    expect(nestPlates([{ id: 'a', width: 0.82, height: 1.36, count: 12 }], stock.sheet, 0.01)).toHaveLength(4);
  });

  it('refuses what no sheet takes, by name', () => {
    expect(() => nestPlates([{ id: 'P9', width: 3.1, height: 0.5, count: 1 }], stock.sheet, 0.01)).toThrow(
      /Part P9 \(3100 × 500 mm\) is larger than a stock sheet/,
    );
  });
});

describe('tubes cut from bars', () => {
  it('takes 3 bars of 10 for 6, 5, 5, 4, 4, 3, 2 without kerf (by hand: 6+4, 5+5, 4+3+2)', () => {
    const bars = cutLengths(
      [6, 5, 5, 4, 4, 3, 2].map((length, i) => ({ id: `${i}`, length })),
      10,
      0,
    );
    expect(bars.map(({ cuts }) => cuts.map(({ length }) => length))).toEqual([[6, 4], [5, 5], [4, 3, 2]]); // prettier-ignore
    expect(bars.map(({ rest }) => rest)).toEqual([0, 0, 1]);
  });

  it('loses a kerf at each cut, and refuses a piece that is longer than the stock', () => {
    expect(cutLengths([{ id: 'a', length: 5 }, { id: 'b', length: 5 }], 10, 0.003)).toHaveLength(2); // prettier-ignore
    expect(() => cutLengths([{ id: 'B-2', length: 13 }], 12, 0)).toThrow(/Tube piece B-2 of 13000 mm is longer/);
  });
});

it('a list gives a spreadsheet no formula', () => {
  expect(csvTable(['=a'], [['+1'], ['@x'], ['-2'], [-2], ['a,"b"']])).toBe(
    `'=a\r\n'+1\r\n'@x\r\n'-2\r\n-2\r\n"a,""b"""\r\n`,
  );
});

describe('general arrangement', () => {
  it.each(['small', 'middle', 'inch'])(
    '%s: overall sizes, every plate and every piece of tube stand in it',
    (sample) => {
      const { pack, model } = packOf(sample, null);
      const { sections } = generalArrangement(model, pack, 'base', 'ab');
      const text = JSON.stringify(sections);
      const { x0, x1, y0, y1 } = model.geometry.extents;
      const unit = sample === 'inch' ? 'in' : 'mm';
      for (const length of [x1 - x0, y1 - y0]) expect(text).toContain(`"text":"${quantityText(length, unit)}"`);
      for (const { number } of pack.parts) expect(text).toContain(`"${number}"`);
      const [list] = sections.at(-1)!.blocks as unknown as [{ readonly rows: readonly (readonly string[])[] }];
      const pieces = [...model.geometry.mainTubes, ...model.geometry.crossTubes].flatMap((tube) => tube.pieces).length;
      const counted = list.rows.filter(([part]) => part!.startsWith('tube')).reduce((sum, [, count]) => sum + Number(count), 0); // prettier-ignore
      expect(counted).toBe(pieces);
    },
  );
});

it('drills bolts on listed places where they are listed, in panel, SVG and tube', () => {
  const places = [
    ...['low x, low y', 'high x, low y', 'high x, high y', 'low x, high y'].map((from) => ({ x: '30 mm', y: '30 mm', from })),
    ...[{ x: '311.5 mm', y: '27 mm' }, { x: '-20.25 mm', y: '608 mm', from: 'centre' }, { x: '31 mm', y: '402 mm', from: 'high x, low y' }],
  ]; // prettier-ignore
  const model = demoModel({ designs: { deck: { fixing: { places, pitch: null, edgeDistance: null } } } });
  const pack = fabricationPack(model, stock);
  expect(pack.parts).toHaveLength(1);
  const { number, pattern } = pack.parts[0]!;
  const { holes } = readBack(pack.files.find(({ name }) => name === `${number}.dxf`)!.text);
  // A panel of 1070 × 1270 mm with a vent of 50 mm at its centre; millimetres from its low corner, worked by hand.
  const wanted = [[30, 30], [1040, 30], [1040, 1240], [30, 1240], [311.5, 27], [514.75, 1243], [1039, 402]]; // prettier-ignore
  const drilled = holes
    .filter(({ radius }) => Math.abs(radius - 6.5) < micrometre)
    .map(({ center: { x, y } }) => [x, y] as const);
  const inOrder = (at: readonly (readonly number[])[]) => [...at].sort((a, b) => a[0]! - b[0]! || a[1]! - b[1]!);
  expect(inOrder(drilled)).toEqual(inOrder(wanted).map((at) => at.map((mm) => expect.closeTo(mm, 6))));
  const svg = pack.files.find(({ name }) => name === `${number}.svg`)!.text;
  const circles = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="6.5"\/>/g)].map(([, x, y]) => [Number(x), 1000 * pattern.height - Number(y)]); // prettier-ignore
  expect(inOrder(circles)).toEqual(inOrder(wanted).map((at) => at.map((mm) => expect.closeTo(mm, 6))));
  // The place of 311.5 mm on tube A of panel A1: 15 mm from the origin of the panel, 75 mm of overhang before it; 27 + 15 off the line.
  const row = pack.files.find(({ name }) => name === 'tube-holes.csv')!.text.split('\r\n').find((line) => line.startsWith('A,A1-05,'))!; // prettier-ignore
  expect(row.split(',').slice(2, 4).map(Number)).toEqual([401.5, 42]);
});
