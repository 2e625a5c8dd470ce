import { expect, it } from 'vitest';
import { boltWork } from '../../core/fixings/bolt-work.ts';
import { shopWelding, weldWork } from '../../core/fixings/weld-work.ts';

it('weighs the weld: 0.216 kg a metre of a 5 mm throat, a tenth over the triangle (a² · 1.1 · 7850, worked by hand)', () => {
  const { mass, volume, passes, arcTime, time, heatInput } = weldWork({ throat: 5e-3, length: 1 });
  expect(volume).toBeCloseTo(27.5e-6, 12);
  expect(mass).toBeCloseTo(0.2159, 4);
  expect(passes).toBe(1);
  // 2.5 kg an hour: 311 s of arc; speed 3.22 mm/s; 0.8 · 5.5 kW over it 1.37 kJ/mm.
  expect(arcTime).toBeCloseTo(310.9, 0);
  expect(time / arcTime).toBeCloseTo(1 / 0.3, 9);
  expect(heatInput / 1e6).toBeCloseTo(1.368, 3);
});

it('lays a leg of 8 mm in one pass, of 12 mm in three; the passes share metal and heat', () => {
  const leg = (z: number) => weldWork({ throat: z / Math.SQRT2, length: 2 });
  expect([leg(8e-3).passes, leg(8.1e-3).passes, leg(12e-3).passes, leg(16e-3).passes]).toEqual([1, 2, 3, 4]);
  expect(leg(16e-3).heatInput).toBeCloseTo(leg(8e-3).heatInput, 3);
  expect(leg(8e-3).mass / weldWork({ throat: 8e-3 / Math.SQRT2, length: 1 }).mass).toBeCloseTo(2, 9);
});

it('follows the user’s own rates and refuses one that is nothing', () => {
  const own = { ...shopWelding, deposition: shopWelding.deposition / 2 };
  expect(weldWork({ throat: 5e-3, length: 1 }, own).time / weldWork({ throat: 5e-3, length: 1 }).time).toBeCloseTo(
    2,
    9,
  );
  expect(() => weldWork({ throat: 0, length: 1 })).toThrow(/throat/);
});

it('drills three walls for a through-bolt (panel and both walls), none of the tube for studs and clamps', () => {
  const holes = Object.fromEntries(Object.entries(boltWork).map(([kind, work]) => [kind, work.holes]));
  expect(holes).toEqual({ 'through-bolt with sleeve': 3, 'one-sided': 2, 'welded stud': 1, 'tapped pad': 2, clamp: 1 });
});
