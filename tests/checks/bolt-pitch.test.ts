import { expect, it } from 'vitest';
import { boltPitch } from '../../core/checks/bolt-pitch.ts';
import { bolts } from '../../core/catalogue/bolts.ts';
import { valuesGiven } from './bolt-values.ts';

it('EN 1993-1-8 Table 3.3: 2.2 d0, 39.6 mm for a hole of 18 mm (from memory)', () => {
  expect(
    valuesGiven(boltPitch, 'partial factors', { d: 0.016, d_0: 0.018, p_1: 0.05, d_c: 0.02675 }).p_req! * 1e3,
  ).toBeCloseTo(39.6, 9);
  expect([boltPitch.demand, boltPitch.capacity]).toEqual(['p_req', 'p_1']);
});

it('AISC 360 J3.3: 2 2/3 d, 42.7 mm for M16 (from memory)', () => {
  expect(
    valuesGiven(boltPitch, 'allowable stress', { d: 0.016, d_0: 0.018, p_1: 0.05, d_c: 0.02675 }).p_req! * 1e3,
  ).toBeCloseTo(42.67, 2);
});

it('keeps heads apart, and below three hole diameters, for every bolt of the catalogue', () => {
  for (const { diameter: d, holeNormal: d_0, headAcrossCorners: d_c, id } of bolts)
    for (const safety of ['partial factors', 'allowable stress'] as const) {
      const { p_req, p_high } = valuesGiven(boltPitch, safety, { d, d_0, d_c, p_1: 0.1 });
      expect(p_req!, id).toBeGreaterThanOrEqual(d_c);
      expect(p_req!, id).toBeLessThanOrEqual(p_high!);
    }
});
