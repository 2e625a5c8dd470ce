import type { HollowSection } from '../catalogue/rows.ts';
import type { CrossingActions } from '../loads/crossing-actions.ts';
import type { Situation } from '../loads/situation.ts';
import type { SolvedCrossing } from '../loads/solved-forces.ts';
import type { Model } from '../model.ts';
import { boundedMemo } from '../solve/bounded-memo.ts';
import type { CrossingForces } from '../solve/crossing/crossing-cases.ts';
import { crossingInfluence, effectiveStress, worstOf, type CrossingInfluence, type PlaceInfluence } from '../solve/crossing/crossing-influence.ts'; // prettier-ignore
import type { CrossingShape, WallBox } from '../solve/crossing/crossing-walls.ts';
import { missing, type Input, type Missing, type Reading } from './check.ts';
import { braceAt, chordAt, crossingAt } from './crossing-inputs.ts';
import { crossingWeldInputs } from './crossing-weld-inputs.ts';
import { graver, restOfPlate, solvedAtEnd, type End } from './fatigue-swing.ts';
import { sectionAtEnd } from './tube-inputs.ts';

/**
 * Stress at the weld toes of a crossing at one end of the cycle, in either tube's wall: largest of all toes and solved loads. No
 * nominal stress gives it: both walls are solved as shells under the forces of the grid of tubes on either side of the crossing.
 */
export const hotSpot = (end: End): Input => ({
  unit: 'MPa',
  meaning: `largest hot-spot stress at the weld toes, extrapolated from the walls, force ${end}, no load factor`,
  from: 'loads: swing of service, grid of tubes, and what the whole plate’s has more where that is asked for; walls as shells',
  read: (model, id, situation) => largest(model, id, end, situation, ({ toes }) => toes, effectiveStress),
});

/** Nominal force per length of the flank welds of a crossing of tubes that lie on each other, likewise. */
export const flankForce = (end: End): Input => ({
  unit: 'N/mm',
  meaning: `largest force per length of the flank welds, force ${end}, no load factor`,
  from: 'loads: swing of service, grid of tubes, and what the whole plate’s has more where that is asked for; walls as shells',
  read: (model, id, situation) => largest(model, id, end, situation, ({ welds }) => welds, ([upright, along]) => Math.hypot(upright!, along!)), // prettier-ignore
});

function largest(
  model: Model,
  id: string,
  end: End,
  situation: Situation,
  of: (influence: CrossingInfluence) => readonly PlaceInfluence[],
  size: (values: Float64Array) => number,
): Reading {
  const shape = shapeAt(model, id);
  if ('missing' in shape) return shape;
  const { swing } = model.loads;
  const [chord, brace] = [chordAt(model, id), braceAt(model, id)].map((tube) => swing[end].tubes.get(tube.id));
  if (!chord || !brace) return missing(`the forces at crossing ${id}: the grid is not solved at the ends of the cycle`);
  const places = of(influenceOf(shape));
  const mirrored = shape.arms === 1 && !armsOf(model, id).after;
  // what the legs push along either tube has no sign left in it: by itself, and added
  const pushed = worstOf(places, { ...none, N0: chord.axial }, size) + worstOf(places, { ...none, N1: brace.axial }, size);
  const cases = swing.crossings[end].map((loads) => loads.get(id)!);
  const byHand = cases.reduce((most, actions) => {
    return Math.max(most, pushed + worstOf(places, { ...none, ...(mirrored ? seenFromBehind(actions) : actions) }, size));
  }, 0);
  const solved = solvedAtEnd(model, end);
  if (solved === null) return byHand;
  if ('missing' in solved) return solved as Missing;
  const forces = solved.crossings[id];
  if (!forces) return missing(`the forces at crossing ${id} in the whole plate’s solution`);
  const torque = ({ main, cross } = crossingAt(model, id)): readonly (readonly [number, number])[] =>
    [main, cross].map((tube) => [solved.tubes[tube]?.T ?? 0, swing[end].tubes.get(tube)!.torque]);
  const bySolver = byHand + excess(places, size, cases, { ...forces, N: [chord.axial, brace.axial], T: torque() });
  return graver(restOfPlate.read(model, id, situation), end, byHand, bySolver);
} // prettier-ignore

/**
 * A bound on the stress that the whole plate's solution brings beside the grid's: what it has more on an arm of the crossing, N·m
 * and N, runs through (both arms alike) or over into the other tube (one arm up, the other down: twice the jump), whichever
 * stresses the wall more; each by itself, and added, since sizes have no sign left in them.
 */
function excess(
  places: readonly PlaceInfluence[],
  size: (values: Float64Array) => number,
  cases: readonly CrossingActions[],
  { M_0, M_1, V_1, N_0, N_1, N, T }: SolvedCrossing & { readonly N: readonly number[]; readonly T: readonly (readonly [solved: number, hand: number])[] },
): number {
  const of = (forces: Partial<CrossingForces>): number => worstOf(places, { ...none, ...forces }, size);
  const arm = (through: number, jump: number): number => Math.abs(through) + Math.abs(jump) / 2;
  const most = (value: (actions: CrossingActions) => number): number => Math.max(...cases.map(value));
  const more = (solved: number, hand: number): number => (solved > hand ? solved - hand : 0);
  const M1 = more(M_1, most((a) => arm(a.M1, a.D1)));
  const V1 = more(V_1, most((a) => arm(a.V1, a.P)));
  const M0 = more(M_0, most((a) => arm(a.M0, a.D0)));
  const [T0, T1] = T.map(([solved, hand]) => more(solved, Math.abs(hand)));
  return (
    Math.max(of({ M1 }), of({ D1: 2 * M1 })) +
    Math.max(of({ V1 }), of({ P: 2 * V1 })) +
    Math.max(of({ M0 }), of({ D0: 2 * M0 })) +
    of({ T0: T0! }) + of({ T1: T1! }) +
    of({ N0: more(N_0, Math.abs(N[0]!)) }) + of({ N1: more(N_1, Math.abs(N[1]!)) })
  );
} // prettier-ignore

const none: CrossingForces = { M0: 0, V0: 0, T0: 0, N0: 0, M1: 0, V1: 0, T1: 0, N1: 0, P: 0, D1: 0, D0: 0, I1: 0 };

/** The shells' one arm lies at larger y; one at smaller y is its mirror image. */
const seenFromBehind = (actions: CrossingActions): CrossingActions => ({
  ...actions,
  T0: -actions.T0,
  D1: -actions.D1,
});

const kept = boundedMemo<CrossingInfluence>(32);
const influenceOf = (shape: CrossingShape): CrossingInfluence =>
  kept(JSON.stringify(shape), () => crossingInfluence(shape));

/** Whether the cross tube goes on beyond the main tube's faces, on either side. */
function armsOf(model: Model, id: string): { readonly before: boolean; readonly after: boolean } {
  const [chord, brace] = [chordAt(model, id), braceAt(model, id)];
  const half = chord.section.width / 2;
  return {
    before: brace.pieces.some(([from]) => from < chord.at - half - 1e-6),
    after: brace.pieces.some(([, to]) => to > chord.at + half + 1e-6),
  };
}

/** The crossing as its walls' middle surfaces at the end of life, or what is missing. */
function shapeAt(model: Model, id: string): CrossingShape | Missing {
  const { main, cross } = crossingAt(model, id);
  const [chord, brace] = [sectionAtEnd(model, main), sectionAtEnd(model, cross)];
  if (chord.shape === 'round' || brace.shape === 'round')
    return missing('the hot-spot stress where a round tube is crossed: the walls solved here are flat. Analyse the joint as shells with its welds, or test it'); // prettier-ignore
  const { youngModulus: E, poisson: nu } = chordAt(model, id).material;
  const boxes = { main: box(chord), cross: box(brace), E, nu } as const;
  if (model.geometry.arrangement === 'flush') {
    if (brace.height > chord.height + 1e-9)
      return missing('the hot-spot stress of a cross tube that is higher than the main tube: part of its end meets no wall. Take a cross tube no higher than the main tube, or analyse the joint as shells with its welds'); // prettier-ignore
    const { before, after } = armsOf(model, id);
    return { ...boxes, arrangement: 'flush', drop: 0, arms: before && after ? 2 : 1, throat: 0, weldLength: 0 };
  }
  const throat = crossingWeldInputs.a_w.read(model);
  if (typeof throat !== 'number') return throat;
  return { ...boxes, arrangement: 'stacked', drop: 0, arms: 2, throat, weldLength: chord.width - 2 * chord.outerRadius };
} // prettier-ignore

const box = ({ width, height, wall }: HollowSection): WallBox => ({
  width: width - wall,
  height: height - wall,
  wall,
});
