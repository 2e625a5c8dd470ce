import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { fatigue } from '../../core/checks/fatigue.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads } from './model-of.ts';

const MPa = 1e6;

it('prints amplitude, range, and cycles in the life: 60 kN of amplitude swings 120 kN, 4 million a year for 10 years', () => {
  const model = demoModel();
  const given = Object.fromEntries(
    ['F_s', 'k_a', 'n_y', 'L', 'year', 'N_C'].map((symbol) => [symbol, reads(fatigue, symbol, model, 'plate')]),
  );
  for (const safety of ['partial factors', 'allowable stress'] as const) {
    const { F_a, F_r, N_L } = valuesGiven(fatigue, safety, given);
    expect([F_a, F_r, N_L]).toEqual([60e3, 120e3, expect.closeTo(4e7, 0)]);
  }
  expect(given.N_C).toBe(2e6);
});

it('reads half of a force that is stated as a range', () => {
  const ranged = demoModel({ loads: { service: { measure: 'range' } } });
  expect(reads(fatigue, 'k_a', ranged, 'plate')).toBe(0.5);
  expect(valuesGiven(fatigue, 'partial factors', { F_s: 60e3, k_a: 0.5 }).F_r).toBe(60e3);
});

it('gives Miner’s sum 1.172411e-5 of the ranges of ASTM E1049’s example in class 36 (counts from memory; Σ n r³ = 1094 with a unit of 10 MPa)', () => {
  const D = (sigma_r: number, N_L: number) =>
    valuesGiven(fatigue, 'partial factors', { sigma_r, sigma_C: 36 * MPa, N_C: 2e6, N_L }).D!;
  const counted = [
    [30, 0.5],
    [40, 1.5],
    [60, 0.5],
    [80, 1],
    [90, 0.5],
  ] as const;
  expect(counted.reduce((sum, [range, n]) => sum + D(range * MPa, n), 0)).toBeCloseTo(1.172411e-5, 11);
});

it('has its knee at 0.737 of the class and 5 million cycles, below it a slope of 5 (EN 1993-1-9, 7.1, from memory)', () => {
  const at = (sigma_r: number) =>
    valuesGiven(fatigue, 'partial factors', { sigma_r: sigma_r * MPa, sigma_C: 100 * MPa, N_C: 2e6, N_L: 5e6 });
  expect(at(1).sigma_D! / MPa).toBeCloseTo(73.7, 1);
  expect(at(73.68).D_low).toBeCloseTo(1, 2);
  expect(at(73.68 / 2).D_low).toBeCloseTo(1 / 32, 3);
  expect(at(73.68 / 2).D).toBeCloseTo(1 / 8, 3);
  expect(at(90).D_low).toBe(at(90).D);
});

it('cannot be judged, and says that a yield margin says nothing about life', () => {
  const { rows } = checkRows(fatigue, demoModel());
  expect(rows).toHaveLength(1);
  expect(rows[0]).toMatchObject({
    place: 'plate',
    limitState: 'fatigue',
    verdict: 'cannot be judged',
    reason: expect.stringMatching(/a margin on yield says nothing about life/),
  });
});

it('holds the damage to 1 before a factor for access and consequence', () => {
  expect(valuesGiven(fatigue, 'partial factors', {}).D_lim).toBe(1);
});

it('sets damage against its limit, and the damage with the gentler slope below it', () => {
  expect([fatigue.demand, fatigue.capacity]).toEqual(['D', 'D_lim']);
  expect([fatigue.second.of, fatigue.second.low, fatigue.second.high]).toEqual(['D', 'D_low', undefined]);
});
