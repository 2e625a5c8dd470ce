import { expect, it } from 'vitest';
import { boltPitch } from '../../core/checks/bolt-pitch.ts';
import { bolts } from '../../core/catalogue/bolts.ts';
import { modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

it('EN 1993-1-8 Table 3.3: 2.2 d0, 39.6 mm for a hole of 18 mm', () => {
  expect(
    valuesGiven(boltPitch, 'partial factors', { d: 0.016, d_0: 0.018, p_1: 0.05, d_c: 0.02675 }).p_req! * 1e3,
  ).toBeCloseTo(39.6, 9);
  expect([boltPitch.demand, boltPitch.capacity]).toEqual(['p_req', 'p_1']);
});

it('AISC 360 J3.3: 2 2/3 d, 42.7 mm for M16', () => {
  expect(
    valuesGiven(boltPitch, 'allowable stress', { d: 0.016, d_0: 0.018, p_1: 0.05, d_c: 0.02675 }).p_req! * 1e3,
  ).toBeCloseTo(42.67, 2);
});

it('bounds the pitch by heads that touch and by three hole diameters', () => {
  const { p_low, p_high } = valuesGiven(boltPitch, 'partial factors', { d_0: 0.018, d_c: 0.02675 });
  expect([p_low! * 1e3, p_high! * 1e3]).toEqual([26.75, expect.closeTo(54, 9)]);
});

it('keeps heads apart, and below three hole diameters, for every bolt of the catalogue', () => {
  for (const { diameter: d, holeNormal: d_0, headAcrossCorners: d_c, id } of bolts)
    for (const safety of ['partial factors', 'allowable stress'] as const) {
      const { p_req, p_high } = valuesGiven(boltPitch, safety, { d, d_0, d_c, p_1: 0.1 });
      expect(p_req!, id).toBeGreaterThanOrEqual(d_c);
      expect(p_req!, id).toBeLessThanOrEqual(p_high!);
    }
});

it('does not apply to a welded panel', () => {
  const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
  const up = situationOf(model, 'service', 'up');
  expect(boltPitch.applies(model, 'A1', up)).toBe(true);
  expect(boltPitch.applies(model, 'A2', up)).toBe('the panel is welded');
  // M12 across corners, ISO 4014, and the pitch of the bolts.
  expect(readOf(boltPitch, 'd_c', model, 'A1', up)).toBeCloseTo(0.02003, 9);
  expect(readOf(boltPitch, 'd', model, 'A1', up)).toBeCloseTo(0.012, 9);
  expect(readOf(boltPitch, 'p_1', model, 'A1', up)).toBeCloseTo(
    Math.min(...model.panels.get('A1')!.bolts.map(({ pitch }) => pitch)),
    12,
  );
});
