import { describe, expect, it } from 'vitest';
import { harmonicResponse } from '../../core/motion/harmonic-response.ts';
import type { Complex, HeaveSystem } from '../../core/motion/heave-system.ts';
import { steppedResponse } from '../../core/motion/stepped-response.ts';
import { stochasticResponse } from '../../core/motion/stochastic-response.ts';

const none: Complex = [0, 0];
const degrees = ([re, im]: Complex): number => (Math.atan2(im, re) * 180) / Math.PI;
const size = ([re, im]: Complex): number => Math.hypot(re, im);

/** Plate alone on a spring of 50 kN/m: M 486 114 kg, ρ 1025, C_d 8, S 100 m². Derived case. */
const alone: HeaveSystem = {
  float: null,
  plate: { mass: 486_114, damping: 0, drag: 0.5 * 1025 * 8 * 100, carried: 0, weight: 0 },
  link: { stiffness: 50_000, damping: 0, pushes: true },
};
const F0 = 100_000;

describe('the plate alone on a spring, driven by 100 kN (closed form: X² = [−α + √(α² + 4β F0²)] / 2β)', () => {
  const rows = [[6, 0.204357, 170.829, 0.20417, 0.204223], [8, 0.38042, 161.9, 0.379309, 0.379645], [20, 1.705766, 88.023, 1.716427, 1.742125]] as const; // prettier-ignore

  it.each(rows)('at %s s moves by %s m and lags by %s°, linearised', (T, X, lag) => {
    const { plate } = harmonicResponse(alone, (2 * Math.PI) / T, { float: none, plate: [F0, 0], water: none });
    expect(size(plate)).toBeCloseTo(X, 6);
    expect(-degrees(plate)).toBeCloseTo(lag, 2);
  });

  it.each(rows)(
    'at %s s: first harmonic and half range by time steps as Runge-Kutta at 1e-9 gave them',
    (T, _X, _lag, first, halfRange) => {
      const omega = (2 * Math.PI) / T;
      const per = 400;
      const { plate } = steppedResponse(alone, (t, into) => void (into.F2 = F0 * Math.cos(omega * t)), {
        dt: T / per,
        steps: 60 * per,
      });
      const last = plate.subarray(50 * per, 60 * per);
      let [re, im] = [0, 0];
      last.forEach((z, i) => {
        re += (2 / last.length) * z * Math.cos((2 * Math.PI * i) / per);
        im += (2 / last.length) * z * Math.sin((2 * Math.PI * i) / per);
      });
      expect(Math.hypot(re, im)).toBeCloseTo(first, 5);
      expect((Math.max(...last) - Math.min(...last)) / 2).toBeCloseTo(halfRange, 4);
    },
  );

  it('changes by less than a millionth of its range when the step is halved again', () => {
    const end = (per: number): number =>
      steppedResponse(alone, (t, into) => void (into.F2 = F0 * Math.cos((2 * Math.PI * t) / 8)), {
        dt: 8 / per,
        steps: 2 * per,
      }).plate.at(-1)!;
    expect(Math.abs(end(800) - end(400))).toBeLessThan(1e-6);
  });
});

describe('float and plate joined by a power take-off (linear case, derived)', () => {
  const system: HeaveSystem = {
    float: { mass: 90_000, damping: 15_000, stiffness: 180_000 },
    plate: { mass: 486_114, damping: 60_000, drag: 0, carried: 0, weight: 0 },
    link: { stiffness: 20_000, damping: 40_000, pushes: true },
  };
  const omega = (2 * Math.PI) / 7;
  const answer = harmonicResponse(system, omega, { float: [80_000, 0], plate: none, water: none });

  it('moves by 0.592748 m (−22.879°) and 0.063716 m (−128.421°), apart by 0.612902 m', () => {
    expect(size(answer.float)).toBeCloseTo(0.592748, 6);
    expect(degrees(answer.float)).toBeCloseTo(-22.879, 3);
    expect(size(answer.plate)).toBeCloseTo(0.063716, 6);
    expect(degrees(answer.plate)).toBeCloseTo(-128.421, 3);
    expect(Math.hypot(answer.float[0] - answer.plate[0], answer.float[1] - answer.plate[1])).toBeCloseTo(0.612902, 6);
  });

  it('takes 6 053.07 W in the power take-off of 8 274.26 W that come in, and all of it is accounted for', () => {
    const { power } = answer;
    expect(power.link).toBeCloseTo(6053.07, 2);
    expect(power.in).toBeCloseTo(8274.26, 2);
    expect(power.float + power.link + power.plate).toBeCloseTo(power.in, 6);
  });

  it('by time steps comes nearer by sixteen times when the step is halved (order 4: nothing here has a kink)', () => {
    const end = (per: number): number =>
      steppedResponse(system, (t, into) => void (into.F1 = 80_000 * Math.cos(omega * t)), {
        dt: 7 / per,
        steps: 2 * per,
      }).plate.at(-1)!;
    const exact = end(3200);
    const order = Math.log2(Math.abs(end(50) - exact) / Math.abs(end(100) - exact));
    expect(order).toBeCloseTo(4, 0);
  });

  it('by time steps ends in the same motion, and its energy balances', () => {
    const per = 200;
    const { plate, energy } = steppedResponse(system, (t, into) => void (into.F1 = 80_000 * Math.cos(omega * t)), {
      dt: 7 / per,
      steps: 60 * per,
    });
    const last = plate.subarray(-per);
    expect((Math.max(...last) - Math.min(...last)) / 2).toBeCloseTo(0.063716, 4);
    // the link's work is what its damper took and what its spring still holds
    expect((energy.float + energy.link + energy.plate + energy.stored) / energy.in).toBeCloseTo(1, 7);
  });
});

it('a plate let go at 1 m/s in still water slows by drag alone as v0/(1 + v0 t/l), l = 2M/(ρ C_d S) (closed form)', () => {
  const free: HeaveSystem = { ...alone, link: { stiffness: 0, damping: 0, pushes: true } };
  const { plate } = steppedResponse(free, () => undefined, { dt: 0.01, steps: 1000, start: [0, 0, 0, 1] });
  expect(plate.at(-1)).toBeCloseTo(2.660994, 6);
  expect((plate.at(-1)! - plate.at(-2)!) / 0.01).toBeCloseTo(0.105997, 3);
});

it('a line hangs slack where it would have to push, and its snap is counted; a strut does not', () => {
  const hung = (pushes: boolean): HeaveSystem => ({
    float: null,
    plate: { mass: 20_000, damping: 0, drag: 3000, carried: 0, weight: 12_000 },
    link: { stiffness: 400_000, damping: 2000, pushes },
  });
  const heave = (t: number, into: { F2: number }): void => void (into.F2 = 30_000 * Math.sin((2 * Math.PI * t) / 6));
  const line = steppedResponse(hung(false), heave, { dt: 0.005, steps: 12_000 });
  expect(line.slackTimes).toBeGreaterThan(5);
  expect(Math.min(...line.pull)).toBe(0);
  expect(line.snapSpeed).toBeGreaterThan(0.1);
  const strut = steppedResponse(hung(true), heave, { dt: 0.005, steps: 12_000 });
  expect(Math.min(...strut.pull)).toBeLessThan(0);
  expect(strut.slackTimes).toBe(0);
  expect(Math.max(...line.pull)).toBeGreaterThan(Math.max(...strut.pull));
});

describe('in a sea state', () => {
  it('a linear system’s variance is that of the textbook single degree: σ² = π G0 / (4 ζ ω0³ m²) for a flat one-sided force spectrum G0', () => {
    const [m, w0, zeta] = [1000, 1, 0.05];
    const system: HeaveSystem = {
      float: null,
      plate: { mass: m, damping: 2 * zeta * w0 * m, drag: 0, carried: 0, weight: 0 },
      link: { stiffness: m * w0 ** 2, damping: 0, pushes: true },
    };
    const omegas = Float64Array.from({ length: 40_001 }, (_, i) => 1e-4 + i * 1e-3);
    const { plate } = stochasticResponse(
      system,
      () => 1,
      omegas,
      () => ({ float: none, plate: [1, 0], water: none }),
    );
    expect(plate ** 2 / (Math.PI / (4 * zeta * w0 ** 3 * m ** 2))).toBeCloseTo(1, 3);
  });

  it('drag is linearised as √(8/π) σ: a single line of the spectrum of a Gaussian speed', () => {
    const omegas = Float64Array.from({ length: 301 }, (_, i) => 0.3 + i * 0.005);
    const narrow = (omega: number): number => Math.exp(-(((omega - 0.8) / 0.02) ** 2));
    const { equivalent, through } = stochasticResponse(alone, narrow, omegas, () => ({
      float: none,
      plate: [F0, 0],
      water: none,
    }));
    expect(equivalent).toBeCloseTo(Math.sqrt(8 / Math.PI) * alone.plate.drag * through, 0);
    expect(equivalent).toBeGreaterThan(0);
  });
});
