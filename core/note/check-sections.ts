import type { Appraisal } from '../appraise.ts';
import { checks } from '../checks/index.ts';
import { gravest, sourceText } from '../result.ts';
import { graver, nearFrom, type CheckRow } from '../checks/check-row.ts';
import type { Check } from '../checks/check.ts';
import { traceCheck } from '../checks/trace-check.ts';
import type { TraceLine } from '../derive/trace.ts';
import type { Model } from '../model.ts';
import { placeWords } from '../place-words.ts';
import type { Block, EquationBlock, Section } from './note.ts';

const states = ['strength', 'stability', 'serviceability', 'handling', 'fatigue'] as const;

/** Governing and near-governing checks in full; every other in a table. */
export function checkSections({ model, rows }: Appraisal): Section[] {
  const full = rowsInFull(rows);
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
    { title: 'All checks', startsPage: true, blocks: [table(model, gravest(rows))] },
  ];
}

/** The gravest of each limit state, and of each check that fails or is near. One place a check: the others are in the table. */
export function rowsInFull(rows: readonly CheckRow[]): readonly CheckRow[] {
  const judged = rows.filter(({ utilisation }) => utilisation !== null).sort(graver);
  const chosen = new Map<string, CheckRow>();
  for (const row of judged) if (!chosen.has(row.id) && (row.near || row.verdict === 'fails')) chosen.set(row.id, row);
  for (const state of states) {
    const leader = judged.find((row) => row.limitState === state && row.verdict !== 'not applicable');
    if (leader && !chosen.has(leader.id)) chosen.set(leader.id, leader);
  }
  return [...chosen.values()].sort((a, b) => states.indexOf(a.limitState as (typeof states)[number]) - states.indexOf(b.limitState as (typeof states)[number]) || graver(a, b));
}

function fullCheck(row: CheckRow, model: Model): Section {
  const check = checks.find(({ id }) => id === row.id) as Check;
  const situation = model.loads.situations.find(({ id }) => id === row.situation) ?? model.loads.situations[0]!;
  const trace = traceCheck(check, model, row.place, situation);
  const where = `${placeWords(model, row.place)}${row.situation ? `; ${situation.title}. ${situation.path}` : ''}`;
  const title = `${check.title}: ${placeWords(model, row.place)}`;
  const source = check.source.filter((s) => !s.safety || s.safety === model.basis.safety).map(sourceText).join('; ');
  if ('missing' in trace) return { title, blocks: [{ kind: 'paragraph', tone: 'loud', text: `Cannot be judged: ${trace.missing}.` }] };
  const blocks: Block[] = [
    { kind: 'paragraph', text: `At ${where}` },
    { kind: 'paragraph', tone: 'small', text: `Source: ${source}` },
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
      text: `${row.verdict === 'passes' ? 'Passes' : 'FAILS'}${row.utilisation === null ? '' : `: utilisation ${row.utilisation.toFixed(3)}`}${row.reason ? `: ${row.reason}` : ''}.`,
    },
    { kind: 'paragraph', tone: 'small', text: `Second opinion: ${check.second.title} (${check.second.source.map(sourceText).join('; ')}).` },
    ...trace.second.map(equation),
    ...(check.cautions.length > 0 ? [{ kind: 'list', tone: 'caution', items: check.cautions } as const] : []),
  ];
  return { title, blocks };
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

function table(model: Model, rows: readonly CheckRow[]): Block {
  const shown = [...rows].sort((a, b) => order(a) - order(b));
  return {
    kind: 'table',
    caption: 'The gravest situation of each check, place and direction',
    columns: [
      { title: 'Check', width: 0.34 },
      { title: 'Place', width: 0.13 },
      { title: 'Situation', width: 0.17 },
      { title: 'Use', width: 0.07, align: 'right' },
      { title: 'Verdict', width: 0.29 },
    ],
    rows: shown.map((row) => [row.title, placeWords(model, row.place), row.situation ?? '–', row.utilisation === null ? '–' : row.utilisation.toFixed(2), `${row.verdict}${row.reason ? `: ${row.reason}` : ''}`]),
    loud: shown.flatMap(({ verdict }, i) => (verdict === 'fails' || verdict === 'cannot be judged' ? [i] : [])),
  };
}

const order = ({ id }: CheckRow): number => checks.findIndex((check) => check.id === id);
