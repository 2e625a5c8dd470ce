import { expect, it } from 'vitest';
import { boltSleeve } from '../../core/checks/bolt-sleeve.ts';
import { fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

const tightening = { torque: '60 N m', k: { low: 0.12, high: 0.2, source: 'tests on these bolts (invented)' } };
const model = modelWith(fixing({ tightening }));
const down = situationOf(model, 'service', 'down');
/** A sleeve 18 x 24 mm in S235 round an M12 bolt. */
const m12 = { T_t: 60, k_low: 0.1, d: 0.012, d_c: 0.018, D_c: 0.024, f_yw: 235e6, E_w: 210e9 };
/** Length at which that sleeve, of i = 7.5 mm, has the slenderness λ: λ π i √(E/f_y), λ1 = 93.9 ε (EN 1993-1-1, 6.3.1.3). */
const longFor = (lambda: number): number => lambda * 0.0075 * Math.PI * Math.sqrt(210e9 / 235e6);

it('buckles as curve c of EN 1993-1-1:2005, Figure 6.4 (tabulated in ESDEP and the ECCS textbooks, from memory): 1.0000, 0.8973, 0.5399, 0.1962', () => {
  for (const [lambda, chi] of [
    [0.2, 1],
    [0.4, 0.8973],
    [1, 0.5399],
    [2, 0.1962],
  ] as const) {
    // prettier-ignore
    const v = valuesGiven(boltSleeve, 'partial factors', { ...m12, l_c: longFor(lambda), gamma_M1: 1, gamma_R: 1 });
    expect(v.chi, String(lambda)).toBeCloseTo(chi, 4);
    // π/4 (24² - 18²) = 197.92 mm², 46.511 kN at 235 MPa.
    expect(v.F_c_Rd! / 1e3).toBeCloseTo(chi * 46.511, 1);
    expectBetween(v, 'F_c_Rd');
  }
  expect(valuesGiven(boltSleeve, 'partial factors', { ...m12, l_c: 0.01, gamma_M1: 1.1, gamma_R: 1.1 }).F_c_Rd! / 1e3).toBeCloseTo(42.283, 2); // prettier-ignore
});

it('is squeezed by T / (k d) at the smallest k: 60 N m on M12 at 0.1 is 50 kN', () => {
  expect(valuesGiven(boltSleeve, 'partial factors', { ...m12, l_c: 0.1, gamma_M1: 1, gamma_R: 1 }).F_hi).toBeCloseTo(50e3, 6); // prettier-ignore
});

it('under AISC 360, E3 has F_cr = 0.658^(F_y/F_e) F_y up to 4.71 √(E/F_y), 0.877 F_e beyond', () => {
  for (const [lambda, chi] of [
    [0.5, 0.9007],
    [1, 0.658],
    [1.499, 0.3905],
    [2, 0.21925],
  ] as const) {
    // prettier-ignore
    const v = valuesGiven(boltSleeve, 'allowable stress', { ...m12, l_c: longFor(lambda), Omega_c: 1.67, gamma_R: 1.67 });
    expect(v.chi, String(lambda)).toBeCloseTo(chi, 3);
    expect(v.F_c_Rd! / 1e3).toBeCloseTo((chi * 46.511) / 1.67, 1);
    expectBetween(v, 'F_c_Rd');
  }
});

it('applies to through-bolts with a stated torque; the sleeve is as long as the tube is clear', () => {
  expect(boltSleeve.applies(model, 'A1', down)).toBe(true);
  expect(boltSleeve.applies(modelWith(), 'A1', down)).toMatch(/no tightening torque/);
  expect(boltSleeve.applies(modelWith(fixing({ into: 'one-sided', tightening })), 'A1', down)).toMatch(/no sleeve/);
  const section = [...model.tubes.values()][0]!.section;
  expect(readOf(boltSleeve, 'l_c', model, 'A1', down)).toBeCloseTo(section.height - 2 * section.nominalWall, 9);
  expect(readOf(boltSleeve, 'E_w', model, 'A1', down)).toBe(210e9);
  const stainless = modelWith(fixing({ class: 'A4-70', tightening }));
  expect(readOf(boltSleeve, 'T_t', stainless, 'A1', down)).toMatch(/procedure tests/);
});

it('changes from squash to curve c past a slenderness of 0.2, and between the formulas of E3 at 1.5', () => {
  const chi = (safety: 'partial factors' | 'allowable stress', lambda: number) =>
    valuesGiven(boltSleeve, safety, { ...m12, l_c: longFor(lambda), gamma_M1: 1, Omega_c: 1.67, gamma_R: 1 }).chi;
  // Φ = 0.5 (1 + 0.49 · 0.01 + 0.21²) = 0.5245; by hand.
  expect(chi('partial factors', 0.21)).toBeCloseTo(0.9949, 4);
  expect(chi('partial factors', 0.199)).toBe(1);
  expect(chi('allowable stress', 1.49)).toBeCloseTo(0.658 ** (1.49 * 1.49), 5);
  expect(chi('allowable stress', 1.52)).toBeCloseTo(0.877 / 1.52 ** 2, 5);
});

it('is bounded by nine tenths of Rankine and Gordon, and by the lesser of squash and Euler load, over the factor', () => {
  const at = (lambda: number) => valuesGiven(boltSleeve, 'partial factors', { ...m12, l_c: longFor(lambda), gamma_M1: 1.1, gamma_R: 1.1 }); // prettier-ignore
  // Squash load 46.511 kN; Euler load that over λ².
  expect(at(1).R_low! / 1e3).toBeCloseTo((0.9 * 46.511) / 2 / 1.1, 2);
  expect(at(1).N_E! / 1e3).toBeCloseTo(46.511, 2);
  expect(at(2).R_high! / 1e3).toBeCloseTo(46.511 / 4 / 1.1, 2);
  expect(at(0.5).R_high! / 1e3).toBeCloseTo(46.511 / 1.1, 2);
  expect([boltSleeve.demand, boltSleeve.capacity]).toEqual(['F_hi', 'F_c_Rd']);
  expect([boltSleeve.second.of, boltSleeve.second.low, boltSleeve.second.high]).toEqual(['F_c_Rd', 'R_low', 'R_high']);
});

it('reads the factor of either kind of basis', () => {
  expect(readOf(boltSleeve, 'gamma_R', model, 'A1', down)).toBe(model.basis.factors['gamma_M1']!.value);
});

it('is as large as the document says, else a quarter of the bolt thick; a bore that the bolt does not pass fails', () => {
  const stated = (sleeve: object) => modelWith(fixing({ tightening, sleeve }));
  const sizes = (of: typeof model) => [readOf(boltSleeve, 'd_c', of, 'A1', down), readOf(boltSleeve, 'D_c', of, 'A1', down)]; // prettier-ignore
  expect(sizes(model)).toEqual([0.013, 0.019]);
  const large = stated({ bore: '14 mm', outer: '26 mm' });
  expect(sizes(large)).toEqual([0.014, expect.closeTo(0.026, 12)]);
  expect(boltSleeve.rule!(large, 'A1', down)).toBeUndefined();
  expect(boltSleeve.rule!(stated({ bore: '11 mm', outer: '20 mm' }), 'A1', down)).toMatch(/does not pass/);
  expect(() => stated({ bore: '20 mm', outer: '20 mm' })).toThrow(/no wall/);
  // Weighed: π/4 ((26² - 14²) - (19² - 13²)) mm² between the walls of each tube.
  const weight = (of: typeof model) => of.mass.parts.filter(({ kind }) => kind === 'fasteners').reduce((sum, { mass }) => sum + mass, 0); // prettier-ignore
  const clear = model.geometry.panels
    .filter(({ design: { fixing: of } }) => of.kind === 'bolted')
    .flatMap(({ bolts }) => bolts)
    .reduce((sum, { tube }) => sum + model.tubes.get(tube)!.section.height - 2 * model.tubes.get(tube)!.section.nominalWall, 0); // prettier-ignore
  expect(weight(large) - weight(model)).toBeCloseTo((7850 * clear * Math.PI * (480 - 192)) / 4 / 1e6, 6);
});
