import { expect, it } from 'vitest';
import { bothFail, bothHidden, chainFails, lettingGoFalsely, meanHidden } from '../../core/recovery/redundancy.ts';
import { countedRandom } from '../../core/counted-random.ts';

it('gives two with λ 2e-6 an hour, proved every year, β 0.05: 5.303e-4, and one 8.760e-3 (formulas of guideline 070, appendix D; worked by hand)', () => {
  expect(bothHidden(2e-6, 2e-6, 8760, 0.05)).toBeCloseTo(5.303e-4, 7);
  expect(meanHidden(2e-6, 8760)).toBeCloseTo(8.76e-3, 8);
});

it('gives two with p 0.02 on a demand 4.00e-4, 7.84e-4, 1.361e-3, 2.324e-3 for β 0, 2, 5, 10 %', () => {
  for (const [beta, P] of [
    [0, 4e-4],
    [0.02, 7.84e-4],
    [0.05, 1.361e-3],
    [0.1, 2.324e-3],
  ] as const)
    // prettier-ignore
    expect(Math.abs(bothFail(0.02, 0.02, beta) - P), `β ${beta}`).toBeLessThan(5e-7);
});

it('is never better than either alone with common cause in all, and never worse than one', () => {
  expect(bothFail(0.03, 0.03, 1)).toBeCloseTo(0.03, 12);
  expect(bothFail(0.03, 0.05, 0.1)).toBeLessThan(0.03);
});

it('agrees with drawn failures: a chain of three of which one is twofold', () => {
  let count = 0;
  const draw = () => countedRandom(7, count++);
  const [p, beta, N] = [0.2, 0.25, 40_000];
  let failed = 0;
  for (let n = 0; n < N; n++) {
    const common = draw() < beta * p;
    const first = draw() < (1 - beta) * p;
    const second = draw() < (1 - beta) * p;
    if (common || (first && second) || draw() < 0.05 || draw() < 0.1) failed++;
  }
  const P = chainFails([bothFail(p, p, beta), 0.05, 0.1]);
  expect(Math.abs(failed / N - P)).toBeLessThan(4 * Math.sqrt((P * (1 - P)) / N));
});

it('lets go falsely by either of two: 1 − e^(−Σλt)', () => {
  expect(lettingGoFalsely([0.01, 0.02], 2)).toBeCloseTo(1 - Math.exp(-0.06), 12);
  expect(lettingGoFalsely([0.01], 2)).toBeLessThan(lettingGoFalsely([0.01, 0.01], 2));
});
