import { describe, expect, it } from 'vitest';
import type { Check } from '../../core/checks/check.ts';
import { stepsOf } from '../../core/checks/evaluate-check.ts';
import { compiled } from '../../core/checks/generated.ts';
import { checks } from '../../core/checks/index.ts';
import { kernels } from '../../core/checks/kernels.ts';
import type { Model } from '../../core/model.ts';
import { Refusal } from '../../core/refusal.ts';
import { sampleModels } from './sample-models.ts';

// Statics and the sense of a safety factor, no source needed: whatever a check computes, more load or a larger factor
// on the resistance never makes it better.

describe.each(checks.map((check) => [check.id, check] as const))('%s', (_id, check) => {
  it('is not made better by more load, and is made worse by it somewhere', () => {
    const loads = Object.keys(check.inputs).filter(
      (symbol) => check.inputs[symbol]!.from.startsWith('loads') && check.inputs[symbol]!.unit !== '1',
    );
    if (loads.length === 0) return;
    let worse = 0;
    for (const [model, given] of cases(check)) {
      const before = useOf(check, model, given);
      const after = useOf(check, model, scaled(given, loads, 1.5));
      if (before === undefined || after === undefined) continue;
      expect(after).toBeGreaterThanOrEqual(before * (1 - 1e-9));
      if (after > before) worse++;
    }
    if (worse === 0) expect(cases(check).length, 'some sample has a load on it').toBe(0);
  });

  it('is made worse by a larger factor on the resistance', () => {
    for (const [model, given] of cases(check)) {
      const factors = Object.keys(given).filter((symbol) => /^(gamma_M|Omega)/.test(symbol));
      const before = useOf(check, model, given);
      if (factors.length === 0 || before === undefined || before === 0) continue;
      const after = useOf(check, model, scaled(given, factors, 1.2));
      if (after !== undefined) expect(after).toBeGreaterThan(before);
    }
  });
});

/** Inputs of a check wherever it is made in the samples and its inputs are known. */
function cases(check: Check): readonly (readonly [Model, Readonly<Record<string, number>>])[] {
  return sampleModels().flatMap((model) =>
    check.places(model).flatMap((place) =>
      (check.once ? model.loads.situations.slice(0, 1) : model.loads.situations).flatMap(
        (situation): [Model, Record<string, number>][] => {
          if (check.applies(model, place, situation) !== true || (situation.missing && !check.once)) return [];
          const given: Record<string, number> = {};
          for (const [symbol, { only, read }] of Object.entries(check.inputs)) {
            if (only && only !== model.basis.safety) continue;
            const value = read(model, place, situation);
            if (typeof value !== 'number') return [];
            given[symbol] = value;
          }
          return [[model, given]];
        },
      ),
    ),
  );
}

const scaled = (
  given: Readonly<Record<string, number>>,
  symbols: readonly string[],
  by: number,
): Record<string, number> =>
  Object.fromEntries(
    Object.entries(given).map(([symbol, value]) => [symbol, symbols.includes(symbol) ? by * value : value]),
  );

/** Demand over capacity, infinite when nothing carries the demand; undefined where a kernel refuses. */
function useOf(check: Check, { basis }: Model, given: Readonly<Record<string, number>>): number | undefined {
  const run = compiled[check.id]?.[basis.safety];
  if (!run) throw new Error(`${check.id} has no generated function under ${basis.safety}: npm run generate`);
  try {
    const results = run(given, kernels);
    const all: Record<string, number> = { ...given };
    stepsOf(check, basis.safety).forEach(({ symbol }, i) => (all[symbol] = results[i]!));
    const [demand, capacity] = [all[check.demand]!, all[check.capacity]!];
    return capacity > 0 ? demand / capacity : Infinity;
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
