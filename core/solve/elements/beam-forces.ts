import { gaussLegendre } from '../gauss-legendre.ts';
import { beamShape } from './beam-shape.ts';
import type { Beam } from './beam.ts';

/** Forces in a beam on a section seen from its start, that is what the part beyond does to the part before, local axes:
 *  N tension; Vy Vz along y and z; T about x; My Mz about y and z. Stress σx = N/A + My z/Iy - Mz y/Iz. SI. */
export interface BeamForces {
  readonly N: number;
  readonly Vy: number;
  readonly Vz: number;
  readonly T: number;
  readonly My: number;
  readonly Mz: number;
}

/** Force per length on a beam's axis, N/m in global axes, straight between start and end. */
export interface BeamLineLoad {
  readonly start: readonly [number, number, number];
  readonly end: readonly [number, number, number];
}

/** Forces on the two nodes (12, global axes) that move them exactly as the line load does, joints and offsets included. */
export function beamLoad(beam: Beam, load: BeamLineLoad): Float64Array {
  const { give, local, ends } = beam;
  const f = endLoad(beam, load);
  const give_f = times(give, f);
  const joint = times(local, give_f);
  const out = new Float64Array(12);
  for (let k = 0; k < 12; k++) for (let i = 0; i < 12; i++) out[i]! += ends[12 * k + i]! * (f[k]! - joint[k]!);
  return out;
}

/** Forces at both ends under the nodes' displacements u (12, global axes) and the beam's own line load. */
export function beamEndForces(
  beam: Beam,
  u: Float64Array,
  load?: BeamLineLoad,
): { readonly start: BeamForces; readonly end: BeamForces } {
  const { give, local, ends } = beam;
  const f = load ? endLoad(beam, load) : new Float64Array(12);
  const U = times(ends, u);
  // u of the beam's ends = U - give (K U - f)
  const slip = times(
    give,
    times(local, U).map((value, k) => value - f[k]!),
  );
  const p = times(
    local,
    U.map((value, k) => value - slip[k]!),
  ).map((value, k) => value - f[k]!);
  return { start: forces(p.subarray(0, 6), -1), end: forces(p.subarray(6), 1) };
}

/** Forces at s from the start, from those at the start and the line load, by statics alone:
 *    N' = -qx, V' = -q, My' = Vz, Mz' = -Vy */
export function beamForcesAt(beam: Beam, start: BeamForces, s: number, load?: BeamLineLoad): BeamForces {
  const q = load ? localLoad(beam, load) : [new Float64Array(3), new Float64Array(3)];
  const first = (c: number): number => s * (q[0]![c]! + ((q[1]![c]! - q[0]![c]!) * s) / (2 * beam.length));
  const second = (c: number): number => (s * s * (q[0]![c]! + ((q[1]![c]! - q[0]![c]!) * s) / (3 * beam.length))) / 2;
  return {
    N: start.N - first(0),
    Vy: start.Vy - first(1),
    Vz: start.Vz - first(2),
    T: start.T,
    My: start.My + start.Vz * s - second(2),
    Mz: start.Mz - start.Vy * s + second(1),
  };
}

const forces = (p: Float64Array, sign: number): BeamForces => ({
  N: sign * p[0]!,
  Vy: sign * p[1]!,
  Vz: sign * p[2]!,
  T: sign * p[3]!,
  My: sign * p[4]!,
  Mz: sign * p[5]!,
});

const localLoad = ({ axes }: Beam, { start, end }: BeamLineLoad): readonly Float64Array[] =>
  [start, end].map((q) =>
    Float64Array.from([0, 1, 2], (r) => axes[3 * r]! * q[0] + axes[3 * r + 1]! * q[1] + axes[3 * r + 2]! * q[2]),
  );

const points = gaussLegendre(3);

/** ∫ Nᵀ q ds on the ends, local axes; three points are exact for a cubic times a straight line. */
function endLoad(beam: Beam, load: BeamLineLoad): Float64Array {
  const [q0, q1] = localLoad(beam, load);
  const f = new Float64Array(12);
  for (let p = 0; p < 3; p++) {
    const t = (1 + points.x[p]!) / 2;
    const N = beamShape(beam, t * beam.length);
    const ds = (points.weight[p]! * beam.length) / 2;
    for (let c = 0; c < 3; c++) {
      const q = q0![c]! * (1 - t) + q1![c]! * t;
      for (let i = 0; i < 12; i++) f[i]! += ds * q * N[12 * c + i]!;
    }
  }
  return f;
}

/** A x for 12 × 12. */
export function times(A: Float64Array, x: Float64Array): Float64Array {
  const out = new Float64Array(12);
  for (let i = 0; i < 12; i++) for (let j = 0; j < 12; j++) out[i]! += A[12 * i + j]! * x[j]!;
  return out;
}
