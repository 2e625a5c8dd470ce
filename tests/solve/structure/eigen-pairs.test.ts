import { describe, expect, it } from 'vitest';
import { envelope, envelopeCholesky, solveLower, solveUpper } from '../../../core/solve/envelope-cholesky.ts';
import { denseEigenpairs } from '../../../core/solve/structure/eigen-dense.ts';
import { eigenPairs, type EigenPairs, type EigenProblem } from '../../../core/solve/structure/eigen-pairs.ts';

const { PI: π, sin } = Math;

function run(problem: EigenProblem, count: number, most?: number): EigenPairs {
  const steps = eigenPairs(problem, { count, ...(most === undefined ? {} : { most }) });
  for (;;) {
    const next = steps.next();
    if (next.done) return next.value;
  }
}

/** K of n × m unit masses on a lattice of unit springs (each to its neighbours), ends held or free. */
function lattice(n: number, m: number, ends: 'held' | 'free'): Float64Array[] {
  const rows = Array.from({ length: n * m }, () => new Float64Array(n * m));
  const at = (i: number, j: number): number => i * m + j;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < m; j++)
      for (const [di, dj, len, k] of [
        [1, 0, n, i],
        [0, 1, m, j],
      ] as const) {
        if (len === 1) continue;
        const own = rows[at(i, j)]!;
        if (ends === 'held') {
          own[at(i, j)]! += 2;
          if (k > 0) own[at(i - di, j - dj)] = -1;
          if (k < len - 1) own[at(i + di, j + dj)] = -1;
        } else if (k < len - 1) {
          const other = rows[at(i + di, j + dj)]!;
          own[at(i, j)]! += 1;
          other[at(i + di, j + dj)]! += 1;
          own[at(i + di, j + dj)] = other[at(i, j)] = -1;
        }
      }
  return rows;
}

const times = (K: readonly Float64Array[], x: Float64Array): Float64Array =>
  Float64Array.from(K, (row) => row.reduce((sum, value, j) => sum + value * x[j]!, 0));

/** With freedom 0 held where K alone is singular. */
function problem(
  K: readonly Float64Array[],
  weight: (u: Float64Array) => Float64Array,
  rigid: readonly Float64Array[] = [],
): EigenProblem {
  const from = rigid.length;
  const L = envelope(new Int32Array(K.length - from));
  for (let i = from; i < K.length; i++)
    for (let j = from; j <= i; j++) L.entries[L.start[i - from]! + j - from] = K[i]![j]!;
  expect(envelopeCholesky(L)).toBe(-1);
  const solve = (f: Float64Array): Float64Array => {
    const u = new Float64Array(K.length);
    u.set(solveUpper(L, solveLower(L, f.slice(from))), from);
    return u;
  };
  return { size: K.length, solve, stiffness: (u) => times(K, u), weight, rigid };
}

describe('lowest eigenpairs', () => {
  it('of a chain of n masses held at both ends are 4 sin²(kπ/2(n+1)) (the loaded string: J. W. S. Rayleigh, The Theory of Sound, art. 120, from memory)', () => {
    const n = 60;
    const { pairs, converged } = run(
      problem(lattice(n, 1, 'held'), (u) => u.slice()),
      6,
    );
    expect(converged).toBe(true);
    pairs.forEach(({ λ, shape, residual }, k) => {
      const exact = 4 * sin(((k + 1) * π) / (2 * (n + 1))) ** 2;
      expect(Math.abs(λ / exact - 1)).toBeLessThan(1e-12);
      expect(residual).toBeLessThan(1e-6);
      // the shape is a sine with k half waves
      const ratio = shape.map((value, i) => value / sin(((k + 1) * π * (i + 1)) / (n + 1)));
      const middle = ratio.filter((_, i) => Math.abs(sin(((k + 1) * π * (i + 1)) / (n + 1))) > 0.1);
      expect(Math.max(...middle) / Math.min(...middle)).toBeCloseTo(1, 5);
    });
  });

  it('come as often as they are manifold: a square membrane of masses has pairs of equal frequencies', () => {
    const n = 14;
    const { pairs, converged } = run(
      problem(lattice(n, n, 'held'), (u) => u.slice()),
      9,
    );
    const one = (k: number): number => 4 * sin((k * π) / (2 * (n + 1))) ** 2;
    const exact = [1, 2, 3, 4]
      .flatMap((k) => [1, 2, 3, 4].map((l) => one(k) + one(l)))
      .sort((a, b) => a - b)
      .slice(0, 9);
    expect(converged).toBe(true);
    pairs.forEach(({ λ }, k) => expect(Math.abs(λ / exact[k]! - 1)).toBeLessThan(1e-12));
  });

  it('leave a stated rigid motion out: a free chain has 4 sin²(kπ/2n), k from 1', () => {
    const n = 40;
    const rigid = [new Float64Array(n).fill(1)];
    const { pairs } = run(
      problem(lattice(n, 1, 'free'), (u) => u.slice(), rigid),
      5,
    );
    pairs.forEach(({ λ, shape }, k) => {
      expect(Math.abs(λ / (4 * sin(((k + 1) * π) / (2 * n)) ** 2) - 1)).toBeLessThan(1e-11);
      const largest = Math.max(...shape.map(Math.abs));
      expect(Math.abs(shape.reduce((sum, value) => sum + value, 0)) / largest).toBeLessThan(1e-10);
    });
  });

  it('serve a weight without mass at some places: there the chain is condensed by statics', () => {
    const n = 41;
    const K = lattice(n, 1, 'held');
    // mass at every second place only: two springs of 1 in series are one of 1/2
    const { pairs } = run(
      problem(K, (u) => u.map((value, i) => (i % 2 ? value : 0))),
      4,
    );
    pairs.forEach(({ λ }, k) => expect(Math.abs(λ / (2 * sin(((k + 1) * π) / (2 * 21)) ** 2) - 1)).toBeLessThan(1e-12));
  });

  it('take the positive ones alone where the weight is of both signs, as under shear', () => {
    const n = 30;
    const K = lattice(n, 1, 'held');
    const { pairs } = run(
      problem(K, (u) => u.map((value, i) => (i < 15 ? value : -value))),
      3,
    );
    const own = run(
      problem(K, (u) => u.map((value, i) => (i < 15 ? -value : value))),
      3,
    );
    pairs.forEach(({ λ, residual }, k) => {
      expect(λ).toBeGreaterThan(0);
      expect(residual).toBeLessThan(1e-6);
      // mirrored, the other sign gives the same values
      expect(Math.abs(λ / own.pairs[k]!.λ - 1)).toBeLessThan(1e-11);
    });
  });

  it('agree with the dense solution of the whole, and that with trace and orthogonality', () => {
    const n = 24;
    const K = lattice(4, 6, 'held');
    const mass = Float64Array.from({ length: n }, (_, i) => 1 + (i % 5));
    // M^-½ K M^-½
    const A = Float64Array.from({ length: n * n }, (_, k) => {
      const [i, j] = [Math.floor(k / n), k % n];
      return K[i]![j]! / Math.sqrt(mass[i]! * mass[j]!);
    });
    const { values, vectors } = denseEigenpairs(A, n);
    const trace = K.reduce((sum, row, i) => sum + row[i]! / mass[i]!, 0);
    expect(values.reduce((sum, value) => sum + value, 0)).toBeCloseTo(trace, 11);
    for (let k = 0; k < n; k++)
      for (let l = 0; l <= k; l++) {
        let product = 0;
        for (let i = 0; i < n; i++) product += vectors[k * n + i]! * vectors[l * n + i]!;
        expect(product).toBeCloseTo(k === l ? 1 : 0, 12);
      }
    const { pairs } = run(
      problem(K, (u) => u.map((value, i) => mass[i]! * value)),
      5,
    );
    pairs.forEach(({ λ }, k) => expect(Math.abs(λ / values[n - 1 - k]! - 1)).toBeLessThan(1e-12));
  });

  it('end where they are of no more use', () => {
    const n = 60;
    const steps = eigenPairs(problem(lattice(n, 1, 'held'), (u) => u.slice()), { count: 6, within: 0.03 }); // prettier-ignore
    let next = steps.next();
    while (!next.done) next = steps.next();
    const exact = [1, 2, 3, 4, 5, 6].map((k) => 4 * sin((k * π) / (2 * (n + 1))) ** 2).filter((λ) => λ <= 0.03);
    expect(exact).toHaveLength(3);
    expect(next.value.converged).toBe(true);
    expect(next.value.pairs).toHaveLength(3);
    next.value.pairs.forEach(({ λ }, k) => expect(Math.abs(λ / exact[k]! - 1)).toBeLessThan(1e-10));
  });

  it('say so when too few vectors were allowed', () => {
    const { converged } = run(
      problem(lattice(400, 1, 'held'), (u) => u.slice()),
      10,
      16,
    );
    expect(converged).toBe(false);
  });

  it('give the same bits again', () => {
    const make = () =>
      run(
        problem(lattice(10, 11, 'held'), (u) => u.slice()),
        4,
      );
    expect(make().pairs).toEqual(make().pairs);
  });

  it('refuse to look for none', () => {
    expect(() =>
      run(
        problem(lattice(3, 1, 'held'), (u) => u.slice()),
        0,
      ),
    ).toThrow(/Ask for one or more/);
  });
});
