import { describe, expect, it } from 'vitest';
import { panelShear } from '../../core/checks/panel-shear.ts';
import { design, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const [p, t] = [1e4, 0.01];
const of = (change: Record<string, number>) =>
  valuesGiven(panelShear, 'partial factors', {
    p,
    t,
    E: 210e9,
    nu: 0.3,
    f_y: 355e6,
    a: 1,
    b: 1,
    L: 1,
    four: 1,
    gamma_M0: 1,
    ...change,
  });

describe('panel in shear at its support', () => {
  it('hinged square: 0.420 q a at the middle of an edge (T&WK, Table 8, from memory); held edges carry a little more', () => {
    expect(of({}).V_hinged! / p).toBeCloseTo(0.42, 3);
    expect(of({}).V_Ed!).toBe(Math.max(of({}).V_hinged!, of({}).V_held!));
    expect(of({}).V_held! / of({}).V_hinged!).toBeGreaterThan(1);
    expect(of({}).tau_Ed).toBeCloseTo(of({}).V_Ed! / t, 6);
  });

  it('two sides: half the load of the span (statics)', () => {
    expect(of({ four: 0, L: 0.7 }).V_Ed! / p).toBeCloseTo(0.35, 9);
  });

  it('yields in shear at f_y / √3 (EN 1993-1-1, 6.2.6), 0.6 f_y / 1.67 allowable (AISC 360 G2, from memory)', () => {
    expect(of({}).tau_Rd! / 1e6).toBeCloseTo(204.96, 2);
    expect(of({ gamma_M0: 1.1 }).tau_Rd! / 1e6).toBeCloseTo(204.96 / 1.1, 2);
    expect(valuesGiven(panelShear, 'allowable stress', { f_y: 250e6, Omega_v: 1.67 }).tau_Rd! / 1e6).toBeCloseTo(
      89.82,
      2,
    );
  });

  it('stays within equilibrium (second opinion)', () => {
    for (const [a, b] of [
      [1, 1],
      [2, 1],
      [1, 5],
    ] as const)
      for (const four of [0, 1]) {
        const { tau_Ed, tau_low, tau_high } = of({ a, b, L: b, four });
        expect(tau_Ed!).toBeGreaterThanOrEqual(tau_low! * (1 - 1e-9));
        expect(tau_Ed!).toBeLessThan(tau_high!);
        expect(tau_high!).toBeCloseTo((0.6 * p * (four ? 1 : b)) / t, 3);
        expect(tau_low!).toBeCloseTo(four ? (p * a * b) / (2 * (a + b)) / t : (p * b) / 2 / t, 3);
      }
  });

  it('leaves a panel on its bolts to pull-through, and reads how many sides hold it', () => {
    const model = modelWith();
    const up = situationOf(model, 'service', 'up');
    expect(panelShear.applies(model, 'A1', situationOf(model, 'service', 'down'))).toMatch(/pull-through/);
    expect(panelShear.applies(model, 'A1', up)).toBe(true);
    expect(readOf(panelShear, 'four', model, 'A1', up)).toBe(1);
    expect(readOf(panelShear, 'four', modelWith(design({ support: 'main tubes' })), 'A1', up)).toBe(0);
  });
});
