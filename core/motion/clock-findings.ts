import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { Alignment } from './align-records.ts';
import type { SeaRecording } from './sea-channels.ts';
import type { SeaSetup } from './sea-setup.ts';

/** Loggers' clocks that nobody looks after run apart by up to so much of the time (common practice, no source). */
const usualRate = 50e-6;
/** Clocks this near to each other are one, s: a hundredth of a short wave. */
const near = 0.05;

/** How the second clock was brought to the first's, a sentence each for offset and rate. */
export function clockWords({ late, how, alike, rate, rateHow, byMotion }: Alignment): string[] {
  const error = byMotion ? `, ± ${millionths(2 * byMotion.standardError)}, from ${byMotion.stretches} stretches of the motion that both know` : ''; // prettier-ignore
  const runs = `The second logger’s clock runs ${rate > 0 ? 'slow' : 'fast'} by ${millionths(rate)} against the first’s, ${significant(Math.abs(rate) * 3600, 2)} s an hour`; // prettier-ignore
  return [
    `The second logger’s first reading is ${significant(late, 5)} s after the first’s (${how}${alike === null ? '' : `, alike by ${alike.toFixed(3)}`}).`, // prettier-ignore
    ...(rateHow === 'found' ? [`${runs}${error}: its times are stretched by that.`] : []),
    ...(rateHow === 'stated' ? [`${runs}, as stated at both ends: its times are stretched by that.`] : []),
    ...(rateHow === 'none' && byMotion ? [`Nothing says that the two clocks run apart: ${millionths(byMotion.rate)}${error}.`] : []), // prettier-ignore
  ];
}

/** What of the two clocks could not be told, or contradicts what is stated. */
export function clockFindings({ alignment, from, to }: SeaRecording, { clock }: Pick<SeaSetup, 'clock'>): Finding[] {
  if (!alignment) return [];
  const { byMotion, late, rate, rateHow, how } = alignment;
  const say = (id: string, text: string, mend: string): Finding => ({ id, place: 'clock', text, mend });
  if (!byMotion) {
    const open = usualRate * (to - from);
    return rateHow === 'stated' || open < Math.max(near, clock) ? [] : [say('clock-rate-not-told', `Whether the two clocks run apart cannot be told from these records; ${millionths(usualRate)} are usual (common practice, no source) and would be ${significant(open, 2)} s by their end.`, 'State how late the second logger is at its first and at its last reading, from two sync events.')]; // prettier-ignore
  }
  const middle = (to - from) / 2;
  const apart = byMotion.late - late + (byMotion.rate - rate) * middle;
  // the stroke lags the float by the plate’s own following, which is no clock’s
  const told = how === 'stated' || how === 'dates of both files' ? Math.max(clock, byMotion.of === 'stroke' ? 5 * near : near) : Infinity; // prettier-ignore
  return Math.abs(apart) <= told ? [] : [say('clocks-disagree', `By the motion that both know, the second logger’s clock lies ${significant(apart, 2)} s from ${how === 'stated' ? 'what is stated' : 'the dates of the files'}.`, 'Find the sync event again, or leave the offset to be found from the motion.')]; // prettier-ignore
}

const millionths = (part: number): string => `${significant(1e6 * Math.abs(part), 2)} millionths`;
