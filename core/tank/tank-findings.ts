import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { Recording } from '../record/record.ts';
import type { TankSetup } from './tank-setup.ts';

/** What the file itself lacks: rows that were kept out, and gaps. */
export function recordFindings({ bad, gaps }: Recording): Finding[] {
  const [row] = bad;
  const [gap] = gaps;
  return [
    ...(row ? [{ id: 'rows-kept-out', place: 'record', text: `${bad.length} ${bad.length === 1 ? 'row is' : 'rows are'} kept out; line ${row.line} ${row.why}.`, mend: 'Look at the lines listed.' }] : []), // prettier-ignore
    ...(gap ? [{ id: 'gaps', place: 'record', text: `The record has ${gaps.length} ${gaps.length === 1 ? 'gap' : 'gaps'}, first from ${significant(gap.from, 4)} s to ${significant(gap.to, 4)} s.`, mend: 'Nothing, if few: times need not be even.' }] : []), // prettier-ignore
  ];
}

/** What an unknown delay between force and travel leaves open. `byDelay`: change of the drag coefficient a second. */
export function delayFindings(
  { delayBound, also }: TankSetup,
  byDelay: number,
  drag: number,
  period: number,
): Finding[] {
  if (also.has('delay')) return [];
  const degree = (period / 360) * Math.abs(byDelay / drag);
  const text = `A degree of phase between force and travel (${significant((1000 * period) / 360, 3)} ms) changes the drag coefficient by ${significant(100 * degree, 2)} %`;
  if (delayBound === null)
    return [{ id: 'delay-not-stated', place: 'record', text: `${text}; no bound on the delay between the two channels is stated, and the interval carries none.`, mend: 'State one, from a sync event, a run in air with a known mass or a test at several amplitudes and periods.' }]; // prettier-ignore
  const part = Math.abs((byDelay * delayBound) / drag);
  if (part < 0.5) return [];
  return [{ id: 'drag-not-identifiable', place: 'record', text: `${text}; the stated bound of ${significant(1000 * delayBound, 3)} ms leaves it open by ${significant(100 * part, 2)} %: this record does not give the drag coefficient.`, mend: 'Bring force and travel to one clock, or test at several amplitudes and periods.' }]; // prettier-ignore
}

/** The plate's own period on a line that stretches, where it comes near the test's. */
export function stretchFindings({ stiffness }: TankSetup, inertia: number, period: number): Finding[] {
  if (stiffness === null) return [];
  const own = 2 * Math.PI * Math.sqrt(inertia / stiffness);
  if (own <= period / 3) return [];
  return [{ id: 'rig-period', place: 'rig', text: `The plate on its line has a natural period of ${significant(own, 3)} s, more than a third of the test’s ${significant(period, 3)} s: the plate does not move as the ram does.`, mend: 'Measure travel on the plate, or use a stiffer line.' }]; // prettier-ignore
}
