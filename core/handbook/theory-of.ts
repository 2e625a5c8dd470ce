import type { Check, Input, Step } from '../checks/check.ts';
import { kernelRegistry } from '../checks/kernels.ts';
import { boxText } from '../derive/box-text.ts';
import type { Box } from '../derive/box.ts';
import { equationOf } from '../derive/equation.ts';
import { readFormula } from '../derive/formula.ts';
import { symbolBox } from '../derive/symbol-box.ts';
import type { Block, EquationBlock, Section } from '../note/note.ts';
import { unitText } from '../quantity/format-quantity.ts';
import { sourceText } from '../result.ts';
import type { Safety } from '../source.ts';
import { notWhere } from './not-where.ts';
import { handbookWords } from './texts/words.ts';

const w = handbookWords.check;

/** What a check is about: the first word of its id, in words. */
export const subjectOf = ({ id }: Pick<Check, 'id'>): string =>
  handbookWords.subjects[id.split('-')[0] as keyof typeof handbookWords.subjects];

/** The theory of a check, with no plate and no number: everything is read from the data that computes it. */
export function theoryOf(check: Check): Section {
  const { id, title, limitState, source, once, detailing, rule, inputs, steps, second, range = [], cautions } = check;
  const idle = notWhere[id] ?? [];
  return {
    title,
    blocks: [
      {
        kind: 'paragraph',
        text: [w.limitState(limitState), once ? w.once : w.everySituation, detailing ? w.detailing : '', rule ? w.rule : '', check.solved ? w.solved(Object.keys(check.solved.inputs)) : ''].filter(Boolean).join(' '), // prettier-ignore
      },
      ...listed(w.notWhere, idle),
      ...listed(
        w.range,
        range.map(({ otherwise }) => otherwise),
      ),
      inputTable(Object.entries(inputs)),
      ...stepsBySafety(steps, Object.keys(inputs)),
      judged(check),
      { kind: 'paragraph', tone: 'small', keep: true, text: `${w.second} ${second.title} (${second.source.map(sourceText).join('; ')}).${bounds(second)}` }, // prettier-ignore
      ...equations(second.steps, [...Object.keys(inputs), ...symbolsOf(steps)]),
      ...listed(
        w.source,
        source.map((each) => sourceText(each) + (each.safety ? `, ${w.under[each.safety]}` : '')),
      ),
      ...(cautions.length > 0 ? [{ kind: 'list', tone: 'caution', items: cautions } as const] : []),
    ],
  };
}

const listed = (text: string, items: readonly string[]): readonly Block[] =>
  items.length === 0
    ? []
    : [
        { kind: 'paragraph', keep: true, text },
        { kind: 'list', items },
      ];

const inputTable = (inputs: readonly (readonly [string, Input])[]): Block => ({
  kind: 'table',
  caption: w.inputs,
  columns: [
    { title: w.symbol, width: 0.13 },
    { title: w.unit, width: 0.12 },
    { title: w.meaning, width: 0.49 },
    { title: w.from, width: 0.26 },
  ],
  rows: inputs.map(([symbol, { unit, meaning, from, only }]) => [
    { box: symbolBox(symbol) },
    unit === '1' ? '–' : unitText(unit),
    only ? `${meaning} (${w.under[only]})` : meaning,
    from,
  ]),
});

/** The lines up to where the two kinds of design basis part, then those of each. */
function stepsBySafety(steps: Check['steps'], inputs: readonly string[]): readonly Block[] {
  const sides = Object.entries(steps) as readonly (readonly [Safety, readonly Step[]])[];
  const [[, first], ...others] = sides as readonly [(typeof sides)[number], ...typeof sides];
  const parts = first.findIndex((step, n) => others.some(([, own]) => !own[n] || !sameLine(own[n], step)));
  const shared = parts < 0 ? first : first.slice(0, parts);
  const known = [...inputs, ...shared.map(({ symbol }) => symbol)];
  return [
    ...equations(shared, inputs),
    ...sides.flatMap(([safety, own]) => {
      const rest = own.slice(shared.length);
      const head: Block = { kind: 'paragraph', keep: true, text: `${w.by[safety]}:` };
      return rest.length === 0 ? [] : [...(sides.length > 1 ? [head] : []), ...equations(rest, known)];
    }),
  ];
}

const sameLine = (a: Step, b: Step): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Lines with their formula in place of a result. `known`: the symbols that stand before the first of them. */
function equations(steps: readonly Step[], known: readonly string[]): readonly EquationBlock[] {
  const names = new Set(known);
  return steps.map((step) => {
    const formula = 'kernel' in step ? kernelBox(step) : equationOf(readFormula(step.expression, new Set(names)));
    names.add(step.symbol);
    const unit = step.unit === '1' ? '' : `, ${unitText(step.unit)}`;
    return line(`${step.meaning}${unit}`, symbolBox(step.symbol), formula);
  });
}

const line = (meaning: string, left: Box, result: Box): EquationBlock => ({
  kind: 'equation',
  meaning,
  left,
  result,
  plain: `${boxText(left)} = ${boxText(result)}`,
});

/** A step that is no expression: the method's title and what it takes. */
function kernelBox({ kernel, arguments: takes }: Extract<Step, { kernel: string }>): Box {
  const listed = takes.flatMap((symbol, n): readonly Box[] => [
    ...(n > 0 ? [{ kind: 'operator', text: ',' } as const] : []),
    symbolBox(symbol),
  ]);
  return {
    kind: 'row',
    boxes: [
      { kind: 'text', text: kernelRegistry[kernel]!.title },
      { kind: 'bracket', shape: 'round', body: { kind: 'row', boxes: listed } },
    ],
  };
}

const judged = ({ demand, capacity }: Check): EquationBlock =>
  line(
    w.judged,
    { kind: 'text', text: w.utilisation },
    { kind: 'fraction', over: symbolBox(demand), under: symbolBox(capacity) },
  );

const bounds = ({ of, low, high }: Check['second']): string =>
  ` ${w.bounds(printed(of), low && printed(low), high && printed(high))}`;

const printed = (symbol: string): string => boxText(symbolBox(symbol));

const symbolsOf = (steps: Check['steps']): readonly string[] =>
  Object.values(steps).flatMap((own) => own.map(({ symbol }) => symbol));
