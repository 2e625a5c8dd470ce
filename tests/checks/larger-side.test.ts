import { expect, it } from 'vitest';
import type { CheckRow } from '../../core/checks/check-row.ts';
import { larger } from '../../core/checks/larger-side.ts';
import { seeded } from '../geometry/seeded.ts';

const row = (change: Partial<CheckRow>): CheckRow => ({
  id: 'bolt-tension',
  title: 'Bolt in tension',
  limitState: 'strength',
  place: 'A1',
  situation: 'service-up',
  loadCase: 'service',
  direction: 'up',
  accidental: false,
  detailing: false,
  demand: 1,
  capacity: 2,
  unit: 'kN',
  utilisation: 0.5,
  verdict: 'passes',
  near: false,
  reason: '',
  sources: [],
  both: null,
  ...change,
});

const used = (utilisation: number): CheckRow =>
  row({ utilisation, demand: 2 * utilisation, verdict: utilisation <= 1 ? 'passes' : 'fails' });
const unjudged = row({
  verdict: 'cannot be judged',
  demand: null,
  capacity: null,
  utilisation: null,
  reason: 'not solved yet',
});
const take = (side: 'hand' | 'solver', place?: string) => [
  { check: 'bolt-tension', ...(place ? { place } : {}), take: side, reason: 'measured' },
]; // prettier-ignore

it('lets the larger govern whatever the numbers are (10,000 random pairs)', () => {
  const random = seeded(5);
  for (let n = 0; n < 10_000; n++) {
    const [hand, solver] = [used(2 * random()), used(2 * random())];
    const both = larger(hand, solver, []);
    expect(both.utilisation).toBe(Math.max(hand.utilisation!, solver.utilisation!));
    expect(both.verdict).toBe(both.utilisation! <= 1 ? 'passes' : 'fails');
    expect(both.both!.governs).toBe(solver.utilisation! > hand.utilisation! ? 'solver' : 'hand');
    expect([both.both!.hand.demand, both.both!.solver.demand]).toEqual([hand.demand, solver.demand]);
    expect(both.both!.smaller).toBe('');
  }
});

it('lets the smaller stand where the engineer chose it, and says why', () => {
  const both = larger(used(0.9), used(0.4), take('solver'));
  expect([both.utilisation, both.both!.governs, both.both!.smaller]).toEqual([0.4, 'solver', 'measured']);
  expect(larger(used(1.2), used(0.4), take('solver', 'A1')).verdict).toBe('passes');
  // what the larger is needs no reason
  expect(larger(used(0.9), used(0.4), take('hand')).both!.smaller).toBe('');
});

it('takes the choice for this place before one for every place, and none for another', () => {
  expect(larger(used(0.9), used(0.4), [...take('hand'), ...take('solver', 'A1')]).utilisation).toBe(0.4);
  expect(larger(used(0.9), used(0.4), take('solver', 'B1')).utilisation).toBe(0.9);
  expect(
    larger(
      used(0.9),
      used(0.4),
      take('solver').map((one) => ({ ...one, place: '' })),
    ).utilisation,
  ).toBe(0.4);
  expect(larger(row({ id: 'bolt-shear', utilisation: 0.9 }), used(0.4), take('solver')).utilisation).toBe(0.9);
});

it('waits for what is not judged, shows what is known, and no choice lifts it', () => {
  for (const choices of [[], take('hand')]) {
    const both = larger(used(0.9), unjudged, choices);
    expect([both.verdict, both.utilisation, both.demand, both.reason]).toEqual([
      'cannot be judged',
      null,
      1.8,
      'not solved yet',
    ]);
  }
  expect(larger(used(1.2), unjudged, []).verdict).toBe('fails');
  expect(larger(unjudged, used(0.3), take('solver')).verdict).toBe('cannot be judged');
});
