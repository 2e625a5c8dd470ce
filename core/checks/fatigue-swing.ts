import type { Model } from '../model.ts';
import { missing, type Check, type Input, type Missing, type Reading } from './check.ts';
import { valuesAt, type Values } from './evaluate-check.ts';

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

type Chosen = (model: Model, place: string, end: End) => Check | Missing;

/** A value of a strength check at one end of the cycle as an input of a fatigue check. */
export const fromCheck = (chosen: Chosen, symbol: string, end: End, unit: string, meaning: string): Input => ({
  unit,
  meaning: `${meaning}, force ${end}, no load factor`,
  from: `loads: swing of service, by the strength check`,
  read: (model, place): Reading => {
    const check = chosen(model, place, end);
    if ('missing' in check) return check;
    const values = swingValues(check, model, place, end);
    return 'missing' in values ? (values as Missing) : Math.abs(values[symbol]!);
  },
});

/** The same at both ends: symbols `…_up` and `…_dn`. */
export const atBothEnds = (
  chosen: Chosen,
  symbol: string,
  as: string,
  unit: string,
  meaning: string,
): Readonly<Record<string, Input>> => ({
  [`${as}_up`]: fromCheck(chosen, symbol, 'up', unit, meaning),
  [`${as}_dn`]: fromCheck(chosen, symbol, 'down', unit, meaning),
});

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
