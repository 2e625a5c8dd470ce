import type { Check } from '../checks/check.ts';
import { stepsOf } from '../checks/evaluate-check.ts';
import { kernelRegistry } from '../checks/kernels.ts';
import { evaluateFormula } from '../derive/evaluate.ts';
import { readFormula } from '../derive/formula.ts';
import type { Safety } from '../source.ts';

/**
 * One symbol of a check from inputs given in SI, without a plate: only the steps that it needs are computed. A given
 * symbol that is a step is taken as given. Refuses (throws) where something that is needed is neither.
 */
export function valueGiven(
  check: Check,
  safety: Safety,
  given: Readonly<Record<string, number>>,
  symbol: string,
): number {
  const steps = new Map(stepsOf(check, safety).map((step) => [step.symbol, step]));
  const names = new Set([...Object.keys(check.inputs), ...steps.keys()]);
  const values: Record<string, number> = {};
  // Each step is computed when it is asked for, once: a branch that is not taken asks for nothing.
  for (const [name, step] of steps) {
    let known: number | undefined;
    const get = (): number =>
      (known ??=
        'kernel' in step
          ? kernelRegistry[step.kernel]!.run(...step.arguments.map((argument) => values[argument]!))
          : evaluateFormula(readFormula(step.expression, names), values));
    Object.defineProperty(values, name, { get, enumerable: true, configurable: true });
  }
  for (const [name, value] of Object.entries(given)) Object.defineProperty(values, name, { value, enumerable: true });
  const value = values[symbol];
  if (value === undefined) throw new Error(`${check.id}: ${symbol} is neither given nor a step`);
  return value;
}
