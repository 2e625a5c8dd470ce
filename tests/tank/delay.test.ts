import { describe, expect, it } from 'vitest';
import { delayInAir } from '../../core/tank/delay-in-air.ts';
import { delayOfEvent } from '../../core/tank/delay-of-event.ts';
import { identify } from '../../core/tank/identify.ts';
import { tankEffects } from '../../core/tank/tank-effects.ts';
import type { TankSetup } from '../../core/tank/tank-setup.ts';
import { normal } from './normal.ts';

const dt = 0.1;
const times = (seconds: number) => Float64Array.from({ length: Math.round(seconds / dt) }, (_, i) => i * dt);
const wave = (T: number, a: number) => {
  const w = (2 * Math.PI) / T;
  return {
    z: (t: number) => a * Math.sin(w * t),
    v: (t: number) => a * w * Math.cos(w * t),
    a: (t: number) => -a * w * w * Math.sin(w * t),
  };
};

describe('the force’s delay', () => {
  it('from a run of a known mass in air lies in its interval in 19 of 20 noisy runs and more, guides that rub and all', () => {
    const t = times(80);
    const { z, v, a } = wave(5, 0.4);
    let held = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const random = normal(seed);
      const late = 0.01 * (seed % 7);
      const travel = t.map((at) => z(at) + 0.001 * random());
      const force = t.map((at) => 1500 * (9.81 + a(at - late)) + 40 * Math.sign(v(at - late)) + 15 * random());
      const found = delayInAir(t, travel, force, 1500);
      held += Number(found.late.low <= late && late <= found.late.high);
      expect(found.factor).toBeCloseTo(1, 1);
    }
    expect(held).toBeGreaterThanOrEqual(18);
  });

  it('from a knock is right to half a step', () => {
    const t = times(30);
    const random = normal(9);
    for (const late of [0, 0.13, -0.27]) {
      const travel = t.map((at) => 0.3 * Math.max(0, 12 - at) + 0.0005 * random());
      // the ram stops at 12 s: the plate's inertia shows in one reading or two
      const force = t.map((at) => 9000 - 30_000 * Math.max(0, 1 - Math.abs(at - late - 12) / 0.1) + 20 * random());
      const found = delayOfEvent(t, travel, force.map((F) => -F + 18_000), 9, 15); // prettier-ignore
      expect(Math.abs(found.late - late)).toBeLessThanOrEqual(found.bound);
    }
    expect(() => delayOfEvent(t, t.map((at) => Math.sin(at)), t.map(() => random()), 5, 15)).toThrow(/no event/); // prettier-ignore
  });

  it('is refused in air where the force answers to another mass', () => {
    const t = times(60);
    const { z, a } = wave(6, 0.4);
    expect(() =>
      delayInAir(
        t,
        t.map(z),
        t.map((at) => 14_715 + 400 * a(at)),
        1500,
      ),
    ).toThrow(/answers to 400 kg/);
  });
});

describe('a drive that sticks and jumps', () => {
  const setup: TankSetup = { mass: 1460, volume: 0.186, area: 8.4, density: 1024, width: 2.9, rigMass: 0, waterInside: 0, stiffness: null, delayBound: 0, also: new Set(), harmonics: 3 }; // prettier-ignore
  const t = times(80);
  const { z, v, a } = wave(8, 0.4);
  const force = t.map((at) => 12_500 + 19_000 * a(at) + 0.5 * 1024 * 8.4 * 6.8 * v(at) * Math.abs(v(at)));
  const ids = (travel: Float64Array) => identify(t, travel, force, setup).findings.map(({ id }) => id);
  const random = normal(4);

  it('is told apart from a noisy one, and from one with single readings off', () => {
    expect(ids(t.map((at) => z(at) + 0.004 * random()))).not.toContain('stick-slip');
    expect(ids(t.map((at, i) => z(at) + (i % 31 === 0 ? 0.1 : 0) + 0.001 * random()))).not.toContain('stick-slip');
    // holds fast for 0.5 s in each rise, then catches up
    const sticking = t.map((at) => {
      const phase = at % 8;
      return (phase > 7.4 && phase < 7.9 ? z(at - phase + 7.4) : z(at)) + 0.001 * random();
    });
    expect(ids(sticking)).toContain('stick-slip');
  });
});

describe('what the tank does', () => {
  const around = { plateWidth: 3, tankWidth: 6, tankLength: 30, plateDepth: 6, aboveFloor: 9 };

  const thin = { area: 9, volume: 0, density: 1000 };

  it('walls: a strip across half a channel has 1.123 times its added mass (−8 ln cos(π/4) / (π/2)², from memory), none in a wide one', () => {
    expect(tankEffects(around, thin, 15_000).walls).toBeCloseTo(0.1236, 3);
    expect(tankEffects({ ...around, tankWidth: 600, tankLength: 600 }, thin, 15_000).walls).toBeLessThan(1e-4);
  });

  it('floor: a sphere towards a wall has ½ρV (1 + 3a³/8h³) (Lamb, Hydrodynamics, art. 138, from memory)', () => {
    const [a, h, density] = [1, 4, 1000];
    const volume = (4 / 3) * Math.PI * a ** 3;
    const { floor, surface } = tankEffects({ ...around, aboveFloor: h, plateDepth: h }, { area: 3.14, volume, density }, 0.5 * density * volume); // prettier-ignore
    expect(floor).toBeCloseTo((3 / 8) * (a / h) ** 3, 10);
    expect(surface).toBe(-floor!);
  });
});
