import type { Finding } from '../finding.ts';
import { refusal } from '../refusal.ts';
import { mergePatch } from './merge-patch.ts';
import { readDocument, type RawDocument } from './read-document.ts';
import type { PlateDocument, PlateOption } from './schema.ts';

/** The document as an option has it, and what of its differences could not be laid on. */
export interface ResolvedOption {
  readonly document: PlateDocument;
  readonly findings: readonly Finding[];
}

/**
 * Lays the differences of an option's bases and then its own on the raw document; `null` is the document as it stands.
 * `baysOf` gives the ids of a document's bays: a difference that names a bay which is no longer there is left out, as a
 * finding. Refuses an unknown option, a circle of bases, and differences that make a wrong document (the path then
 * names the field in the option's result).
 */
export function documentOfOption(
  raw: RawDocument,
  document: PlateDocument,
  optionId: string | null,
  baysOf: (document: PlateDocument) => ReadonlySet<string>,
): ResolvedOption {
  if (optionId === null) return { document, findings: [] };
  const line = lineage(document.options, optionId);
  const laid = line.reduce<unknown>((on, option) => mergePatch(on, option.changes), raw) as RawDocument;
  const resolved = readDocument(laid, `options.${optionId}`);
  const named = new Set(line.flatMap((option) => Object.keys(option.changes.panels ?? {})));
  const bays = baysOf(resolved);
  const lost = [...named].filter(
    (key) => Object.hasOwn(resolved.panels, key) && key.split(':').some((bay) => !bays.has(bay.trim())),
  );
  return {
    document:
      lost.length === 0
        ? resolved
        : {
            ...resolved,
            panels: Object.fromEntries(Object.entries(resolved.panels).filter(([key]) => !lost.includes(key))),
          },
    findings: lost.map((key) => ({
      id: 'difference-names-lost-bay',
      place: key,
      text: `Option “${optionId}” gives a panel to “${key}”, but the grid has no such bay: the panel is left out`,
      mend: 'Move the panel to a bay that exists, or take the difference out.',
    })),
  };
}

/** The option and its bases, the most basic first. */
export function lineage(options: readonly PlateOption[], optionId: string): readonly PlateOption[] {
  const line: PlateOption[] = [];
  for (let id: string | null = optionId; id !== null;) {
    const option: PlateOption | undefined = options.find((o) => o.id === id);
    if (!option)
      throw refusal({
        what: `There is no option “${id}”`,
        where: { path: 'options' },
        mend: `Name one of: ${options.map((o) => o.id).join(', ') || 'none yet'}.`,
      });
    if (line.includes(option))
      throw refusal({
        what: `The bases of option “${optionId}” go in a circle: ${[...line.map((o) => o.id), id].join(' → ')}`,
        where: { path: `options.${optionId}.base` },
        mend: 'Give one of them the base null.',
      });
    line.push(option);
    id = option.base;
  }
  return line.reverse();
}
