import { fieldWords } from '../document/field-words.ts';
import { shown } from '../document/shown.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { ResultSummary } from './register.ts';

/** One difference in words: what, what it was, what it is. */
export interface Change {
  readonly what: string;
  readonly was: string;
  readonly is: string;
}

type Raw = Readonly<Record<string, unknown>>;

/** Every field in which two documents differ, in their order; the window's state is none of them. */
export function inputChanges({ view: _was, ...before }: Raw, { view: _is, ...after }: Raw): readonly Change[] {
  return fieldsThatDiffer(before, after, []);
}

function fieldsThatDiffer(before: unknown, after: unknown, path: readonly string[]): Change[] {
  if (isGroup(before) && isGroup(after))
    return [...new Set([...Object.keys(before), ...Object.keys(after)])].flatMap((key) =>
      fieldsThatDiffer(before[key], after[key], [...path, key]),
    );
  if (Array.isArray(before) && Array.isArray(after) && before.length === after.length)
    return before.flatMap((value, i) => fieldsThatDiffer(value, after[i], [...path, String(i + 1)]));
  if (JSON.stringify(before) === JSON.stringify(after)) return [];
  return [{ what: fieldWords(path.join('.')), was: shown(before), is: shown(after) }];
}

const isGroup = (value: unknown): value is Raw => typeof value === 'object' && value !== null && !Array.isArray(value);

/** What came out otherwise: verdicts and uses of limit states, quantities, findings. Equal to six figures is equal. */
export function resultChanges(before: ResultSummary, after: ResultSummary): readonly Change[] {
  const states = namesOf(before.limitStates, after.limitStates).map((name) => ({
    what: name,
    was: stateWords(before.limitStates.find((state) => state.name === name)),
    is: stateWords(after.limitStates.find((state) => state.name === name)),
  }));
  const ids = [...new Set([...Object.keys(before.quantities), ...Object.keys(after.quantities)])];
  const quantities = ids.map((id) => ({
    what: (after.quantities[id] ?? before.quantities[id])!.title + (id.includes('.') ? ` (${id})` : ''),
    was: quantityWords(before.quantities[id]),
    is: quantityWords(after.quantities[id]),
  }));
  const findings = [
    ...after.findings.filter((text) => !before.findings.includes(text)).map((text) => ({ what: 'Finding', was: 'none', is: text })), // prettier-ignore
    ...before.findings.filter((text) => !after.findings.includes(text)).map((text) => ({ what: 'Finding', was: text, is: 'none' })), // prettier-ignore
  ];
  return [...states, ...quantities, ...findings].filter(({ was, is }) => was !== is);
}

const namesOf = (...lists: ResultSummary['limitStates'][]): string[] => [
  ...new Set(lists.flat().map(({ name }) => name)),
];

function stateWords(state: ResultSummary['limitStates'][number] | undefined): string {
  if (!state) return 'not named';
  const use = state.utilisation === null ? '' : `, highest use ${significant(state.utilisation, 4)}`;
  return `${state.verdict}${use}${state.verdict !== 'passes' && state.governing ? `, ${state.governing}` : ''}`;
}

const quantityWords = (quantity: ResultSummary['quantities'][string] | undefined): string =>
  quantity ? `${significant(quantity.value, 6)} ${quantity.unit}` : 'none';
