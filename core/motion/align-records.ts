import { refusal } from '../refusal.ts';
import { clockRate, type ClockRate } from './clock-rate.ts';
import { evenly } from './evenly.ts';
import { filtered, highPass, integrateTwice } from './filtered.ts';
import { lagBetween } from './lag-between.ts';
import { waveReach } from './plate-motion.ts';
import type { Carried } from './sea-channels.ts';
import type { SeaSetup } from './sea-setup.ts';

/** How the second file's clock was brought to the first's. */
export interface Alignment {
  /** s that its first reading comes after the first file's. */
  readonly late: number;
  readonly how:
    'stated' | 'dates of both files' | 'stroke laid on the float’s height' | 'plate laid on float less stroke';
  /** Likeness of the two, −1 to 1; null where nothing was laid on anything. */
  readonly alike: number | null;
  /** A second on its clock is 1 + `rate` seconds of the first's: what the readings were brought back by. */
  readonly rate: number;
  readonly rateHow: 'stated' | 'found' | 'none';
  /** What the motion that both know tells of late and rate, taken or not; null where it tells nothing. */
  readonly byMotion: (ClockRate & { readonly of: 'stroke' | 'plate' }) | null;
}

/** What is stated of the second clock, s on the first's beyond its own: at its first reading and at its last; null: not stated. */
export interface StatedClock {
  readonly late: number | null;
  readonly lateAtEnd: number | null;
}

/** Slowest motion that the two files are laid on each other by, s; and the furthest that their beginnings may lie apart, s. */
const [slowest, furthest] = [20, 3600];
/** Less alike than this, two records are not of one thing. */
const leastAlike = 0.5;
/** A rate is taken when it is so many of its errors from none. */
const surely = 3;
/** Of a longer second record its liveliest hour is laid first, s: a clock that runs away for days smears the whole. */
const [longAt, hour] = [7200, 3600];

/**
 * Brings a second file to the first's clock: as stated; else by the dates that both tell; else by laying what both know of
 * the same motion on each other. Stroke on the float's height errs by the plate's own lag: a plate that follows by a
 * part p, a time τ late, moves the found lag by about −p τ. How far the clocks run apart is found from that motion too
 * (`clockRate`), where it is not stated at both ends. Refuses files that have nothing in common.
 */
export function alignedLate(
  own: Carried,
  other: Carried,
  dt: number,
  { late: stated, lateAtEnd }: StatedClock,
  depths: Pick<SeaSetup, 'plateDepth' | 'waterDepth'>,
): Alignment {
  const seconds = other.recording.time.at(-1)!;
  const pair = sharedMotion(own, other, dt, depths);
  const [a, b] = [own.recording.begins, other.recording.begins];
  const known = stated !== null ? { late: stated, how: 'stated', alike: null } as const : a !== null && b !== null ? { late: b - a, how: 'dates of both files', alike: null } as const : null; // prettier-ignore
  if (!known && !pair) throw unlike(0);
  const placed = known ?? laid(pair!, dt);
  const found = pair && clockRate(pair.x, pair.y, dt, placed.late);
  const byMotion = found && { ...found, of: pair.how === 'plate laid on float less stroke' ? 'plate' : 'stroke' } as const; // prettier-ignore
  if (stated !== null && lateAtEnd !== null)
    return { ...placed, rate: (lateAtEnd - stated) / seconds, rateHow: 'stated', byMotion };
  const runs = byMotion !== null && Math.abs(byMotion.rate) > surely * byMotion.standardError;
  const late = runs && !known ? byMotion.late : placed.late;
  return { ...placed, late, rate: runs ? byMotion.rate : 0, rateHow: runs ? 'found' : 'none', byMotion };
}

/** What both files know of one motion, each on its own clock. */
interface Pair {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly how: Alignment['how'];
}

function sharedMotion(
  own: Carried,
  other: Carried,
  dt: number,
  { plateDepth, waterDepth }: Pick<SeaSetup, 'plateDepth' | 'waterDepth'>,
): Pair | null {
  const keep = highPass(slowest);
  const even = ({ recording: { time }, values }: Carried, name: Parameters<typeof values.get>[0]) => {
    const x = values.get(name);
    return x && evenly(time, x, time[0]!, dt, Math.floor((time.at(-1)! - time[0]!) / dt) + 1);
  };
  const height = filtered(even(own, 'acceleration')!, dt, integrateTwice(keep));
  const stroke = even(other, 'stroke');
  if (stroke) return { x: height, y: filtered(stroke, dt, keep), how: 'stroke laid on the float’s height' };
  const below = even(own, 'stroke');
  const plate = even(other, 'plateAcceleration');
  const pressure = even(other, 'pressure');
  if (!below || !(plate ?? (plateDepth === null ? null : pressure))) return null;
  const s = filtered(below, dt, keep);
  const expected = height.map((z, i) => z - s[i]!);
  const how = 'plate laid on float less stroke';
  if (plate) return { x: expected, y: filtered(plate, dt, integrateTwice(keep)), how };
  // a logger at the plate sees it sink, and what reaches it of the waves
  const wave = filtered(height, dt, (omega) => waveReach(omega, plateDepth!, waterDepth));
  return { x: wave.map((head, i) => head - expected[i]!), y: filtered(pressure!, dt, keep), how };
}

function laid({ x, y, how }: Pair, dt: number): Pick<Alignment, 'late' | 'how' | 'alike'> {
  if (y.length * dt <= longAt) {
    const { late, alike } = lagBetween(x, y, dt, furthest);
    if (alike < leastAlike) throw unlike(alike);
    // what y tells late on its own clock, it was begun early
    return { late: -late, how, alike };
  }
  const n = Math.round(hour / dt);
  const energy = (k: number): number => y.subarray(k * n, (k + 1) * n).reduce((sum, value) => sum + value * value, 0);
  const k = Array.from({ length: Math.floor(y.length / n) }, (_, i) => i).reduce((best, i) => (energy(i) > energy(best) ? i : best)); // prettier-ignore
  const lively = y.map((value, i) => (i >= k * n && i < (k + 1) * n ? value : 0));
  const { late } = lagBetween(x, lively, dt, furthest);
  const from = k * n - Math.round(late / dt);
  const beside = x.subarray(Math.max(0, from), Math.max(0, from + n));
  const { alike } = lagBetween(beside, y.subarray(k * n + Math.max(0, -from), (k + 1) * n), dt, 2);
  if (!(alike >= leastAlike)) throw unlike(alike);
  return { late: -late, how, alike };
}

const unlike = (alike: number) =>
  refusal({
    what: `The two files cannot be laid on each other: they are alike by ${alike.toFixed(2)} at best`,
    where: { field: 'late' },
    mend: 'State how much later the second file’s first reading is than the first’s, from a sync event.',
  });
