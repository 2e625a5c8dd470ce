import type { Appraisal } from '../appraise.ts';
import { mergedFindings } from '../merged-findings.ts';
import { titleAtPlace } from '../place-words.ts';
import { bothForcesTitle } from './both-forces-section.ts';
import { listedNames } from './listed-names.ts';
import { findingPlace, situationWords } from './situation-words.ts';
import type { CheckRow } from '../checks/check-row.ts';
import type { LimitStateSummary } from '../limit-states.ts';
import type { Model } from '../model.ts';
import type { Block, Section } from './note.ts';
import type { Print } from '../print-in.ts';

/** What decides, on page one: every limit state, what governs, the load, findings. Unjudged is louder than passed. */
export function firstPage({ model, limitStates, quantities, findings, rows }: Appraisal, print: Print): Section {
  const made = rows.filter(({ verdict }) => verdict !== 'not applicable');
  const fails = made.filter(({ verdict }) => verdict === 'fails');
  const unjudged = made.filter(({ verdict }) => verdict === 'cannot be judged');
  const value = (id: string, unit: string) => print.quantity(quantities[id]?.value as number, unit);
  const words = { passes: 'passes', fails: 'FAILS', 'not judged': 'NOT JUDGED' } as const;
  const loud = limitStates.flatMap(({ verdict }, i) => (verdict === 'passes' ? [] : [i]));
  const smaller = made.filter(({ both }) => both && both.smaller !== '').length;
  const blocks: Block[] = [
    {
      kind: 'paragraph',
      tone: fails.length + unjudged.length + findings.length > 0 ? 'loud' : 'plain',
      text: `Of ${made.length} verdicts, ${said(fails, 'fails')} and ${said(unjudged, 'cannot be judged')}; ${findings.length === 0 ? 'no findings' : `${findings.length} ${findings.length === 1 ? 'finding' : 'findings'}`}. Each is named in this note.`,
    },
    ...(smaller > 0
      ? [
          {
            kind: 'paragraph' as const,
            tone: 'loud' as const,
            text: `${smaller} ${smaller === 1 ? 'demand is' : 'demands are'} taken at the smaller of two values, reasons in section “${bothForcesTitle}”.`,
          },
        ]
      : []),
    {
      kind: 'table',
      caption:
        'Limit states and what governs each. A verdict is one check at one place (bay, tube, crossing, eye) in one load situation',
      columns: [
        { title: 'Limit state', width: 0.185 },
        { title: 'Verdict', width: 0.135 },
        { title: 'What governs, and why not judged', width: 0.51 },
        { title: 'Use', width: 0.06, align: 'right' },
        { title: 'Not passed', width: 0.11, align: 'right' },
      ],
      rows: limitStates.map((state) => {
        const { name, verdict, highest, fails: failed, unjudged: open, made } = state;
        return [
          name,
          words[verdict],
          whatGoverns(model, state),
          highest?.utilisation == null ? '–' : highest.utilisation.toFixed(2),
          `${open + failed} of ${made}`,
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
        listedNames(places.map((place) => findingPlace(model, place))),
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
    `${titleAtPlace(model, of.title, of.place)}${of.situation ? `, ${situationWords(model, of.situation)}` : ''}`;
  const parts = [
    row ? `${where(row)}${row.reason ? `: ${row.reason}` : ''}` : '',
    row && highest && highest !== row ? `Highest judged: ${titleAtPlace(model, highest.title, highest.place)}` : '',
    remark,
  ];
  return parts.filter(Boolean).join('. ');
}

/** "3 are “fails” (2 checks, at 3 places)" */
function said(rows: readonly CheckRow[], verdict: string): string {
  if (rows.length === 0) return `none is “${verdict}”`;
  const [checks, places] = [new Set(rows.map(({ id }) => id)).size, new Set(rows.map(({ place }) => place)).size];
  return `${rows.length} ${rows.length === 1 ? 'is' : 'are'} “${verdict}” (${checks} ${checks === 1 ? 'check' : 'checks'}, at ${places} ${places === 1 ? 'place' : 'places'})`;
}
