import type { Safety } from '../source.ts';
import type { Check, Input, Step } from './check.ts';

/**
 * A check as it takes its forces from the whole plate's solution: what the solution gives is an input, the steps that led
 * to it by hand and the inputs that nothing needs any more are gone, all other lines are the check's own. Computed, traced
 * and printed like any check, under the id `<id>-by-solution`. Each is made once.
 */
export function bySolution(check: Check): Check {
  const known = made.get(check);
  if (known) return known;
  const derived = derive(check);
  made.set(check, derived);
  return derived;
}

const made = new WeakMap<Check, Check>();

function derive(check: Check): Check {
  const { inputs: given, steps: changed = [], second: own = check.second } = check.solved!;
  const replacing = new Map(changed.map((step) => [step.symbol, step]));
  const taken = (steps: readonly Step[]): readonly Step[] => steps.map((step) => replacing.get(step.symbol) ?? step);
  const steps = Object.fromEntries(Object.entries(check.steps).map(([safety, own]) => [safety, taken(own.filter(({ symbol }) => !(symbol in given)))])); // prettier-ignore
  return inForm({ ...check, steps, second: { ...own, steps: taken(own.steps) } }, given, `${check.id}-by-solution`);
}

/** A check whose steps were changed, with only those and the inputs that something needs: its own, and those given to it. */
export function inForm(check: Check, given: Readonly<Record<string, Input>>, id: string): Check {
  const steps: Partial<Record<Safety, readonly Step[]>> = {};
  const needed = new Map<Safety, ReadonlySet<string>>();
  for (const [safety, own] of Object.entries(check.steps) as [Safety, readonly Step[]][]) {
    const wanted = symbolsNeeded(check, own);
    steps[safety] = own.filter(({ symbol }) => wanted.has(symbol));
    needed.set(safety, wanted);
  }
  const inputs = Object.entries({ ...check.inputs, ...given }).flatMap(([symbol, input]): [string, Input][] => {
    const under = [...needed.keys()].filter((safety) => needed.get(safety)!.has(symbol) && (!input.only || input.only === safety)); // prettier-ignore
    if (under.length === 0) return [];
    return [[symbol, under.length === needed.size ? input : { ...input, only: under[0]! }]];
  });
  return { ...check, id, inputs: Object.fromEntries(inputs), steps };
}

/** What demand, capacity, range and second opinion ask for, through the steps that lead to it. */
function symbolsNeeded({ demand, capacity, range = [], second }: Check, steps: readonly Step[]): ReadonlySet<string> {
  const needed = new Set([demand, capacity, second.of, ...second.steps.flatMap(symbolsOf), ...range.flatMap(({ holds }) => wordsOf(holds))]); // prettier-ignore
  for (const step of [...steps].reverse()) if (needed.has(step.symbol)) for (const symbol of symbolsOf(step)) needed.add(symbol); // prettier-ignore
  return needed;
}

const symbolsOf = (step: Step): readonly string[] => ('kernel' in step ? step.arguments : wordsOf(step.expression));

/** Names in an expression; those of functions are among them and name no input. */
const wordsOf = (expression: string): readonly string[] => expression.match(/[A-Za-z]\w*/g) ?? [];
