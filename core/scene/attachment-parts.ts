import type { AttachmentPoint } from '../geometry/attachment-points.ts';
import { addBead, legOf } from './bead.ts';
import type { PartDraft } from './part-draft.ts';
import { prism } from './prism.ts';
import { arc, asHole, chordsInQuarter, circle, polygon } from './ring.ts';
import type { Vector } from './scene.ts';

/** Eyes: plates that narrow from their foot to a half circle about the hole, with the fillets along both faces of the foot. */
export const attachmentParts = (points: readonly AttachmentPoint[]): PartDraft[] =>
  points.map(({ id, kind, eye, x, y, foot, tube }) => ({
    kind: 'attachment',
    place: id,
    title: `${kind === 'suspension' ? 'Attachment' : 'Pad eye'} ${id}`,
    bays: [],
    lift: 0,
    build: (into) => {
      const [w, h, e, t] = [eye.width.si, eye.height.si, eye.edge.si, eye.thickness.si];
      const along: Vector = tube?.set === 'cross' ? [0, 1, 0] : [1, 0, 0];
      const across: Vector = tube?.set === 'cross' ? [1, 0, 0] : [0, 1, 0];
      const origin: Vector = [x, y, foot];
      const outer = [
        ...polygon([
          [-w / 2, 0],
          [w / 2, 0],
        ]),
        ...arc(0, h, e, 0, Math.PI, 2 * chordsInQuarter(e)),
      ];
      prism(
        into,
        { outer, holes: [asHole(circle(0, h, eye.holeDiameter.si / 2))] },
        { origin, u: along, v: [0, 0, 1] },
        [-t / 2, t / 2],
      );
      if (eye.cheek) {
        const { thickness, diameter } = eye.cheek;
        const disc = { outer: circle(0, h, diameter.si / 2), holes: [asHole(circle(0, h, eye.holeDiameter.si / 2))] };
        for (const [low, high] of [
          [-t / 2 - thickness.si, -t / 2],
          [t / 2, t / 2 + thickness.si],
        ] as const)
          prism(into, disc, { origin, u: along, v: [0, 0, 1] }, [low, high]);
      }
      if (eye.footPlate) {
        const { thickness, gauge, edge, pitch, end, pairs } = eye.footPlate;
        const [l, b] = [end.si + ((pairs - 1) * pitch.si) / 2, gauge.si / 2 + edge.si];
        const bolts = [-1, 1].flatMap((side) => Array.from({ length: pairs }, (_, i) => asHole(circle(end.si - l + i * pitch.si, (side * gauge.si) / 2, edge.si / 4)))); // prettier-ignore
        const outer = polygon([[-l, -b], [l, -b], [l, b], [-l, b]]); // prettier-ignore
        prism(into, { outer, holes: bolts }, { origin, u: along, v: across }, [0, thickness.si]);
      }
      for (const side of [1, -1]) {
        const out: Vector = [side * across[0], side * across[1], 0];
        const root: Vector = [x + (out[0] * t) / 2, y + (out[1] * t) / 2, foot];
        addBead(into, { root, legs: [out, [0, 0, 1]], leg: legOf(eye.weldThroat.si), length: w });
      }
    },
  }));
