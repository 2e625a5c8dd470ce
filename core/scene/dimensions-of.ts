import type { Geometry } from '../geometry/geometry.ts';
import type { LengthText } from '../geometry/length-text.ts';
import { planDrawing } from '../geometry/plan-drawing.ts';
import type { SceneDimension, SceneLabel, Vector } from './scene.ts';

/** The dimensions and names of the plan drawing, at the height of the plate's top, m. */
export function dimensionsOf(
  geometry: Geometry,
  text: LengthText,
): { readonly dimensions: SceneDimension[]; readonly labels: SceneLabel[] } {
  const { outline, mainTubes, crossTubes } = geometry;
  const z = Math.max(...[...mainTubes, ...crossTubes].map((tube) => tube.top));
  const drawn = planDrawing(geometry, text);
  const metres = ([x, y]: readonly [number, number]): Vector => [x / 1000, y / 1000, z];
  const middle = [(outline.x0 + outline.x1) / 2, (outline.y0 + outline.y1) / 2] as const;
  return {
    dimensions: drawn.dimensions.map((dimension) => {
      const [from, to] = [metres(dimension.from), metres(dimension.to)];
      const alongX = Math.abs(to[0] - from[0]) > Math.abs(to[1] - from[1]);
      const away: Vector = alongX ? [0, Math.sign(from[1] - middle[1]), 0] : [Math.sign(from[0] - middle[0]), 0, 0];
      return { from, to, away, text: dimension.text };
    }),
    labels: drawn.labels.map(({ role, at, text: name }) => {
      const [x, y] = metres(at);
      if (role === 'bay') return { role, at: [x, y, z], away: [0, 0, 0], text: name };
      // All names of one set stand on a line, past every tube's end.
      return mainTubes.some(({ id }) => id === name)
        ? { role, at: [outline.x0, y, z], away: [-1, 0, 0], text: name }
        : { role, at: [x, outline.y0, z], away: [0, -1, 0], text: name };
    }),
  };
}
