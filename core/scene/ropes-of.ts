import type { AttachmentPoint } from '../geometry/attachment-points.ts';
import type { PlateDocument } from '../document/schema.ts';
import type { SceneRope, Vector } from './scene.ts';

/**
 * What the plate hangs on: a line or strut from each attachment up to the surface, or the legs of a bridle to its apex
 * and one line from there; and the slings of the lift in air to their apex. A document gives no section for a strut: it
 * is drawn as wide as the head of its eye.
 */
export function ropesOf(points: readonly AttachmentPoint[], { grid, water }: PlateDocument): SceneRope[] {
  const { suspension, padEyes } = grid;
  const ends = (kind: AttachmentPoint['kind']): Vector[] =>
    points.filter((p) => p.kind === kind).map(({ x, y, z }): Vector => [x, y, z]);
  const overhead = ([x, y]: Vector): Vector => [x, y, water.depth.si];
  const hung = ends('suspension');
  const lifted = ends('pad eye');
  const width = suspension.kind === 'strut' ? 2 * suspension.eye.edge.si : 0;
  const to = (apex: Vector, role: SceneRope['role'], from: readonly Vector[]): SceneRope[] =>
    from.map((end) => ({ role, from: end, to: apex, width: 0 }));
  const apex = suspension.kind === 'bridle' && suspension.apex ? apexOver(hung, suspension.apex.si) : null;
  return [
    ...(apex
      ? to(apex, 'suspension', hung).concat({ role: 'suspension', from: apex, to: overhead(apex), width: 0 })
      : hung.map((end): SceneRope => ({ role: 'suspension', from: end, to: overhead(end), width }))),
    ...(padEyes ? to(apexOver(lifted, padEyes.apex.si), 'lifting sling', lifted) : []),
  ];
}

/** Above the mean of the points. */
function apexOver(points: readonly Vector[], height: number): Vector {
  const mean = (axis: 0 | 1 | 2): number => points.reduce((sum, p) => sum + p[axis], 0) / points.length;
  return [mean(0), mean(1), mean(2) + height];
}
