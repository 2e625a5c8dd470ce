import { readFileSync } from 'node:fs';

/** A whole document of the tests' own, so that the samples can be sized without touching the tests of reading. */
export const middleText = readFileSync(new URL('plate.stillplate.json', import.meta.url), 'utf8');

/** The sample "middle" as it stands. */
export const sampleText = readFileSync(new URL('../../samples/middle.stillplate.json', import.meta.url), 'utf8');

export type Json = Record<string, any>; // eslint-disable-line @typescript-eslint/no-explicit-any -- a test reaches into JSON by hand

/** The tests' document as fresh JSON, changed by the caller. */
export function middle(change: (document: Json) => void = () => {}): Json {
  const document = JSON.parse(middleText) as Json;
  change(document);
  return document;
}
