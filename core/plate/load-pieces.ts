import type { PlateLoads } from '../loads/plate-loads.ts';
import type { NamedLoading } from '../loads/situation.ts';
import { nearestLine } from '../solve/lattice-lines.ts';
import type { BeamPart, Structure } from '../solve/structure/structure.ts';
import type { Vector } from '../solve/vector.ts';

/** Load on a length of one beam, from its start, m: N/m up and N·m/m about the beam's own axis, straight between. */
export interface LoadPiece {
  readonly low: number;
  readonly high: number;
  readonly q: readonly [number, number];
  readonly t: readonly [number, number];
}

/** The same on a length of tube that no beam covers, in a joint or past the steel: the nearest node carries it on rigid arms. */
export interface NodePiece extends Omit<LoadPiece, 'low' | 'high'> {
  readonly node: number;
  /** From the node to both ends of the length. */
  readonly arms: readonly [Vector, Vector];
  /** Along the tube, from its low end. */
  readonly axis: Vector;
  readonly length: number;
}

/** A loading's loads on the tubes, parted by what carries them: by beam, and by node. */
export interface LoadPieces {
  readonly onBeams: readonly (readonly LoadPiece[])[];
  readonly onNodes: readonly NodePiece[];
}

export function loadPieces(
  structure: Structure,
  { lines }: PlateLoads,
  { onTubes }: Pick<NamedLoading, 'onTubes'>,
): LoadPieces {
  const onBeams: LoadPiece[][] = structure.beams.map(() => []);
  const onNodes: NodePiece[] = [];
  structure.tubes.forEach(({ set, beams: [first, last], stations, nodes, offsets }, tube) => {
    const own = structure.beams.slice(first, last);
    const axis: Vector = set === 'main' ? [1, 0, 0] : [0, 1, 0];
    // the load's torque is force times its offset towards higher y or x: about -y, for a cross tube
    const turn = set === 'main' ? 1 : -1;
    for (let e = lines.firstCell[tube]!; e < lines.firstCell[tube + 1]!; e++) {
      const [from, to] = [lines.from[e]!, lines.to[e]!];
      const [q0, q1, t0, t1] = [onTubes[4 * e]!, onTubes[4 * e + 1]!, onTubes[4 * e + 2]!, onTubes[4 * e + 3]!];
      if (q0 === 0 && q1 === 0 && t0 === 0 && t1 === 0) continue;
      const at = (place: number, v0: number, v1: number): number => v0 + ((v1 - v0) * (place - from)) / (to - from);
      for (const { low, high, beam } of stretches(own, from, to)) {
        const load = {
          q: [at(low, q0, q1), at(high, q0, q1)] as const,
          t: [turn * at(low, t0, t1), turn * at(high, t0, t1)] as const,
        };
        if (beam >= 0) {
          const { from: start } = own[beam]!;
          onBeams[first + beam]!.push({ low: low - start, high: high - start, ...load });
          continue;
        }
        const k = nearestLine(stations, (low + high) / 2);
        const [x, y, z] = offsets[k]!;
        const arm = (place: number): Vector => {
          const by = place - stations[k]!;
          return [x + by * axis[0], y + by * axis[1], z];
        };
        onNodes.push({ node: nodes[k]!, arms: [arm(low), arm(high)], axis, length: high - low, ...load });
      }
    }
  });
  return { onBeams, onNodes };
}

/** A stretch [from, to] parted by the beams under it, by their place in the list; -1 for what no beam covers. */
function stretches(
  beams: readonly BeamPart[],
  from: number,
  to: number,
): { readonly low: number; readonly high: number; readonly beam: number }[] {
  const parts: { low: number; high: number; beam: number }[] = [];
  let at = from;
  for (const [k, beam] of beams.entries()) {
    if (beam.to <= at) continue;
    if (beam.from >= to) break;
    if (beam.from > at) parts.push({ low: at, high: beam.from, beam: -1 });
    const high = Math.min(beam.to, to);
    parts.push({ low: Math.max(at, beam.from), high, beam: k });
    at = high;
  }
  if (at < to) parts.push({ low: at, high: to, beam: -1 });
  return parts;
}
