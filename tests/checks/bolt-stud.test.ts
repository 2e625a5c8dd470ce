import { expect, it } from 'vitest';
import { boltStud } from '../../core/checks/bolt-stud.ts';
import { outOfRangeWith } from './at.ts';
import { allowable, fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween, expectUtilisationBounds, ofTension } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

const stud = { into: 'welded stud', class: '4.6', stud: { procedure: 'invented procedure record' } };
const down = situationOf(modelWith(), 'service', 'down');
const m12 = { d: 0.012, A_s: 84.3e-6, f_us: 400e6, t_w: 0.005, f_uw: 470e6, f_yw: 355e6 };

it('carries the lesser of thread and wall: M12 of 400 MPa 0.9 f A_s/1.25 = 24.28 kN (EN 1993-1-8, Table 3.4); a wall of 2 mm 0.6 π d t f/1.25 = 17.01 kN', () => {
  const thick = valuesGiven(boltStud, 'partial factors', { ...m12, gamma_M2: 1.25 });
  expect(thick.F_s_Rd! / 1e3).toBeCloseTo(24.28, 2);
  expect(thick.F_pw! / 1e3).toBeCloseTo((0.6 * Math.PI * 12 * 5 * 0.47) / 1.25, 6);
  const thin = valuesGiven(boltStud, 'partial factors', { ...m12, t_w: 0.002, gamma_M2: 1.25 });
  expect(thin.F_s_Rd! / 1e3).toBeCloseTo(17.01, 2);
});

it('AISC 360, J3.6: 0.75 of the strength on the stress area, halved: 12.65 kN', () => {
  expect(valuesGiven(boltStud, 'allowable stress', { ...m12, Omega_J: 2 }).F_s_Rd! / 1e3).toBeCloseTo(12.645, 2);
});

it('lies between flow rules on the same surfaces', () => {
  for (const t_w of [0.002, 0.005, 0.01])
    for (const [f_uw, f_yw] of [
      [360e6, 235e6],
      [470e6, 355e6],
      [540e6, 460e6],
    ] as const) {
      // prettier-ignore
      const given = { ...m12, t_w, f_uw, f_yw };
      expectBetween(valuesGiven(boltStud, 'partial factors', { ...given, gamma_M2: 1.25, gamma_R: 1.25 }), 'F_s_Rd');
      expectBetween(valuesGiven(boltStud, 'allowable stress', { ...given, Omega_J: 2, gamma_R: 2 }), 'F_s_Rd');
    }
  expectUtilisationBounds(boltStud, { ...ofTension, capacity: 'F_s_Rd' });
});

it('holds to studs of at most 2.5 walls (EN 1994-1-1, 6.6.5.7(5); AISC 360, I8.1; from memory)', () => {
  const at = (t_w: number) => outOfRangeWith(boltStud, 'partial factors', { d: 0.012, t_w });
  expect([at(0.00481), at(0.0047)]).toEqual([undefined, expect.stringMatching(/2.5 walls/)]);
});

it('fails a stud of class 8.8, and asks for the procedure', () => {
  const model = modelWith(fixing(stud));
  expect(boltStud.applies(model, 'A1', down)).toBe(true);
  expect(boltStud.rule!(model, 'A1', down)).toBeUndefined();
  expect(readOf(boltStud, 'f_us', model, 'A1', down)).toBe(400e6);
  expect(readOf(boltStud, 'gamma_R', model, 'A1', down)).toBe(1.25);
  expect(readOf(boltStud, 'gamma_R', allowable(model), 'A1', down)).toBe(2);
  const hard = modelWith(fixing({ ...stud, class: '8.8' }));
  expect(boltStud.rule!(hard, 'A1', down)).toMatch(/EN ISO 13918/);
  const without = modelWith(fixing({ into: 'welded stud', class: '4.6' }));
  expect(readOf(boltStud, 'f_us', without, 'A1', down)).toMatch(/EN ISO 14555/);
  expect(boltStud.applies(modelWith(), 'A1', down)).toMatch(/no welded stud/);
});
