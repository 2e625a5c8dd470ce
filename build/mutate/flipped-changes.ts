import type { Check } from '../../core/checks/check.ts';
import type { Model } from '../../core/model.ts';
import type { Mutant } from './mutants.ts';

/** Whether a mutant that reads the opposite direction gives another answer anywhere in these models; if not it is no slip. */
export function flippedChanges(check: Check, mutant: Mutant, models: readonly Model[]): boolean {
  const parts = (c: Check, ...at: Parameters<Check['applies']>): unknown => {
    if (mutant.flips === 'applies') return c.applies(...at);
    if (mutant.flips === 'rule') return c.rule?.(...at);
    return Object.values(c.inputs).map(({ read }) => read(...at));
  };
  return models.some((model) =>
    check.places(model).some((place) =>
      model.loads.situations.some((situation) => {
        if (check.applies(model, place, situation) !== true && mutant.flips !== 'applies') return false;
        return JSON.stringify(parts(check, model, place, situation)) !== JSON.stringify(parts(mutant.check, model, place, situation));
      }),
    ),
  );
}
