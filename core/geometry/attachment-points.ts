import type { Eye, PlateDocument } from '../document/schema.ts';
import type { Geometry, Tube } from './geometry.ts';
import { tubeRectangle } from './plan-areas.ts';

/** An eye on the plate. m. */
export interface AttachmentPoint {
  readonly id: string;
  readonly kind: 'suspension' | 'pad eye';
  readonly eye: Eye;
  readonly x: number;
  readonly y: number;
  /** Face that the eye stands on, and centre of its hole above it. */
  readonly foot: number;
  readonly z: number;
  /** The highest tube under it; null where it stands on none (its foot is then taken at the highest tube of the grid). */
  readonly tube: Tube | null;
}

/** Attachments of the suspension, then pad eyes, each on top of the highest tube beneath it. */
export function attachmentPoints(
  document: PlateDocument,
  { mainTubes, crossTubes }: Pick<Geometry, 'mainTubes' | 'crossTubes'>,
): AttachmentPoint[] {
  const tubes = [...mainTubes, ...crossTubes];
  const { suspension, padEyes } = document.grid;
  const stand =
    (kind: AttachmentPoint['kind'], eye: Eye) =>
    (point: { id: string; x: { si: number }; y: { si: number } }): AttachmentPoint => {
      const [x, y] = [point.x.si, point.y.si];
      const under = tubes.filter((tube) => {
        const { x0, y0, x1, y1 } = tubeRectangle(tube);
        return x >= x0 - touch && x <= x1 + touch && y >= y0 - touch && y <= y1 + touch;
      });
      const tube = under.sort((a, b) => b.top - a.top)[0] ?? null;
      const foot = tube ? tube.top : Math.max(...tubes.map((t) => t.top));
      return { id: point.id, kind, eye, x, y, foot, z: foot + eye.height.si, tube };
    };
  return [
    ...suspension.attachments.map(stand('suspension', suspension.eye)),
    ...(padEyes ? padEyes.points.map(stand('pad eye', padEyes.eye)) : []),
  ];
}

/** A point typed on a tube's edge stands on it in spite of rounding. */
const touch = 1e-9;
