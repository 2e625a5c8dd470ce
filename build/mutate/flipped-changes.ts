import type { Check } from '../../core/checks/check.ts';
import type { Model } from '../../core/model.ts';
import type { Mutant } from './mutants.ts';

/** Whether a mutant that reads the opposite direction gives another answer anywhere in these models; if not it is no slip. */
export function flippedChanges(check: Check, mutant: Mutant, models: readonly Model[]): boolean {
  const { flips } = mutant;
  const answer = (c: Check, ...at: Parameters<Check['applies']>): unknown => {
    if (flips === 'applies') return c.applies(...at);
    if (flips === 'rule') return c.rule?.(...at);
    const value = flips && c.inputs[flips.input]!.read(...at);
    return typeof value === 'object' ? value.missing : value;
  };
  return models.some((model) =>
    check.places(model).some((place) =>
      model.loads.situations.some((situation) => {
        if (flips !== 'applies' && check.applies(model, place, situation) !== true) return false;
        return answer(check, model, place, situation) !== answer(mutant.check, model, place, situation);
      }),
    ),
  );
}
