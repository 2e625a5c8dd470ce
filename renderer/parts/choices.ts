import type { Choice } from './ChoiceField.tsx';

/** Values of the document's lists of words, which are words already. */
export const asChoices = (values: readonly string[]): readonly Choice[] =>
  values.map((value) => ({ value, title: value }));
