import type { SensitivityRecord } from '../document/sensitivity-field.ts';
import { inputWords } from '../options/sensitivity/input-words.ts';
import type { Moved } from '../options/sensitivity/sensitivity.ts';

/** A utilisation as printed, or that there is none. */
export const useWords = (use: number | null): string => use?.toFixed(3) ?? 'cannot be judged';

/** A part as a signed percentage. */
const signed = (part: number): string =>
  part === 0 ? '0 %' : `${part > 0 ? '+' : '−'}${Math.abs(Math.round(1000 * part) / 10)} %`;

/** The ends of a spread. */
export const spreadWords = (low: number, high: number): string => `${signed(low)} to ${signed(high)}`;

/** What governs at an end of a spread, where it is another check. */
export const otherwiseGoverns = (moved: readonly Moved[]): readonly string[] =>
  moved.flatMap(({ input, otherAtLow, otherAtHigh }) =>
    ([['low', otherAtLow], ['high', otherAtHigh]] as const).flatMap(([end, other]) =>
      other ? [`${inputWords[input]} at its ${end}: ${other.title} at ${other.place} governs (${useWords(other.use)}).`] : [],
    ),
  ); // prettier-ignore

/** The distribution of the margin, with what it is of. */
export function togetherWords({ points, seed, watched, mean, quantiles, partOverOne }: SensitivityRecord['together']): string {
  const at = (percent: number) => useWords(quantiles[percent / 5]!);
  return `All at once, each input equally likely anywhere in its spread (seed ${seed}, ${2 * points} states; the highest of: ${watched.join('; ')}): on average ${useWords(mean)}; 5 % of the states at or below ${at(5)}, half at or below ${at(50)}, 95 % at or below ${at(95)}; above 1 in ${(100 * partOverOne).toFixed(1)} %.`;
} // prettier-ignore

/** How sure the parts of the variance are. */
export const sharesWords = ({ points }: SensitivityRecord['together']): string =>
  `Estimated (Saltelli et al. 2010): with ${points} points each part is off by about ${(1 / Math.sqrt(points)).toFixed(2)}, and may come out below 0 or above 1; four times the points halve that.`;

/** A part of the variance as printed. */
export const partWords = (part: number): string => part.toFixed(2).replace('-', '−').replace('−0.00', '0.00');
