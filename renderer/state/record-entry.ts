import type { Json } from '../../core/document/edit.ts';
import type { KnownLayout } from './known-layout.ts';
import { knownReading } from './layouts.ts';
import { useWorkbench } from './workbench.ts';

/** A test in the tank or the sea as the document holds it, right or wrong. */
interface RawEntry {
  readonly id: string;
  readonly title: string;
  readonly record: { readonly layout?: string | undefined };
  readonly reading?: unknown;
  readonly setup?: unknown;
}

interface Kept {
  readonly name: string;
  readonly layout: string;
}

const idWords = { tank: 'test', sea: 'sea' } as const;

/**
 * What a new entry begins with: an id that is free, a title from the file's name, and read as a file of its layout was before, in
 * this document or another. `all`: the entries there are; `alike`: the first of them with that layout.
 */
export function recordEntry(of: KnownLayout['of'], record: Kept, untitled: string) {
  const tests = useWorkbench.getState().document?.raw['tests'] as { readonly [name: string]: unknown } | undefined;
  const given = tests?.[of];
  const all = Array.isArray(given) ? (given as RawEntry[]) : [];
  const alike = all.find((one) => one.record.layout === record.layout);
  const taken = new Set(all.map(({ id }) => id));
  let number = all.length + 1;
  while (taken.has(`${idWords[of]} ${number}`)) number++;
  const reading = (alike?.reading as Json | undefined) ?? knownReading(of, record.layout);
  const fresh = {
    id: `${idWords[of]} ${number}`,
    title: record.name.replace(/\.[^.]*$/, '') || untitled,
    record,
    ...(reading === undefined ? {} : { reading }),
  };
  return { all, alike, fresh };
}
