import { expect, it } from 'vitest';
import { eyeFoot } from '../../core/checks/eye-foot.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads, situationOf } from './model-of.ts';

const foot = { t_e: 0.02, l_e: 0.1, h_e: 0.08, F_z: 0, F_l: 0, F_q: 0 };
const at = (change: Record<string, number>) =>
  valuesGiven(eyeFoot, 'partial factors', { ...foot, f_y: 355e6, gamma_M0: 1, ...change });

it('adds pull over area and both bendings over their moduli b h²/6 (beam tables): 100 × 20 mm', () => {
  expect(at({ F_z: 2e5 }).sigma! / 1e6).toBeCloseTo(100, 9);
  expect(at({ F_l: 1e4 }).sigma! / 1e6).toBeCloseTo((1e4 * 80) / ((20 * 100 ** 2) / 6), 9);
  expect(at({ F_q: 1e4 }).sigma! / 1e6).toBeCloseTo((1e4 * 80) / ((100 * 20 ** 2) / 6), 9);
});

it('takes 1.5 of the mean shear stress (rectangle, beam tables), by von Mises', () => {
  const { tau, sigma, sigma_v } = at({ F_l: 1e4, F_q: 3e4 });
  expect(tau! / 1e6).toBeCloseTo(30, 9);
  expect(sigma_v).toBeCloseTo(Math.sqrt(sigma! ** 2 + 3 * tau! ** 2), 3);
});

it('lies between plastic moduli b h²/4 with mean shear, and the largest shear stress (Tresca), which is up to 2/√3 above (worked by hand)', () => {
  expect(at({ F_z: 2e5 }).sigma_low! / 1e6).toBeCloseTo(100, 9);
  expect(at({ F_l: 1e4 }).sigma_p! / 1e6).toBeCloseTo((1e4 * 80) / ((20 * 100 ** 2) / 4), 9);
  expect(at({ F_q: 1e4 }).sigma_p! / 1e6).toBeCloseTo((1e4 * 80) / ((100 * 20 ** 2) / 4), 9);
  expect(at({ F_l: 1e4, F_q: 3e4, h_e: 0 }).sigma_low! / 1e6).toBeCloseTo(Math.sqrt(3) * 20, 9);
  expect(at({ F_l: 1e4, F_q: 3e4, h_e: 0 }).sigma_high! / 1e6).toBeCloseTo(60, 9);
  expect(at({ F_l: 1e4, F_z: 1.6e5, h_e: 0 }).sigma_high! / 1e6).toBeCloseTo(Math.hypot(80, 15), 9);
  for (const F_z of [0, 1e5])
    for (const F_l of [0, 1e4, 1e5])
      for (const F_q of [0, 3e4])
        for (const h_e of [0.02, 0.08]) {
          const { sigma_v, sigma_low, sigma_high } = at({ F_z, F_l, F_q, h_e });
          expect([sigma_low! <= sigma_v! * (1 + 1e-12), sigma_v! <= sigma_high! * (1 + 1e-12)]).toEqual([true, true]);
          expect(sigma_high! * Math.sqrt(3)).toBeLessThanOrEqual(2 * sigma_v! * (1 + 1e-12));
        }
});

it('allows f_y/γ_M0, or F_y/1.67', () => {
  expect(at({ gamma_M0: 1.1 }).sigma_Rd! / 1e6).toBeCloseTo(322.73, 2);
  expect(valuesGiven(eyeFoot, 'allowable stress', { f_y: 355e6, Omega_b: 1.67 }).sigma_Rd! / 1e6).toBeCloseTo(
    212.57,
    2,
  );
});

it('parts the pull by the lean of the leg and the tube it stands on: along a cross tube y is in the plane of the eye', () => {
  const model = demoModel();
  const down = situationOf(model, 'service-down');
  const { tension, x, y, angle } = down.legs.get('S1')!;
  expect(reads(eyeFoot, 'F_z', model, 'S1', down)).toBeCloseTo(tension * Math.cos(angle), 6);
  // Statics of a leg: the upright part is half of the force, the part in plan by the slope 1.3 m to 4 m.
  expect(reads(eyeFoot, 'F_z', model, 'S1', down)).toBeCloseTo(81e3 / 2, 0);
  expect(Math.hypot(x, y)).toBeCloseTo((81e3 / 2) * (1.3 / 4), 0);
  // On a main tube, which runs along x:
  expect(reads(eyeFoot, 'F_l', model, 'S1', down)).toBeCloseTo(Math.abs(x), 6);
  expect(reads(eyeFoot, 'F_q', model, 'S1', down)).toBeCloseTo(Math.abs(y), 6);
  // Moved on to cross tube 2, which runs along y:
  const moved = demoModel({
    grid: {
      suspension: {
        attachments: [
          { id: 'S1', x: '1.1 m', y: '0.5 m' },
          { id: 'S2', x: '1.1 m', y: '2.1 m' },
        ],
      },
    },
  });
  const pull = situationOf(moved, 'service-down');
  expect(reads(eyeFoot, 'F_l', moved, 'S1', pull)).toBeCloseTo(Math.abs(pull.legs.get('S1')!.y), 6);
  expect(reads(eyeFoot, 'F_q', moved, 'S1', pull)).toBeCloseTo(Math.abs(pull.legs.get('S1')!.x), 6);
  expect(missingFrom(eyeFoot, 'F_z', model, 'S1', { ...down, legs: new Map() })).toMatch(/pull at eye S1/);
});

it('takes half a millimetre off the foot all round', () => {
  expect(reads(eyeFoot, 'l_e', demoModel(), 'S1')).toBeCloseTo(0.179, 12);
  expect(reads(eyeFoot, 'h_e', demoModel(), 'S1')).toBe(0.09);
});
