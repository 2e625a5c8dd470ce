import type { FactoredFronts } from './factor-fronts.ts';
import { round6 } from './front-kernels.ts';
import type { StiffnessSystem } from './stiffness-system.ts';

/** Nothing holds a motion of the structure. Words for the engineer are made where nodes have names.
 *  motion: 6N, the free motion, its largest displacement or rotation 1. node, freedom (0 to 5): where the elimination broke,
 *  which moves in that motion. share: the energy of the motion as a part of the energies that cancel in it, about 1e-16 for
 *  a free motion; negative where the structure is not stable. */
export class Mechanism extends Error {
  override readonly name = 'Mechanism';
  readonly motion: Float64Array;
  readonly node: number;
  readonly freedom: number;
  readonly share: number;

  constructor({ motion, node, freedom, share }: Pick<Mechanism, 'motion' | 'node' | 'freedom' | 'share'>) {
    super(`Nothing holds freedom ${freedom} of node ${node}`);
    this.motion = motion;
    this.node = node;
    this.freedom = freedom;
    this.share = share;
  }
}

/** What front s cannot hold at its own freedom `pivot`, all before it being eliminated. */
export function mechanismAt(factored: FactoredFronts, system: StiffnessSystem, s: number, pivot: number): Mechanism {
  const { first, freedoms } = factored.elimination;
  const at = freedoms[first[s]! + pivot]!;
  const motion = freeMotion(factored, s, pivot);
  return new Mechanism({ motion, node: Math.floor(at / 6), freedom: at % 6, share: energyShare(system, motion) });
}

/** Σ xᵀ K x over the elements, as a part of Σ |x|ᵀ |K| |x|. */
function energyShare({ elements }: StiffnessSystem, x: Float64Array): number {
  let energy = 0;
  let gross = 0;
  for (const { nodes, stiffness } of elements) {
    const size = 6 * nodes.length;
    for (let i = 0; i < size; i++) {
      const own = x[6 * nodes[(i / 6) | 0]! + (i % 6)]!;
      if (own === 0) continue;
      for (let b = 0, p = i * size; b < nodes.length; b++)
        for (let k = 6 * nodes[b]!; k < 6 * nodes[b]! + 6; k++, p++) {
          const part = own * stiffness[p]! * x[k]!;
          energy += part;
          gross += Math.abs(part);
        }
    }
  }
  return gross > 0 ? energy / gross : 0;
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
