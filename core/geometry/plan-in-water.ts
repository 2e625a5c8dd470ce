import { isFilled, type Geometry, type Panel, type Tube } from './geometry.ts';
import { tubeRectangle } from './plan-areas.ts';
import type { Hole, Plan, Rectangle } from '../water/lattice/plan.ts';

/** What a plate looks like to the water: tubes as they are cut, panels less their notches, holes that no bolt or plug fills and no tube covers. */
export function planInWater(geometry: Geometry): Plan {
  const tubes = [...geometry.mainTubes, ...geometry.crossTubes];
  const steel = tubes.flatMap((tube) => tube.pieces.map(([from, to]) => tubeRectangle({ ...tube, from, to })));
  const covered = ({ x, y }: Hole): boolean => steel.some((r) => x > r.x0 && x < r.x1 && y > r.y0 && y < r.y1);
  const holes = geometry.panels.flatMap(({ cutouts }) =>
    cutouts.filter((hole) => !isFilled(hole)).map(({ x, y, diameter }) => ({ x, y, diameter })),
  );
  return {
    rectangles: [...steel, ...geometry.panels.flatMap(panelRectangles)],
    holes: holes.filter((hole) => !covered(hole)),
    thickness: edgeHeight(tubes),
  };
}

/** A panel with its corners cut out, as two rectangles that cross. */
function panelRectangles({ outline: o, design }: Panel): Rectangle[] {
  const s = design.cornerNotch?.si ?? 0;
  return s > 0
    ? [
        { ...o, x0: o.x0 + s, x1: o.x1 - s },
        { ...o, y0: o.y0 + s, y1: o.y1 - s },
      ]
    : [o];
}

/** Mean height of the tubes, by length: how deep the gaps between them are. */
function edgeHeight(tubes: readonly Tube[]): number {
  let [sum, length] = [0, 0];
  for (const { section, from, to } of tubes) {
    sum += section.height * (to - from);
    length += to - from;
  }
  return sum / length;
}
