import type { Inspection } from '../checks/inspection-plan.ts';
import { drawnLength } from '../geometry/drawn-length.ts';
import type { Point } from '../geometry/geometry.ts';
import { placePoint } from '../geometry/place-point.ts';
import { planDrawing } from '../geometry/plan-drawing.ts';
import type { Model } from '../model.ts';
import type { Figure, Shape } from './note.ts';

/** The plan with its anodes, and at each place that is to be looked at the numbers of the rows that name it. Null where nothing has a place. */
export function inspectionFigure(model: Model, plan: readonly Inspection[]): Figure | null {
  const { geometry, document } = model;
  const { shapes, extents } = planDrawing(geometry, drawnLength(document.units));
  const marks = new Map<string, { at: Point; rows: number[] }>();
  const mark = (at: Point, row: number) => {
    const key = at.map((v) => Math.round(1e3 * v)).join();
    const one = marks.get(key) ?? { at, rows: [] };
    if (!one.rows.includes(row)) one.rows.push(row);
    marks.set(key, one);
  };
  plan.forEach(({ places }, i) => {
    for (const place of places) {
      const at = placePoint(document, geometry, place);
      if (at) mark(at, i + 1);
    }
  });
  const anodes = document.durability?.anodes?.places ?? [];
  const row = plan.findIndex(({ id }) => id === 'anodes') + 1;
  for (const { x, y } of anodes) if (row > 0) mark([x.si, y.si], row);
  if (marks.size === 0) return null;
  const size = Math.max(extents.x1 - extents.x0, extents.y1 - extents.y0);
  const rim = 0.05 * size;
  const half = 0.012 * size;
  const square = ([x, y]: Point): Shape => ({
    kind: 'path',
    rings: [[[x - half, y - half], [x + half, y - half], [x + half, y + half], [x - half, y + half]]],
    closed: true,
    pen: 'outline',
    fill: 'section',
  }); // prettier-ignore
  return {
    kind: 'figure',
    caption: `Where to look: numbers are the rows of the table. ${anodes.length > 0 ? 'Hatched squares: anodes, not to scale. ' : ''}What the table looks at everywhere has no mark`,
    alt: `Plan of the plate with ${marks.size} places to look at${anodes.length > 0 ? ` and ${anodes.length} anodes` : ''}`,
    box: { x: extents.x0 - rim, y: extents.y0 - rim, width: extents.x1 - extents.x0 + 2 * rim, height: extents.y1 - extents.y0 + 2 * rim }, // prettier-ignore
    widthShare: 0.8,
    shapes: [
      ...shapes.map(({ role, rings }): Shape => ({ kind: 'path', rings, closed: true, pen: 'thin', fill: role })),
      ...anodes.map(({ x, y }) => square([1e3 * x.si, 1e3 * y.si])),
      ...[...marks.values()].map(({ at: [x, y], rows }): Shape => ({
        kind: 'label',
        at: [1e3 * x + 1.4 * half, 1e3 * y + 1.4 * half],
        text: rows.sort((a, b) => a - b).join(', '),
        size: 7.5,
        anchor: 'start',
      })),
    ],
  };
}
