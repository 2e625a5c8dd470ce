import { boundedMemo } from './bounded-memo.ts';
import { gaussLegendre } from './gauss-legendre.ts';

/** How an edge is held: free; hinged (w = 0); held (w = 0 and no slope). */
export type EdgeHold = 'free' | 'hinged' | 'held';

/** Polynomials on [-1, 1] that meet the holds at both ends, with their exact Gram matrices (size × size, by rows). */
export interface BeamBasis {
  readonly size: number;
  /** Values (order 0) or derivatives (order 1 to 3) at x in [-1, 1]: Float64Array(size). */
  readonly at: (x: number, order: 0 | 1 | 2 | 3) => Float64Array;
  /** ∫ f_i */
  readonly load: Float64Array;
  /** ∫ f_i f_j, ∫ f_i' f_j', ∫ f_i'' f_j'', ∫ f_i'' f_j */
  readonly values: Float64Array;
  readonly slopes: Float64Array;
  readonly curvatures: Float64Array;
  readonly curvatureByValue: Float64Array;
}

const memo = boundedMemo<BeamBasis>(64);

/** All polynomials up to `degree` (at least 4) with w = 0 and w' = 0 where the ends [-1, +1] ask for it; with `even`
 *  only those that are even in x, which needs equal ends.
 *    ends:   one cubic of unit value (free) and one of unit slope (free, hinged) for each end
 *    inside: f_k'' = √((2k+1)/2) P_k, k ≥ 2, integrated twice from a clamped end: they vanish with their slopes at ±1
 *  The inner functions have orthonormal curvatures, which keeps the plate's matrix well conditioned where plain
 *  Legendre polynomials lose half the digits. Source for the recurrences of P_k: Abramowitz & Stegun, ch. 22. */
export function beamBasis(ends: readonly [EdgeHold, EdgeHold], degree: number, even: boolean): BeamBasis {
  return memo(`${ends.join()} ${degree} ${even}`, () => build(ends, degree, even));
}

type Cubic = readonly [number, number, number, number];
const unitValue: readonly [Cubic, Cubic] = [
  [0.5, -0.75, 0, 0.25],
  [0.5, 0.75, 0, -0.25],
];
const unitSlope: readonly [Cubic, Cubic] = [
  [0.25, -0.25, -0.25, 0.25],
  [-0.25, -0.25, 0.25, 0.25],
];

function build(ends: readonly [EdgeHold, EdgeHold], degree: number, even: boolean): BeamBasis {
  const cubics: Cubic[] = [];
  if (even) {
    if (ends[0] === 'free') cubics.push([1, 0, 0, 0]);
    if (ends[0] !== 'held') cubics.push([0.5, 0, -0.5, 0]);
  } else
    for (const end of [0, 1] as const) {
      if (ends[end] === 'free') cubics.push(unitValue[end]);
      if (ends[end] !== 'held') cubics.push(unitSlope[end]);
    }
  const inner: number[] = [];
  for (let k = 2; k + 2 <= degree; k += even ? 2 : 1) inner.push(k);
  const size = cubics.length + inner.length;

  // Several derivatives are mostly asked for at one x in a row: the polynomials there are kept until the next x.
  let [lastX, lastP] = [0, legendre(degree, 0)];
  const at = (x: number, order: 0 | 1 | 2 | 3): Float64Array => {
    const out = new Float64Array(size);
    cubics.forEach((c, i) => (out[i] = cubicAt(c, x, order)));
    if (x !== lastX) [lastX, lastP] = [x, legendre(degree, x)];
    const P = order === 3 ? legendreSlopes(lastP) : lastP;
    inner.forEach((k, i) => {
      const scale = Math.sqrt(k + 0.5);
      const value =
        order >= 2
          ? P[k]!
          : order === 1
            ? (P[k + 1]! - P[k - 1]!) / (2 * k + 1)
            : ((P[k + 2]! - P[k]!) / (2 * k + 3) - (P[k]! - P[k - 2]!) / (2 * k - 1)) / (2 * k + 1);
      out[cubics.length + i] = scale * value;
    });
    return out;
  };

  const gram = (): Float64Array => new Float64Array(size * size);
  const basis = {
    size,
    at,
    load: new Float64Array(size),
    values: gram(),
    slopes: gram(),
    curvatures: gram(),
    curvatureByValue: gram(),
  };
  const { x, weight } = gaussLegendre(degree + 1);
  for (let p = 0; p < x.length; p++) {
    const [f, g, h] = [at(x[p]!, 0), at(x[p]!, 1), at(x[p]!, 2)];
    for (let i = 0; i < size; i++) {
      basis.load[i]! += weight[p]! * f[i]!;
      for (let j = 0; j < size; j++) {
        const ij = i * size + j;
        basis.values[ij]! += weight[p]! * f[i]! * f[j]!;
        basis.slopes[ij]! += weight[p]! * g[i]! * g[j]!;
        basis.curvatures[ij]! += weight[p]! * h[i]! * h[j]!;
        basis.curvatureByValue[ij]! += weight[p]! * h[i]! * f[j]!;
      }
    }
  }
  return basis;
}

function cubicAt([c0, c1, c2, c3]: Cubic, x: number, order: 0 | 1 | 2 | 3): number {
  if (order === 0) return c0 + x * (c1 + x * (c2 + x * c3));
  if (order === 1) return c1 + x * (2 * c2 + x * 3 * c3);
  return order === 2 ? 2 * c2 + 6 * c3 * x : 6 * c3;
}

function legendre(degree: number, x: number): Float64Array {
  const P = new Float64Array(degree + 1);
  [P[0], P[1]] = [1, x];
  for (let k = 2; k <= degree; k++) P[k] = ((2 * k - 1) * x * P[k - 1]! - (k - 1) * P[k - 2]!) / k;
  return P;
}

/** Slopes of P_0, P_1, … from their values at the same place. */
function legendreSlopes(P: Float64Array): Float64Array {
  const slope = new Float64Array(P.length);
  slope[1] = 1;
  for (let k = 2; k < P.length; k++) slope[k] = slope[k - 2]! + (2 * k - 1) * P[k - 1]!;
  return slope;
}
