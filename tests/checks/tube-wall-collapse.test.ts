import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { tubeWallCollapse } from '../../core/checks/tube-wall-collapse.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel } from './model-of.ts';

const given = { z: 40, rho: 1025, g: 9.80665, gamma_F: 1, f_y: 355e6, gamma_M1: 1.1, E: 210e9, nu: 0.3, round: 0, H: 0.2, B: 0.2, t: 0.008 }; // prettier-ignore
const at = (change: Partial<typeof given>) => valuesGiven(tubeWallCollapse, 'partial factors', { ...given, ...change });

it('crushes a wall 184 mm wide and 8 mm thick of 355 MPa at 2.684 MPa: 4 f t²/b² (three hinges, p b²/16 = f t²/4, worked by hand)', () => {
  expect(at({}).p_y! / 1e6).toBeCloseTo(2.684, 3);
  expect(at({}).p_c! / at({}).p_y!).toBeCloseTo(1, 5);
  expect(at({}).p_Rd! / 1e6).toBeCloseTo(2.684 / 1.1, 3);
});

it('buckles a round tube of 1 in 50 at 2 E/(1 − ν²) (t/D)³ = 3.69 MPa by mid-wall diameter (Timoshenko & Gere, from memory), less by its yield', () => {
  const { p_e, p_y, p_c } = at({ round: 1, H: 0.51, B: 0.51, t: 0.01 });
  expect(p_e! / 1e6).toBeCloseTo((2 * 210e3 * (1 / 50) ** 3) / 0.91, 6);
  expect(p_e! / 1e6).toBeCloseTo(3.69, 2);
  expect(p_y! / 1e6).toBeCloseTo(13.92, 2);
  expect(1 / p_c!).toBeCloseTo(1 / p_e! + 1 / p_y!, 12);
});

it('lies between its bounds for thick and thin, flat and round', () => {
  for (const round of [0, 1])
    for (const t of [0.003, 0.006, 0.0125])
      for (const H of [0.1, 0.2, 0.4]) {
        const { p_low, p_c, p_high } = at({ round, t, H, B: round ? H : 0.2 });
        expect([p_low! <= p_c!, p_c! <= p_high!]).toEqual([true, true]);
      }
});

it('falls with depth for sealed tubes, and leaves flooded ones alone', () => {
  const uses = [20, 40].map((depth) => {
    const model = demoModel({ grid: { mainTubes: { flooding: 'sealed' } }, water: { depth: `${depth} m` } });
    const judged = checkRows(tubeWallCollapse, model).rows.filter(({ verdict }) => verdict !== 'not applicable');
    expect(new Set(judged.map(({ place }) => place))).toEqual(new Set(model.geometry.mainTubes.map(({ id }) => id)));
    return judged[0]!.utilisation!;
  });
  expect(uses[1]! / uses[0]!).toBeGreaterThan(1.99);
  expect(uses[1]! / uses[0]!).toBeLessThan(2.01);
});
