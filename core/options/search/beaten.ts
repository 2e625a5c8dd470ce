import { asSmall, dominates, isWaterAim, sameAim, type AimId, type Standing } from './aims.ts';
import type { Found } from './search.ts';
import type { WaterGain } from './water-aims.ts';

/** Aims with what is gained in the water in its place; the rest as it stands. */
export const withGain = (aims: readonly AimId[], values: readonly number[], gain: WaterGain): readonly number[] =>
  values.map((value, k) => (isWaterAim(aims[k]!) ? asSmall(aims[k]!, gain[aims[k] as keyof WaterGain]) : value));

/**
 * True where one found puts aside what has `least` of its aims, in the order of `aims`, and leaves at least these checks open (see
 * `dominates`). Solving the water costs more than all else: `most`, what is gained at most, is asked only where one found is as good in every other aim.
 */
export function isBeaten(
  front: readonly Found[],
  aims: readonly AimId[],
  least: Standing,
  most: () => WaterGain,
): boolean {
  if (!aims.some(isWaterAim)) return front.some((one) => dominates(one, least));
  const dry = (values: readonly number[]) => values.filter((_, k) => !isWaterAim(aims[k]!));
  const others = dry(least.aims);
  const rivals = front.filter((one) => !isWorse(dry(one.aims), others));
  if (rivals.length === 0) return false;
  const whole = { ...least, aims: withGain(aims, least.aims, most()) };
  return rivals.some((one) => dominates(one, whole));
}

/** True where `a` is worse than `b` in some. */
const isWorse = (a: readonly number[], b: readonly number[]): boolean =>
  a.some((value, k) => value > b[k]! + sameAim * Math.max(Math.abs(value), Math.abs(b[k]!)));
