import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Eye } from '../document/schema.ts';
import type { AttachmentPoint } from '../geometry/attachment-points.ts';
import { barInertia, type Body } from './body.ts';

/**
 * Eyes: a plate that narrows from its foot (width) to a half circle of the edge distance about the hole, less the hole;
 * with the fillet around its foot, its cheek plates with theirs, and its bolted foot. Centre of mass taken at half the hole's height.
 */
export function attachmentBodies(points: readonly AttachmentPoint[], catalogue: Catalogue): Body[] {
  return points.map(({ kind, eye, x, y, foot, tube }) => {
    const [w, h, e, t] = [eye.width.si, eye.height.si, eye.edge.si, eye.thickness.si];
    const area = ((w + 2 * e) / 2) * h + (Math.PI / 2) * e ** 2 - (Math.PI / 4) * eye.holeDiameter.si ** 2;
    const volume =
      area * t +
      eye.weldThroat.si ** 2 * 2 * (w + t) +
      (eye.cheek ? cheeks(eye.cheek, eye.holeDiameter.si) : 0) +
      (eye.footPlate ? footPlate(eye.footPlate) : 0);
    const mass = catalogue.material(eye.material).density * volume;
    return {
      name: kind === 'suspension' ? 'Eyes of the suspension' : 'Pad eyes',
      kind: 'attachments' as const,
      mass,
      volume,
      centre: [x, y, foot + h / 2] as const,
      inertia: barInertia(tube?.set === 'cross' ? 'y' : 'x', mass, w, (h + e) ** 2 / 12),
    };
  });
}

/** Its plate; its bolts stand in the holes that are not taken off it. */
const footPlate = ({ thickness, gauge, edge, pitch, end, pairs }: NonNullable<Eye['footPlate']>): number =>
  thickness.si * (gauge.si + 2 * edge.si) * (2 * end.si + (pairs - 1) * pitch.si);

const cheeks = ({ thickness, diameter, weldThroat }: NonNullable<Eye['cheek']>, hole: number): number =>
  2 * ((Math.PI / 4) * (diameter.si ** 2 - hole ** 2) * thickness.si + weldThroat.si ** 2 * Math.PI * diameter.si);
