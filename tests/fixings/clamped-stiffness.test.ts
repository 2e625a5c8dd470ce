import { expect, it } from 'vitest';
import { boltStiffness, clampedStiffness, frustumStiffness } from '../../core/fixings/clamped-stiffness.ts';

const d = 0.016;
const D = 1.5 * d;

it('gives 14.64 Mlbf/in for d = 0.5 in, l = 1.345 in of steel of 30 Mpsi (Shigley, Mechanical Engineering Design; from memory)', () => {
  // Two halves of the grip, washer face 1.5 d; the same closed form gives it whole.
  const k = clampedStiffness([{ l: 1.345, E: 30e6 }], { D: 0.75, d: 0.5 });
  expect(k / 1e6).toBeCloseTo(14.64, 2);
  const closed =
    (0.5774 * Math.PI * 30e6 * 0.5) / (2 * Math.log((5 * (0.5774 * 1.345 + 0.25)) / (0.5774 * 1.345 + 1.25)));
  expect(k / closed).toBeCloseTo(1, 3);
});

it('gives k_m 4.0708e6 and k_b 1.3650e6 N/mm for an M16 with a grip of 26 mm, 10 of it shank, and C = 0.25111 (worked by hand from the same formulas)', () => {
  const k_m = clampedStiffness([{ l: 0.026, E: 207e9 }], { D, d });
  const k_b = boltStiffness({ A_d: (Math.PI / 4) * d ** 2, A_t: 157e-6, l_d: 0.01, l_t: 0.016, E: 207e9 });
  expect(k_m / 1e9).toBeCloseTo(4.0708, 3);
  expect(k_b / 1e9).toBeCloseTo(1.365, 3);
  expect(k_b / (k_b + k_m)).toBeCloseTo(0.2511, 4);
});

it('does not change where a layer is cut, and is ruled by the soft layer', () => {
  const whole = clampedStiffness([{ l: 0.026, E: 207e9 }], { D, d });
  const cut = clampedStiffness([{ l: 0.004, E: 207e9 }, { l: 0.015, E: 207e9 }, { l: 0.007, E: 207e9 }], { D, d }); // prettier-ignore
  expect(cut / whole).toBeCloseTo(1, 9);
  const soft = clampedStiffness([{ l: 0.016, E: 207e9 }, { l: 0.01, E: 1e9 }], { D, d }); // prettier-ignore
  expect(soft).toBeLessThan(frustumStiffness({ l: 0.01, E: 1e9, D, d }));
  expect(clampedStiffness([{ l: 0.01, E: 1e9 }, { l: 0.016, E: 207e9 }], { D, d }) / soft).toBeCloseTo(1, 9); // prettier-ignore
});

it('refuses a washer no wider than the bolt', () => {
  expect(() => clampedStiffness([{ l: 0.01, E: 2e11 }], { D: d, d })).toThrow(/D - d/);
});
