import type { HollowSection } from '../catalogue/rows.ts';
import type { CrossingActions } from '../loads/crossing-actions.ts';
import type { Model } from '../model.ts';
import { boundedMemo } from '../solve/bounded-memo.ts';
import type { CrossingForces } from '../solve/crossing/crossing-cases.ts';
import { crossingInfluence, effectiveStress, worstOf, type CrossingInfluence, type PlaceInfluence } from '../solve/crossing/crossing-influence.ts'; // prettier-ignore
import type { CrossingShape, WallBox } from '../solve/crossing/crossing-walls.ts';
import { missing, type Input, type Missing, type Reading } from './check.ts';
import { braceAt, chordAt, crossingAt } from './crossing-inputs.ts';
import { crossingWeldInputs } from './crossing-weld-inputs.ts';
import type { End } from './fatigue-swing.ts';
import { sectionAtEnd } from './tube-inputs.ts';

/**
 * Stress at the weld toes of a crossing at one end of the cycle, in either tube's wall: largest of all toes and solved loads. No
 * nominal stress gives it: both walls are solved as shells under the forces of the grid of tubes on either side of the crossing.
 */
export const hotSpot = (end: End): Input => ({
  unit: 'MPa',
  meaning: `largest hot-spot stress at the weld toes, extrapolated from the walls, force ${end}, no load factor`,
  from: 'loads: swing of service, grid of tubes; walls as shells',
  read: (model, id) => largest(model, id, end, ({ toes }) => toes, effectiveStress),
});

/** Nominal force per length of the flank welds of a crossing of tubes that lie on each other, likewise. */
export const flankForce = (end: End): Input => ({
  unit: 'N/mm',
  meaning: `largest force per length of the flank welds, force ${end}, no load factor`,
  from: 'loads: swing of service, grid of tubes; walls as shells',
  read: (model, id) => largest(model, id, end, ({ welds }) => welds, ([upright, along]) => Math.hypot(upright!, along!)), // prettier-ignore
});

function largest(
  model: Model,
  id: string,
  end: End,
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
  return swing.crossings[end].reduce((most, loads) => {
    const actions = loads.get(id)!;
    return Math.max(most, pushed + worstOf(places, { ...none, ...(mirrored ? seenFromBehind(actions) : actions) }, size));
  }, 0);
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
