import type { Appraisal } from '../appraise.ts';
import { checks } from '../checks/index.ts';
import { memoryMark, sourceText } from '../result.ts';
import { countsFor } from '../checks/source-counts.ts';
import { rowsInFull } from './check-sections.ts';
import type { Section } from './note.ts';
import type { NotePlace } from './revision-section.ts';

/** The usual cautions, then those of the checks that were made and are not set out in full, where their own stand beside them. */
export function cautionSection(appraisal: Appraisal): Section {
  const { model, rows } = appraisal;
  const made = new Set(rows.filter(({ verdict }) => verdict !== 'not applicable').map(({ id }) => id));
  const inFull = new Set(rowsInFull(appraisal).map(({ id }) => id));
  const titlesOf = new Map<string, string[]>();
  for (const { id, title, cautions } of checks)
    if (made.has(id) && !inFull.has(id))
      for (const caution of cautions) titlesOf.set(caution, [...(titlesOf.get(caution) ?? []), title]);
  // A caution that several checks share is said once.
  const own = [...titlesOf].map(([caution, titles]) => (titles.length === 1 ? `${titles[0]}: ${caution}` : caution));
  const sealed = [...model.tubes.values()].some(({ flooded }) => !flooded);
  return {
    title: 'Cautions',
    startsPage: true,
    blocks: [
      {
        kind: 'list',
        tone: 'caution',
        items: [
          'This note is no approval. A licensed engineer reviews it independently before anything is made, lifted or dived on.',
          'Local codes, class and port rules, lifting regulations, permits and marine warranty terms take precedence over what is said here.',
          'Hydrodynamic loads of a gapped plate are uncertain by a factor of two or more without tests at the right amplitude; closing gaps raises the load that the plate, its suspension and its lift must carry.',
          'Lifting: a lift plan for the open grid does not cover the closed plate. Added mass, trapped water and snap loads count. People stand clear of loaded ropes and out from under the load; nobody enters below a suspended plate.',
          ...(sealed
            ? [
                'Sealed tubes: never galvanise, weld, cut or heat an unvented tube. A leaked tube may come up holding pressure or gas: vent it before cutting or drilling. A leak changes the weight unnoticed.',
              ]
            : []),
          'Flooded tubes need their vents and drains kept clear; water not drained is lifted weight.',
          'Hydrogen: cathodic protection charges high-strength steel. Bolts above class 8.8 need a documented hardness limit.',
          'Execution class, welding procedures, bolt preload and inspection are assumed, not verified.',
          'This file asks to be read as an archive PDF (PDF/A-3, tagged); its conformance was not verified.',
          'A large margin on yield says nothing about life under a load that reverses with every wave: see the section on fatigue, and what in it cannot be judged.',
        ],
      },
      {
        kind: 'paragraph',
        text: 'Checks that are set out in full have their cautions beside them. Those of the other checks that were made:',
        keep: true,
      },
      { kind: 'list', tone: 'caution', items: own },
    ],
  };
}

/** Every document that a made check or a factor cites, each once, with the places in it. */
export function sourceSection({ model, rows }: Appraisal): Section {
  const made = new Set(rows.filter(({ verdict }) => verdict !== 'not applicable').map(({ id }) => id));
  const cited = checks
    .filter(({ id }) => made.has(id))
    .flatMap(({ source, second }) => [...source, ...second.source])
    .filter(countsFor(model));
  const places = new Map<string, Set<string>>();
  for (const source of [
    ...cited,
    ...Object.values(model.basis.factors).map(({ source }) => source),
    ...model.basis.source,
  ]) {
    const document = sourceText({ ...source, clause: undefined, memory: false });
    const place = `${source.clause ?? '–'}${memoryMark(source)}`;
    places.set(document, (places.get(document) ?? new Set()).add(place));
  }
  return {
    title: 'Sources',
    blocks: [
      {
        kind: 'paragraph',
        tone: 'small',
        text: '“From memory” marks a rule or value that was not read in the document itself while this program was made: look it up before relying on it.',
      },
      {
        kind: 'table',
        caption: 'What is cited, and where in it',
        columns: [
          { title: 'Document', width: 0.34 },
          { title: 'Place', width: 0.66 },
        ],
        rows: [...places].sort(byWords).map(([document, at]) => [document, [...at].sort(words.compare).join('; ')]),
      },
    ],
  };
}

const words = new Intl.Collator('en', { numeric: true });
const byWords = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number => words.compare(a, b);

/** Who took which step, where the register says so; the rest is left open to write in. */
export function signOffSection({ revision }: NotePlace): Section {
  const { issue, checked, issued } = revision ?? { issue: null, checked: null, issued: null };
  const done = [issue, checked, issued].map((step): Readonly<Record<string, string>> =>
    step ? { Name: step.by.name, Date: step.date } : {},
  );
  const lead = revision
    ? `Revision ${revision.issue.revision} is “${revision.state}”. Names and dates are those of the register.`
    : 'Not issued. The boxes below are left open.';
  return {
    title: 'Sign-off',
    blocks: [
      {
        kind: 'paragraph',
        text: `${lead} A signature here is not by itself a professional seal under local law.`,
      },
      {
        kind: 'signOff',
        roles: ['Author', 'Checker', 'Licensed engineer'],
        fields: ['Name', 'Licence or registration', 'Date', 'Signature'],
        values: done,
      },
    ],
  };
}
