import type { PlateDocument } from '../document/schema.ts';
import { graver, type CheckRow, type ForcesBy, type Side } from './check-row.ts';

type Choice = NonNullable<PlateDocument['forces']>['choose'][number];

/**
 * One row of two: the graver side governs, a fail before what cannot be judged before the larger utilisation. Where both are
 * judged, a choice for the check (at this place before at any) takes the other. A choice never lifts a side that cannot be
 * judged: what is not known is not known to be smaller.
 */
export function larger(hand: CheckRow, solver: CheckRow, choices: readonly Choice[]): CheckRow {
  const byRule: ForcesBy = graver(solver, hand) < 0 ? 'solver' : 'hand';
  const own = choices.filter(({ check }) => check === hand.id);
  const choice = own.find(({ place }) => place === hand.place) ?? own.find(({ place }) => !place);
  const governs = choice && isJudged(hand) && isJudged(solver) ? choice.take : byRule;
  const row = governs === 'hand' ? hand : solver;
  const both = {
    hand: sideOf(hand),
    solver: sideOf(solver),
    governs,
    smaller: governs === byRule ? '' : choice!.reason,
  };
  // What is not judged shows the demand that is known.
  return row.verdict === 'cannot be judged' && row.demand === null && isJudged(hand)
    ? { ...row, demand: hand.demand, capacity: hand.capacity, both }
    : { ...row, both };
}

const isJudged = ({ verdict }: CheckRow): boolean => verdict === 'passes' || verdict === 'fails';

const sideOf = ({ demand, capacity, utilisation, verdict, reason }: CheckRow): Side => ({
  demand,
  capacity,
  utilisation,
  verdict,
  reason,
});
