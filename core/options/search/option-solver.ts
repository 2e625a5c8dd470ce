import type { Model } from '../../model.ts';
import { solvedKey, type SolvedForces } from '../../loads/solved-forces.ts';
import { solvedInTurn, type KnownSituation } from '../../plate/solved-forces-of.ts';
import type { SolveProgress } from '../../plate/solve-cases.ts';

/** What is being done about one option: it may be left at any step. */
export type SolvingStep = SolveProgress & { readonly known?: KnownSituation };

/** Forces of options by the whole plate: `solvedForcesOf`, remembering what it solved last. */
export interface OptionSolver {
  readonly solve: (model: Model) => Generator<SolvingStep, SolvedForces>;
}

/** Plates whose forces are remembered, so that what was found last is not solved again to be shown. */
const mostKept = 60;

export function optionSolver(): OptionSolver {
  const kept = new Map<string, SolvedForces>();
  return {
    *solve(model) {
      const key = solvedKey(model.document);
      const forces = kept.get(key) ?? (yield* solvedInTurn(model));
      kept.delete(key);
      kept.set(key, forces);
      if (kept.size > mostKept) kept.delete(kept.keys().next().value!);
      return forces;
    },
  };
}
