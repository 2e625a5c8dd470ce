import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { fatigueReport } from '../../core/checks/fatigue-report.ts';
import { fatigueSealedWall } from '../../core/checks/fatigue-sealed-wall.ts';
import { tubeWallPressure } from '../../core/checks/tube-wall-pressure.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel } from './model-of.ts';

/** Curve F free to corrode, log a = 11.378, slope 3 (DNV-RP-C203, Table 2-4). */
const curveF = {
  S_k: (10 ** 11.378 / 1e7) ** (1 / 3) * 1e6,
  N_k: 1e7,
  m_1: 3,
  m_2: 3,
  t_d: 0.008,
  t_ref: 0.025,
  k_x: 0.25,
};
const wall = { z: 50, rho: 1025, g: 9.80665, gamma_F: 1, round: 0, H: 0.2, B: 0.2, t: 0.008, sigma_C: 71e6, DFF: 10 };

it('200 × 200 × 8 sealed at 50 m: 139.2 MPa each time; 96 deployments and a million waves of 1 m amplitude: 0.00108 + 0.00072 (closed frame p b²/12, Miner; worked by hand)', () => {
  const got = valuesGiven(fatigueSealedWall, 'partial factors', { ...curveF, ...wall, z_m: 1, n_eq: 96, n_s: 1e6 });
  expect(got.sigma_r! / 1e6).toBeCloseTo(139.22, 2);
  expect(got.k_s).toBeCloseTo(0.04, 12);
  expect(got.D_d).toBeCloseTo(0.0010848, 7);
  expect(got.D_h).toBeCloseTo(0.00072316, 7);
  expect(got.D).toBeCloseTo(0.001808, 7);
});

it('the range is the stress of the strength check without its load factor', () => {
  const { gamma_F, sigma_C: _class, DFF: _factor, ...same } = wall;
  const strength = valuesGiven(tubeWallPressure, 'partial factors', { ...same, gamma_F, f_y: 355e6, gamma_M0: 1 });
  const fatigue = valuesGiven(fatigueSealedWall, 'partial factors', { ...curveF, ...wall, z_m: 0, n_eq: 1, n_s: 1 });
  expect(fatigue.sigma_r).toBe(strength.sigma);
});

it('counts a deployment a month where the document says nothing of recovery; flooded tubes have none', () => {
  const sealed = { grid: { mainTubes: { flooding: 'sealed' } } };
  const used = (life: string) => {
    const model = demoModel(sealed, { basis: { life } });
    const rows = checkRows(fatigueSealedWall, model).rows.filter(({ verdict }) => verdict !== 'not applicable');
    expect(new Set(rows.map(({ place }) => place))).toEqual(new Set(model.geometry.mainTubes.map(({ id }) => id)));
    expect(fatigueReport(model, rows).details[0]).toMatchObject({ damageApart: null, category: 71 });
    return {
      of: rows[0]!.demand!,
      deployments: fatigueSealedWall.inputs.n_eq!.read(model, rows[0]!.place, model.loads.swing.up),
    };
  };
  expect(used('10 year').deployments).toBe(120);
  expect(used('20 year').of / used('10 year').of).toBeCloseTo(2, 9);
  expect(checkRows(fatigueSealedWall, demoModel()).rows.every(({ verdict }) => verdict === 'not applicable')).toBe(
    true,
  );
});
