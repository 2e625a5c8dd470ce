import { evenly } from '../motion/evenly.ts';
import { lagBetween } from '../motion/lag-between.ts';
import { usualStep } from '../record/read-recording.ts';
import { refusal } from '../refusal.ts';
import { significant } from '../quantity/format-quantity.ts';

/** Delay that one event tells, s: as it stands, how far it may be off, and how alike the two channels are in it. */
export interface EventDelay {
  readonly late: number;
  readonly bound: number;
  readonly alike: number;
}

/** Less alike than this, force and acceleration do not tell one event. */
const leastAlike = 0.5;

/**
 * Delay of the force from an event that both channels tell sharply (a knock, a sudden stop or start): over its stretch the
 * force is laid on the travel's second difference, for there inertia outweighs all else. from, to: s. Error: half a step,
 * for neither channel knows more of a sharp event. Refuses a stretch of fewer than 16 readings, and one without an event.
 */
export function delayOfEvent(
  time: Float64Array,
  travel: Float64Array,
  force: Float64Array,
  from: number,
  to: number,
): EventDelay {
  const dt = usualStep(time);
  const n = Math.floor((Math.min(to, time.at(-1)!) - from) / dt) + 1;
  if (!(n >= 16))
    throw refusal({
      what: `The event’s stretch, ${significant(from, 4)} s to ${significant(to, 4)} s, has fewer than 16 readings`,
      where: { field: 'event' },
      mend: 'Take a stretch of some seconds about the event.',
    });
  const z = evenly(time, travel, from, dt, n);
  const bent = z.map((_, i) => (i === 0 || i === n - 1 ? 0 : z[i + 1]! - 2 * z[i]! + z[i - 1]!));
  const { late, alike } = lagBetween(bent, evenly(time, force, from, dt, n), dt, (n * dt) / 4);
  if (alike < leastAlike)
    throw refusal({
      what: `In that stretch force and acceleration are alike by ${significant(alike, 2)} at best: no event is told by both`,
      where: { field: 'event' },
      mend: 'Take the stretch about a knock or a sudden stop; slow motion does not tell.',
    });
  return { late, bound: dt / 2, alike };
}
