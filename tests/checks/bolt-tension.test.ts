import { describe, expect, it } from 'vitest';
import { boltClasses } from '../../core/catalogue/bolt-classes.ts';
import { bolts } from '../../core/catalogue/bolts.ts';
import { boltTension } from '../../core/checks/bolt-tension.ts';
import { allowable, design, fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween, expectUtilisationBounds, ofTension } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

const field = {
  a: 0.9,
  b: 0.9,
  t: 0.01,
  E: 210e9,
  nu: 0.3,
  p: 1e4,
  h_x: 1,
  h_y: 1,
  a_b: 1,
  b_b: 1,
  n_x: 2,
  n_y: 2,
  i_x: 0,
  i_y: 0,
  d_w: 0.03,
  l_x: 0.03,
  l_y: 0.03,
};
const of = (change: Record<string, number>) =>
  valuesGiven(boltTension, 'partial factors', { ...field, pulled: 1, lost: 0, ...change });

describe('bolt in tension', () => {
  it.each([
    [
      'EN 1993-1-8 Table 3.4, M16 8.8',
      'partial factors',
      { A_s: 157e-6, f_ub: 800e6, k_2: 0.9, gamma_M2: 1.25 },
      90.432,
    ],
    ['the same, countersunk', 'partial factors', { A_s: 157e-6, f_ub: 800e6, k_2: 0.63, gamma_M2: 1.25 }, 63.302],
    ['AISC 360 Table J3.2, M16 of group 120', 'allowable stress', { A_b: 201.06e-6, F_nt: 620e6, Omega_J: 2 }, 62.329],
  ] as const)('%s', (_, safety, given, kN) => {
    expect(valuesGiven(boltTension, safety, given).F_t_Rd! / 1e3).toBeCloseTo(kN, 2);
  });

  it('hangs a quarter of the panel on each of four corner bolts (equilibrium), and adds the moment of a held edge: 0.0513 q a² (T&WK, Table 35)', () => {
    const { R_bolt, M_edge, Q, F_t } = of({});
    expect(R_bolt).toBeCloseTo(1e4 / 4, 0);
    expect(M_edge! / (1e4 * 0.81)).toBeCloseTo(0.0513, 4);
    expect(Q).toBeCloseTo((M_edge! * 1) / 0.03, 6);
    expect(F_t).toBeCloseTo(R_bolt! + Q!, 6);
    expect(of({ i_x: 0.05, i_y: 0.1 }).R_bolt! / 1e4).toBeCloseTo((1.1 * 1.2) / 4, 3);
  });

  it('pressed on its tubes, hangs nothing on the bolts and keeps only the moment', () => {
    const pressed = of({ pulled: 0 });
    expect(pressed.R_bolt).toBeCloseTo(0, 9);
    expect(pressed.F_t).toBeCloseTo(of({}).Q!, 6);
    expect(of({ pulled: 0, lost: 1, n_x: 5, n_y: 5 }).R_rest).toBe(0);
  });

  it('takes the pitch along the tube that the moment bends over, and the lever there', () => {
    const rows = { n_x: 5, n_y: 3, l_x: 0.05, l_y: 0.02 };
    const { Q, M_edge } = of(rows);
    expect(Q).toBeCloseTo(M_edge! * Math.max(0.5 / 0.05, 0.25 / 0.02), 6);
    expect(of({ ...rows, l_x: 0.03 }).Q).toBeCloseTo((M_edge! * 0.5) / 0.03, 6);
  });

  it('on two sides: the held strip p L²/12 over that span, on those rows (beam theory)', () => {
    expect(of({ h_x: 0, b: 0.6, n_x: 5 }).M_edge).toBeCloseTo((1e4 * 0.36) / 12, 6);
    expect(of({ h_x: 0, b: 0.6, n_x: 5 }).Q).toBeCloseTo((((1e4 * 0.36) / 12) * 0.25) / 0.03, 6);
    expect(of({ h_y: 0, a: 0.5, n_y: 5 }).M_edge).toBeCloseTo((1e4 * 0.25) / 12, 6);
  });

  it('with a row lost: the larger of rigid and bending plate, and the moment of three held edges', () => {
    const whole = of({ n_x: 5, n_y: 5 });
    const lost = of({ n_x: 5, n_y: 5, lost: 1 });
    expect(whole.R_group).toBe(0);
    expect(lost.R_group!).toBeGreaterThan(1e4 / 16);
    expect(lost.R_rest!).toBeGreaterThan(lost.R_group!);
    expect(lost.M_edge!).toBeGreaterThan(whole.M_edge!);
    expect(lost.F_t).toBeCloseTo(lost.R_rest! + lost.Q!, 6);
  });

  it('lies between the mean of all bolts and twice the strip, or everything on one with a row lost (second opinion)', () => {
    for (const [a, b, n_x, n_y, lost, pulled] of [
      [1, 1, 5, 5, 0, 1],
      [1, 1, 2, 2, 0, 1],
      [1, 1, 5, 5, 1, 1],
      [1, 2, 4, 7, 0, 1],
      [1, 2, 4, 7, 1, 1],
      [3, 1, 9, 4, 0, 1],
      [3, 1, 9, 4, 1, 1],
      [1, 1, 5, 5, 0, 0],
    ] as const) {
      const { F_t, F_low, F_high } = of({
        a: a - 0.02,
        b: b - 0.02,
        a_b: a,
        b_b: b,
        n_x,
        n_y,
        lost,
        pulled,
        i_x: 0.03,
        i_y: 0.03,
      });
      expect(F_t!).toBeGreaterThanOrEqual(F_low!);
      expect(F_t!).toBeLessThanOrEqual(F_high!);
      expect(F_low!).toBeCloseTo((pulled * 1e4 * (a + 0.06) * (b + 0.06)) / (2 * n_x + 2 * n_y - 4), 6);
    }
  });

  it('takes beam theory for the bounds: p L / 2 a side of a strip, twice; p L² / 8 on hinges, p L² / 2 of a cantilever', () => {
    const rows = { n_x: 5, n_y: 3, i_x: 0.02, i_y: 0.03, l_x: 0.05, l_y: 0.02, a: 0.9, b: 0.7 };
    // Pitches 250 and 500 mm, the plate 1.04 m by 1.06 m.
    const whole = of(rows);
    expect(whole.F_strip).toBeCloseTo(2 * ((1e4 * 1.04) / 2) * (0.5 + 2 * 0.03), 6);
    expect(whole.M_high).toBeCloseTo((1e4 * 0.7 ** 2) / 8, 6);
    expect(whole.F_high).toBeCloseTo(whole.F_strip! + (whole.M_high! * 0.5) / 0.02, 6);
    const lost = of({ ...rows, lost: 1 });
    expect(lost.M_high).toBeCloseTo((1e4 * 0.7 ** 2) / 2, 6);
    expect(lost.F_high).toBeCloseTo(1e4 * 1.04 * 1.06 + (lost.M_high! * 0.5) / 0.02, 5);
    expect(of({ ...rows, h_y: 0 }).M_high).toBeCloseTo((1e4 * 0.9 ** 2) / 8, 6);
    expect(of({ ...rows, h_x: 0, b: 1.1 }).M_high).toBeCloseTo((1e4 * 1.1 ** 2) / 8, 6);
  });

  it('spreads the washer at 45° through the plate: 15 mm and 10 mm make a radius of 25 mm', () => {
    expect(of({}).r_b).toBeCloseTo(0.025, 12);
  });

  it('bounds the resistance: preload 87.92 kN of M16 8.8 (EN 1993-1-8, 3.6.1(2)), and its strength at the pitch diameter (1/2 in UNF 0.4675 in, A_s 0.1599 in², ASME B1.1)', () => {
    const given = { A_s: 157e-6, A_b: 201.06e-6, f_ub: 800e6, countersunk: 0, gamma_R: 1 };
    const hexagon = valuesGiven(boltTension, 'partial factors', given);
    expect(hexagon.R_low! / 1e3).toBeCloseTo(87.92, 6);
    const half = { A_s: 0.1599 * 0.0254 ** 2, A_b: (Math.PI / 16) * 0.0254 ** 2, f_ub: 800e6, gamma_R: 1 };
    const { A_2, R_high } = valuesGiven(boltTension, 'partial factors', half);
    expect(Math.sqrt((4 * A_2!) / Math.PI) / 0.0254).toBeCloseTo(0.4675, 4);
    expect(R_high! / 800e6).toBeCloseTo(A_2!, 12);
    expect(
      valuesGiven(boltTension, 'partial factors', { ...given, countersunk: 1, gamma_R: 1.25 }).R_low! / 1e3,
    ).toBeCloseTo((87.92 * 0.8) / 1.25, 6);
    expect(valuesGiven(boltTension, 'partial factors', { ...given, gamma_R: 2 }).R_high).toBeCloseTo(
      hexagon.R_high! / 2,
      6,
    );
    expectUtilisationBounds(boltTension, { ...ofTension, capacity: 'F_t_Rd' });
  });

  it.each(['partial factors', 'allowable stress'] as const)(
    'holds the resistance of every bolt and class between its bounds: %s',
    (safety) => {
      let tried = 0;
      for (const { tensileArea: A_s, shankArea: A_b } of bolts)
        for (const { ultimate: f_ub, nominal, family } of boltClasses)
          for (const countersunk of [0, 1]) {
            if (safety === 'allowable stress' && family !== 'carbon steel') continue;
            const own: Record<string, number> =
              safety === 'partial factors'
                ? { k_2: countersunk ? 0.63 : 0.9, gamma_M2: 1.25, gamma_R: 1.25 }
                : { F_nt: nominal?.tension ?? 0.75 * f_ub, Omega_J: 2, gamma_R: 2 };
            expectBetween(valuesGiven(boltTension, safety, { A_s, A_b, f_ub, countersunk, ...own }), 'F_t_Rd');
            tried++;
          }
      expect(tried).toBeGreaterThan(200);
    },
  );

  it('does not apply to a welded panel', () => {
    const down = situationOf(modelWith(), 'service', 'down');
    expect(
      boltTension.applies(
        modelWith((d) => Object.assign(d.panels, { A2: 'welded' })),
        'A2',
        down,
      ),
    ).toBe('the panel is welded');
    expect(boltTension.applies(modelWith(), 'A2', down)).toBe(true);
    expect([boltTension.demand, boltTension.capacity]).toEqual(['F_t', 'F_t_Rd']);
  });

  it('reads which way the load goes: an underside panel is pulled off by a force down, pressed on by one up', () => {
    const model = modelWith();
    const [up, down] = [situationOf(model, 'service', 'up'), situationOf(model, 'service', 'down')];
    expect(readOf(boltTension, 'pulled', model, 'A1', down)).toBe(1);
    expect(readOf(boltTension, 'pulled', model, 'A1', up)).toBe(0);
    const turned = modelWith(design({ side: 'topside' }));
    expect(readOf(boltTension, 'pulled', turned, 'A1', up)).toBe(1);
    expect(readOf(boltTension, 'pulled', turned, 'A1', down)).toBe(0);
    expect(readOf(boltTension, 'lost', model, 'A1', down)).toBe(0);
    expect(readOf(boltTension, 'lost', model, 'A1', situationOf(model, 'lost bolt row', 'down'))).toBe(1);
  });

  it('reads levers: outer edge of the plate when pulled, end of the corner radius when pressed', () => {
    const model = modelWith();
    const [up, down] = [situationOf(model, 'service', 'up'), situationOf(model, 'service', 'down')];
    // Overlap 46 mm, edge distance 18 mm, outer corner radius of SHS 120 × 6.3 hot finished 1.5 × 6.3 mm.
    expect(readOf(boltTension, 'l_x', model, 'A1', down)).toBeCloseTo(0.018, 9);
    expect(readOf(boltTension, 'l_y', model, 'A1', down)).toBeCloseTo(0.018, 9);
    expect(readOf(boltTension, 'l_x', model, 'A1', up)).toBeCloseTo(0.046 - 0.018 - 0.00945, 9);
    const { pressed, pulled } = model.fields.get('A1')!;
    expect(readOf(boltTension, 'l_y', model, 'A1', up)).toBeCloseTo((pulled.b - pressed.b) / 2, 9);
    const onRadius = modelWith(design({ overlap: { onMain: '30 mm', onCross: '26 mm' } }));
    expect(readOf(boltTension, 'l_x', onRadius, 'A1', up)).toMatch(/larger overlap or a smaller edge distance/);
    expect(readOf(boltTension, 'l_y', onRadius, 'A1', up)).toBeCloseTo(0.03 - 0.018 - 0.00945, 9);
  });

  it('reads the rows of bolts and the washer', () => {
    const model = modelWith();
    const down = situationOf(model, 'service', 'down');
    const { pulled } = model.fields.get('A2')!;
    expect(readOf(boltTension, 'a_b', model, 'A2', down)).toBe(pulled.a);
    expect(readOf(boltTension, 'b_b', model, 'A2', down)).toBe(pulled.b);
    // 720 - 120 + 2 (46 - 18) mm at 75 mm at most: 9 pitches; 1100 - 120 + 56: 14 pitches.
    expect(readOf(boltTension, 'n_x', model, 'A2', down)).toBe(10);
    expect(readOf(boltTension, 'n_y', model, 'A2', down)).toBe(15);
    expect(readOf(boltTension, 'i_x', model, 'A2', down)).toBeCloseTo(0.018, 9);
    expect(readOf(boltTension, 'i_y', model, 'A2', down)).toBeCloseTo(0.018, 9);
    expect(readOf(boltTension, 'd_w', model, 'A2', down)).toBeCloseTo(0.024, 9);
    expect(readOf(boltTension, 'k_2', model, 'A2', down)).toBe(0.9);
    expect(readOf(boltTension, 'k_2', modelWith(fixing({ countersunk: true })), 'A2', down)).toBe(0.63);
    expect(readOf(boltTension, 'countersunk', model, 'A2', down)).toBe(0);
    expect(readOf(boltTension, 'countersunk', modelWith(fixing({ countersunk: true })), 'A2', down)).toBe(1);
    expect(readOf(boltTension, 'gamma_R', model, 'A2', down)).toBe(1.25);
    expect(readOf(boltTension, 'gamma_R', allowable(model), 'A2', down)).toBe(2);
  });

  it('fails by rule where two rows hold the panel and one is lost', () => {
    const model = modelWith(design({ support: 'main tubes' }));
    const lost = situationOf(model, 'lost bolt row', 'down');
    expect(boltTension.rule!(model, 'A1', lost)).toMatch(/turns about the other/);
    expect(boltTension.rule!(model, 'A1', situationOf(model, 'lost bolt row', 'up'))).toBeUndefined();
    expect(boltTension.rule!(model, 'A1', situationOf(model, 'service', 'down'))).toBeUndefined();
    expect(boltTension.rule!(modelWith(), 'A1', lost)).toBeUndefined();
    expect(readOf(boltTension, 'h_x', model, 'A1', lost)).toBe(0);
    expect(readOf(boltTension, 'h_y', model, 'A1', lost)).toBe(1);
  });
});
