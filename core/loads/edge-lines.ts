import { areaOf, type FieldShare } from './plan-shares.ts';
import type { Panel, Rectangle, Side, Tube } from '../geometry/geometry.ts';

/** A line load on a tube: N/m at both ends for a pressure of 1 Pa, acting `offset` m off the tube's centre line. */
export interface EdgeLine {
  readonly tube: number;
  readonly from: number;
  readonly to: number;
  readonly first: number;
  readonly last: number;
  readonly offset: number;
}

export interface FieldLines {
  /** The panel pressed onto its tubes, and pulled off them. */
  readonly pressed: readonly EdgeLine[];
  readonly pulled: readonly EdgeLine[];
}

type Holds = 'four sides' | 'main tubes' | 'cross tubes';

/** What a field hands to its tubes for a pressure of 1 Pa.
 *    held on four sides: lines at 45° from the corners part the field, so the short sides get triangles and the long
 *      sides trapezoids; held on two sides: half to each. Common practice for two-way plates, no source.
 *  Pressed, it bears where the flat of the tube begins; pulled, it hangs on the bolt line or on the weld at its edge.
 *  A welded panel has no weld on inner tubes: pulled, the outer tubes hold it whole. Forces of a field add up to its area. */
export function edgeLines(
  share: FieldShare,
  tubes: readonly Tube[],
  bay: Readonly<Record<'main' | 'cross', readonly [string, string]>>,
): FieldLines {
  const { panel, outline, field, area } = share;
  const index = new Map(tubes.map((tube, i) => [tube.id, i]));
  const own: Record<Side, number> = {
    mainLow: index.get(bay.main[0])!,
    mainHigh: index.get(bay.main[1])!,
    crossLow: index.get(bay.cross[0])!,
    crossHigh: index.get(bay.cross[1])!,
  };
  const bearing = (side: Side) => panel.bearings.find((b) => b.side === side)!;
  const outer = (side: Side): boolean => tubes[own[side]]!.id === bearing(side).tube;
  const inward: Record<Side, 1 | -1> = { mainLow: 1, mainHigh: -1, crossLow: 1, crossHigh: -1 };
  const half = (side: Side): number => tubes[own[side]]!.section.width / 2;

  const bearsAt = (side: Side): number => {
    const { outerRadius } = tubes[own[side]]!.section;
    const lap = outer(side) ? bearing(side).lap : Infinity;
    return inward[side] * (half(side) - (lap < outerRadius ? lap : outerRadius));
  };
  const hangsAt = (side: Side): number => {
    if (!outer(side)) return 0;
    const from = panel.design.fixing.kind === 'bolted' ? boltLine(panel, side) : bearing(side).lap;
    return inward[side] * (half(side) - from);
  };

  const scale = area / areaOf(outline);
  const pressed = linesOf(outline, holds(panel, field.pressed.supports), scale, (side) => ({
    tube: own[side],
    offset: bearsAt(side),
  }));
  const wholePanel = panel.design.fixing.kind === 'welded' && panel.fields.length > 1;
  const pulledScale = wholePanel ? area / areaOf(panel.outline) : scale;
  const pulled = linesOf(
    wholePanel ? panel.outline : outline,
    holds(panel, field.pulled.supports),
    pulledScale,
    (side) => {
      if (!wholePanel) return { tube: own[side], offset: hangsAt(side) };
      const tube = index.get(bearing(side).tube)!;
      return { tube, offset: inward[side] * (tubes[tube]!.section.width / 2 - bearing(side).lap) };
    },
  );
  return { pressed, pulled };
}

/** Sides that a field relies on; where it hangs on bolts: those at which the panel is fixed. */
function holds(panel: Panel, supports: Holds | 'bolts'): Holds {
  if (supports !== 'bolts') return supports;
  const fixed = (set: 'main' | 'cross'): boolean => panel.bearings.every((b) => !b.side.startsWith(set) || b.fixed);
  if (fixed('main') && fixed('cross')) return 'four sides';
  return fixed('main') ? 'main tubes' : 'cross tubes';
}

/** Bolt line from the tube's near face, mean of the side's bolts, m. A side without bolts of its own hangs at its edge. */
function boltLine(panel: Panel, side: Side): number {
  const bearing = panel.bearings.find((b) => b.side === side)!;
  const bolts = panel.bolts.filter((bolt) => bolt.side === side && !bolt.inner);
  return bolts.length > 0 ? bolts.reduce((sum, bolt) => sum + bolt.fromFace, 0) / bolts.length : bearing.lap;
}

function linesOf(
  { x0, x1, y0, y1 }: Rectangle,
  holds: Holds,
  scale: number,
  on: (side: Side) => { tube: number; offset: number },
): EdgeLine[] {
  const [a, b] = [x1 - x0, y1 - y0];
  const reach = Math.min(a, b) / 2;
  const even = (side: Side, from: number, to: number, width: number): EdgeLine[] => [
    { ...on(side), from, to, first: (scale * width) / 2, last: (scale * width) / 2 },
  ];
  const sloped = (side: Side, from: number, to: number): EdgeLine[] => {
    const peak = scale * reach;
    const flat = to - from > 2 * reach;
    return [
      { ...on(side), from, to: flat ? from + reach : (from + to) / 2, first: 0, last: peak },
      ...(flat ? [{ ...on(side), from: from + reach, to: to - reach, first: peak, last: peak }] : []),
      { ...on(side), from: flat ? to - reach : (from + to) / 2, to, first: peak, last: 0 },
    ];
  };
  if (holds === 'main tubes') return [...even('mainLow', x0, x1, b), ...even('mainHigh', x0, x1, b)];
  if (holds === 'cross tubes') return [...even('crossLow', y0, y1, a), ...even('crossHigh', y0, y1, a)];
  return [
    ...sloped('mainLow', x0, x1),
    ...sloped('mainHigh', x0, x1),
    ...sloped('crossLow', y0, y1),
    ...sloped('crossHigh', y0, y1),
  ];
}
