import type { Check } from '../../core/checks/check.ts';
import { stepsOf } from '../../core/checks/evaluate-check.ts';
import { kernelRegistry } from '../../core/checks/kernels.ts';
import { evaluateFormula } from '../../core/derive/evaluate.ts';
import { readFormula } from '../../core/derive/formula.ts';
import { fixingKernels } from '../../core/fixings/kernels.ts';
import type { Safety } from '../../core/source.ts';

const kernels = { ...kernelRegistry, ...fixingKernels };

/**
 * Runs a check's steps, and those of its second opinion, from values in SI, without a model. A given symbol that is a
 * step is taken as given instead of computed: a book's example starts from a force in the bolt. Steps whose symbols are
 * not known are left out, and asking for their value fails the test.
 */
export function valuesGiven(
  check: Check,
  safety: Safety,
  given: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> {
  const values: Record<string, number> = { ...given };
  const names = new Set([...Object.keys(check.inputs), ...stepsOf(check, safety).map(({ symbol }) => symbol)]);
  for (const symbol in given) if (!names.has(symbol)) throw new Error(`${check.id} has no ${symbol}`);
  for (const step of stepsOf(check, safety)) {
    if (step.symbol in given) continue;
    if ('kernel' in step) {
      const kernel = kernels[step.kernel];
      if (!kernel) throw new Error(`${check.id}: no kernel ${step.kernel}`);
      if (step.arguments.every((name) => name in values))
        values[step.symbol] = kernel.run(...step.arguments.map((name) => values[name]!));
      continue;
    }
    try {
      values[step.symbol] = evaluateFormula(readFormula(step.expression, names), values);
    } catch (error) {
      if (!/ has no value\b/.test((error as Error).message)) throw error;
    }
  }
  return new Proxy(values, {
    get: (target, symbol: string) => {
      if (!(symbol in target))
        throw new Error(`${check.id}: ${symbol} was not computed from ${Object.keys(given).join(', ')}`);
      return target[symbol];
    },
  });
}
