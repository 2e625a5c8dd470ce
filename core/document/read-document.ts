import type { z } from 'zod';
import { Refusal, refusal, type RefusalText } from '../refusal.ts';
import { fieldWords } from './field-words.ts';
import { jsonFault } from './json-fault.ts';
import { migrate } from './migrate.ts';
import { documentSchema, schemaName, type PlateDocument } from './schema.ts';
import { shown } from './shown.ts';

const longest = 20_000_000;
const deepest = 40;

/** A document as JSON, untyped, keys checked: what an option's differences are laid on. */
export type RawDocument = Readonly<Record<string, unknown>>;

/**
 * Text of a file to raw JSON of the present schema version. Refuses text that is no JSON (with the line), is cut off,
 * too long, nested deeper than 40, gives a name twice, has a key like `__proto__`, or comes from a newer schema version.
 */
export function readDocumentText(text: string): RawDocument {
  if (text.length > longest)
    throw refusal({
      what: `The file has ${text.length} characters, the limit is ${longest}`,
      mend: 'Check that this is a Stillplate document.',
    });
  const plain = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  if (plain.trim() === '')
    throw refusal({
      what: 'The file is empty',
      mend: 'Name a Stillplate document, or write one with "stillplate new".',
    });
  const fault = jsonFault(plain, deepest);
  if (fault) throw refusal(fault);
  const json: unknown = JSON.parse(plain);
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    throw refusal({
      what: 'The file holds no JSON object',
      mend: `A document begins with { "schema": "${schemaName}", … }.`,
    });
  requirePlainTexts(json, '');
  return migrate(json as RawDocument);
}

/** Refuses keys that JavaScript gives a meaning of its own, and halves of characters, which have no UTF-8. */
function requirePlainTexts(value: unknown, path: string): void {
  if (typeof value === 'string' && /\p{Surrogate}/u.test(value))
    throw refusal({
      what: 'The text holds half a character (a lone surrogate)',
      where: { path },
      mend: 'Write the text again.',
    });
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    if (key === '__proto__' || key === 'constructor' || key === 'prototype' || /\p{Surrogate}/u.test(key))
      throw refusal({
        what: `A key is named “${key}”`,
        where: { path: joined(path, key) },
        mend: 'Choose another name.',
      });
    requirePlainTexts(inner, joined(path, key));
  }
}

/** Raw JSON to a document with its quantities read. Refuses with every wrong field at once. */
export function readDocument(raw: RawDocument, prefix = ''): PlateDocument {
  const read = documentSchema.safeParse(raw);
  if (!read.success) throw new Refusal(refusalTexts(read.error, raw, prefix));
  return read.data;
}

const joined = (path: string, key: string | number): string => (path ? `${path}.${key}` : String(key));
const whereOf = (path: string) => ({ path, field: fieldWords(path) });

/** zod's issues in the engineer's words. */
export function refusalTexts(error: z.ZodError, raw: unknown, prefix = ''): [RefusalText, ...RefusalText[]] {
  const texts = error.issues.flatMap((issue) => issueTexts(issue, raw, prefix));
  return texts as [RefusalText, ...RefusalText[]];
}

function issueTexts(issue: z.core.$ZodIssue, raw: unknown, prefix: string): RefusalText[] {
  const path = [prefix, ...issue.path.map(String)].filter((part) => part !== '').join('.');
  const where = whereOf(path);
  const given = valueAt(raw, issue.path);
  const say = (what: string, mend: string): RefusalText[] => [
    { what: given === undefined ? 'This field is missing' : what, where, mend },
  ];
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        what: 'This field is not known here',
        where: whereOf(joined(path, key)),
        mend: 'Check the spelling, or take it out; nothing is ignored in silence.',
      }));
    case 'invalid_type': {
      if (typeof given === 'number' && !Number.isFinite(given))
        return say('The number is too large to be read', 'Write a smaller number.');
      const { word, mend } = expectedWords[issue.expected] ?? {
        word: `a ${issue.expected}`,
        mend: `Give a ${issue.expected}.`,
      };
      return say(`${shown(given)} is not ${word}`, mend);
    }
    case 'invalid_value':
      return say(`${shown(given)} is not one of the values allowed`, oneOf(issue.values));
    case 'too_small':
      if (issue.origin === 'string')
        return say('The text is empty', 'Write something, or take the field out if it may be left out.');
      if (issue.origin === 'array')
        return say(`The list has ${lengthOf(given)}, it needs ${issue.minimum} or more`, 'Add to the list.');
      return say(
        `${shown(given)} is too small`,
        issue.inclusive === false ? `Write a number above ${issue.minimum}.` : `Write ${issue.minimum} or more.`,
      );
    case 'too_big':
      if (issue.origin === 'string')
        return say(
          `The text has ${String(given).length} characters, the most is ${issue.maximum}`,
          'Shorten the text.',
        );
      if (issue.origin === 'array')
        return say(`The list has ${lengthOf(given)}, the most is ${issue.maximum}`, 'Shorten the list.');
      return say(
        `${shown(given)} is too large`,
        issue.inclusive === false ? `Write a number below ${issue.maximum}.` : `The most is ${issue.maximum}.`,
      );
    case 'invalid_union':
      return say(
        `${shown(given)} is not one of the kinds allowed`,
        'options' in issue && Array.isArray(issue.options) ? oneOf(issue.options) : 'Check this field.',
      );
    case 'invalid_key':
      return issue.issues.flatMap((inner) => [
        {
          what: `The name “${String(issue.path.at(-1))}” cannot be used`,
          where,
          mend: `Choose another name: ${inner.message}.`,
        },
      ]);
    case 'invalid_format':
      if (issue.format === 'date')
        return say(`${shown(given)} is no date`, 'Write the date as year-month-day: "2026-01-31".');
      return say(`${shown(given)} cannot be used here`, `Write it otherwise: ${issue.message}.`);
    case 'custom':
      return [{ what: issue.message, where, mend: String(issue.params?.['mend'] ?? 'Correct this field.') }];
    default:
      return say(`${shown(given)}: ${issue.message}`, 'Correct this field.');
  }
}

const expectedWords: Readonly<Record<string, { readonly word: string; readonly mend: string }>> = {
  object: { word: 'a group of fields', mend: 'Give a group of fields in { }.' },
  record: { word: 'a group of names', mend: 'Give names and values in { }.' },
  array: { word: 'a list', mend: 'Give a list in [ ].' },
  string: { word: 'a text', mend: 'Give a text in quotation marks.' },
  number: { word: 'a number', mend: 'Give a plain number, without quotation marks.' },
  int: { word: 'a whole number', mend: 'Give a whole number, without quotation marks.' },
  boolean: { word: 'true or false', mend: 'Write true or false, without quotation marks.' },
};

const oneOf = (values: readonly unknown[]): string =>
  `Write ${values.length === 1 ? '' : 'one of: '}${values.map((value) => JSON.stringify(value)).join(', ')}.`;
const lengthOf = (given: unknown): string =>
  Array.isArray(given) && given.length === 1 ? '1 entry' : `${Array.isArray(given) ? given.length : 0} entries`;

function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
  let value = raw;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

export { schemaName };
