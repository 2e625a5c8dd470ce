import { describe, expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { eyeNetTension } from '../../core/checks/eye-net-tension.ts';
import type { Safety } from '../../core/source.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads, situationOf } from './model-of.ts';
import { eyeTearOut } from '../../core/checks/eye-tear-out.ts';
import { eyeBearing } from '../../core/checks/eye-bearing.ts';
import { eyeFoot } from '../../core/checks/eye-foot.ts';
import { eyeWeld } from '../../core/checks/eye-weld.ts';
import { eyeTubeWall } from '../../core/checks/eye-tube-wall.ts';

const inch = 0.0254;
const ksi = 6.894757e6;
const kip = 4448.222;
const b_16 = 0.016;

it('carries 100 kN where Table 3.9, type A, asks for c = F γ_M0/(2 t f_y) + d_0/3 (EN 1993-1-8): t 20, f_y 355, d_0 30 give 17.04 mm', () => {
  const at = (change: Record<string, number>) =>
    valuesGiven(eyeNetTension, 'partial factors', {
      t_e: 0.02,
      f_y: 355e6,
      f_u: 470e6,
      d_0: 0.03,
      c_e: 0.0170423,
      gamma_M0: 1,
      ...change,
    }).F_Rd! / 1e3;
  expect(at({})).toBeCloseTo(100, 2);
  expect(at({ gamma_M0: 1.1, c_e: 0.0170423 + 0.1 * 0.0070423 })).toBeCloseTo(100, 2);
  expect(at({ c_e: 0.009 })).toBeLessThan(0);
});

describe('AISC 360, D5.1', () => {
  const at = (change: Record<string, number>) =>
    valuesGiven(eyeNetTension, 'allowable stress', { Omega_J: 2, Omega_b: 1.67, b_16, ...change }).F_Rd! / kip;

  it('gives 45.8 kips: half-inch plate 4.25 in wide, hole 1.03 in, of A36 (AISC Design Examples, D.7, from memory: yielding decides over rupture at 46.7)', () => {
    const plate = { t_e: 0.5 * inch, d_0: 1.03 * inch, c_e: 1.61 * inch, f_u: 58 * ksi };
    expect(at({ ...plate, f_y: 36 * ksi })).toBeCloseTo(45.8, 1);
    expect(at({ ...plate, f_y: 58 * ksi })).toBeCloseTo(46.7, 1);
  });

  it('gives 1497.7 kips for a lug of 3.15 in with cheeks of 5.594 in, F_u 85 ksi (a published worked sheet)', () => {
    expect(at({ t_e: 3.15 * inch, c_e: 5.594 * inch, d_0: 5.06 * inch, f_u: 85 * ksi, f_y: 85 * ksi })).toBeCloseTo(
      1497.7,
      0,
    );
  });

  it('counts no more of a cheek than 2 t + 16 mm', () => {
    const wide = { t_e: 0.01, d_0: 0.02, f_u: 400e6, f_y: 400e6 };
    expect(at({ ...wide, c_e: 0.1 }) * kip).toBeCloseTo(0.02 * 0.036 * 200e6, 6);
  });
});

describe('second opinion: ASME BTH-1-2008, 3-3.3.1, design factor and clearance left out', () => {
  const at = (change: Record<string, number>, safety: Safety = 'partial factors') =>
    valuesGiven(eyeNetTension, safety, {
      ...{ t_e: 0.02, c_e: 0.03, d_0: 0.03, f_y: 355e6, f_u: 470e6 },
      ...(safety === 'partial factors' ? { gamma_M0: 1 } : { Omega_J: 2, Omega_b: 1.67, b_16 }),
      ...change,
    });

  it('takes a cheek by its width, by 4 t, or by 0.6 F_u/F_y √(D_h/b_e) b_e (worked by hand)', () => {
    expect(at({ c_e: 0.01 }).F_high! / 1e3).toBeCloseTo(2 * 20 * 10 * 0.47, 9);
    expect(at({ t_e: 0.005 }).F_high! / 1e3).toBeCloseTo(2 * 5 * 20 * 0.47, 9);
    expect(at({}).b_B! * 1e3).toBeCloseTo(((0.6 * 470) / 355) * 30, 9);
    expect(at({ c_e: 0.06 }).b_B! / at({}).b_B!).toBeCloseTo(Math.SQRT2, 9);
    expect(at({ d_0: 0.06 }).b_B! * 1e3).toBeCloseTo(30, 9);
  });

  it('is above both standards for eyes as they are built: steel of EN 10025-2, plate not thinner than a third of the cheek, cheek up to 1.2 holes wide', () => {
    for (const [f_y, f_u] of [
      [235e6, 360e6],
      [275e6, 410e6],
      [355e6, 470e6],
      [345e6, 470e6],
    ] as const)
      for (const d_0 of [0.02, 0.04, 0.08])
        for (const cheek of [0.3, 0.5, 0.75, 1, 1.2])
          for (const thin of [1, 2, 3]) {
            const eye = { f_y, f_u, d_0, c_e: cheek * d_0, t_e: (cheek * d_0) / thin };
            for (const { F_Rd, F_high } of [at(eye), at(eye, 'allowable stress')])
              expect(F_Rd!, JSON.stringify(eye)).toBeLessThan(F_high!);
          }
  });

  it('stands against the EN rule where cheeks are wide or the plate is thin: one tears after the other, or dishes', () => {
    const wide = at({ c_e: 0.075 });
    expect(wide.F_Rd!).toBeGreaterThan(wide.F_high!);
    const thin = at({ t_e: 0.004 });
    expect(thin.F_Rd! / 1e3).toBeCloseTo(2 * 4 * 0.355 * 20, 9);
    expect(thin.F_high! / 1e3).toBeCloseTo(2 * 4 * 0.47 * 16, 9);
  });
});

describe('what the checks of eyes read from the model', () => {
  const model = demoModel();
  const down = situationOf(model, 'service-down');

  it('reads the pull along the leg', () => {
    expect(reads(eyeNetTension, 'F', model, 'S1', down)).toBe(down.legs.get('S1')!.tension);
  });

  it('takes half a millimetre off every face: eye 25 mm thick, hole 38, 60 mm to the edge, 180 mm wide', () => {
    const mm = (symbol: string, of = model) => Number((reads(eyeNetTension, symbol, of, 'S1') * 1e3).toFixed(9));
    expect([mm('t_e'), mm('d_0'), mm('c_e')]).toEqual([24, 39, 40]);
    const slim = demoModel({ grid: { suspension: { eye: { width: '100 mm' } } } });
    expect(mm('c_e', slim)).toBe(30);
    const thin = demoModel({ grid: { suspension: { eye: { thickness: '1 mm' } } } });
    expect(missingFrom(eyeNetTension, 't_e', thin, 'S1')).toMatch(/nothing of it is left/);
  });

  it('takes the strengths of its plate by thickness: S355 of 25 mm is 345 and 470 MPa (EN 10025-2)', () => {
    expect([reads(eyeNetTension, 'f_y', model, 'S1'), reads(eyeNetTension, 'f_u', model, 'S1')]).toEqual([
      345e6, 470e6,
    ]);
    const soft = demoModel({ grid: { suspension: { eye: { material: '5083-H116' } } } });
    expect(missingFrom(eyeNetTension, 'f_y', soft, 'S1')).toMatch(/eyes of/);
  });

  it('applies where something pulls, and cannot be judged where the pull is missing', () => {
    expect(eyeNetTension.applies(model, 'S1', down)).toBe(true);
    expect(eyeNetTension.applies(model, 'S1', situationOf(model, 'service-up'))).toMatch(/nothing pulls/);
    const { rows } = checkRows(eyeNetTension, model);
    expect(rows.find(({ loadCase }) => loadCase === 'lifting out')).toMatchObject({ verdict: 'cannot be judged' });
  });

  it('judges suspension and pad eyes, each with its own sizes', () => {
    const { suspension } = model.document.grid;
    const eye = {
      ...Object.fromEntries(
        Object.entries(suspension.eye).map(([key, value]) => [
          key,
          typeof value === 'string' ? value : 'typed' in value ? value.typed : value,
        ]),
      ),
      thickness: '30 mm',
    };
    const lifted = demoModel({
      grid: {
        padEyes: {
          points: [
            { id: 'P1', x: '0 m', y: '0 m' },
            { id: 'P2', x: '3.3 m', y: '2.6 m' },
          ],
          eye,
          apex: '3 m',
        },
      },
    });
    expect(eyeNetTension.places(lifted)).toEqual(['S1', 'S2', 'P1', 'P2']);
    expect(reads(eyeNetTension, 't_e', lifted, 'P1')).toBeCloseTo(0.029, 12);
  });
});

describe('what the checks of eyes share', () => {
  const others = [eyeTearOut, eyeBearing, eyeFoot, eyeWeld, eyeTubeWall];

  it.each(others.map((check) => [check.id, check] as const))('%s applies where something pulls', (_, check) => {
    const model = demoModel();
    expect(check.places(model)).toEqual(['S1', 'S2']);
    expect(check.applies(model, 'S1', situationOf(model, 'service-down'))).toBe(true);
    expect(check.applies(model, 'S1', situationOf(model, 'service-up'))).toMatch(/nothing pulls/);
  });

  it('takes the same number from the same place', () => {
    const shared = { ...eyeFoot.inputs, ...eyeTearOut.inputs, ...eyeNetTension.inputs };
    for (const [check, symbols] of [
      [eyeTearOut, ['F', 't_e', 'f_u', 'f_y', 'd_0']],
      [eyeBearing, ['F', 'f_u', 'f_y', 'd_0', 'd']],
      [eyeFoot, ['t_e', 'f_y']],
      [eyeWeld, ['F_z', 'F_l', 'F_q', 't_e', 'h_e']],
      [eyeTubeWall, ['F_z', 'F_l', 'F_q', 't_e', 'h_e', 'l_e']],
    ] as const)
      for (const symbol of symbols)
        expect(check.inputs[symbol]!.read, `${check.id} ${symbol}`).toBe(shared[symbol]!.read);
    expect(reads(eyeNetTension, 'b_16', demoModel({ basis: { table: 'AISC 360 ASD' } }), 'S1')).toBe(0.016);
  });
});
