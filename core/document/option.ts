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

/** What an option must know of a grid: its bays, and which of them make a rectangle that a panel can cover. */
export interface BayPlan {
  readonly ids: ReadonlySet<string>;
  /** The full rectangle around some bays of the grid, and the key that names it ("A1:B4"); null where they make none. */
  rectangle(bays: readonly string[]): { readonly key: string; readonly bays: readonly string[] } | null;
}

/**
 * Lays the differences of an option's bases and then its own on the raw document; `null` is the document as it stands.
 * `planOf` gives the bays of a document. A panel whose bays the option's grid has not all is a finding, whether the
 * option names it or the document does: where the bays that are left make a full rectangle that no other panel takes,
 * the panel stays on them, because a panel is of its design on any rectangle of bays; where they do not, it is left
 * out, because nobody has drawn the panels that would cover them. Refuses an unknown option, a circle of bases, and
 * differences that make a wrong document (the path then names the field in the option's result).
 */
export function documentOfOption(
  raw: RawDocument,
  document: PlateDocument,
  optionId: string | null,
  planOf: (document: PlateDocument) => BayPlan,
): ResolvedOption {
  if (optionId === null) return { document, findings: [] };
  const line = lineage(document.options, optionId);
  const laid = line.reduce<unknown>((on, option) => mergePatch(on, option.changes), raw) as RawDocument;
  const resolved = readDocument(laid, `options.${optionId}`);
  const plan = planOf(resolved);
  const takes = (of: BayPlan, key: string) => of.rectangle(cornersOf(key));
  const findings: Finding[] = [];

  const lost = Object.keys(resolved.panels).filter((key) => !takes(plan, key));
  const panels = new Map(Object.entries(resolved.panels));
  if (lost.length > 0) {
    const before = planOf(document);
    const named = new Set(line.flatMap((option) => Object.keys(option.changes.panels ?? {})));
    const taken = new Set([...panels.keys()].flatMap((key) => takes(plan, key)?.bays ?? []));
    for (const key of lost) {
      const had = takes(before, key)?.bays;
      // What the document itself has wrong, or what names no bay at all, stays a refusal, which comes with the panels.
      if (!had && !(named.has(key) && namesBays(key))) continue;
      const left = (had ?? []).filter((bay) => plan.ids.has(bay));
      const rest = left.length > 0 ? plan.rectangle(left) : null;
      const stays = rest?.bays.length === left.length && !left.some((bay) => taken.has(bay)) ? rest : null;
      panels.delete(key);
      if (stays) panels.set(stays.key, resolved.panels[key]!);
      for (const bay of stays?.bays ?? []) taken.add(bay);
      findings.push(lostBay(optionId, key, had, plan, stays?.key));
    }
  }
  findings.push(...idleDifferences(line, document, plan, optionId));
  return {
    document: lost.length === 0 ? resolved : { ...resolved, panels: Object.fromEntries(panels) },
    findings,
  };
}

const namesBays = (key: string): boolean => cornersOf(key).length <= 2 && !cornersOf(key).includes('');
const cornersOf = (key: string): string[] => key.split(':').map((bay) => bay.trim());

/** A panel that has lost bays: which, and where it stays. `had`: its bays in the document's own grid, where it has them all. */
function lostBay(
  optionId: string,
  key: string,
  had: readonly string[] | undefined,
  plan: BayPlan,
  stays: string | undefined,
): Finding {
  const gone = (had ?? cornersOf(key)).filter((bay) => !plan.ids.has(bay));
  const many = gone.length > 1;
  const bays = `${many ? 'bays' : 'bay'} ${listed(gone)}`;
  const what =
    gone.length === 0
      ? `Option “${optionId}” has the panel “${key}”, but in its grid these bays make no full rectangle`
      : had
        ? `Option “${optionId}” takes away ${bays} of the panel “${key}”`
        : `Option “${optionId}” gives a panel to “${key}”, but the grid has no ${bays}`;
  return {
    id: 'difference-names-lost-bay',
    place: key,
    text: `${what}: ${stays ? `the panel stays on ${stays}, the bays that are left` : 'the panel is left out'}`,
    mend: `Say in the option which panel goes where: null for “${key}”, and a panel of its own for ${stays ?? 'each bay that shall be closed'}.`,
  };
}

/** Differences that take the panel of a bay away which neither the grid nor the document has: a typing error, most likely. */
function idleDifferences(
  line: readonly PlateOption[],
  document: PlateDocument,
  plan: BayPlan,
  optionId: string,
): Finding[] {
  const named = line.flatMap(({ changes }) => Object.entries(changes.panels ?? {}));
  const given = new Set(named.flatMap(([key, design]) => (design === null ? [] : [key])));
  // A null that takes a panel of the base away is right, whether or not its bay stays.
  return [...new Set(named.map(([key]) => key))]
    .filter((key) => !plan.rectangle(cornersOf(key)) && !Object.hasOwn(document.panels, key) && !given.has(key))
    .map((key) => ({
      id: 'difference-names-lost-bay',
      place: key,
      text: `Option “${optionId}” takes the panel of “${key}” away, but the grid has no such bay: nothing is taken`,
      mend: 'Name a bay that exists, or take the difference out.',
    }));
}

/** "A5, A6 and B5" */
const listed = (names: readonly string[]): string =>
  names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1)}` : names.join();

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
