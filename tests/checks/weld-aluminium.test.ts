import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { weldAluminium } from '../../core/checks/weld-aluminium.ts';
import { weldDirectional } from '../../core/checks/weld-directional.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

const given = { a_w: 0.005, f_w_k: 210e6, f_u_haz: 185e6, gamma_Mw: 1.25, t: 0.008, m_r: 0 };

it('EN 1999-1-1, 8.6.3: 100 N/mm off the tube, throat 5 mm, 5356 on 6082: weld 20 MPa of 168, zone 24.5 MPa of 148 (worked by hand)', () => {
  const v = valuesGiven(weldAluminium, 'partial factors', { ...given, f_z: 100e3, f_h: 0 });
  // Square to one face, a force is pull on one leg and shear along the other; half of each on the throat.
  expect(v.sigma_v! / 1e6).toBeCloseTo(28.284, 3);
  expect(v.u_w).toBeCloseTo(28.284 / 168, 5);
  expect(v.s_haz! / 1e6).toBeCloseTo(100 / (5 * Math.SQRT2), 6);
  expect(v.s_haz_v! / 1e6).toBeCloseTo((100 * Math.sqrt(3)) / (5 * Math.SQRT2), 6);
  expect(v.s_toe! / 1e6).toBeCloseTo((100 * Math.sqrt(3)) / 8, 6);
  expect(v.u_haz).toBeCloseTo(24.495 / 148, 4);
  expect(v.u).toBe(Math.max(v.u_w!, v.u_haz!));
});

it('Aluminum Design Manual, J.2.2 (from memory): 5356 of 17 ksi on 5 mm over 1.95, 295 N/mm; beside it 0.6 F_tuw on a leg or through the panel (by hand)', () => {
  const us = { a_w: 0.005, F_suf: 115e6, Omega_w: 1.95, f_u_haz: 185e6, t: 0.008, m_r: 0, f_z: 100e3, f_h: 0 };
  const at = (change: object = {}) => valuesGiven(weldAluminium, 'allowable stress', { ...us, ...change });
  expect(17 * 6.894757).toBeGreaterThan(115);
  expect(at().f_fill! / 1e3).toBeCloseTo(294.87, 2);
  expect(at().f_base! / 1e3).toBeCloseTo((0.6 * 185 * 5 * Math.SQRT2) / 1.95, 6);
  expect(at({ t: 0.004 }).f_base! / 1e3).toBeCloseTo((0.6 * 185 * 4) / 1.95, 6);
  expect(at().u).toBeCloseTo(100 / 294.87, 5);
  expect(at({ t: 0.003 }).u).toBeCloseTo((100 * 1.95) / (111 * 3), 9);
  expect(at({ m_r: 60 }).u).toBeCloseTo((100 + (6 * 60) / 5) / 294.87, 5);
  expect(at().u_Rd).toBe(1);
  for (const [f_z, f_h] of [
    [1e5, 0],
    [0, 1e5],
    [7e4, 7e4],
  ] as const)
    // prettier-ignore
    for (const t of [0.003, 0.012])
      for (const f_u_haz of [100e6, 275e6]) {
        const { u, u_low, u_high } = at({ f_z, f_h, t, f_u_haz, m_r: 20 });
        expect(u_low!).toBeLessThan(u!);
        expect(u!).toBeLessThanOrEqual(u_high! * (1 + 1e-12));
      }
  expect(at().u_low).toBeCloseTo(100 / 294.87 / Math.sqrt(3), 5);
  expect(at({ t: 0.003 }).u_high).toBeCloseTo((100 * 1.95) / (111 * 3), 9);
});

it('EN 1999-1-1: force, moment and zone, each by hand; passes and fails', () => {
  const at = (change: object) => valuesGiven(weldAluminium, 'partial factors', { ...given, ...change });
  const both = at({ f_z: 60e3, f_h: 20e3, m_r: 50 });
  expect(both.sigma_s! / 1e6).toBeCloseTo(80 / (5 * Math.SQRT2) + (6 * 50) / 25, 9);
  expect(both.s_haz! / 1e6).toBeCloseTo(Math.sqrt(60 ** 2 + 3 * 20 ** 2) / (5 * Math.SQRT2), 9);
  expect([both.q_f! / 1e6, both.q_w! / 1e6]).toEqual([expect.closeTo(168, 9), expect.closeTo(148, 9)]);
  expect(at({ f_u_haz: 275e6, f_z: 1e5, f_h: 0 }).q_w! / 1e6).toBeCloseTo(168, 9);
  expect(both.u_high).toBeCloseTo((Math.sqrt(3) * (Math.hypot(60, 20) + (6 * 50) / 5)) / 148 / 5, 9);
  const under = (force: string, fixing: object = {}) =>
    checkRows(weldAluminium, demoModel(alloy, panel({ metal: '5356 on 6082', ...fixing }), { loads: { service: { force } } })).rows.map(({ verdict }) => verdict); // prettier-ignore
  expect(under('2 kN')).toContain('passes');
  expect(under('2 kN')).not.toContain('fails');
  expect(under('600 kN')).toContain('fails');
  expect(under('2 kN', { throat: '0.4 mm' })).toContain('fails');
  const some = demoModel(alloy, panel({ metal: '5356 on 6082' }));
  expect(reads(weldAluminium, 'gamma_Mw', some, 'A1')).toBe(1.25);
});

it('stays within its bounds whatever the direction, and a thin panel is judged at the toe', () => {
  for (let k = 0; k <= 8; k++)
    for (const m_r of [0, 60]) {
      const [f_z, f_h] = [1e5 * Math.cos((k * Math.PI) / 16), 1e5 * Math.sin((k * Math.PI) / 16)];
      const v = valuesGiven(weldAluminium, 'partial factors', { ...given, f_z, f_h, m_r });
      expect(v.u!).toBeGreaterThanOrEqual(v.u_low! * (1 - 1e-12));
      expect(v.u!).toBeLessThanOrEqual(v.u_high! * (1 + 1e-12));
    }
  const thin = valuesGiven(weldAluminium, 'partial factors', { ...given, t: 0.003, f_z: 0, f_h: 1e5 });
  expect(thin.u_haz).toBeCloseTo(100 / 3 / 148, 6);
});

const asd = { basis: { table: 'AISC 360 ASD' } };
const alloy = { grid: { mainTubes: { material: '6082-T6 extruded' }, crossTubes: { material: '6082-T6 extruded' } } };
const panel = (fixing: Record<string, unknown>) => welded(fixing, { material: '6082-T6 plate', thickness: '8 mm' });

it('judges aluminium on aluminium by its filler; without a filler by name it cannot be judged; on steel it fails', () => {
  const model = demoModel(alloy, panel({ metal: '5356 on 6082' }));
  const up = situationOf(model, 'service-up');
  expect(weldAluminium.applies(model, 'A1', up)).toBe(true);
  expect(weldDirectional.applies(model, 'A1', up)).toMatch(/EN 1999-1-1/);
  expect(reads(weldAluminium, 'f_w_k', model, 'A1', up)).toBe(210e6);
  expect(reads(weldAluminium, 'f_u_haz', model, 'A1', up)).toBe(185e6);
  expect(checkRows(weldAluminium, model).rows.some(({ utilisation }) => utilisation !== null)).toBe(true);
  const unnamed = checkRows(weldAluminium, demoModel(alloy, panel({}))).rows;
  expect(unnamed.map(({ reason }) => reason ?? '')).toContainEqual(expect.stringMatching(/filler on this alloy/));
  const onSteel = demoModel(panel({ metal: '5356 on 6082' }));
  expect(weldAluminium.applies(onSteel, 'A1', up)).toMatch(/not of aluminium/);
  expect(checkRows(weldDirectional, onSteel).rows.map(({ verdict }) => verdict)).toContain('fails');
  const plain = demoModel(alloy, panel({}), asd);
  expect(checkRows(weldAluminium, plain).rows.map(({ reason }) => reason ?? '')).toContainEqual(expect.stringMatching(/shear strength of the filler/)); // prettier-ignore
  const us = demoModel(alloy, panel({ metal: '5356 on 6082' }), asd);
  expect(weldAluminium.applies(us, 'A1', up)).toBe(true);
  expect([reads(weldAluminium, 'F_suf', us, 'A1'), reads(weldAluminium, 'Omega_w', us, 'A1')]).toEqual([115e6, 1.95]);
  expect(checkRows(weldAluminium, us).rows.some(({ utilisation }) => utilisation !== null)).toBe(true);
  expect(checkRows(weldAluminium, us).findings).toEqual([]);
  expect(weldDirectional.applies(us, 'A1', up)).toMatch(/Aluminum Design Manual/);
  const own = { catalogue: { weldMetals: [{ id: 'ours', title: 'our filler', family: 'aluminium', ultimate: '230 MPa', shear: '120 MPa', source: { document: 'test 7' } }] } }; // prettier-ignore
  expect(reads(weldAluminium, 'F_suf', demoModel(own, alloy, panel({ metal: 'ours' }), asd), 'A1')).toBe(120e6);
});
