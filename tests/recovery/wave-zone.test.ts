import { describe, expect, it } from 'vitest';
import { hoistResponse } from '../../core/recovery/hoist-response.ts';
import { emptyingTray, holeFor } from '../../core/recovery/emptying-tray.ts';
import { drainTime } from '../../core/mass/drain-time.ts';
import {
  dragForce,
  hoistPeriod,
  hydrodynamicForce,
  shortestPeriod,
  sinkingSpeed,
  slamForce,
  snapForce,
  tiltedSlam,
  waveAtDepth,
  waveOfAnyPeriod,
} from '../../core/recovery/wave-zone.ts';

describe('the simplified method (DNV-RP-N103, section 4, from memory; numbers worked by hand)', () => {
  it('adds drag 92.25 kN, slam 46.125 kN, inertia 120 kN and buoyancy 15 kN to 173.703 kN', () => {
    expect(dragForce(1025, 5, 100, 0.6) / 1e3).toBeCloseTo(92.25, 9);
    expect(hydrodynamicForce(92.25e3, 46.125e3, 120e3, 15e3) / 1e3).toBeCloseTo(173.703, 3);
    expect(slamForce(1025, 5, 50, 0.6) / 1e3).toBeCloseTo(46.125, 9);
  });

  it('snaps with 154.9 kN at 1 m/s on 2 MN/m with 12 t, and with 977.9 kN where 466 114 kg of water move with it', () => {
    expect(snapForce(1, 2e6, 12_000) / 1e3).toBeCloseTo(154.9, 1);
    expect(Math.abs(snapForce(1, 2e6, 478_114) / 1e3 - 977.9)).toBeLessThan(0.06);
    expect(hoistPeriod(478_114, 0, 2e6)).toBeCloseTo(3.07, 2);
  });

  it('takes 8.898 √(Hs/g) as the shortest mean period: 4.02 s at 2 m (RP-H103, 4.3.2)', () =>
    expect(shortestPeriod(2)).toBeCloseTo(4.02, 2));

  it('is below the motion that it takes for any period at the shortest one, and falls with depth', () => {
    const byPeriod = waveAtDepth(2, shortestPeriod(2), 0);
    const any = waveOfAnyPeriod(2, 0);
    // at the steepest sea both tell the same to a tenth
    expect(byPeriod.speed / any.speed).toBeGreaterThan(0.9);
    expect(byPeriod.speed / any.speed).toBeLessThan(1.25);
    expect(waveAtDepth(2, 6, 10).speed).toBeLessThan(waveAtDepth(2, 6, 0).speed);
  });
});

it('sinks at the speed at which drag carries its weight (balance)', () => {
  const v = sinkingSpeed(16e3, 1025, 1.2, 15);
  expect(dragForce(1025, 1.2, 15, v)).toBeCloseTo(16e3, 6);
  expect(sinkingSpeed(-10, 1025, 1.2, 15)).toBe(0);
});

it('slams less an edge first, never more than flat, and less the steeper', () => {
  const flat = slamForce(1025, 5, 15, 0.8);
  const at = (degrees: number) => tiltedSlam(flat, 30_000, 3, (degrees * Math.PI) / 180, 0.8);
  expect(at(1)).toBe(flat);
  expect(at(30)).toBeLessThan(at(20));
  // momentum: v² A / (2 b sin θ)
  expect(at(30)).toBeCloseTo((0.8 ** 2 * 30_000) / (2 * 3 * 0.5), 6);
});

describe('the load on its hoist', () => {
  const hoist = { mass: 30_000, stiffness: 450e3, drag: 0, amplitude: 0.1, omega: 1 };
  it('without drag is the undamped textbook answer K η m ω² / (K − m ω²)', () =>
    expect(hoistResponse(hoist).pull).toBeCloseTo((450e3 * 0.1 * 30_000) / (450e3 - 30_000), 6));
  it('follows a slow hook, and is pulled by nearly K η at a quick one', () => {
    expect(hoistResponse({ ...hoist, omega: 0.01 }).rise).toBeCloseTo(0.1, 4);
    expect(hoistResponse({ ...hoist, omega: 100 }).pull / (450e3 * 0.1)).toBeCloseTo(1, 2);
  });
  it('is held by drag at resonance: the drag’s work is that of the hook (energy)', () => {
    const omega = Math.sqrt(450e3 / 30_000);
    const { rise, equivalent } = hoistResponse({ ...hoist, drag: 20_000, omega });
    expect(equivalent).toBeCloseTo((8 / (3 * Math.PI)) * 20_000 * omega * rise, 4);
    expect(450e3 * 0.1).toBeCloseTo(omega * equivalent * rise, 3);
  });
});

describe('a tray that empties', () => {
  const [A, h, a] = [0.9, 0.142, 0.0014];
  it('keeps its water: what is inside and what ran out are always the first volume (conservation)', () => {
    const { inside, outside } = emptyingTray(A, h, a, 250);
    for (let i = 0; i < inside.length; i++) expect(inside[i]! + outside[i]!).toBeCloseTo(A * h, 12);
    expect(inside.at(-1)!).toBeLessThan(1e-4 * A * h);
  });
  it('has run down at half the time to a quarter of its depth, as √h falls in a straight line (Torricelli)', () => {
    const T = drainTime({ area: A, hole: a, height: h, drive: 9.80665 });
    const { inside } = emptyingTray(A, h, a, T);
    expect(inside[200]! / (A * h)).toBeCloseTo(0.25, 4);
  });
  it('empties in the time for which its hole was sized', () =>
    expect(drainTime({ area: A, hole: holeFor(A, h, 240), height: h, drive: 9.80665 })).toBeCloseTo(240, 9));
});
