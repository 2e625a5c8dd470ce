import { describe, expect, it } from 'vitest';
import { panelBendingTwoSides } from '../../core/checks/panel-bending-two-sides.ts';
import { design, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const [p, t] = [1e4, 0.01];
const of = (change: Record<string, number>) =>
  valuesGiven(panelBendingTwoSides, 'partial factors', {
    p,
    t,
    E: 210e9,
    nu: 0.3,
    f_y: 355e6,
    h: 0,
    L: 1,
    B: 1,
    gamma_M0: 1,
    ...change,
  });

describe('panel in bending on two sides', () => {
  it.each([
    [0.5, 0.12781],
    [1, 0.13109],
    [2, 0.1328],
  ])('hinged, width %d spans: M = %d q L² at the middle of the free edge (T&WK art. 48; values by Ritz)', (B, M) => {
    expect((of({ B }).sigma_Ed! * t ** 2) / p / 6).toBeCloseTo(M, 3);
  });

  it('narrow, it is a beam: 0.125 q L² (beam theory); held, it stays near q L²/12', () => {
    expect((of({ B: 0.05 }).sigma_Ed! * t ** 2) / p / 6).toBeCloseTo(0.125, 3);
    const held = (of({ h: 1 }).sigma_Ed! * t ** 2) / p / 6;
    expect(held).toBeGreaterThan((1 / 12) * Math.sqrt(1 - 0.3 + 0.09) * 0.95);
    expect(held).toBeLessThan(0.125);
  });

  it('yields at f_y over its factor', () => {
    expect(of({ gamma_M0: 1.1 }).sigma_Rd! / 1e6).toBeCloseTo(355 / 1.1, 6);
    expect(
      valuesGiven(panelBendingTwoSides, 'allowable stress', { f_y: 250e6, Omega_b: 1.67 }).sigma_Rd! / 1e6,
    ).toBeCloseTo(149.7, 1);
  });

  it('stays within statics (second opinion)', () => {
    for (const B of [0.2, 1, 4])
      for (const nu of [0.15, 0.3, 0.45])
        for (const h of [0, 1]) {
          const { sigma_Ed, sigma_low, sigma_high } = of({ B, nu, h });
          expect(sigma_Ed!).toBeGreaterThan(sigma_low!);
          expect(sigma_Ed!).toBeLessThan(sigma_high!);
        }
    expect((of({}).sigma_low! * t ** 2) / p).toBeCloseTo(6 * 0.125 * (Math.sqrt(3) / 2), 9);
    expect((of({ h: 1 }).sigma_low! * t ** 2) / p).toBeCloseTo(6 * 0.0625 * (Math.sqrt(3) / 2), 9);
    expect((of({ nu: 0.25 }).sigma_high! * t ** 2) / p).toBeCloseTo(1, 9);
    // Half the span, a quarter of the moment.
    expect((of({ L: 0.5 }).sigma_low! * t ** 2) / p).toBeCloseTo((6 * 0.125 * (Math.sqrt(3) / 2)) / 4, 9);
    expect((of({ L: 0.5, nu: 0.25 }).sigma_high! * t ** 2) / p).toBeCloseTo(1 / 4, 9);
    const { of: judged, low, high } = panelBendingTwoSides.second;
    expect([judged, low, high]).toEqual(['sigma_Ed', 'sigma_low', 'sigma_high']);
    expect([panelBendingTwoSides.demand, panelBendingTwoSides.capacity]).toEqual(['sigma_Ed', 'sigma_Rd']);
  });

  it('spans between the tubes that the design relies on', () => {
    for (const [support, span, width] of [
      ['main tubes', 'b', 'a'],
      ['cross tubes', 'a', 'b'],
    ] as const) {
      const model = modelWith(design({ support }));
      const up = situationOf(model, 'service', 'up');
      const { pressed } = model.fields.get('A1')!;
      expect(panelBendingTwoSides.applies(model, 'A1', up)).toBe(true);
      expect(readOf(panelBendingTwoSides, 'L', model, 'A1', up)).toBe(pressed[span]);
      expect(readOf(panelBendingTwoSides, 'B', model, 'A1', up)).toBe(pressed[width]);
      expect(panelBendingTwoSides.applies(model, 'A1', situationOf(model, 'service', 'down'))).toMatch(/bolts/);
    }
    const model = modelWith();
    expect(panelBendingTwoSides.applies(model, 'A1', situationOf(model, 'service', 'up'))).toMatch(/four sides/);
  });
});
