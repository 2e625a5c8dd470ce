import type { TankTest } from '../document/tests-field.ts';
import { significant } from '../quantity/format-quantity.ts';
import { usualStep } from '../record/read-recording.ts';
import type { Recording } from '../record/record.ts';
import { refusal } from '../refusal.ts';

/** Travel (m, up) and pull of the line (N) as they go into the fit. Arrays of like length, SI. */
export interface Conditioned {
  readonly time: Float64Array;
  readonly travel: Float64Array;
  readonly force: Float64Array;
  /** What was done, one sentence a step; empty where the readings are as they came. */
  readonly steps: readonly string[];
}

/**
 * Takes signs, factors and zero, trims, and brings the force back by what it is read late (linear between its readings; none
 * is made up in a gap). The record itself stays as it is. Refuses a trim that leaves fewer than three readings.
 */
export function conditioned(
  { time, channels }: Recording,
  { reading, conditioning }: Pick<TankTest, 'reading' | 'conditioning'>,
): Conditioned {
  const { from, to, travelFactor = 1, forceFactor = 1, forceZero, forceLate } = conditioning;
  const [travel, force] = channels.map(({ values }) => values) as [Float64Array, Float64Array];
  const steps: string[] = [];
  const z = reading.travelUp === 'up' ? travelFactor : -travelFactor;
  const F = reading.forcePositive === 'pulls' ? forceFactor : -forceFactor;
  const zero = forceZero?.si ?? 0;
  if (reading.travelUp === 'down') steps.push('Travel is turned round: the record counts it downwards.');
  if (reading.forcePositive === 'pushes') steps.push('Force is turned round: the record counts a push as positive.');
  if (travelFactor !== 1) steps.push(`Travel is multiplied by ${travelFactor} (calibration).`);
  if (zero !== 0) steps.push(`${significant(zero, 4)} N is taken off the force (zero of the load cell).`);
  if (forceFactor !== 1) steps.push(`Force is multiplied by ${forceFactor} (calibration).`);

  const [start, end] = [from?.si ?? -Infinity, to?.si ?? Infinity];
  const late = forceLate?.si ?? 0;
  const widest = 1.5 * usualStep(time);
  const kept = { time: time.slice(), travel: travel.slice(), force: force.slice() };
  let [n, trimmed, without, next] = [0, 0, 0, 0];
  for (let i = 0; i < time.length; i++) {
    const t = time[i]!;
    if (t < start || t > end) {
      trimmed++;
      continue;
    }
    let f = force[i]!;
    if (late !== 0) {
      while (next < time.length && time[next]! < t + late) next++;
      const [after, before] = [time[next], time[next - 1]];
      if (after === t + late) f = force[next]!;
      else if (after === undefined || before === undefined || after - before > widest) {
        without++;
        continue;
      } else f = force[next - 1]! + ((t + late - before) / (after - before)) * (force[next]! - force[next - 1]!);
    }
    kept.time[n] = t;
    kept.travel[n] = z * travel[i]!;
    kept.force[n] = F * (f - zero);
    n++;
  }
  if (n < 3)
    throw refusal({
      what: `Of ${time.length} readings ${n} lie in the part that is taken`,
      where: { field: 'conditioning' },
      mend: `Take a part between 0 s and ${significant(time.at(-1)!, 4)} s.`,
    });
  if (trimmed > 0) steps.push(`${trimmed} of ${time.length} readings are left out: before ${significant(Math.max(0, start), 4)} s or after ${end === Infinity ? 'the end' : `${significant(end, 4)} s`}.`); // prettier-ignore
  if (late !== 0) steps.push(`The force is taken back by ${significant(1000 * late, 3)} ms, straight between its readings${without > 0 ? `; ${without} readings at the end or beside a gap have none then and are left out` : ''}.`); // prettier-ignore
  if (steps.length > 0 && conditioning.source !== undefined) steps.push(`Known from: ${conditioning.source}.`);
  return {
    time: kept.time.subarray(0, n),
    travel: kept.travel.subarray(0, n),
    force: kept.force.subarray(0, n),
    steps,
  };
}
