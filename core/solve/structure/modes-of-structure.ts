import { elementProduct } from '../sparse/element-product.ts';
import { eigenPairs } from './eigen-pairs.ts';
import type { PointMass } from './lumped-mass.ts';
import { pointMotion } from './point-force.ts';
import type { ModeSupport } from './modes-support.ts';

/** What moves: masses that resist every way, kg, and water, which adds the force of its inertia for an acceleration u to f. */
export interface ModeMasses {
  readonly everyWay: readonly PointMass[];
  readonly water?: (u: Float64Array, f: Float64Array) => void;
}

/** One natural mode. */
export interface Mode {
  /** Hz. */
  readonly frequency: number;
  /** Displacements of all nodes, 6N, the largest shift of a node 1 m, up where it is largest. */
  readonly shape: Float64Array;
  /** Mass that follows a heave of what holds the plate, kg: (φᵀ M r)² / (φᵀ M φ) with r a heave of 1. Nil for a plate that
   *  floats free: its modes take no heave. */
  readonly verticalMass: number;
  /** An eigenvalue lies within this part of the square of the frequency. */
  readonly residual: number;
  /** Part of the frequency by which rigid supports would raise it: half the share of the strain energy in their springs. */
  readonly supportGive: number;
}

export interface ModeSet {
  readonly modes: readonly Mode[];
  readonly converged: boolean;
  /** Rigid motions that were left out. */
  readonly rigid: number;
  /** Of all that moves, up and down, kg. */
  readonly verticalMass: number;
}

/** The lowest natural modes, K φ = ω² M φ, of a structure on its supports. Mass is lumped at points on rigid arms: the
 *  frequencies of beams and plates then converge as the square of the mesh's size. Yields the solves done so far. */
export function* structureModes(
  { structure, system, factor, held, rigid, springs }: ModeSupport,
  masses: ModeMasses,
  count: number,
): Generator<number, ModeSet> {
  const size = 2 * structure.coordinates.length;
  const weight = massProduct(masses, size, held);
  const { pairs, converged } = yield* eigenPairs(
    {
      size,
      solve: (f) => factor.solve(f),
      stiffness: (u) => elementProduct(system, u, new Float64Array(size)),
      weight,
      rigid,
    },
    { count },
  );
  const heave = Float64Array.from({ length: size }, (_, i) => (i % 6 === 2 ? 1 : 0));
  const M_heave = massProduct(masses, size)(heave);
  const modes = pairs.map(({ λ, shape, residual }): Mode => {
    let give = 0; // of φᵀ K φ = 1
    for (const { support, stiffness } of springs) {
      const [x, y, z] = pointMotion(shape, support.node, support.offset);
      const [dx, dy, dz] = support.direction;
      give += stiffness * (x * dx + y * dy + z * dz) ** 2;
    }
    return {
      frequency: Math.sqrt(λ) / (2 * Math.PI),
      shape: scaled(shape),
      verticalMass: λ * dot(shape, M_heave) ** 2,
      residual,
      supportGive: give / 2,
    };
  });
  return { modes, converged, rigid: rigid.length, verticalMass: dot(heave, M_heave) };
}

/** u → M u: a point on an arm r moves by u + θ × r. Held freedoms have no inertia. */
export function massProduct(
  { everyWay, water }: ModeMasses,
  size: number,
  held?: Uint8Array,
): (u: Float64Array) => Float64Array {
  return (u) => {
    const f = new Float64Array(size);
    for (const { node, offset: [rx, ry, rz], mass } of everyWay) {
      const i = 6 * node;
      const [θx, θy, θz] = [u[i + 3]!, u[i + 4]!, u[i + 5]!];
      const Fx = mass * (u[i]! + θy * rz - θz * ry);
      const Fy = mass * (u[i + 1]! + θz * rx - θx * rz);
      const Fz = mass * (u[i + 2]! + θx * ry - θy * rx);
      f[i]! += Fx;
      f[i + 1]! += Fy;
      f[i + 2]! += Fz;
      f[i + 3]! += ry * Fz - rz * Fy;
      f[i + 4]! += rz * Fx - rx * Fz;
      f[i + 5]! += rx * Fy - ry * Fx;
    } // prettier-ignore
    water?.(u, f);
    if (held) for (let i = 0; i < size; i++) if (held[i] === 1) f[i] = 0;
    return f;
  };
}

/** The largest shift along an axis made 1. */
function scaled(shape: Float64Array): Float64Array {
  let most = 0;
  for (let i = 0; i < shape.length; i++) if (i % 6 < 3 && Math.abs(shape[i]!) > Math.abs(most)) most = shape[i]!;
  return shape.map((value) => value / most);
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
