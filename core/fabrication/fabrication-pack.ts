import type { Model } from '../model.ts';
import { csvTable } from '../quantity/csv-table.ts';
import type { BoltedFixing } from '../document/schema.ts';
import type { Bolt, Panel, Point, Tube } from '../geometry/geometry.ts';
import { sleeveOf } from '../geometry/sleeve-of.ts';
import { cutLengths, type Bar } from './cut-lengths.ts';
import { dxfText } from './dxf-text.ts';
import { plateParts, type PlatePart } from './flat-pattern.ts';
import { nestPlates, type Sheet } from './nest-plates.ts';
import { svgText } from './svg-text.ts';

/** What the shop buys from and loses, m. */
export interface Stock {
  readonly sheet: { readonly width: number; readonly height: number };
  readonly bar: number;
  /** Between nested parts and to the sheet's edge. */
  readonly gap: number;
  /** Lost at each cut of a tube. */
  readonly kerf: number;
}

export interface FabricationPack {
  readonly parts: readonly PlatePart[];
  /** Sheets for each thickness and material. */
  readonly sheets: readonly {
    readonly material: string;
    readonly thickness: number;
    readonly sheets: readonly Sheet[];
    readonly waste: number;
  }[];
  readonly bars: readonly {
    readonly section: string;
    readonly material: string;
    readonly bars: readonly Bar[];
    readonly waste: number;
  }[];
  readonly files: readonly { readonly name: string; readonly text: string }[];
}

/**
 * What the shop cuts, drills and assembles, from the model of one option: flat patterns (DXF and SVG), plates and tubes cut
 * from stock, holes of plates and tubes from their datums, bolts, welds, order of assembly. Lengths in mm, masses in kg.
 */
export function fabricationPack(model: Model, stock: Stock): FabricationPack {
  const { panels, mainTubes, crossTubes } = model.geometry;
  const parts = plateParts(panels);
  const sheets = sheetsOf(parts, stock);
  const tubes = [...mainTubes, ...crossTubes];
  const bars = barsOf(tubes, stock);
  return {
    parts,
    sheets,
    bars,
    files: [
      ...parts.flatMap(({ number, pattern }) => [
        { name: `${number}.dxf`, text: dxfText(pattern, number) },
        { name: `${number}.svg`, text: svgText(pattern, number) },
      ]),
      { name: 'plates.csv', text: platesTable(parts, model) },
      { name: 'plate-sheets.csv', text: sheetsTable(sheets) },
      { name: 'plate-holes.csv', text: plateHoles(parts) },
      { name: 'tubes.csv', text: tubesTable(bars, tubes) },
      { name: 'tube-holes.csv', text: tubeHoles(model) },
      { name: 'bolts.csv', text: boltsTable(model) },
      { name: 'welds.csv', text: weldsTable(panels) },
      { name: 'read-me-first.txt', text: instructions(model, parts, stock) },
    ],
  };
}

const mm = (metres: number): number => Number((1000 * metres).toFixed(3));
const kg = (mass: number): number => Number(mass.toFixed(2));
const partOf = (parts: readonly PlatePart[]): ReadonlyMap<string, string> =>
  new Map(parts.flatMap(({ number, panels }) => panels.map((panel) => [panel, number] as const)));

function sheetsOf(parts: readonly PlatePart[], { sheet, gap }: Stock): FabricationPack['sheets'] {
  const groups = new Map<string, PlatePart[]>();
  for (const part of parts) {
    const key = `${part.pattern.material} ${mm(part.pattern.thickness)}`;
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return [...groups.values()].map((group) => {
    const laid = nestPlates(
      group.map(({ number, pattern: { width, height }, panels }) => ({
        id: number,
        width,
        height,
        count: panels.length,
      })),
      sheet,
      gap,
    );
    const used = group.reduce((sum, { pattern, panels }) => sum + pattern.area * panels.length, 0);
    const { material, thickness } = group[0]!.pattern;
    return { material, thickness, sheets: laid, waste: 1 - used / (laid.length * sheet.width * sheet.height) };
  });
}

function barsOf(tubes: readonly Tube[], { bar, kerf }: Stock): FabricationPack['bars'] {
  const groups = new Map<string, Tube[]>();
  for (const tube of tubes) {
    const key = `${tube.section.id} ${tube.material.id}`;
    groups.set(key, [...(groups.get(key) ?? []), tube]);
  }
  return [...groups.values()].map((group) => {
    const pieces = group.flatMap(({ id, pieces: own }) =>
      own.map(([from, to], i) => ({ id: own.length > 1 ? `${id}-${i + 1}` : id, length: to - from })),
    );
    const bars = cutLengths(pieces, bar, kerf);
    const used = pieces.reduce((sum, { length }) => sum + length, 0);
    return {
      section: group[0]!.section.id,
      material: group[0]!.material.id,
      bars,
      waste: 1 - used / (bars.length * bar),
    };
  });
}

function platesTable(parts: readonly PlatePart[], model: Model): string {
  return csvTable(
    [
      'part',
      'count',
      'panels',
      'material',
      'thickness mm',
      'width mm',
      'height mm',
      'net area m2',
      'mass kg',
      'holes',
      'side',
      'by hand',
    ],
    parts.map(({ number, panels, pattern: { material, thickness, width, height, area, mass, holes } }) => [
      number,
      panels.length,
      panels.join(' '),
      material,
      mm(thickness),
      mm(width),
      mm(height),
      Number(area.toFixed(6)),
      kg(mass),
      holes.length,
      model.panels.get(panels[0]!)!.design.side,
      mass > byHand ? 'no: lifting gear' : 'local limits apply',
    ]),
  );
}

/** Above this no one person lifts: 25 kg, the usual guideline under good conditions (HSE INDG143, from memory). */
const byHand = 25;

function sheetsTable(groups: FabricationPack['sheets']): string {
  return csvTable(
    ['material', 'thickness mm', 'sheet', 'part', 'from left mm', 'from bottom mm', 'turned', 'waste of all sheets %'],
    groups.flatMap(({ material, thickness, sheets, waste }) =>
      sheets.flatMap(({ pieces }, i) =>
        pieces.map(({ id, x, y, turned }) => [
          material,
          mm(thickness),
          i + 1,
          id,
          mm(x),
          mm(y),
          turned ? 'yes' : 'no',
          Number((100 * waste).toFixed(1)),
        ]),
      ),
    ),
  );
}

function plateHoles(parts: readonly PlatePart[]): string {
  return csvTable(
    [
      'part',
      'hole',
      'from left edge mm',
      'from lower edge mm',
      'diameter mm',
      'purpose',
      'plates',
      'slot length mm',
      'slot along',
    ],
    parts.flatMap(({ number, panels, pattern }) =>
      pattern.holes.map(({ x, y, diameter, purpose, slot }, i) => [
        number,
        i + 1,
        mm(x),
        mm(y),
        mm(diameter),
        purpose,
        panels.length,
        slot ? mm(slot.length) : '',
        slot?.along ?? '',
      ]),
    ),
  );
}

function tubesTable(groups: FabricationPack['bars'], tubes: readonly Tube[]): string {
  const byId = new Map(tubes.map((tube) => [tube.id, tube]));
  return csvTable(
    ['section', 'material', 'bar', 'piece', 'length mm', 'rest of bar mm', 'inside'],
    groups.flatMap(({ section, material, bars }) =>
      bars.flatMap(({ cuts, rest }, i) =>
        cuts.map(({ id, length }) => [
          section,
          material,
          i + 1,
          id,
          mm(length),
          mm(rest),
          byId.get(id.split('-')[0]!)?.flooded ? 'flooded: vent and drain holes' : 'sealed: test for tightness',
        ]),
      ),
    ),
  );
}

/** Which bolts drill the tube, from its low end; a stud or clamp drills nothing. */
function tubeHoles(model: Model): string {
  const rows = model.geometry.panels.flatMap((panel) => {
    const { fixing } = panel.design;
    if (fixing.kind !== 'bolted' || fixing.into === 'welded stud' || fixing.into === 'clamp') return [];
    return panel.bolts.map((bolt) => {
      const tube = model.tubes.get(bolt.tube)!;
      const along = tube.set === 'main' ? bolt.x : bolt.y;
      const across = tube.set === 'main' ? bolt.y : bolt.x;
      return [
        tube.id,
        bolt.id,
        mm(along - tube.from),
        mm(across - tube.at),
        mm(bolt.hole),
        panel.design.side,
        drilled(fixing),
      ] as const;
    });
  });
  return csvTable(
    ['tube', 'bolt', 'from low end mm', 'off centre line mm', 'diameter mm', 'face', 'walls'],
    [...rows].sort((a, b) => (a[0] < b[0] ? -1 : Number(a[0] > b[0])) || a[2] - b[2]),
  );
}

const drilled = ({ into }: BoltedFixing): string => (into === 'through-bolt with sleeve' ? 'both' : 'one');

function boltsTable(model: Model): string {
  const groups = new Map<string, { row: (string | number)[]; count: number; panels: string[] }>();
  for (const panel of model.geometry.panels) {
    const { fixing } = panel.design;
    if (fixing.kind !== 'bolted' || panel.bolts.length === 0) continue;
    for (const bolt of panel.bolts) {
      const tube = model.tubes.get(bolt.tube)!;
      const grip =
        panel.thickness +
        (fixing.into === 'through-bolt with sleeve' || fixing.into === 'clamp'
          ? tube.section.height
          : fixing.into === 'welded stud'
            ? 0
            : tube.section.nominalWall);
      const row = [
        fixing.bolt,
        fixing.class,
        fixing.into,
        mm(grip),
        mm(bolt.hole),
        sleeveText(fixing, bolt, tube, model),
      ];
      const key = JSON.stringify(row);
      const known = groups.get(key) ?? { row, count: 0, panels: [] };
      known.count++;
      if (!known.panels.includes(panel.id)) known.panels.push(panel.id);
      groups.set(key, known);
    }
  }
  return csvTable(
    [
      'bolt',
      'class',
      'through or into',
      'grip mm',
      'hole mm',
      'count',
      'panels',
      'tightening',
      'sleeve outside × bore × length mm',
    ],
    [...groups.values()].map(({ row: [bolt, of, into, grip, hole, sleeve], count, panels }) => [
      ...[bolt!, of!, into!, grip!, hole!],
      count,
      panels.join(' '),
      'as the check note states; by the bolt supplier’s procedure',
      sleeve!,
    ]),
  );
}

/** A crush sleeve as it is cut: ends square, between the walls of the tube. */
function sleeveText(fixing: BoltedFixing, { hole }: Bolt, { section }: Tube, { catalogue }: Model): string {
  if (fixing.into !== 'through-bolt with sleeve') return '';
  const { bore, outer } = sleeveOf(fixing, hole, catalogue.bolt(fixing.bolt).diameter);
  return [outer, bore, section.height - 2 * section.nominalWall].map(mm).join(' × ');
}

function weldsTable(panels: readonly Panel[]): string {
  return csvTable(
    ['panel', 'side', 'tube', 'throat mm', 'length mm', 'pattern', 'returns round corners mm'],
    panels.flatMap(({ id, design: { fixing }, weldRuns, weldReturns }) =>
      fixing.kind === 'welded'
        ? weldRuns.map(({ side, tube, length, from, to }) => [
            id,
            sideWords[side],
            tube,
            mm(fixing.throat.si),
            mm(length),
            fixing.pattern,
            weldReturns
              .filter(({ from: at }) => same(at, from) || same(at, to))
              .map((one) => mm(one.length))
              .join(' + ') || 'none',
          ])
        : [],
    ),
  );
}

const same = (a: Point, b: Point): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-6;

const sideWords = { mainLow: 'low y', mainHigh: 'high y', crossLow: 'low x', crossHigh: 'high x' } as const;

function instructions(
  { document, geometry }: Model,
  made: readonly PlatePart[],
  { sheet, bar, gap, kerf }: Stock,
): string {
  const parts = partOf(made);
  return [
    `${document.project.name}: fabrication pack, draft`,
    '',
    'Issued with the signed check note only. A drawing or list here that differs from the note is wrong: ask before cutting.',
    '',
    'Plates: P*.dxf (layers OUTSIDE_CONTOUR, INSIDE_CONTOUR, MARKING) and P*.svg, 1:1, millimetres, seen from above, datum at the lower left corner. Kerf is not taken off. Re-entrant corners of notches: drill or round them to a radius of at least 3 mm, no nicks (common practice, no source).',
    `Sheets of ${mm(sheet.width)} × ${mm(sheet.height)} mm, ${mm(gap)} mm between parts, by shelves: the shop may nest better. Tubes from bars of ${mm(bar)} mm, ${mm(kerf)} mm lost at each cut.`,
    'Tolerances: EN ISO 13920 class B for lengths of the welded grid, EN 1090-2 for holes (from memory), unless the note says otherwise. Drill plate and tube together or from one template where a hole must fit.',
    'Sealed tubes: do not heat, cut or weld a closed void without a vent. Galvanizing: every void needs its vent and drain holes.',
    'Welding: procedure and welders qualified to the code that the note names; execution class, quality level and extent of inspection as the note states. Start and stop welds of panels on the straight, not within two legs of a corner; weld round corners without a break, and return ends as the list of welds says.',
    '',
    'Order of assembly: main tubes on supports, levelled; cross tubes laid and tacked; diagonals measured; welded from the middle outwards; attachments; panels from the middle outwards, bolts finger-tight before any is tightened.',
    '',
    'Panels: ' + geometry.panels.map(({ id }) => `${id} is ${parts.get(id)!}`).join(', ') + '.',
    '',
  ].join('\r\n');
}
