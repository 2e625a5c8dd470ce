import type { PanelMesh } from '../../solve/structure/structure.ts';
import type { ReadyPlate } from '../solve-plate.ts';

/** A place of a panel where the stress of a thin plate has no value of its own: it grows without end as the mesh gets finer,
 *  at a bolt (a point) and at the inner corner of a notch. */
export interface HotZone {
  readonly kind: 'bolt' | 'notch corner';
  /** The bolt's id, or the panel's and the corner's number, anticlockwise from the low one. */
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** Within this of the point, m, no stress is read. */
  readonly radius: number;
}

/** Hot places of a panel: one washer's diameter and 2t round each bolt that is there (a lost one heats nothing); 2t round an
 *  inner corner (common practice, no source). */
export function hotZones(
  { model, structure }: Pick<ReadyPlate, 'model' | 'structure'>,
  { id, ties }: PanelMesh,
): HotZone[] {
  const panel = model.panels.get(id)!;
  const { design, outline: { x0, x1, y0, y1 }, thickness: t } = panel; // prettier-ignore
  const { fixing } = design;
  const washer = fixing.kind === 'bolted' ? model.catalogue.bolt(fixing.bolt).washerOuter : 0;
  const there = new Set(structure.ties.slice(...ties).map((tie) => tie.id));
  const bolts = panel.bolts
    .filter(({ id: bolt }) => there.has(bolt))
    .map(({ id: bolt, x, y }): HotZone => ({ kind: 'bolt', id: bolt, x, y, radius: washer + 2 * t }));
  const notch = design.cornerNotch?.si ?? 0;
  if (notch <= 0) return bolts;
  const corners = [[x0 + notch, y0 + notch], [x1 - notch, y0 + notch], [x1 - notch, y1 - notch], [x0 + notch, y1 - notch]] as const; // prettier-ignore
  return [
    ...bolts,
    ...corners.map(([x, y], i): HotZone => ({
      kind: 'notch corner',
      id: `${id} corner ${i + 1}`,
      x,
      y,
      radius: 2 * t,
    })),
  ];
}

/** True where a place lies within one of the zones. */
export const isHot = (zones: readonly HotZone[], x: number, y: number): boolean =>
  zones.some((zone) => Math.hypot(zone.x - x, zone.y - y) <= zone.radius);
