import { describe, expect, it } from 'vitest';
import { boltBearingTube } from '../../core/checks/bolt-bearing-tube.ts';
import { allowable, fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween, expectUtilisationBounds, ofShear } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

const en = {
  d: 0.016,
  d_0: 0.018,
  e_w: 0.03,
  p_1: 1,
  p_2: 0.05,
  t_w: 0.005,
  f_ub: 800e6,
  f_yw: 355e6,
  f_uw: 470e6,
  stainless_w: 0,
  k_h: 1,
  gamma_M2: 1.25,
};
const of = (change: Record<string, number>) => valuesGiven(boltBearingTube, 'partial factors', { ...en, ...change });

describe("bolt bearing on the tube's wall", () => {
  it('EN 1993-1-8 Table 3.4, M16 in 5 mm of S355, 30 mm to the end, 50 mm pitch: 36.579 kN', () => {
    expect(of({}).F_b_Rd! / 1e3).toBeCloseTo(36.579, 2);
    expect(of({ e_w: 1, p_1: 0.05 }).alpha_b).toBeCloseTo(0.675926, 6);
    expect(of({ e_w: 1, p_2: 1 }).F_b_Rd! / 1e3).toBeCloseTo((1.5 * 470 * 16 * 5) / 1.25 / 1e3, 6);
    expect(of({ p_2: 1 }).k_1).toBe(2.5);
    expect(of({ e_w: 1 }).alpha_b).toBe(1);
    expect(of({ e_w: 1, f_ub: 400e6 }).alpha_b).toBeCloseTo(400 / 470, 9);
    expect(of({ k_h: 0.8 }).F_b_Rd! / of({}).F_b_Rd!).toBeCloseTo(0.8, 9);
    expect(of({ stainless_w: 1, f_yw: 220e6, f_uw: 520e6 }).f_b! / 1e6).toBeCloseTo(422, 9);
  });

  it('AISC 360 J3.10 with 21 mm clear: 94.752 kN nominal for 8 mm (from memory)', () => {
    const us = {
      d: 0.016,
      d_0: 0.018,
      e_w: 0.03,
      p_1: 1,
      t_w: 0.008,
      f_uw: 470e6,
      f_yw: 355e6,
      stainless_w: 0,
      Omega_J: 1,
    };
    expect(valuesGiven(boltBearingTube, 'allowable stress', us).F_b_Rd! / 1e3).toBeCloseTo(94.752, 3);
    expect(valuesGiven(boltBearingTube, 'allowable stress', { ...us, e_w: 1, p_1: 0.045 }).l_c! * 1e3).toBeCloseTo(
      27,
      9,
    );
    expect(valuesGiven(boltBearingTube, 'allowable stress', { ...us, e_w: 1, Omega_J: 2 }).F_b_Rd! / 1e3).toBeCloseTo(
      (1.2 * 16 * 8 * 470) / 1e3,
      3,
    );
  });

  it('bounds the resistance as on the panel, towards the end of the tube (by hand)', () => {
    const bounds = (change: Record<string, number>) => of({ gamma_R: 1, ...change });
    expect(bounds({ e_w: 0.018 }).R_low).toBeCloseTo(0.8 * 355 * 16 * 5 * 0.5, 6);
    expect(bounds({ p_1: 0.045 }).R_low).toBeCloseTo((0.8 * 355 * 16 * 5 * 13.5) / 18, 6);
    expect(bounds({ e_w: 1 }).R_low).toBeCloseTo(0.8 * 355 * 16 * 5, 6);
    expect(bounds({}).R_high).toBeCloseTo((2 * 30 * 5 * 470) / Math.sqrt(3), 6);
    expect(bounds({ e_w: 1, p_1: 0.045 }).R_high).toBeCloseTo((2 * 36 * 5 * 470) / Math.sqrt(3), 6);
    expect(bounds({ e_w: 1 }).R_high).toBeCloseTo(3 * 16 * 5 * 470, 6);
    expect(bounds({ gamma_R: 1.25 }).R_high! / bounds({}).R_high!).toBeCloseTo(0.8, 9);
    expect(bounds({ gamma_R: 1.25 }).R_low! / bounds({}).R_low!).toBeCloseTo(0.8, 9);
    expectUtilisationBounds(boltBearingTube, { ...ofShear, capacity: 'F_b_Rd' });
    for (const e_w of [1.2, 1.5, 3, 20])
      for (const p of [2.2, 3, 6])
        for (const [f_yw, f_uw] of [
          [235, 360],
          [355, 470],
          [460, 540],
        ] as const) {
          const size = { d: 12, d_0: 13, e_w: e_w * 13, p_1: p * 13, t_w: 5, f_yw, f_uw, stainless_w: 0 };
          const partial = { p_2: p * 13, f_ub: 800, k_h: 1, gamma_M2: 1.25, gamma_R: 1.25 };
          expectBetween(valuesGiven(boltBearingTube, 'partial factors', { ...size, ...partial }), 'F_b_Rd');
          const own = { Omega_J: 2, gamma_R: 2 };
          expectBetween(valuesGiven(boltBearingTube, 'allowable stress', { ...size, ...own }), 'F_b_Rd');
        }
  });

  it('reads the wall that is left: outside always, inside where sea water stands in it', () => {
    const model = modelWith();
    const down = situationOf(model, 'service', 'down');
    expect(readOf(boltBearingTube, 't_w', model, 'A1', down)).toBeCloseTo(0.0063 - 0.0004, 9);
    const sealed = modelWith((d) => {
      for (const set of [d.grid.mainTubes, d.grid.crossTubes] as Record<string, unknown>[]) {
        set.flooding = 'sealed';
        delete set.vent;
        delete set.drain;
      }
    });
    expect(readOf(boltBearingTube, 't_w', sealed, 'A1', down)).toBeCloseTo(0.0063 - 0.0002, 9);
    expect(readOf(boltBearingTube, 'gamma_R', model, 'A1', down)).toBe(1.25);
    expect(readOf(boltBearingTube, 'gamma_R', allowable(model), 'A1', down)).toBe(2);
    expect(readOf(boltBearingTube, 'f_uw', model, 'A1', down)).toBe(470e6);
    expect(readOf(boltBearingTube, 'f_yw', model, 'A1', down)).toBe(355e6);
  });

  it('reads the distance to the end of the steel that the bolt stands in', () => {
    const model = modelWith();
    const down = situationOf(model, 'service', 'down');
    const ends = model.panels.get('A1')!.bolts.map(({ x, y, tube: id }) => {
      const tube = model.tubes.get(id)!;
      const along = tube.set === 'main' ? x : y;
      return Math.min(
        ...tube.pieces
          .filter(([from, to]) => along > from && along < to)
          .flatMap(([from, to]) => [along - from, to - along]),
      );
    });
    expect(readOf(boltBearingTube, 'e_w', model, 'A1', down)).toBeCloseTo(Math.min(...ends), 12);
    expect(Math.min(...ends)).toBeGreaterThan(0);
  });

  it('reads the least distance of two bolts of a row as the pitch, 800 MPa of class 8.8, and 0.8 in an oversize hole (EN 1993-1-8, Table 3.4)', () => {
    const model = modelWith();
    const down = situationOf(model, 'service', 'down');
    const { bolts } = model.panels.get('A1')!;
    const apart = bolts.flatMap((a) =>
      bolts.filter((b) => b !== a && b.side === a.side).map((b) => Math.hypot(a.x - b.x, a.y - b.y)),
    );
    expect(readOf(boltBearingTube, 'p_2', model, 'A1', down)).toBeCloseTo(Math.min(...apart), 12);
    expect(readOf(boltBearingTube, 'f_ub', model, 'A1', down)).toBe(800e6);
    expect(readOf(boltBearingTube, 'k_h', model, 'A1', down)).toBe(1);
    expect(readOf(boltBearingTube, 'k_h', modelWith(fixing({ hole: 'oversize' })), 'A1', down)).toBe(0.8);
  });

  it('knows a tube of stainless steel', () => {
    const model = modelWith();
    const read = (material: string) => {
      const tubes = [...model.tubes].map(
        ([id, tube]) => [id, { ...tube, material: model.catalogue.material(material) }] as const,
      );
      return readOf(
        boltBearingTube,
        'stainless_w',
        { ...model, tubes: new Map(tubes) },
        'A1',
        situationOf(model, 'service', 'down'),
      );
    };
    expect([read('S355H hot finished'), read('1.4404 plate')]).toEqual([0, 1]);
  });

  it('applies where there is a hole in the wall', () => {
    const applies = (into: string) =>
      boltBearingTube.applies(modelWith(fixing({ into })), 'A1', situationOf(modelWith(), 'service', 'up'));
    expect(applies('through-bolt with sleeve')).toBe(true);
    expect(applies('one-sided')).toBe(true);
    expect(applies('welded stud')).toMatch(/no hole/);
    expect(applies('tapped pad')).toMatch(/pad/);
  });
});
