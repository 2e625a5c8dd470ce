import { expect, it } from 'vitest';
import { boltAnchorage } from '../../core/checks/bolt-anchorage.ts';
import { boltWallPull } from '../../core/checks/bolt-wall-pull.ts';
import { valuesGiven } from './bolt-values.ts';

it.each([
  [5, 27.9],
  [8, 71.4],
])('carries pi f_y t² on a wall of %i mm in S355: %d kN (Johansen, fan of yield lines, derived by hand)', (t, kN) => {
  const given = { t_w: t / 1000, f_yw: 355e6 };
  const { F_w_Rd, F_joint } = valuesGiven(boltWallPull, 'partial factors', { ...given, gamma_M0: 1 });
  expect(F_w_Rd! / 1e3).toBeCloseTo(kN, 1);
  // EN 1993-1-8 Table 7.11 tends to 4 f_y t² for a brace of no width: the fan is weaker.
  expect(F_joint! / F_w_Rd!).toBeCloseTo(4 / Math.PI, 9);
  expect(valuesGiven(boltWallPull, 'partial factors', { ...given, gamma_M0: 1.1 }).F_w_Rd! / 1e3).toBeCloseTo(
    kN / 1.1,
    1,
  );
  expect(valuesGiven(boltWallPull, 'allowable stress', { ...given, Omega_b: 1.67 }).F_w_Rd! / 1e3).toBeCloseTo(
    kN / 1.67,
    1,
  );
});

it('judges the same force in the bolt as the end of the bolt does', () => {
  expect(boltWallPull.demand).toBe('F_t');
  expect(boltAnchorage.demand).toBe('F_t');
});
