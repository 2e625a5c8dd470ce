import { describe, expect, it } from 'vitest';
import { identify } from '../../core/tank/identify.ts';
import type { Also, TankSetup } from '../../core/tank/tank-setup.ts';
import { normal } from './normal.ts';

const [rho, S, width, m, A] = [1025, 8, 3, 1500, 16_000];
const plate: TankSetup = {
  ...{ mass: m, volume: 0.19, area: S, density: rho, width },
  ...{ rigMass: 0, waterInside: 0, stiffness: null, delayBound: null, harmonics: 3, also: new Set<Also>() },
};
type Drag = (KC: number, T: number) => number;

/** Runs of eight cycles each, from a drag that goes with amplitude and period. */
function record(runs: readonly (readonly [a: number, T: number])[], drag: Drag, noise: number, seed: number) {
  const random = normal(seed);
  const [t, z, F]: [number[], number[], number[]] = [[], [], []];
  for (const [a, T] of runs) {
    const w = (2 * Math.PI) / T;
    const start = t.length * 0.1;
    for (let i = 0; i < 8.2 * T * 10; i++) {
      const at = 0.1 * i;
      const v = a * w * Math.cos(w * at);
      t.push(start + at);
      z.push(a * Math.sin(w * at) + 0.001 * random());
      F.push(-(m + A) * a * w * w * Math.sin(w * at) + 0.5 * rho * S * drag((2 * Math.PI * a) / width, T) * v * Math.abs(v) + (m - rho * 0.19) * 9.80665 + noise * random()); // prettier-ignore
    }
  }
  return [Float64Array.from(t), Float64Array.from(z), Float64Array.from(F)] as const;
}
const runs = [[0.2, 7], [0.3, 6], [0.45, 8], [0.6, 7.5], [0.8, 9]] as const; // prettier-ignore
const trendOf = (drag: Drag, seed: number, of = runs as readonly (readonly [number, number])[]) => {
  const result = identify(...record(of, drag, 60, seed), plate);
  return { ...result.trends.find((one) => one.of === 'dragCoefficient')!, ids: result.findings.map(({ id }) => id) };
};

describe('the trend of drag over runs', () => {
  it('is the power of KC and of the period that the records were made with, in its interval in 18 of 20 and more', () => {
    let within = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const { amplitude, frequency, ids } = trendOf((KC, T) => 7 * KC ** (-1 / 3) * (T / 7) ** 0.5, seed);
      // β = width² / νT falls as the period grows
      if (amplitude!.low < -1 / 3 && amplitude!.high > -1 / 3 && frequency!.low < -0.5 && frequency!.high > -0.5) within++; // prettier-ignore
      expect(Math.abs(amplitude!.value + 1 / 3)).toBeLessThan(0.05);
      expect(ids).toContain('trend');
    }
    expect(within).toBeGreaterThanOrEqual(17);
  });

  it('of a constant drag holds nil in 18 of 20 and more, and is no finding', () => {
    let within = 0;
    let told = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const { amplitude, ids } = trendOf(() => 7, seed);
      if (amplitude!.low < 0 && amplitude!.high > 0) within++;
      if (ids.includes('trend')) told++;
    }
    expect(within).toBeGreaterThanOrEqual(17);
    expect(told).toBe(0);
  });

  it('is not told of one run, nor with the period where all have one', () => {
    expect(trendOf(() => 7, 1, [[0.5, 7]])).toMatchObject({ amplitude: null, frequency: null });
    const alike = trendOf(() => 7, 1, [[0.3, 7], [0.5, 7]]); // prettier-ignore
    expect(alike.amplitude).not.toBeNull();
    expect(alike.frequency).toBeNull();
  });
});
