import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import { leftOpen } from './plate-motion.ts';
import type { SeaResult } from './sea-record.ts';
import type { SeaChannels, SeaSetup } from './sea-setup.ts';

/** What spoils a sea record, in words. `noise`: of the float's accelerometer, as taken. */
export function seaFindings(
  found: Omit<SeaResult, 'findings'>,
  channels: SeaChannels,
  setup: SeaSetup,
  noise: number,
): Finding[] {
  const { causes, significant: motion, ways, takeOff, strokeSlow, by } = found;
  const { random, bound } = leftOpen(causes);
  const findings: Finding[] = [];
  const say = (id: string, place: string, text: string, mend: string): void => void findings.push({ id, place, text, mend }); // prettier-ignore
  if (random + bound > motion.value / 8)
    say('motion-drowned', 'plate', `What the sensors leave open (${significant(4 * (random + bound), 2)} m of a significant double amplitude) is more than half of the motion found, ${significant(motion.value, 3)} m: the record says how large it can be, not how large it was.`, 'Carry an accelerometer or a pressure logger on the plate, or better clocks and scales.'); // prettier-ignore
  if (setup.accelerationNoise === null && by !== 'accelerometer')
    say('noise-from-record', 'acceleration', `The accelerometer’s noise is not stated; ${significant(noise, 2)} m/s² is taken, from the fastest quarter of its spectrum. Slow drift is not in it.`, 'State it from the sensor’s sheet or from a record at rest.'); // prettier-ignore
  if (by === 'difference' && setup.clock === 0)
    say('clock-not-stated', 'stroke', 'No bound on the difference of the two clocks is stated, and the band carries none: 10 ms between float and stroke already read as a motion of the plate.', 'State one, from a sync event or from how the readings are stamped.'); // prettier-ignore
  if (setup.axes === 'body' && !channels.pitch)
    say('pitch-not-recorded', 'acceleration', 'The accelerometer turns with the float, and no pitch is recorded: its readings are taken as vertical.', 'Record pitch, or an accelerometer that keeps to the vertical.'); // prettier-ignore
  else if (setup.axes === 'body' && !channels.ahead)
    say('ahead-not-recorded', 'acceleration', 'The reading along the deck is not recorded; it is taken as nil, as on a float that lies on the slope of the waves.', 'Record it.'); // prettier-ignore
  if (setup.arm !== 0 && !channels.pitch)
    say('arm-without-pitch', 'pitch', 'The attachment lies ahead of the accelerometer, and no pitch is recorded: what pitch raises is read as motion of the plate.', 'Record pitch, or set the accelerometer over the attachment.'); // prettier-ignore
  if (channels.lineAngle && setup.lineLength === null)
    say('angle-without-length', 'line angle', 'The angle of the line is recorded and its length is not stated: the line is taken as hanging straight down.', 'State the length of the line.'); // prettier-ignore
  if (channels.pressure && (setup.plateDepth === null || setup.density === null))
    say('pressure-without-depth', 'pressure', 'Pressure is recorded, and the plate’s depth or the water’s density is not stated: the waves’ own pressure cannot be taken off, and the logger is not used.', 'State both.'); // prettier-ignore
  if (setup.stiffness !== null && !channels.force)
    say('stretch-without-force', 'force', 'The line’s stiffness is stated and its pull is not recorded: its stretch is read as motion of the plate.', 'Record the pull.'); // prettier-ignore
  const other = ways.find(({ apart, significant: own }) => apart > Math.max(2 * (openOf(own) + openOf(motion)), motion.value / 10)); // prettier-ignore
  if (other)
    say('ways-disagree', 'plate', `Two ways of finding the plate’s motion, ${by} and ${other.by}, lie ${significant(other.apart, 3)} m apart, more than twice what their sensors leave open: a scale, a clock or a place of a sensor is not what is stated.`, 'Look at the first minute of both; find the sync event again.'); // prettier-ignore
  if (strokeSlow !== null && strokeSlow > 0.1 * found.floatSignificant)
    say('slow-motion-left-out', 'stroke', `The stroke also moves more slowly than the high pass, by ${significant(strokeSlow, 3)} m (four deviations): float or plate did, and it is in no number here.`, 'Take a high pass of a longer period if the accelerometer allows it.'); // prettier-ignore
  if (takeOff && takeOff.slack > 0)
    say('line-slack', 'force', `The line hangs slack ${significant(100 * takeOff.slack, 2)} % of the time; its largest pull is ${significant(takeOff.largest / takeOff.mean, 3)} of the mean. While it is slack, stroke is not the distance to the plate.`, 'Look at the force beside the stroke; a heavier plate or a softer power take-off keeps it taut.'); // prettier-ignore
  return findings;
}

const openOf = ({ low, high }: SeaResult['significant']): number => high - low;
