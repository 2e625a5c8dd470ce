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
    return keysOf(before, after).flatMap((key) => fieldsThatDiffer(before[key], after[key], [...path, key]));
  if (Array.isArray(before) && Array.isArray(after) && before.length === after.length)
    return before.flatMap((value, i) => fieldsThatDiffer(value, after[i], [...path, String(i + 1)]));
  if (JSON.stringify(before) === JSON.stringify(after)) return [];
  return [{ what: fieldWords(path.join('.')), was: shown(before), is: shown(after) }];
}

/** Those of `after` in their order, then what is gone, sorted: a register keeps its documents' keys in no order of theirs. */
const keysOf = (before: Raw, after: Raw): readonly string[] => [
  ...Object.keys(after),
  ...Object.keys(before)
    .filter((key) => !Object.hasOwn(after, key))
    .sort(),
];

const isGroup = (value: unknown): value is Raw => typeof value === 'object' && value !== null && !Array.isArray(value);

/** What came out otherwise: verdicts and uses of limit states, quantities, findings. Equal to six figures is equal. */
export function resultChanges(before: ResultSummary, after: ResultSummary): readonly Change[] {
  const states = namesOf(before.limitStates, after.limitStates).map((name) => ({
    what: name,
    was: stateWords(before.limitStates.find((state) => state.name === name)),
    is: stateWords(after.limitStates.find((state) => state.name === name)),
  }));
  const quantities = grouped(
    keysOf(before.quantities, after.quantities).map((id) => ({
      id,
      what: (after.quantities[id] ?? before.quantities[id])!.title,
      was: quantityWords(before.quantities[id]),
      is: quantityWords(after.quantities[id]),
    })),
  );
  const findings = [
    ...after.findings.filter((text) => !before.findings.includes(text)).map((text) => ({ what: 'Finding', was: 'none', is: text })), // prettier-ignore
    ...before.findings.filter((text) => !after.findings.includes(text)).map((text) => ({ what: 'Finding', was: text, is: 'none' })), // prettier-ignore
  ];
  return [...states, ...quantities, ...findings].filter(({ was, is }) => was !== is);
}

/** The same change of several quantities of one title as one, with what each is of. */
function grouped(changes: readonly (Change & { readonly id: string })[]): Change[] {
  const groups = new Map<string, Change & { readonly ids: readonly string[] }>();
  for (const { id, what, was, is } of changes) {
    const key = JSON.stringify([what, was, is]);
    groups.set(key, { what, was, is, ids: [...(groups.get(key)?.ids ?? []), id] });
  }
  return [...groups.values()].map(({ what, was, is, ids }) => ({ what: `${what} (${ids.join(', ')})`, was, is }));
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
