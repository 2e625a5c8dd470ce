import { expect, it } from 'vitest';
import { boltEdgeDistanceLargest } from '../../core/checks/bolt-edge-distance-largest.ts';
import { boltPitchLargest } from '../../core/checks/bolt-pitch-largest.ts';
import { modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const en = { c_e: 0.04, c_low: 0.1, c_high: 0.04 };
const us = { e_lim: 0.15, c_low: 0.1, c_high: 0.04 };

it('EN 1993-1-8 Table 3.3: 4 t + 40 mm of the thinner part, 72 mm for 8 mm', () => {
  expect(
    valuesGiven(boltEdgeDistanceLargest, 'partial factors', { ...en, t: 0.008, t_w: 0.01 }).e_max! * 1e3,
  ).toBeCloseTo(72, 9);
  expect(
    valuesGiven(boltEdgeDistanceLargest, 'partial factors', { ...en, t: 0.01, t_w: 0.008 }).e_max! * 1e3,
  ).toBeCloseTo(72, 9);
});

it('AISC 360 J3.5: 12 t, 150 mm at the most', () => {
  expect(
    valuesGiven(boltEdgeDistanceLargest, 'allowable stress', { ...us, t: 0.008, t_w: 0.01 }).e_max! * 1e3,
  ).toBeCloseTo(96, 9);
  expect(
    valuesGiven(boltEdgeDistanceLargest, 'allowable stress', { ...us, t: 0.02, t_w: 0.02 }).e_max! * 1e3,
  ).toBeCloseTo(150, 9);
});

it('bounds the edge distance by four thicknesses, 100 mm at the most, and by twelve and the 40 mm of Table 3.3, of the thinner part', () => {
  const bounds = (t: number, t_w: number) => {
    const { e_low, e_high } = valuesGiven(boltEdgeDistanceLargest, 'partial factors', { ...en, t, t_w });
    return [Math.round(e_low! * 1e6) / 1e3, Math.round(e_high! * 1e6) / 1e3];
  };
  expect(bounds(0.008, 0.01)).toEqual([32, 136]);
  expect(bounds(0.01, 0.008)).toEqual([32, 136]);
  expect(bounds(0.03, 0.03)).toEqual([100, 400]);
});

it('keeps both codes within the second opinion at every thickness', () => {
  for (const t of [0.002, 0.005, 0.01, 0.02, 0.03, 0.05])
    for (const [safety, given] of [
      ['partial factors', en],
      ['allowable stress', us],
    ] as const) {
      const { e_max, e_low, e_high } = valuesGiven(boltEdgeDistanceLargest, safety, { ...given, t, t_w: 0.06 });
      expect(e_max!).toBeGreaterThanOrEqual(e_low!);
      expect(e_max!).toBeLessThanOrEqual(e_high!);
    }
});

it('reads the farthest edge and pitch of the panel', () => {
  const model = modelWith();
  const up = situationOf(model, 'service', 'up');
  expect(readOf(boltEdgeDistanceLargest, 'e_far', model, 'A1', up)).toBeCloseTo(0.018, 9);
  expect(readOf(boltEdgeDistanceLargest, 'c_e', model, 'A1', up)).toBeCloseTo(0.04, 12);
  expect(readOf(boltEdgeDistanceLargest, 'c_low', model, 'A1', up)).toBeCloseTo(0.1, 12);
  expect(readOf(boltEdgeDistanceLargest, 'c_high', model, 'A1', up)).toBeCloseTo(0.04, 12);
  expect(readOf(boltEdgeDistanceLargest, 'e_lim', model, 'A1', up)).toBeCloseTo(0.15, 12);
  expect(readOf(boltPitchLargest, 'p_far', model, 'A1', up)).toBeCloseTo(
    Math.max(...model.panels.get('A1')!.bolts.map(({ pitch }) => pitch)),
    12,
  );
});

it('does not apply to a welded panel', () => {
  const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
  const up = situationOf(model, 'service', 'up');
  expect(boltEdgeDistanceLargest.applies(model, 'A1', up)).toBe(true);
  expect(boltEdgeDistanceLargest.applies(model, 'A2', up)).toBe('the panel is welded');
  expect([boltEdgeDistanceLargest.demand, boltEdgeDistanceLargest.capacity]).toEqual(['e_far', 'e_max']);
});
