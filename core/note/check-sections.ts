import type { Appraisal } from '../appraise.ts';
import { formAt } from '../checks/by-places.ts';
import { bySolution } from '../checks/by-solution.ts';
import { checks } from '../checks/index.ts';
import { gravest, sourceText } from '../result.ts';
import { countsFor } from '../checks/source-counts.ts';
import { graver, nearFrom, type BothSides, type CheckRow, type ForcesBy, type Side } from '../checks/check-row.ts';
import type { Check, LimitState, Verdict } from '../checks/check.ts';
import { traceCheck, type CheckTrace } from '../checks/trace-check.ts';
import type { TraceLine } from '../derive/trace.ts';
import type { Model } from '../model.ts';
import { placeWords } from '../place-words.ts';
import { situationWords } from './situation-words.ts';
import { printIn } from '../print-in.ts';
import { mergedRows } from './merged-rows.ts';
import type { Block, EquationBlock, Section } from './note.ts';

const states: readonly LimitState[] = ['strength', 'stability', 'serviceability', 'handling', 'fatigue', 'durability'];

/** Governing and near-governing checks in full; every other in a table. */
export function checkSections(appraisal: Appraisal): Section[] {
  const { model, rows } = appraisal;
  const full = rowsInFull(appraisal);
  return [
    {
      title: 'Checks in full',
      startsPage: true,
      blocks: [
        {
          kind: 'paragraph',
          text: `Set out here: the highest of each limit state, and for each check its gravest place where the utilisation is ${nearFrom} or more or it fails. A formula is printed as it was computed: formula, the same with numbers, result. Second opinions are independent bounds; a value outside them is a finding.`,
        },
      ],
      sections: full.map((row) => fullCheck(row, model)),
    },
    { title: 'All checks', startsPage: true, blocks: allChecks(model, gravest(rows)) },
  ];
}

/** The highest of each limit state of page one, and of each check that fails or is near its gravest place. Others are in the table. */
export function rowsInFull({ rows, limitStates }: Pick<Appraisal, 'rows' | 'limitStates'>): readonly CheckRow[] {
  const chosen = new Map<string, CheckRow>();
  const near = rows.filter(({ near, verdict, utilisation }) => utilisation !== null && (near || verdict === 'fails'));
  const leaders = limitStates.flatMap(({ highest }) => (highest ? [highest] : []));
  for (const row of [...near.sort(graver), ...leaders]) if (!chosen.has(row.id)) chosen.set(row.id, row);
  const state = (row: CheckRow) => states.indexOf(row.limitState);
  return [...chosen.values()].sort(
    (a, b) => Number(a.detailing) - Number(b.detailing) || state(a) - state(b) || graver(a, b),
  );
}

/** A check at its place in full, as the note prints it; the window opens the same. */
export function fullCheck(row: CheckRow, model: Model): Section {
  const own = checks.find(({ id }) => id === row.id) as Check;
  const situation = model.loads.situations.find(({ id }) => id === row.situation) ?? model.loads.situations[0]!;
  const traced = (by: ForcesBy) => traceCheck(by === 'hand' ? own : bySolution(own), model, row.place, situation);
  // What cannot be judged by the solver yet is shown as it is by hand.
  const by: ForcesBy = row.both?.governs === 'solver' && row.both.solver.demand !== null ? 'solver' : 'hand';
  const check = formAt(by === 'hand' ? own : bySolution(own), model, row.place);
  const trace = traced(by);
  const title = `${check.title}: ${placeWords(model, row.place)}`;
  const source = check.source.filter(countsFor(model)).map(sourceText).join('; ');
  if ('missing' in trace)
    return { title, blocks: [{ kind: 'paragraph', tone: 'loud', text: `Cannot be judged: ${trace.missing}.` }] };
  const blocks: Block[] = [
    ...(row.situation
      ? [{ kind: 'paragraph', keep: true, text: `${situation.title}. ${situation.path}` } as const]
      : []),
    { kind: 'paragraph', keep: true, tone: 'small', text: `Source: ${source}` },
    ...(row.both ? bothWords(row, row.both, model) : []),
    {
      kind: 'table',
      caption: 'Inputs',
      columns: [
        { title: 'Symbol', width: 0.12 },
        { title: 'Value', width: 0.18, align: 'right' },
        { title: 'Meaning', width: 0.46 },
        { title: 'From', width: 0.24 },
      ],
      rows: trace.inputs.map((line) => [{ box: line.left }, { box: line.result }, line.meaning, line.from ?? '']),
    },
    ...trace.steps.map(equation),
    {
      kind: 'paragraph',
      tone: row.verdict === 'passes' ? 'plain' : 'loud',
      text: `${verdictWord[row.verdict]}${row.utilisation === null ? '' : `: utilisation ${row.utilisation.toFixed(3)}`}${row.reason ? `: ${row.reason}` : ''}.`,
    },
    {
      kind: 'paragraph',
      tone: 'small',
      text: `Second opinion: ${check.second.title} (${check.second.source.map(sourceText).join('; ')}).`,
    },
    ...trace.second.map(equation),
    ...(row.both && row.both.solver.demand !== null
      ? otherSide(trace, traced(by === 'hand' ? 'solver' : 'hand'), by)
      : []),
    ...(check.cautions.length > 0 ? [{ kind: 'list', tone: 'caution', items: check.cautions } as const] : []),
  ];
  return { title, blocks };
}

const verdictWord: Readonly<Record<Verdict, string>> = {
  passes: 'Passes',
  fails: 'FAILS',
  'cannot be judged': 'CANNOT BE JUDGED',
  'not applicable': 'Does not apply',
};

/** Both demands, and which governs and why. */
function bothWords(row: CheckRow, { hand, solver, governs, smaller }: BothSides, model: Model): Block[] {
  const print = printIn(model.document.units);
  const side = ({ demand, utilisation, reason }: Side): string =>
    demand === null ? reason || 'no value' : `${print.quantity(demand, row.unit)}${utilisation === null ? (reason ? `, ${reason}` : '') : `, utilisation ${utilisation.toFixed(3)}`}`; // prettier-ignore
  const why =
    smaller !== ''
      ? `That ${sideWords[governs]} is taken, the smaller of the two, because: ${smaller}`
      : solver.demand === null && row.verdict === 'cannot be judged'
        ? 'No verdict stands without the second.'
        : `The larger governs: that ${sideWords[governs]}.`;
  return [
    {
      kind: 'paragraph',
      keep: true,
      ...(smaller !== '' ? { tone: 'loud' as const } : {}),
      text: `Demand by hand: ${side(hand)}. By the whole plate’s solution: ${side(solver)}. ${why}`,
    },
  ];
}

const sideWords: Readonly<Record<ForcesBy, string>> = {
  hand: 'by hand',
  solver: 'by the whole plate’s solution',
};

/** The side that does not govern: the inputs and lines in which it differs. */
function otherSide(governing: CheckTrace, other: ReturnType<typeof traceCheck>, by: ForcesBy): Block[] {
  if ('missing' in other) return [{ kind: 'paragraph', tone: 'small', text: `The other side: ${other.missing}.` }];
  const known = new Set([...governing.inputs, ...governing.steps].map(({ plain }) => plain));
  const fresh = (line: TraceLine): boolean => !known.has(line.plain);
  return [
    {
      kind: 'paragraph',
      keep: true,
      tone: 'small',
      text: `The demand ${sideWords[by === 'hand' ? 'solver' : 'hand']}, which does not govern; lines that are the same are not repeated.`,
    },
    ...[...other.inputs, ...other.steps].filter(fresh).map(equation),
  ];
}

const equation = ({ meaning, left, formula, substituted, result, plain }: TraceLine): EquationBlock => ({
  kind: 'equation',
  meaning,
  left,
  ...(formula ? { formula } : {}),
  ...(substituted ? { substituted } : {}),
  result,
  plain,
});

/** A line for each check and place, both directions beside each other; equal places on one line. */
function allChecks(model: Model, rows: readonly CheckRow[]): Block[] {
  const made = rows.filter(({ verdict }) => verdict !== 'not applicable');
  const places = new Map<string, CheckRow[]>();
  for (const row of made) {
    const key = `${row.id}|${row.place}`;
    places.set(key, [...(places.get(key) ?? []), row]);
  }
  const lines = [...places.values()]
    .sort(([a], [b]) => order(a!) - order(b!))
    .map((of) => {
      const [worst] = [...of].sort(graver) as [CheckRow];
      const use = (direction: string) => {
        const row = of.find((r) => r.direction === direction || r.direction === null);
        return row?.utilisation == null ? '–' : row.utilisation.toFixed(2);
      };
      const verdict = worst.verdict === 'passes' ? 'passes' : worst.verdict === 'fails' ? 'FAILS' : 'NOT JUDGED';
      return {
        cells: [
          worst.title,
          placeWords(model, worst.place),
          use('up'),
          use('down'),
          worst.situation ? situationWords(model, worst.situation) : '–',
          `${verdict}${worst.reason ? `: ${worst.reason}` : ''}`,
        ],
        loud: worst.verdict !== 'passes',
      };
    });
  const idle = new Map<string, Set<string>>();
  for (const row of rows)
    if (row.verdict === 'not applicable' && !made.some(({ id }) => id === row.id))
      idle.set(row.title, (idle.get(row.title) ?? new Set()).add(row.reason));
  const blocks: Block[] = [
    {
      kind: 'table',
      caption: 'Every check made: utilisation with the force up and down, gravest situation',
      columns: [
        { title: 'Check', width: 0.25 },
        { title: 'Places', width: 0.19 },
        { title: 'Up', width: 0.06, align: 'right' },
        { title: 'Down', width: 0.07, align: 'right' },
        { title: 'Gravest situation', width: 0.16 },
        { title: 'Verdict', width: 0.27 },
      ],
      ...mergedRows(lines, 1),
    },
  ];
  if (idle.size > 0)
    blocks.push({
      kind: 'table',
      caption: 'Checks that do not apply to this option',
      columns: [
        { title: 'Check', width: 0.4 },
        { title: 'Why', width: 0.6 },
      ],
      rows: [...idle].map(([title, reasons]) => [title, [...reasons].join('; ')]),
    });
  return blocks;
}

const order = ({ id }: CheckRow): number => checks.findIndex((check) => check.id === id);
