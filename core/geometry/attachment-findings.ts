import type { Finding } from '../finding.ts';
import { attachmentPoints } from './attachment-points.ts';
import type { Inspected } from './findings-of.ts';

/** Eyes that stand on no tube, or where a panel lies. The eye's plate runs along its tube. */
export function attachmentFindings({ document, geometry, text }: Inspected): Finding[] {
  return attachmentPoints(document, geometry).flatMap(({ id: place, kind, eye, x, y, foot, tube }): Finding[] => {
    const name = kind === 'suspension' ? `Attachment ${place}` : `Pad eye ${place}`;
    if (!tube)
      return [
        {
          id: 'attachment-off-tube',
          place,
          text: `${name} at x ${text(x)}, y ${text(y)} stands on no tube.`,
          mend: 'Move it onto a tube, best onto a crossing.',
        },
      ];
    const leg = Math.SQRT2 * eye.weldThroat.si;
    const [along, across] = [eye.width.si / 2 + leg, eye.thickness.si / 2 + leg];
    const [hx, hy] = tube.set === 'main' ? [along, across] : [across, along];
    const over = geometry.panels.find(
      ({ outline: { x0, y0, x1, y1 }, bottom, top }) =>
        bottom <= foot + 1e-6 && top > foot && Math.max(x0 - x, x - x1) < hx && Math.max(y0 - y, y - y1) < hy,
    );
    if (!over) return [];
    return [
      {
        id: 'attachment-under-panel',
        place,
        text: `${name} stands on tube ${tube.id} where panel ${over.id} lies: its foot with welds is ${text(2 * along)} × ${text(2 * across)}.`,
        mend: 'Move the eye, take a smaller overlap, or leave that bay open.',
      },
    ];
  });
}
