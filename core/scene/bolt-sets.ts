import type { Bolt, Panel } from '../geometry/geometry.ts';
import type { Model } from '../model.ts';
import type { BoltSeat } from './bolt-solid.ts';
import { liftOf } from './panel-parts.ts';

/** Bolts that look the same, with the panel of each. */
export interface BoltSet {
  readonly title: string;
  readonly seat: BoltSeat;
  readonly bolts: readonly { readonly bolt: Bolt; readonly panel: Panel }[];
}

/** The bolts of all panels, by what they go through. */
export function boltSets({ geometry, tubes, catalogue }: Model): BoltSet[] {
  const sets = new Map<string, BoltSet & { readonly bolts: { bolt: Bolt; panel: Panel }[] }>();
  for (const panel of geometry.panels) {
    const { fixing } = panel.design;
    if (fixing.kind !== 'bolted') continue;
    const row = catalogue.bolt(fixing.bolt);
    for (const bolt of panel.bolts) {
      const { section } = tubes.get(bolt.tube)!;
      const seat: BoltSeat = {
        row,
        fixing,
        thickness: panel.thickness,
        hole: bolt.hole,
        tubeHeight: section.height,
        wall: section.nominalWall,
      };
      const { thickness, hole, tubeHeight, wall } = seat;
      const sleeve = fixing.sleeve?.outer.si;
      const key = [row.id, fixing.into, fixing.countersunk, thickness, hole, tubeHeight, wall, sleeve].join(' ');
      const set = sets.get(key);
      if (set) set.bolts.push({ bolt, panel });
      else sets.set(key, { title: `${row.id}, ${fixing.into}`, seat, bolts: [{ bolt, panel }] });
    }
  }
  return [...sets.values()];
}

/** Where a bolt's solid stands: x, y, z in m, and which way its z points. */
export const placementOf = ({ bolt, panel }: BoltSet['bolts'][number]): readonly [number, number, number, 1 | -1] => [
  bolt.x,
  bolt.y,
  liftOf(panel) > 0 ? panel.bottom : panel.top,
  liftOf(panel),
];
