import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { eyeBearing } from '../../core/checks/eye-bearing.ts';
import { eyeCheekWeld } from '../../core/checks/eye-cheek-weld.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads } from './model-of.ts';

const given = { F: 300e3, t_e: 0.02, t_c: 0.01, D_c: 0.1, a_w: 0.004, f_u: 470e6 };

it('hands 75 of 300 kN to each cheek of 10 mm on an eye of 20 mm, over half a ring of 100 mm: 477.5 N/mm against 964.8 N/mm (EN 1993-1-8, 4.5.3.3: 470/(√3 · 0.9 · 1.25) · 4 mm = 964.8; worked by hand)', () => {
  const got = valuesGiven(eyeCheekWeld, 'partial factors', { ...given, beta_w: 0.9, gamma_M2: 1.25 });
  expect(got.F_c! / 1e3).toBeCloseTo(75, 9);
  expect(got.f_c! / 1e3).toBeCloseTo(75e3 / (50 * Math.PI), 6);
  expect(got.f_c! / 1e3).toBeCloseTo(477.5, 1);
  expect(got.f_Rd! / 1e3).toBeCloseTo(964.8, 1);
});

it('AISC: 0.6 · 470 · 4 / 2 = 564 N/mm (J2.4, from memory)', () =>
  expect(valuesGiven(eyeCheekWeld, 'allowable stress', { ...given, Omega_J: 2 }).f_Rd! / 1e3).toBeCloseTo(564, 6));

const cheek = { thickness: '8 mm', diameter: '70 mm', weldThroat: '4 mm' };
const withCheek = { grid: { suspension: { eye: { cheek } } } };

it('bears on eye and cheeks together, and weighs them', () => {
  const [plain, thick] = [demoModel(), demoModel(withCheek)];
  const grown = reads(eyeBearing, 't_e', thick, 'S1') as number;
  expect(grown - (reads(eyeBearing, 't_e', plain, 'S1') as number)).toBeCloseTo(0.016, 12);
  const { holeDiameter } = thick.document.grid.suspension.eye;
  const each = (Math.PI / 4) * (0.07 ** 2 - holeDiameter.si ** 2) * 0.008 + 0.004 ** 2 * Math.PI * 0.07;
  const eyes = thick.document.grid.suspension.attachments.length;
  expect(thick.mass.total - plain.mass.total).toBeCloseTo(eyes * 2 * each * 7850 * (1 + thick.document.mass.tolerance), 1); // prettier-ignore
  expect(checkRows(eyeCheekWeld, plain).rows.every(({ verdict }) => verdict === 'not applicable')).toBe(true);
  expect(checkRows(eyeCheekWeld, thick).rows.some(({ utilisation }) => utilisation !== null)).toBe(true);
});

it.each(['20 mm', '400 mm'])('refuses a cheek plate of %s that fits no eye', (diameter) => {
  expect(() => demoModel({ grid: { suspension: { eye: { cheek: { ...cheek, diameter } } } } })).toThrow(/does not fit/);
});
