import { eliminate } from '../eliminate.ts';
import { inertiaForces, type PointMass } from './lumped-mass.ts';
import { addScaled, dot, leastResisted, overMass, rigidMass } from './rigid-mass.ts';
import { addPointForce, addRigidMotion, pointMotion, resultantOf } from './point-force.ts';
import type { SupportPart } from './structure.ts';

/** A structure that nothing holds, ready to be solved under loads that balance themselves. */
export interface FreeStructure {
  readonly coordinates: Float64Array;
  readonly masses: readonly PointMass[];
  /** Displacements, 6N, under loads whose resultant is nil; a rigid motion is left open (any may come). */
  readonly solve: (f: Float64Array) => Float64Array;
}

export interface HeldAnswer {
  readonly u: Float64Array;
  /** Vertical part of each support's force on the structure, N up, in the order of the supports; 0 where it is not there or slack. */
  readonly forces: Float64Array;
  /** Supports that are there but had to let go. */
  readonly slack: readonly number[];
  /** Acceleration of the origin and of turning that the inertia balances, m/s² and rad/s². Zero but for round-off where the supports balance all. */
  readonly acceleration: Float64Array;
  /** Loads, forces of supports and inertia together, 6N: what the structure was solved under. */
  readonly loads: Float64Array;
}

/**
 * A structure under loads f (6N) on supports that carry along their own lines, and inertia for what they cannot balance.
 * Unknown: the supports' forces V and a rigid motion q. With u_f and u_i the motions under f and under each support's
 * unit force, both balanced by inertia, and T the resultants of the unit forces:
 *    s_i · (u_f + Σ V_j u_j + R q) = 0,   and the resultant left over lies where no support can act.
 * What is left over is balanced by inertia alone: with no supports this is inertia relief, and no support is invented.
 * A support that would push where it can only pull is left out; one left out that would be stretched comes back.
 */
export function heldStructure(
  free: FreeStructure,
  f: Float64Array,
  supports: readonly SupportPart[],
  present: readonly number[],
  oneWay: boolean,
): HeldAnswer {
  const { coordinates, masses, solve } = free;
  const M = rigidMass(coordinates, masses);
  const relieved = (loads: Float64Array): Float64Array => {
    const inertia = inertiaForces({ coordinates }, masses, overMass(M, resultantOf(coordinates, loads)));
    return loads.map((value, i) => value + inertia[i]!);
  };
  const unit = supports.map(({ node, offset, direction }) => {
    const load = new Float64Array(f.length);
    addPointForce(load, node, offset, direction);
    return load;
  });
  const T = unit.map((load) => resultantOf(coordinates, load));
  const own = solve(relieved(f));
  const byUnit = new Map(present.map((i) => [i, solve(relieved(unit[i]!))]));
  const along = ({ node, offset, direction }: SupportPart, u: Float64Array): number => {
    const [x, y, z] = pointMotion(u, node, offset);
    return x * direction[0] + y * direction[1] + z * direction[2];
  };
  const total = resultantOf(coordinates, f);

  const attempt = (active: readonly number[]): { V: Float64Array; q: Float64Array; rank: number } => {
    // basis of what the active supports resist, orthonormal in the inverse of the mass
    const basis: Float64Array[] = [];
    for (const i of active) {
      const t = Float64Array.from(T[i]!);
      const before = Math.sqrt(dot(t, overMass(M, t)));
      for (const b of basis) addScaled(t, b, -dot(b, overMass(M, t)));
      const size = Math.sqrt(Math.max(dot(t, overMass(M, t)), 0));
      if (size > leastResisted * before) basis.push(t.map((value) => value / size));
    }
    const n = active.length;
    const r = basis.length;
    const rows = Array.from({ length: n + r }, () => new Float64Array(n + r + 1));
    const duals = basis.map((b) => overMass(M, b));
    const scale = Math.max(...active.map((i) => Math.abs(along(supports[i]!, byUnit.get(i)!))), 0) || 1;
    active.forEach((i, k) => {
      active.forEach((j, l) => (rows[k]![l] = along(supports[i]!, byUnit.get(j)!) / scale));
      duals.forEach((d, l) => (rows[k]![n + l] = rows[n + l]![k] = dot(T[i]!, d)));
      rows[k]![n + r] = -along(supports[i]!, own) / scale;
    });
    duals.forEach((d, l) => (rows[n + l]![n + r] = -dot(total, d)));
    const x = n > 0 ? eliminate(rows) : new Float64Array(0);
    const q = new Float64Array(6);
    duals.forEach((d, l) => addScaled(q, d, x[n + l]! * scale));
    return { V: x.slice(0, n), q, rank: r };
  };

  let active = [...present];
  let answer = attempt(active);
  const whole = answer.rank;
  for (let round = 0; oneWay && round <= 2 * present.length; round++) {
    const most = answer.V.reduce((m, v) => Math.max(m, Math.abs(v)), 0);
    const pushed = leastOf(answer.V);
    if (pushed >= 0 && answer.V[pushed]! < -1e-9 * most) active = active.filter((_, k) => k !== pushed);
    else {
      // with fewer motions resisted than at first, the plate turns freely: how far is not known, nor what it tightens
      if (answer.rank < whole) break;
      const u = motionOf(own, byUnit, active, answer, coordinates);
      const stretched = present.filter((i) => !active.includes(i) && along(supports[i]!, u) < -1e-9 * largest(u));
      if (stretched.length === 0) break;
      active = [...active, stretched[0]!].sort((a, b) => a - b);
    }
    answer = attempt(active);
  }

  const forces = new Float64Array(supports.length);
  active.forEach((i, k) => (forces[i] = answer.V[k]!));
  const resultant = Float64Array.from(total);
  active.forEach((i, k) => addScaled(resultant, T[i]!, answer.V[k]!));
  const acceleration = overMass(M, resultant);
  const loads = Float64Array.from(f);
  active.forEach((i, k) => addScaled(loads, unit[i]!, answer.V[k]!));
  addScaled(loads, inertiaForces({ coordinates }, masses, acceleration), 1);
  return {
    u: motionOf(own, byUnit, active, answer, coordinates),
    forces,
    slack: present.filter((i) => !active.includes(i)),
    acceleration,
    loads,
  };
}

function motionOf(
  own: Float64Array,
  byUnit: ReadonlyMap<number, Float64Array>,
  active: readonly number[],
  { V, q }: { readonly V: Float64Array; readonly q: Float64Array },
  coordinates: Float64Array,
): Float64Array {
  const u = Float64Array.from(own);
  active.forEach((i, k) => addScaled(u, byUnit.get(i)!, V[k]!));
  addRigidMotion(coordinates, q, u);
  return u;
}

const leastOf = (V: Float64Array): number => V.reduce((best, v, i) => (best < 0 || v < V[best]! ? i : best), -1);
const largest = (u: Float64Array): number => u.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
