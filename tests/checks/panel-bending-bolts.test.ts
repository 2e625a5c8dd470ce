import { describe, expect, it } from 'vitest';
import { panelBendingBolts } from '../../core/checks/panel-bending-bolts.ts';
import { design, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const [p, t] = [1e4, 0.01];
const of = (change: Record<string, number>) =>
  valuesGiven(panelBendingBolts, 'partial factors', {
    p,
    t,
    E: 210e9,
    nu: 0.3,
    f_y: 355e6,
    a_b: 1,
    b_b: 1,
    n_x: 2,
    n_y: 2,
    i_x: 0,
    i_y: 0,
    d_w: 0.03,
    lost: 0,
    gamma_M0: 1,
    ...change,
  });

describe('panel in bending on its bolts', () => {
  it('four corners of a square: 0.1504 q a² at the middle of an edge, where it is alone (plate on corner points, T&WK art. 52; value by Ritz)', () => {
    // Seen away from the points, where a thin plate's moment grows without end.
    expect((of({ d_w: 0.44 }).sigma_Ed! * t ** 2) / p / 6).toBeCloseTo(0.1504, 3);
    expect((of({}).sigma_Ed! * t ** 2) / p / 6).toBeGreaterThan(0.1504);
  });

  it('four bolts inset a tenth of the side: 0.0863 q a² at the middle of an edge at the least', () => {
    const inset = of({ a_b: 0.8, b_b: 0.8, i_x: 0.1, i_y: 0.1 });
    expect(inset.a_p).toBeCloseTo(1, 12);
    expect(inset.b_p).toBeCloseTo(1, 12);
    expect((inset.sigma_Ed! * t ** 2) / p / 6).toBeGreaterThan(0.085);
    expect((inset.sigma_Ed! * t ** 2) / p / 6).toBeLessThan(0.15);
  });

  it('reads stress outside half a washer and one thickness; many bolts come near a line', () => {
    expect(of({}).r_b).toBeCloseTo(0.025, 12);
    const many = (of({ n_x: 9, n_y: 9 }).sigma_Ed! * t ** 2) / p;
    expect(many).toBeGreaterThan(0.25);
    expect(many).toBeLessThan(0.36);
  });

  it('yields at f_y over its factor', () => {
    expect(of({ gamma_M0: 1.1 }).sigma_Rd! / 1e6).toBeCloseTo(355 / 1.1, 6);
    expect(
      valuesGiven(panelBendingBolts, 'allowable stress', { f_y: 250e6, Omega_b: 1.67 }).sigma_Rd! / 1e6,
    ).toBeCloseTo(149.7, 1);
  });

  it('stays within the second opinion from four corners to many bolts, square to long', () => {
    for (const b_b of [1, 1.5, 3])
      for (const [n_x, n_y] of [
        [2, 2],
        [3, 4],
        [6, 2],
        [6, 9],
      ] as const)
        for (const nu of [0.15, 0.3, 0.45]) {
          const { sigma_Ed, sigma_low, sigma_high } = of({ b_b, n_x, n_y, nu, i_x: 0.03, i_y: 0.03 });
          expect(sigma_Ed!).toBeGreaterThan(sigma_low!);
          expect(sigma_Ed!).toBeLessThan(sigma_high!);
        }
    const { p_y, sigma_low, sigma_high } = of({ i_x: 0.1 });
    expect(p_y! / 1e3).toBeCloseTo(426, 0); // twice the hinged square's 213.0 kPa, yield lines
    expect(sigma_low).toBeCloseTo((p / ((2 / Math.sqrt(3)) * p_y!)) * 355e6, 3);
    expect((sigma_high! * t ** 2) / p).toBeCloseTo(1.125 + 0.03, 9);
    expect((of({ i_x: 0.1, b_b: 2 }).sigma_high! * t ** 2) / p).toBeCloseTo(4 * 1.125 + 0.03, 9);
    expect((of({ i_x: 0.1, n_x: 3, n_y: 3, lost: 1 }).sigma_high! * t ** 2) / p).toBeCloseTo(4.5 + 0.03, 9);
  });

  it('applies when pulled off, and fails by rule when one of two rows is lost', () => {
    const model = modelWith();
    expect(panelBendingBolts.applies(model, 'A1', situationOf(model, 'service', 'down'))).toBe(true);
    expect(panelBendingBolts.applies(model, 'A1', situationOf(model, 'service', 'up'))).toMatch(/four sides/);
    const welded = modelWith((d) => Object.assign(d.panels, { A1: 'welded' }));
    expect(panelBendingBolts.applies(welded, 'A1', situationOf(welded, 'service', 'up'))).not.toBe(true);
    const two = modelWith(design({ support: 'main tubes' }));
    expect(panelBendingBolts.rule!(two, 'A1', situationOf(two, 'lost bolt row', 'down'))).toMatch(/turns/);
    expect(readOf(panelBendingBolts, 'n_y', two, 'A1', situationOf(two, 'service', 'down'))).toBe(2);
  });
});

describe('with a row of bolts lost', () => {
  it('dense bolts on three sides: 0.112 q a² at the middle of the free edge of a square (T&WK art. 48, from memory)', () => {
    const { sigma_lost, sigma_Ed } = of({ n_x: 11, n_y: 11, lost: 1 });
    expect((sigma_lost! * t ** 2) / p / 6).toBeCloseTo(0.112, 3);
    expect(sigma_Ed).toBe(sigma_lost);
    expect(of({ n_x: 6, n_y: 3, lost: 0 }).sigma_lost).toBe(0);
  });

  it('takes the worst row of a long field: the same whichever way it lies', () => {
    const wide = of({ a_b: 2, b_b: 1, n_x: 6, n_y: 4, lost: 1 }).sigma_Ed!;
    expect(of({ a_b: 1, b_b: 2, n_x: 4, n_y: 6, lost: 1 }).sigma_Ed! / wide).toBeCloseTo(1, 3);
  });

  it('reads the loss from the load case', () => {
    const model = modelWith();
    const service = situationOf(model, 'service', 'down');
    expect(readOf(panelBendingBolts, 'lost', model, 'A1', service)).toBe(0);
    expect(readOf(panelBendingBolts, 'lost', model, 'A1', { ...service, loadCase: 'lost bolt row' })).toBe(1);
  });

  it('stays within the second opinion from five bolts left to many, square to long', () => {
    for (const b_b of [1, 1.5, 3])
      for (const [n_x, n_y] of [
        [3, 3],
        [3, 6],
        [6, 9],
      ] as const)
        for (const nu of [0.15, 0.3, 0.45]) {
          const at = { b_b, n_x, n_y, nu, i_x: 0.03, i_y: 0.03 };
          const { sigma_rows, sigma_Ed, sigma_low, sigma_high } = of({ ...at, lost: 1 });
          expect(sigma_rows).toBe(of({ ...at, lost: 0 }).sigma_Ed);
          expect(sigma_Ed!).toBeGreaterThan(1.2 * sigma_rows!);
          expect(sigma_Ed!).toBeGreaterThan(sigma_low!);
          expect(sigma_Ed!).toBeLessThan(sigma_high!);
        }
  });
});
