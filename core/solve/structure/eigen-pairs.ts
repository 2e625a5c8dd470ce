import { refusal } from '../../refusal.ts';
import { denseEigenpairs } from './eigen-dense.ts';

/** K φ = λ B φ with K symmetric, positive but for stated rigid motions, and B symmetric: the mass for natural modes, the
 *  negative of the geometric stiffness for buckling. All vectors have `size` entries. */
export interface EigenProblem {
  readonly size: number;
  /** u of K u = f for an f that does no work on the rigid motions; any rigid motion may be in u. Zero at held freedoms. */
  readonly solve: (f: Float64Array) => Float64Array;
  /** K u and B u, in arrays of their own. */
  readonly stiffness: (u: Float64Array) => Float64Array;
  readonly weight: (u: Float64Array) => Float64Array;
  /** Motions that K does not resist: left out of the answer. B must be positive on them. */
  readonly rigid?: readonly Float64Array[];
}

export interface EigenPair {
  readonly λ: number;
  /** φᵀ K φ = λ φᵀ B φ = 1, so φᵀ B φ = 1/λ. */
  readonly shape: Float64Array;
  /** ‖K⁻¹B φ - φ/λ‖ λ in the norm of K: an eigenvalue lies within this part of λ. */
  readonly residual: number;
}

export interface EigenPairs {
  /** Positive λ from the lowest up; fewer than asked where there are no more. */
  readonly pairs: readonly EigenPair[];
  /** All residuals below the tolerance, and a second look from a fresh start found no pair that was missed. */
  readonly converged: boolean;
  readonly solves: number;
}

export interface EigenSettings {
  readonly count: number;
  /** Largest residual. Values are then right to about its square. */
  readonly tolerance?: number;
  /** Largest number of vectors that are kept. */
  readonly most?: number;
  /** λ beyond which pairs are of no use: they are left out, and not waited for. */
  readonly within?: number;
}

/**
 * The `count` lowest positive λ. Block Lanczos on A = K⁻¹B, whose largest eigenvalues are 1/λ, in the inner product of K:
 * A is symmetric in it even where B is singular (freedoms without mass) or indefinite (buckling).
 *    w = K⁻¹ B q,  so K w = B q is known without a product;   w ← w - Q Qᵀ K w, twice;   H = Qᵀ B Q
 * Blocks of four find eigenvalues that are fourfold; every vector is made orthogonal to all before it, so that none comes
 * twice. When all have settled a fresh block joins, a second look for what the first start could not see.
 * Yields the number of solves after each block. Same answer for the same input: starting vectors are a fixed sequence.
 * Source: T. Ericsson & A. Ruhe, Math. Comp. 35 (1980) 1251, and B. Nour-Omid, B. N. Parlett, T. Ericsson & P. S. Jensen,
 * Math. Comp. 48 (1987) 663, on Lanczos with a shifted and inverted operator, from memory.
 */
export function* eigenPairs(
  problem: EigenProblem,
  { count, tolerance = 1e-6, most = 10 * count + 100, within = Infinity }: EigenSettings,
): Generator<number, EigenPairs> {
  if (!(Number.isInteger(count) && count > 0))
    throw refusal({ what: `${count} modes were asked for`, mend: 'Ask for one or more' });
  const { size, solve, weight } = problem;
  const rigid = rigidBasis(problem);
  const noise = fixedSequence();
  const Q: Float64Array[] = [];
  const KQ: Float64Array[] = [];
  const BQ: Float64Array[] = []; // of the last block only; earlier ones are let go
  const H: number[][] = [];
  let solves = 0;

  /** Adds those of w (with K w beside it) that are new to the basis; gives how many. */
  const join = (block: readonly (readonly [w: Float64Array, Kw: Float64Array])[]): number => {
    const before = Q.length;
    for (const [w, Kw] of block) {
      const start = dot(w, Kw);
      let left = start;
      for (let pass = 0; pass < 2; pass++) {
        for (let i = 0; i < Q.length; i++) {
          const c = dot(KQ[i]!, w);
          subtract(w, Q[i]!, c);
          subtract(Kw, KQ[i]!, c);
        }
        left = dot(w, Kw);
      }
      // what is only the rounding of what was taken away is no direction
      if (!(left > 1e-20 * start) || Q.length >= most) continue;
      const length = Math.sqrt(left);
      Q.push(w.map((value) => value / length));
      KQ.push(Kw.map((value) => value / length));
    }
    for (let j = before; j < Q.length; j++) {
      const Bq = weight(Q[j]!);
      BQ[j] = Bq;
      H[j] = Q.slice(0, j + 1).map((q) => dot(q, Bq));
    }
    return Q.length - before;
  };
  const images = (of: readonly Float64Array[]): (readonly [Float64Array, Float64Array])[] =>
    of.map((f): readonly [Float64Array, Float64Array] => {
      solves++;
      const w = solve(f);
      for (const { R, BR } of rigid) subtract(w, R, dot(BR, w));
      return [w, f.slice()];
    });
  const fresh = (): number => {
    const block = Array.from({ length: Math.min(width, size) }, () => {
      const x = Float64Array.from({ length: size }, noise);
      for (const { R, BR } of rigid) subtract(x, R, dot(BR, x));
      return weight(x);
    });
    return join(images(block));
  };

  let added = fresh();
  let settledTwice = false;
  let looks = 0;
  let found: Ritz[] = [];
  for (;;) {
    yield solves;
    found = ritz(H).slice(0, count);
    const last = Q.length - added;
    if (added === 0) {
      settledTwice = true; // the basis holds all that K⁻¹B reaches
      break;
    }
    const block = images(BQ.slice(last, Q.length));
    for (let j = last; j < Q.length; j++) BQ[j] = nothing;
    const out = block.map(([w, Kw]) => outside(Q, KQ, w, Kw));
    const enough = found.length === count || (within < Infinity && Q.length >= 2 * count + 4 * width);
    const settled =
      enough &&
      found.every(({ μ, s }) => {
        const off = Math.sqrt(partOf(out, s, last));
        return off <= tolerance * μ || μ + off < 1 / within;
      });
    added = join(block);
    if (Q.length >= most) {
      settledTwice = settled && looks > 0;
      found = ritz(H).slice(0, count);
      break;
    }
    if (!settled) continue;
    if (looks > secondLook) {
      settledTwice = true;
      break;
    }
    if (looks === 0) added += fresh();
    looks++;
  }

  const pairs = found
    .filter(({ μ }) => μ * within >= 1)
    .map(({ μ, s }): EigenPair => {
      const shape = new Float64Array(size);
      s.forEach((c, k) => subtract(shape, Q[k]!, -c));
      const [[w]] = images([weight(shape)]) as [readonly [Float64Array, Float64Array]];
      const error = w.map((value, i) => value - μ * shape[i]!);
      const norm = Math.sqrt(Math.max(dot(error, problem.stiffness(error)), 0) / dot(shape, problem.stiffness(shape)));
      return { λ: 1 / μ, shape, residual: norm / μ };
    });
  return { pairs, converged: settledTwice && pairs.every(({ residual }) => residual <= 10 * tolerance), solves };
}

const width = 4;
/** Blocks that a fresh start is carried on for, once all pairs have settled. */
const secondLook = 1;
const nothing = new Float64Array(0);

interface Ritz {
  readonly μ: number;
  readonly s: Float64Array;
}

/** Eigenpairs of H (its lower half by rows) with positive values, from the largest down. What is rounding of the largest
 *  is not counted as positive. */
function ritz(H: readonly number[][]): Ritz[] {
  const n = H.length;
  const A = new Float64Array(n * n);
  H.forEach((row, i) => row.forEach((value, j) => (A[i * n + j] = A[j * n + i] = value)));
  const { values, vectors } = denseEigenpairs(A, n);
  const scale = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return Array.from(values, (μ, k) => ({ μ, s: vectors.slice(k * n, (k + 1) * n) })).filter(
    ({ μ }) => μ > 1e-13 * scale,
  );
}

/** The part of w that the basis does not hold, with K times it. */
function outside(
  Q: readonly Float64Array[],
  KQ: readonly Float64Array[],
  w: Float64Array,
  Kw: Float64Array,
): readonly [Float64Array, Float64Array] {
  const [v, Kv] = [w.slice(), Kw.slice()];
  Q.forEach((q, i) => {
    const c = dot(KQ[i]!, v);
    subtract(v, q, c);
    subtract(Kv, KQ[i]!, c);
  });
  return [v, Kv];
}

/** ‖Σ s_k out_k‖² in K, over the last block, from s's entry `first` on. */
function partOf(out: readonly (readonly [Float64Array, Float64Array])[], s: Float64Array, first: number): number {
  let sum = 0;
  out.forEach(([v], i) => out.forEach(([, Kw], j) => (sum += s[first + i]! * s[first + j]! * dot(v, Kw))));
  return Math.max(sum, 0);
}

/** Rigid motions orthonormal in B, each with B times it. */
function rigidBasis({ rigid = [], weight }: EigenProblem): { R: Float64Array; BR: Float64Array }[] {
  const basis: { R: Float64Array; BR: Float64Array }[] = [];
  for (const motion of rigid) {
    const R = motion.slice();
    for (let pass = 0; pass < 2; pass++) for (const { R: other, BR } of basis) subtract(R, other, dot(BR, R));
    const BR = weight(R);
    const mass = dot(R, BR);
    if (!(mass > 0))
      throw refusal({
        what: 'A rigid motion of the structure has no mass',
        mend: 'Give mass to a part that is not all on one line',
      });
    const length = Math.sqrt(mass);
    basis.push({ R: R.map((value) => value / length), BR: BR.map((value) => value / length) });
  }
  return basis;
}

/** Numbers between -1 and 1 that look like chance and are always the same: starting vectors favour no shape.
 *  Source: S. K. Park & K. W. Miller, Comm. ACM 31 (1988) 1192, the minimal standard. */
function fixedSequence(): () => number {
  let seed = 20201;
  return () => {
    seed = (seed * 16807) % 2147483647;
    return (2 * seed) / 2147483647 - 1;
  };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function subtract(from: Float64Array, of: Float64Array, scale: number): void {
  for (let i = 0; i < from.length; i++) from[i]! -= scale * of[i]!;
}
