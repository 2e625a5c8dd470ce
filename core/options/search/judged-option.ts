import { modelOf, modelWith } from '../../appraise.ts';
import { checkRows } from '../../checks/evaluate-check.ts';
import type { Geometry } from '../../geometry/geometry.ts';
import type { SituationForces } from '../../loads/solved-forces.ts';
import type { Model } from '../../model.ts';
import type { SolveProgress } from '../../plate/solve-cases.ts';
import { Refusal } from '../../refusal.ts';
import { dominates, plainAims, plainPart, type Standing } from './aims.ts';
import { isBeaten, withGain } from './beaten.ts';
import { handRows, judge, type Judgement, type Stop } from './judge.ts';
import { optionDocument, type Digits } from './option-document.ts';
import type { Found, Problem } from './search.ts';
import type { SearchSpace } from './search-space.ts';

export type Verdict =
  /** `governs`: the check to make first for the next option, for it is the likeliest to decide it; null: as before. */
  | (Standing & { readonly holds: true; readonly governs?: number | null })
  | {
      readonly holds: false;
      readonly stop: Stop;
      readonly plain?: 'beaten' | 'limit';
      readonly governs?: number;
      /** Zones whose candidate is stopped by this check in every option in which the others lie the same in plan and are no lighter. */
      readonly bars?: readonly number[];
    };

/**
 * Judges one option from its document: limits first, then whether it is beaten, then the checks in the order given, with forces by
 * hand. Where the document takes the whole plate's forces as well, what holds here is still to be judged with them
 * (`judgedBySolver`), and what does not hold here does not hold there.
 */
export function judgedOption(
  problem: Problem,
  digits: Digits,
  order: readonly number[],
  front: readonly Found[] = [],
): Verdict {
  const { space, base, zones, aside } = problem;
  const document = optionDocument(base, zones, digits);
  try {
    const plate = problem.plateOf(document);
    const { geometry, mass } = plate;
    const plain = plainAims(geometry, mass, document.rates);
    const limit = broken(
      space.limits,
      geometry,
      plain.mass,
      Math.max(0, ...geometry.panels.map((panel) => panel.area * panel.thickness * panel.material.density)),
    );
    if (limit) return { holds: false, stop: limit, plain: 'limit' };
    const low = space.aims.map((aim) => plainPart(aim, plain));
    const gain = () => problem.water!.gainOf(geometry);
    if (isBeaten(front, space.aims, { aims: low, open: [] }, gain))
      return { holds: false, stop: beatenStop, plain: 'beaten' };
    const useAt = space.aims.indexOf('use');
    const beatenAt = (use: number, open: readonly string[]): boolean =>
      isBeaten(front, space.aims, { aims: withUse(low, useAt, use), open }, gain);
    const rowsOf = problem.solver ? handRows : undefined;
    const model = modelWith(document, plate);
    const verdict = judge(model, order, { aside, judged: space.judged }, beatenAt, rowsOf);
    if ('stop' in verdict)
      return { holds: false, stop: verdict.stop, bars: zonesAt(zones, geometry, verdict.ofThePanel) };
    return verdictOf(verdict, (use) => withUse(problem.water ? withGain(space.aims, low, gain()) : low, useAt, use));
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { holds: false, stop: refused('cannot be built', 'Cannot be built', error) };
  }
}

/**
 * Judges an option that holds by hand with the whole plate's forces as well. `before`: its aims by hand, of which the utilisation is
 * the least that it can come to, and what is open by hand, which no solution closes. Each situation is judged as soon as it is solved, and an option that fails one or is beaten by then
 * is left; what holds in all is judged once more by everything, with the very forces that `check` takes.
 */
export function* judgedBySolver(
  problem: Problem,
  digits: Digits,
  order: readonly number[],
  front: readonly Found[],
  before: Standing,
): Generator<SolveProgress, Verdict> {
  const { space, base, zones, aside, solver } = problem;
  const allowed = { aside, judged: space.judged };
  const useAt = space.aims.indexOf('use');
  // One situation may leave open for want of the others what all of them together do not: by hand it is known.
  const beatenAt = (use: number): boolean => {
    const aims = useAt < 0 ? before.aims : withUse(before.aims, useAt, Math.max(use, before.aims[useAt]!));
    return front.some((one) => dominates(one, { aims, open: before.open }));
  };
  const aims = (use: number) => withUse(before.aims, useAt, use);
  const model = modelOf(optionDocument(base, zones, digits));
  const situations: Record<string, SituationForces> = {};
  try {
    const solving = solver!.solve(model);
    let step = solving.next();
    for (; !step.done; step = solving.next()) {
      const { done, of, what, known } = step.value;
      yield { done, of, what };
      if (!known) continue;
      situations[known.id] = known.forces;
      const soFar: Model = { ...model, solved: { key: '', mesh: noMesh, situations } };
      const verdict = judge(soFar, order, allowed, beatenAt, (check, _, of) =>
        check.once || of[0]!.id !== known.id ? [] : checkRows(check, soFar, of).rows,
      );
      const told = verdictOf(verdict, aims);
      if (!told.holds) return told;
    }
    return verdictOf(judge({ ...model, solved: step.value }, order, allowed, beatenAt), aims);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { holds: false, stop: refusedBySolver(error) };
  }
}

/** Until all situations are known: nothing judges by it. */
const noMesh = { size: 0, unknowns: 0, stressError: 0, residual: 0 };

/** Zones with a panel at one of these bays. */
function zonesAt(zones: Problem['zones'], { panels }: Geometry, bays: readonly string[]): readonly number[] {
  const at = new Set(panels.filter((panel) => panel.bays.some((bay) => bays.includes(bay))).map(({ id }) => id));
  return [...zones.keys()].filter((zone) => zones[zone]!.zone.panels.some((id) => at.has(id)));
}

/** What an option is left for, or that it holds, with its aims by the utilisation that came out. */
function verdictOf(judgement: Judgement, aims: (use: number) => readonly number[]): Verdict {
  if ('beaten' in judgement) return { holds: false, stop: beatenStop, plain: 'beaten', governs: judgement.governs };
  if (!judgement.holds) return { holds: false, stop: judgement.stop };
  const { open, governs, use } = judgement;
  return { holds: true, open, governs, aims: aims(use) };
}

export const refusedBySolver = (error: Refusal): Stop =>
  refused('cannot be solved', 'Cannot be solved as one structure', error);

const refused = (check: string, title: string, { what }: Refusal): Stop => ({
  check,
  title,
  place: '',
  situation: null,
  utilisation: null,
  reason: what,
});

const withUse = (aims: readonly number[], at: number, use: number): readonly number[] =>
  aims.map((value, k) => (k === at ? use : value));

const beatenStop: Stop = {
  check: 'beaten',
  title: 'Beaten by one found',
  place: '',
  situation: null,
  utilisation: null,
  reason: '',
};

/** The limit that an option breaks, as a stop, or null. */
export function broken(
  limits: SearchSpace['limits'],
  geometry: Pick<Geometry, 'areas'>,
  mass: number,
  heaviestPanel: number,
): Stop | null {
  const of = (check: string, title: string, utilisation: number | null): Stop => ({
    check,
    title,
    place: 'plate',
    situation: null,
    utilisation,
    reason: title,
  });
  if (limits.lift !== undefined && mass > limits.lift)
    return of('limit-lift', 'Heavier than the crane lifts', mass / limits.lift);
  if (limits.panelByHand !== undefined && heaviestPanel > limits.panelByHand)
    return of('limit-panel', 'A panel is heavier than may be handled', heaviestPanel / limits.panelByHand);
  if (limits.openLeast !== undefined && geometry.areas.openRatio < limits.openLeast)
    return of('limit-open', 'Too little of it is open', null);
  if (limits.openMost !== undefined && geometry.areas.openRatio > limits.openMost)
    return of('limit-open', 'Too much of it is open', null);
  return null;
}
