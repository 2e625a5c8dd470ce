import type { Lattice } from './lattice.ts';

/** (K + D) μ = v on a lattice: D ≥ 0, 1/m, not finite where a cell is open (there μ is 0 and v is not asked). */
export interface LatticeProblem {
  readonly D: Float64Array;
  readonly v: Float64Array;
}

export interface LatticeAnswer {
  readonly mu: Float64Array;
  readonly iterations: number;
  /** Norm of v − (K + D) μ over that of v, found anew at the end and not carried along. */
  readonly residual: number;
}

/**
 * Two problems on one lattice side by side by preconditioned conjugate gradients, each to its own tolerance: one transform serves
 * both. Ends when both have converged or after `most` steps, and then says with which residual.
 */
export function solvePair(
  { nx, ny, own, apply, approximateInverse }: Lattice,
  problems: readonly [LatticeProblem, LatticeProblem],
  { tolerance = 1e-8, most = 500, starts }: { tolerance?: number; most?: number; starts?: readonly [Float64Array, Float64Array] } = {}, // prettier-ignore
): readonly [LatticeAnswer, LatticeAnswer] {
  const n = nx * ny;
  const fresh = () => [new Float64Array(n), new Float64Array(n)] as const;
  const [x, r, p, q, scaled] = [fresh(), fresh(), fresh(), fresh(), fresh()];
  const active = problems.map(({ D }) => D.map((d) => (d < Infinity ? 1 : 0)));
  // K + D is near D where D is large: the periodic inverse is scaled to that on both sides, 0 in an open cell.
  const scale = problems.map(({ D }) => D.map((d) => Math.sqrt(own / (own + d))));
  const through = (s: 0 | 1, to: Float64Array, of: Float64Array): void => {
    const { D } = problems[s];
    for (let k = 0; k < n; k++) to[k] = active[s]![k] ? to[k]! + D[k]! * of[k]! : 0;
  };
  const masked = (s: 0 | 1, of: Float64Array): void => {
    for (let k = 0; k < n; k++) if (!active[s]![k]) of[k] = 0;
  };
  const size = [0, 0];
  for (const s of both) {
    r[s].set(problems[s].v);
    masked(s, r[s]);
    size[s] = Math.sqrt(dot(r[s], r[s]));
  }
  if (starts) {
    for (const s of both) {
      x[s].set(starts[s]);
      masked(s, x[s]);
    }
    apply(x[0], x[1], q[0], q[1]);
    for (const s of both) {
      through(s, q[s], x[s]);
      for (let k = 0; k < n; k++) r[s][k] = r[s][k]! - q[s][k]!;
    }
  }
  const iterations = [0, 0];
  const rz = [0, 0];
  const done = (s: 0 | 1): boolean => Math.sqrt(dot(r[s], r[s])) <= tolerance * size[s]!;
  const open: boolean[] = both.map((s) => !done(s));
  for (let step = 0; step < most && open.some(Boolean); step++) {
    // q serves as z here and as K p below
    for (const s of both) times(scaled[s], r[s], scale[s]!);
    approximateInverse(scaled[0], scaled[1], q[0], q[1]);
    for (const s of both) {
      if (!open[s]) continue;
      times(q[s], q[s], scale[s]!);
      const now = dot(r[s], q[s]);
      const beta = step === 0 ? 0 : now / rz[s]!;
      rz[s] = now;
      for (let k = 0; k < n; k++) p[s][k] = q[s][k]! + beta * p[s][k]!;
    }
    apply(p[0], p[1], q[0], q[1]);
    for (const s of both) {
      if (!open[s]) continue;
      through(s, q[s], p[s]);
      const alpha = rz[s]! / dot(p[s], q[s]);
      for (let k = 0; k < n; k++) {
        x[s][k] = x[s][k]! + alpha * p[s][k]!;
        r[s][k] = r[s][k]! - alpha * q[s][k]!;
      }
      iterations[s]!++;
      open[s] = !done(s);
    }
  }
  apply(x[0], x[1], q[0], q[1]);
  const answers = both.map((s): LatticeAnswer => {
    through(s, q[s], x[s]);
    let sum = 0;
    for (let k = 0; k < n; k++) if (active[s]![k]) sum += (problems[s].v[k]! - q[s][k]!) ** 2;
    return { mu: x[s], iterations: iterations[s]!, residual: size[s] === 0 ? 0 : Math.sqrt(sum) / size[s]! };
  });
  return [answers[0]!, answers[1]!];
}

const both = [0, 1] as const;

function times(to: Float64Array, a: Float64Array, b: Float64Array): void {
  for (let k = 0; k < to.length; k++) to[k] = a[k]! * b[k]!;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]!;
  return sum;
}
