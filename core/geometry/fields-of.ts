import type { PlainBay } from './bays-between.ts';
import { boltRows, type BoltRows } from './bolt-rows.ts';
import { endOfBoltLine } from './bolts-of.ts';
import type { BoltPattern } from '../document/bolt-pattern.ts';
import type { Bearing, Bolt, Field, ListedField, Rectangle, Side, Spans, Tube, WeldRun } from './geometry.ts';
import type { GridLine, GridLines } from './grid-lines.ts';
import { listedField } from './listed-field.ts';

export interface HeldPanel {
  readonly id: string;
  readonly outline: Rectangle;
  readonly notch: number;
  readonly bearings: readonly Bearing[];
  readonly lines: GridLines;
  readonly isLevel: (tube: Tube) => boolean;
  readonly bays: readonly PlainBay[];
  /** How its bolts stand; null for a welded panel. */
  readonly pattern: BoltPattern | null;
  readonly bolts: readonly Bolt[];
  readonly weldRuns: readonly WeldRun[];
}

/**
 * The plate fields of a panel, one for each bay, m. Support lines:
 *   pressed on: the end of the corner radius on each fixed side and inner tube (the flat begins there), or the panel's
 *     edge where the lap ends before;
 *   pulled off, bolted: the bolt lines, over the centre of an inner tube;
 *   pulled off, bolts listed one by one: the outermost bolts, see `listedField`;
 *   pulled off, welded: the welded edges; an inner tube holds nothing, so the spans reach across it.
 * An inner tube is a hinged line. A direction that only one side or none supports has no span: there the length is
 * the field's part of the panel, from edge to edge or to the centre line of an inner tube.
 */
export function fieldsOf(panel: HeldPanel): Field[] {
  const pressed = pressedLines(panel);
  const pulled = pulledSpans(panel);
  return panel.bays.map((bay) => {
    const part = partOf(panel, bay);
    const { spans, listed } = pulled(bay, part);
    return {
      bay: bay.id,
      panel: panel.id,
      pressed: spansBetween(panel, bay, part, pressed, null),
      pulled: spans,
      area: (part.x1 - part.x0) * (part.y1 - part.y0),
      ...(listed ? { listed } : {}),
    };
  });
}

/** What a bay's part hangs on when it is pulled off its tubes. */
function pulledSpans(panel: HeldPanel): (bay: PlainBay, part: Rectangle) => { spans: Spans; listed?: ListedField } {
  const { pattern } = panel;
  if (pattern?.kind === 'listed') return (bay, part) => listedField(panel, bay, part);
  const lines = pattern === null ? weldLines(panel) : boltLines(panel, pattern.edgeDistance.si);
  const rows =
    pattern === null ? null : { on: boltRows(panel.bolts), end: endOfBoltLine(pattern.edgeDistance.si, panel.notch) };
  return (bay, part) => ({ spans: spansBetween(panel, bay, part, lines, rows) });
}

/** Where one tube's line supports the plate on either hand; a tube that gives no support has none. */
interface SupportLine {
  readonly tube: string;
  /** Support of the plate on the tube's low side, and on its high side. */
  readonly below: number;
  readonly above: number;
}

type Lines = Readonly<Record<'main' | 'cross', readonly SupportLine[]>>;

function supportLines(
  panel: HeldPanel,
  outer: (b: Bearing, tube: Tube) => number | null,
  inner: (tube: Tube) => { below: number; above: number } | null,
): Lines {
  const of = (set: 'main' | 'cross'): SupportLine[] => {
    const relied = panel.bearings.some((b) => b.fixed && b.side.startsWith(set));
    const lines = panel.lines[set];
    return lines.flatMap(({ tube, inner: between }: GridLine, i) => {
      if (between) {
        const at = relied && panel.isLevel(tube) ? inner(tube) : null;
        return at ? [{ tube: tube.id, ...at }] : [];
      }
      const side: Side = set === 'main' ? (i === 0 ? 'mainLow' : 'mainHigh') : i === 0 ? 'crossLow' : 'crossHigh';
      const at = outer(
        panel.bearings.find((b) => b.side === side)!,
        tube,
      );
      return at === null ? [] : [{ tube: tube.id, below: at, above: at }];
    });
  };
  return { main: of('main'), cross: of('cross') };
}

const isLow = (side: Side): boolean => side === 'mainLow' || side === 'crossLow';

function pressedLines(panel: HeldPanel): Lines {
  return supportLines(
    panel,
    ({ fixed, side, lap }, { at, section }) => {
      if (!fixed) return null;
      const reach = section.width / 2 - Math.min(section.outerRadius, lap);
      return isLow(side) ? at + reach : at - reach;
    },
    ({ at, section }) => ({
      below: at - section.width / 2 + section.outerRadius,
      above: at + section.width / 2 - section.outerRadius,
    }),
  );
}

function edgeOf({ x0, y0, x1, y1 }: Rectangle, side: Side): number {
  return { mainLow: y0, mainHigh: y1, crossLow: x0, crossHigh: x1 }[side];
}

function boltLines(panel: HeldPanel, edgeDistance: number): Lines {
  return supportLines(
    panel,
    ({ fixed, side }) => (fixed ? edgeOf(panel.outline, side) + (isLow(side) ? edgeDistance : -edgeDistance) : null),
    ({ at }) => ({ below: at, above: at }),
  );
}

function weldLines(panel: HeldPanel): Lines {
  const welded = new Set(panel.weldRuns.map((run) => run.side));
  return supportLines(
    panel,
    ({ side }) => (welded.has(side) ? edgeOf(panel.outline, side) : null),
    () => null,
  );
}

/** A bay's part of the panel: to the panel's edge, or to the centre line of an inner tube. */
function partOf({ outline, lines }: HeldPanel, bay: PlainBay): Rectangle {
  const end = (of: readonly GridLine[], id: string, edge: number): number => {
    const line = of.find(({ tube }) => tube.id === id)!;
    return line.inner ? line.tube.at : edge;
  };
  return {
    x0: end(lines.cross, bay.cross[0], outline.x0),
    y0: end(lines.main, bay.main[0], outline.y0),
    x1: end(lines.cross, bay.cross[1], outline.x1),
    y1: end(lines.main, bay.main[1], outline.y1),
  };
}

/** Bolts in lines: how many stand where, and where a line's ends lie from the panel's corner, m. */
interface LinedBolts {
  readonly on: BoltRows;
  readonly end: number;
}

function spansBetween(panel: HeldPanel, bay: PlainBay, part: Rectangle, lines: Lines, rows: LinedBolts | null): Spans {
  const { outline } = panel;
  /** The supports around the bay, or the part's ends (the rows' ends, for bolts) where a pair is missing. */
  const between = (
    set: 'main' | 'cross',
    [low, high]: readonly [number, number],
    [edgeLow, edgeHigh]: readonly [number, number],
  ) => {
    const position = (id: string): number => panel.lines[set].find(({ tube }) => tube.id === id)!.tube.at;
    const at = (line: SupportLine): number => position(line.tube);
    const from = lines[set].filter((line) => at(line) <= position(bay[set][0])).at(-1)?.above;
    const to = lines[set].find((line) => at(line) >= position(bay[set][1]))?.below;
    if (from !== undefined && to !== undefined) return { held: true, from, to };
    const inset = rows ? rows.end : 0;
    return { held: false, from: low === edgeLow ? low + inset : low, to: high === edgeHigh ? high - inset : high };
  };
  const x = between('cross', [part.x0, part.x1], [outline.x0, outline.x1]);
  const y = between('main', [part.y0, part.y1], [outline.y0, outline.y1]);
  const spans = { a: x.to - x.from, b: y.to - y.from };
  if (!rows)
    return {
      ...spans,
      supports: x.held && y.held ? 'four sides' : y.held ? 'main tubes' : 'cross tubes',
      boltsAlongX: 0,
      boltsAlongY: 0,
      insetX: 0,
      insetY: 0,
    };

  const onY = (at: number): number => rows.on('x', at, x.from, x.to);
  const onX = (at: number): number => rows.on('y', at, y.from, y.to);
  const inset = (
    low: number,
    high: number,
    s: { from: number; to: number },
    [edgeLow, edgeHigh]: readonly [number, number],
  ): number => Math.max(low === edgeLow ? s.from - low : 0, high === edgeHigh ? high - s.to : 0);
  return {
    ...spans,
    supports: 'bolts',
    boltsAlongX: Math.min(onY(y.from), onY(y.to)),
    boltsAlongY: Math.min(onX(x.from), onX(x.to)),
    insetX: inset(part.x0, part.x1, x, [outline.x0, outline.x1]),
    insetY: inset(part.y0, part.y1, y, [outline.y0, outline.y1]),
  };
}
