import { envelope, envelopeCholesky } from '../envelope-cholesky.ts';
import type { Envelope } from '../envelope-cholesky.ts';
import { gaussLegendre } from '../gauss-legendre.ts';
import { cornerShares } from './corner-shares.ts';
import type { ShellShape } from './shell-shape.ts';

/** In-plane stiffness of a flat element for a thickness of 1 m, and the stress fields behind it.
 *  stiffness: (3n)², freedoms [u v θz] of each node in local axes; times t for a thickness t.
 *  fields: how many stress fields. L: Cholesky factor of their flexibility H. Y: L⁻¹ G, fields × 3n.
 *  stressFields: σx, σy, τxy of each field at (x, y) of the element's plane, 3 a field; stress is Σ field β with
 *  Lᵀ β = Y [u v θz]. */
export interface PlateMembrane {
  readonly stiffness: Float64Array;
  readonly fields: number;
  readonly L: Envelope;
  readonly Y: Float64Array;
  readonly stressFields: (x: number, y: number) => readonly number[];
}

/** Hybrid stress element with drilling freedoms. Stress inside is a combination of fields that are in equilibrium
 *  (three constant, four linear and, for four nodes, the two quadratic ones of Airy's x⁴ - y⁴ and x³y + xy³, a pair that
 *  turning the axes maps into itself, and which are compatible too); displacement on each side is linear, with a parabola
 *  across the side from the difference of the drilling rotations (Allman's):
 *    u = (1-s) u_i + s u_j + n (L/2) s (1-s) (θ_j - θ_i),    K = Gᵀ H⁻¹ G,   H = ∫ Pᵀ S P dA,   G = ∮ (P n)·u ds
 *  It is exact for constant strain on any shape and, at nu = 0, for pure bending of a rectangle at any aspect (within 2 % at
 *  0.3: the side does not follow the curvature across). Equal drilling of all
 *  nodes moves no side, so the mean drilling is tied to the mean rotation of the outline with the shear stiffness, the
 *  consistent term of Hughes and Brezzi taken once an element:  + G A (∫Nθ/A - ∮(v nx - u ny)/2A)².
 *  Turned down: bilinear displacement with incompatible modes, which locks as a trapezium (under a tenth of the
 *  deflection of MacNeal & Harder's trapezoidal cantilever, from memory; this one gives 0.97), and
 *  Allman's own displacement element, stiffer and with more drilling modes to mend. Price: on a doubly curved mesh of
 *  facets bending leaks into the drilling freedoms and it converges later (hemisphere 8 × 8: 0.68, 16 × 16: 0.97);
 *  panels and tube walls are flat.
 *  Source: T. H. H. Pian, AIAA J. 2 (1964) 1333 (hybrid stress); D. J. Allman, Comp. & Struct. 19 (1984) 1; T. J. R.
 *  Hughes & F. Brezzi, Comp. Meth. Appl. Mech. Eng. 72 (1989) 105; all from memory. Choice of fields: ours. */
export function plateMembrane(shape: ShellShape, { E, nu }: { E: number; nu: number }): PlateMembrane {
  const { count, area } = shape;
  const fields = count === 4 ? 9 : 7;
  const width = 3 * count;
  // Lengths by the element's size, so that the fields are of one magnitude.
  const size = Math.sqrt(area);
  const L = flexibility(shape, fields, size, { E, nu });
  const Y = sideWork(shape, fields, size);
  // Y ← L⁻¹ G, row by row
  for (let i = 0; i < fields; i++)
    for (let c = 0; c < width; c++) {
      let sum = Y[i * width + c]!;
      for (let k = 0; k < i; k++) sum -= L.entries[L.start[i]! + k]! * Y[k * width + c]!;
      Y[i * width + c] = sum / L.entries[L.start[i]! + i]!;
    }
  const K = new Float64Array(width * width);
  const drilling = drillingMismatch(shape);
  const tie = (E / (2 * (1 + nu))) * area;
  for (let i = 0; i < width; i++)
    for (let j = 0; j <= i; j++) {
      let sum = tie * drilling[i]! * drilling[j]!;
      for (let k = 0; k < fields; k++) sum += Y[k * width + i]! * Y[k * width + j]!;
      K[i * width + j] = K[j * width + i] = sum;
    }
  return { stiffness: K, fields, L, Y, stressFields: (x, y) => stressFields(x / size, y / size) };
}

/** σx σy τ of each field at (x, y), 3 a field; Airy's functions y²/2, x²/2, -xy, y³/6, x³/6, x²y/2, xy²/2, … */
// prettier-ignore
const stressFields = (x: number, y: number): readonly number[] => [
  1, 0, 0,   0, 1, 0,   0, 0, 1,
  y, 0, 0,   0, x, 0,   0, y, -x,   x, 0, -y,
  -y * y, x * x, 0,   x * y, x * y, -(x * x + y * y) / 2,
];

const side = gaussLegendre(3);

/** Cholesky factor of H = ∫ Pᵀ S P dA. Three points each way are exact for four nodes (degree 5 each way); a triangle
 *  is taken as a square folded onto it, exact as well. */
function flexibility(
  { count, xy }: ShellShape,
  fields: number,
  size: number,
  { E, nu }: { E: number; nu: number },
): Envelope {
  const H = envelope(new Int32Array(fields));
  for (let a = 0; a < 3; a++)
    for (let b = 0; b < 3; b++) {
      const [ξ, η] = [side.x[a]!, side.x[b]!];
      const corners = [(1 - ξ) * (1 - η), (1 + ξ) * (1 - η), (1 + ξ) * (1 + η), (1 - ξ) * (1 + η)];
      const [byξ, byη] = [
        [-(1 - η), 1 - η, 1 + η, -(1 + η)],
        [-(1 - ξ), -(1 + ξ), 1 + ξ, 1 - ξ],
      ];
      let [x, y, xξ, xη, yξ, yη] = [0, 0, 0, 0, 0, 0];
      for (let i = 0; i < 4; i++) {
        const node = 2 * Math.min(i, count - 1);
        x += (corners[i]! * xy[node]!) / 4;
        y += (corners[i]! * xy[node + 1]!) / 4;
        xξ += (byξ[i]! * xy[node]!) / 4;
        xη += (byη[i]! * xy[node]!) / 4;
        yξ += (byξ[i]! * xy[node + 1]!) / 4;
        yη += (byη[i]! * xy[node + 1]!) / 4;
      }
      const weight = (side.weight[a]! * side.weight[b]! * (xξ * yη - xη * yξ)) / E;
      const P = stressFields(x / size, y / size);
      for (let i = 0; i < fields; i++) {
        const [p, q, r] = [P[3 * i]!, P[3 * i + 1]!, P[3 * i + 2]!];
        const [εx, εy, γ] = [p - nu * q, q - nu * p, 2 * (1 + nu) * r];
        for (let j = 0; j <= i; j++)
          H.entries[H.start[i]! + j]! += weight * (εx * P[3 * j]! + εy * P[3 * j + 1]! + γ * P[3 * j + 2]!);
      }
    }
  if (envelopeCholesky(H, 1e-14) !== -1)
    throw new Error('The stress fields of a membrane element depend on each other');
  return H;
}

/** G: fields × 3n, work of the fields' tractions on the displacement of the sides. */
function sideWork({ count, xy }: ShellShape, fields: number, size: number): Float64Array {
  const width = 3 * count;
  const G = new Float64Array(fields * width);
  for (let i = 0; i < count; i++) {
    const j = (i + 1) % count;
    const [dx, dy] = [xy[2 * j]! - xy[2 * i]!, xy[2 * j + 1]! - xy[2 * i + 1]!];
    for (let p = 0; p < 3; p++) {
      const s = (1 + side.x[p]!) / 2;
      const P = stressFields((xy[2 * i]! + s * dx) / size, (xy[2 * i + 1]! + s * dy) / size);
      const bow = (s * (1 - s)) / 2; // of n L, outward, for θ_j - θ_i = 1
      for (let k = 0; k < fields; k++) {
        // Traction times the length of side: n L = (dy, -dx).
        const half = side.weight[p]! / 2;
        const fx = half * (P[3 * k]! * dy - P[3 * k + 2]! * dx);
        const fy = half * (P[3 * k + 2]! * dy - P[3 * k + 1]! * dx);
        const across = bow * (fx * dy - fy * dx);
        const row = k * width;
        G[row + 3 * i]! += (1 - s) * fx;
        G[row + 3 * i + 1]! += (1 - s) * fy;
        G[row + 3 * i + 2]! -= across;
        G[row + 3 * j]! += s * fx;
        G[row + 3 * j + 1]! += s * fy;
        G[row + 3 * j + 2]! += across;
      }
    }
  }
  return G;
}

/** Row (3n) of the mean drilling rotation less the mean rotation of the outline; zero for every linear rotation. */
function drillingMismatch(shape: ShellShape): Float64Array {
  const { count, xy, area } = shape;
  const row = new Float64Array(3 * count);
  const share = cornerShares(shape);
  for (let i = 0; i < count; i++) {
    const [j, h] = [(i + 1) % count, (i + count - 1) % count];
    // ∮ N_i n ds = half the two sides' n L
    row[3 * i] = -(xy[2 * j]! - xy[2 * h]!) / (4 * area);
    row[3 * i + 1] = -(xy[2 * j + 1]! - xy[2 * h + 1]!) / (4 * area);
    row[3 * i + 2] = share[i]! / area;
  }
  return row;
}
