import { readFileSync } from 'node:fs';

export const middleText = readFileSync(new URL('../../samples/middle.stillplate.json', import.meta.url), 'utf8');

export type Json = Record<string, any>; // eslint-disable-line @typescript-eslint/no-explicit-any -- a test reaches into JSON by hand

/** The sample "middle" as fresh JSON, changed by the caller. */
export function middle(change: (document: Json) => void = () => {}): Json {
  const document = JSON.parse(middleText) as Json;
  change(document);
  return document;
}
