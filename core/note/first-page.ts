import type { Appraisal } from '../appraise.ts';
import { mergedFindings } from '../merged-findings.ts';
import { placeWords } from '../place-words.ts';
import { findingPlace, situationWords } from './situation-words.ts';
import type { CheckRow } from '../checks/check-row.ts';
import type { LimitStateSummary } from '../limit-states.ts';
import type { Model } from '../model.ts';
import type { Block, Section } from './note.ts';
import type { Print } from './print-in.ts';

/** What decides, on page one: every limit state, what governs, the load, findings. Unjudged is louder than passed. */
export function firstPage({ model, limitStates, quantities, findings, rows }: Appraisal, print: Print): Section {
  const made = rows.filter(({ verdict }) => verdict !== 'not applicable');
  const fails = made.filter(({ verdict }) => verdict === 'fails');
  const unjudged = made.filter(({ verdict }) => verdict === 'cannot be judged');
  const value = (id: string, unit: string) => print.quantity(quantities[id]?.value as number, unit);
  const words = { passes: 'passes', fails: 'FAILS', 'not judged': 'NOT JUDGED' } as const;
  const loud = limitStates.flatMap(({ verdict }, i) => (verdict === 'passes' ? [] : [i]));
  const blocks: Block[] = [
    {
      kind: 'paragraph',
      tone: fails.length + unjudged.length + findings.length > 0 ? 'loud' : 'plain',
      text: `${count(fails.length, 'verdict is a fail', 'verdicts are fails')}${ofWhat(fails)}; ${count(unjudged.length, 'cannot be judged', 'cannot be judged').toLowerCase()}${ofWhat(unjudged)}; ${count(findings.length, 'finding', 'findings').toLowerCase()}. Each is named in this note.`,
    },
    {
      kind: 'paragraph',
      tone: 'small',
      text: `Counted are verdicts: one check, at one place (a bay, tube, crossing or eye), in one load situation. ${made.length} were reached; checks that do not apply are not among them.`,
    },
    {
      kind: 'table',
      caption: 'Limit states and what governs each',
      columns: [
        { title: 'Limit state', width: 0.19 },
        { title: 'Verdict', width: 0.14 },
        { title: 'What governs, and why not judged', width: 0.455 },
        { title: 'Use', width: 0.065, align: 'right' },
        { title: 'Not passed, of', width: 0.15, align: 'right' },
      ],
      rows: limitStates.map((state) => {
        const { name, verdict, highest, fails: failed, unjudged: open, made } = state;
        return [
          name,
          words[verdict],
          whatGoverns(model, state),
          highest?.utilisation == null ? '–' : highest.utilisation.toFixed(2),
          open + failed === 0 ? `none of ${made}` : `${open + failed} of ${made}`,
        ];
      }),
      loud,
    },
  ];
  if (findings.length > 0)
    blocks.push({
      kind: 'table',
      caption: 'Findings',
      columns: [
        { title: 'Place', width: 0.16 },
        { title: 'What was found', width: 0.5 },
        { title: 'What would mend it', width: 0.34 },
      ],
      rows: mergedFindings(findings).map(({ places, text, mend }) => [
        places.map((place) => findingPlace(model, place)).join(', '),
        places.length > 1 ? `${text} The same at the others.` : text,
        mend,
      ]),
    });
  blocks.push({
    kind: 'table',
    caption: 'The plate',
    columns: [
      { title: 'Mass in air', width: 1 / 6, align: 'right' },
      { title: 'Panels', width: 1 / 6, align: 'right' },
      { title: 'Weight in water', width: 1 / 6, align: 'right' },
      { title: 'Water in tubes', width: 1 / 6, align: 'right' },
      { title: 'Open area', width: 1 / 6, align: 'right' },
      { title: 'Open part', width: 1 / 6, align: 'right' },
    ],
    rows: [
      [
        value('mass.air', 'kg'),
        value('mass.panels', 'kg'),
        value('weight.submerged', 'kN'),
        value('mass.entrained', 'kg'),
        value('area.open', 'm^2'),
        `${((quantities['ratio.open']?.value as number) * 100).toFixed(1)} %`,
      ],
    ],
  });
  return { title: 'What decides', numbered: false, blocks };
}

/** The gravest row with its reason, and the highest utilisation where that is another row. */
function whatGoverns(model: Model, { row, highest, remark }: LimitStateSummary): string {
  const where = (of: CheckRow) =>
    `${of.title}, ${placeWords(model, of.place)}${of.situation ? `, ${situationWords(model, of.situation)}` : ''}`;
  const parts = [
    row ? `${where(row)}${row.reason ? `: ${row.reason}` : ''}` : '',
    row && highest && highest !== row ? `Highest judged: ${highest.title}, ${placeWords(model, highest.place)}` : '',
    remark,
  ];
  return parts.filter(Boolean).join('. ');
}

/** " (2 checks, at 3 places)" */
function ofWhat(rows: readonly CheckRow[]): string {
  if (rows.length === 0) return '';
  const [checks, places] = [new Set(rows.map(({ id }) => id)).size, new Set(rows.map(({ place }) => place)).size];
  return ` (${checks} ${checks === 1 ? 'check' : 'checks'}, at ${places} ${places === 1 ? 'place' : 'places'})`;
}

const count = (n: number, one: string, many: string): string => `${n === 0 ? 'No' : n} ${n === 1 ? one : many}`;
