import type { PlateLoads } from '../../loads/plate-loads.ts';
import type { NamedLoading } from '../../loads/situation.ts';
import type { Structure } from '../../solve/structure/structure.ts';

/** Load on a length of one beam, from its start, m: N/m up and N·m/m about the beam's own axis, straight between. */
export interface LoadPiece {
  readonly low: number;
  readonly high: number;
  readonly q: readonly [number, number];
  readonly t: readonly [number, number];
}

/** What of a loading lies on each beam, by beam. What lies in a joint or past the steel is carried by a node, not here. */
export function beamPieces(structure: Structure, { lines }: PlateLoads, { onTubes }: NamedLoading): LoadPiece[][] {
  const pieces: LoadPiece[][] = structure.beams.map(() => []);
  structure.tubes.forEach(({ set, beams: [first, last] }, tube) => {
    // the load's torque is force times its offset towards higher y or x: about -y, for a cross tube
    const turn = set === 'main' ? 1 : -1;
    for (let e = lines.firstCell[tube]!; e < lines.firstCell[tube + 1]!; e++) {
      const [from, to] = [lines.from[e]!, lines.to[e]!];
      const [q0, q1, t0, t1] = onTubes.subarray(4 * e, 4 * e + 4) as unknown as [number, number, number, number];
      if (q0 === 0 && q1 === 0 && t0 === 0 && t1 === 0) continue;
      for (let b = first; b < last; b++) {
        const beam = structure.beams[b]!;
        const [low, high] = [Math.max(from, beam.from), Math.min(to, beam.to)];
        if (high <= low) continue;
        const at = (place: number, v0: number, v1: number): number => v0 + ((v1 - v0) * (place - from)) / (to - from);
        pieces[b]!.push({
          low: low - beam.from,
          high: high - beam.from,
          q: [at(low, q0, q1), at(high, q0, q1)],
          t: [turn * at(low, t0, t1), turn * at(high, t0, t1)],
        });
      }
    }
  });
  return pieces;
}
