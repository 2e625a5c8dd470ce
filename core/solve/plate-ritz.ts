import { beamBasis, type BeamBasis, type EdgeHold } from './beam-basis.ts';
import { envelope, envelopeCholesky, solveLower, solveUpper } from './envelope-cholesky.ts';
import type { PlateField } from './plate-shape.ts';

/** A plate in units where a = D = q = 1: b/a, ν, the holds of its four edges, points [x/a, y/a] where w = 0, and beams
 *  of bending stiffness `edgeBeam` = E I / (a D) under all free edges. */
export interface RitzPlate {
  readonly ratio: number;
  readonly nu: number;
  readonly edges: PlateEdges;
  readonly points: readonly (readonly [number, number])[];
  readonly edgeBeam?: number;
}

export interface PlateEdges {
  readonly x0: EdgeHold;
  readonly xa: EdgeHold;
  readonly y0: EdgeHold;
  readonly yb: EdgeHold;
}

type Order = 0 | 1 | 2 | 3;

export interface RitzSolution {
  /** ∂^p/∂x^p ∂^s/∂y^s of w at every pair of xs and ys (in units of a): Float64Array(xs × ys), ys running fastest. */
  readonly derivative: (xs: ArrayLike<number>, ys: ArrayLike<number>, p: Order, s: Order) => Float64Array;
  readonly field: (columns: number, rows: number) => PlateField;
  /** Force of each point on the plate, against q, in units of q a². */
  readonly reactions: Float64Array;
  /** True where the plate mirrors about its middle, so that one half tells all. */
  readonly mirrors: { readonly x: boolean; readonly y: boolean };
}

/** Stiffness that the points get beside their exact constraint, so that the free plate's matrix can be factored. The
 *  answer does not depend on it (w = 0 there, so it stores no energy): any size near the plate's own serves. */
const penalty = 1e3;

/** Deflection of a Kirchhoff plate by Ritz's method: the polynomial of degree (degreeX, degreeY) that makes
 *    U = ½ ∫∫ w_xx² + w_yy² + 2ν w_xx w_yy + 2(1-ν) w_xy² - ∫∫ w
 *  least, with w = 0 at the points by Lagrange multipliers, which are the reactions. Where edges and points mirror
 *  about a middle line, only polynomials that are even about it take part.
 *  Unknowns: n = sizeX × sizeY, full Cholesky, n³/6 multiplications. Gives null when the points ask for more than these
 *  polynomials can do. Error: exact equilibrium; moments converge fast without points, slowly (like 1/degree) close to
 *  them, because a point force makes them infinite. Source: T&WK, Theory of Plates and Shells, 2nd ed., art. 80. */
export function plateRitz(plate: RitzPlate, degreeX: number, degreeY: number): RitzSolution | null {
  const { ratio, nu, edges, points, edgeBeam = 0 } = plate;
  const mirrors = mirrorsOf(plate);
  const X = beamBasis([edges.x0, edges.xa], degreeX, mirrors.x);
  const Y = beamBasis([edges.y0, edges.yb], degreeY, mirrors.y);
  const n = X.size * Y.size;
  const valueAt = (x: number, y: number): Float64Array => outer(X.at(2 * x - 1, 0), Y.at((2 * y) / ratio - 1, 0));

  // One of each set of mirrored points stands for all of them; its multiplier is the sum of their reactions.
  const standIn = points.map(([x, y]) =>
    find(points, mirrors.x ? Math.min(x, 1 - x) : x, mirrors.y ? Math.min(y, ratio - y) : y),
  );
  const own = [...new Set(standIn)];
  const B = own.map((p) => valueAt(...points[p]!));

  const K = envelope(new Int32Array(n));
  assemble(K.entries, X, Y, ratio, nu);
  if (edgeBeam > 0) addEdgeBeams(K.entries, X, Y, plate, edgeBeam);
  for (const b of B)
    for (let i = 0, ij = 0; i < n; i++) for (let j = 0; j <= i; j++) K.entries[ij++]! += penalty * b[i]! * b[j]!;
  if (envelopeCholesky(K) >= 0) return null;

  const w = outer(X.load, Y.load).map((value) => (value * ratio) / 4);
  solveLower(K, w);
  const Z = B.map((b) => solveLower(K, b)); // Z ← L⁻¹ Bᵀ
  const S = envelope(new Int32Array(own.length));
  Z.forEach((z, i) => {
    for (let j = 0; j <= i; j++) S.entries[S.start[i]! + j] = dot(z, Z[j]!);
  });
  if (envelopeCholesky(S) >= 0) return null;
  const force = solveUpper(
    S,
    solveLower(
      S,
      Float64Array.from(Z, (z) => dot(z, w)),
    ),
  ); // S λ = B K⁻¹ f
  Z.forEach((z, i) => z.forEach((value, k) => (w[k]! -= force[i]! * value)));
  solveUpper(K, w);

  const reactions = Float64Array.from(standIn, (p) => force[own.indexOf(p)]! / standIn.filter((s) => s === p).length);
  const derivative: RitzSolution['derivative'] = (xs, ys, p, s) => combine(w, X, Y, ratio, xs, ys, p, s);
  return { derivative, reactions, mirrors, field: (columns, rows) => fieldOf(derivative, ratio, nu, columns, rows) };
}

/** Whether edges and points mirror about the middle across x, and across y. */
export const mirrorsOf = ({ ratio, edges, points }: RitzPlate): { readonly x: boolean; readonly y: boolean } => ({
  x: edges.x0 === edges.xa && points.every(([x, y]) => find(points, 1 - x, y) >= 0),
  y: edges.y0 === edges.yb && points.every(([x, y]) => find(points, x, ratio - y) >= 0),
});

const find = (points: RitzPlate['points'], x: number, y: number): number =>
  points.findIndex(([px, py]) => Math.abs(px - x) < 1e-9 && Math.abs(py - y) < 1e-9);

function outer(f: Float64Array, g: Float64Array): Float64Array {
  const out = new Float64Array(f.length * g.length);
  f.forEach((value, i) => g.forEach((other, j) => (out[i * g.length + j] = value * other)));
  return out;
}

function dot(x: Float64Array, y: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < x.length; i++) sum += x[i]! * y[i]!;
  return sum;
}

/** Lower triangle of K, by rows. Derivatives on [-1, 1] scale by 2 along x and by 2/ratio along y, the area by ratio/4. */
function assemble(K: Float64Array, X: BeamBasis, Y: BeamBasis, ratio: number, nu: number): void {
  const [xx, yy, both] = [4 * ratio, 4 / ratio ** 3, 4 / ratio];
  let ij = 0;
  for (let i = 0; i < X.size; i++)
    for (let j = 0; j < Y.size; j++)
      for (let k = 0; k <= i; k++)
        for (let l = 0; l < (k < i ? Y.size : j + 1); l++) {
          const [ik, jl, ki, lj] = [i * X.size + k, j * Y.size + l, k * X.size + i, l * Y.size + j];
          K[ij++] =
            xx * X.curvatures[ik]! * Y.values[jl]! +
            yy * X.values[ik]! * Y.curvatures[jl]! +
            both *
              nu *
              (X.curvatureByValue[ik]! * Y.curvatureByValue[lj]! + X.curvatureByValue[ki]! * Y.curvatureByValue[jl]!) +
            both * 2 * (1 - nu) * X.slopes[ik]! * Y.slopes[jl]!;
        }
}

/** Adds ½ g ∫ w_ss² along each free edge. */
function addEdgeBeams(K: Float64Array, X: BeamBasis, Y: BeamBasis, { ratio, edges }: RitzPlate, g: number): void {
  const onX = [edges.x0 === 'free' ? X.at(-1, 0) : null, edges.xa === 'free' ? X.at(1, 0) : null];
  const onY = [edges.y0 === 'free' ? Y.at(-1, 0) : null, edges.yb === 'free' ? Y.at(1, 0) : null];
  const n = X.size * Y.size;
  for (let r = 0, rc = 0; r < n; r++)
    for (let c = 0; c <= r; c++, rc++) {
      const [i, j, k, l] = [Math.floor(r / Y.size), r % Y.size, Math.floor(c / Y.size), c % Y.size];
      for (const f of onX) if (f) K[rc]! += g * f[i]! * f[k]! * Y.curvatures[j * Y.size + l]! * (2 / ratio) ** 3;
      for (const f of onY) if (f) K[rc]! += g * f[j]! * f[l]! * X.curvatures[i * X.size + k]! * 8;
    }
}

function combine(
  w: Float64Array,
  X: BeamBasis,
  Y: BeamBasis,
  ratio: number,
  xs: ArrayLike<number>,
  ys: ArrayLike<number>,
  p: Order,
  s: Order,
): Float64Array {
  const scale = 2 ** p * (2 / ratio) ** s;
  const g = Array.from(ys, (y) => Y.at((2 * y) / ratio - 1, s));
  const out = new Float64Array(xs.length * ys.length);
  const line = new Float64Array(Y.size);
  for (let c = 0; c < xs.length; c++) {
    const f = X.at(2 * xs[c]! - 1, p);
    line.fill(0);
    for (let i = 0, ij = 0; i < X.size; i++) {
      const factor = scale * f[i]!;
      for (let j = 0; j < Y.size; j++) line[j]! += factor * w[ij++]!;
    }
    for (let r = 0; r < ys.length; r++) out[c * ys.length + r] = dot(line, g[r]!);
  }
  return out;
}

function fieldOf(
  derivative: RitzSolution['derivative'],
  ratio: number,
  nu: number,
  columns: number,
  rows: number,
): PlateField {
  const xs = Float64Array.from({ length: columns }, (_, i) => i / (columns - 1));
  const ys = Float64Array.from({ length: rows }, (_, j) => (j / (rows - 1)) * ratio);
  const [xx, yy, xy] = [derivative(xs, ys, 2, 0), derivative(xs, ys, 0, 2), derivative(xs, ys, 1, 1)];
  return {
    columns,
    rows,
    w: derivative(xs, ys, 0, 0),
    Mx: xx.map((value, i) => -(value + nu * yy[i]!)),
    My: yy.map((value, i) => -(value + nu * xx[i]!)),
    Mxy: xy.map((value) => -(1 - nu) * value),
  };
}
