import { expect, it } from 'vitest';
import { boltPitchLargest } from '../../core/checks/bolt-pitch-largest.ts';
import { modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const second = { p_buckle: 0.15, p_most: 0.2 };

it('EN 1993-1-8 Table 3.3: 14 t of the thinner part, 200 mm at the most', () => {
  expect(
    valuesGiven(boltPitchLargest, 'partial factors', { ...second, p_lim: 0.2, t: 0.008, t_w: 0.01 }).p_max! * 1e3,
  ).toBeCloseTo(112, 9);
  expect(
    valuesGiven(boltPitchLargest, 'partial factors', { ...second, p_lim: 0.2, t: 0.01, t_w: 0.008 }).p_max! * 1e3,
  ).toBeCloseTo(112, 9);
  expect(
    valuesGiven(boltPitchLargest, 'partial factors', { ...second, p_lim: 0.2, t: 0.02, t_w: 0.02 }).p_max! * 1e3,
  ).toBeCloseTo(200, 9);
});

it('AISC 360 J3.5(b): 14 t, 180 mm at the most', () => {
  expect(
    valuesGiven(boltPitchLargest, 'allowable stress', { ...second, p_us: 0.18, t: 0.008, t_w: 0.01 }).p_max! * 1e3,
  ).toBeCloseTo(112, 9);
  expect(
    valuesGiven(boltPitchLargest, 'allowable stress', { ...second, p_us: 0.18, t: 0.02, t_w: 0.02 }).p_max! * 1e3,
  ).toBeCloseTo(180, 9);
});

it('bounds the pitch by nine thicknesses of the thinner part, 150 mm at the most (Table 3.3, note 2), and by 200 mm', () => {
  const low = (t: number, t_w: number) =>
    valuesGiven(boltPitchLargest, 'partial factors', { ...second, t, t_w }).p_low! * 1e3;
  expect(low(0.008, 0.01)).toBeCloseTo(72, 9);
  expect(low(0.01, 0.008)).toBeCloseTo(72, 9);
  expect(low(0.02, 0.02)).toBeCloseTo(150, 9);
  expect(valuesGiven(boltPitchLargest, 'partial factors', second).p_high).toBe(0.2);
});

it('has the limits of the rules as inputs, and lies within the second opinion', () => {
  const model = modelWith();
  const up = situationOf(model, 'service', 'up');
  expect(readOf(boltPitchLargest, 'p_lim', model, 'A1', up)).toBeCloseTo(0.2, 12);
  expect(readOf(boltPitchLargest, 'p_us', model, 'A1', up)).toBeCloseTo(0.18, 12);
  expect(readOf(boltPitchLargest, 'p_buckle', model, 'A1', up)).toBeCloseTo(0.15, 12);
  expect(readOf(boltPitchLargest, 'p_most', model, 'A1', up)).toBeCloseTo(0.2, 12);
  expect(readOf(boltPitchLargest, 'p_far', model, 'A1', up)).toBeCloseTo(
    Math.max(...model.panels.get('A1')!.bolts.map(({ pitch }) => pitch)),
    12,
  );
  for (const t of [0.003, 0.006, 0.01, 0.015, 0.03]) {
    const { p_max, p_low } = valuesGiven(boltPitchLargest, 'partial factors', { ...second, p_lim: 0.2, t, t_w: 0.05 });
    expect(p_max!).toBeGreaterThanOrEqual(p_low!);
    expect(p_max!).toBeLessThanOrEqual(0.2);
  }
});

it('does not apply to a welded panel', () => {
  const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
  const up = situationOf(model, 'service', 'up');
  expect(boltPitchLargest.applies(model, 'A1', up)).toBe(true);
  expect(boltPitchLargest.applies(model, 'A2', up)).toBe('the panel is welded');
  expect([boltPitchLargest.demand, boltPitchLargest.capacity]).toEqual(['p_far', 'p_max']);
});
