import type { TankTest } from '../document/tests-field.ts';
import type { Table } from '../record/read-table.ts';
import { Refusal, type RefusalText } from '../refusal.ts';
import { conditioned } from './conditioned.ts';
import { delayInAir } from './delay-in-air.ts';
import { delayOfEvent } from './delay-of-event.ts';
import { identify } from './identify.ts';
import { testRecording } from './reduced-test.ts';
import { tankSetupOf } from './tank-setup-of.ts';

export type DelayWay = 'event' | 'air' | 'fit';

/** The force's delay found in one way, or why it cannot be. SI. */
export type FoundDelay = { readonly way: DelayWay } & (
  { readonly late: number; readonly bound: number; readonly beside: string } | { readonly refusal: RefusalText }
);

/**
 * How late the force is read, in each way that the document gives records for: a sync event, a run of a known mass in air,
 * and (where the test has several amplitudes and periods) the fit itself, with the delay as one more unknown.
 * `late` is of the readings as they came; `bound` is half of the 95 % interval, or of a step.
 */
export function delayWays(table: Table, air: Table | null, test: TankTest): FoundDelay[] {
  const { forceLate: _late, ...conditioning } = test.conditioning;
  const asCame = { reading: test.reading, conditioning };
  // an event and a run in air lie outside the part that is fitted
  const { from: _from, to: _to, ...untrimmed } = conditioning;
  const { eventFrom, eventTo } = test.delay ?? {};
  const ways: FoundDelay[] = [];
  if (eventFrom && eventTo)
    ways.push(
      found('event', () => {
        const { time, travel, force } = conditioned(testRecording(table, test), { reading: test.reading, conditioning: untrimmed }); // prettier-ignore
        const { late, bound, alike } = delayOfEvent(time, travel, force, eventFrom.si, eventTo.si);
        return { late, bound, beside: `alike by ${alike.toFixed(3)}` };
      }),
    );
  if (air)
    ways.push(
      found('air', () => {
        const { time, travel, force } = conditioned(testRecording(air, test), { reading: test.reading, conditioning: untrimmed }); // prettier-ignore
        const { late, factor } = delayInAir(time, travel, force, test.delay!.air!.mass.si);
        return { late: late.value, bound: late.high - late.value, beside: `the known mass asks for a factor of ${factor.toFixed(4)} on the force` }; // prettier-ignore
      }),
    );
  ways.push(
    found('fit', () => {
      const { time, travel, force } = conditioned(testRecording(table, test), asCame);
      const setup = tankSetupOf(test);
      const { also } = identify(time, travel, force, { ...setup, also: new Set([...setup.also, 'delay']) });
      const late = also.get('delay')!;
      return { late: late.value, bound: late.high - late.value, beside: 'fitted with added mass and drag' };
    }),
  );
  return ways;
}

function found(
  way: DelayWay,
  of: () => { readonly late: number; readonly bound: number; readonly beside: string },
): FoundDelay {
  // prettier-ignore
  try {
    return { way, ...of() };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { way, refusal: { what: error.what, where: error.where, mend: error.mend } };
  }
}
