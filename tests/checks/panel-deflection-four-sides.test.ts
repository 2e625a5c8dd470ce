import { describe, expect, it } from 'vitest';
import { panelDeflectionFourSides } from '../../core/checks/panel-deflection-four-sides.ts';
import { design, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const [p, t, E, nu] = [1000, 0.01, 210e9, 0.3];
const D = (E * t ** 3) / (12 * (1 - nu ** 2));
const of = (change: Record<string, number>) =>
  valuesGiven(panelDeflectionFourSides, 'partial factors', {
    p_ser: p,
    t,
    E,
    nu,
    k_w: 150,
    a: 1,
    b: 1,
    h: 0,
    EI_edge: 1e12,
    ...change,
  });

describe('deflection of the panel on four sides', () => {
  it.each([
    [1, 0.00406],
    [1.5, 0.00772],
    [2, 0.01013],
  ])('hinged, b/a = %d: w D / (p a⁴) = %d (T&WK, 2nd ed., Table 8)', (b, alpha) => {
    expect(Math.abs((of({ b }).w_Ed! * D) / p - alpha)).toBeLessThan(6e-6);
    expect(Math.abs((of({ a: b, b: 1 }).w_Ed! * D) / p - alpha)).toBeLessThan(6e-6);
  });

  it('held: 0.00126 for a square, 0.00254 at b/a = 2 (T&WK, Table 35; within its digits)', () => {
    expect(Math.abs((of({ h: 1 }).w_Ed! * D) / p - 0.00126)).toBeLessThan(1e-5);
    expect(Math.abs((of({ h: 1, b: 2 }).w_Ed! * D) / p - 0.00254)).toBeLessThan(1e-5);
  });

  it('adds the sinking of the tubes: g = 10 gives 0.004621, g = 1 0.008589 (derived by Ritz, no published table)', () => {
    expect((of({ EI_edge: 10 * D }).w_Ed! * D) / p).toBeCloseTo(0.004621, 4);
    expect((of({ EI_edge: D }).w_Ed! * D) / p).toBeCloseTo(0.008589, 4);
    expect(of({ EI_edge: 10 * D }).g).toBeCloseTo(10, 6);
    expect(((of({ EI_edge: D, h: 1 }).w_Ed! - of({ h: 1 }).w_Ed!) * D) / p).toBeCloseTo(0.008589 - 0.0040624, 4);
  });

  it('grows with the pressure and has a part of the shorter span as limit', () => {
    expect(of({ p_ser: p / 1.35 }).w_Ed! / of({}).w_Ed!).toBeCloseTo(1 / 1.35, 9);
    expect(of({ p_ser: 0 }).w_Ed).toBe(0);
    expect(of({ a: 2 }).w_lim).toBeCloseTo(1 / 150, 12);
    expect(of({ b: 0.5, k_w: 200 }).w_lim).toBeCloseTo(0.5 / 200, 12);
  });

  it('stays between the stretched square inside and the strip (second opinion)', () => {
    for (const ratio of [1, 1.7, 4])
      for (const h of [0, 1])
        for (const g of [0.6, 30, 1e5]) {
          const { w_Ed, w_low, w_high } = of({ a: ratio, h, EI_edge: g * D, p_ser: 1e4 });
          expect(w_Ed!).toBeGreaterThan(w_low!);
          expect(w_Ed!).toBeLessThan(w_high!);
        }
    expect((of({ a: 2 }).w_high! * D) / p).toBeCloseTo(5 / 380, 4);
    expect((of({ EI_edge: D }).w_high! * D) / p).toBeCloseTo(((5 / 380) * 0.008589) / 0.0040624, 3);
    expect((of({}).w_low! * D) / p).toBeCloseTo(0.97 * 0.0012653, 5);
  });

  it('applies to a panel pressed on its tubes, with nothing lost', () => {
    const model = modelWith();
    const up = situationOf(model, 'service', 'up');
    expect(panelDeflectionFourSides.applies(model, 'A1', up)).toBe(true);
    expect(panelDeflectionFourSides.applies(model, 'A1', situationOf(model, 'service', 'down'))).toMatch(/bolts/);
    expect(panelDeflectionFourSides.applies(model, 'A1', situationOf(model, 'lost bolt row', 'up'))).toMatch(
      /part lost/,
    );
    expect(panelDeflectionFourSides.applies(modelWith(design({ support: 'main tubes' })), 'A1', up)).toMatch(
      /main tubes/,
    );
  });

  it('reads the pressure with every load factor 1 and the limit of the basis', () => {
    const model = modelWith();
    const up = situationOf(model, 'service', 'up');
    const ser = readOf(panelDeflectionFourSides, 'p_ser', model, 'A1', up);
    expect(ser).toBe(Math.abs(up.servicePressures.get('A1')!));
    expect(ser).toBeLessThan(Math.abs(up.pressures.get('A1')!));
    expect(readOf(panelDeflectionFourSides, 'k_w', model, 'A1', up)).toBe(150);
  });
});
