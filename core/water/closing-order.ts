import { refusal } from '../refusal.ts';
import type { Plan, Rectangle } from './lattice/plan.ts';
import { plateLattice, plateProblem } from './lattice/plate-lattice.ts';
import { solvePair } from './lattice/solve-pair.ts';
import { wellPlaced } from './lattice/well-placed.ts';

/** One more bay closed. */
export interface ClosedStep {
  /** Bays closed, in their order (greedy), or the best set of this size (exact). */
  readonly closed: readonly string[];
  /** kg at zero amplitude, on one lattice. */
  readonly addedMass: number;
}

/**
 * In which order to close bays, so that added mass at zero amplitude rises fastest: greedy, each step the bay that gains most (the
 * first named among equals). plan: with none of them closed; bays by id. exact: instead the best of all sets of each size.
 * One lattice serves all, about `cells` along the longer side. Refuses more than 10 bays for the exact order.
 */
export function closingOrder(
  plan: Plan,
  bays: Readonly<Record<string, Rectangle>>,
  density: number,
  { exact = false, cells = 60 }: { exact?: boolean; cells?: number } = {},
): readonly ClosedStep[] {
  const ids = Object.keys(bays);
  if (exact && ids.length > 10)
    throw refusal({ what: `The best sets of ${ids.length} bays are too many to try`, mend: 'Take the greedy order, or 10 bays at most.' }); // prettier-ignore
  const { frame, lattice } = plateLattice(plan, wellPlaced(plan, cells));
  const problemOf = (closed: readonly string[]) => {
    const { D, grip } = plateProblem({ ...plan, rectangles: [...plan.rectangles, ...closed.map((id) => bays[id]!)] }, frame); // prettier-ignore
    return { D, v: grip };
  };
  /** Two sets at a time. */
  const masses = (sets: readonly (readonly string[])[]): number[] => {
    const found: number[] = [];
    for (let k = 0; k < sets.length; k += 2) {
      const pair = [sets[k]!, sets[k + 1] ?? sets[k]!].map(problemOf);
      const answers = solvePair(lattice, [pair[0]!, pair[1]!], { tolerance: 1e-6 });
      for (const s of [0, 1] as const) {
        let sum = 0;
        for (let i = 0; i < frame.nx * frame.ny; i++) sum += answers[s].mu[i]! * pair[s]!.v[i]!;
        found.push(density * frame.h ** 2 * sum);
      }
    }
    return found.slice(0, sets.length);
  };
  const steps: ClosedStep[] = [{ closed: [], addedMass: masses([[]])[0]! }];
  if (exact) {
    const sets = Array.from({ length: 2 ** ids.length }, (_, bits) => ids.filter((_id, i) => (bits >> i) & 1));
    const all = masses(sets);
    for (let size = 1; size <= ids.length; size++) {
      const best = sets.reduce((at, set, k) => (set.length === size && (at < 0 || all[k]! > all[at]! * (1 + 1e-9)) ? k : at), -1); // prettier-ignore
      steps.push({ closed: sets[best]!, addedMass: all[best]! });
    }
    return steps;
  }
  while (steps.at(-1)!.closed.length < ids.length) {
    const { closed } = steps.at(-1)!;
    const sets = ids.filter((id) => !closed.includes(id)).map((id) => [...closed, id]);
    const found = masses(sets);
    const best = found.reduce((at, mass, k) => (mass > found[at]! * (1 + 1e-9) ? k : at), 0);
    steps.push({ closed: sets[best]!, addedMass: found[best]! });
  }
  return steps;
}
