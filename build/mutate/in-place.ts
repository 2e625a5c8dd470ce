import type { Check, Step } from '../../core/checks/check.ts';
import { compiled } from '../../core/checks/generated.ts';
import { finite } from '../../core/derive/finite.ts';
import { readCondition, readFormula } from '../../core/derive/formula.ts';
import { functionSource, type StepSource } from '../../core/derive/generate.ts';
import type { Safety } from '../../core/source.ts';

/**
 * Puts a changed check in the place of a registered one, its generated functions with it, so that whatever imports the
 * check sees the change; no file is rewritten. Gives the way back.
 */
export function inPlace(check: Check, changed: Check): () => void {
  const before = { ...check };
  const functions = compiled as Record<string, (typeof compiled)[string]>;
  const run = functions[check.id];
  Object.assign(check, changed);
  functions[check.id] = Object.fromEntries(
    (Object.keys(changed.steps) as Safety[]).map((safety) => [safety, functionOf(changed, safety)]),
  );
  return () => {
    Object.assign(check, before);
    if (run) functions[check.id] = run;
  };
}

/** What evaluate-check expects: values of the steps that the unchanged data would list, in order. */
function functionOf(check: Check, safety: Safety) {
  const inputs = Object.entries(check.inputs).flatMap(([symbol, { only }]) =>
    only && only !== safety ? [] : [symbol],
  );
  const names = new Set(inputs);
  const steps: Step[] = [...(check.steps[safety] ?? []), ...check.second.steps];
  const sources = steps.map((step): StepSource => {
    const source = 'kernel' in step ? step : { symbol: step.symbol, formula: readFormula(step.expression, names) };
    names.add(step.symbol);
    return source;
  });
  check.range?.forEach(({ holds }, i) => sources.push({ symbol: `range${i}`, formula: readCondition(holds, names) }));
  // The first line alone has types; what is left is plain JavaScript.
  const body = functionSource('steps', inputs, sources).split('\n').slice(1, -2).join('\n');
  const run = new Function('finite', 'v', 'k', body) as (guard: typeof finite, ...rest: Parameters<Run>) => number[];
  return (v: Parameters<Run>[0], k: Parameters<Run>[1]) => run(finite, v, k);
}

type Run = (typeof compiled)[string][string];
