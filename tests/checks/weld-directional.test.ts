import { describe, expect, it } from 'vitest';
import { weldDirectional } from '../../core/checks/weld-directional.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

const S275 = { f_u: 430e6, beta_w: 0.85, gamma_M2: 1.25, a_w: 0.004 };
const Nmm = 1e3;

describe('resistance, EN 1993-1-8, 4.5.3.2', () => {
  const at = (change: Record<string, number>) =>
    valuesGiven(weldDirectional, 'partial factors', { ...S275, f_z: 0, f_h: 0, m_r: 0, ...change });

  it('gives 66.291 MPa square and across, 132.58 MPa in all, 0.3276 for 375 N/mm off the face, a = 4 in S275 (worked by hand; second condition 0.2141)', () => {
    const { sigma_s, tau_s, sigma_v, u, sigma_s_Rd } = at({ f_z: 375 * Nmm });
    expect(sigma_s! / 1e6).toBeCloseTo(66.291, 3);
    expect(tau_s! / 1e6).toBeCloseTo(66.291, 3);
    expect(sigma_v! / 1e6).toBeCloseTo(132.58, 2);
    expect(u).toBeCloseTo(0.3276, 4);
    expect(sigma_s! / sigma_s_Rd!).toBeCloseTo(0.2141, 4);
  });

  it('gives the simplified method √1.5 more for that force (0.40123)', () => {
    const { u, u_high } = at({ f_z: 375 * Nmm });
    expect(u_high).toBeCloseTo(0.40123, 4);
    expect(u_high! / u!).toBeCloseTo(Math.sqrt(1.5), 9);
  });

  it('adds both pulls square to the throat and takes their difference across it: equal pulls are all stress, no shear', () => {
    const { sigma_s, tau_s, u } = at({ f_z: 300 * Nmm, f_h: 300 * Nmm });
    expect(sigma_s! / 1e6).toBeCloseTo((600 / 4) * Math.SQRT1_2, 9);
    expect(tau_s).toBe(0);
    // 0.9 f_u/γ_M2 decides over f_u/(β_w γ_M2) where all is square to the throat.
    expect(u).toBeCloseTo((sigma_s! / (0.9 * 430e6)) * 1.25, 12);
  });

  it('bends the throat elastically about the weld: 6 m/a²', () => {
    expect(at({ m_r: 100 }).sigma_s! / 1e6).toBeCloseTo((6 * 100) / 16, 9);
    expect(at({ m_r: 100 }).f_w! / Nmm).toBeCloseTo((6 * 100) / 4, 9);
  });

  it('divides by γ_M2 and β_w', () => {
    expect(at({ f_z: 1e5, gamma_M2: 1 }).u! / at({ f_z: 1e5 }).u!).toBeCloseTo(0.8, 12);
    expect(at({ f_z: 1e5, beta_w: 1 }).u! / at({ f_z: 1e5 }).u!).toBeCloseTo(1 / 0.85, 12);
  });

  it('lies within its second opinion for any pull and moment', () => {
    for (const f_z of [0, 1e4, 3e5])
      for (const f_h of [0, 2e4, 4e5])
        for (const m_r of [0, 30, 500])
          for (const beta_w of [0.8, 1]) {
            const { u, u_low, u_high } = at({ f_z, f_h, m_r, beta_w });
            expect(u!).toBeGreaterThanOrEqual(u_low! * (1 - 1e-12));
            expect(u!).toBeLessThanOrEqual(u_high! * (1 + 1e-12));
          }
  });
});

describe('resistance, AISC 360 J2.4 (from memory)', () => {
  const w6 = {
    f_w: 100 * Nmm,
    f_r: 100 * Nmm,
    F_EXX: 482e6,
    a_w: 0.7071 * 0.006,
    Omega_J: 2,
    Omega_v: 1.67,
    f_u: 450e6,
    f_yb: 345e6,
    t_b: 0.02,
  };
  const at = (change: Record<string, number>) =>
    valuesGiven(weldDirectional, 'allowable stress', { ...w6, theta: 0, ...change });

  it.each([
    [0, 613.5],
    [45, 795.9],
    [90, 920.2],
  ])('allows at %d degrees %d N/mm of a 6 mm leg, E70XX 482 MPa (worked by hand)', (degrees, allowed) => {
    expect(at({ theta: (degrees * Math.PI) / 180 }).f_Rd! / Nmm).toBeCloseTo(allowed, 1);
    expect(at({ theta: (degrees * Math.PI) / 180 }).u).toBeCloseTo(100 / allowed, 4);
  });

  it('is bounded by 1', () => expect(at({}).u_Rd).toBe(1));

  it('tears the thinner part at 0.6 F_u t/2 and yields it at 0.6 F_y t/1.67 (J4.2; 1.67 in place of 1.50)', () => {
    expect(at({ t_b: 0.003 }).f_Rd! / Nmm).toBeCloseTo((0.6 * 345 * 3) / 1.67, 6);
    expect(at({ t_b: 0.003, f_yb: 450e6 }).f_Rd! / Nmm).toBeCloseTo((0.6 * 450 * 3) / 2, 6);
  });

  it('takes no rise for direction on the wall of a hollow section (K5)', () => {
    expect(reads(weldDirectional, 'theta', demoModel(welded()), 'A1')).toBe(0);
  });
});

describe('forces in the weld', () => {
  const square = {
    a: 0.5,
    b: 0.5,
    t: 0.006,
    E: 210e9,
    nu: 0.3,
    p: 1e4,
    l_f: 0.04,
    k_r: 1,
    h: 0,
    h_x: 1,
    h_y: 1,
    a_w: 0.004,
  };
  const at = (change: Record<string, number>) =>
    valuesGiven(weldDirectional, 'partial factors', { ...square, pulled: 1, ...change });

  it('takes the edge force 0.420 q a and the corner force 0.065 q a² of a hinged square plate (T&WK, Table 8), the edge moment 0.0513 q a² of a held one (Table 35)', () => {
    const { V_hinged, R_c, M_held } = at({});
    expect(V_hinged! / (1e4 * 0.5)).toBeCloseTo(0.42, 3);
    expect(R_c! / (1e4 * 0.25)).toBeCloseTo(0.065, 3);
    expect(M_held! / (1e4 * 0.25)).toBeCloseTo(0.0513, 4);
  });

  it('pulled off, hangs the larger edge force of hinged and held edges on the weld', () => {
    const { f_z, V_hinged, V_held, m_r } = at({});
    expect(f_z).toBe(Math.max(V_hinged!, V_held!));
    expect(m_r).toBeCloseTo((f_z! * 0.004) / (2 * Math.SQRT2), 9);
  });

  it('pulled off with edges relied on as held, sends their moment through the root', () => {
    expect(at({ h: 1 }).m_r! - at({ h: 0 }).m_r!).toBeCloseTo(at({}).M_held!, 9);
  });

  it('pressed on, holds down the edge moment against the heel, or the corner, whichever is more', () => {
    const { f_z, M_held, R_c, m_r } = at({ pulled: 0, h: 1 });
    expect(f_z).toBeCloseTo(M_held! / 0.04, 9);
    expect(f_z!).toBeGreaterThan(R_c! / 0.08);
    expect(m_r).toBeCloseTo((f_z! * 0.004) / (2 * Math.SQRT2), 9);
    const long = at({ pulled: 0, a: 0.02, b: 0.02, l_f: 0.04 });
    expect(long.f_z).toBeCloseTo(Math.max(long.M_held! / 0.04, long.R_c! / 0.08), 9);
    // A corner force made to decide:
    expect(at({ pulled: 0, M_e: 1, R_c: -160 }).f_z).toBeCloseTo(160 / 0.08, 9);
  });

  it.each([
    [{ h_x: 1, h_y: 0 }, 0.5],
    [{ h_x: 0, h_y: 1 }, 0.8],
  ])('between two sides %o is a strip: p L/2 and p L²/12 (beam tables)', (sides, L) => {
    const strip = at({ ...sides, b: 0.8 });
    expect(strip.L_n).toBe(L);
    expect(strip.f_z).toBeCloseTo((1e4 * L) / 2, 9);
    expect(strip.M_e).toBeCloseTo((1e4 * L ** 2) / 12, 9);
    expect(at({ ...sides, b: 0.8, pulled: 0 }).f_z).toBeCloseTo((1e4 * L ** 2) / 12 / 0.04, 9);
  });

  it('takes the shorter span of four sides for the in-plane pull, which stays below that of a cable without bending stiffness, cbrt(E t p² L²/24(1 − ν²))', () => {
    const { L_n, f_h } = at({ a: 0.7 });
    expect(L_n).toBe(0.5);
    const cable = Math.cbrt((210e9 * 0.006 * 1e8 * 0.25) / (24 * 0.91));
    expect(f_h!).toBeGreaterThan(0);
    expect(f_h!).toBeLessThan(cable);
    expect(at({ p: 2e4, a: 0.7 }).f_h!).toBeGreaterThan(f_h!);
  });

  it('carries over the gaps of an intermittent weld', () => {
    for (const pulled of [0, 1])
      for (const symbol of ['f_z', 'f_h', 'm_r'])
        expect(at({ k_r: 3, pulled, h: 1 })[symbol]! / at({ pulled, h: 1 })[symbol]!).toBeCloseTo(3, 9);
  });
});

describe('what it reads from the model', () => {
  const model = demoModel(welded());
  const [down, up] = [situationOf(model, 'service-down'), situationOf(model, 'service-up')];

  it('knows that a topside panel is pulled off by an upward force, an underside panel by a downward one', () => {
    expect([
      reads(weldDirectional, 'pulled', model, 'A1', up),
      reads(weldDirectional, 'pulled', model, 'A1', down),
    ]).toEqual([1, 0]);
    const under = demoModel(welded({}, { side: 'underside' }));
    expect([
      reads(weldDirectional, 'pulled', under, 'A1', up),
      reads(weldDirectional, 'pulled', under, 'A1', down),
    ]).toEqual([0, 1]);
  });

  it('takes spans from weld to weld when pulled, from face to face when pressed: 1.07 m and 0.974 m', () => {
    expect(reads(weldDirectional, 'a', model, 'A1', up)).toBeCloseTo(1.07, 9);
    expect(reads(weldDirectional, 'a', model, 'A1', down)).toBeCloseTo(0.974, 9);
    expect([reads(weldDirectional, 'h_x', model, 'A1', up), reads(weldDirectional, 'h_y', model, 'A1', up)]).toEqual([
      1, 1,
    ]);
    const two = demoModel(welded({}, { support: 'main tubes' }));
    expect([reads(weldDirectional, 'h_x', two, 'A1', up), reads(weldDirectional, 'h_y', two, 'A1', up)]).toEqual([
      0, 1,
    ]);
  });

  it('takes the throat less what corrodes, the flat lap as the lever, and the weaker part of S355', () => {
    expect(reads(weldDirectional, 'a_w', model, 'A1')).toBeCloseTo(0.0035, 12);
    expect(reads(weldDirectional, 'l_f', model, 'A1')).toBeCloseTo(0.06 - 0.012, 12);
    expect(reads(weldDirectional, 'f_u', model, 'A1')).toBe(470e6);
    expect(reads(weldDirectional, 'beta_w', model, 'A1')).toBe(0.9);
    expect(reads(weldDirectional, 'f_yb', model, 'A1')).toBe(355e6);
    expect(reads(weldDirectional, 't_b', model, 'A1')).toBeCloseTo(0.0073, 12);
    const soft = demoModel(welded({}, { material: 'S235 plate' }));
    expect([
      reads(weldDirectional, 'f_u', soft, 'A1'),
      reads(weldDirectional, 'beta_w', soft, 'A1'),
      reads(weldDirectional, 'f_yb', soft, 'A1'),
    ]).toEqual([360e6, 0.9, 235e6]);
  });

  it('takes the larger of both losses off the throat', () => {
    const loss = (panel: string, tubeOutside: string) =>
      reads(weldDirectional, 'a_w', demoModel(welded(), { protection: { lossPerFace: { panel, tubeOutside } } }), 'A1');
    expect(loss('1 mm', '0.2 mm')).toBeCloseTo(0.003, 12);
    expect(loss('0.2 mm', '1 mm')).toBeCloseTo(0.003, 12);
  });

  it('knows edges relied on as held, runs and gaps, and the strength of the filler', () => {
    expect(reads(weldDirectional, 'h', demoModel(welded({}, { edges: 'held' })), 'A1')).toBe(1);
    expect(reads(weldDirectional, 'h', model, 'A1')).toBe(0);
    expect(reads(weldDirectional, 'k_r', model, 'A1')).toBe(1);
    const stitched = demoModel(welded({ pattern: 'intermittent', run: '50 mm', gap: '100 mm' }));
    expect(reads(weldDirectional, 'k_r', stitched, 'A1')).toBeCloseTo(3, 12);
    expect(reads(weldDirectional, 'F_EXX', model, 'A1')).toBe(470e6);
    expect(reads(weldDirectional, 'F_EXX', demoModel(welded({ metal: 'E70XX' })), 'A1')).toBe(482e6);
  });

  it('applies to welded panels that the document judges by this method', () => {
    expect(weldDirectional.applies(model, 'A1', up)).toBe(true);
    expect(weldDirectional.applies(demoModel(), 'A1', up)).toMatch(/bolted/);
    expect(weldDirectional.applies(demoModel(welded({ method: 'throat' })), 'A1', up)).toMatch(/simplified/);
  });

  it('fails by rule: filler weaker than the parts, aluminium on steel, plastic, a throat that corrodes away', () => {
    const rule = (...changes: unknown[]) => weldDirectional.rule!(demoModel(...changes), 'A1', up);
    expect(rule(welded())).toBeUndefined();
    expect(rule(welded({ metal: 'ISO 42' }))).toBeUndefined();
    expect(rule(welded({ metal: 'E60XX' }))).toMatch(/weaker than the parts/);
    expect(rule(welded({ metal: 'E60XX' }), { basis: { table: 'AISC 360 ASD' } })).toBeUndefined();
    expect(rule(welded({}, { material: '5083-H116' }))).toMatch(/cannot be welded to/);
    expect(rule(welded({}, { material: 'GRP mat laminate' }))).toMatch(/cannot be arc welded/);
    expect(rule(welded({ throat: '0.5 mm' }))).toMatch(/corrosion takes/);
  });

  it('says what is missing: beta_w of American steel, EN 1999 for aluminium, a flat lap, a throat', () => {
    expect(missingFrom(weldDirectional, 'beta_w', demoModel(welded({}, { material: 'ASTM A36' })), 'A1')).toMatch(
      /beta_w .* Table 4.1/,
    );
    const aluminium = demoModel(welded({}, { material: '5083-H116' }), {
      grid: { mainTubes: { material: '6082-T6 extruded' }, crossTubes: { material: '6082-T6 extruded' } },
    });
    expect(weldDirectional.rule!(aluminium, 'A1', up)).toBeUndefined();
    for (const symbol of ['f_u', 'beta_w', 'F_EXX'])
      expect(missingFrom(weldDirectional, symbol, aluminium, 'A1')).toMatch(/EN 1999-1-1, 8\.6/);
    expect(
      missingFrom(
        weldDirectional,
        'l_f',
        demoModel(welded({}, { overlap: { onMain: '8 mm', onCross: '8 mm' } })),
        'A1',
      ),
    ).toMatch(/corner's radius/);
    expect(missingFrom(weldDirectional, 'a_w', demoModel(welded({ throat: '0.4 mm' })), 'A1')).toMatch(/throat/);
  });

  it('reads beta_w 1.0 for stainless steel (EN 1993-1-4, 6.3, from memory), the larger of both parts', () => {
    expect(reads(weldDirectional, 'beta_w', demoModel(welded({}, { material: '1.4404 plate' })), 'A1')).toBe(1);
  });
});

it('is bounded by 1, and below by the resultant square to the throat: 0.40123/√3 for 375 N/mm', () => {
  const { u_Rd, u_low } = valuesGiven(weldDirectional, 'partial factors', { ...S275, f_z: 375 * Nmm, f_h: 0, m_r: 0 });
  expect(u_Rd).toBe(1);
  expect(u_low).toBeCloseTo(0.40123 / Math.sqrt(3), 4);
});

it('begins at 4 mm under EN 1993-1-8 (4.1(1)), with no such limit in AISC 360', () => {
  const thin = demoModel(welded({}, { thickness: '3.9 mm' }));
  expect(missingFrom(weldDirectional, 'f_u', thin, 'A1')).toMatch(/begins at 4 mm/);
  expect(reads(weldDirectional, 'f_u', demoModel(welded({}, { thickness: '4 mm' })), 'A1')).toBe(470e6);
  const american = { ...thin, basis: { ...thin.basis, safety: 'allowable stress' as const } };
  expect(reads(weldDirectional, 'f_u', american, 'A1')).toBe(470e6);
  const tube = [...thin.tubes.values()][0]!;
  expect(tube.section.nominalWall).toBeGreaterThan(0.0025);
});
