import { shellStress, type ShellStress } from '../../solve/elements/shell-stress.ts';
import type { PanelMesh, Structure } from '../../solve/structure/structure.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { cellForces, cellPlaces, meanAtNodes, nodeIndex } from './cell-forces.ts';
import { hotZones, isHot, type HotZone } from './hot-zones.ts';

/** Stress at a place of a panel, with the side it is on. */
export interface StressAt {
  readonly stress: ShellStress;
  readonly side: 'top' | 'bottom';
  readonly node: number;
  readonly x: number;
  readonly y: number;
}

/** A hot place with the stress of the forces averaged over the cells of its zone: a mean, no peak. */
export interface HotSpot extends HotZone {
  readonly stress: ShellStress;
  readonly side: 'top' | 'bottom';
  /** Cells that the mean is taken over. */
  readonly cells: number;
}

/** Forces and stresses of one panel. Signs and units as in `cellForces`; stress in Pa, tension positive. */
export interface PanelStress {
  readonly id: string;
  readonly thickness: number;
  /** The structure's nodes that are this panel's; for each: forces per width, mean of the cells about it (6), von Mises top
   *  and bottom, 1 where it lies in a hot zone. */
  readonly nodes: Int32Array;
  readonly forces: Float64Array;
  readonly top: Float64Array;
  readonly bottom: Float64Array;
  readonly hot: Uint8Array;
  /** Forces per width in the middle of each cell (6), in the order of the panel's shells. */
  readonly cells: Float64Array;
  /** Largest von Mises stress outside the hot zones; null where all of the panel is one. */
  readonly largest: StressAt | null;
  readonly hotSpots: readonly HotSpot[];
}

/** Stresses of every panel, in the structure's order. `stretched`: forces in the cells of panels that deflect far, as
 *  `cellForces` gives them, in the place of those that displacements alone would give. */
export function panelStress(
  { structure, model }: ReadyPlate,
  { answer: { u } }: SolvedLoading,
  stretched?: ReadonlyMap<string, Float64Array>,
): PanelStress[] {
  return structure.panels.map((panel): PanelStress => {
    const cells = stretched?.get(panel.id) ?? cellForces(structure, panel, u);
    const index = nodeIndex(panel);
    const nodes = Int32Array.from(index.keys());
    const forces = meanAtNodes(structure, panel, cells, index);
    const { thickness } = structure.shells[panel.shells[0]]!;
    const zones = hotZones({ model, structure }, panel);
    const place = (i: number): readonly [number, number] => [
      structure.coordinates[3 * nodes[i]!]!,
      structure.coordinates[3 * nodes[i]! + 1]!,
    ];
    const hot = Uint8Array.from(nodes, (_, i) => (isHot(zones, ...place(i)) ? 1 : 0));
    const on = (side: 'top' | 'bottom') =>
      Array.from(nodes, (_, i) => shellStress(forces.subarray(6 * i, 6 * i + 6), thickness, side));
    const sides = { top: on('top'), bottom: on('bottom') };
    let largest: StressAt | null = null;
    for (const side of ['top', 'bottom'] as const)
      sides[side].forEach((stress, i) => {
        if (hot[i] || (largest && stress.vonMises <= largest.stress.vonMises)) return;
        const [x, y] = place(i);
        largest = { stress, side, node: nodes[i]!, x, y };
      });
    const middles = new Float64Array(cells.length / cellPlaces);
    for (let e = 0; 6 * e < middles.length; e++)
      middles.set(cells.subarray(6 * cellPlaces * e, 6 * cellPlaces * e + 6), 6 * e);
    return {
      id: panel.id,
      thickness,
      nodes,
      forces,
      top: Float64Array.from(sides.top, ({ vonMises }) => vonMises),
      bottom: Float64Array.from(sides.bottom, ({ vonMises }) => vonMises),
      hot,
      cells: middles,
      largest,
      hotSpots: zones.map((zone) => averaged(structure, panel, zone, middles, thickness)),
    };
  });
}

/** Mean of the forces of the cells whose middle lies in a zone, weighted with their area; where the mesh is coarser than the
 *  zone, of the cells that touch its point. */
function averaged(
  { shells, coordinates }: Structure,
  { shells: [first, last] }: PanelMesh,
  zone: HotZone,
  middles: Float64Array,
  thickness: number,
): HotSpot {
  const cells = shells.slice(first, last).map(({ nodes, a, b }, e) => {
    const [x, y] = [coordinates[3 * nodes[0]]! + a / 2, coordinates[3 * nodes[0] + 1]! + b / 2];
    const [dx, dy] = [Math.abs(x - zone.x), Math.abs(y - zone.y)];
    return { e, area: a * b, away: Math.hypot(dx, dy), touches: dx <= a / 2 + rounding && dy <= b / 2 + rounding };
  });
  const within = cells.filter(({ away }) => away <= zone.radius);
  const patch = within.length >= leastCells ? within : cells.filter(({ touches }) => touches);
  const area = patch.reduce((sum, cell) => sum + cell.area, 0);
  const mean = Float64Array.from({ length: 6 }, (_, k) =>
    patch.reduce((sum, cell) => sum + (cell.area / area) * middles[6 * cell.e + k]!, 0),
  );
  const [top, bottom] = [shellStress(mean, thickness, 'top'), shellStress(mean, thickness, 'bottom')];
  const worse = top.vonMises >= bottom.vonMises;
  return { ...zone, stress: worse ? top : bottom, side: worse ? 'top' : 'bottom', cells: patch.length };
}

/** Fewer cells than this are no mean of the zone. */
const leastCells = 3;
/** m: places are on lines of the lattice but for rounding. */
const rounding = 1e-7;
