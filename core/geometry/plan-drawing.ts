import type { DrawnCircle, DrawnDimension, DrawnLabel, DrawnLine, DrawnShape } from './drawing.ts';
import { equalSteps } from './equal-steps.ts';
import { isFilled } from './geometry.ts';
import type { Geometry, Point, Rectangle, Tube } from './geometry.ts';
import { drawnSlots } from './drawn-slots.ts';
import type { LengthText } from './length-text.ts';
import { tubeRectangle } from './plan-areas.ts';

export interface PlanDrawing {
  /** For filling, in the order of painting, lowest first. */
  readonly shapes: readonly DrawnShape<'tube' | 'panel'>[];
  /** Edges of the same, cut where something lies over them. */
  readonly lines: readonly DrawnLine<'tube' | 'panel'>[];
  readonly circles: readonly DrawnCircle<'bolt' | 'hole'>[];
  readonly slots: readonly DrawnShape<'bolt'>[];
  readonly labels: readonly DrawnLabel[];
  readonly dimensions: readonly DrawnDimension[];
  /** Everything lies inside. */
  readonly extents: Rectangle;
}

/** The plate seen from above; mm, x along the main tubes. Bolts are drawn wherever they are; other holes are not drawn under tubes. */
export function planDrawing(
  { mainTubes, crossTubes, panels, bays, outline, extents }: Geometry,
  text: LengthText,
): PlanDrawing {
  const pieces = [...mainTubes, ...crossTubes].flatMap((tube) =>
    tube.pieces.map(([from, to]) => {
      const rectangle = tubeRectangle({ ...tube, from, to });
      return {
        role: 'tube' as const,
        id: tube.id,
        bottom: tube.bottom,
        top: tube.top,
        rectangle,
        contour: corners(rectangle),
      };
    }),
  );
  const plates = panels.map(({ id, bottom, top, outline: rectangle, contour }) => ({
    role: 'panel' as const,
    id,
    bottom,
    top,
    rectangle,
    contour,
  }));
  const things = [...pieces, ...plates].sort((a, b) => a.top - b.top);
  const lines = things.flatMap((thing) => {
    const { role, id, contour, top, rectangle: r } = thing;
    const over = things.filter(
      ({ bottom, rectangle: c }) => bottom > top - 1e-6 && c.x0 < r.x1 && c.x1 > r.x0 && c.y0 < r.y1 && c.y1 > r.y0,
    );
    return contour.flatMap((from, i) =>
      parts(
        from,
        contour[(i + 1) % contour.length]!,
        over.map((o) => o.rectangle),
      ).map((part) => ({ role, id, ...part })),
    );
  });
  const covered = (x: number, y: number, top: number): boolean =>
    pieces.some(({ top: higher, rectangle: c }) => higher > top + 1e-6 && x > c.x0 && x < c.x1 && y > c.y0 && y < c.y1);
  const circles = panels.flatMap((panel) =>
    panel.cutouts
      .filter(({ x, y, purpose, slot }) => !slot && (isFilled({ purpose }) || !covered(x, y, panel.top)))
      .map(({ x, y, diameter, purpose }) => ({
        role: purpose === 'bolt' ? ('bolt' as const) : ('hole' as const),
        at: mm([x, y]),
        diameter: 1000 * diameter,
      })),
  );
  const labels: DrawnLabel[] = [
    ...mainTubes.map((tube): DrawnLabel => ({ role: 'tube', at: mm([tube.from, tube.at]), text: tube.id })),
    ...crossTubes.map((tube): DrawnLabel => ({ role: 'tube', at: mm([tube.at, tube.from]), text: tube.id })),
    ...bays.map(({ id, opening: o }): DrawnLabel => ({
      role: 'bay',
      at: mm([(o.x0 + o.x1) / 2, (o.y0 + o.y1) / 2]),
      text: id,
    })),
  ];
  const dimensions = [
    { from: mm([outline.x0, outline.y0]), to: mm([outline.x1, outline.y0]), text: text(outline.x1 - outline.x0) },
    { from: mm([outline.x0, outline.y0]), to: mm([outline.x0, outline.y1]), text: text(outline.y1 - outline.y0) },
    ...chain(mainTubes, (at) => [outline.x1, at], text),
    ...chain(crossTubes, (at) => [at, outline.y1], text),
  ];
  const [[x0, y0], [x1, y1]] = [mm([extents.x0, extents.y0]), mm([extents.x1, extents.y1])];
  return {
    shapes: things.map(({ role, id, contour }) => ({ role, id, rings: [contour.map(mm)] })),
    lines: lines.map((l) => ({ ...l, from: mm(l.from), to: mm(l.to) })),
    circles,
    slots: panels.flatMap(({ cutouts }) => drawnSlots(cutouts)),
    labels,
    dimensions,
    extents: { x0, y0, x1, y1 },
  };
}

const mm = ([x, y]: Point): Point => [1000 * x, 1000 * y];
const corners = ({ x0, y0, x1, y1 }: Rectangle): Point[] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];

/** Distances of neighbouring centre lines, equal ones together. */
const chain = (tubes: readonly Tube[], at: (position: number) => Point, text: LengthText): DrawnDimension[] =>
  equalSteps(tubes.map((tube) => tube.at)).map(({ from, to, count }) => {
    const step = text((to - from) / count);
    return { from: mm(at(from)), to: mm(at(to)), text: count > 1 ? `${count} × ${step}` : step, row: 0 };
  });

/** An edge along x or y cut into what is seen and what lies under rectangles; an edge along a rectangle's border is seen. */
function parts(from: Point, to: Point, over: readonly Rectangle[]): { from: Point; to: Point; hidden: boolean }[] {
  const alongX = from[1] === to[1];
  const [low, high, across] = alongX
    ? [Math.min(from[0], to[0]), Math.max(from[0], to[0]), from[1]]
    : [Math.min(from[1], to[1]), Math.max(from[1], to[1]), from[0]];
  const covers = over
    .map((c) => (alongX ? { a: c.x0, b: c.x1, low: c.y0, high: c.y1 } : { a: c.y0, b: c.y1, low: c.x0, high: c.x1 }))
    .filter((c) => across > c.low + 1e-9 && across < c.high - 1e-9)
    .sort((p, q) => p.a - q.a);
  const point = (s: number): Point => (alongX ? [s, across] : [across, s]);
  const result: { from: Point; to: Point; hidden: boolean }[] = [];
  let at = low;
  for (const { a, b } of covers) {
    const [start, end] = [Math.max(a, at), Math.min(b, high)];
    if (end <= at) continue;
    if (start > at) result.push({ from: point(at), to: point(start), hidden: false });
    const last = result.at(-1);
    if (last?.hidden && start === at) result[result.length - 1] = { ...last, to: point(end) };
    else result.push({ from: point(start), to: point(end), hidden: true });
    at = end;
  }
  if (at < high) result.push({ from: point(at), to: point(high), hidden: false });
  return result;
}
