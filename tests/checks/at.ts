import type { Check } from '../../core/checks/check.ts';
import { kernels } from '../../core/checks/kernels.ts';
import { evaluateCondition, evaluateFormula } from '../../core/derive/evaluate.ts';
import { readCondition, readFormula } from '../../core/derive/formula.ts';
import type { Safety } from '../../core/source.ts';

/**
 * Runs a check's steps, and those of its second opinion, from given values of its inputs, SI, without a model: what a
 * worked example of a book gives. Gives the values of all symbols. Inputs may be left out: steps that need them are
 * left out too. Refuses a value for what is no input of the check under this kind of basis.
 */
export function evaluateWith(
  check: Check,
  safety: Safety,
  inputs: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> {
  const values: Record<string, number> = {};
  for (const [symbol, value] of Object.entries(inputs)) {
    const input = check.inputs[symbol];
    if (!input || (input.only && input.only !== safety))
      throw new Error(`${symbol} is no input of ${check.id} under ${safety}`);
    values[symbol] = value;
  }
  const steps = check.steps[safety];
  if (!steps) throw new Error(`${check.id} has no rule under ${safety}`);
  const declared = declaredBy(check, safety);
  for (const step of [...steps, ...check.second.steps]) {
    if ('kernel' in step) {
      if (step.arguments.every((symbol) => symbol in values))
        values[step.symbol] = kernels[step.kernel]!(...step.arguments.map((symbol) => values[symbol]!));
      continue;
    }
    const formula = readFormula(step.expression, declared);
    const value = whenKnown(() => evaluateFormula(formula, values));
    if (value !== undefined) values[step.symbol] = value;
  }
  return values;
}

/** Why these values lie outside the range in which the check's formula holds, or undefined when they lie inside. */
export function outOfRangeWith(
  check: Check,
  safety: Safety,
  inputs: Readonly<Record<string, number>>,
): string | undefined {
  const values = evaluateWith(check, safety, inputs);
  return check.range?.find(({ holds }) => !evaluateCondition(readCondition(holds, declaredBy(check, safety)), values))
    ?.otherwise;
}

const declaredBy = (check: Check, safety: Safety): ReadonlySet<string> =>
  new Set([
    ...Object.keys(check.inputs),
    ...[...(check.steps[safety] ?? []), ...check.second.steps].map(({ symbol }) => symbol),
  ]);

/** The value, or undefined when a name has none. Any other refusal (a division by zero) goes on. */
function whenKnown(value: () => number): number | undefined {
  try {
    return value();
  } catch (error) {
    if (error instanceof Error && / has no value\b/.test(error.message)) return undefined;
    throw error;
  }
}
