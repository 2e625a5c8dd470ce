import { lengthText } from '../geometry/length-text.ts';
import type { Panel, Point } from '../geometry/geometry.ts';
import { sectionThroughFixing } from '../geometry/section-through-fixing.ts';
import type { Model } from '../model.ts';
import { around, fixingShapes, padded } from './drawing-section.ts';
import type { Figure, Shape } from './note.ts';

/** Which way a panel's load goes into its tube when the water pushes up, or down: plate on tube one way, bolts or weld the other. */
export function loadPathFigure(
  { geometry, document, catalogue }: Model,
  panel: Panel,
  direction: 'up' | 'down',
): Figure {
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
    ? `bears on tube ${tube}`
    : welded
      ? `hangs on its weld to tube ${tube}`
      : `hangs on its bolts in tube ${tube}`;
  const size = {
    x0: extents.x0,
    x1: extents.x1,
    y0: Math.min(extents.y0, near - up * reach, far + up * reach),
    y1: Math.max(extents.y1, near - up * reach, far + up * reach),
  };
  return {
    kind: 'figure',
    caption: `Design ${panel.designName}, force of the water ${direction} (${up > 0 ? 'positive' : 'negative'}): the panel is ${pressed ? 'pressed on and' : 'pulled off and'} ${held}`,
    alt: `Load path with the water pushing ${direction}: the panel ${held}`,
    box: padded(size, 0.02 * (size.x1 - size.x0)),
    widthShare: 0.34,
    shapes: [...fixingShapes(shapes), ...water, answer],
  };
}
