import { describe, expect, it } from 'vitest';
import { panelDeflectionFourSides } from '../../core/checks/panel-deflection-four-sides.ts';
import { design, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

// So little pressure that deflections are small ones.
const [p, t, E, nu] = [100, 0.01, 210e9, 0.3];
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

  it('takes the membrane effect beyond half the thickness: w/t of ASTM E1300, app. X1, edges free to slip (1.69 at Q = 56.9 ν-corrected, within 2 %), and more than the 1.424 of straight edges (S. Levy, NACA Report 737, from memory)', () => {
    const Q = (56.9 * E * t ** 4) / 1;
    const { w_Ed, w_hinged, w_slides } = of({ p_ser: Q });
    expect(w_Ed! / w_slides!).toBeCloseTo(1, 5);
    expect(Math.abs(w_Ed! / (1.6886 * t) - 1)).toBeLessThan(0.02);
    expect(w_Ed!).toBeGreaterThan(1.424 * t);
    expect(w_hinged! / t).toBeCloseTo(56.9 * 0.0444, 1);
    // The small deflection is reached while w is far below half the thickness.
    expect(of({ p_ser: Q / 100 }).w_Ed! / of({ p_ser: Q / 100 }).w_hinged!).toBeCloseTo(1, 2);
  });

  it('stays with small deflections beyond 1 : 5, where no published curve reaches', () => {
    const { w_Ed, w_hinged } = of({ b: 5.2, p_ser: 2e4 });
    expect(w_hinged!).toBeGreaterThan(t);
    expect(w_Ed! / w_hinged!).toBeCloseTo(1, 4);
  });

  it('held edges keep to small deflections (no published curve of held edges that slide), which hinged ones exceed even so', () => {
    const Q = 60 * E * t ** 4;
    const { w_Ed, w_held, w_slides } = of({ h: 1, p_ser: Q });
    expect(w_Ed! / w_held!).toBeCloseTo(1, 4);
    expect((w_held! * D) / Q).toBeCloseTo(0.0012653, 6);
    expect(w_slides!).toBeGreaterThan(w_held!);
  });

  it('adds the sinking of the tubes to the stretched panel as to small deflections', () => {
    const Q = 40 * E * t ** 4;
    const sinking = of({ EI_edge: D, p_ser: Q }).w_Ed! - of({ p_ser: Q }).w_Ed!;
    expect((sinking * D) / Q).toBeCloseTo(0.008589 - 0.0040624, 4);
  });

  it('grows with the pressure and has a part of the shorter span as limit', () => {
    expect(of({ p_ser: p / 1.35 }).w_Ed! / of({}).w_Ed!).toBeCloseTo(1 / 1.35, 4);
    expect(of({ p_ser: 2e4 }).w_Ed!).toBeGreaterThan(of({ p_ser: 1e4 }).w_Ed!);
    expect(of({ p_ser: 0 }).w_Ed).toBe(0);
    expect(of({ p_ser: 0 }).w_low).toBe(0);
    expect(of({ a: 2 }).w_lim).toBeCloseTo(1 / 150, 12);
    expect(of({ b: 0.5, k_w: 200 }).w_lim).toBeCloseTo(0.5 / 200, 12);
  });

  it('stays within the second opinion over shapes, loads, materials, edges and tubes', () => {
    for (const ratio of [1, 2, 4.7, 7])
      for (const Q of [0.1, 5, 30, 150, 900])
        for (const poisson of [0, 0.45])
          for (const h of [0, 1])
            for (const g of [0.6, 50]) {
              const stiffness = (E * t ** 3) / (12 * (1 - poisson ** 2));
              const given = { a: ratio, nu: poisson, h, EI_edge: g * stiffness, p_ser: Q * E * t ** 4 };
              const { w_Ed, w_low, w_high } = of(given);
              expect(w_Ed!, JSON.stringify(given)).toBeGreaterThan(w_low!);
              expect(w_Ed!, JSON.stringify(given)).toBeLessThan(w_high!);
            }
  });

  it('bounds: first term of the series 16/(4 π⁶) = 0.00416 in a square (T&WK art. 28), 5/384 in a long plate, both 2 % up', () => {
    expect((of({}).w_high! * D) / p).toBeCloseTo(1.02 * 0.0041606, 6);
    expect((of({ b: 2 }).w_high! * D) / p).toBeCloseTo(1.02 * 0.010651, 5);
    expect((of({ a: 5 }).w_high! * D) / p).toBeCloseTo((1.02 * 5) / 384, 6);
    expect((of({ EI_edge: D }).w_high! * D) / p).toBeCloseTo((1.02 * 0.0041606 * 0.008589) / 0.0040624, 4);
  });

  it('bounds: small square 0.00406 (T&WK Table 8) or 0.00126 held (Table 35); membrane w = 0.802 a ∛(q a / E h) of a square 2a (T&WK art. 101)', () => {
    expect((of({ p_ser: 0.01, b: 3 }).w_low! * D) / 0.01).toBeCloseTo(0.00406, 6);
    expect((of({ p_ser: 0.01, h: 1 }).w_low! * D) / 0.01).toBeCloseTo(0.00126, 6);
    // 1 m square, so a = 0.5 m: a sheet so thin that bending carries nothing.
    const sheet = of({ t: 1e-4, p_ser: 1e6 });
    expect(sheet.w_low! / (0.802 * 0.5 * Math.cbrt((1e6 * 0.5) / (E * 1e-4)))).toBeCloseTo(1, 2);
    expect(sheet.w_low! / of({ t: 1e-4, p_ser: 1e6, a: 2 }).w_low!).toBeCloseTo(1, 9);
    // Between the two their stiffnesses add.
    const { k_plate, k_sheet, w_low } = of({ p_ser: 3e4 });
    expect(w_low!).toBeCloseTo(3e4 / (k_plate! + k_sheet!), 12);
    // Twice the side bends 16 times as far.
    expect(of({ a: 2, b: 2 }).k_plate! / of({}).k_plate!).toBeCloseTo(1 / 16, 12);
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
