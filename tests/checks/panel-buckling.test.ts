import { expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { panelBuckling } from '../../core/checks/panel-buckling.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel } from './model-of.ts';
import { solvedAlike } from './solved-alike.ts';

const plate = { a: 0.8, b: 0.8, t: 0.01, t_n: 0.01, E: 210e9, nu: 0.3, f_y: 355e6, own: 1 };
const partial = (change: Record<string, number> = {}) =>
  valuesGiven(panelBuckling, 'partial factors', { ...plate, sigma_n: 35.5e6, alpha_n: 10, gamma_M1: 1, ...change });
const allowable = (change: Record<string, number> = {}) =>
  valuesGiven(panelBuckling, 'allowable stress', { ...plate, sigma_n: 35.5e6, alpha_n: 10, Omega_b: 1.67, ...change });

it('reduces by curve a of EN 1993-1-1, Figure 6.4 and its tables (α = 0.21, from memory: four digits)', () => {
  for (const [slenderness, chi] of [[0.5, 0.9243], [1, 0.6656], [1.5, 0.3724], [2, 0.2229]] as const) {
    // α_ult = 10; α_cr from the slenderness
    const { lambda_p, chi_c } = partial({ alpha_n: 10 / slenderness ** 2 });
    expect(lambda_p).toBeCloseTo(slenderness, 12);
    expect(Math.abs(chi_c! - chi)).toBeLessThan(5.01e-5);
  }
  expect(partial({ alpha_n: 10 / 0.15 ** 2 }).chi_c).toBe(1);
}); // prettier-ignore

it('allows 14.4 ksi at F_y = 50 ksi and slenderness 100 (AISC Manual, Table 4-22, from memory), and meets itself at F_y/F_e = 2.25', () => {
  const ksi = 6.894757e6;
  const F_e = (Math.PI ** 2 * 29000) / 100 ** 2;
  const { sigma_Rd } = allowable({ f_y: 50 * ksi, sigma_n: 5 * ksi, alpha_n: F_e / 5 });
  expect(Math.abs(sigma_Rd! / ksi - 14.4)).toBeLessThan(0.05);
  const at = (n: number) => allowable({ alpha_n: 10 / n }).F_cr! / 355e6;
  expect(at(2.2499) / at(2.2501)).toBeCloseTo(1, 2);
  expect(at(4)).toBeCloseTo(0.877 / 4, 12);
});

it('counts corrosion: stress by the thickness, the factor by its cube', () => {
  const { sigma_m, alpha_cr } = partial({ t: 0.008 });
  expect(sigma_m).toBeCloseTo(35.5e6 * 1.25, 3);
  expect(alpha_cr).toBeCloseTo(10 * 0.512, 12);
});

it('bounds the factor by a hinged square pressed both ways: k = 2 times 190,000 (t/b)² N/mm² (Timoshenko & Gere, from memory)', () => {
  const { sigma_e, alpha_low } = partial();
  expect(sigma_e! / 1e6 / 2 / (10 / 800) ** 2 / 1e3).toBeCloseTo(190, 0);
  // the largest principal stress that a von Mises stress allows is 2/√3 of it (x = 2 y)
  expect(alpha_low).toBeCloseTo(sigma_e! / ((2 / Math.sqrt(3)) * 35.5e6), 9);
  expect(partial({ own: 0 }).alpha_low).toBe(0);
});

it('divides by γ_M1', () => {
  expect(partial({ gamma_M1: 1.1 }).sigma_Rd! / partial().sigma_Rd!).toBeCloseTo(1 / 1.1, 12);
  expect([panelBuckling.demand, panelBuckling.capacity]).toEqual(['sigma_m', 'sigma_Rd']);
});

it('does not apply where the plate is not solved as one structure', () => {
  const { rows } = checkRows(panelBuckling, demoModel());
  expect(rows.map(({ verdict }) => verdict)).toEqual(['A1', 'A3', 'B1', 'B3'].map(() => 'not applicable'));
  expect(rows[0]!.reason).toMatch(/not solved as one structure/);
});

it('judges each case with the whole plate’s factor, and fails below one', () => {
  const document = demoDocument();
  const judged = (factor: number) => {
    const buckling = { factor, within: 100, part: 'A1' };
    const forces = solvedAlike(modelOf(document), (situation) => ({ ...situation, buckling }));
    const { rows } = checkRows(panelBuckling, modelOf(document, forces));
    return rows.filter(({ place, situation }) => place === 'A1' && situation?.startsWith('service'));
  };
  expect(judged(20).map(({ verdict }) => verdict)).toEqual(['passes', 'passes']);
  expect(judged(0.9).map(({ verdict }) => verdict)).toEqual(['fails', 'fails']);
});

it('has no rule for plates that are no steel', () => {
  const document = demoDocument();
  const model = modelOf(document);
  const forces = solvedAlike(model);
  const aluminium = { ...model.catalogue.material('S355 plate'), family: 'aluminium' as const, title: 'EN AW-5083' };
  const panels = new Map([...model.panels].map(([id, panel]) => [id, { ...panel, material: aluminium }]));
  const { rows } = checkRows(panelBuckling, { ...model, panels, solved: forces });
  expect(rows.find(({ verdict }) => verdict === 'cannot be judged')?.reason).toMatch(/EN AW-5083/);
});
