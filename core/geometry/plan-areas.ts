import { Clipper, ClipType, FillRule, type Path64, type Paths64 } from 'clipper2-ts';
import { isInside } from './panel-of.ts';
import { isFilled } from './geometry.ts';
import type { Bay, Cutout, Panel, PlanAreas, Point, Rectangle, Tube } from './geometry.ts';

/**
 * Plan areas by polygon union on a lattice of 1 µm, m². A hole that lies clear in an opening counts exactly; one that a
 * tube or another panel reaches is a 96-gon of the circle's area, off by less than 0.1 % of it.
 * Holes that lie partly outside their panel are left out; `findingsOf` names them.
 */
export function planAreas(
  tubes: readonly Tube[],
  panels: readonly Panel[],
  bays: readonly Pick<Bay, 'id' | 'opening'>[],
  outline: Rectangle,
): PlanAreas {
  const tubePaths = tubes.flatMap((tube) =>
    tube.pieces.map(([from, to]) => path(rectanglePoints(tubeRectangle({ ...tube, from, to })))),
  );
  const openings = new Map(bays.map(({ id, opening }) => [id, opening]));
  const isClear = (panel: Panel, hole: Cutout): boolean => {
    const r = hole.diameter / 2;
    const square = { x0: hole.x - r, y0: hole.y - r, x1: hole.x + r, y1: hole.y + r };
    return (
      panel.bays.some((bay) => holds(openings.get(bay)!, square)) &&
      !panels.some((other) => other !== panel && meet(other.outline, square))
    );
  };
  let clear = 0;
  const covers = panels.flatMap((panel) => {
    const [alone, crossed] = parted(openHoles(panel), (hole) => isClear(panel, hole));
    clear += alone.reduce((sum, hole) => sum + discOf(hole), 0);
    return cover(panel, crossed);
  });

  const tubeUnion = union(tubePaths);
  const solidUnion = union([...tubeUnion, ...covers]);
  const whole = [path(rectanglePoints(outline))];
  const open = areaOf(Clipper.booleanOp(ClipType.Difference, whole, solidUnion, FillRule.Positive)) + clear;
  const outlineArea = areaOf(whole);
  const [solid, tubesOnly] = [areaOf(solidUnion) - clear, areaOf(tubeUnion)];
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
export function openAreaOf({ opening }: Pick<Bay, 'opening'>, panels: readonly Panel[]): number {
  const over = panels.filter(({ outline }) => meet(outline, opening));
  const [only, ...others] = over;
  if (!only) return (opening.x1 - opening.x0) * (opening.y1 - opening.y0);
  const holes = openHoles(only).filter(({ x, y, diameter: d }) =>
    meet({ x0: x - d / 2, y0: y - d / 2, x1: x + d / 2, y1: y + d / 2 }, opening),
  );
  if (others.length === 0 && coversWhole(only, opening) && holes.every((hole) => isInside(hole, opening, 0)))
    return holes.reduce((sum, hole) => sum + discOf(hole), 0);
  return areaOf(
    Clipper.booleanOp(
      ClipType.Difference,
      [path(rectanglePoints(opening))],
      union(over.flatMap((panel) => cover(panel, openHoles(panel)))),
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

/** Holes that water passes: not filled by a bolt, and wholly inside the panel. */
const openHoles = (panel: Panel): readonly Cutout[] =>
  panel.cutouts.filter((c) => !isFilled(c) && isInside(c, panel.outline, panel.design.cornerNotch?.si ?? 0));

const discOf = ({ diameter }: Cutout): number => (Math.PI / 4) * diameter ** 2;
const meet = (a: Rectangle, b: Rectangle): boolean => a.x0 < b.x1 && a.x1 > b.x0 && a.y0 < b.y1 && a.y1 > b.y0;
const holds = (a: Rectangle, b: Rectangle): boolean => a.x0 <= b.x0 && a.x1 >= b.x1 && a.y0 <= b.y0 && a.y1 >= b.y1;

/** True where a panel without its holes closes a rectangle: no notch reaches into it. */
function coversWhole({ outline: o, design }: Panel, opening: Rectangle): boolean {
  const s = design.cornerNotch?.si ?? 0;
  const [dx, dy] = [Math.min(opening.x0 - o.x0, o.x1 - opening.x1), Math.min(opening.y0 - o.y0, o.y1 - opening.y1)];
  return holds(o, opening) && Math.max(dx, dy) >= s;
}

/** A panel as paths whose windings add to one where it is solid: contour forwards, holes backwards. */
const cover = (panel: Panel, holes: readonly Cutout[]): Paths64 => [
  path(panel.contour),
  ...holes.map(({ x, y, diameter }) => path(circle(x, y, diameter / 2).reverse())),
];

const parted = <T>(items: readonly T[], isFirst: (item: T) => boolean): [T[], T[]] => [
  items.filter(isFirst),
  items.filter((item) => !isFirst(item)),
];

/** Regular polygon of the circle's area. */
function circle(x: number, y: number, r: number): Point[] {
  const { PI: π, sin, cos, sqrt } = Math;
  const n = 96;
  const R = r * sqrt((2 * π) / (n * sin((2 * π) / n)));
  return Array.from({ length: n }, (_, k) => [x + R * cos((2 * π * k) / n), y + R * sin((2 * π * k) / n)]);
}
