import type { BoltedFixing } from '../document/schema.ts';
import type { BoltPattern } from '../document/bolt-pattern.ts';
import type { Bearing, Bolt, Rectangle, Side, Tube } from './geometry.ts';
import type { GridLine, GridLines } from './grid-lines.ts';
import type { Slot } from './slot.ts';

type BoltLines = Extract<BoltPattern, { kind: 'lines' }>;

export interface BoltedEdge {
  readonly id: string;
  readonly fixing: Pick<BoltedFixing, 'slot'> & Pick<BoltLines, 'pitch' | 'edgeDistance'>;
  /** Diameter of the bolt holes, and the whole length of slots in the panel (null where they are round), m. */
  readonly hole: number;
  readonly slotLength: number | null;
  readonly outline: Rectangle;
  readonly notch: number;
  readonly bearings: readonly Bearing[];
  readonly lines: GridLines;
  readonly isLevel: (tube: Tube) => boolean;
}

/**
 * Bolts of a panel: a line along each fixed side at the edge distance, and one over the centre of each tube at its
 * level between its bays. Between the points where lines meet, pitches are equal and not longer than the design's;
 * lines share the bolt where they meet. A corner notch moves the ends of the lines so that the edge distance is kept.
 * Numbered clockwise (seen from above) from the low corner, then the bolts on inner tubes, row by row. m.
 * A side too short for its edge distances gets no bolts: `findingsOf` says so.
 */
export function boltsOf(edge: BoltedEdge): Bolt[] {
  const { x0, y0, x1, y1 } = edge.outline;
  const alongX = boltLines(edge, 'main');
  const alongY = boltLines(edge, 'cross');
  const spots = [
    ...alongX.flatMap((line) => spotsOn(edge, line, alongY, [x0, x1])),
    ...alongY.flatMap((line) => spotsOn(edge, line, alongX, [y0, y1])),
  ];

  const unique = new Map<string, Spot>();
  for (const spot of spots) {
    const key = `${Math.round(spot.x * 1e6)} ${Math.round(spot.y * 1e6)}`;
    const met = unique.get(key);
    unique.set(key, met ? { ...met, pitchAcross: spot.pitch } : spot);
  }
  const width = x1 - x0;
  const height = y1 - y0;
  const lowCorner = edge.fixing.edgeDistance.si + 1e-6;
  const clockwise = ({ x, y, line }: Spot): number => {
    if (line.inner) return 2 * (width + height) + 1;
    if (x - x0 < lowCorner && y - y0 < lowCorner) return -1;
    if (line.side === 'crossLow') return y - y0;
    if (line.side === 'mainHigh') return height + x - x0;
    if (line.side === 'crossHigh') return height + width + y1 - y;
    return 2 * height + width + x1 - x;
  };
  const ordered = [...unique.values()].sort((a, b) => clockwise(a) - clockwise(b) || a.y - b.y || a.x - b.x);
  const digits = ordered.length > 99 ? 3 : 2;
  return ordered.map(({ x, y, line, pitch, pitchAcross, edge1, edge2 }, i) => ({
    id: `${edge.id}-${String(i + 1).padStart(digits, '0')}`,
    x,
    y,
    side: line.side,
    tube: line.tube,
    inner: line.inner,
    hole: edge.hole,
    ...slotOn(edge, line),
    edge1,
    edge2,
    pitch,
    ...(pitchAcross === undefined ? {} : { pitchAcross }),
    fromFace: line.fromFace,
  }));
}

/**
 * Where the ends of an edge's bolt line lie from the panel's corner, m: at the edge distance e, or further in where a
 * notch of side s would come nearer than e to the bolt.
 */
export function endOfBoltLine(edgeDistance: number, notch: number): number {
  const e = edgeDistance;
  if (notch === 0) return e;
  return Math.max(e, notch + Math.sqrt(e ** 2 - Math.max(0, e - notch) ** 2));
}

/** A line of bolts along x (over a main tube) or along y (over a cross tube), at one position across. */
interface BoltLine {
  readonly side: Side;
  readonly tube: string;
  readonly inner: boolean;
  readonly at: number;
  readonly fromFace: number;
}

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly line: BoltLine;
  readonly pitch: number;
  readonly pitchAcross?: number;
  readonly edge1: number;
  readonly edge2: number;
}

function boltLines({ outline, fixing, bearings, lines, isLevel }: BoltedEdge, set: 'main' | 'cross'): BoltLine[] {
  const e = fixing.edgeDistance.si;
  const [low, high] = set === 'main' ? [outline.y0, outline.y1] : [outline.x0, outline.x1];
  const [lowSide, highSide] =
    set === 'main' ? (['mainLow', 'mainHigh'] as const) : (['crossLow', 'crossHigh'] as const);
  const edge = (side: Side, at: number): BoltLine[] =>
    bearings
      .filter((b) => b.side === side && b.fixed)
      .map((b) => ({ side, tube: b.tube, inner: false, at, fromFace: b.lap - e }));
  const fixed = bearings.some((b) => b.fixed && b.side.startsWith(set));
  const inner = (line: GridLine): BoltLine[] =>
    fixed && line.inner && isLevel(line.tube)
      ? [{ side: highSide, tube: line.tube.id, inner: true, at: line.tube.at, fromFace: line.tube.section.width / 2 }]
      : [];
  return [...edge(lowSide, low + e), ...lines[set].flatMap(inner), ...edge(highSide, high - e)];
}

/** The slot of a bolt: it runs as its line does, or square to it. A corner bolt's goes by the main tube's side. */
export function slotOn(
  { slotLength, fixing }: Pick<BoltedEdge, 'slotLength'> & { readonly fixing: Pick<BoltedFixing, 'slot'> },
  { side }: { readonly side: Side },
): { readonly slot?: Slot } {
  if (slotLength === null) return {};
  const runsAlongX = side.startsWith('main') === (fixing.slot === 'along the edge');
  return { slot: { length: slotLength, along: runsAlongX ? 'x' : 'y' } };
}

/** Bolts along one line, between the panel's ends and where lines of the other direction meet it. */
function spotsOn(
  edge: BoltedEdge,
  line: BoltLine,
  others: readonly BoltLine[],
  [low, high]: readonly [number, number],
): Spot[] {
  const e = edge.fixing.edgeDistance.si;
  const notch = line.inner ? 0 : edge.notch;
  const end = endOfBoltLine(e, notch);
  const stations = [low + end, ...others.filter((o) => o.inner).map((o) => o.at), high - end];
  if (stations.some((s, i) => i > 0 && s < stations[i - 1]! - 1e-9)) return [];
  const parts = stations.slice(1).map((to, i) => {
    const from = stations[i]!;
    const n = Math.ceil((to - from) / edge.fixing.pitch.si - 1e-6);
    return { from, n, pitch: n > 0 ? (to - from) / n : 0 };
  });
  const along = parts.flatMap(({ from, n, pitch }, i) => {
    const before = parts[i - 1]?.pitch ?? 0;
    return Array.from({ length: n }, (_, k) => ({
      s: from + k * pitch,
      pitch: k === 0 ? Math.max(before, pitch) : pitch,
    }));
  });
  along.push({ s: stations.at(-1)!, pitch: parts.at(-1)!.pitch });

  const isMain = line.side.startsWith('main');
  const { x0, y0, x1, y1 } = edge.outline;
  const [acrossLow, acrossHigh] = isMain ? [y0, y1] : [x0, x1];
  const edge2 = Math.min(line.at - acrossLow, acrossHigh - line.at);
  const cut = edge2 < notch ? notch : 0;
  return along.map(({ s, pitch }) => ({
    x: isMain ? s : line.at,
    y: isMain ? line.at : s,
    line,
    pitch,
    edge2,
    edge1: Math.min(s - low - cut, high - cut - s),
  }));
}
