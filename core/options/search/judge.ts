import type { CheckRow } from '../../checks/check-row.ts';
import { checkRows } from '../../checks/evaluate-check.ts';
import { checks } from '../../checks/index.ts';
import type { Model } from '../../model.ts';

/** What stops an option: the gravest of the first rows met that the search does not allow. */
export interface Stop {
  readonly check: string;
  readonly title: string;
  readonly place: string;
  readonly situation: string | null;
  readonly utilisation: number | null;
  readonly reason: string;
}

export type Judgement =
  /** `governs`: place in `checks` of the check with the highest utilisation; null where none has one. */
  | { readonly holds: true; readonly use: number; readonly unjudged: number; readonly governs: number | null }
  | { readonly holds: false; readonly stop: Stop }
  | { readonly holds: false; readonly beaten: true; readonly governs: number };

/**
 * Judges a model by every check that is not set aside, in the given order, and leaves off at the first that stops it:
 * the same rows as `appraise` makes, without findings, quantities and words for what nobody will look at.
 * `order`: indices into `checks`. `beatenAt`: true where an option with this utilisation, or more, is beaten by one found;
 * the highest so far only grows, so that the checks that are left need not be made.
 */
export function judge(
  model: Model,
  order: readonly number[],
  { aside, judged }: { readonly aside: ReadonlySet<string>; readonly judged: boolean },
  beatenAt: (use: number) => boolean = () => false,
): Judgement {
  let use = 0;
  let governs: number | null = null;
  let unjudged = 0;
  for (const at of order) {
    const check = checks[at]!;
    if (aside.has(check.id)) continue;
    const { rows } = checkRows(check, model);
    const stopping = worstStop(rows, { aside, judged });
    if (stopping) return { holds: false, stop: stopOf(stopping) };
    for (const row of rows) {
      if (aside.has(row.limitState)) continue;
      if (row.verdict === 'cannot be judged') unjudged++;
      if (row.detailing || row.utilisation === null || row.utilisation <= use) continue;
      use = row.utilisation;
      governs = at;
    }
    if (governs === at && beatenAt(use)) return { holds: false, beaten: true, governs };
  }
  return { holds: true, use, unjudged, governs };
}

/** The gravest row that the search does not allow, or null. */
export function worstStop(
  rows: readonly CheckRow[],
  { aside, judged }: { readonly aside: ReadonlySet<string>; readonly judged: boolean },
): CheckRow | null {
  let worst: CheckRow | null = null;
  for (const row of rows) {
    if (aside.has(row.id) || aside.has(row.limitState)) continue;
    if (row.verdict !== 'fails' && !(judged && row.verdict === 'cannot be judged')) continue;
    if (!worst || (row.utilisation ?? Infinity) > (worst.utilisation ?? Infinity)) worst = row;
  }
  return worst;
}

export const stopOf = ({ id, title, place, situation, utilisation, reason }: CheckRow): Stop => ({
  check: id,
  title,
  place,
  situation,
  utilisation,
  reason,
});

/** The governing utilisation among rows that are not set aside; a detailing rule governs nothing. */
export function useOf(rows: readonly CheckRow[], aside: ReadonlySet<string>): number {
  return rows.reduce(
    (most, row) =>
      row.detailing ||
      row.utilisation === null ||
      row.verdict === 'not applicable' ||
      aside.has(row.id) ||
      aside.has(row.limitState)
        ? most
        : Math.max(most, row.utilisation),
    0,
  );
}
