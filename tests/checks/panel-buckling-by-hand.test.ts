import { expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { panelBucklingByHand } from '../../core/checks/panel-buckling-by-hand.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { seeded } from '../geometry/seeded.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { solvedAlike } from './solved-alike.ts';

const tube = (k: 0 | 1) => ({ [`M_${k}`]: 5e3, [`N_${k}`]: 0, [`T_${k}`]: 0, [`A_${k}`]: 45e-4, [`I_${k}`]: 1500e-8, [`J_${k}`]: 2400e-8, [`e_${k}`]: 0.08 }); // prettier-ignore
const plate = { ...tube(0), ...tube(1), a: 0.8, b: 0.8, four: 1, t: 0.008, E: 210e9, nu: 0.3, f_y: 355e6 };
const partial = (change: Record<string, number> = {}) =>
  valuesGiven(panelBucklingByHand, 'partial factors', { ...plate, gamma_M1: 1, ...change }) as Record<string, number>;
const sigmaE = (190e9 * (0.008 / 0.8) ** 2) / 1e6; // EN 1993-1-5, A.1: 190,000 (t/b)² N/mm²

it('a square field buckles at 4 times 190,000 (t/b)² one way, 2 times both ways, 9.34 times in shear (Timoshenko & Gere; EN 1993-1-5, annex A, from memory)', () => {
  const { sigma_xcr, sigma_ycr, tau_cr } = partial();
  for (const [value, k] of [[sigma_xcr!, 4], [sigma_ycr!, 4], [tau_cr!, 9.34]] as const)
    expect(Math.abs(value / 1e6 / sigmaE - k)).toBeLessThan(0.01 * k);
  const both = partial();
  expect((both.alpha_cr! * both.sigma_x!) / 1e6 / sigmaE).toBeCloseTo(2, 1);
  const sheared = partial({ M_0: 0, M_1: 0, T_0: 2e3 });
  expect(sheared.tau! * sheared.alpha_cr!).toBeCloseTo(sheared.tau_cr!, 0);
  expect(sheared.tau! / 1e6).toBeCloseTo((2 * 80 * 2e6) / 2400e4, 9);
}); // prettier-ignore

it('never promises more than the lowest of all half waves, and half of it at least', () => {
  const next = seeded(7);
  for (let draw = 0; draw < 200; draw++) {
    const [a, b] = [0.4 + next(), 0.4 + next()];
    const { sigma_x, sigma_y, alpha_cr } = partial({ a, b, M_0: 8e3 * next(), M_1: 8e3 * next() });
    const C = (Math.PI ** 2 * 210e9 * 0.008 ** 2) / (12 * 0.91);
    let exact = Infinity;
    for (let m = 1; m < 8; m++)
      for (let n = 1; n < 8; n++) {
        const [p, q] = [(m / a) ** 2, (n / b) ** 2];
        exact = Math.min(exact, (C * (p + q) ** 2) / (sigma_x! * p + sigma_y! * q));
      }
    expect(alpha_cr! / exact).toBeLessThan(1 + 1e-9);
    expect(alpha_cr! / exact).toBeGreaterThan(0.5);
  }
});

it('stresses a flange as a beam of two parts about their common axis does, and less than the tube alone strains it', () => {
  const { sigma_x, sigma_xs, A_p0 } = partial();
  const flange = (0.008 * 0.8) / 2;
  expect(A_p0).toBe(flange);
  const axis = (flange * 0.08) / (45e-4 + flange);
  const inertia = 1500e-8 + 45e-4 * axis ** 2 + flange * (0.08 - axis) ** 2;
  expect(sigma_x! / ((5e3 * (0.08 - axis)) / inertia)).toBeCloseTo(1, 12);
  expect(sigma_x).toBeLessThan(sigma_xs!);
  // a thin enough panel is strained as the tube alone is
  const thin = partial({ t: 1e-6 });
  expect(thin.sigma_x! / thin.sigma_xs!).toBeCloseTo(1, 2);
  expect(partial({ M_0: 0, N_0: 50e3 }).sigma_x).toBeCloseTo(50e3 / (45e-4 + flange), 6);
});

it('held on two sides it is a strip over the longer span', () => {
  const { sigma_xcr, sigma_ycr, tau_cr, sigma_2 } = partial({ four: 0, b: 1.6 });
  expect([sigma_xcr, sigma_ycr, tau_cr]).toEqual([sigma_2, sigma_2, sigma_2]);
  expect(sigma_2! / 1e6).toBeCloseTo(sigmaE / 4, 0);
});

it('allows 14.4 ksi at slenderness 100 of 50 ksi (AISC Manual, Table 4-22, from memory)', () => {
  const ksi = 6.894757e6;
  const { sigma_m, alpha_cr } = partial({ f_y: 50 * ksi });
  const E = (210e9 * ((Math.PI ** 2 * 29000 * ksi) / 100 ** 2)) / (alpha_cr! * sigma_m!);
  const { sigma_Rd } = valuesGiven(panelBucklingByHand, 'allowable stress', { ...plate, f_y: 50 * ksi, E, Omega_b: 1.67 }); // prettier-ignore
  expect(Math.abs(sigma_Rd! / ksi - 14.4)).toBeLessThan(0.05);
});

it('judges a thick panel by default, and says of a thin one that its bound is no verdict', () => {
  const rows = (thickness: string) =>
    checkRows(panelBucklingByHand, demoModel({ designs: { deck: { thickness } } })).rows.filter(({ place, situation }) => place === 'A1' && situation?.startsWith('service')); // prettier-ignore
  expect(rows('16 mm').every(({ verdict }) => verdict === 'passes')).toBe(true);
  const thin = rows('3 mm').filter(({ verdict }) => verdict !== 'passes');
  expect(thin.length).toBeGreaterThan(0);
  for (const { verdict, reason } of thin) {
    expect(verdict).toBe('cannot be judged');
    expect(reason).toMatch(/that is a bound, no verdict\. Solve the plate/);
  }
});

it('takes the moment that presses the panel’s side: the top where tubes sag, the bottom where they hog', () => {
  for (const [side, id] of [['topside', 'service-down'], ['topside', 'service-up'], ['underside', 'service-down'], ['underside', 'service-up']] as const) {
    const model = demoModel({ designs: { deck: { side } } });
    const situation = situationOf(model, id);
    const most = (of: 'sagging' | 'hogging') => Math.max(...model.bays.get('A1')!.main.map((tube) => situation.tubes.get(tube)![of]));
    expect(reads(panelBucklingByHand, 'M_0', model, 'A1', situation)).toBe(most(side === 'topside' ? 'sagging' : 'hogging'));
  }
  // hung in its middle and pressed down, the plate hogs
  const model = demoModel();
  const { moment, sagging, hogging } = situationOf(model, 'service-down').tubes.get('A')!;
  expect(hogging).toBe(moment);
  expect(sagging).toBeLessThan(hogging);
}); // prettier-ignore

it("a panel whose fixings give is nowhere pressed more than the one beam presses it somewhere (N'' = κ² (N − N_f), by finite differences)", () => {
  const next = seeded(11);
  for (let draw = 0; draw < 50; draw++) {
    const n = 200;
    const [k, wave, shift, lift] = [1 + 30 * next(), 1 + Math.floor(4 * next()), 6 * next(), next() - 0.5];
    const of = (i: number): number => lift + Math.sin((wave * Math.PI * i) / n + shift);
    // (2 + g) N_i − N_{i−1} − N_{i+1} = g N_f, ends free: the rows of a tridiagonal matrix, forward and back
    const g = (k / n) ** 2;
    const c: number[] = [0];
    const d: number[] = [0];
    for (let i = 1; i < n; i++) {
      const pivot = 2 + g - c[i - 1]!;
      c[i] = 1 / pivot;
      d[i] = (g * of(i) + d[i - 1]!) / pivot;
    }
    let [N, most, bound] = [0, 0, 0];
    for (let i = n - 1; i > 0; i--) {
      N = d[i]! + c[i]! * N;
      most = Math.max(most, N);
      bound = Math.max(bound, of(i));
    }
    expect(most).toBeLessThanOrEqual(bound + 1e-12);
  }
});

it('gives way to the whole plate’s own factor, but where a bolt row or a panel is lost', () => {
  const document = demoDocument();
  const { rows } = checkRows(panelBucklingByHand, modelOf(document, solvedAlike(modelOf(document))));
  expect(rows.filter(({ situation, verdict }) => situation && verdict !== 'not applicable').every(({ situation }) => /^lost-(bolt-row|panel)/.test(situation!))).toBe(true); // prettier-ignore
});
