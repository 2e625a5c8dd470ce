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
 * `baysOf` gives the ids of a document's bays: a difference that names a bay which is not there, or a panel of the base on
 * a bay that the option takes away, is left out, as a finding. Refuses an unknown option, a circle of bases, and differences that make a wrong document (the path then
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
  const misses = (has: ReadonlySet<string>, key: string): boolean => key.split(':').some((bay) => !has.has(bay.trim()));
  const given = (key: string): boolean =>
    line.some(({ changes }) => typeof (Object.hasOwn(changes.panels ?? {}, key) && changes.panels?.[key]) === 'string');
  // A null that takes a panel of the base away is right, whether or not its bay stays.
  const idle = [...named].filter((key) => misses(bays, key) && !Object.hasOwn(document.panels, key) && !given(key));
  const homeless = Object.keys(resolved.panels).filter((key) => misses(bays, key));
  // What the base document itself has wrong stays a refusal, which comes with the panels.
  const inherited = homeless.filter((key) => !named.has(key));
  const own = inherited.length === 0 ? bays : baysOf(document);
  const lost = homeless.filter((key) => named.has(key) || !misses(own, key));
  return {
    document:
      lost.length === 0
        ? resolved
        : {
            ...resolved,
            panels: Object.fromEntries(Object.entries(resolved.panels).filter(([key]) => !lost.includes(key))),
          },
    findings: [
      ...lost.map((key) => ({
        id: 'difference-names-lost-bay',
        place: key,
        text: named.has(key)
          ? `Option “${optionId}” gives a panel to “${key}”, but the grid has no such bay: the panel is left out`
          : `Option “${optionId}” takes away tubes round “${key}”, where the document has a panel: the panel is left out`,
        mend: named.has(key)
          ? 'Move the panel to a bay that exists, or take the difference out.'
          : 'Say in the option that the panel goes (null), or give one to the bay that takes its place.',
      })),
      ...idle.map((key) => ({
        id: 'difference-names-lost-bay',
        place: key,
        text: `Option “${optionId}” takes the panel of “${key}” away, but the grid has no such bay: nothing is taken`,
        mend: 'Name a bay that exists, or take the difference out.',
      })),
    ],
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
