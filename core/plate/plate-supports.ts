import type { SupportSet } from '../loads/support-set.ts';
import { nearestLine } from '../solve/lattice-lines.ts';
import { noOffset, type Structure, type SupportPart } from '../solve/structure/structure.ts';
import type { Vector } from '../solve/vector.ts';

/** The document's supports on the structure's nodes. A leg's force goes through the point at which its line of action
 *  meets the level of the tube's axis, and leans towards the apex. */
export function plateSupports({ tubes, coordinates }: Structure, set: SupportSet): SupportPart[] {
  return set.items.map(({ id, place, lean }) => {
    const { stations, nodes, offsets } = tubes[place.tube]!;
    const k = nearestLine(stations, place.at);
    const node = nodes[k]!;
    const offset: Vector = [
      place.x - coordinates[3 * node]!,
      place.y - coordinates[3 * node + 1]!,
      (offsets[k] ?? noOffset)[2],
    ];
    return { id, node, offset, direction: [lean[0], lean[1], 1] };
  });
}
