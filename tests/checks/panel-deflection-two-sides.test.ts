import { describe, expect, it } from 'vitest';
import { panelDeflectionTwoSides } from '../../core/checks/panel-deflection-two-sides.ts';
import { design, modelWith, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const [p, t, E, nu] = [1000, 0.01, 210e9, 0.3];
const D = (E * t ** 3) / (12 * (1 - nu ** 2));
const of = (change: Record<string, number>) =>
  valuesGiven(panelDeflectionTwoSides, 'allowable stress', {
    p_ser: p,
    t,
    E,
    nu,
    k_w: 150,
    L: 1,
    B: 1,
    h: 0,
    ...change,
  });

describe('deflection of the panel on two sides', () => {
  it('hinged: 0.01501 at the free edge of a square (T&WK art. 48; value by Ritz); narrow: 5/384 of the beam; held 0.00291', () => {
    expect((of({}).w_Ed! * D) / p).toBeCloseTo(0.01501, 4);
    expect((of({ B: 0.05 }).w_Ed! * E * t ** 3) / 12 / p).toBeCloseTo(5 / 384, 4);
    expect((of({ h: 1 }).w_Ed! * D) / p).toBeCloseTo(0.002909, 4);
  });

  it('grows with the pressure and has a part of the span as limit', () => {
    expect(of({ p_ser: p / 1.35 }).w_Ed! / of({}).w_Ed!).toBeCloseTo(1 / 1.35, 9);
    expect(of({ p_ser: 0 }).w_Ed).toBe(0);
    expect(of({ L: 2, B: 0.5 }).w_lim).toBeCloseTo(2 / 150, 12);
  });

  it('stays between strips (second opinion)', () => {
    for (const B of [0.25, 1, 4])
      for (const poisson of [0.15, 0.3, 0.45])
        for (const h of [0, 1]) {
          const { w_Ed, w_low, w_high } = of({ B, h, nu: poisson });
          expect(w_Ed!).toBeGreaterThan(w_low!);
          expect(w_Ed!).toBeLessThan(w_high!);
        }
    expect((of({}).w_low! * D) / p).toBeCloseTo(1 / 384, 9);
    expect((of({}).w_high! * D) / p).toBeCloseTo(5 / 384 / 0.7, 9);
    // Twice the span bends 16 times as far.
    expect((of({ L: 2 }).w_low! * D) / p).toBeCloseTo(16 / 384, 9);
    expect((of({ L: 2 }).w_high! * D) / p).toBeCloseTo((16 * 5) / 384 / 0.7, 9);
    const { of: judged, low, high } = panelDeflectionTwoSides.second;
    expect([judged, low, high]).toEqual(['w_Ed', 'w_low', 'w_high']);
    expect([panelDeflectionTwoSides.demand, panelDeflectionTwoSides.capacity]).toEqual(['w_Ed', 'w_lim']);
  });

  it('applies to a panel that two sides hold, pressed on, with nothing lost', () => {
    const model = modelWith(design({ support: 'cross tubes' }));
    expect(panelDeflectionTwoSides.applies(model, 'A1', situationOf(model, 'service', 'up'))).toBe(true);
    expect(panelDeflectionTwoSides.applies(model, 'A1', situationOf(model, 'service', 'down'))).toMatch(/bolts/);
    expect(panelDeflectionTwoSides.applies(model, 'A1', situationOf(model, 'lost bolt row', 'up'))).toMatch(
      /part lost/,
    );
    expect(panelDeflectionTwoSides.applies(modelWith(), 'A1', situationOf(model, 'service', 'up'))).toMatch(
      /four sides/,
    );
  });
});
