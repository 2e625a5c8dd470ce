import type { FactoredFronts } from './factor-fronts.ts';
import { round6 } from './front-kernels.ts';

/** Nothing holds a motion of the structure (or something pushes it on). Words for the engineer are made where nodes have
 *  names. motion: 6N, the free motion, its largest displacement or rotation 1. freedom: where the elimination broke, which
 *  moves in that motion. remaining: what was left of its stiffness, as a part of its own; well below zero where the
 *  structure is not stable. */
export class Mechanism extends Error {
  override readonly name = 'Mechanism';
  readonly motion: Float64Array;
  readonly freedom: number;
  readonly node: number;
  readonly remaining: number;

  constructor(factored: FactoredFronts, front: number, pivot: number, diagonal: number) {
    const { elimination, kernels, fronts } = factored;
    const freedom = elimination.freedoms[elimination.first[front]! + pivot]!;
    super(`Nothing holds freedom ${freedom % 6} of node ${Math.floor(freedom / 6)}`);
    this.freedom = freedom;
    this.node = Math.floor(freedom / 6);
    this.motion = freeMotion(factored, front, pivot);
    const { panel, w, b } = fronts[front]!;
    const left = kernels.doubles[panel + pivot * (round6(w) + round6(b)) + pivot]!;
    this.remaining = diagonal > 0 ? left / diagonal : 0;
  }
}

/** Where the pivot of freedom k is nil, x_k = 1 and L^T x = 0 for all freedoms before it is a motion without force. */
function freeMotion(
  { elimination, kernels, fronts, rows, x, t }: FactoredFronts,
  s: number,
  pivot: number,
): Float64Array {
  const { first, parent, freedoms, place } = elimination;
  const M = kernels.doubles;
  M.fill(0, x, x + elimination.size);
  const own = x + first[s]!;
  M[own + pivot] = 1;
  const { panel, w, b } = fronts[s]!;
  const ld = round6(w) + round6(b);
  for (let k = pivot - 1; k >= 0; k--) {
    let sum = 0;
    for (let i = k + 1; i <= pivot; i++) sum += M[panel + k * ld + i]! * M[own + i]!;
    M[own + k] = -sum / M[panel + k * ld + k]!;
  }
  // Only what is below this front in the tree moves with it.
  const moves = new Uint8Array(s + 1);
  moves[s] = 1;
  for (let c = s - 1; c >= 0; c--) {
    const above = parent[c]!;
    if (above > s || above < 0 || moves[above] === 0) continue;
    moves[c] = 1;
    kernels.upper(fronts[c]!, x, first[c]!, rows[c]!, t);
  }
  let most = 0;
  for (let i = 0; i < elimination.size; i++) if (Math.abs(M[x + i]!) > Math.abs(most)) most = M[x + i]!;
  const motion = new Float64Array(place.length);
  for (let i = 0; i < elimination.size; i++) motion[freedoms[i]!] = M[x + i]! / most;
  return motion;
}
