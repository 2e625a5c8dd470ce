import { readFormula } from '../derive/formula.ts';
import { traceOf, type TraceLine, type TraceStep } from '../derive/trace.ts';
import type { Situation } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { formatQuantity, printedUnit } from '../quantity/format-quantity.ts';
import { formAt } from './by-places.ts';
import type { Check, Step } from './check.ts';
import { valuesAt } from './evaluate-check.ts';
import { kernelRegistry } from './kernels.ts';

/** A check at a place with its numbers in place: what is shown and printed. */
export interface CheckTrace {
  readonly inputs: readonly TraceLine[];
  readonly steps: readonly TraceLine[];
  readonly second: readonly TraceLine[];
}

/** Traces a check, or says what is missing for it. The numbers are those that the generated functions gave. */
export function traceCheck(
  given: Check,
  model: Model,
  place: string,
  situation: Situation,
): CheckTrace | { readonly missing: string } {
  const check = formAt(given, model, place);
  const evaluated = valuesAt(check, model, place, situation);
  if ('missing' in evaluated) return evaluated;
  const { safety } = model.basis;
  const own = check.steps[safety] ?? [];
  const inputs = Object.entries(check.inputs)
    .filter(([, input]) => !input.only || input.only === safety)
    .map(([symbol, { unit, meaning, from }]) => ({ symbol, unit, meaning, from }));
  const names = new Set(inputs.map(({ symbol }) => symbol));
  const traceStep = (step: Step): TraceStep => {
    const { symbol, unit, meaning } = step;
    const made =
      'kernel' in step
        ? {
            symbol,
            unit,
            meaning,
            kernel: kernelRegistry[step.kernel]?.title ?? step.kernel,
            arguments: step.arguments,
          }
        : { symbol, unit, meaning, formula: readFormula(step.expression, new Set(names)) };
    names.add(symbol);
    return made;
  };
  const steps = [...own, ...check.second.steps].map(traceStep);
  const lines = traceOf({ inputs, steps, values: evaluated.all }, (si, unit) =>
    formatQuantity(si, printedUnit(unit, model.document.units)),
  );
  const from = inputs.length + own.length;
  return { inputs: lines.slice(0, inputs.length), steps: lines.slice(inputs.length, from), second: lines.slice(from) };
}
