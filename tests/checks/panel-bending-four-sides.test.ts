import { describe, expect, it } from 'vitest';
import { panelBendingFourSides } from '../../core/checks/panel-bending-four-sides.ts';
import { outOfRangeWith } from './at.ts';
import { design, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const [p, t, E, nu] = [1e4, 0.01, 210e9, 0.3];
const D = (E * t ** 3) / (12 * (1 - nu ** 2));
const stiff = 1e12;
const plate = { p, t, E, nu, f_y: 355e6, h: 0, EI_edge: stiff, gamma_M0: 1 };
const of = (change: Record<string, number>) =>
  valuesGiven(panelBendingFourSides, 'partial factors', { ...plate, a: 1, b: 1, ...change });

describe('panel in bending on four sides', () => {
  it('hinged square: the corner governs, held down by R = 0.065 q a² = 2 M_xy (T&WK, Table 8)', () => {
    expect((of({}).sigma_Ed! * t ** 2) / p).toBeCloseTo((6 * Math.sqrt(3) * 0.065) / 2, 3);
  });

  it.each([
    [2, 0.1017, 0.0464],
    [3, 0.1189, 0.0406],
  ])('hinged, b/a = %i: the centre governs, M = %d and %d q a² (T&WK, Table 8), as von Mises stress', (b, Ma, Mb) => {
    const sigma = 6 * Math.sqrt(Ma ** 2 - Ma * Mb + Mb ** 2);
    expect((of({ b }).sigma_Ed! * t ** 2) / p).toBeCloseTo(sigma, 3);
    expect((of({ a: b, b: 1 }).sigma_Ed! * t ** 2) / p).toBeCloseTo(sigma, 3);
  });

  it('held: 0.0513 q a² at the middle of an edge (T&WK, Table 35), with nu of it along the edge', () => {
    expect((of({ h: 1 }).sigma_Ed! * t ** 2) / p).toBeCloseTo(6 * 0.0513 * Math.sqrt(1 - 0.3 + 0.09), 3);
    expect((of({ h: 1, b: 2 }).sigma_Ed! * t ** 2) / p).toBeCloseTo(6 * 0.0829 * Math.sqrt(1 - 0.3 + 0.09), 3);
  });

  it.each([
    [10, 0.04955],
    [1, 0.06139],
    [100, 0.04806],
  ])(
    'adds what sinking tubes add: g = %d gives M = %d q a² in a square (derived by Ritz, no published table)',
    (g, M) => {
      const values = of({ EI_edge: g * D });
      expect(values.g).toBeCloseTo(g, 6);
      expect(values.r_M).toBeCloseTo(M / 0.0478864, 2);
      expect(values.sigma_Ed! / of({}).sigma_Ed!).toBeCloseTo(M / 0.0478864, 2);
      expect(of({ EI_edge: g * D, h: 1 }).sigma_Ed! - of({ h: 1 }).sigma_Ed!).toBeCloseTo(
        values.sigma_Ed! - of({}).sigma_Ed!,
        -2,
      );
    },
  );

  it('cannot be judged on tubes too limber to count as lines', () => {
    const given = { ...plate, a: 1, b: 1 };
    expect(outOfRangeWith(panelBendingFourSides, 'partial factors', given)).toBeUndefined();
    const limber = (g: number) =>
      outOfRangeWith(panelBendingFourSides, 'partial factors', { ...given, EI_edge: g * D });
    // From g = 0.5 on, where the table of plates on edge beams begins (derived by Ritz, no published table).
    expect(limber(0.501)).toBeUndefined();
    expect(limber(0.499)).toMatch(/too limber/);
  });

  it('yields at 355 MPa, or at 250 / 1.67 = 149.7 MPa allowable (AISC 360, from memory)', () => {
    expect(of({}).sigma_Rd).toBe(355e6);
    expect(of({ gamma_M0: 1.1 }).sigma_Rd! / 1e6).toBeCloseTo(355 / 1.1, 6);
    expect(
      valuesGiven(panelBendingFourSides, 'allowable stress', { f_y: 250e6, Omega_b: 1.67 }).sigma_Rd! / 1e6,
    ).toBeCloseTo(149.7, 1);
  });

  it('bounds first yield by collapse: 213.0 kPa for 1 m square, 10 mm, S355, hinged (yield lines, derived by hand); twice that held', () => {
    const { p_y, sigma_low, sigma_high } = of({});
    expect(p_y! / 1e3).toBeCloseTo(213, 1);
    expect(sigma_low! / 1e6).toBeCloseTo((355 * 10) / 213 / (2 / Math.sqrt(3)), 2);
    expect(of({ h: 1 }).sigma_low!).toBeCloseTo(sigma_low! / 2, 3);
    expect((sigma_high! * t ** 2) / p).toBeCloseTo(0.75, 3);
    expect((of({ EI_edge: D }).sigma_high! * t ** 2) / p).toBeCloseTo((0.75 * 0.06139) / 0.0478864, 2);
    // The shorter span bears, whichever side it is: 6 q s²/8 t² (beam theory).
    expect((of({ a: 0.5 }).sigma_high! * t ** 2) / p).toBeCloseTo(0.75 * 0.25, 4);
    expect((of({ b: 0.5 }).sigma_high! * t ** 2) / p).toBeCloseTo(0.75 * 0.25, 4);
  });

  it('stays within the second opinion over shapes, thicknesses, materials, edges and tubes', () => {
    for (const ratio of [1, 1.4, 2.5, 6])
      for (const poisson of [0.15, 0.3, 0.45])
        for (const h of [0, 1])
          for (const g of [0.6, 20, 1e4]) {
            const { sigma_Ed, sigma_low, sigma_high } = of({
              a: ratio,
              nu: poisson,
              h,
              EI_edge: g * ((E * t ** 3) / (12 * (1 - poisson ** 2))),
            });
            expect(sigma_Ed!).toBeGreaterThan(sigma_low!);
            expect(sigma_Ed!).toBeLessThan(sigma_high!);
          }
  });

  it('grows with pressure, which counts as a size, and is zero without', () => {
    expect(of({ p: 2e4 }).sigma_Ed! / of({}).sigma_Ed!).toBeCloseTo(2, 9);
    expect(of({ p: 0 }).sigma_Ed).toBe(0);
  });

  it('applies where lines hold it: a bolted underside panel pressed on by a force up, not one that hangs on its bolts', () => {
    const model = modelWith();
    expect(panelBendingFourSides.applies(model, 'A1', situationOf(model, 'service', 'up'))).toBe(true);
    expect(panelBendingFourSides.applies(model, 'A1', situationOf(model, 'service', 'down'))).toMatch(/bolts/);
    const welded = modelWith((d) => Object.assign(d.panels, { A1: 'welded' }));
    expect(panelBendingFourSides.applies(welded, 'A1', situationOf(welded, 'service', 'up'))).toBe(true);
    expect(
      panelBendingFourSides.applies(
        modelWith(design({ support: 'main tubes' })),
        'A1',
        situationOf(model, 'service', 'up'),
      ),
    ).toMatch(/main tubes/);
  });

  it('reads spans of the direction, and half of the most limber tube beside it', () => {
    const model = modelWith();
    const up = situationOf(model, 'service', 'up');
    const { pressed } = model.fields.get('A2')!;
    expect(readOf(panelBendingFourSides, 'a', model, 'A2', up)).toBe(pressed.a);
    expect(readOf(panelBendingFourSides, 'b', model, 'A2', up)).toBe(pressed.b);
    // 720 mm less the flats of two halves of SHS 120 × 6.3: 720 - 120 + 2 · 9.45.
    expect(pressed.a).toBeCloseTo(0.72 - 0.12 + 2 * 0.00945, 6);
    // SHS 120 × 120 × 6.3: 603 cm⁴ (EN 10210-2); 0.2 mm is lost on each face.
    const EI = readOf(panelBendingFourSides, 'EI_edge', model, 'A2', up) as number;
    expect(EI).toBeLessThan((210e9 * 603e-8) / 2);
    expect(EI).toBeGreaterThan(0.9 * ((210e9 * 603e-8) / 2));
    expect(readOf(panelBendingFourSides, 'h', model, 'A2', up)).toBe(0);
    expect(readOf(panelBendingFourSides, 'h', modelWith(design({ edges: 'held' })), 'A2', up)).toBe(1);
    expect(readOf(panelBendingFourSides, 'p', model, 'A2', up)).toBeCloseTo(Math.abs(up.pressures.get('A2')!), 9);
  });
});
