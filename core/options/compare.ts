import { appraise, type Appraisal } from '../appraise.ts';
import { graver, isKeptRule, type CheckRow } from '../checks/check-row.ts';
import { highestOf } from '../limit-states.ts';
import type { SolvedForces } from '../loads/solved-forces.ts';
import type { RawDocument } from '../document/read-document.ts';
import type { PlateDocument } from '../document/schema.ts';
import { Refusal } from '../refusal.ts';

/** One option beside the others: what it costs, what governs, and how that differs from the base of the comparison. */
export interface ComparedOption {
  readonly id: string | null;
  readonly title: string;
  readonly quantities: Readonly<Record<ComparedQuantity, number>>;
  /** Change of each quantity against the base of the comparison. */
  readonly change: Readonly<Record<ComparedQuantity, number>>;
  /** Gravest row of each limit state. */
  readonly governing: Readonly<Record<string, CheckRow>>;
  /** The highest utilisation of all rows that measure a strength, or break a rule. */
  readonly highest: CheckRow | null;
  /** Gravest row of each check, by check id. */
  readonly checks: Readonly<Record<string, CheckRow>>;
  readonly fails: number;
  readonly unjudged: number;
  readonly findings: number;
}

/** Quantities set side by side: mass and openness first, then what drives cost. */
export const comparedQuantities = [
  'mass.air', 'mass.panels', 'weight.submerged', 'area.open', 'ratio.open',
  'cost.plateArea', 'cost.cutLength', 'cost.holes', 'cost.bolts', 'cost.weldLength', 'cost.heaviestPanel',
] as const; // prettier-ignore
export type ComparedQuantity = (typeof comparedQuantities)[number];

export interface Comparison {
  readonly base: string | null;
  readonly options: readonly ComparedOption[];
  readonly appraisals: readonly Appraisal[];
}

/** Appraises the document as it stands and each of its options, and sets them against `base`. `solved`: forces of the whole
 *  plate under an option, where there are any. */
export function compare(
  raw: RawDocument,
  document: PlateDocument,
  base: string | null = null,
  solved: (option: string | null) => SolvedForces | undefined = () => undefined,
): Comparison {
  const ids = [null, ...document.options.map(({ id }) => id)];
  const appraisals = ids.map((id) => named(document, id, () => appraise(raw, document, id, solved(id))));
  const reference = appraisals[ids.indexOf(base)] as Appraisal;
  return { base, appraisals, options: appraisals.map((appraisal) => compared(appraisal, reference)) };
}

/** What refuses an option says which: the note of another may have been asked for. */
function named<T>({ options }: PlateDocument, id: string | null, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Refusal) || id === null) throw error;
    const { title } = options.find((option) => option.id === id)!;
    const [first, ...others] = error.all.map((text) => ({ ...text, what: `Option “${title}”: ${text.what}` }));
    throw new Refusal([first!, ...others]);
  }
}

/** One appraisal set against another. */
export function compared(appraisal: Appraisal, base: Appraisal): ComparedOption {
  const made = appraisal.rows.filter(({ verdict }) => verdict !== 'not applicable');
  const value = (of: Appraisal, id: ComparedQuantity) => of.quantities[id]?.value as number;
  const record = (make: (id: ComparedQuantity) => number) =>
    Object.fromEntries(comparedQuantities.map((id) => [id, make(id)])) as Record<ComparedQuantity, number>;
  const checks: Record<string, CheckRow> = {};
  for (const row of made) {
    const leader = checks[row.id];
    if (!leader || graver(row, leader) < 0) checks[row.id] = row;
  }
  return {
    id: appraisal.optionId,
    title: appraisal.optionTitle,
    quantities: record((id) => value(appraisal, id)),
    change: record((id) => value(appraisal, id) - value(base, id)),
    governing: appraisal.governing,
    highest: highestOf(made.filter((row) => !isKeptRule(row))),
    checks,
    fails: made.filter(({ verdict }) => verdict === 'fails').length,
    unjudged: made.filter(({ verdict }) => verdict === 'cannot be judged').length,
    findings: appraisal.findings.length,
  };
}
