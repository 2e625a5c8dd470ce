import { describe, expect, it } from 'vitest';
import { floatAscent, watchCircle } from '../../core/recovery/float-ascent.ts';
import { growthOnSphere, netBuoyancy } from '../../core/recovery/float-buoyancy.ts';

const glass = { volume: (Math.PI / 6) * 0.4318 ** 3, mass: 17.7, ratedDepth: 6700, compression: 0, uptake: 0 };
const rising = { depth: 40, buoyancy: 300, ropeWeight: 0, ropeDiameter: 0.01, diameter: 0.5, dragCoefficient: 0.6, density: 1025, skinFriction: 0, current: 0.4 }; // prettier-ignore

it('gives a 17 inch hollow glass sphere of 17.7 kg a net buoyancy near 25 kg (makers’ figure, from memory)', () => {
  expect(netBuoyancy(glass, 0, 1025) / 9.80665).toBeGreaterThan(24.5);
  expect(netBuoyancy(glass, 0, 1025) / 9.80665).toBeLessThan(26.6);
});

it('loses buoyancy with depth and with water in it, as Archimedes has it', () => {
  const foam = { volume: 0.1, mass: 40, ratedDepth: 100, compression: 0.02, uptake: 0.05 };
  expect(netBuoyancy(foam, 50, 1025)).toBeCloseTo(9.80665 * (1025 * 0.1 * 0.99 * 0.95 - 40), 9);
  expect(growthOnSphere(0.5, 0.05, 1325, 1025)).toBeCloseTo(9.80665 * 300 * (Math.PI / 6) * (0.6 ** 3 - 0.5 ** 3), 9);
});

describe('the ascent', () => {
  it('without a rope is at the terminal speed √(2 B / (ρ C_d A)) all along, and drifts by current times time', () => {
    const v = Math.sqrt((2 * 300) / (1025 * 0.6 * (Math.PI / 4) * 0.25));
    const { time, drift, meanSpeed } = floatAscent(rising);
    expect(meanSpeed).toBeCloseTo(v, 9);
    expect(time).toBeCloseTo(40 / v, 9);
    expect(drift).toBeCloseTo((0.4 * 40) / v, 9);
  });

  it('slows with a heavy rope as the closed form 2 (√F0 − √F1) / w says, and halving the steps changes nothing', () => {
    const heavy = { ...rising, ropeWeight: 4 };
    const k = Math.sqrt((1025 * 0.6 * (Math.PI / 4) * 0.25) / 2);
    // dz/dt = √(300 − 4 z) / k
    const exact = (2 * k * (Math.sqrt(300) - Math.sqrt(300 - 160))) / 4;
    expect(floatAscent(heavy).time / exact).toBeCloseTo(1, 5);
    expect(floatAscent(heavy, 800).time / floatAscent(heavy, 400).time).toBeCloseTo(1, 5);
  });

  it('refuses a float that cannot lift its rope, and says what to do', () =>
    expect(() => floatAscent({ ...rising, ropeWeight: 8 })).toThrow(/stops on its way up[\s\S]*lighter rope/));
});

it('lies within √(L² − z²) of its anchor: 3, 4, 5', () => {
  expect(watchCircle(50, 40)).toBe(30);
  expect(watchCircle(30, 40)).toBe(0);
});
