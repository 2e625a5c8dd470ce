import { refusal } from '../refusal.ts';
import { centroidOf, type BoltPoint } from './eccentric-group.ts';

const { exp, hypot, abs } = Math;

/** Deformation at which the farthest bolt breaks, in: 0.34 (8.636 mm). Only its product with the law's 10 per inch counts. */
const largestDeformation = 0.34;

/** Force of a bolt over its ultimate shear at a deformation Δ, in: (1 - e^(-10 Δ))^0.55. */
const forceAt = (deformation: number): number => (1 - exp(-10 * deformation)) ** 0.55;

/** A force in the plane of the group: its direction (any length) and a point on its line, m. */
export interface ForceLine {
  readonly direction: readonly [x: number, y: number];
  readonly at: BoltPoint;
}

/** Number of bolts, C, that a group in shear is worth under a force beside its centroid, by the instantaneous centre:
 *    P = C R_ult,   R_i = R_ult (1 - e^(-10 Δ_i))^0.55,   Δ_i = 0.34 in · r_i / r_max,   r from the centre,
 *  the centre being where Σ R_i balances the force in both directions and in its moment. Points in m, any pattern.
 *  A force through the centroid gives the number of bolts. Refuses an empty group, a force of no direction, and a force
 *  beside bolts that all stand on one place. Error: 1e-6 of equilibrium at the most; the bolt law is that of tests on 3/4 in A325
 *  bolts, taken for others as the tables do.
 *  Source: Crawford and Kulak (1971), the law of the AISC Manual, Part 7 (both from memory). */
export function boltGroupCoefficient(bolts: readonly BoltPoint[], { direction, at }: ForceLine): number {
  const [cx, cy] = centroidOf(bolts);
  const size = hypot(...direction);
  if (!(size > 0))
    throw refusal({ what: 'the force has no direction', where: { field: 'direction' }, mend: 'Give it one' });
  const [ux, uy] = [direction[0] / size, direction[1] / size];
  const own = bolts.map(([x, y]) => [x - cx, y - cy] as const);
  const [ax, ay] = [at[0] - cx, at[1] - cy];
  const n = own.length;
  const polar = own.reduce((sum, [x, y]) => sum + x * x + y * y, 0);
  const lever = ax * uy - ay * ux;
  // Below this part of the group's size the lever is rounding.
  if (abs(lever) <= 1e-9 * (Math.sqrt(polar / n) + hypot(ax, ay))) return n;
  if (polar === 0)
    throw refusal({
      what: 'the bolts all stand on one place and cannot carry a moment',
      where: { field: 'bolts' },
      mend: 'Give bolts at two places at least',
    });
  const group: Group = { bolts: own, radius: Math.sqrt(polar / n), along: [ux, uy, lever / Math.sqrt(polar / n)] };
  let work = largestDeformation;
  let z: Pair = [0, 0];
  for (let pass = 0; pass < 200; pass++) {
    const found = balanced(group, work, z);
    const much = found.farthest / largestDeformation;
    if (abs(much - 1) <= 1e-9) return found.P;
    // The centre hardly moves with the size of the motion, so this settles in a few passes.
    work /= much;
    z = [found.z[0] / much, found.z[1] / much];
  }
  throw unsettled();
}

const unsettled = () =>
  refusal({
    what: 'the instantaneous centre of this group of bolts did not settle',
    where: { field: 'bolts' },
    mend: 'Judge it as an elastic group',
  });

type Pair = readonly [number, number];
type Triple = readonly [number, number, number];

interface Group {
  readonly bolts: readonly Pair[];
  /** Radius of gyration: the turn of the group times this is a length like its two shifts. */
  readonly radius: number;
  /** What a shift in x, in y and a turn each add to the way of the unit force. */
  readonly along: Triple;
}

/** The motion that lets the force do this much work (way of the unit force, in) at the least energy in the bolts: there
 *  their forces balance it. The energy is convex, as the law rises, so Newton's steps, cut where they go too far, find it.
 *  z: the two parts of the motion that the force does no work on. */
function balanced({ bolts, radius, along }: Group, work: number, start: Pair) {
  const [b1, b2] = across(along);
  const size = dot(along, along);
  let z = start;
  for (let pass = 0; pass < 400; pass++) {
    const here = pulled(z);
    const g: Pair = [dot(here.G, b1), dot(here.G, b2)];
    if (hypot(...g) <= 1e-12 * hypot(...here.G)) break;
    const [k11, k12, k22] = [dot(times(here.K, b1), b1), dot(times(here.K, b1), b2), dot(times(here.K, b2), b2)];
    const determinant = k11 * k22 - k12 * k12;
    const step: Pair = [(k12 * g[1] - k22 * g[0]) / determinant, (k12 * g[0] - k11 * g[1]) / determinant];
    const slope = g[0] * step[0] + g[1] * step[1];
    let part = 1;
    for (; part > 1e-12; part /= 2) {
      const { G } = pulled([z[0] + part * step[0], z[1] + part * step[1]]);
      if (dot(G, b1) * step[0] + dot(G, b2) * step[1] <= -0.7 * slope) break;
    }
    const next: Pair = [z[0] + part * step[0], z[1] + part * step[1]];
    if (next[0] === z[0] && next[1] === z[1]) break;
    z = next;
  }
  const { G, farthest } = pulled(z);
  const g = hypot(dot(G, b1), dot(G, b2));
  if (!(g <= 1e-6 * hypot(...G))) throw unsettled();
  return { z, farthest, P: dot(G, along) / size };

  /** Forces G of the bolts on shifts and turn, and their rate K, at the motion of z. */
  function pulled([z1, z2]: Pair) {
    const q = along.map((c, k) => (work * c) / size + z1 * b1[k]! + z2 * b2[k]!);
    const G: [number, number, number] = [0, 0, 0];
    const K = [0, 0, 0, 0, 0, 0, 0, 0, 0];
    let farthest = 0;
    for (const [x, y] of bolts) {
      const [tx, ty] = [-y / radius, x / radius];
      const [dx, dy] = [q[0]! + q[2]! * tx, q[1]! + q[2]! * ty];
      // A bolt at the centre itself has no direction: its force is nothing, its stiffness without end.
      const δ = Math.max(hypot(dx, dy), 1e-13);
      if (δ > farthest) farthest = δ;
      const e = exp(-10 * δ);
      const R = forceAt(δ);
      const rise = (5.5 * e * R) / (1 - e);
      const [nx, ny] = [dx / δ, dy / δ];
      const [kxx, kxy, kyy] = [
        (R / δ) * ny * ny + rise * nx * nx,
        (rise - R / δ) * nx * ny,
        (R / δ) * nx * nx + rise * ny * ny,
      ];
      const rows: readonly Pair[] = [[1, 0], [0, 1], [tx, ty]]; // prettier-ignore
      rows.forEach(([px, py], i) => {
        G[i]! += R * (nx * px + ny * py);
        rows.forEach(([sx, sy], j) => (K[3 * i + j]! += kxx * px * sx + kxy * (px * sy + py * sx) + kyy * py * sy));
      });
    }
    return { G: G as Triple, K, farthest };
  }
}

const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const times = (K: readonly number[], v: Triple): Triple => [0, 3, 6].map((i) => K[i]! * v[0] + K[i + 1]! * v[1] + K[i + 2]! * v[2]) as unknown as Triple; // prettier-ignore

/** Two unit vectors square to this one and to each other. */
function across(c: Triple): readonly [Triple, Triple] {
  const flat = hypot(c[0], c[1]);
  const first: Triple = [-c[1] / flat, c[0] / flat, 0];
  const long = hypot(flat, c[2]);
  return [first, [(-c[2] * c[0]) / (flat * long), (-c[2] * c[1]) / (flat * long), flat / long]];
}
