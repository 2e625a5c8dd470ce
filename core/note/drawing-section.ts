import type { DrawnDimension, DrawnShape } from '../geometry/drawing.ts';
import type { Point } from '../geometry/geometry.ts';
import { lengthText } from '../geometry/length-text.ts';
import { planDrawing } from '../geometry/plan-drawing.ts';
import { sectionThroughFixing } from '../geometry/section-through-fixing.ts';
import type { Model } from '../model.ts';
import type { Figure, Fill, Pen, Section, Shape } from './note.ts';

/** Plan with panels, bolts and dimensions, and a section through one fixing of each design, drawn from the geometry. */
export function drawingSection(model: Model): Section {
  const first = [...new Map(model.geometry.panels.map((panel) => [panel.designName, panel])).values()];
  return {
    title: 'Drawings',
    startsPage: true,
    blocks: [planFigure(model), ...first.map((panel) => fixingFigure(model, panel.id, panel.designName))],
  };
}

function planFigure({ geometry, document }: Model): Figure {
  const { shapes, lines, circles, labels, dimensions, extents } = planDrawing(geometry, lengthText(document.units));
  const points = [...document.grid.suspension.attachments, ...(document.grid.padEyes?.points ?? [])];
  const size = Math.max(extents.x1 - extents.x0, extents.y1 - extents.y0);
  return {
    kind: 'figure',
    caption: `Plan seen from above. Main tubes are lettered, cross tubes numbered, bays named after the tubes at their lower left corner. Hidden edges are dashed. ${points.map(({ id }) => id).join(', ')}: attachments and pad eyes`,
    alt: `Plan of the plate: ${geometry.mainTubes.length} main tubes, ${geometry.crossTubes.length} cross tubes, ${geometry.bays.length} bays of which ${geometry.panels.flatMap((panel) => panel.bays).length} are closed by panels`,
    box: padded(extents, 0.04 * size),
    widthShare: 1,
    shapes: [
      ...shapes.map(({ role, rings }): Shape => ({ kind: 'path', rings, closed: true, pen: 'none', fill: role })),
      ...lines.map(({ role, hidden, from, to }): Shape => ({
        kind: 'path',
        rings: [[from, to]],
        closed: false,
        pen: hidden ? 'hidden' : role === 'tube' ? 'outline' : 'thin',
      })),
      ...circles.map(({ at, diameter }): Shape => ({
        kind: 'circle',
        at,
        radius: diameter / 2,
        pen: 'thin',
        fill: 'paper',
      })),
      ...points.flatMap(({ id, x, y }): Shape[] => {
        const at = [1000 * x.si, 1000 * y.si] as const;
        // The name stands inside the plate, clear of the tube it is on.
        const inward = at[1] > middle(extents)[1] ? -0.034 * size : 0.022 * size;
        return [
          { kind: 'circle', at, radius: 0.006 * size, pen: 'accent', fill: 'accent' },
          { kind: 'label', at: [at[0] + 0.012 * size, at[1] + inward], text: id, size: 7, anchor: 'start' },
        ];
      }),
      ...labels.map(({ role, at, text }): Shape => {
        if (role === 'bay')
          return { kind: 'label', at: [at[0], at[1] - 0.006 * size], text, size: 8, anchor: 'middle' };
        const isMain = at[0] <= extents.x0 + 1;
        return {
          kind: 'label',
          at: isMain ? [at[0] - 0.006 * size, at[1] - 0.006 * size] : [at[0], extents.y0 - 0.02 * size],
          text,
          size: 8,
          anchor: isMain ? 'end' : 'middle',
        };
      }),
      ...dimensionLines(dimensions, middle(extents), 26),
    ],
  };
}

const fills: Readonly<Record<string, Fill>> = {
  tube: 'section',
  panel: 'panel',
  weld: 'accent',
  sleeve: 'tube',
  pad: 'tube',
  bolt: 'tube',
  washer: 'paper',
  nut: 'tube',
};
const pens: Readonly<Record<string, Pen>> = { tube: 'outline', panel: 'outline' };

function fixingFigure({ geometry, document, catalogue }: Model, panelId: string, designName: string): Figure {
  const { tube, shapes, dimensions } = sectionThroughFixing(geometry, panelId, catalogue, lengthText(document.units));
  const extents = around(shapes);
  return {
    kind: 'figure',
    caption: `Design ${designName}: section through a fixing of panel ${panelId} on tube ${tube}`,
    alt: `Section through the fixing of panel ${panelId}: ${[...new Set(shapes.map(({ role }) => role))].join(', ')}`,
    box: padded(extents, 0.02 * (extents.x1 - extents.x0)),
    widthShare: 0.55,
    shapes: [...fixingShapes(shapes), ...dimensionLines(dimensions, middle(extents), 12, extents)],
  };
}

/** The parts of a fixing's section in ink: what is cut is hatched, the weld stands out. */
export const fixingShapes = (shapes: readonly DrawnShape<string>[]): Shape[] =>
  shapes.map(({ role, rings }) => ({
    kind: 'path',
    rings,
    closed: true,
    pen: pens[role] ?? 'thin',
    fill: fills[role] ?? 'none',
  }));

/**
 * Dimension lines that measure the same side of the drawing are set one outside the other, the `first` so many points off. With `clearOf`, they start
 * outside those extents, with thin lines from the features they measure.
 */
function dimensionLines(
  dimensions: readonly DrawnDimension[],
  centre: readonly [number, number],
  first: number,
  clearOf?: Extents,
): Shape[] {
  const taken = new Map<string, number>();
  return dimensions.flatMap(({ from, to, text }): Shape[] => {
    const alongX = Math.abs(to[0] - from[0]) > Math.abs(to[1] - from[1]);
    const side = alongX ? `y${from[1] > centre[1] ? '+' : '-'}` : `x${from[0] > centre[0] ? '+' : '-'}`;
    const nth = taken.get(side) ?? 0;
    taken.set(side, nth + 1);
    const outside = (point: Point): Point => {
      if (!clearOf) return point;
      if (alongX) return [point[0], side === 'y+' ? clearOf.y1 : clearOf.y0];
      return [side === 'x+' ? clearOf.x1 : clearOf.x0, point[1]];
    };
    const leads = [from, to]
      .filter((point) => outside(point) !== point)
      .map((point): Shape => ({ kind: 'path', rings: [[point, outside(point)]], closed: false, pen: 'thin' }));
    return [...leads, { kind: 'dimension', from: outside(from), to: outside(to), offset: first + 15 * nth, text }];
  });
}

interface Extents {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

const middle = ({ x0, y0, x1, y1 }: Extents) => [(x0 + x1) / 2, (y0 + y1) / 2] as const;
export const padded = ({ x0, y0, x1, y1 }: Extents, by: number) => ({
  x: x0 - by,
  y: y0 - by,
  width: x1 - x0 + 2 * by,
  height: y1 - y0 + 2 * by,
});

export function around(shapes: readonly DrawnShape<string>[]): Extents {
  const points = shapes.flatMap(({ rings }) => rings.flat());
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
}
