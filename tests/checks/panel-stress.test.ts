import { expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { panelStress } from '../../core/checks/panel-stress.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel } from './model-of.ts';
import { solvedAlike } from './solved-alike.ts';

const field = { sigma_n: 100e6, alpha_n: 100, t_n: 0.01, t: 0.01, p: 10e3, a: 1, b: 1, f_y: 355e6 };
const partial = (change: Record<string, number> = {}) =>
  valuesGiven(panelStress, 'partial factors', { ...field, gamma_M0: 1, ...change });

it('takes the solver’s stress, thinner by corrosion as bending: (10/8)² of it', () => {
  expect(partial().sigma_Ed).toBe(100e6);
  expect(partial({ t: 0.008 }).sigma_Ed).toBeCloseTo(156.25e6, 3);
});

it('adds 1/(1 - 1/α_cr) where α_cr is below 10, nothing beyond (EN 1993-1-1, 5.2.1(3) and 5.2.2(5), from memory)', () => {
  expect(partial({ alpha_n: 5 }).k_2).toBeCloseTo(1.25, 12);
  expect(partial({ alpha_n: 10 }).k_2).toBe(1);
  // thinner by a fifth, the factor halves: 15 becomes 7.68
  expect(partial({ alpha_n: 15, t: 0.008 }).k_2).toBeCloseTo(7.68 / 6.68, 12);
});

it('sets it against the yield strength over γ_M0, or over 1.67', () => {
  expect(partial({ gamma_M0: 1.1 }).sigma_Rd).toBeCloseTo(355e6 / 1.1, 3);
  expect(valuesGiven(panelStress, 'allowable stress', { ...field, Omega_b: 1.67 }).sigma_Rd).toBeCloseTo(355e6 / 1.67, 3);
}); // prettier-ignore

it('bounds the stress by collapse with held edges: 48 m_p/a² of a square with m_p = f_y t²/4, and 2/√3 (Johansen)', () => {
  // the plate of the bound collapses at p_c; yielding no later, its stress is at least f_y p/p_c
  const { sigma_low } = partial();
  const collapse = ((2 / Math.sqrt(3)) * 48 * ((355e6 * 0.01 ** 2) / 4)) / 1 ** 2;
  expect(sigma_low! / ((355e6 * 10e3) / collapse)).toBeCloseTo(1, 6);
});

it('does not apply where forces are by hand, nor with a bolt row or a panel lost; cannot be judged beyond buckling', () => {
  const byHand = checkRows(panelStress, demoModel()).rows;
  expect(byHand.every(({ verdict }) => verdict === 'not applicable')).toBe(true);

  const document = demoDocument();
  const forces = solvedAlike(modelOf(document));
  const { rows } = checkRows(panelStress, modelOf(document, forces));
  const made = rows.filter(({ place, demand }) => place === 'A1' && demand !== null);
  const solved = Object.keys(forces.situations).filter((id) => !/^swing|^lost-(bolt-row|panel)/.test(id));
  expect(made.map(({ situation }) => situation)).toEqual(solved);
  expect(made.every(({ demand }) => demand! >= 50e6)).toBe(true);

  const gone = solvedAlike(modelOf(document), (one) => ({ ...one, buckling: { factor: 0.8, within: 100, part: 'A1' } }));
  const [row] = checkRows(panelStress, modelOf(document, gone)).rows;
  expect([row!.verdict, row!.reason]).toEqual(['cannot be judged', expect.stringMatching(/buckles/)]);
}); // prettier-ignore
