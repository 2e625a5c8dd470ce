import type { ComparisonView, OptionView } from './comparison-view.ts';

/** A comparison as it is told: of options that are as they were told last only the id. */
export type ToldComparison = Omit<ComparisonView, 'options'> & {
  readonly options: readonly (OptionView | Unchanged)[];
};
interface Unchanged {
  readonly id: string | null;
  readonly isSame: true;
}

/** What differs from what was told; `told` holds the text of each option as it was, and is brought up to date. */
export function toldComparison(view: ComparisonView, told: Map<string | null, string>): ToldComparison {
  const known = new Map(told);
  told.clear();
  return {
    ...view,
    options: view.options.map((option) => {
      const text = JSON.stringify(option);
      told.set(option.id, text);
      return known.get(option.id) === text ? { id: option.id, isSame: true } : option;
    }),
  };
}

/** The whole again, with the very objects of before for what is the same: what shows them has nothing to draw anew. */
export function heardComparison(told: ToldComparison, before: ComparisonView | null): ComparisonView {
  const options = told.options.flatMap((option) => {
    if (!('isSame' in option)) return [option];
    const same = before?.options.find(({ id }) => id === option.id);
    return same ? [same] : [];
  });
  const isAsBefore =
    before !== null &&
    before.base === told.base &&
    before.options.length === options.length &&
    options.every((option, i) => option === before.options[i]) &&
    JSON.stringify([before.quantities, before.checks]) === JSON.stringify([told.quantities, told.checks]);
  return isAsBefore ? before : { ...told, options };
}
