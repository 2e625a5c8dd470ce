import type { z } from 'zod';
import { Refusal, refusal, type RefusalText } from '../refusal.ts';
import { fieldWords } from './field-words.ts';
import { documentSchema, schemaName, type PlateDocument } from './schema.ts';
import { migrate } from './migrate.ts';

const longest = 20_000_000;
const deepest = 40;

/** A document as JSON, untyped, keys checked: what an option's differences are laid on. */
export type RawDocument = Readonly<Record<string, unknown>>;

/**
 * Text of a file to raw JSON of the present schema version. Refuses text that is no JSON (with the line), is cut off,
 * too long, nested deeper than 40, has a key like `__proto__`, or comes from a newer schema version.
 */
export function readDocumentText(text: string): RawDocument {
  if (text.length > longest) throw refusal({ what: `The file has ${text.length} characters, the limit is ${longest}`, mend: 'Check that this is a Stillplate document.' });
  const json = parseJson(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    throw refusal({ what: 'The file holds no JSON object', mend: 'A document begins with { "schema": "stillplate-document/1", … }.' });
  requirePlainKeys(json, '', 0);
  return migrate(json as RawDocument);
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text, (key, value: unknown) => {
      if (key === '__proto__') throw refusal({ what: 'A key is named “__proto__”', where: { path: '__proto__' }, mend: 'Take this key out of the file.' });
      return value;
    });
  } catch (error) {
    if (error instanceof Refusal) throw error;
    const reason = error instanceof Error ? error.message : String(error);
    const at = /position (\d+)/.exec(reason);
    const line = at ? text.slice(0, Number(at[1])).split('\n').length : undefined;
    const cut = /end of JSON|Unterminated/i.test(reason);
    throw refusal({
      what: cut ? 'The file ends in the middle: its JSON is cut off' : `The file is no valid JSON: ${reason}`,
      ...(line ? { where: { line } } : {}),
      mend: cut ? 'Take a complete copy of the file; nothing was changed.' : 'Mend the JSON at that place; nothing was changed.',
    });
  }
}

function requirePlainKeys(value: unknown, path: string, depth: number): void {
  if (depth > deepest) throw refusal({ what: `The document is nested deeper than ${deepest} levels`, where: { path }, mend: 'Check that this is a Stillplate document.' });
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    if (key === 'constructor' || key === 'prototype')
      throw refusal({ what: `A key is named “${key}”`, where: { path: joined(path, key) }, mend: 'Choose another name.' });
    requirePlainKeys(inner, joined(path, key), depth + 1);
  }
}

/** Raw JSON to a document with its quantities read. Refuses with every wrong field at once. */
export function readDocument(raw: RawDocument, prefix = ''): PlateDocument {
  const read = documentSchema.safeParse(raw);
  if (!read.success) throw new Refusal(refusalTexts(read.error, raw, prefix));
  const wrong = crossFieldRefusals(read.data);
  if (wrong.length > 0) throw new Refusal(wrong as [RefusalText, ...RefusalText[]]);
  return read.data;
}

/** What fields say about each other. */
function crossFieldRefusals(document: PlateDocument): RefusalText[] {
  const wrong: RefusalText[] = [];
  const say = (path: string, what: string, mend: string) => wrong.push({ what, where: { path, field: fieldWords(path) }, mend });
  const { water, grid, options } = document;
  if (!water.density && (water.salinity === undefined || !water.temperature))
    say('water', 'The water has neither a density nor salinity and temperature', 'Give "density", or "salinity" with "temperature".');
  if (water.density && water.salinity !== undefined) say('water', 'The water has a density and a salinity', 'Keep one: a density, or salinity with temperature.');
  for (const name of ['mainTubes', 'crossTubes'] as const) {
    const set = grid[name];
    const even = set.count !== undefined || set.spacing !== undefined;
    if (even === (set.tubes !== undefined) || (even && (set.count === undefined || set.spacing === undefined)))
      say(`grid.${name}`, 'The tubes are given neither evenly spaced nor each by itself, or both', 'Give "count" with "spacing", or "tubes".');
  }
  for (const group of [grid.suspension.attachments, grid.padEyes?.points ?? [], document.loads.deck?.supports ?? []]) {
    for (const twice of repeated(group.map((point) => point.id))) say('grid', `The id “${twice}” is given twice`, 'Give each point its own id.');
  }
  if (grid.suspension.kind === 'bridle' && !grid.suspension.apex) say('grid.suspension.apex', 'A bridle needs the height of its apex', 'Give "apex", for example "3 m".');
  if (grid.suspension.kind === 'line' && grid.suspension.attachments.length > 1)
    say('grid.suspension', `A line has one attachment, ${grid.suspension.attachments.length} are given`, 'Call it a bridle and give its apex, or keep one attachment.');
  for (const twice of repeated(options.map((option) => option.id))) say('options', `Two options have the id “${twice}”`, 'Give each option its own id.');
  for (const [name, design] of Object.entries(document.designs)) {
    const { fixing } = design;
    if (fixing.kind === 'welded' && fixing.pattern === 'intermittent' && (!fixing.run || !fixing.gap))
      say(`designs.${name}.fixing`, 'Intermittent welds need the length of each run and of the gap', 'Give "run" and "gap".');
  }
  if (document.chosen !== null && !options.some((option) => option.id === document.chosen))
    say('chosen', `The chosen option “${document.chosen}” is not among the options`, `Name one of: ${options.map((option) => option.id).join(', ') || 'none yet'}; or null for the document as it stands.`);
  return wrong;
}

const repeated = (ids: readonly string[]): string[] => [...new Set(ids.filter((id, i) => ids.indexOf(id) !== i))];
const joined = (path: string, key: string | number): string => (path ? `${path}.${key}` : String(key));

/** zod's issues in the engineer's words. */
export function refusalTexts(error: z.ZodError, raw: unknown, prefix = ''): [RefusalText, ...RefusalText[]] {
  const texts = error.issues.flatMap((issue) => issueTexts(issue, raw, prefix));
  return texts as [RefusalText, ...RefusalText[]];
}

function issueTexts(issue: z.core.$ZodIssue, raw: unknown, prefix: string): RefusalText[] {
  const path = [prefix, ...issue.path.map(String)].filter((part) => part !== '').join('.');
  const where = { path, field: fieldWords(path) };
  const given = valueAt(raw, issue.path);
  const shown = given === undefined ? 'nothing' : `“${JSON.stringify(given)?.slice(0, 80)}”`;
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        what: `The field “${key}” is not known here`,
        where: { path: joined(path, key), field: fieldWords(joined(path, key)) },
        mend: 'Check the spelling, or take it out; nothing is ignored in silence.',
      }));
    case 'invalid_type':
      return [{ what: given === undefined ? 'This field is missing' : `${shown} is no ${issue.expected}`, where, mend: `Give ${article(issue.expected)}.` }];
    case 'invalid_value':
      return [{ what: `${shown} is not one of the values allowed`, where, mend: `Write one of: ${issue.values.map((value) => JSON.stringify(value)).join(', ')}.` }];
    case 'too_small':
      return [{ what: `${shown} is too small or too few`, where, mend: `The least allowed is ${issue.minimum}${issue.inclusive === false ? ' (and more than that)' : ''}.` }];
    case 'too_big':
      return [{ what: `${shown} is too large, too long or too many`, where, mend: `The most allowed is ${issue.maximum}${issue.inclusive === false ? ' (and less than that)' : ''}.` }];
    case 'invalid_union':
      return [{ what: `${shown} fits none of the kinds allowed`, where, mend: 'Check "kind" and its fields.' }];
    case 'invalid_key':
      return issue.issues.flatMap((inner) => [{ what: `The name “${String(issue.path.at(-1))}” cannot be used: ${inner.message}`, where, mend: 'Choose another name.' }]);
    case 'custom':
      return [{ what: given === undefined ? `This field is missing (${issue.message})` : issue.message, where, mend: String(issue.params?.['mend'] ?? 'Correct this field.') }];
    default:
      return [{ what: `${shown}: ${issue.message}`, where, mend: 'Correct this field.' }];
  }
}

const article = (expected: string): string => (expected === 'record' || expected === 'object' ? 'an object in { }' : expected === 'array' ? 'a list in [ ]' : `a ${expected}`);

function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
  let value = raw;
  for (const key of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

export { schemaName };
