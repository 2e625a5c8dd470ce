import { refusal } from '../refusal.ts';
import type { Condition, Formula } from './formula.ts';
import { sourceOf } from './source-of.ts';
import { symbolsOf } from './symbols-of.ts';

/** A step to generate. A condition gives 1 when it holds, else 0. */
export type StepSource =
  | { readonly symbol: string; readonly formula: Formula | Condition }
  | { readonly symbol: string; readonly kernel: string; readonly arguments: readonly string[] };

/**
 * TypeScript of one exported function of all steps of a check, straight-line and without allocation but its result:
 *
 *     export function name(v: Readonly<Record<'a' | …, number>>, k: Readonly<Record<'kernel' | …, (…) => number>>): number[]
 *
 * `v` holds the inputs in SI (only those the steps use are asked for), `k` the kernels (left out when none is used);
 * it returns the values of the steps in order. Names get a leading `_`, so none can clash with a word of the language.
 *
 * The file that takes the text imports `finite` from `finite.ts`: each step, and each part that could hide an
 * infinite value, passes through it, so the function throws a refusal exactly where `evaluateFormula` would; call
 * that for the refusal that also names the values. The cost is one comparison a step.
 *
 * Refuses a step that uses a later or unknown symbol, and a symbol given twice.
 */
export function functionSource(name: string, inputs: readonly string[], steps: readonly StepSource[]): string {
  requireOrder(name, inputs, steps);
  const used = new Set(steps.flatMap((step) => [...symbolsIn(step)]));
  const taken = inputs.filter((input) => used.has(input));
  const kernels = [...new Set(steps.flatMap((step) => ('kernel' in step ? [step.kernel] : [])))];
  const parameters = [
    taken.length ? `v: Readonly<Record<${union(taken)}, number>>` : '_v: object',
    ...(kernels.length ? [`k: Readonly<Record<${union(kernels)}, (...values: number[]) => number>>`] : []),
  ];
  return [
    `export function ${name}(${parameters.join(', ')}): number[] {`,
    ...taken.map((input) => `  const ${identifier(input)} = v.${input};`),
    ...steps.map(
      (step) => `  const ${identifier(step.symbol)} = finite(${stepSource(step)}, ${JSON.stringify(step.symbol)});`,
    ),
    `  return [${steps.map(({ symbol }) => identifier(symbol)).join(', ')}];`,
    '}',
    '',
  ].join('\n');
}

const identifier = (symbol: string) => `_${symbol}`;
const union = (names: readonly string[]) => names.map((name) => JSON.stringify(name)).join(' | ');
const symbolsIn = (step: StepSource): Iterable<string> => ('kernel' in step ? step.arguments : symbolsOf(step.formula));

function stepSource(step: StepSource): string {
  if ('kernel' in step) return `k[${JSON.stringify(step.kernel)}](${step.arguments.map(identifier).join(', ')})`;
  const source = sourceOf(step.formula, identifier);
  return isCondition(step.formula) ? `${source} ? 1 : 0` : source;
}

const isCondition = ({ kind }: Formula | Condition) => kind === 'compare' || kind === 'logic' || kind === 'not';

function requireOrder(name: string, inputs: readonly string[], steps: readonly StepSource[]): void {
  const known = new Set<string>();
  const declare = (symbol: string) => {
    if (!/^[A-Za-z]\w*$/.test(symbol))
      throw refused(`“${symbol}” is no name`, 'Use Latin letters, digits and _, beginning with a letter');
    if (known.has(symbol)) throw refused(`${symbol} is given twice`, 'Give each quantity one symbol');
    known.add(symbol);
  };
  const refused = (what: string, mend: string) => refusal({ what, where: { function: name }, mend });
  inputs.forEach(declare);
  for (const step of steps) {
    for (const symbol of symbolsIn(step))
      if (!known.has(symbol))
        throw refused(`${step.symbol} uses ${symbol} before it is known`, `Declare ${symbol}, or move its step up`);
    declare(step.symbol);
  }
}
