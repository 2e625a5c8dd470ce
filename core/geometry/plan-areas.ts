import { Clipper, ClipType, FillRule, type Path64, type Paths64 } from 'clipper2-ts';
import type { PlainBay } from './bays-between.ts';
import { isInside } from './panel-of.ts';
import type { Panel, PlanAreas, Point, Rectangle, Tube } from './geometry.ts';

/**
 * Plan areas by polygon union on a lattice of 1 µm, m². Holes are 96-gons of the circle's exact area, so a hole that
 * nothing crosses counts exactly; one that a tube's face crosses is off by less than 0.1 % of its own area.
 * Holes that lie partly outside their panel are left out; `findingsOf` names them.
 */
export function planAreas(tubes: readonly Tube[], panels: readonly Panel[], outline: Rectangle): PlanAreas {
  const tubePaths = tubes.flatMap((tube) =>
    tube.pieces.map(([from, to]) => path(rectanglePoints(tubeRectangle({ ...tube, from, to })))),
  );
  const tubeUnion = union(tubePaths);
  const solidUnion = union([...tubeUnion, ...panels.flatMap(coverOf)]);
  const whole = [path(rectanglePoints(outline))];
  const open = areaOf(Clipper.booleanOp(ClipType.Difference, whole, solidUnion, FillRule.Positive));
  const outlineArea = areaOf(whole);
  const [solid, tubesOnly] = [areaOf(solidUnion), areaOf(tubeUnion)];
  return {
    outline: outlineArea,
    solid,
    tubes: tubesOnly,
    panels: solid - tubesOnly,
    open,
    openRatio: open / outlineArea,
  };
}

/** Part of a bay's clear opening that no panel covers, m². */
export function openAreaOf(bay: Pick<PlainBay, 'opening'>, panels: readonly Panel[]): number {
  const { opening } = bay;
  const over = panels.filter(
    ({ outline: o }) => o.x0 < opening.x1 && o.x1 > opening.x0 && o.y0 < opening.y1 && o.y1 > opening.y0,
  );
  if (over.length === 0) return (opening.x1 - opening.x0) * (opening.y1 - opening.y0);
  return areaOf(
    Clipper.booleanOp(
      ClipType.Difference,
      [path(rectanglePoints(opening))],
      union(over.flatMap(coverOf)),
      FillRule.Positive,
    ),
  );
}

/** Area that two panels cover both, holes not considered, m². */
export function commonArea(a: Panel, b: Panel): number {
  return areaOf(Clipper.booleanOp(ClipType.Intersection, [path(a.contour)], [path(b.contour)], FillRule.Positive));
}

/** Plan rectangle of a tube from end to end; where it is cut, the gaps at other tubes are counted in. */
export function tubeRectangle({
  set,
  at,
  from,
  to,
  section,
}: Pick<Tube, 'set' | 'at' | 'from' | 'to' | 'section'>): Rectangle {
  const half = section.width / 2;
  return set === 'main'
    ? { x0: from, x1: to, y0: at - half, y1: at + half }
    : { x0: at - half, x1: at + half, y0: from, y1: to };
}

const lattice = 1e6;
const path = (points: readonly Point[]): Path64 =>
  points.map(([x, y]) => ({ x: Math.round(x * lattice), y: Math.round(y * lattice) }));
const rectanglePoints = ({ x0, y0, x1, y1 }: Rectangle): Point[] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];
const union = (paths: Paths64): Paths64 => Clipper.booleanOp(ClipType.Union, paths, null, FillRule.Positive);
const areaOf = (paths: Paths64): number => Clipper.areaPaths(paths) / lattice ** 2;

/** A panel as paths whose windings add to one where it is solid: contour forwards, holes backwards. */
function coverOf(panel: Panel): Paths64 {
  const holes = panel.cutouts.filter(
    (c) => c.purpose !== 'bolt' && isInside(c, panel.outline, panel.design.cornerNotch?.si ?? 0),
  );
  return [path(panel.contour), ...holes.map(({ x, y, diameter }) => path(circle(x, y, diameter / 2).reverse()))];
}

/** Regular polygon of the circle's area. */
function circle(x: number, y: number, r: number): Point[] {
  const { PI: π, sin, cos, sqrt } = Math;
  const n = 96;
  const R = r * sqrt((2 * π) / (n * sin((2 * π) / n)));
  return Array.from({ length: n }, (_, k) => [x + R * cos((2 * π * k) / n), y + R * sin((2 * π * k) / n)]);
}
