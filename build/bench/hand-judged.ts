import type { Check } from '../../core/checks/check.ts';
import { valuesAt } from '../../core/checks/evaluate-check.ts';
import { checks } from '../../core/checks/index.ts';
import type { Situation } from '../../core/loads/situation.ts';
import type { Model } from '../../core/model.ts';
import { byHand, type ByHand, type Given } from './by-hand.ts';

/** The checks that are also written by hand. */
export const registered = checks.filter(({ id }) => byHand[id]);

export interface HandRow extends ByHand {
  readonly id: string;
  readonly place: string;
  readonly situation: string;
  readonly utilisation: number;
  readonly verdict: string;
  readonly doubted: boolean;
}

/** Every check that is also written by hand, at every place and situation of a model. */
export function handJudged(model: Model): HandRow[] {
  const rows: HandRow[] = [];
  for (const check of registered) {
    const rule = byHand[check.id]!;
    for (const { place, situation, given } of judgedPlaces(check, model)) {
      const made = rule(given);
      const { demand, capacity, of, low = -Infinity, high = Infinity, inRange = true } = made;
      const utilisation = demand / capacity;
      const verdict = !inRange ? 'cannot be judged' : capacity > 0 && utilisation <= 1 ? 'passes' : 'fails';
      rows.push({
        ...made,
        id: check.id,
        place,
        situation: situation.id,
        utilisation,
        verdict,
        doubted: of < low || of > high,
      });
    }
  }
  return rows;
}

/** Where a check is made and its inputs are known; both sides read them by the same functions. */
export function* judgedPlaces(
  check: Check,
  model: Model,
): Generator<{ place: string; situation: Situation; given: Given }> {
  const { situations } = model.loads;
  for (const place of check.places(model)) {
    for (const situation of check.once ? situations.slice(0, 1) : situations) {
      if (check.applies(model, place, situation) !== true || (situation.missing && !check.once)) continue;
      const given: Record<string, number> = {};
      let known = true;
      for (const symbol in check.inputs) {
        const input = check.inputs[symbol]!;
        if (input.only && input.only !== model.basis.safety) continue;
        const value = input.read(model, place, situation);
        if (typeof value === 'number') given[symbol] = value;
        else known = false;
        if (!known) break;
      }
      if (known) yield { place, situation, given };
    }
  }
}

/** Rows compared, and what differs: the formulas written by hand against the engine, on every number that decides. */
export function handAgainstEngine(model: Model): {
  readonly compared: number;
  readonly differences: readonly string[];
} {
  const differences: string[] = [];
  let compared = 0;
  for (const row of handJudged(model)) {
    const check = registered.find(({ id }) => id === row.id)!;
    const situation = model.loads.situations.find(({ id }) => id === row.situation)!;
    const values = valuesAt(check, model, row.place, situation);
    if ('missing' in values) continue;
    const { of, low, high } = check.second;
    const expected = {
      demand: values.demand,
      capacity: values.capacity,
      of: values.all[of],
      low: values.all[low ?? ''],
      high: values.all[high ?? ''],
    };
    const where = `${row.id} at ${row.place}, ${row.situation}`;
    for (const [name, number] of Object.entries(expected)) {
      const own = row[name as keyof typeof expected];
      if (own === number || Math.abs(own! - number!) <= 1e-9 * Math.abs(number!)) continue;
      differences.push(`${where}: ${name} by hand ${own}, by the engine ${number}`);
    }
    if ((row.inRange ?? true) !== (values.outOfRange === '')) differences.push(`${where}: range`);
    compared++;
  }
  return { compared, differences };
}
