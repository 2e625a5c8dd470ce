import type { Appraisal } from '../appraise.ts';
import { planFigure } from '../note/drawing-section.ts';
import type { Figure } from '../note/note.ts';
import { printIn } from '../print-in.ts';
import { compared, comparedQuantities } from '../options/compare.ts';
import { comparedWords } from '../options/compared-words.ts';
import { placeWords } from '../place-words.ts';
import { inUnit, printedUnit } from '../quantity/format-quantity.ts';
import type { RefusalText } from '../refusal.ts';

/** Options side by side, as the window shows them. */
export interface ComparisonView {
  readonly base: string | null;
  readonly options: readonly OptionView[];
  readonly quantities: readonly { readonly id: string; readonly title: string }[];
  readonly checks: readonly { readonly id: string; readonly title: string }[];
}

/** One option, or why it could not be appraised. */
export interface OptionView {
  readonly id: string | null;
  readonly title: string;
  readonly faults: readonly RefusalText[];
  readonly numbers: OptionNumbers | null;
}

export interface OptionNumbers {
  readonly plan: Figure;
  readonly quantities: Readonly<Record<string, ComparedQuantity>>;
  readonly highest: { readonly title: string; readonly place: string; readonly utilisation: number } | null;
  readonly fails: number;
  readonly unjudged: number;
  readonly findings: number;
  readonly checks: Readonly<
    Record<string, { readonly utilisation: number | null; readonly verdict: string; readonly place: string }>
  >;
}

export interface ComparedQuantity {
  /** SI. */
  readonly value: number;
  readonly difference: number;
  readonly text: string;
  /** Against the base, as text; empty when there is none. */
  readonly change: string;
  /** The value in the unit that is printed, for an axis. */
  readonly printed: number;
  readonly unit: string;
}

/** An option to be set beside others. */
export interface Contender {
  readonly id: string | null;
  readonly title: string;
  readonly appraisal: Appraisal | null;
  readonly faults: readonly RefusalText[];
}

/** Sets appraisals side by side; changes are counted from `base` (from the first that could be appraised if it could not). */
export function comparisonView(contenders: readonly Contender[], base: string | null): ComparisonView {
  const good = contenders.filter(({ appraisal }) => appraisal);
  const reference = good.find(({ id }) => id === base) ?? good[0];
  const titles = new Map<string, string>();
  const options = contenders.map(({ id, title, appraisal, faults }): OptionView => {
    if (!appraisal || !reference?.appraisal) return { id, title, faults, numbers: null };
    const { model } = appraisal;
    const print = printIn(model.document.units);
    const of = compared(appraisal, reference.appraisal);
    for (const row of Object.values(of.checks)) titles.set(row.id, row.title);
    const highest = of.highest;
    return {
      id,
      title,
      faults,
      numbers: {
        plan: planFigure(model),
        quantities: Object.fromEntries(
          comparedQuantities.map((name) => {
            const { unit } = comparedWords[name];
            const value = of.quantities[name];
            const difference = of.change[name];
            const text = (si: number, figures: number) =>
              name === 'ratio.open' ? `${(si * 100).toFixed(1)} %` : print.quantity(si, unit, figures);
            return [
              name,
              {
                value,
                difference,
                printed: inUnit(value, printedUnit(unit, model.document.units)),
                unit: print.unit(unit),
                text: text(value, 4),
                change: difference === 0 ? '' : `${difference > 0 ? '+' : ''}${text(difference, 3)}`,
              },
            ];
          }),
        ),
        highest:
          highest && highest.utilisation !== null
            ? { title: highest.title, place: placeWords(model, highest.place), utilisation: highest.utilisation }
            : null,
        fails: of.fails,
        unjudged: of.unjudged,
        findings: of.findings,
        checks: Object.fromEntries(
          Object.values(of.checks).map((row) => [
            row.id,
            { utilisation: row.utilisation, verdict: row.verdict, place: placeWords(model, row.place) },
          ]),
        ),
      },
    };
  });
  return {
    base: reference?.id ?? null,
    options,
    quantities: comparedQuantities.map((id) => ({ id, title: comparedWords[id].title })),
    checks: [...titles].map(([id, title]) => ({ id, title })),
  };
}
