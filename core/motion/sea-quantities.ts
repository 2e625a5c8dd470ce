import type { SeaResult } from './sea-record.ts';
import type { MotionQuantity } from './motion-quantities.ts';

const source = 'acceleration integrated twice with the stated high pass, less stroke and stretch';

/** Numbers of a sea record by id, SI. `low` and `high` bound what sensors, clocks and scales leave open. */
export function recordedQuantities(
  result: SeaResult,
): Readonly<Record<string, MotionQuantity & { readonly low?: number; readonly high?: number }>> {
  const put = (value: number, unit: string, title: string, from = source): MotionQuantity => ({ value, unit, title, source: from }); // prettier-ignore
  const { significant, errors } = result;
  const cause = (of: keyof typeof errors, title: string): [string, MotionQuantity] => [`motion.error.${of}`, put(errors[of], 'm', title, 'stated noise through the filter, or stated bound')]; // prettier-ignore
  return {
    'motion.significant': { ...put(significant.value, 'm', 'Significant double amplitude of the plate'), low: significant.low, high: significant.high }, // prettier-ignore
    'motion.peakToPeak': put(result.largest, 'm', 'Largest double amplitude of the plate in this record'),
    ...(result.meanPeriod === null ? {} : { 'motion.zeroCrossingPeriod': put(result.meanPeriod, 's', 'Mean period of the plate’s motion') }), // prettier-ignore
    'motion.float.significant': put(result.floatSignificant, 'm', 'Significant double amplitude of the float at the attachment'), // prettier-ignore
    'motion.stroke.significant': put(result.strokeSignificant, 'm', 'Significant double amplitude of the stroke'),
    'motion.ofFloat': put(significant.value / result.floatSignificant, '1', 'Motion of the plate over that of the float'), // prettier-ignore
    ...(result.within === null ? {} : { 'motion.within': put(result.within, '1', 'Part of the time within the stated double amplitude') }), // prettier-ignore
    ...Object.fromEntries([
      cause('acceleration', 'Left open by the accelerometer’s noise, one deviation'),
      cause('stroke', 'Left open by the stroke’s noise, one deviation'),
      cause('force', 'Left open by the load cell’s noise through the stretch, one deviation'),
      cause('clock', 'Left open by the clocks, of the stroke'),
      cause('scale', 'Left open by the scales, of the stroke'),
    ]),
    ...(result.power === null ? {} : { 'power.takeOff': put(result.power, 'W', 'Mean power into the power take-off', 'mean of force times speed of the stroke') }), // prettier-ignore
  };
}
