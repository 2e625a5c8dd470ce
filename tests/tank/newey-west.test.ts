import { describe, expect, it } from 'vitest';
import { blockBootstrap } from '../../core/tank/block-bootstrap.ts';
import { criticalValue95, neweyWest } from '../../core/tank/newey-west.ts';
import { normal } from './normal.ts';

describe('Newey-West', () => {
  it('is the sum of squares without lag, and with lag what its definition gives by hand', () => {
    const x = Float64Array.of(1, -2, 3, 1);
    expect(neweyWest([x], 0)[0]).toBe(15);
    // 15 + 2 · (1/2) · (−2 − 6 + 3)
    expect(neweyWest([x], 1)[0]).toBeCloseTo(10, 12);
    const y = Float64Array.of(2, 0, 1, -1);
    const V = neweyWest([x, y], 1);
    expect(V[1]).toBe(V[2]);
    // Γ_0 = 4, half of both products one apart: (0 + 3 − 1·… by hand: Σ x_i y_{i−1} = −4 + 0 + 1 = −3, Σ y_i x_{i−1} = 0 − 2 − 3 = −5
    expect(V[1]).toBeCloseTo(4 + (-3 - 5) / 2, 12);
  });

  it('with its critical values covers a mean of correlated noise in 95 % of 2,000 records, at a tenth of all lags', () => {
    const random = normal(5);
    const [n, lag, rho] = [200, 19, 0.5];
    let held = 0;
    for (let k = 0; k < 2000; k++) {
      let e = random();
      const x = Float64Array.from({ length: n }, () => (e = rho * e + Math.sqrt(1 - rho * rho) * random()));
      const mean = x.reduce((a, b) => a + b, 0) / n;
      const V = neweyWest([x.map((v) => (v - mean) / n)], lag)[0]!;
      held += Number(Math.abs(mean) <= criticalValue95((lag + 1) / n) * Math.sqrt(V));
    }
    // four standard deviations of a binomial of 2,000, and the bias of Bartlett's weights at this correlation
    expect(held / 2000).toBeGreaterThan(0.925);
    expect(held / 2000).toBeLessThan(0.97);
  });
});

describe('drawing blocks anew', () => {
  it('gives the same interval for the same seed, another for another', () => {
    const random = normal(2);
    const psi = Float64Array.from({ length: 300 }, () => random());
    expect(blockBootstrap(psi, 20, 500, 1)).toEqual(blockBootstrap(psi, 20, 500, 1));
    expect(blockBootstrap(psi, 20, 500, 2)).not.toEqual(blockBootstrap(psi, 20, 500, 1));
  });

  it('has the width of the normal interval for white noise (textbook: ±1.96 σ √n)', () => {
    const random = normal(9);
    const psi = Float64Array.from({ length: 4000 }, () => random());
    const [low, high] = blockBootstrap(psi, 10, 4000, 3);
    expect((high - low) / (2 * 1.96 * Math.sqrt(4000))).toBeCloseTo(1, 1);
  });
});
