import type { SeaResult } from './sea-record.ts';
import type { MotionQuantity } from './motion-quantities.ts';
import type { Cause } from './plate-motion.ts';
import type { PlateWay } from './sea-setup.ts';

/** Where the plate's motion comes from, way by way, as source beside each number. */
export const wayWords: Readonly<Record<PlateWay, string>> = {
  difference: 'acceleration integrated twice with the stated high pass, less stroke and stretch',
  accelerometer: 'the plate’s own acceleration integrated twice with the stated high pass',
  pressure: 'pressure at the plate, the waves’ own pressure taken off by linear theory',
};

/** What leaves the motion open, in the window's and the note's words. */
export const causeWords: Readonly<Record<Cause['id'], string>> = {
  acceleration: 'Left open by the accelerometer’s noise, one deviation',
  stroke: 'Left open by the stroke’s noise, one deviation',
  force: 'Left open by the load cell’s noise through the stretch, one deviation',
  clock: 'Left open by the clocks, of the stroke',
  scale: 'Left open by the scales, of the stroke',
  plate: 'Left open by the noise of the plate’s accelerometer, one deviation',
  pressure: 'Left open by the pressure logger’s noise, one deviation',
  wave: 'Left open by the waves’ pressure taken off',
};

/** Numbers of a sea record by id, SI. `low` and `high` bound what sensors, clocks and scales leave open. */
export function recordedQuantities(
  result: SeaResult,
): Readonly<Record<string, MotionQuantity & { readonly low?: number; readonly high?: number }>> {
  const source = wayWords[result.by];
  const put = (value: number, unit: string, title: string, from = source): MotionQuantity => ({ value, unit, title, source: from }); // prettier-ignore
  const where = (id: string, value: number | null, unit: string, title: string, from?: string) => (value === null ? {} : { [id]: put(value, unit, title, from) }); // prettier-ignore
  const { significant, causes, takeOff, held } = result;
  return {
    'motion.significant': { ...put(significant.value, 'm', 'Significant double amplitude of the plate'), low: significant.low, high: significant.high }, // prettier-ignore
    'motion.peakToPeak': put(result.largest, 'm', 'Largest double amplitude of the plate in this record'),
    ...where('motion.zeroCrossingPeriod', result.meanPeriod, 's', 'Mean period of the plate’s motion'),
    'motion.float.significant': put(result.floatSignificant, 'm', 'Significant double amplitude of the float at the attachment'), // prettier-ignore
    ...where('motion.stroke.significant', result.strokeSignificant, 'm', 'Significant double amplitude of the stroke'),
    ...where('motion.stroke.slow', result.strokeSlow, 'm', 'Of the stroke, what is slower than the high pass'),
    'motion.ofFloat': put(significant.value / result.floatSignificant, '1', 'Motion of the plate over that of the float'), // prettier-ignore
    ...where('motion.within', result.within, '1', 'Part of the time within the stated double amplitude'),
    ...Object.fromEntries(held.map(({ part, doubleAmplitude }) => [`motion.held.${100 * part}`, put(doubleAmplitude, 'm', `Double amplitude within which the plate is ${100 * part} % of the time`)])), // prettier-ignore
    ...Object.fromEntries(causes.map(({ id, kind, value }) => [`motion.error.${id}`, put(value, 'm', causeWords[id], kind === 'noise' ? 'stated noise through the filter' : 'stated bound')])), // prettier-ignore
    ...(takeOff === null
      ? {}
      : {
          'force.mean': put(takeOff.mean, 'N', 'Mean pull of the line', 'as recorded'),
          'force.least': put(takeOff.least, 'N', 'Least pull of the line', 'as recorded'),
          'force.largest': put(takeOff.largest, 'N', 'Largest pull of the line', 'as recorded'),
          'force.slack': put(takeOff.slack, '1', 'Part of the time that the line is slack', 'pull under a fiftieth of its mean'), // prettier-ignore
          ...where('power.takeOff', takeOff.power, 'W', 'Mean power into the power take-off', 'mean of force times speed of the stroke'), // prettier-ignore
          ...where('power.peak', takeOff.peakPower, 'W', 'Largest power into the power take-off', 'largest force times speed of the stroke'), // prettier-ignore
        }),
  };
}
