import { refusal } from '../refusal.ts';
import { mergeDifference } from './merge-difference.ts';
import { mergePatch } from './merge-patch.ts';
import type { RawDocument } from './read-document.ts';
import type { MergePatch } from './schema.ts';

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };
/** Names and list indices from the document down to a field. */
export type FieldPath = readonly [string, ...(string | number)[]];

/**
 * A change of a document, as data: undo, journal, worker and conflicts are one mechanism because nothing else writes.
 * `option`: the option that shall differ there, or null for the document as it stands. A value is stored as it was
 * typed, right or wrong: reading the document says what is wrong with it.
 */
export type Edit =
  | { readonly kind: 'setField'; readonly option: string | null; readonly path: FieldPath; readonly value: Json }
  | { readonly kind: 'clearField'; readonly option: string | null; readonly path: FieldPath }
  /** Closes bays with a panel design, each by itself, or opens them. */
  | {
      readonly kind: 'coverBays';
      readonly option: string | null;
      readonly bays: readonly string[];
      readonly design: string | null;
    }
  | { readonly kind: 'renameDesign'; readonly from: string; readonly to: string }
  | { readonly kind: 'addOption'; readonly option: RawOption; readonly before?: string }
  | { readonly kind: 'describeOption'; readonly id: string; readonly title: string; readonly remark: string | null }
  | { readonly kind: 'removeOption'; readonly id: string }
  | { readonly kind: 'chooseOption'; readonly id: string | null }
  | { readonly kind: 'replaceDocument'; readonly document: RawDocument };

/** An option as it stands in the file. */
export interface RawOption {
  readonly id: string;
  readonly title: string;
  readonly base: string | null;
  readonly remark?: string;
  readonly changes: { readonly [key: string]: Json };
}

/** Parts in which an option may differ. */
export const optionalParts: ReadonlySet<string> = new Set([
  'designs',
  'panels',
  'grid',
  'loads',
  'water',
  'protection',
  'basis',
  'fatigue',
  'durability',
  'recovery',
  'hydrodynamics',
  'testUsed',
]);

/**
 * The document after an edit; the one given stays as it was, and shares with it what did not change.
 * Refuses what cannot be done at all: an option that is not there, a path through something that is no group.
 */
export function applyEdit(raw: RawDocument, edit: Edit): RawDocument {
  switch (edit.kind) {
    case 'setField':
      requireName(edit.path);
      return edit.option === null
        ? (withValue(raw, edit.path, edit.value) as RawDocument)
        : withChanges(raw, edit.option, (changes, under) => setDifference(changes, under, edit.path, edit.value));
    case 'clearField':
      return edit.option === null
        ? (withValue(raw, edit.path, undefined) as RawDocument)
        : withChanges(raw, edit.option, (changes, under) => setDifference(changes, under, edit.path, undefined));
    case 'coverBays':
      return edit.bays.reduce<RawDocument>(
        (on, bay) =>
          applyEdit(
            on,
            edit.design === null
              ? { kind: 'clearField', option: edit.option, path: ['panels', bay] }
              : { kind: 'setField', option: edit.option, path: ['panels', bay], value: edit.design },
          ),
        raw,
      );
    case 'renameDesign':
      return designRenamed(raw, edit.from, edit.to);
    case 'addOption': {
      const { option, before } = edit;
      const all = optionsOf(raw);
      if (all.some(({ id }) => id === option.id))
        throw refusal({
          what: `There is an option “${option.id}” already`,
          where: { path: 'options' },
          mend: 'Give the new option another id.',
        });
      const at = before === undefined ? all.length : all.findIndex(({ id }) => id === before);
      return { ...raw, options: [...all.slice(0, at), option, ...all.slice(at)] };
    }
    case 'describeOption':
      return withOption(raw, edit.id, (option) => {
        const { remark: _old, ...rest } = option;
        return { ...rest, title: edit.title, ...(edit.remark === null ? {} : { remark: edit.remark }) };
      });
    case 'removeOption':
      return optionRemoved(raw, edit.id);
    case 'chooseOption':
      if (edit.id !== null) optionNamed(raw, edit.id);
      return { ...raw, chosen: edit.id };
    case 'replaceDocument':
      return edit.document;
  }
}

/** The raw document with the differences of an option and of its bases laid on. Refuses an option that is not there, and a circle. */
export const laidRaw = (raw: RawDocument, option: string | null): RawDocument =>
  optionLine(raw, option).reduce<unknown>(
    (on, { changes }) => mergePatch(on, changes as MergePatch),
    raw,
  ) as RawDocument;

/** An option with its bases, the most basic first; empty for the document as it stands. Refuses as `laidRaw` does. */
export function optionLine(raw: RawDocument, option: string | null): readonly RawOption[] {
  const line: RawOption[] = [];
  for (let id = option; id !== null;) {
    const found = optionNamed(raw, id);
    if (line.includes(found))
      throw refusal({
        what: `The bases of option “${id}” go in a circle`,
        where: { path: 'options' },
        mend: 'Give one of them the base null.',
      });
    line.unshift(found);
    id = found.base ?? null;
  }
  return line;
}

/** Value at a path, or undefined where there is none. */
export function valueAt(raw: unknown, path: readonly (string | number)[]): unknown {
  let value = raw;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<string, unknown>)[key];
  }
  return value;
}

/** A copy with another value at the path; undefined takes the member away. Groups on the way are made where they lack. */
function withValue(on: unknown, [key, ...rest]: readonly (string | number)[], value: Json | undefined): unknown {
  if (Array.isArray(on)) {
    const at = Number(key);
    if (!Number.isInteger(at) || at < 0 || at > on.length) throw noWay(key!);
    const list = [...(on as unknown[])];
    if (rest.length > 0) list[at] = withValue(list[at], rest, value);
    else if (value === undefined) list.splice(at, 1);
    else list[at] = value;
    return list;
  }
  if (typeof on !== 'object' && on !== undefined) throw noWay(key!);
  const members = { ...(on as Record<string, unknown> | undefined) };
  if (rest.length > 0) members[key!] = withValue(members[key!], rest, value);
  else if (value === undefined) delete members[key!];
  else members[key!] = value;
  return members;
}

const noWay = (key: string | number) =>
  refusal({
    what: `There is no field “${key}” here`,
    where: { path: String(key) },
    mend: 'Undo the last change, or set the group as a whole.',
  });

/** Keys that JavaScript gives a meaning of its own never become names. */
function requireName(path: FieldPath): void {
  for (const key of path)
    if (key === '__proto__' || key === 'constructor' || key === 'prototype')
      throw refusal({
        what: `A name cannot be “${key}”`,
        where: { path: path.join('.') },
        mend: 'Choose another name.',
      });
}

/** Lays one more difference into an option's changes: only what differs from its base is kept. Lists are replaced whole (RFC 7396). */
function setDifference(
  changes: RawOption['changes'],
  under: RawDocument,
  path: FieldPath,
  value: Json | undefined,
): RawOption['changes'] {
  if (!optionalParts.has(path[0]))
    throw refusal({
      what: `An option cannot differ in “${path[0]}”`,
      where: { path: path.join('.') },
      mend: 'Change it in the document as it stands: it is then so in every option.',
    });
  const now = mergePatch(under, changes as MergePatch);
  // The first list on the way: from there on the difference is the list as a whole.
  const list = path.findIndex((_, n) => n > 0 && Array.isArray(valueAt(now, path.slice(0, n))));
  const stop = list < 0 ? path.length : list;
  const to = path.slice(0, stop) as unknown as FieldPath;
  const whole = list < 0 ? value : (withValue(valueAt(now, to), path.slice(stop), value) as Json);
  const before = valueAt(under, to) as Json | undefined;
  const difference = whole === undefined ? (before === undefined ? undefined : null) : mergeDifference(before, whole);
  return pruned(withValue(changes, to, difference) as RawOption['changes']);
}

/** Without groups that differ in nothing. */
function pruned(changes: RawOption['changes']): RawOption['changes'] {
  const kept = Object.entries(changes).flatMap(([key, value]): [string, Json][] => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return [[key, value]];
    const inner = pruned(value as RawOption['changes']);
    return Object.keys(inner).length === 0 && Object.keys(value).length > 0 ? [] : [[key, inner]];
  });
  return Object.fromEntries(kept.filter(([, value]) => !isEmptyGroup(value)));
}

const isEmptyGroup = (value: Json): boolean =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && Object.keys(value).length === 0;

/** The options of a document as they stand in it; none where it holds no list of them. */
export function optionsOf(raw: RawDocument): readonly RawOption[] {
  return Array.isArray(raw['options']) ? (raw['options'] as RawOption[]) : [];
}

function optionNamed(raw: RawDocument, id: string): RawOption {
  const all = optionsOf(raw);
  const found = all.find((option) => option.id === id);
  if (found) return found;
  throw refusal({
    what: `There is no option “${id}”`,
    where: { path: 'options' },
    mend: `Name one of: ${all.map((option) => option.id).join(', ') || 'none yet'}.`,
  });
}

function withOption(raw: RawDocument, id: string, change: (option: RawOption) => RawOption): RawDocument {
  const found = optionNamed(raw, id);
  return { ...raw, options: optionsOf(raw).map((option) => (option === found ? change(option) : option)) };
}

function withChanges(
  raw: RawDocument,
  id: string,
  change: (changes: RawOption['changes'], under: RawDocument) => RawOption['changes'],
): RawDocument {
  return withOption(raw, id, (option) => ({
    ...option,
    changes: change(option.changes, laidRaw(raw, option.base ?? null)),
  }));
}

/** What builds on a removed option takes its differences over, so that it stays what it was. */
function optionRemoved(raw: RawDocument, id: string): RawDocument {
  const gone = optionNamed(raw, id);
  const under = laidRaw(raw, gone.base ?? null);
  const options = optionsOf(raw)
    .filter((option) => option !== gone)
    .map((option) => {
      if (option.base !== id) return option;
      const full = mergePatch(mergePatch(under, gone.changes as MergePatch), option.changes as MergePatch);
      const changes = Object.fromEntries(
        [...optionalParts].flatMap((part) => {
          const difference = mergeDifference(valueAt(under, [part]) as Json | undefined, valueAt(full, [part]) as Json);
          return difference === undefined ? [] : [[part, difference]];
        }),
      );
      return { ...option, base: gone.base ?? null, changes };
    });
  return { ...raw, options, ...(raw['chosen'] === id ? { chosen: null } : {}) };
}

/** A design under another name, wherever it is named. */
function designRenamed(raw: RawDocument, from: string, to: string): RawDocument {
  requireName(['designs', to]);
  const known = [raw, ...optionsOf(raw).map(({ changes }) => changes)].map((part) => valueAt(part, ['designs']));
  const has = (name: string) =>
    known.some((designs) => typeof designs === 'object' && designs !== null && Object.hasOwn(designs, name));
  const where = { path: `designs.${from}` };
  if (!has(from))
    throw refusal({ what: `There is no panel design “${from}”`, where, mend: 'Name one that the document has.' });
  if (has(to)) throw refusal({ what: `There is a panel design “${to}” already`, where, mend: 'Choose another name.' });
  const renamed = (part: Readonly<Record<string, unknown>>): Record<string, unknown> => ({
    ...part,
    ...(isGroup(part['designs'])
      ? { designs: mapped(part['designs'], (key, value) => [key === from ? to : key, value]) }
      : {}),
    ...(isGroup(part['panels'])
      ? { panels: mapped(part['panels'], (key, value) => [key, value === from ? to : value]) }
      : {}),
  });
  return {
    ...renamed(raw),
    ...(Array.isArray(raw['options'])
      ? { options: optionsOf(raw).map((option) => ({ ...option, changes: renamed(option.changes) })) }
      : {}),
  };
}

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const mapped = (group: Record<string, unknown>, entry: (key: string, value: unknown) => [string, unknown]) =>
  Object.fromEntries(Object.entries(group).map(([key, value]) => entry(key, value)));
