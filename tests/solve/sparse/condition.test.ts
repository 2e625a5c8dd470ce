import { expect, it } from 'vitest';
import { oneNorm } from '../../../core/solve/sparse/condition.ts';
import { factorise } from '../../../core/solve/sparse/factorise.ts';
import { chance, denseMatrix, randomSystem } from './systems.ts';

it('estimates the norm of random symmetric matrices from below, within a factor of three (Higham 1988)', () => {
  const next = chance(11);
  for (let n = 1; n <= 40; n++) {
    const A = new Float64Array(n * n);
    for (let i = 0; i < n; i++) for (let j = 0; j <= i; j++) A[i * n + j] = A[j * n + i] = next() - 0.5;
    const sums = Array.from({ length: n }, (_, i) =>
      A.subarray(i * n, i * n + n).reduce((sum, a) => sum + Math.abs(a), 0),
    );
    const exact = Math.max(...sums);
    const estimate = oneNorm(n, (x) => x.map((_, i) => x.reduce((sum, value, j) => sum + A[i * n + j]! * value, 0)));
    expect(estimate).toBeLessThanOrEqual(exact * (1 + 1e-14));
    expect(estimate).toBeGreaterThan(exact / 3);
  }
});

it('estimates the condition of a system whose inverse is known column by column', () => {
  const system = randomSystem(8, 6, 21);
  const made = factorise(system);
  const { K, freedoms } = denseMatrix(system);
  const n = freedoms.length;
  const sum = (values: Float64Array): number => values.reduce((total, value) => total + Math.abs(value), 0);
  const norm = Math.max(...freedoms.map((_, i) => sum(K.subarray(i * n, i * n + n))));
  const inverse = Math.max(
    ...freedoms.map((freedom) => {
      const unit = new Float64Array(system.held.length);
      unit[freedom] = 1;
      return sum(made.solve(unit));
    }),
  );
  expect(made.conditionEstimate).toBeLessThanOrEqual(norm * inverse * (1 + 1e-10));
  expect(made.conditionEstimate).toBeGreaterThan((norm * inverse) / 9);
});
