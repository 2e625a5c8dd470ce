import type { Check } from '../../core/checks/check.ts';
import { stepsOf } from '../../core/checks/evaluate-check.ts';
import { compiled } from '../../core/checks/generated.ts';
import { finite } from '../../core/derive/finite.ts';
import { readCondition, readFormula } from '../../core/derive/formula.ts';
import { functionSource, type StepSource } from '../../core/derive/generate.ts';
import type { Safety } from '../../core/source.ts';

type Run = (typeof compiled)[string][string];

/** Puts functions made from the checks as they are now in the place of the generated ones. Gives the way back. */
export function recompiled(checks: readonly Check[]): () => void {
  const functions = compiled as Record<string, Readonly<Record<string, Run>>>;
  const before = checks.map(({ id }) => [id, functions[id]!] as const);
  for (const check of checks)
    functions[check.id] = Object.fromEntries(
      (Object.keys(check.steps) as Safety[]).map((safety) => [safety, functionOf(check, safety)]),
    );
  return () => {
    for (const [id, run] of before) functions[id] = run;
  };
}

/** What evaluate-check expects: the values of the steps, then 1 or 0 for each condition of the range. */
function functionOf(check: Check, safety: Safety): Run {
  const inputs = Object.entries(check.inputs).flatMap(([symbol, { only }]) =>
    only && only !== safety ? [] : [symbol],
  );
  const names = new Set(inputs);
  const sources = stepsOf(check, safety).map((step): StepSource => {
    const source = 'kernel' in step ? step : { symbol: step.symbol, formula: readFormula(step.expression, names) };
    names.add(step.symbol);
    return source;
  });
  check.range?.forEach(({ holds }, i) => sources.push({ symbol: `range${i}`, formula: readCondition(holds, names) }));
  // The first line alone has types; what is left is plain JavaScript.
  const body = functionSource('steps', inputs, sources).split('\n').slice(1, -2).join('\n');
  const run = new Function('finite', 'v', 'k', body) as (guard: typeof finite, ...rest: Parameters<Run>) => number[];
  return (v, k) => run(finite, v, k);
}
