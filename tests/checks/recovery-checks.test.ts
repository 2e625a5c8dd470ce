import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { recoveryAcoustic } from '../../core/checks/recovery-acoustic.ts';
import { recoveryCanister } from '../../core/checks/recovery-canister.ts';
import { recoveryCanisterBolts } from '../../core/checks/recovery-canister-bolts.ts';
import { recoveryFloatDepth } from '../../core/checks/recovery-float-depth.ts';
import { recoveryFloatReserve } from '../../core/checks/recovery-float-reserve.ts';
import { recoveryFloatVisible } from '../../core/checks/recovery-float-visible.ts';
import { recoveryReleaseEndurance } from '../../core/checks/recovery-release-endurance.ts';
import { recoveryReleaseLeastPull } from '../../core/checks/recovery-release-least-pull.ts';
import { recoveryReleaseLoad } from '../../core/checks/recovery-release-load.ts';
import { recoveryRope } from '../../core/checks/recovery-rope.ts';
import type { MergePatch } from '../../core/document/schema.ts';
import { mergePatch } from '../../core/document/merge-patch.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel } from './model-of.ts';

const raw = readDocumentText(readFileSync('samples/middle.stillplate.json', 'utf8'));
const withRecovery = (recovery: MergePatch = {}) => modelOf(readDocument(mergePatch(raw, { recovery }) as typeof raw));
const all = [recoveryRope, recoveryFloatReserve, recoveryFloatVisible, recoveryFloatDepth, recoveryReleaseLoad, recoveryReleaseLeastPull, recoveryReleaseEndurance, recoveryAcoustic, recoveryCanister, recoveryCanisterBolts]; // prettier-ignore
const middle = withRecovery();
const rowsOf = (check: (typeof all)[number], of = middle) => checkRows(check, of).rows;
const P = 'partial factors';

it('none applies to a document that says nothing of recovery, nor those of a float to a line that stands', () => {
  for (const check of all) expect(rowsOf(check, demoModel()).every(({ verdict }) => verdict === 'not applicable'), check.id).toBe(true); // prettier-ignore
  const line = withRecovery({ chosen: 'line' });
  for (const check of all.slice(1).filter((check) => check !== recoveryAcoustic))
    expect(rowsOf(check, line)[0], check.id).toMatchObject({ verdict: 'not applicable', reason: expect.stringMatching(/no release/) }); // prettier-ignore
});

it('leaves the rope what its splice (90 %, OCIMF) and its bend (1.29 at D/d 5, 0027/ND) leave, the worse of them', () => {
  const left = (k_sp: number, k_be: number) => valuesGiven(recoveryRope, P, { F_br: 88e3, k_sp, k_be, k_we: 1, k_wet: 1, k_age: 1, k_d: 5 }); // prettier-ignore
  expect(left(0.9, 1 / 1.29).F_left! / 88e3).toBeCloseTo(0.775, 3);
  expect(left(0.7, 1 / 1.29).F_max).toBeCloseTo((0.7 * 88e3) / 5, 6);
  const plate = rowsOf(recoveryRope, withRecovery({ rope: { hauls: 'plate' } }))[0]!;
  expect(plate.demand).toBeGreaterThan(20e3);
});

describe('the float (Archimedes, worked by hand)', () => {
  const float = { rho: 1025, g: 9.80665, V: 0.1, m: 40, u: 0.05 };
  it('has 553.1 N at half its rated depth with 2 % and 5 % lost', () =>
    expect(valuesGiven(recoveryFloatReserve, P, { ...float, z: 50, z_r: 100, c: 0.02 }).B).toBeCloseTo(9.80665 * (1025 * 0.1 * 0.99 * 0.95 - 40), 9)); // prettier-ignore
  it('sums what it must pull: growth, release, rope, snag', () =>
    expect(valuesGiven(recoveryFloatReserve, P, { F_gr: 1, F_c: 2, F_ro: 3, F_sn: 4 }).F).toBe(10));
  it('cannot be judged below its rated depth', () =>
    expect(rowsOf(recoveryFloatReserve, withRecovery({ float: { ratedDepth: '20 m' } }))[0]!.verdict).toBe('cannot be judged')); // prettier-ignore
  it('is seen with a quarter of it out of the water', () => {
    const seen = valuesGiven(recoveryFloatVisible, P, { ...float, p: 0.25, F_gr: 0, F_c: 0, F_ro: 0 });
    expect(seen.F).toBeCloseTo(0.25 * 1025 * 0.1 * 9.80665, 9);
    expect(seen.B).toBeCloseTo(9.80665 * (1025 * 0.1 * 0.95 - 40), 9);
  });
  it('goes no deeper than its rating, nor than its collapse over 1.25 (common practice, no source)', () => {
    expect(valuesGiven(recoveryFloatDepth, P, { z_r: 100, z_c: 200, k_c: 1.25 }).z_max).toBe(100);
    expect(valuesGiven(recoveryFloatDepth, P, { z_r: 100, z_c: 110, k_c: 1.25 }).z_max).toBeCloseTo(88, 9);
  });
});

it('holds a release to twice the steady pull, to its least pull, and to a quarter of the time to spare', () => {
  expect(valuesGiven(recoveryReleaseLoad, P, { F_0: 500, k_w: 2 }).F).toBe(1000);
  const { F, F_there } = valuesGiven(recoveryReleaseLeastPull, P, { F_0: 60, k_l: 2, B: 450, F_gr: 50 });
  expect([F, F_there]).toEqual([120, 400]);
  expect(valuesGiven(recoveryReleaseEndurance, P, { T_d: 100, k_t: 1.25 }).T_need).toBe(125);
  expect(rowsOf(recoveryReleaseEndurance).map(({ place }) => place)).toEqual(['R1', 'R2']);
  expect(rowsOf(recoveryReleaseEndurance, withRecovery({ deployment: '11 months' })).at(-1)!.verdict).toBe('fails');
});

it('needs 60 dB of spreading, absorption, noise in the band and threshold over 1000 m (sonar equation, definition)', () => {
  const link = valuesGiven(recoveryAcoustic, P, {
    r: 1000,
    r_1: 1,
    alpha: 0.001,
    SL: 185,
    N_1: 50,
    B_w: 100,
    B_1: 1,
    DT: 12,
  });
  expect(link.L_need).toBeCloseTo(60 + 1 + 50 + 20 + 12, 9);
  expect(rowsOf(recoveryAcoustic, withRecovery({ acoustic: { wind: null } }))[0]).toMatchObject({ verdict: 'cannot be judged', reason: expect.stringMatching(/noise/) }); // prettier-ignore
});

it('stows 100 m of 12 mm at half the space in 22.6 L, and makes a height of it', () => {
  const { V_s, h } = valuesGiven(recoveryCanister, P, {
    d: 0.012,
    L: 100,
    k_p: 0.5,
    D: 0.4,
    D_c: 0.1,
    h_c: 0.05,
    H: 0.3,
  });
  expect(1000 * V_s!).toBeCloseTo(22.6, 1);
  expect(h).toBeCloseTo(0.022619 / ((Math.PI / 4) * (0.16 - 0.01)) + 0.05, 4);
});

describe('the canister’s bolts', () => {
  const forces = { m_c: 100, a_c: 2, g: 9.80665, F_f: 500, H: 0.25, D_b: 0.5, n: 6, A_s: 84.3e-6, A_b: 113.1e-6, f_ub: 800e6, gamma_F: 1.5, gamma_M2: 1.25, Omega_J: 2, u_max: 1 }; // prettier-ignore
  it('resist as EN 1993-1-8, Table 3.4 prints for M12 of class 8.8: 48.6 kN in tension, 27.0 kN in shear with 0.5', () => {
    const { F_t_Rd, F_v_Rd } = valuesGiven(recoveryCanisterBolts, P, forces);
    expect(F_t_Rd! / 1e3).toBeCloseTo(48.6, 1);
    expect(F_v_Rd! / 1e3).toBeCloseTo(27, 1);
  });
  it('the worst of six on a circle takes 4 M / (n D) of a moment: the sum over the circle balances it (statics)', () => {
    const { F_t, F_u, F_h } = valuesGiven(recoveryCanisterBolts, P, forces);
    const y = Array.from({ length: 6 }, (_, i) => 0.25 * Math.cos((i * Math.PI) / 3));
    const byMoment = (F_h! * 0.25 * y[0]!) / y.reduce((s, one) => s + one ** 2, 0);
    expect(F_t).toBeCloseTo(F_u! / 6 + byMoment, 6);
  });
  it('are judged by both kinds of basis', () => {
    const allowable = valuesGiven(recoveryCanisterBolts, 'allowable stress', forces);
    expect(allowable.F_t_Rd! / 1e3).toBeCloseTo((0.75 * 800e6 * 113.1e-6) / 2 / 1e3, 6);
    expect(allowable.u).toBeGreaterThan(0);
  });
});
