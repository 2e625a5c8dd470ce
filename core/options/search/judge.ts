import { notSolvedYet } from '../../appraise.ts';
import type { CheckRow, Side } from '../../checks/check-row.ts';
import { checkRows } from '../../checks/evaluate-check.ts';
import { checks } from '../../checks/index.ts';
import type { Check } from '../../checks/check.ts';
import type { Situation } from '../../loads/situation.ts';
import type { PlateDocument } from '../../document/schema.ts';
import type { Model } from '../../model.ts';
import { isOfThePanel } from './of-the-panel.ts';

/** What stops an option: the gravest of the first rows met that the search does not allow; of those that other panels change nothing of,
 *  the first. */
export interface Stop {
  /** With the whole plate's forces: `<id>-by-solution`. */
  readonly check: string;
  readonly title: string;
  readonly place: string;
  readonly situation: string | null;
  readonly utilisation: number | null;
  readonly reason: string;
}

export type Judgement =
  /** `open`: ids of the checks that cannot be judged somewhere, sorted. `governs`: place in `checks` of the check with the highest
   *  utilisation; null where none has one. */
  | { readonly holds: true; readonly use: number; readonly open: readonly string[]; readonly governs: number | null }
  /** `ofThePanel`: places at which other panels that lie the same in plan and are no lighter change nothing of it. */
  | { readonly holds: false; readonly stop: Stop; readonly ofThePanel: readonly string[] }
  | { readonly holds: false; readonly beaten: true; readonly governs: number };

/**
 * Judges a model by every check that is not set aside, in the given order, and leaves off at the first that stops it:
 * the same rows as `appraise` makes, without findings, quantities and words for what nobody will look at.
 * `order`: indices into `checks`. `beatenAt`: true where an option with this utilisation, or more, is beaten by one found
 * if it leaves at least these checks open; both only grow, so that the checks and situations that are left need not be looked at, nor these
 * solved. `governs` is then the check that decided it. `rowsOf`: see `handRows`.
 */
export function judge(
  model: Model,
  order: readonly number[],
  { aside, judged }: { readonly aside: ReadonlySet<string>; readonly judged: boolean },
  beatenAt: (use: number, open: readonly string[]) => boolean = () => false,
  rowsOf: RowsOf = (check, model, of) => checkRows(check, model, of).rows,
): Judgement {
  let use = 0;
  let governs: number | null = null;
  const opened: string[] = [];
  const open = () => [...opened].sort();
  for (const at of order) {
    const check = checks[at]!;
    if (aside.has(check.id)) continue;
    let stopping: CheckRow | null = null;
    for (const situation of check.once ? model.loads.situations.slice(0, 1) : model.loads.situations) {
      const rows = rowsOf(check, model, [situation]);
      let more = false;
      const alone = rows.filter(({ verdict, place }) => verdict === 'fails' && isOfThePanel(check, place, situation));
      const barring = worstStop(alone, { aside, judged });
      if (barring) return { holds: false, stop: stopOf(barring), ofThePanel: alone.map(({ place }) => place) };
      stopping = worstStop(stopping ? [stopping, ...rows] : rows, { aside, judged });
      for (const row of rows) {
        if (aside.has(row.limitState)) continue;
        if (row.verdict === 'cannot be judged' && !opened.includes(check.id)) {
          opened.push(check.id);
          more = true;
        }
        const known = knownUse(row);
        if (row.detailing || known === null || known <= use) continue;
        use = known;
        governs = at;
        more = true;
      }
      if (more && !stopping && beatenAt(use, open())) return { holds: false, beaten: true, governs: at };
    }
    if (stopping) return { holds: false, stop: stopOf(stopping), ofThePanel: [] };
  }
  return { holds: true, use, open: open(), governs };
}

/** A check's rows in some situations. */
type RowsOf = (check: Check, model: Model, of: readonly Situation[]) => readonly CheckRow[];

/** A check's rows by hand, of a model that is to be judged with the whole plate's forces as well: see `handRow`. */
export function handRows(check: Check, model: Model, of: readonly Situation[]): readonly CheckRow[] {
  return checkRows(check, asUnsolved(model), of).rows.flatMap((row) => handRow(row, model.document) ?? []);
}

const unsolved = new WeakMap<Model, Model>();
function asUnsolved(model: Model): Model {
  const made = unsolved.get(model) ?? { ...model, solved: { missing: notSolvedYet } };
  unsolved.set(model, made);
  return made;
}

/**
 * The hand's side of a row of a plate that is not solved yet: the row that comes of both sides is no less grave. Null for a row that
 * says nothing before the plate is solved, and where the engineer takes the solver's demand even if it is the smaller.
 */
export function handRow(row: CheckRow, { forces }: Pick<PlateDocument, 'forces'>): CheckRow | null {
  if (row.both === null) return row.verdict === 'cannot be judged' && row.reason === notSolvedYet ? null : row;
  const falls = (forces?.choose ?? []).some(({ check, place, take }) => take === 'solver' && check === row.id && (!place || place === row.place)); // prettier-ignore
  return falls ? null : { ...row, ...row.both.hand, both: null };
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

export function stopOf({ id, title, place, situation, utilisation, reason, both }: CheckRow): Stop {
  const bySolver = both?.governs === 'solver';
  return {
    check: bySolver ? `${id}-by-solution` : id,
    title: bySolver ? `${title}, with the whole plate’s forces` : title,
    place,
    situation,
    utilisation,
    reason,
  };
}

/** A row's utilisation; of one that cannot be judged with both forces, that of the side that is known. */
export function knownUse({ utilisation, both, verdict }: CheckRow): number | null {
  if (utilisation !== null || both === null || verdict !== 'cannot be judged') return utilisation;
  const of = (side: Side) => side.utilisation ?? -1;
  const known = Math.max(of(both.hand), of(both.solver));
  return known < 0 ? null : known;
}

/** The governing utilisation among rows that are not set aside; a detailing rule governs nothing. */
export function useOf(rows: readonly CheckRow[], aside: ReadonlySet<string>): number {
  return rows.reduce(
    (most, row) =>
      row.detailing || row.verdict === 'not applicable' || aside.has(row.id) || aside.has(row.limitState)
        ? most
        : Math.max(most, knownUse(row) ?? 0),
    0,
  );
}

/** Ids of the checks that cannot be judged somewhere and are not set aside, sorted. */
export function openOf(rows: readonly CheckRow[], aside: ReadonlySet<string>): readonly string[] {
  const open = rows.filter(
    ({ id, limitState, verdict }) => verdict === 'cannot be judged' && !aside.has(id) && !aside.has(limitState),
  );
  return [...new Set(open.map(({ id }) => id))].sort();
}
