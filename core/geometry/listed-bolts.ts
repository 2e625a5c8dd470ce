import type { BoltedFixing } from '../document/schema.ts';
import { slotOn, type BoltedEdge } from './bolts-of.ts';
import type { Bolt, Point, Rectangle, Side, Tube } from './geometry.ts';
import type { GridLine } from './grid-lines.ts';
import { slotReach, type HoleShape } from './slot.ts';

type Places = NonNullable<BoltedFixing['places']>;

/** A tube that bolts of the panel may go into: along a fixed side, or between its bays at its level. */
export interface HeldLine {
  readonly side: Side;
  readonly set: 'main' | 'cross';
  readonly tube: Tube;
  readonly inner: boolean;
  /** Across the tube, m: where the panel lies on it. */
  readonly low: number;
  readonly high: number;
}

type Held = Pick<BoltedEdge, 'outline' | 'bearings' | 'lines' | 'isLevel'>;

/** The tubes that hold a panel's bolts: main tubes, then cross tubes, each from the low side to the high side. */
export function heldLines({ outline, bearings, lines, isLevel }: Held): HeldLine[] {
  const of = (set: 'main' | 'cross'): HeldLine[] => {
    const [lowSide, highSide]: readonly [Side, Side] = set === 'main' ? ['mainLow', 'mainHigh'] : ['crossLow', 'crossHigh']; // prettier-ignore
    const [low, high] = set === 'main' ? [outline.y0, outline.y1] : [outline.x0, outline.x1];
    const fixed = (side: Side): boolean => bearings.some((b) => b.side === side && b.fixed);
    return lines[set].flatMap(({ tube, inner }: GridLine, i): HeldLine[] => {
      const [under, over] = [tube.at - tube.section.width / 2, tube.at + tube.section.width / 2];
      if (inner)
        return (fixed(lowSide) || fixed(highSide)) && isLevel(tube)
          ? [{ side: highSide, set, tube, inner, low: under, high: over }]
          : [];
      if (i === 0) return fixed(lowSide) ? [{ side: lowSide, set, tube, inner, low, high: over }] : [];
      return fixed(highSide) ? [{ side: highSide, set, tube, inner, low: under, high }] : [];
    });
  };
  return [...of('main'), ...of('cross')];
}

/** Where a listed place lies in plan, m: inwards from two edges of the outline, or from its centre. */
export function placeInPlan({ x, y, from }: Places[number], { x0, y0, x1, y1 }: Rectangle): Point {
  if (from === 'centre') return [(x0 + x1) / 2 + x.si, (y0 + y1) / 2 + y.si];
  return [from.startsWith('high x') ? x1 - x.si : x0 + x.si, from.endsWith('high y') ? y1 - y.si : y0 + y.si];
}

/**
 * Bolts of a panel on listed places, numbered as they are listed. Each counts to the tube that it stands on: main tubes
 * first, as bolts in lines do at corners; one that stands on none counts to the nearest, and `findingsOf` says so. Edge
 * distances are to the nearest edge of the panel, its notches counted; `pitch` is the distance to the nearest other bolt. m
 */
export function listedBolts(
  edge: Omit<BoltedEdge, 'fixing'> & { readonly fixing: Pick<BoltedFixing, 'slot'> },
  places: Places,
): Bolt[] {
  const lines = heldLines(edge);
  const digits = places.length > 99 ? 3 : 2;
  const alone = places.map((place, i): Bolt => {
    const [x, y] = placeInPlan(place, edge.outline);
    const line = lineUnder(lines, [x, y]);
    return {
      id: `${edge.id}-${String(i + 1).padStart(digits, '0')}`,
      ...{ x, y, side: line.side, tube: line.tube.id, inner: line.inner, hole: edge.hole },
      ...slotOn(edge, line),
      ...steelAround(edge, line.set, [x, y]),
      pitch: 0,
      fromFace: fromFace(line, line.set === 'main' ? y : x),
    };
  });
  return alone.map((bolt) => {
    const others = alone.filter((other) => other !== bolt);
    const least = (apart: (other: Bolt) => number): number => (others.length > 0 ? Math.min(...others.map(apart)) : 0);
    const rows = lines.map((line) => ({ line, row: boltsOnLine(line, alone) })).filter(({ row }) => row.includes(bolt));
    const own = rows.find(({ line }) => line.tube.id === bolt.tube && line.inner === bolt.inner)!;
    return {
      ...bolt,
      pitch: least((other) => Math.hypot(other.x - bolt.x, other.y - bolt.y)),
      listed: {
        clear: least((other) => clearBetween(bolt, other)),
        next: Math.max(...rows.map(({ line, row }) => nextInRow(line, bolt, row))),
        far: bolt.inner ? 0 : farthestEdge(edge, own.line, bolt, own.row),
      },
    };
  });
}

/** Bolts that stand in a line's strip of the panel, or count to its tube, whatever tube a corner bolt counts to. */
export function boltsOnLine({ set, tube, inner, low, high }: HeldLine, bolts: readonly Bolt[]): readonly Bolt[] {
  const across = set === 'main' ? 'y' : 'x';
  return bolts.filter(
    (bolt) =>
      (bolt.tube === tube.id && bolt.inner === inner) || (bolt[across] >= low - touch && bolt[across] <= high + touch),
  );
}

/** A distance that is met exactly is met, in spite of rounding. m */
const touch = 1e-9;

/** From the tube's near face to a place, m, positive on the tube; between bays from the nearer face. */
function fromFace({ side, inner, tube }: HeldLine, at: number): number {
  const [low, high] = [tube.at - tube.section.width / 2, tube.at + tube.section.width / 2];
  if (inner) return Math.min(at - low, high - at);
  return side.endsWith('Low') ? high - at : at - low;
}

function lineUnder(lines: readonly HeldLine[], [x, y]: Point): HeldLine {
  /** How far inside the tube's width the place lies, m; negative beside it. */
  const inside = (line: HeldLine): number => {
    const from = fromFace(line, line.set === 'main' ? y : x);
    return Math.min(from, line.tube.section.width - from);
  };
  return (
    lines.find((line) => inside(line) >= -touch) ??
    lines.reduce((best, line) => (inside(line) > inside(best) ? line : best))
  );
}

/** Along and across a tube to the panel's nearest edge, m; negative outside the panel. A notch counts as edge. */
function steelAround(
  { outline: { x0, y0, x1, y1 }, notch }: Pick<BoltedEdge, 'outline' | 'notch'>,
  set: 'main' | 'cross',
  [x, y]: Point,
) {
  const [dx, dy] = [Math.min(x - x0, x1 - x), Math.min(y - y0, y1 - y)];
  const [along, across] = set === 'main' ? [dx, dy] : [dy, dx];
  if (notch === 0) return { edge1: along, edge2: across };
  const edge1 = across < notch ? along - notch : along;
  const edge2 = along < notch ? across - notch : across;
  // Inside both strips that a notch cuts short, its corner is the nearest steel.
  const corner = along >= notch && across >= notch ? Math.hypot(along - notch, across - notch) : Infinity;
  return { edge1: Math.min(edge1, corner), edge2: Math.min(edge2, corner) };
}

/** Between the middle lines of two holes, m: centre to centre where both are round. */
function clearBetween(a: Placed, b: Placed): number {
  const gap = (axis: 'x' | 'y'): number => {
    const reach =
      slotReach({ diameter: a.hole, slot: a.slot }, axis) + slotReach({ diameter: b.hole, slot: b.slot }, axis);
    return Math.max(0, Math.abs(a[axis] - b[axis]) - reach);
  };
  return Math.hypot(gap('x'), gap('y'));
}

type Placed = Pick<Bolt, 'x' | 'y' | 'hole'> & Pick<HoleShape, 'slot'>;

const alongOf = ({ set }: HeldLine): 'x' | 'y' => (set === 'main' ? 'x' : 'y');

/** The farther of the two next bolts of a row, one on each hand, m; bolts abreast count as one. 0 where it stands alone. */
function nextInRow(line: HeldLine, bolt: Bolt, row: readonly Bolt[]): number {
  const axis = alongOf(line);
  const steps = row.map((other) => other[axis] - bolt[axis]);
  const [before, after] = [steps.filter((s) => s < -abreast), steps.filter((s) => s > abreast)];
  return Math.max(before.length > 0 ? -Math.max(...before) : 0, after.length > 0 ? Math.min(...after) : 0);
}

/** To the edge beside the row, unless another bolt abreast is nearer to it; beyond the last bolt of the row to its end. m */
function farthestEdge(
  { outline, notch }: Pick<BoltedEdge, 'outline' | 'notch'>,
  line: HeldLine,
  bolt: Bolt,
  row: readonly Bolt[],
): number {
  const axis = alongOf(line);
  const [from, to] = axis === 'x' ? [outline.x0, outline.x1] : [outline.y0, outline.y1];
  const isBehind = row.some((b) => b !== bolt && Math.abs(b[axis] - bolt[axis]) < abreast && b.edge2 < bolt.edge2);
  const cut = bolt.edge2 < notch ? notch : 0;
  const isFirst = row.every((b) => b[axis] > bolt[axis] - abreast);
  const isLast = row.every((b) => b[axis] < bolt[axis] + abreast);
  return Math.max(isBehind ? 0 : bolt.edge2, isFirst ? bolt[axis] - from - cut : 0, isLast ? to - bolt[axis] - cut : 0);
}

/** Bolts nearer than this along a tube stand at one place of its length. m */
export const abreast = 1e-6;
