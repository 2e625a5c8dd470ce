import { eliminate } from '../solve/eliminate.ts';
import type { FramePoint, Motion, TubeFrame } from './tube-frame.ts';
import { spreadOf, sumOf, type Loaded, type Spread } from './loaded.ts';
import { addLoad, resultant, type Resultant } from './tube-lines.ts';

/** A place where the plate is held: an attachment, a pad eye or a support on deck. */
export interface Support {
  readonly id: string;
  readonly point: FramePoint;
}

/** Which supports hold, and how. */
export interface Holding {
  /** Indexes of the supports that are there. */
  readonly present: readonly number[];
  /** Only forces up: a line pulls, a deck pushes. False for a strut. */
  readonly oneWay: boolean;
  /** Four slings of unequal length: each diagonal in turn takes more of its share by this factor; 1 without. */
  readonly skew: number;
}

/** One distribution of the supports' forces with what balances the rest. */
export interface Held {
  /** Force of each support on the plate, up, N; zero for those that are absent or slack. */
  readonly forces: Float64Array;
  /** Load on the cells, inertia of the plate's turning included, and the motion with the supports' forces. */
  readonly load: Float64Array;
  readonly motion: Motion;
  /** Plane of the supports' rise, c_0 + c_1 x + c_2 y, to measure deflection from; null where they do not fix one. */
  readonly plane: Resultant | null;
  /** First moments, N·m, that the supports cannot balance and the plate's own inertia in turning does. */
  readonly couple: readonly [x: number, y: number];
  /** Largest force of the skew pattern, N. */
  readonly skewForce: number;
  readonly slack: readonly number[];
}

/**
 * Forces of supports on a plate by the force method: the supports' own rises under unit forces (flexibility C) and
 *    C V + w_load + Aᵀ λ = 0,   A V = −(F, ΣxF, ΣyF)
 * (all supports stay in one plane; A the equations of statics). Three supports or fewer: statics alone decides.
 * Supports in one line or one point balance no moment across it: the plate begins to turn, and its inertia balances
 * that. A support that would have to pull the wrong way goes slack and is left out.
 */
export class Supports {
  readonly all: readonly Support[];
  readonly #frame: TubeFrame;
  readonly #spread: Spread;
  readonly #unit: readonly Motion[];
  /** Plan size that moments are compared with, m. */
  readonly #reach: number;
  readonly #flexibility: readonly Float64Array[];

  /** spread: how inertia lies on the tubes. */
  constructor(all: readonly Support[], frame: TubeFrame, spread: Spread) {
    this.all = all;
    this.#frame = frame;
    this.#spread = spread;
    this.#unit = all.map(({ point }) => frame.motion(null, [[point, 1]]));
    this.#reach = Math.max(...frame.lines.ends.map(([from, to]) => to - from));
    this.#flexibility = all.map(({ point }) => Float64Array.from(this.#unit, (u) => frame.riseAt(point, u)));
  }

  /** What holds a load on the cells whose force goes down (or, for a strut, either way). One distribution, and with
   *  skew two more. Without any support: the load's moments are balanced by inertia alone, its force must be nil. */
  hold(applied: Loaded, { present, oneWay, skew }: Holding): Held[] {
    const total = resultant(this.#frame.lines, applied.load);
    let active = [...present];
    for (;;) {
      const statics = this.#statics(active, total);
      const couple = [total[1] + statics.moment[0], total[2] + statics.moment[1]] as const;
      const turns = !negligible(couple, total, this.#reach);
      const { load, motion } = turns
        ? sumOf(applied, [[applied, 1], ...spreadOf(this.#spread, [0, -couple[0], -couple[1]])])
        : applied;
      const { V, plane } = this.#solve(active, statics, motion);
      const largest = V.reduce((most, v) => Math.max(most, Math.abs(v)), 0);
      const wrong = oneWay
        ? V.reduce((worst, v, i) => (v < -1e-9 * largest && (worst < 0 || v < V[worst]!) ? i : worst), -1)
        : -1;
      if (wrong >= 0) {
        active = active.filter((_, i) => i !== wrong);
        continue;
      }
      const held = (forces: Float64Array, from: Resultant | null, skewForce: number): Held => {
        const u = Float64Array.from(motion);
        const all = new Float64Array(this.all.length);
        active.forEach((support, i) => {
          addLoad(u, this.#unit[support]!, forces[i]!);
          all[support] = forces[i]!;
        });
        return {
          forces: all,
          load,
          motion: u,
          plane: from,
          couple: turns ? couple : [0, 0],
          skewForce,
          slack: present.filter((i) => !active.includes(i)),
        };
      };
      const pattern = skew > 1 && oneWay && active.length === 4 && statics.rank === 3 ? this.#diagonals(active) : null;
      const diagonal = (of: readonly number[], sign: 1 | -1): Held => {
        const pushed = of.map((n) => sign * n);
        const s = skewOf(V, pushed, skew);
        return held(V.map((v, i) => v + s * pushed[i]!), null, s * Math.max(...of.map(Math.abs))); // prettier-ignore
      };
      return [held(V, plane, 0), ...(pattern ? [diagonal(pattern, 1), diagonal(pattern, -1)] : [])];
    }
  }

  /** Equations of statics that these supports can answer, by rows, with the right sides, and the moments they then give. */
  #statics(active: readonly number[], [F, X, Y]: Resultant): Statics {
    const at = active.map((i) => this.all[i]!.point);
    const [x, y] = [at.reduce((s, p) => s + p.x, 0) / at.length, at.reduce((s, p) => s + p.y, 0) / at.length];
    if (at.length === 0) return { rank: 0, rows: [], right: [], moment: [0, 0] };
    const ones = at.map(() => 1);
    const far = at.reduce((a, p) => (Math.hypot(p.x - x, p.y - y) > Math.hypot(a.x - x, a.y - y) ? p : a));
    const size = Math.hypot(far.x - x, far.y - y);
    if (size < inLine) return { rank: 1, rows: [ones], right: [-F], moment: [-F * x, -F * y] };
    const [cos, sin] = [(far.x - x) / size, (far.y - y) / size];
    const along = at.map((p) => (p.x - x) * cos + (p.y - y) * sin);
    const alongRight = -((X - F * x) * cos + (Y - F * y) * sin);
    const across = at.map((p) => (p.y - y) * cos - (p.x - x) * sin);
    if (across.every((a) => Math.abs(a) < inLine))
      return {
        rank: 2,
        rows: [ones, along],
        right: [-F, alongRight],
        moment: [-F * x + alongRight * cos, -F * y + alongRight * sin],
      };
    return {
      rank: 3,
      rows: [ones, along, across],
      right: [-F, alongRight, -((Y - F * y) * cos - (X - F * x) * sin)],
      moment: [-X, -Y],
    };
  }

  #solve(
    active: readonly number[],
    { rank, rows, right }: Statics,
    motion: Motion,
  ): { V: Float64Array; plane: Resultant | null } {
    const n = active.length;
    if (n === 0) return { V: new Float64Array(0), plane: null };
    const size = n + rank;
    const M = Array.from({ length: size }, () => new Float64Array(size + 1));
    // rises are brought to the size of the arms, so that pivots compare
    const scale = active.reduce((most, i) => Math.max(most, Math.abs(this.#flexibility[i]![i]!)), 0);
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) M[i]![j] = this.#flexibility[active[i]!]![active[j]!]! / scale;
      M[i]![size] = -this.#frame.riseAt(this.all[active[i]!]!.point, motion) / scale;
    }
    rows.forEach((row, r) => {
      row.forEach((a, i) => (M[i]![n + r] = M[n + r]![i] = a));
      M[n + r]![size] = right[r]!;
    });
    const solution = eliminate(M);
    const V = solution.slice(0, n);
    if (rank < 3) return { V, plane: null };
    const at = active.map((i) => this.all[i]!.point);
    const rise = (p: FramePoint): number =>
      this.#frame.riseAt(p, motion) + active.reduce((s, i, k) => s + V[k]! * this.#frame.riseAt(p, this.#unit[i]!), 0);
    return { V, plane: planeThrough(at.map((p) => [p.x, p.y, rise(p)] as const)) };
  }

  /** Forces on four supports that balance each other: the sense of the two diagonals. */
  #diagonals(active: readonly number[]): number[] {
    const p = active.map((i) => this.all[i]!.point);
    return p.map((_, i) => {
      const [a, b, c] = p.filter((_, j) => j !== i) as [FramePoint, FramePoint, FramePoint];
      return (i % 2 ? -1 : 1) * ((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y));
    });
  }
}

interface Statics {
  readonly rank: 0 | 1 | 2 | 3;
  readonly rows: readonly (readonly number[])[];
  readonly right: readonly number[];
  /** First moments of the supports' forces. */
  readonly moment: readonly [number, number];
}

/** Supports closer to one line than this, in m, are taken to lie on it: across it their arm would be of no use. */
const inLine = 0.01;

/** A couple that is only round-off. */
const negligible = ([x, y]: readonly [number, number], [F, X, Y]: Resultant, reach: number): boolean =>
  Math.hypot(x, y) <= 1e-12 * (Math.abs(F) * reach + Math.abs(X) + Math.abs(Y));

/** How much of a pattern brings the legs that it loads to `skew` times their sum, or until one of the others is slack. */
function skewOf(V: Float64Array, pattern: readonly number[], skew: number): number {
  let [carried, added, room] = [0, 0, Infinity];
  pattern.forEach((n, i) => {
    if (n > 0) {
      carried += V[i]!;
      added += n;
    } else room = Math.min(room, V[i]! / -n);
  });
  return Math.min(((skew - 1) * carried) / added, room);
}

/** c_0 + c_1 x + c_2 y through the first three points that span a plane. */
function planeThrough(points: readonly (readonly [number, number, number])[]): Resultant {
  const [a] = points;
  const far = (of: (p: readonly [number, number, number]) => number) =>
    points.reduce((m, p) => (Math.abs(of(p)) > Math.abs(of(m)) ? p : m));
  const b = far((p) => Math.hypot(p[0] - a![0], p[1] - a![1]));
  const cross = (p: readonly [number, number, number]): number =>
    (b[0] - a![0]) * (p[1] - a![1]) - (p[0] - a![0]) * (b[1] - a![1]);
  const c = far(cross);
  const d = cross(c);
  const [zb, zc] = [b[2] - a![2], c[2] - a![2]];
  const sx = (zb * (c[1] - a![1]) - zc * (b[1] - a![1])) / d;
  const sy = ((b[0] - a![0]) * zc - (c[0] - a![0]) * zb) / d;
  return [a![2] - sx * a![0] - sy * a![1], sx, sy];
}
