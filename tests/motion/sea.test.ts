import { describe, expect, it } from 'vitest';
import type { Complex, HeaveSystem } from '../../core/motion/heave-system.ts';
import { naturalPeriods } from '../../core/motion/natural-periods.ts';
import { seaHistory } from '../../core/motion/sea-history.ts';
import { steppedResponse, type Forcing } from '../../core/motion/stepped-response.ts';
import { stochasticResponse } from '../../core/motion/stochastic-response.ts';
import { waveForcing } from '../../core/motion/wave-forcing.ts';
import { jonswap } from '../../core/water/waves/spectrum.ts';

const none: Complex = [0, 0];
const g = 9.80665;

describe('natural periods of two bodies', () => {
  const system = (m1: number, c: number, m2: number, k: number): HeaveSystem => ({
    float: { mass: m1, damping: 0, stiffness: c },
    plate: { mass: m2, damping: 0, drag: 0, carried: 0, weight: 1 },
    link: { stiffness: k, damping: 0, pushes: false },
  });

  it('two equal masses, float and link as stiff as each other: ω² = (3 ∓ √5)/2 · k/m (textbook)', () => {
    const [longest, shortest] = naturalPeriods(system(1000, 4000, 1000, 4000));
    expect((2 * Math.PI) / longest!).toBeCloseTo(2 * Math.sqrt((3 - Math.sqrt(5)) / 2), 9);
    expect((2 * Math.PI) / shortest!).toBeCloseTo(2 * Math.sqrt((3 + Math.sqrt(5)) / 2), 9);
  });

  it('a link that is soft leaves float and plate by themselves; nothing that brings back, no period', () => {
    const [plate, float] = naturalPeriods(system(1000, 1e6, 20_000, 1));
    expect(float).toBeCloseTo(2 * Math.PI * Math.sqrt(1000 / 1e6), 5);
    expect(plate).toBeCloseTo(2 * Math.PI * Math.sqrt(20_000 / 1), 1);
    expect(naturalPeriods({ ...system(1, 1, 1, 0), float: null })).toEqual([]);
  });
});

describe('a sea state as a history', () => {
  const [Hs, Tp] = [2, 8];
  const S = jonswap(Hs, Tp);
  const band = [0.3, 4] as const;
  const dt = 0.1;
  const steps = 36_000;
  const history = (seed: number) =>
    seaHistory(S, band, () => ({ float: [1, 0], plate: none, water: [0, 1] }), { dt, steps, components: 400, seed });

  it('has the significant height it is made for, and for the same seed the same bits', () => {
    const [one, again, other] = [history(1), history(1), history(2)];
    const at: Forcing = { F1: 0, F2: 0, w: 0, wDot: 0 };
    let [sum, same, differs] = [0, true, false];
    for (let i = 0; i < steps; i++) {
      one(i * dt, at);
      const zeta = at.F1;
      sum += zeta * zeta;
      again(i * dt, at);
      same &&= at.F1 === zeta;
      other(i * dt, at);
      differs ||= at.F1 !== zeta;
    }
    // an hour of an eight-second sea: the variance scatters by about √(2/450) = 7 %, its root by half of that
    expect(Math.abs((4 * Math.sqrt(sum / steps)) / Hs - 1)).toBeLessThan(0.1);
    expect([same, differs]).toEqual([true, true]);
  });

  it('moves a linear plate as its spectrum says, and a draggy one within the error of linearising (8 %)', () => {
    const system = (drag: number): HeaveSystem => ({
      float: null,
      plate: { mass: 20_000, damping: 4000, drag, carried: 19_000, weight: 1e9 },
      link: { stiffness: 30_000, damping: 0, pushes: true },
    });
    const transfer = (omega: number) =>
      waveForcing({ density: 1025, gravity: g, seaDepth: Infinity, plateDepth: 5, float: null }, omega);
    const omegas = Float64Array.from({ length: 1201 }, (_, i) => band[0] + (i / 1200) * (band[1] - band[0]));
    const forcing = seaHistory(S, band, transfer, { dt, steps, components: 400, seed: 3 });
    for (const [drag, within] of [
      [0, 0.08],
      [9000, 0.08],
    ] as const) {
      // prettier-ignore
      const { plate } = steppedResponse(system(drag), forcing, { dt, steps });
      const own = plate.subarray(3000);
      const sigma = Math.sqrt(own.reduce((sum, z) => sum + z * z, 0) / own.length);
      expect(Math.abs(sigma / stochasticResponse(system(drag), S, omegas, transfer).plate - 1)).toBeLessThan(within);
    }
  });
});

describe('what a wave does to float and plate', () => {
  const field = { density: 1025, gravity: g, seaDepth: Infinity, plateDepth: 20, float: { waterline: 10, draught: 2 } };
  it('deep: ρ g A e^{−k d} on the float, and a speed of ω e^{−k z} at the plate, a quarter ahead (linear wave theory)', () => {
    const omega = 0.9;
    const k = omega ** 2 / g;
    const { float, water } = waveForcing(field, omega);
    expect(float[0]).toBeCloseTo(1025 * g * 10 * Math.exp(-2 * k), 3);
    expect(water).toEqual([0, expect.closeTo(omega * Math.exp(-20 * k), 9)]);
  });
  it('refuses a plate in the bed or in the float', () => {
    expect(() => waveForcing({ ...field, seaDepth: 15 }, 1)).toThrow(/not between the float and the bed/);
    expect(() => waveForcing({ ...field, plateDepth: 1 }, 1)).toThrow(/not between the float and the bed/);
  });
});
