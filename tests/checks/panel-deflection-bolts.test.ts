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

  it('stays within the second opinion over shapes, bolts, overhangs and materials', () => {
    for (const b_b of [1, 1.7, 4])
      for (const [n_x, n_y] of [
        [2, 2],
        [2, 6],
        [6, 2],
        [3, 3],
        [6, 9],
      ] as const)
        for (const i_x of [0, 0.04, 0.15, 0.5])
          for (const nu of [0, 0.45]) {
            const given = { b_b, n_x, n_y, i_x, i_y: 0.7 * i_x, nu };
            const { w_Ed, w_low, w_high } = of(given);
            expect(w_Ed!, JSON.stringify(given)).toBeGreaterThan(w_low!);
            expect(w_Ed!, JSON.stringify(given)).toBeLessThan(w_high!);
          }
  });

  it('bounds an ordinary panel, eight bolts a row, from 0.7 to 1.4 times', () => {
    for (const b_b of [1, 1.5]) {
      const { w_Ed, w_low, w_high } = of({ b_b, n_x: 8, n_y: 8, i_x: 0.03, i_y: 0.03 });
      expect(w_low! / w_Ed!).toBeGreaterThan(0.7);
      expect(w_high! / w_Ed!).toBeLessThan(1.4);
    }
  });

  const flexibility = (w: number | undefined): number => (w! * D) / p;

  it('below: 0.00406 for the hinged square (T&WK, Table 8), half the overhang off each end; a strip 5/384 or 1/384 over a gap', () => {
    const many = { n_x: 9, n_y: 9 };
    expect(flexibility(of(many).w_low)).toBeCloseTo(0.98 * 0.00406, 9);
    expect(flexibility(of({ ...many, b_b: 1.1, i_x: 0.15, i_y: 0.3 }).w_low)).toBeCloseTo(0.98 * 0.00406 * 0.8 ** 4, 9);
    expect(flexibility(of({ ...many, a_b: 1.1, i_x: 0.3, i_y: 0.15 }).w_low)).toBeCloseTo(0.98 * 0.00406 * 0.8 ** 4, 9);
    // Long: (5/384) / (1 + 1/16)², the middle of a hinged plate 1 : 4 being 0.01282 (T&WK, Table 8).
    expect(flexibility(of({ ...many, b_b: 4 }).w_lines)).toBeCloseTo(5 / 384 / (1 + 1 / 16) ** 2, 9);
    expect(flexibility(of({ ...many, b_b: 4 }).w_lines)).toBeLessThan(0.01282);
    expect(flexibility(of({ n_x: 2, n_y: 9 }).w_low)).toBeCloseTo((0.98 * 5) / 384, 9);
    expect(flexibility(of({ n_x: 9, n_y: 2, b_b: 1.2, i_y: 0.1 }).w_low)).toBeCloseTo((0.98 * 5 * 1.1 ** 4) / 384, 9);
    expect(flexibility(of({ n_x: 2, n_y: 9, a_b: 1.2, i_x: 0.1 }).w_low)).toBeCloseTo((0.98 * 5 * 1.1 ** 4) / 384, 9);
    expect(flexibility(of({ n_x: 3, n_y: 3, b_b: 4 }).w_gap)).toBeCloseTo(2 ** 4 / 384, 9);
    expect(flexibility(of({ n_x: 3, n_y: 3, a_b: 4 }).w_low)).toBeCloseTo((0.98 * 2 ** 4) / 384, 9);
    const wide = of({ a_b: 2, i_x: 3, i_y: 1.2 });
    expect([wide.a_r, wide.b_r]).toEqual([0.02, 0.01]);
  });

  it('above: the first term of the series, 0.00416 in a square (T&WK, art. 28), or 5/384 both; rows as beams E t³/12', () => {
    const beam = (w: number | undefined): number => (w! * E * t ** 3) / p;
    const many = of({ n_x: 9, n_y: 9 });
    expect(flexibility(many.w_both)).toBeCloseTo(0.0041606, 6);
    expect(flexibility(of({ b_b: 5 }).w_both)).toBeCloseTo(5 / 384, 9);
    expect(flexibility(of({ a_b: 2 }).w_both)).toBeCloseTo(0.010651, 6);
    // Half a panel of 2 m on a strip of half a metre: q 1 m × (1 m)⁴ · 5/384 over E t³/12 · 0.5 m.
    expect(beam(of({ b_b: 2 }).w_row_x)).toBeCloseTo((1.2 * (5 / 384) * 1) / (0.5 / 12), 9);
    expect(beam(of({ a_b: 2 }).w_row_y)).toBeCloseTo((1.2 * (5 / 384) * 1) / (0.5 / 12), 9);
    // With a pitch above the panel's width, half the panel is the strip: 5/384 q s⁴ over E t³/12.
    expect(beam(of({ a_b: 2, i_y: 0.1 }).w_row_x)).toBeCloseTo(1.2 * 12 * (5 / 384) * 16, 9);
    expect(beam(of({ b_b: 2, i_x: 0.1 }).w_row_y)).toBeCloseTo(1.2 * 12 * (5 / 384) * 16, 9);
    expect(beam(of({ i_x: 0.1, i_y: 0.1, n_x: 3 }).w_row_x)).toBeCloseTo((1.2 * 5 * 1.2) / 32 / 8, 9);
    expect(beam(of({ i_x: 0.1, i_y: 0.1, n_y: 3 }).w_row_y)).toBeCloseTo((1.2 * 5 * 1.2) / 32 / 8, 9);
    // Overhung beam: tip q i⁴/8 EI, and slope (q i²/2) L/2 EI times i.
    expect(beam(of({ i_x: 0.2, a_b: 2 }).w_over)).toBeCloseTo(1.2 * 12 * (0.2 ** 4 / 8 + 0.2 ** 3 / 2), 9);
    expect(beam(of({ i_y: 0.2, b_b: 2 }).w_over)).toBeCloseTo(1.2 * 12 * (0.2 ** 4 / 8 + 0.2 ** 3 / 2), 9);
    expect(flexibility(many.w_high)).toBeCloseTo(1.02 * (0.0041606 + 2 * flexibility(many.w_row_x)), 6);
    // One way alone, free edges that curl: 5/384 over 1 - ν and the rows that bear it.
    const along = of({ n_x: 2, n_y: 9, i_x: 0.05 });
    expect(along.w_high!).toBeCloseTo(1.02 * ((5 / 384 / 0.7 / D) * p + along.w_row_y!) + along.w_over!, 12);
    const across = of({ n_x: 9, n_y: 2, b_b: 1.2 });
    expect(across.w_high!).toBeCloseTo(1.02 * (((5 / 384) * 1.2 ** 4 * p) / 0.7 / D + across.w_row_x!), 12);
  });

  it('bends 16 times as far at twice every length but the thickness (similarity of thin plates)', () => {
    const [long, along, across] = [
      { b_b: 4, n_x: 9, n_y: 9 },
      { n_x: 2, n_y: 9, i_x: 0.05, i_y: 0 },
      { b_b: 1.2, n_x: 9, n_y: 2, i_x: 0, i_y: 0.05 },
    ];
    for (const given of [long, along, across]) {
      const { b_b = 1, i_x = 0, i_y = 0 } = given as Record<string, number>;
      const small = of(given);
      const large = of({ ...given, a_b: 2, b_b: 2 * b_b, i_x: 2 * i_x, i_y: 2 * i_y });
      for (const bound of ['w_lines', 'w_gap', 'w_low', 'w_both', 'w_row_x', 'w_row_y', 'w_over', 'w_high'])
        expect(large[bound], bound).toBeCloseTo(16 * small[bound]!, 12);
    }
  });

  it('applies to a panel that is pulled off, with nothing lost', () => {
    const model = modelWith();
    expect(panelDeflectionBolts.applies(model, 'A1', situationOf(model, 'service', 'down'))).toBe(true);
    expect(panelDeflectionBolts.applies(model, 'A1', situationOf(model, 'service', 'up'))).toMatch(/bears on lines/);
    expect(panelDeflectionBolts.applies(model, 'A1', situationOf(model, 'lost bolt row', 'down'))).toMatch(/part lost/);
  });
});
