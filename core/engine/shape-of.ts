import { liftOf } from '../scene/panel-parts.ts';
import type { PlateShape, ShapePanel, ShapeTube } from '../scene/plate-shape.ts';
import { tubeOutline } from '../scene/tube-outline.ts';
import { nodeIndex } from '../plate/results/cell-forces.ts';
import type { ReadyPlate } from '../plate/solve-plate.ts';
import { pointMotion } from '../solve/structure/point-force.ts';
import type { Structure } from '../solve/structure/structure.ts';

/** What of a shape stays as long as the mesh does. */
interface Still {
  readonly panels: readonly (Pick<ShapePanel, 'id' | 'thickness' | 'lift' | 'places' | 'cells'> & {
    readonly nodes: readonly number[];
  })[];
  readonly tubes: readonly (Pick<ShapeTube, 'id' | 'outline' | 'wall' | 'along'> & { readonly axis: Float64Array })[];
}

const known = new WeakMap<Structure, Still>();

/**
 * The plate under displacements u (6N) of its nodes. `at`: for each tube the places along it at which it is wanted, m;
 * between nodes, which are as close as cells, motion is taken as linear. Without it, at its nodes.
 */
export function shapeOf(plate: ReadyPlate, u: Float64Array, at?: readonly ArrayLike<number>[]): PlateShape {
  const { structure } = plate;
  const still = known.get(structure) ?? stillOf(plate);
  known.set(structure, still);
  let largest = 0;
  const see = (x: number, y: number, z: number): void => {
    largest = Math.max(largest, Math.hypot(x, y, z));
  };
  const panels = still.panels.map(({ nodes, ...panel }): ShapePanel => {
    const moves = new Float32Array(3 * nodes.length);
    const turns = new Float32Array(3 * nodes.length);
    nodes.forEach((node, k) => {
      see(u[6 * node]!, u[6 * node + 1]!, u[6 * node + 2]!);
      moves.set(u.subarray(6 * node, 6 * node + 3), 3 * k);
      turns.set(u.subarray(6 * node + 3, 6 * node + 6), 3 * k);
    });
    return { ...panel, moves, turns };
  });
  const tubes = still.tubes.map(({ axis, ...tube }, t): ShapeTube => {
    const { stations, nodes, offsets } = structure.tubes[t]!;
    const moved = Array.from(nodes, (node, k) => {
      const motion = pointMotion(u, node, offsets[k]!);
      see(...motion);
      return [...motion, ...u.subarray(6 * node + 3, 6 * node + 6)];
    });
    const wanted = at?.[t] ?? stations;
    const places = new Float32Array(3 * wanted.length);
    const moves = new Float32Array(3 * wanted.length);
    const turns = new Float32Array(3 * wanted.length);
    let k = 0;
    for (let i = 0; i < wanted.length; i++) {
      while (k < stations.length - 2 && stations[k + 1]! < wanted[i]!) k++;
      const s = Math.min(1, Math.max(0, (wanted[i]! - stations[k]!) / (stations[k + 1]! - stations[k]!)));
      const mixed = (a: ArrayLike<number>, b: ArrayLike<number>, n: number): number => a[n]! + s * (b[n]! - a[n]!);
      for (let c = 0; c < 3; c++) {
        places[3 * i + c] = mixed(axis.subarray(3 * k, 3 * k + 3), axis.subarray(3 * k + 3, 3 * k + 6), c);
        moves[3 * i + c] = mixed(moved[k]!, moved[k + 1]!, c);
        turns[3 * i + c] = mixed(moved[k]!, moved[k + 1]!, 3 + c);
      }
    }
    return { ...tube, at: Float32Array.from(wanted), places, moves, turns };
  });
  return { panels, tubes, largest };
}

function stillOf({ structure, model }: ReadyPlate): Still {
  const { coordinates, shells } = structure;
  return {
    panels: structure.panels.map((panel) => {
      const { id, shells: [first, last] } = panel; // prettier-ignore
      const index = nodeIndex(panel);
      const nodes = [...index.keys()];
      return {
        id,
        thickness: shells[first]!.thickness,
        lift: liftOf(model.panels.get(id)!),
        nodes,
        places: Float32Array.from(nodes.flatMap((node) => [...coordinates.subarray(3 * node, 3 * node + 3)])),
        cells: Uint32Array.from(shells.slice(first, last).flatMap((shell) => shell.nodes.map((n) => index.get(n)!))),
      };
    }),
    tubes: structure.tubes.map(({ id, set, nodes, offsets }) => ({
      id,
      along: set === 'main' ? ([1, 0] as const) : ([0, 1] as const),
      outline: tubeOutline(model.tubes.get(id)!.section),
      wall: model.tubes.get(id)!.section.nominalWall,
      axis: Float64Array.from(
        [...nodes].flatMap((node, k) => [0, 1, 2].map((axis) => coordinates[3 * node + axis]! + offsets[k]![axis]!)),
      ),
    })),
  };
}
