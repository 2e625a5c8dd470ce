import { describe, expect, it } from 'vitest';
import { panelDeflectionBolts } from '../../core/checks/panel-deflection-bolts.ts';
import { modelWith, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const [p, t, E, nu] = [1000, 0.01, 210e9, 0.3];
const D = (E * t ** 3) / (12 * (1 - nu ** 2));
const of = (change: Record<string, number>) =>
  valuesGiven(panelDeflectionBolts, 'partial factors', {
    p_ser: p,
    t,
    E,
    nu,
    k_w: 150,
    a_b: 1,
    b_b: 1,
    n_x: 2,
    n_y: 2,
    i_x: 0,
    i_y: 0,
    d_w: 0.03,
    ...change,
  });

describe('deflection of the panel on its bolts', () => {
  it('four corners: 0.0255 p a⁴/D at the centre of a square (T&WK art. 52; value by Ritz); four bolts inset a tenth: 0.008595', () => {
    expect((of({}).w_Ed! * D) / p).toBeCloseTo(0.025507, 4);
    expect((of({ a_b: 0.8, b_b: 0.8, i_x: 0.1, i_y: 0.1 }).w_Ed! * D) / p).toBeCloseTo(0.008595, 4);
  });

  it('comes near the hinged plate (0.00406, T&WK Table 8) with many bolts', () => {
    const many = (of({ n_x: 9, n_y: 9 }).w_Ed! * D) / p;
    expect(many).toBeGreaterThan(0.00406);
    expect(many).toBeLessThan(1.1 * 0.00406);
  });

  it('grows with the pressure and has a part of the shorter distance of rows as limit', () => {
    expect(of({ p_ser: p / 1.35 }).w_Ed! / of({}).w_Ed!).toBeCloseTo(1 / 1.35, 9);
    expect(of({ p_ser: 0 }).w_Ed).toBe(0);
    expect(of({ b_b: 0.5 }).w_lim).toBeCloseTo(0.5 / 150, 12);
    expect(of({ a_b: 0.4 }).w_lim).toBeCloseTo(0.4 / 150, 12);
  });

  it('stays within the second opinion', () => {
    for (const b_b of [1, 1.7, 4])
      for (const [n_x, n_y] of [
        [2, 2],
        [6, 2],
        [6, 9],
      ] as const) {
        const { w_Ed, w_low, w_high } = of({ b_b, n_x, n_y, i_x: 0.03, i_y: 0.03 });
        expect(w_Ed!).toBeGreaterThan(w_low!);
        expect(w_Ed!).toBeLessThan(w_high!);
      }
    expect((of({ a_b: 2, i_x: 0.5 }).w_high! * D) / p).toBeCloseTo(1.5 * (5 / 384) * (81 + 1), 6);
    expect((of({ a_b: 2 }).w_low! * D) / p).toBeCloseTo(0.00126, 9);
  });

  it('applies to a panel that is pulled off, with nothing lost', () => {
    const model = modelWith();
    expect(panelDeflectionBolts.applies(model, 'A1', situationOf(model, 'service', 'down'))).toBe(true);
    expect(panelDeflectionBolts.applies(model, 'A1', situationOf(model, 'service', 'up'))).toMatch(/bears on lines/);
    expect(panelDeflectionBolts.applies(model, 'A1', situationOf(model, 'lost bolt row', 'down'))).toMatch(/part lost/);
  });
});
