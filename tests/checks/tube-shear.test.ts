import { expect, it } from 'vitest';
import { tubeShear } from '../../core/checks/tube-shear.ts';
import { outOfRangeWith } from './at.ts';
import { valuesGiven } from './bolt-values.ts';
import { tubeBending } from '../../core/checks/tube-bending.ts';
import { demoModel, reads } from './model-of.ts';

const inch = 0.0254;
const ksi = 6.894757e6;
const kip = 4448.222;
const A500 = { f_y: 46 * ksi, E: 29000 * ksi, Omega_v: 1.67, V: 1 };
const S355 = { f_y: 355e6, f_235: 235e6, gamma_M0: 1, V: 1, round: 0 };

it('gives 191.96 kN for a SHS 100×100×5 in S355, A_v 936.6 mm² (EN 1993-1-1, 6.2.6, from memory)', () => {
  const at = (gamma_M0: number) =>
    valuesGiven(tubeShear, 'partial factors', { ...S355, H: 0.1, t: 0.005, A_v: 936.6e-6, gamma_M0 });
  expect(at(1).V_Rd! / 1e3).toBeCloseTo(191.97, 1);
  expect(at(1.1).V_Rd! / 1e3).toBeCloseTo(191.97 / 1.1, 1);
  expect(at(1).V_low!).toBeLessThan(at(1).V_Rd!);
  expect(at(1).V_high!).toBeGreaterThan(at(1).V_Rd!);
});

it('gives 57.2 kips for a HSS 6×4×3/8, h/t 14.2 (AISC Design Examples, G.4, from memory)', () => {
  const t = 0.349 * inch;
  const { V_Rd, V_low, V_high } = valuesGiven(tubeShear, 'allowable stress', {
    ...A500,
    round: 0,
    H: 17.2 * t,
    t,
    A: 6.18 * inch ** 2,
  });
  expect(V_Rd! / kip).toBeCloseTo(57.2, 1);
  expect([V_low! < V_Rd!, V_Rd! < V_high!]).toEqual([true, true]);
});

it('gives 130 kips for a HSS 16.000×0.375, A 17.2 in², F_y 42 ksi (AISC Design Examples, G.5, from memory)', () => {
  const round = { ...A500, f_y: 42 * ksi, round: 1, H: 16 * inch, t: 0.349 * inch, A: 17.2 * inch ** 2 };
  const { F_cr, V_Rd, V_low, V_high } = valuesGiven(tubeShear, 'allowable stress', round);
  expect(F_cr! / ksi).toBeCloseTo(25.2, 6);
  expect(V_Rd! / kip).toBeCloseTo(130, 0);
  expect([V_low! < V_Rd!, V_Rd! < V_high!]).toEqual([true, true]);
});

it('lets a slender round wall buckle: 0.78 E/(D/t)^1.5 (G5-2b, worked by hand: D/t 100 gives 22.62 ksi)', () => {
  const { F_cr } = valuesGiven(tubeShear, 'allowable stress', { ...A500, round: 1, H: 0.5, t: 0.005, A: 1 });
  expect(F_cr! / ksi).toBeCloseTo(22.62, 2);
});

it('does not judge webs that could buckle: 72 ε (EN 1993-1-1, 6.2.6(6)) and 1.10 √(5 E/F_y) (AISC 360 G2.2), from memory', () => {
  const en = (web: number) =>
    outOfRangeWith(tubeShear, 'partial factors', { ...S355, H: (web + 3) * 0.004, t: 0.004, A_v: 1e-3 });
  expect([en(72 * 0.8136 - 0.1), en(72 * 0.8137 + 0.1)]).toEqual([undefined, expect.stringMatching(/buckle in shear/)]);
  const asd = (web: number) =>
    outOfRangeWith(tubeShear, 'allowable stress', { ...A500, round: 0, H: (web + 3) * 0.004, t: 0.004, A: 1e-3 });
  const limit = 1.1 * Math.sqrt((5 * 29000) / 46);
  expect([asd(limit - 0.1), asd(limit + 0.1)]).toEqual([undefined, expect.stringMatching(/buckle in shear/)]);
  expect(
    outOfRangeWith(tubeShear, 'partial factors', { ...S355, round: 1, H: 0.5, t: 0.004, A_v: 1e-3 }),
  ).toBeUndefined();
});

it('is bounded by its webs: 2 H t τ above, 1.5 (H − 4 t) t τ below', () => {
  const { V_low, V_high } = valuesGiven(tubeShear, 'partial factors', {
    ...S355,
    f_y: 300e6 * Math.sqrt(3),
    H: 0.1,
    t: 0.005,
    A_v: 1,
  });
  expect([V_high, V_low]).toEqual([expect.closeTo(300e3, 3), expect.closeTo(180e3, 3)]);
});

it('takes every number from where bending takes it, the area of SHS 150×150×8 besides', () => {
  for (const symbol of ['V', 'round', 'H', 't', 'f_y', 'A_v', 'f_235', 'E'])
    expect(tubeShear.inputs[symbol]!.read, symbol).toBe(tubeBending.inputs[symbol]!.read);
  const kept = demoModel({ protection: { lossPerFace: { tubeOutside: '0 mm', tubeInside: '0 mm' } } });
  expect(reads(tubeShear, 'A', kept, 'A') * 1e4).toBeCloseTo(44.8, 1);
});
