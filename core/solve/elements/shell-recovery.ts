import { solveUpper } from '../envelope-cholesky.ts';
import { kirchhoffPlace, kirchhoffPoints } from './discrete-kirchhoff.ts';
import { panelAxis, turned } from './in-panel-axes.ts';
import { plateMembrane } from './plate-membrane.ts';
import { localFromGlobal } from './shell-global.ts';
import { shellShape } from './shell-shape.ts';
import type { ShellShape } from './shell-shape.ts';

/** What turns an element's displacements into its forces, for a thickness of 1 m. Equal shapes may share one.
 *  places: the middle, then the corners in their order: n + 1. membrane: N = t membrane u, bending: M = t³ bending u,
 *  each (3 places) × 6n by rows: x, y, xy of each place in the panel's axes, over the nodes' global freedoms. */
export interface ShellRecovery {
  readonly places: number;
  readonly membrane: Float64Array;
  readonly bending: Float64Array;
}

/** Forces per width at the places of a shell element: Nx Ny Nxy (N/m, tension positive), Mx My Mxy (N, positive where
 *  the side of +z is pulled), six a place, in the panel's axes: x along a given direction laid on the element, z by the
 *  order of its nodes (anticlockwise seen from +z). Membrane stress is the element's own field; moments are taken at
 *  its integration points, where they are best, and carried to the corners by a bilinear (three nodes: linear) field. */
export function shellRecovery(
  xyz: Float64Array,
  { E, nu }: { readonly E: number; readonly nu: number },
  direction: readonly [number, number, number] = [1, 0, 0],
): ShellRecovery {
  const shape = shellShape(xyz);
  const turn = panelAxis(shape, direction);
  return {
    places: shape.count + 1,
    membrane: overGlobal(shape, 'membrane', turn, membraneRows(shape, { E, nu })),
    bending: overGlobal(shape, 'bending', turn, momentRows(shape, { E, nu })),
  };
}

/** The forces themselves, 6 a place, under the element's displacements u (6n, global axes). */
export function shellForces(
  { places, membrane, bending }: ShellRecovery,
  thickness: number,
  u: Float64Array,
): Float64Array {
  const out = new Float64Array(6 * places);
  const width = u.length;
  const [t, cubed] = [thickness, thickness ** 3];
  for (let row = 0; row < 3 * places; row++) {
    let [N, M] = [0, 0];
    for (let c = 0; c < width; c++) {
      N += membrane[row * width + c]! * u[c]!;
      M += bending[row * width + c]! * u[c]!;
    }
    const place = 6 * Math.floor(row / 3) + (row % 3);
    out[place] = t * N;
    out[place + 3] = cubed * M;
  }
  return out;
}

/** Stress rows of the hybrid field at the middle and the corners: 3 (n + 1) × 3n. */
function membraneRows(shape: ShellShape, material: { E: number; nu: number }): Float64Array {
  const { fields, L, Y, stressFields } = plateMembrane(shape, material);
  const width = 3 * shape.count;
  const rows = new Float64Array(3 * (shape.count + 1) * width);
  const P = placesOf(shape).map(([x, y]) => stressFields(x, y));
  for (let c = 0; c < width; c++) {
    const β = solveUpper(
      L,
      Float64Array.from({ length: fields }, (_, k) => Y[k * width + c]!),
    );
    P.forEach((field, place) => {
      for (let k = 0; k < fields; k++)
        for (let r = 0; r < 3; r++) rows[(3 * place + r) * width + c]! += field[3 * k + r]! * β[k]!;
    });
  }
  return rows;
}

function placesOf({ count, xy }: ShellShape): readonly (readonly [number, number])[] {
  const corners = Array.from({ length: count }, (_, i) => [xy[2 * i]!, xy[2 * i + 1]!] as const);
  const middle = [0, 1].map((k) => corners.reduce((sum, corner) => sum + corner[k as 0 | 1], 0) / count);
  return [[middle[0]!, middle[1]!], ...corners];
}

/** Moment rows for 1 m of thickness at the middle and the corners, from the integration points: 3 (n + 1) × 3n. */
function momentRows(shape: ShellShape, { E, nu }: { E: number; nu: number }): Float64Array {
  const width = 3 * shape.count;
  const D = E / (12 * (1 - nu * nu));
  const points = kirchhoffPoints(shape.count).map((point) => kirchhoffPlace(shape, point).κ);
  const rows = new Float64Array(3 * (shape.count + 1) * width);
  carry[shape.count].forEach((weights, place) =>
    weights.forEach((weight, p) => {
      const κ = points[p]!;
      for (let c = 0; c < width; c++) {
        const [a, b, twist] = [κ[c]!, κ[width + c]!, κ[2 * width + c]!];
        rows[3 * place * width + c]! += weight * D * (a + nu * b);
        rows[(3 * place + 1) * width + c]! += weight * D * (b + nu * a);
        rows[(3 * place + 2) * width + c]! += (weight * D * (1 - nu) * twist) / 2;
      }
    }),
  );
  return rows;
}

const [near, beside, far] = [1 + Math.sqrt(3) / 2, -0.5, 1 - Math.sqrt(3) / 2];
/** Weights of the integration points at the middle and at each corner. */
const carry = {
  4: [
    [0.25, 0.25, 0.25, 0.25],
    [near, beside, far, beside],
    [beside, near, beside, far],
    [far, beside, near, beside],
    [beside, far, beside, near],
  ],
  // Points: middles of sides 0–1, 1–2, 2–0.
  3: [
    [1 / 3, 1 / 3, 1 / 3],
    [1, -1, 1],
    [1, 1, -1],
    [-1, 1, 1],
  ],
} as const;

/** Rows x, y, xy over local freedoms (3n) into rows in the panel's axes over global freedoms (6n). */
function overGlobal(
  shape: ShellShape,
  part: 'membrane' | 'bending',
  [c, s]: readonly [number, number],
  rows: Float64Array,
): Float64Array {
  const { count } = shape;
  const [local, global] = [3 * count, 6 * count];
  const height = rows.length / local;
  const out = new Float64Array(height * global);
  for (let i = 0; i < count; i++) {
    const T = localFromGlobal(shape, i, part);
    for (let place = 0; place < height; place += 3)
      for (let f = 0; f < 6; f++) {
        const at = (r: number): number => {
          let sum = 0;
          for (let k = 0; k < 3; k++) sum += rows[(place + r) * local + 3 * i + k]! * T[6 * k + f]!;
          return sum;
        };
        turned(at(0), at(1), at(2), c, s).forEach((value, r) => (out[(place + r) * global + 6 * i + f] = value));
      }
  }
  return out;
}
