import { refusal, requirePositive } from '../refusal.ts';
import { eliminate } from '../solve/eliminate.ts';

export type Vector3 = readonly [x: number, y: number, z: number];

/** A load that hangs from one hook by legs. Forces for a weight of 1 N. */
export interface Bridle {
  /** Leg by leg, part of the weight; zero for a leg that hangs slack. */
  readonly tensions: readonly number[];
  /** Between each leg and the vertical, rad. */
  readonly angles: readonly number[];
  /** Hook in the load's own axes, and how far the load turns until its centre hangs below it, rad. */
  readonly hook: Vector3;
  readonly tilt: number;
}

/**
 * Legs from eyes to one hook. Their lengths fix the hook over the load; it then turns until its centre of mass hangs below the hook.
 * One leg: all of the weight. Two: the triangle swings about its eyes until it is upright. Three: statics alone. Four: equally
 * stiff legs share (least squares); a leg that would have to push is left out. Legs of one length are taken as stretching alike;
 * what unequal lengths do to a rigid load, the skew factor stands for.
 * eyes, centre in m, lengths in m. Refuses legs that do not meet, and a load that turns over.
 * Source: statics.
 */
export function bridle(eyes: readonly Vector3[], lengths: readonly number[], centre: Vector3): Bridle {
  requirePositive({ 'number of legs': eyes.length });
  const hook = hookOver(eyes, lengths, centre);
  const up = minus(hook, centre);
  const plumb = unit(up);
  if (!(plumb[2] > 0))
    throw refusal({ what: 'The hook lies below the centre of mass: the plate turns over', where: { path: 'recovery.lift.sling' }, mend: 'Give longer legs, or eyes farther up.' }); // prettier-ignore
  const legs = eyes.map((eye) => unit(minus(hook, eye)));
  return {
    tensions: shares(legs, plumb),
    angles: legs.map((leg) => Math.acos(Math.min(1, dot(leg, plumb)))),
    hook,
    tilt: Math.acos(Math.min(1, plumb[2])),
  };
}

/** Where the legs meet, on the side away from the load. */
function hookOver(eyes: readonly Vector3[], lengths: readonly number[], centre: Vector3): Vector3 {
  const [a, b] = eyes as [Vector3, Vector3];
  const [la, lb] = lengths as [number, number];
  if (eyes.length === 1) {
    const out = unit(minus(a, centre));
    return plus(a, times(la, dot(out, out) > 0 ? out : [0, 0, 1]));
  }
  if (eyes.length === 2) {
    const along = unit(minus(b, a));
    const d = norm(minus(b, a));
    const x = (la ** 2 - lb ** 2 + d ** 2) / (2 * d);
    const away = minus(a, centre);
    const across = unit(minus(away, times(dot(away, along), along)));
    return plus(plus(a, times(x, along)), times(rootOf(la ** 2 - x ** 2), across));
  }
  // Differences of the spheres are planes: p of the hook in the plane of the eyes by least squares, its height from the mean.
  const origin = times(1 / eyes.length, eyes.reduce(plus, [0, 0, 0]));
  const normal = normalOf(eyes, origin);
  const e1 = unit(minus(minus(a, origin), times(dot(minus(a, origin), normal), normal)));
  const e2 = cross(normal, e1);
  const flat = eyes.map((eye) => [dot(minus(eye, origin), e1), dot(minus(eye, origin), e2)] as const);
  const M = [new Float64Array(3), new Float64Array(3)] as const;
  for (let i = 1; i < flat.length; i++) {
    const row = [2 * (flat[i]![0] - flat[0]![0]), 2 * (flat[i]![1] - flat[0]![1])] as const;
    const right =
      lengths[0]! ** 2 - lengths[i]! ** 2 + flat[i]![0] ** 2 + flat[i]![1] ** 2 - flat[0]![0] ** 2 - flat[0]![1] ** 2;
    for (const k of [0, 1] as const) {
      M[k][0]! += row[k] * row[0];
      M[k][1]! += row[k] * row[1];
      M[k][2]! += row[k] * right;
    }
  }
  const [x, y] = eliminate(M) as unknown as [number, number];
  const height = flat.reduce((sum, [u, v], i) => sum + rootOf(lengths[i]! ** 2 - (x - u) ** 2 - (y - v) ** 2), 0);
  return plus(origin, plus(plus(times(x, e1), times(y, e2)), times(height / flat.length, normal)));
}

function rootOf(square: number): number {
  if (square > 0) return Math.sqrt(square);
  throw refusal({ what: 'The legs of the bridle are too short to meet in one hook', where: { path: 'recovery.lift.sling.lengths' }, mend: 'Give longer legs, or a higher apex of the pad eyes.' }); // prettier-ignore
}

/** Unit normal of the eyes' plane, upwards. */
function normalOf(eyes: readonly Vector3[], origin: Vector3): Vector3 {
  let sum: Vector3 = [0, 0, 0];
  eyes.forEach((eye, i) => {
    const n = cross(minus(eye, origin), minus(eyes[(i + 1) % eyes.length]!, origin));
    sum = plus(sum, n[2] < 0 ? times(-1, n) : n);
  });
  return unit(sum);
}

/** Tensions with Σ T e = u, none negative: fewest squares over the legs that pull. */
function shares(legs: readonly Vector3[], u: Vector3): readonly number[] {
  let active = legs.map((_, i) => i);
  for (;;) {
    const T = leastSquares(active.map((i) => legs[i]!), u); // prettier-ignore
    const worst = T.indexOf(Math.min(...T));
    if (T[worst]! >= -1e-9 || active.length === 1) {
      const all = legs.map(() => 0);
      active.forEach((i, k) => (all[i] = Math.max(0, T[k]!)));
      return all;
    }
    active = active.filter((_, k) => k !== worst);
  }
}

/** T = Eᵀ y with (E Eᵀ) y = u in the space that the legs span: the smallest squares that balance u, or come nearest. */
function leastSquares(legs: readonly Vector3[], u: Vector3): number[] {
  const n = legs.length;
  if (n <= 3) {
    const M = legs.map((a) => Float64Array.from([...legs.map((b) => dot(a, b)), dot(a, u)]));
    return [...eliminate(M)];
  }
  const M = [0, 1, 2].map((i) =>
    Float64Array.from([...[0, 1, 2].map((j) => legs.reduce((s, e) => s + e[i]! * e[j]!, 0)), u[i]!]),
  );
  const y = eliminate(M) as unknown as Vector3;
  return legs.map((e) => dot(e, y));
}

const plus = (a: Vector3, b: Vector3): Vector3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const minus = (a: Vector3, b: Vector3): Vector3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const times = (s: number, a: Vector3): Vector3 => [s * a[0], s * a[1], s * a[2]];
const dot = (a: Vector3, b: Vector3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const norm = (a: Vector3): number => Math.sqrt(dot(a, a));
const cross = (a: Vector3, b: Vector3): Vector3 => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]; // prettier-ignore
const unit = (a: Vector3): Vector3 => (norm(a) > 0 ? times(1 / norm(a), a) : [0, 0, 1]);
