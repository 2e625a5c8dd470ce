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
  { own, apply, approximateInverse }: Lattice,
  problems: readonly [LatticeProblem, LatticeProblem],
  { tolerance = 1e-8, most = 500, starts }: { tolerance?: number; most?: number; starts?: readonly [Float64Array, Float64Array] } = {}, // prettier-ignore
): readonly [LatticeAnswer, LatticeAnswer] {
  const slots = problems.map(({ D, v }, s) => slotOf(D, v, own, starts?.[s]));
  const [a, b] = [slots[0]!, slots[1]!];
  const applied = (of: 'x' | 'p'): void => apply(a[of], b[of], a.q, b.q);
  if (starts) {
    applied('x');
    for (const slot of slots) leave(slot);
  }
  for (const slot of slots) {
    slot.size = tolerance * tolerance * slot.vv;
    slot.left = scaled(slot);
  }
  for (let step = 0; step < most && slots.some(({ left, size }) => left > size); step++) {
    const open = slots.filter(({ left, size }) => left > size);
    approximateInverse(a.scaled, b.scaled, a.q, b.q);
    for (const slot of open) turn(slot);
    applied('p');
    for (const slot of open) advance(slot);
  }
  applied('x');
  return [answerOf(a), answerOf(b)];
}

/** One of two problems on its way. */
interface Slot {
  /** D, 0 where a cell is open, and 1 where it is not. */
  readonly d: Float64Array;
  readonly active: Float64Array;
  readonly v: Float64Array;
  /** K + D is near D where D is large: the periodic inverse is scaled to that on both sides, 0 in an open cell. */
  readonly scale: Float64Array;
  readonly x: Float64Array;
  readonly r: Float64Array;
  readonly p: Float64Array;
  /** What the transforms give back. */
  readonly q: Float64Array;
  readonly scaled: Float64Array;
  /** Squared norms: of v, of the residual that ends it, and of the residual; and r·z. */
  readonly vv: number;
  size: number;
  left: number;
  rz: number;
  iterations: number;
}

function slotOf(D: Float64Array, v: Float64Array, own: number, start: Float64Array | undefined): Slot {
  const active = D.map((d) => (d < Infinity ? 1 : 0));
  const masked = (of: Float64Array): Float64Array => of.map((value, k) => (active[k]! > 0 ? value : 0));
  const fresh = (): Float64Array => new Float64Array(D.length);
  const r = masked(v);
  return {
    ...{ d: masked(D), active, v: r.slice(), scale: D.map((d) => Math.sqrt(own / (own + d))), r },
    ...{ x: start ? masked(start) : fresh(), p: fresh(), q: fresh(), scaled: fresh() },
    ...{ vv: dot(r, r), size: 0, left: 0, rz: 0, iterations: 0 },
  };
}

/** r ← v − (K + D) x, with K x in q. */
function leave({ d, active, v, x, q, r }: Slot): void {
  for (let k = 0; k < r.length; k++) r[k] = active[k]! * (v[k]! - q[k]! - d[k]! * x[k]!);
}

/** The residual scaled for the inverse; gives its squared norm. */
function scaled({ r, scale, scaled: to }: Slot): number {
  let sum = 0;
  for (let k = 0; k < r.length; k++) {
    const value = r[k]!;
    to[k] = value * scale[k]!;
    sum += value * value;
  }
  return sum;
}

/** p ← z + β p, with the inverse's answer in q. */
function turn(slot: Slot): void {
  const { q, p, scale, scaled: sr } = slot;
  const now = dot(sr, q);
  const beta = slot.iterations === 0 ? 0 : now / slot.rz;
  slot.rz = now;
  for (let k = 0; k < p.length; k++) p[k] = scale[k]! * q[k]! + beta * p[k]!;
}

/** x ← x + α p, r ← r − α (K + D) p, with K p in q. */
function advance(slot: Slot): void {
  const { d, active, q, p, x, r, scale, scaled: to } = slot;
  let pq = 0;
  for (let k = 0; k < p.length; k++) {
    const along = p[k]!;
    const through = active[k]! * (q[k]! + d[k]! * along);
    q[k] = through;
    pq += along * through;
  }
  const alpha = slot.rz / pq;
  let sum = 0;
  for (let k = 0; k < p.length; k++) {
    x[k] = x[k]! + alpha * p[k]!;
    const value = r[k]! - alpha * q[k]!;
    r[k] = value;
    to[k] = value * scale[k]!;
    sum += value * value;
  }
  slot.left = sum;
  slot.iterations++;
}

/** With K x in q. */
function answerOf(slot: Slot): LatticeAnswer {
  leave(slot);
  const { x, r, vv, iterations } = slot;
  return { mu: x, iterations, residual: vv === 0 ? 0 : Math.sqrt(dot(r, r) / vv) };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]!;
  return sum;
}
