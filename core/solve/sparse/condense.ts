import { refusal } from '../../refusal.ts';
import type { ElementStiffness } from '../structure/element-stiffness.ts';
import { elimination, type Elimination } from './elimination.ts';
import { factorFronts } from './factor-fronts.ts';
import type { FactoriseOptions } from './factorise.ts';
import { round6 } from './front-kernels.ts';
import { requireSystem, type StiffnessSystem } from './stiffness-system.ts';
import { solveLower, solveUpper } from './triangular-solve.ts';
import { frontKernels } from './wasm-kernels.ts';

/** A part of a structure as its kept nodes feel it: an element like any other, exact in statics. Freedoms that are held in
 *  the system have rows and columns of zeros. Source: Guyan 1965, AIAA J. 3, 380 (static condensation), from memory. */
export interface Condensed extends ElementStiffness {
  /** Forces on the kept nodes (6 each) that stand for forces f (6N) on the whole part: f_k - K_ki K_ii⁻¹ f_i. */
  load(f: Float64Array): Float64Array;
  /** Displacements of the whole part (6N) from those of the kept nodes (6 each) and the forces f (6N) on it. */
  recover(kept: Float64Array, f: Float64Array): Float64Array;
  readonly elimination: Elimination;
  readonly bytes: number;
}

/** S = K_kk - K_ki K_ii⁻¹ K_ik on the kept nodes, in their order. The elimination of an earlier part with the same nodes,
 *  elements, held freedoms and kept nodes may be handed in. Refuses kept nodes that are none or twice; throws a Mechanism
 *  if something moves while the kept nodes do not. */
export function condense(system: StiffnessSystem, nodes: readonly number[], options: FactoriseOptions = {}): Condensed {
  requireSystem(system);
  const { held } = system;
  const kept = new Uint8Array(held.length / 6);
  for (const node of nodes) {
    if (!(node >= 0 && node < kept.length) || kept[node] === 1)
      throw refusal({
        what: kept[node] === 1 ? `Node ${node} is kept twice` : `There is no node ${node} to keep`,
        where: { node },
        mend: 'Name each node that is to be kept once',
      });
    kept[node] = 1;
  }
  if (!nodes.some((node) => [0, 1, 2, 3, 4, 5].some((k) => held[6 * node + k] === 0)))
    throw refusal({ what: 'No kept node can move', mend: 'Keep the nodes by which the part is fastened' });
  const order = options.elimination ?? elimination(system, kept);
  const factored = factorFronts(order, system, options.kernels ?? frontKernels, { lastStays: true });
  const { kernels, fronts, x } = factored;
  const { freedoms, size, first, count, place } = order;
  const M = kernels.doubles;
  const last = fronts[count - 1]!;
  const begin = first[count - 1]!;
  /** Row of each freedom of the kept nodes in the last front, or -1 where held. */
  const row = Int32Array.from({ length: 6 * nodes.length }, (_, i) => {
    const p = place[6 * nodes[(i / 6) | 0]! + (i % 6)]!;
    return p < 0 ? -1 : p - begin;
  });
  const forwards = (f: Float64Array): void => {
    for (let i = 0; i < size; i++) M[x + i] = f[freedoms[i]!]!;
    solveLower(factored, count - 1);
  };
  return {
    nodes,
    stiffness: symmetricBlock(M, last.panel, round6(last.w), row),
    load(f) {
      forwards(f);
      return Float64Array.from(row, (i) => (i < 0 ? 0 : M[x + begin + i]!));
    },
    recover(ends, f) {
      forwards(f);
      row.forEach((i, k) => {
        if (i >= 0) M[x + begin + i] = ends[k]!;
      });
      solveUpper(factored, count - 1);
      const u = new Float64Array(held.length);
      for (let i = 0; i < size; i++) u[freedoms[i]!] = M[x + i]!;
      return u;
    },
    elimination: order,
    bytes: M.byteLength,
  };
}

/** The rows of a lower triangle (by columns, ld rows) in another order, as a full matrix by rows. */
export function symmetricBlock(M: Float64Array, lower: number, ld: number, row: Int32Array): Float64Array {
  const n = row.length;
  const full = new Float64Array(n * n);
  for (let a = 0; a < n; a++)
    for (let b = 0; b < n; b++) {
      const [i, j] = [Math.max(row[a]!, row[b]!), Math.min(row[a]!, row[b]!)];
      if (j >= 0) full[a * n + b] = M[lower + j * ld + i]!;
    }
  return full;
}
