import type { PlainBay } from './bays-between.ts';
import type { Bolt, ListedField, Rectangle, Side, Spans } from './geometry.ts';
import type { GridLine, GridLines } from './grid-lines.ts';
import { abreast, boltsOnLine, heldLines, type HeldLine } from './listed-bolts.ts';
import type { BoltedEdge } from './bolts-of.ts';

type ListedPanel = Pick<BoltedEdge, 'outline' | 'bearings' | 'lines' | 'isLevel'> & { readonly bolts: readonly Bolt[] };

interface End {
  /** The panel's edge, or a tube between its bays. */
  readonly outer: boolean;
  readonly line: HeldLine | undefined;
  /** Where the bay's part of the panel ends, m. */
  readonly at: number;
}

/**
 * A bay's part of a panel that hangs on listed bolts: spans between the outermost bolts, real plate and real places. The
 * plate ends at the panel's edge; where the panel goes on over a tube, it ends at the bolts there, or as far beyond them
 * as it overhangs on the other side (the same as for bolts in lines).
 */
export function listedField(panel: ListedPanel, bay: PlainBay, part: Rectangle): { spans: Spans; listed: ListedField } {
  const held = heldLines(panel);
  const end = (set: 'main' | 'cross', id: string, at: number): End => ({
    outer: !(panel.lines as GridLines)[set].find(({ tube }: GridLine) => tube.id === id)!.inner,
    line: held.find(({ tube }) => tube.id === id),
    at,
  });
  const [low, high] = [end('cross', bay.cross[0], part.x0), end('cross', bay.cross[1], part.x1)];
  const [under, over] = [end('main', bay.main[0], part.y0), end('main', bay.main[1], part.y1)];
  const own = panel.bolts.filter(({ x, y }) => isWithin(x, low, high) && isWithin(y, under, over));

  const x = spanOf('x', own, low, high, panel.outline);
  const y = spanOf('y', own, under, over, panel.outline);
  const row = ({ line }: End, axis: 'x' | 'y', extreme: number): readonly Bolt[] =>
    line ? boltsOnLine(line, own) : own.filter((bolt) => Math.abs(bolt[axis] - extreme) < abreast);
  const rows: Record<Side, readonly Bolt[]> = {
    mainLow: row(under, 'y', y.from),
    mainHigh: row(over, 'y', y.to),
    crossLow: row(low, 'x', x.from),
    crossHigh: row(high, 'x', x.to),
  };
  const along = (axis: 'x' | 'y', sides: readonly Side[], span: { readonly from: number; readonly to: number }) =>
    sides.map((side) => stepsOf(rows[side].map((bolt) => bolt[axis]), span)); // prettier-ignore
  const alongX = along('x', ['mainLow', 'mainHigh'], x);
  const alongY = along('y', ['crossLow', 'crossHigh'], y);
  const index = new Map(own.map((bolt, i) => [bolt, i]));
  return {
    spans: {
      ...{ a: x.to - x.from, b: y.to - y.from },
      supports: 'bolts',
      boltsAlongX: Math.min(...alongX.map(({ count }) => count)),
      boltsAlongY: Math.min(...alongY.map(({ count }) => count)),
      ...{ insetX: x.inset, insetY: y.inset },
    },
    listed: {
      plate: { x0: x.first, y0: y.first, x1: x.last, y1: y.last },
      points: own.map((bolt) => [bolt.x, bolt.y] as const),
      rows: {
        yLow: rows.mainLow.map((bolt) => index.get(bolt)!),
        yHigh: rows.mainHigh.map((bolt) => index.get(bolt)!),
        xLow: rows.crossLow.map((bolt) => index.get(bolt)!),
        xHigh: rows.crossHigh.map((bolt) => index.get(bolt)!),
      },
      ...{ farX: Math.max(...alongX.map(({ far }) => far)), farY: Math.max(...alongY.map(({ far }) => far)) },
      ...{ nearX: Math.min(...alongX.map(({ near }) => near)), nearY: Math.min(...alongY.map(({ near }) => near)) },
    },
  };
}

/** A tube between bays lends its bolts to the bays on both hands. */
function isWithin(at: number, low: End, high: End): boolean {
  const from = low.outer ? -Infinity : (low.line?.low ?? low.at);
  const to = high.outer ? Infinity : (high.line?.high ?? high.at);
  return at >= from - abreast && at <= to + abreast;
}

/** Between the outermost bolts, m, and the plate beyond them. */
function spanOf(axis: 'x' | 'y', bolts: readonly Bolt[], low: End, high: End, outline: Rectangle) {
  const places = bolts.map((bolt) => bolt[axis]);
  const [edgeLow, edgeHigh] = [outline[`${axis}0`], outline[`${axis}1`]];
  const from = places.length === 0 || (!low.outer && !low.line) ? low.at : Math.min(...places);
  const to = places.length === 0 || (!high.outer && !high.line) ? high.at : Math.max(...places);
  const [before, after] = [low.outer ? from - edgeLow : 0, high.outer ? edgeHigh - to : 0];
  return {
    ...{ from, to, inset: Math.max(before, after) },
    first: low.outer ? edgeLow : from - after,
    last: high.outer ? edgeHigh : to + before,
  };
}

/** A row of bolts along a tube between the field's ends: how many places along it, the widest step and the narrowest, m.
 *  Beyond its last bolt a row counts twice what is left to the field's end, as half a step hangs on the bolt there. */
function stepsOf(places: readonly number[], { from, to }: { readonly from: number; readonly to: number }) {
  const sorted = [...places].sort((a, b) => a - b);
  const steps = sorted.slice(1).map((place, i) => place - sorted[i]!);
  const apart = steps.filter((step) => step > abreast);
  if (sorted.length === 0) return { count: 0, far: 0, near: 0 };
  return {
    count: 1 + apart.length,
    far: Math.max(...apart, 2 * (sorted[0]! - from), 2 * (to - sorted.at(-1)!)),
    near: steps.length > 0 ? Math.min(...steps) : 0,
  };
}
