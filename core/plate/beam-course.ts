import { times, type BeamForces } from '../solve/elements/beam-forces.ts';
import { beamShape } from '../solve/elements/beam-shape.ts';
import type { Beam } from '../solve/elements/beam.ts';
import { gaussLegendre } from '../solve/gauss-legendre.ts';
import type { LoadPiece } from './load-pieces.ts';

/** A section of a beam at s from its start, m, with the rise of its axis along local z, m. */
export interface BeamSectionState extends BeamForces {
  readonly s: number;
  readonly rise: number;
}

/**
 * Course of forces and rise along a beam under its nodes' displacements (12, global axes) and the load on it: from the
 * forces on its start by statics, exact for loads that are linear on each piece:
 *    Vz' = -q,   T' = -t,   My' = Vz,   Mz' = -Vy,   E Iy θy' = My,   w' = -θy + Vz/(G Az)
 * At both ends, the ends of loads, the middle, and wherever the moment My peaks.
 */
export function beamCourse(beam: Beam, nodes: Float64Array, pieces: readonly LoadPiece[]): BeamSectionState[] {
  const { length, give, local, ends, input: { section, E, G } } = beam; // prettier-ignore
  const f = endLoads(beam, pieces);
  const U = times(ends, nodes);
  const slip = times(give, minus(times(local, U), f));
  const v = minus(U, slip);
  const p = minus(times(local, v), f);
  let state: BeamSectionState & { readonly θ: number } = {
    s: 0,
    N: -p[0]!,
    Vy: -p[1]!,
    Vz: -p[2]!,
    T: -p[3]!,
    My: -p[4]!,
    Mz: -p[5]!,
    rise: v[2]!,
    θ: v[4]!,
  };
  const out: BeamSectionState[] = [state];
  const stops = [...new Set([0, length / 2, length, ...pieces.flatMap(({ low, high }) => [low, high])])]
    .filter((s) => s > 0 && s <= length)
    .sort((a, b) => a - b);
  for (const stop of stops) {
    const span = stop - state.s;
    if (span <= 1e-12 * length) continue;
    const piece = pieces.find(({ low, high }) => low < stop - span / 2 && high > stop - span / 2);
    const slope = (of: readonly [number, number]): number => (piece ? (of[1] - of[0]) / (piece.high - piece.low) : 0);
    const at = (of: readonly [number, number]): number => of[0] + slope(of) * (state.s - piece!.low);
    const [a, b] = piece ? [at(piece.q), slope(piece.q)] : [0, 0];
    const [c, d] = piece ? [at(piece.t), slope(piece.t)] : [0, 0];
    const { N, Vy, Vz, T, My, Mz, rise, θ, s } = state;
    const [EI, GA] = [E * section.Iy, G * section.Az];
    const beyond = (x: number): typeof state => ({
      s: s + x,
      N,
      Vy,
      Vz: Vz - x * (a + (b * x) / 2),
      T: T - x * (c + (d * x) / 2),
      My: My + x * (Vz - x * (a / 2 + (b * x) / 6)),
      Mz: Mz - Vy * x,
      rise:
        rise -
        θ * x -
        (x * x * (My / 2 + x * (Vz / 6 - x * (a / 24 + (b * x) / 120)))) / EI +
        (x * (Vz - x * (a / 2 + (b * x) / 6))) / GA,
      θ: θ + (x * (My + x * (Vz / 2 - x * (a / 6 + (b * x) / 24)))) / EI,
    });
    for (const x of zeroOfShear(Vz, a, b, span)) out.push(beyond(x));
    state = beyond(span);
    out.push(state);
  }
  return out;
}

/** Where V - a x - b x²/2 changes sign within (0, span). */
function zeroOfShear(V: number, a: number, b: number, span: number): number[] {
  const end = V - span * (a + (b * span) / 2);
  if (V * end >= 0) return [];
  const root = Math.sqrt(a * a + 2 * b * V);
  const sum = a + (a < 0 ? -root : root); // the form that does not cancel
  return [(2 * V) / sum, ...(b === 0 ? [] : [-sum / b])].filter((x) => x > 0 && x < span).slice(0, 1);
}

const gauss = gaussLegendre(3);

/** Forces on the ends (12, local axes) that do the work of the load: three points are exact for a cubic times a line. */
export function endLoads(beam: Beam, pieces: readonly LoadPiece[]): Float64Array {
  const f = new Float64Array(12);
  for (const { low, high, q, t } of pieces)
    for (let p = 0; p < 3; p++) {
      const r = (1 + gauss.x[p]!) / 2;
      const ds = (gauss.weight[p]! * (high - low)) / 2;
      const N = beamShape(beam, low + r * (high - low));
      const [up, turn] = [ds * (q[0] + r * (q[1] - q[0])), ds * (t[0] + r * (t[1] - t[0]))];
      for (let i = 0; i < 12; i++) f[i]! += up * N[24 + i]! + turn * N[36 + i]!;
    }
  return f;
}

const minus = (a: Float64Array, b: Float64Array): Float64Array => a.map((value, i) => value - b[i]!);
