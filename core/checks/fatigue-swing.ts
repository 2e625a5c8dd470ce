import type { Situation } from '../loads/situation.ts';
import type { SituationForces } from '../loads/solved-forces.ts';
import type { Model } from '../model.ts';
import { bySolution } from './by-solution.ts';
import { missing, type Check, type Input, type Missing, type Reading } from './check.ts';
import { valuesAt, type Values } from './evaluate-check.ts';

/** Where in the cycle, from -1 (down) to 1 (up), nothing presses on a panel field. */
export const restOfField: Input = {
  unit: '1',
  meaning: 'where in the cycle nothing presses on the panel: -1 at the largest force down, 1 up',
  from: 'loads: swing of service',
  read: ({ loads: { swing } }, bay) => {
    const up = swing.up.pressures.get(bay) ?? NaN;
    const down = swing.down.pressures.get(bay) ?? NaN;
    return up === down ? missing('a force that swings: the pressure stays the same') : (up + down) / (down - up);
  },
};

/** Where in the cycle the force of the water equals the weight: nothing then bends the grid or pulls at the suspension. */
export const restOfPlate: Input = {
  unit: '1',
  meaning: 'where in the cycle the water carries the weight: -1 at the largest force down, 1 up',
  from: 'loads: swing of service',
  read: ({ loads }) => (loads.forceHoldsWeight ? 0 : loads.plate.least.water / loads.swing.amplitude),
};

/** The two ends of a cycle of service. */
export type End = 'up' | 'down';

/** Values of a strength check at one end of the cycle of service, every load factor 1; or what is missing. Kept for a model. */
export function swingValues(check: Check, model: Model, place: string, end: End): Values | Missing {
  const known = kept.get(model) ?? new Map<string, Values | Missing>();
  kept.set(model, known);
  const key = `${check.id}|${place}|${end}`;
  let values = known.get(key);
  if (!values) known.set(key, (values = read(check, model, place, end)));
  return values;
}
const kept = new WeakMap<Model, Map<string, Values | Missing>>();

function read(check: Check, model: Model, place: string, end: End): Values | Missing {
  const situation = model.loads.swing[end];
  const applies = check.applies(model, place, situation);
  if (applies !== true) return missing(`${check.title.toLowerCase()} with the force ${end}: ${applies}`);
  const values = valuesAt(check, model, place, situation);
  if ('missing' in values) return values;
  return values.outOfRange ? missing(values.outOfRange) : values.all;
}

/**
 * The whole plate's forces at one end of the cycle: null where the document takes its forces by hand. Where it asks for them,
 * fatigue is counted from the graver of both methods, force by force.
 */
export function solvedAtEnd({ solved, loads }: Model, end: End): SituationForces | Missing | null {
  if (solved === null) return null;
  if ('missing' in solved) return missing(solved.missing);
  const forces = solved.situations[loads.swing[end].id];
  if (!forces) return missing('the whole plate’s solution at the ends of the cycle');
  if (!forces.settled)
    return missing(
      'contact between panels and tubes that settles at the ends of the cycle, in the whole plate’s solution',
    );
  return forces;
}

/**
 * Of the size of a force by hand and by the whole plate's solution, where that is asked for, the one that makes the range
 * larger: the larger; at an end beyond which the detail comes to rest (`rest`), where the range is what the other end has
 * more, the smaller.
 */
export function graverAtEnd(
  model: Model,
  end: End,
  rest: Reading,
  hand: number,
  bySolver: (forces: SituationForces) => Reading | undefined,
): Reading {
  const forces = solvedAtEnd(model, end);
  if (forces === null) return Math.abs(hand);
  if ('missing' in forces) return forces;
  const solved = bySolver(forces) ?? missing('this force in the whole plate’s solution');
  return typeof solved === 'number' ? graver(rest, end, Math.abs(hand), Math.abs(solved)) : solved;
}

/** Of two sizes at one end of the cycle the graver one. */
export const graver = (rest: Reading, end: End, a: number, b: number): number =>
  typeof rest === 'number' && (end === 'up' ? rest >= 1 : rest <= -1) ? Math.min(a, b) : Math.max(a, b);

/** Values of a strength check at one end of the cycle with the whole plate's forces; null where there are none to be taken. */
function solvedValues(check: Check, model: Model, place: string, end: End): Values | Missing | null {
  const forces = check.solved ? solvedAtEnd(model, end) : null;
  if (forces === null || 'missing' in forces) return forces;
  return swingValues(bySolution(check), model, place, end);
}

/** Where a force of fatigue comes from, for print. */
export const fromSwing = (hand: string): string =>
  `loads: swing of service, ${hand}; the whole plate’s where that is asked for and the range grows by it`;

type Chosen = (model: Model, place: string, end: End) => Check | Missing;

/** A value of a strength check at one end of the cycle as an input of a fatigue check. `rest`: where the detail is at rest. */
export const fromCheck = (
  chosen: Chosen,
  symbol: string,
  end: End,
  unit: string,
  meaning: string,
  rest: Input = restOfField,
): Input => ({
  unit,
  meaning: `${meaning}, force ${end}, no load factor`,
  from: fromSwing('by the strength check'),
  read: (model, place, situation): Reading => {
    const check = chosen(model, place, end);
    if ('missing' in check) return check;
    const hand = swingValues(check, model, place, end);
    if ('missing' in hand) return hand as Missing;
    const solved = solvedValues(check, model, place, end);
    if (solved !== null && 'missing' in solved) return solved as Missing;
    const own = Math.abs(hand[symbol]!);
    return solved === null ? own : graver(rest.read(model, place, situation), end, own, Math.abs(solved[symbol]!));
  },
});

/** A force that only the whole plate's solution gives, at both ends of the cycle; nothing where forces are by hand. */
export const solvedAtBothEnds = (
  chosen: Chosen,
  expression: (values: Values) => number,
  as: string,
  unit: string,
  meaning: string,
): Readonly<Record<string, Input>> =>
  Object.fromEntries(
    (['up', 'down'] as const).map((end) => [
      `${as}_${end === 'up' ? 'up' : 'dn'}`,
      {
        unit,
        meaning: `${meaning}, force ${end}, no load factor`,
        from: 'whole plate, at the ends of the cycle; none by hand',
        read: (model: Model, place: string, situation: Situation): Reading => {
          const check = chosen(model, place, end);
          if ('missing' in check) return check;
          const solved = solvedValues(check, model, place, end);
          if (solved === null) return 0;
          if ('missing' in solved) return solved as Missing;
          const value = Math.abs(expression(solved));
          return Number.isFinite(value)
            ? graver(restOfField.read(model, place, situation), end, 0, value)
            : missing(`${meaning} in the whole plate’s solution`);
        },
      },
    ]),
  );

/** The same at both ends: symbols `…_up` and `…_dn`. */
export const atBothEnds = (
  chosen: Chosen,
  symbol: string,
  as: string,
  unit: string,
  meaning: string,
  rest: Input = restOfField,
): Readonly<Record<string, Input>> => ({
  [`${as}_up`]: fromCheck(chosen, symbol, 'up', unit, meaning, rest),
  [`${as}_dn`]: fromCheck(chosen, symbol, 'down', unit, meaning, rest),
});
