import { describe, expect, it } from 'vitest';
import { panelDeflectionBolts } from '../../core/checks/panel-deflection-bolts.ts';
import { panelDeflectionFourSides } from '../../core/checks/panel-deflection-four-sides.ts';
import { panelDeflectionTwoSides } from '../../core/checks/panel-deflection-two-sides.ts';
import type { Check } from '../../core/checks/check.ts';
import { design, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const [p, t, E, nu] = [1000, 0.01, 210e9, 0.3];
const D = (E * t ** 3) / (12 * (1 - nu ** 2));
const common = { p, t, E, nu, gamma_L: 1, k_w: 150 };
const four = (change: Record<string, number>) =>
  valuesGiven(panelDeflectionFourSides, 'partial factors', { ...common, a: 1, b: 1, h: 0, EI_edge: 1e12, ...change });
const two = (change: Record<string, number>) =>
  valuesGiven(panelDeflectionTwoSides, 'allowable stress', { ...common, L: 1, B: 1, h: 0, ...change });
const bolts = (change: Record<string, number>) =>
  valuesGiven(panelDeflectionBolts, 'partial factors', {
    ...common,
    a_b: 1,
    b_b: 1,
    n_x: 2,
    n_y: 2,
    i_x: 0,
    i_y: 0,
    d_w: 0.03,
    ...change,
  });

describe('deflection of the panel', () => {
  it.each([
    [1, 0.00406],
    [1.5, 0.00772],
    [2, 0.01013],
  ])('four sides hinged, b/a = %d: w D / (p a⁴) = %d (T&WK, 2nd ed., Table 8)', (b, alpha) => {
    expect(Math.abs((four({ b }).w_Ed! * D) / p - alpha)).toBeLessThan(6e-6);
    expect(Math.abs((four({ a: b, b: 1 }).w_Ed! * D) / p - alpha)).toBeLessThan(6e-6);
  });

  it('four sides held: 0.00126 for a square, 0.00254 at b/a = 2 (T&WK, Table 35; within its digits)', () => {
    expect(Math.abs((four({ h: 1 }).w_Ed! * D) / p - 0.00126)).toBeLessThan(1e-5);
    expect(Math.abs((four({ h: 1, b: 2 }).w_Ed! * D) / p - 0.00254)).toBeLessThan(1e-5);
  });

  it('adds the sinking of the tubes: g = 10 gives 0.004621, g = 1 0.008589 (derived by Ritz, no published table)', () => {
    expect((four({ EI_edge: 10 * D }).w_Ed! * D) / p).toBeCloseTo(0.004621, 4);
    expect((four({ EI_edge: D }).w_Ed! * D) / p).toBeCloseTo(0.008589, 4);
    expect(four({ EI_edge: 10 * D }).g).toBeCloseTo(10, 6);
    expect(((four({ EI_edge: D, h: 1 }).w_Ed! - four({ h: 1 }).w_Ed!) * D) / p).toBeCloseTo(0.008589 - 0.0040624, 4);
  });

  it('two sides hinged: 0.01501 at the free edge of a square (T&WK art. 48; value by Ritz); narrow: 5/384 of the beam', () => {
    expect((two({}).w_Ed! * D) / p).toBeCloseTo(0.01501, 4);
    expect((two({ B: 0.05 }).w_Ed! * E * t ** 3) / 12 / p).toBeCloseTo(5 / 384, 4);
    expect((two({ h: 1 }).w_Ed! * D) / p).toBeCloseTo(0.002909, 4);
  });

  it('four corner bolts: 0.0255 p a⁴/D at the centre of a square (T&WK art. 52 prints 0.0257; value by Ritz)', () => {
    expect((bolts({}).w_Ed! * D) / p).toBeCloseTo(0.025507, 3);
    expect(bolts({ n_x: 8, n_y: 8 }).w_Ed!).toBeLessThan(1.2 * four({}).w_Ed!);
  });

  it('takes the load factor out of the pressure, and part of the shorter span as limit', () => {
    for (const [of, limit] of [
      [four, 1 / 150],
      [two, 1 / 150],
      [bolts, 1 / 150],
    ] as const) {
      expect(of({ gamma_L: 1.35 }).w_Ed! / of({}).w_Ed!).toBeCloseTo(1 / 1.35, 9);
      expect(of({}).w_lim).toBeCloseTo(limit, 12);
      expect(of({ p: 0 }).w_Ed).toBe(0);
    }
    expect(four({ a: 2 }).w_lim).toBeCloseTo(1 / 150, 12);
    expect(four({ b: 0.5 }).w_lim).toBeCloseTo(0.5 / 150, 12);
    expect(two({ L: 2, B: 0.5 }).w_lim).toBeCloseTo(2 / 150, 12);
    expect(bolts({ b_b: 0.5 }).w_lim).toBeCloseTo(0.5 / 150, 12);
  });

  it('stays within the second opinions', () => {
    const within = ({ second }: Check, values: Readonly<Record<string, number>>) => {
      expect(values.w_Ed!).toBeGreaterThan(values[second.low!]!);
      expect(values.w_Ed!).toBeLessThan(values[second.high!]!);
    };
    for (const ratio of [1, 1.7, 4])
      for (const h of [0, 1]) {
        for (const g of [0.6, 30, 1e5]) within(panelDeflectionFourSides, four({ a: ratio, h, EI_edge: g * D, p: 1e4 }));
        within(panelDeflectionTwoSides, two({ L: ratio, h }));
        within(panelDeflectionTwoSides, two({ B: ratio, h, nu: 0.15 }));
        within(panelDeflectionBolts, bolts({ b_b: ratio, i_x: 0.03, i_y: 0.03 }));
        within(panelDeflectionBolts, bolts({ b_b: ratio, n_x: 6, n_y: 9, i_x: 0.03, i_y: 0.03 }));
      }
    expect((two({}).w_low! * D) / p).toBeCloseTo(1 / 384, 9);
    expect((two({ nu: 0.5 - 1e-9 }).w_high! * (E * t ** 3)) / 9 / p).toBeCloseTo(5 / 192, 6);
    expect((bolts({ a_b: 2, i_x: 0.5 }).w_high! * D) / p).toBeCloseTo(1.5 * (5 / 384) * (81 + 1), 6);
    expect((bolts({ a_b: 2 }).w_low! * D) / p).toBeCloseTo(0.00126, 9);
    expect((four({ a: 2 }).w_high! * D) / p).toBeCloseTo(5 / 380, 4);
  });

  it('applies to the supports of the direction, with nothing lost', () => {
    const model = modelWith();
    const [up, down] = [situationOf(model, 'service', 'up'), situationOf(model, 'service', 'down')];
    expect(panelDeflectionFourSides.applies(model, 'A1', up)).toBe(true);
    expect(panelDeflectionFourSides.applies(model, 'A1', down)).not.toBe(true);
    expect(panelDeflectionBolts.applies(model, 'A1', down)).toBe(true);
    expect(panelDeflectionBolts.applies(model, 'A1', up)).not.toBe(true);
    const onTwo = modelWith(design({ support: 'cross tubes' }));
    expect(panelDeflectionTwoSides.applies(onTwo, 'A1', up)).toBe(true);
    expect(panelDeflectionTwoSides.applies(onTwo, 'A1', down)).not.toBe(true);
    for (const check of [panelDeflectionFourSides, panelDeflectionBolts])
      expect(
        check.applies(model, 'A1', situationOf(model, 'lost bolt row', check === panelDeflectionBolts ? 'down' : 'up')),
      ).toMatch(/part lost/);
  });

  it('reads the load factor of the situation and the limit of the basis', () => {
    const model = modelWith();
    const up = situationOf(model, 'service', 'up');
    expect(readOf(panelDeflectionFourSides, 'gamma_L', model, 'A1', up)).toBe(up.loadFactor);
    expect(up.loadFactor).toBe(1.35);
    expect(readOf(panelDeflectionFourSides, 'k_w', model, 'A1', up)).toBe(150);
  });
});
