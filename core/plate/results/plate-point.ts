import { pointMotion } from '../../solve/structure/point-force.ts';
import { noOffset, type Structure } from '../../solve/structure/structure.ts';
import type { Vector } from '../../solve/vector.ts';

/** A point of the plate that moves: on a tube's axis or on a panel's mid-plane, at a node of its mesh. x, y: m in plan. */
export interface PlatePoint {
  readonly part: 'main tube' | 'cross tube' | 'panel';
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly node: number;
  readonly offset: Vector;
}

/** Points of a tube, by its index: one for each of its stations. */
export function tubePoints({ tubes, coordinates }: Structure, tube: number): PlatePoint[] {
  const { id, set, nodes, offsets } = tubes[tube]!;
  return Array.from(nodes, (node, k): PlatePoint => {
    const offset = offsets[k] ?? noOffset;
    return {
      part: set === 'main' ? 'main tube' : 'cross tube',
      id,
      x: coordinates[3 * node]! + offset[0],
      y: coordinates[3 * node + 1]! + offset[1],
      node,
      offset,
    };
  });
}

/** Points of a panel, by its index: its nodes. */
export function panelPoints({ panels, coordinates }: Structure, panel: number): PlatePoint[] {
  const { id, nodes } = panels[panel]!;
  return [...nodes.filter((node) => node >= 0)].map((node): PlatePoint => ({
    part: 'panel',
    id,
    x: coordinates[3 * node]!,
    y: coordinates[3 * node + 1]!,
    node,
    offset: noOffset,
  })); // prettier-ignore
}

/** Rise of a point under displacements u, m. */
export const riseOf = ({ node, offset }: PlatePoint, u: Float64Array): number => pointMotion(u, node, offset)[2];

/** The same point on another mesh, or the nearest that this has: on the same part if that is there, else on the nearest
 *  tube. `apart`: how far off it is in plan, m. */
export function pointOn(
  structure: Structure,
  point: PlatePoint,
): { readonly point: PlatePoint; readonly apart: number } {
  const { tubes, panels } = structure;
  const tube = tubes.findIndex(({ id }) => point.part !== 'panel' && id === point.id);
  const panel = panels.findIndex(({ id }) => point.part === 'panel' && id === point.id);
  const among =
    tube >= 0 ? tubePoints(structure, tube) : panel >= 0 ? panelPoints(structure, panel) : tubes.flatMap((_, i) => tubePoints(structure, i)); // prettier-ignore
  const away = (p: PlatePoint): number => Math.hypot(p.x - point.x, p.y - point.y);
  const nearest = among.reduce((best, p) => (away(p) < away(best) ? p : best));
  return { point: nearest, apart: away(nearest) };
}
