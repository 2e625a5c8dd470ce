import { lengthText } from '../geometry/length-text.ts';
import type { Panel, Point } from '../geometry/geometry.ts';
import { sectionThroughFixing } from '../geometry/section-through-fixing.ts';
import type { Model } from '../model.ts';
import { around, fixingShapes, padded } from './drawing-section.ts';
import type { Figure, Shape } from './note.ts';

/** Which way a panel's load goes into its tube when the water pushes up, and beside it when it pushes down: plate on tube one way, bolts or weld the other. */
export function loadPathFigure(model: Model, panel: Panel): Figure {
  const [up, down] = [loadPath(model, panel, 'up'), loadPath(model, panel, 'down')];
  const width = up.extents.x1 - up.extents.x0;
  const right = moved(down.shapes, 1.25 * width);
  const extents = {
    x0: up.extents.x0,
    x1: down.extents.x1 + 1.25 * width,
    y0: Math.min(up.extents.y0, down.extents.y0),
    y1: Math.max(up.extents.y1, down.extents.y1),
  };
  return {
    kind: 'figure',
    caption: `Design ${panel.designName}. Left, force of the water up (positive): ${up.held}. Right, force of the water down (negative): ${down.held}`,
    alt: `Load path. With the water pushing up: ${up.held}. With the water pushing down: ${down.held}`,
    box: padded(extents, 0.01 * (extents.x1 - extents.x0)),
    widthShare: 0.55,
    shapes: [...up.shapes, ...right],
  };
}

function loadPath({ geometry, document, catalogue }: Model, panel: Panel, direction: 'up' | 'down') {
  const { tube, shapes } = sectionThroughFixing(geometry, panel.id, catalogue, lengthText(document.units));
  const pressed = panel.pressedBy === direction;
  const welded = panel.design.fixing.kind === 'welded';
  const extents = around(shapes);
  const of = (role: string) => around(shapes.filter((shape) => shape.role === role));
  const plate = of('panel');
  const wall = of('tube');
  const up = direction === 'up' ? 1 : -1;
  const reach = 0.22 * (extents.y1 - extents.y0);
  const near = up > 0 ? plate.y0 : plate.y1;
  const arrow = (from: Point, to: Point): Shape => ({ kind: 'arrow', from, to, pen: 'accent' });
  // The water pushes on the free part of the plate; the tube answers at the face, the bolt or the weld.
  const water = [0.35, 0.6, 0.85].map((part): Shape => {
    const x = wall.x1 + part * (plate.x1 - wall.x1);
    return arrow([x, near - up * reach], [x, near]);
  });
  const holds = pressed
    ? (plate.x0 + wall.x1) / 2
    : welded
      ? plate.x0
      : (of(shapes.some(({ role }) => role === 'washer') ? 'washer' : 'bolt').x0 + of('washer').x1) / 2;
  const far = up > 0 ? Math.max(plate.y1, extents.y1) : Math.min(plate.y0, extents.y0);
  const answer = arrow([holds, far + up * reach], [holds, far]);
  const held = pressed
    ? `the panel is pressed on and bears on tube ${tube}`
    : welded
      ? `the panel is pulled off and hangs on its weld to tube ${tube}`
      : `the panel is pulled off and hangs on its bolts in tube ${tube}`;
  const reached = {
    x0: extents.x0,
    x1: extents.x1,
    y0: Math.min(extents.y0, near - up * reach, far + up * reach),
    y1: Math.max(extents.y1, near - up * reach, far + up * reach),
  };
  return { extents: reached, held, shapes: [...fixingShapes(shapes), ...water, answer] };
}

/** Paths and arrows moved along x. */
function moved(shapes: readonly Shape[], by: number): Shape[] {
  const along = ([x, y]: Point): Point => [x + by, y];
  return shapes.map((shape) => {
    if (shape.kind === 'path') return { ...shape, rings: shape.rings.map((ring) => ring.map(along)) };
    return shape.kind === 'arrow' ? { ...shape, from: along(shape.from), to: along(shape.to) } : shape;
  });
}
