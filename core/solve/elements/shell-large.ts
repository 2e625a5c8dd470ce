import { solveLower, solveUpper } from '../envelope-cholesky.ts';
import { kirchhoffPlace, kirchhoffPoints } from './discrete-kirchhoff.ts';
import { panelAxis, turned } from './in-panel-axes.ts';
import { plateBending } from './plate-bending.ts';
import { plateMembrane } from './plate-membrane.ts';
import { localFromGlobal } from './shell-global.ts';
import { shellShape } from './shell-shape.ts';

/** A flat shell whose deflection stretches it. Works on the element's displacements u (6n, global axes).
 *  respond: internal forces (6n) and their exact derivative, the tangent (6n)².
 *  membraneForces: Nx Ny Nxy (N/m) at the middle and the corners, 3 a place, in the panel's axes. Moments are those of
 *  `shellForces`. Equal shapes of one thickness may share one. */
export interface LargeShell {
  readonly respond: (u: Float64Array) => { readonly force: Float64Array; readonly tangent: Float64Array };
  readonly membraneForces: (u: Float64Array) => Float64Array;
}

/** Von Kármán's strain, ε = ε(u, v) + ½ [w,x²  w,y²  2 w,x w,y], with the slopes of the element's bending (w,x = -βx).
 *  In the hybrid membrane the stress fields see the stretch beside the motion of the sides:
 *    g = G [u v θz] + h(w),  h_k = ∫ P_k · ½(βx², βy², 2βxβy) dA,   energy = ½ t gᵀ H⁻¹ g + ½ t³ (bending)
 *  so one set of fields serves linear, buckling and large-deflection analysis, and the tangent at rest is the linear
 *  stiffness (without warp it is the same matrix). Slopes must stay small beside 1.
 *  Source: T. von Kármán (1910), as in Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 100, from
 *  memory; the hybrid form is ours. */
export function shellLarge(
  xyz: Float64Array,
  { thickness: t, E, nu }: { readonly thickness: number; readonly E: number; readonly nu: number },
  direction: readonly [number, number, number] = [1, 0, 0],
): LargeShell {
  const shape = shellShape(xyz);
  const { count, xy } = shape;
  const [local, width, global] = [3 * count, 6 * count, 6 * count];
  const membrane = plateMembrane(shape, { E, nu });
  const { fields, L, Y, stressFields } = membrane;
  const bending = plateBending(shape, { E, nu });
  // The drilling tie is what the membrane's stiffness has beyond YᵀY.
  const tie = membrane.stiffness.slice();
  for (let i = 0; i < local; i++)
    for (let j = 0; j < local; j++)
      for (let k = 0; k < fields; k++) tie[i * local + j]! -= Y[k * local + i]! * Y[k * local + j]!;
  const points = kirchhoffPoints(count).map((point) => {
    const place = kirchhoffPlace(shape, point);
    let [x, y] = [0, 0];
    for (let i = 0; i < count; i++) {
      x += place.N[i]! * xy[2 * i]!;
      y += place.N[i]! * xy[2 * i + 1]!;
    }
    return { ...place, P: stressFields(x, y) };
  });
  // Local freedoms: [u v θz] of all nodes, then [w θx θy] of all nodes.
  const T = new Float64Array(width * global);
  for (let i = 0; i < count; i++)
    for (const [part, first] of [
      ['membrane', 0],
      ['bending', local],
    ] as const) {
      const rows = localFromGlobal(shape, i, part);
      for (let k = 0; k < 3; k++)
        for (let c = 0; c < 6; c++) T[(first + 3 * i + k) * global + 6 * i + c] = rows[6 * k + c]!;
    }
  const localOf = (u: Float64Array): Float64Array => {
    const out = new Float64Array(width);
    for (let r = 0; r < width; r++) for (let c = 0; c < global; c++) out[r]! += T[r * global + c]! * u[c]!;
    return out;
  };

  /** c = L⁻¹ g, and B = L⁻¹ ∂g (fields × width). */
  const state = (d: Float64Array) => {
    const g = new Float64Array(fields);
    const B = new Float64Array(fields * width);
    for (const { area, βx, βy, P } of points) {
      const [x, y] = slopes(βx, βy, d, local);
      for (let k = 0; k < fields; k++) {
        const [px, py, pxy] = [area * P[3 * k]!, area * P[3 * k + 1]!, area * P[3 * k + 2]!];
        g[k]! += (px * x * x + py * y * y) / 2 + pxy * x * y;
        const [ax, ay] = [px * x + pxy * y, py * y + pxy * x];
        for (let j = 0; j < local; j++) B[k * width + local + j]! += ax * βx[j]! + ay * βy[j]!;
      }
    }
    solveLower(L, g);
    for (let j = local; j < width; j++) {
      const column = solveLower(
        L,
        Float64Array.from({ length: fields }, (_, k) => B[k * width + j]!),
      );
      column.forEach((value, k) => (B[k * width + j] = value));
    }
    for (let k = 0; k < fields; k++)
      for (let j = 0; j < local; j++) {
        B[k * width + j] = Y[k * local + j]!;
        g[k]! += Y[k * local + j]! * d[j]!;
      }
    return { c: g, B };
  };
  const stressAt = (β: Float64Array, P: readonly number[]): readonly [number, number, number] => {
    const σ: [number, number, number] = [0, 0, 0];
    for (let k = 0; k < fields; k++) for (let r = 0; r < 3; r++) σ[r]! += P[3 * k + r]! * β[k]!;
    return σ;
  };

  const respond = (u: Float64Array) => {
    const d = localOf(u);
    const { c, B } = state(d);
    const f = new Float64Array(width);
    const K = new Float64Array(width * width);
    for (let k = 0; k < fields; k++)
      for (let i = 0; i < width; i++) {
        const b = t * B[k * width + i]!;
        f[i]! += b * c[k]!;
        for (let j = 0; j < width; j++) K[i * width + j]! += b * B[k * width + j]!;
      }
    const cubed = t ** 3;
    for (let i = 0; i < local; i++)
      for (let j = 0; j < local; j++) {
        const [m, b] = [t * tie[i * local + j]!, cubed * bending[i * local + j]!];
        f[i]! += m * d[j]!;
        f[local + i]! += b * d[local + j]!;
        K[i * width + j]! += m;
        K[(local + i) * width + local + j]! += b;
      }
    const β = solveUpper(L, c.slice());
    for (const { area, βx, βy, P } of points) {
      const [Nx, Ny, Nxy] = stressAt(β, P).map((σ) => t * area * σ) as [number, number, number];
      for (let i = 0; i < local; i++) {
        const [x, y] = [Nx * βx[i]! + Nxy * βy[i]!, Nxy * βx[i]! + Ny * βy[i]!];
        const row = (local + i) * width + local;
        for (let j = 0; j < local; j++) K[row + j]! += x * βx[j]! + y * βy[j]!;
      }
    }
    return { force: transposed(T, f, width, global), tangent: congruent(T, K, width, global) };
  };
  const [cosine, sine] = panelAxis(shape, direction);
  const membraneForces = (u: Float64Array): Float64Array => {
    const β = solveUpper(L, state(localOf(u)).c);
    const places = [[0, 0], ...Array.from({ length: count }, (_, i) => [xy[2 * i]!, xy[2 * i + 1]!])];
    return Float64Array.from(
      places.flatMap(([x, y]) => turned(...stressAt(β, stressFields(x!, y!)), cosine, sine).map((σ) => t * σ)),
    );
  };
  return { respond, membraneForces };
}

/** βx and βy at a place. */
function slopes(βx: Float64Array, βy: Float64Array, d: Float64Array, first: number): readonly [number, number] {
  let [x, y] = [0, 0];
  for (let j = 0; j < βx.length; j++) {
    x += βx[j]! * d[first + j]!;
    y += βy[j]! * d[first + j]!;
  }
  return [x, y];
}

function transposed(T: Float64Array, f: Float64Array, width: number, global: number): Float64Array {
  const out = new Float64Array(global);
  for (let r = 0; r < width; r++) for (let c = 0; c < global; c++) out[c]! += T[r * global + c]! * f[r]!;
  return out;
}

/** Tᵀ K T, exactly symmetric; T has few entries other than zero. */
function congruent(T: Float64Array, K: Float64Array, width: number, global: number): Float64Array {
  const KT = new Float64Array(width * global);
  for (let k = 0; k < width; k++)
    for (let c = 0; c < global; c++) {
      const value = T[k * global + c]!;
      if (value !== 0) for (let r = 0; r < width; r++) KT[r * global + c]! += K[r * width + k]! * value;
    }
  const out = new Float64Array(global * global);
  for (let k = 0; k < width; k++)
    for (let r = 0; r < global; r++) {
      const value = T[k * global + r]!;
      if (value !== 0) for (let c = 0; c < global; c++) out[r * global + c]! += value * KT[k * global + c]!;
    }
  for (let r = 0; r < global; r++) for (let c = 0; c < r; c++) out[c * global + r] = out[r * global + c]!;
  return out;
}
