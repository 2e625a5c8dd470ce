import type { Geometry } from '../geometry/geometry.ts';
import type { PartDraft } from './part-draft.ts';
import type { Vector } from './scene.ts';

/** Open bays as sheets with two sides, half way up the plate: nothing is there, but it can be pointed at. */
export function bayParts({ bays, panels, mainTubes, crossTubes }: Geometry): PartDraft[] {
  const covered = new Set(panels.flatMap((panel) => panel.bays));
  const tubes = [...mainTubes, ...crossTubes];
  const z = (Math.min(...tubes.map((t) => t.bottom)) + Math.max(...tubes.map((t) => t.top))) / 2;
  return bays
    .filter(({ id }) => !covered.has(id))
    .map(({ id, opening: { x0, y0, x1, y1 } }) => ({
      kind: 'bay',
      place: id,
      title: `Open bay ${id}`,
      bays: [id],
      lift: 0,
      build: (into) => {
        const corners: Vector[] = [
          [x0, y0, z],
          [x1, y0, z],
          [x1, y1, z],
          [x0, y1, z],
        ];
        for (const up of [1, -1]) {
          const first = into.positions.length / 3;
          for (const corner of corners) {
            into.positions.push(...corner);
            into.normals.push(0, 0, up);
          }
          const around = up > 0 ? [0, 1, 2, 0, 2, 3] : [0, 2, 1, 0, 3, 2];
          into.indices.push(...around.map((corner) => first + corner));
        }
        corners.forEach((corner, i) => into.edges.push(...corner, ...corners[(i + 1) % 4]!));
      },
    }));
}
