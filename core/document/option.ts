import { refusal } from '../refusal.ts';
import { mergePatch } from './merge-patch.ts';
import { readDocument, type RawDocument } from './read-document.ts';
import type { MergePatch, PlateDocument, PlateOption } from './schema.ts';

/**
 * The document as an option has it: the differences of its bases and then its own, laid on the raw document.
 * `null` is the document as it stands. Refuses an unknown option, a circle of bases, and differences that make a
 * wrong document (the path then names the field in the option's result).
 */
export function documentOfOption(raw: RawDocument, document: PlateDocument, optionId: string | null): PlateDocument {
  if (optionId === null) return document;
  let laid: unknown = raw;
  for (const option of lineage(document.options, optionId)) laid = mergePatch(laid, option.changes as MergePatch);
  return readDocument(laid as RawDocument, `options.${optionId}`);
}

/** The option and its bases, the most basic first. */
export function lineage(options: readonly PlateOption[], optionId: string): readonly PlateOption[] {
  const line: PlateOption[] = [];
  for (let id: string | null = optionId; id !== null; ) {
    const option: PlateOption | undefined = options.find((o) => o.id === id);
    if (!option)
      throw refusal({
        what: `There is no option “${id}”`,
        where: { path: 'options' },
        mend: `Name one of: ${options.map((o) => o.id).join(', ') || 'none yet'}.`,
      });
    if (line.includes(option))
      throw refusal({ what: `The bases of option “${optionId}” go in a circle: ${[...line.map((o) => o.id), id].join(' → ')}`, where: { path: `options.${optionId}.base` }, mend: 'Give one of them the base null.' });
    line.push(option);
    id = option.base;
  }
  return line.reverse();
}
