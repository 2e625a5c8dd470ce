import { envelopeCholesky, solveLower, solveUpper } from '../../../../core/solve/envelope-cholesky.ts';
import type { ElementStiffness } from '../../../../core/solve/structure/element-stiffness.ts';
import { assembled, multiplied } from './bench-structure.ts';

/** Lowest `count` values λ of K x = λ M x over the freedoms that are not held, by subspace iteration on K + shift M
 *  with Rayleigh–Ritz (Jacobi turns inside). K + shift M must be positive definite. M may be indefinite: then the values
 *  of largest 1/(λ + shift) come. Source: Bathe & Wilson's subspace iteration, from memory. */
export function lowestEigenvalues(
  K: readonly ElementStiffness[],
  M: readonly ElementStiffness[],
  { size, held, count, shift = 0 }: { size: number; held: ReadonlySet<number>; count: number; shift?: number },
): number[] {
  const free = new Int32Array(size).fill(-1);
  const places: number[] = [];
  for (let k = 0; k < size; k++) if (!held.has(k)) free[k] = places.push(k) - 1;
  const shifted = M.map(({ nodes, stiffness }) => ({ nodes, stiffness: stiffness.map((v) => v * shift) }));
  const L = assembled([...K, ...(shift === 0 ? [] : shifted)], free, places.length);
  const row = envelopeCholesky(L, 1e-14);
  if (row !== -1) throw new Error(`Freedom ${places[row]} is not held`);
  const width = Math.min(2 * count + 4, places.length);
  let seed = 1;
  const random = (): number => (seed = (seed * 16807) % 2147483647) / 2147483647 - 0.5;
  const withM = (x: Float64Array): Float64Array => {
    const u = new Float64Array(size);
    places.forEach((k, i) => (u[k] = x[i]!));
    const f = multiplied(M, u);
    return Float64Array.from(places, (k) => f[k]!);
  };
  // Works on the symmetric operator A = L⁻¹ M L⁻ᵀ, whose largest values are 1/(λ + shift).
  const apply = (y: Float64Array): Float64Array => solveLower(L, withM(solveUpper(L, y.slice())));
  let Y = Array.from({ length: width }, () => Float64Array.from(places, random));
  let values: number[] = [];
  for (let step = 0; step < 200; step++) {
    orthonormal(Y);
    const AY = Y.map(apply);
    const B = Y.map((y) => AY.map((a) => dot(y, a)));
    const { value, vector } = jacobi(B);
    const order = value.map((_, i) => i).sort((i, j) => value[j]! - value[i]!);
    const now = order.slice(0, count).map((i) => 1 / value[i]! - shift);
    Y = order.map((i) => {
      const out = new Float64Array(places.length);
      AY.forEach((a, k) => a.forEach((v, r) => (out[r]! += v * vector[k]![i]!)));
      return out;
    });
    const scale = Math.abs(now.at(-1)!) + shift;
    if (values.length && now.every((v, i) => Math.abs(v - values[i]!) < 1e-9 * scale)) return now;
    values = now;
  }
  throw new Error('Subspace iteration did not settle');
}

const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, v, i) => sum + v * b[i]!, 0);

function orthonormal(Y: Float64Array[]): void {
  Y.forEach((y, i) => {
    for (let twice = 0; twice < 2; twice++)
      for (let j = 0; j < i; j++) {
        const c = dot(y, Y[j]!);
        y.forEach((v, k) => (y[k] = v - c * Y[j]![k]!));
      }
    const length = Math.sqrt(dot(y, y));
    y.forEach((v, k) => (y[k] = v / length));
  });
}

/** All values and vectors (columns) of a small symmetric matrix by Jacobi's turns. */
function jacobi(A: number[][]): { value: number[]; vector: number[][] } {
  const n = A.length;
  const V = A.map((_, i) => A.map((__, j): number => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < 30; sweep++)
    for (let p = 0; p < n; p++)
      for (let q = p + 1; q < n; q++) {
        if (Math.abs(A[p]![q]!) < 1e-300) continue;
        const τ = (A[q]![q]! - A[p]![p]!) / (2 * A[p]![q]!);
        const t = (τ < 0 ? -1 : 1) / (Math.abs(τ) + Math.sqrt(1 + τ * τ));
        const c = 1 / Math.sqrt(1 + t * t);
        const s = t * c;
        for (let k = 0; k < n; k++) {
          const [a, b] = [A[k]![p]!, A[k]![q]!];
          [A[k]![p], A[k]![q]] = [c * a - s * b, s * a + c * b];
        }
        for (let k = 0; k < n; k++) {
          const [a, b] = [A[p]![k]!, A[q]![k]!];
          [A[p]![k], A[q]![k]] = [c * a - s * b, s * a + c * b];
          const [d, e] = [V[k]![p]!, V[k]![q]!];
          [V[k]![p], V[k]![q]] = [c * d - s * e, s * d + c * e];
        }
      }
  return { value: A.map((row, i) => row[i]!), vector: V };
}
