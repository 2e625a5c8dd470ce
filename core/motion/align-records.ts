import { refusal } from '../refusal.ts';
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
}

/** Slowest motion that the two files are laid on each other by, s; and the furthest that their beginnings may lie apart, s. */
const [slowest, furthest] = [20, 3600];
/** Less alike than this, two records are not of one thing. */
const leastAlike = 0.5;

/**
 * Brings a second file to the first's clock: as stated; else by the dates that both tell; else by laying what both know of
 * the same motion on each other. Stroke on the float's height errs by the plate's own lag: a plate that follows by a
 * part p, a time τ late, moves the found lag by about −p τ. Refuses files that have nothing in common.
 */
export function alignedLate(
  own: Carried,
  other: Carried,
  dt: number,
  stated: number | null,
  { plateDepth, waterDepth }: Pick<SeaSetup, 'plateDepth' | 'waterDepth'>,
): Alignment {
  if (stated !== null) return { late: stated, how: 'stated', alike: null };
  const [a, b] = [own.recording.begins, other.recording.begins];
  if (a !== null && b !== null) return { late: b - a, how: 'dates of both files', alike: null };
  const keep = highPass(slowest);
  const even = ({ recording: { time }, values }: Carried, name: Parameters<typeof values.get>[0]) => {
    const x = values.get(name);
    return x && evenly(time, x, time[0]!, dt, Math.floor((time.at(-1)! - time[0]!) / dt) + 1);
  };
  const height = filtered(even(own, 'acceleration')!, dt, integrateTwice(keep));
  const lay = (x: Float64Array, y: Float64Array, how: Alignment['how']): Alignment => {
    const { late, alike } = lagBetween(x, y, dt, furthest);
    if (alike < leastAlike) throw unlike(alike);
    // what y tells late on its own clock, it was begun early
    return { late: -late, how, alike };
  };
  const stroke = even(other, 'stroke');
  if (stroke) return lay(height, filtered(stroke, dt, keep), 'stroke laid on the float’s height');
  const below = even(own, 'stroke');
  const plate = even(other, 'plateAcceleration');
  const pressure = even(other, 'pressure');
  if (!below || !(plate ?? (plateDepth === null ? null : pressure))) throw unlike(0);
  const s = filtered(below, dt, keep);
  const expected = height.map((z, i) => z - s[i]!);
  if (plate) return lay(expected, filtered(plate, dt, integrateTwice(keep)), 'plate laid on float less stroke');
  // a logger at the plate sees it sink, and what reaches it of the waves
  const wave = filtered(height, dt, (omega) => waveReach(omega, plateDepth!, waterDepth));
  return lay(wave.map((head, i) => head - expected[i]!), filtered(pressure!, dt, keep), 'plate laid on float less stroke'); // prettier-ignore
}

const unlike = (alike: number) =>
  refusal({
    what: `The two files cannot be laid on each other: they are alike by ${alike.toFixed(2)} at best`,
    where: { field: 'late' },
    mend: 'State how much later the second file’s first reading is than the first’s, from a sync event.',
  });
