import type { Model } from '../../core/model.ts';
import type { Mutant } from './mutants.ts';

/** Whether a mutant that reads the opposite direction gives another answer anywhere in these models; if not it is no slip. */
export function flippedChanges({ checks, flips, ofApplies }: Mutant, models: readonly Model[]): boolean {
  const said = (answer: unknown) => (typeof answer === 'object' ? JSON.stringify(answer) : answer);
  return models.some((model) =>
    checks.some((check) =>
      check.places(model).some((place) =>
        model.loads.situations.some((situation) => {
          if (!ofApplies && check.applies(model, place, situation) !== true) return false;
          const [before, after] = flips!(model, place, situation);
          return said(before) !== said(after);
        }),
      ),
    ),
  );
}
