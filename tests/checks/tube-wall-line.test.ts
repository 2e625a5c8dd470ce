import { expect, it } from 'vitest';
import { kernelRegistry } from '../../core/checks/kernels.ts';
import { tubeWallLine } from '../../core/checks/tube-wall-line.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads, situationOf } from './model-of.ts';
import { tubeBending } from '../../core/checks/tube-bending.ts';

// A wall 100 wide and 5 thick: clear width 90 mm, under 5 N/mm.
const wall = { q: 5e3, B: 0.1, t: 0.005, f_y: 355e6, n_l: 1, gamma_M0: 1 };
const at = (change: Record<string, number>) => valuesGiven(tubeWallLine, 'partial factors', { ...wall, ...change });

it('bends the wall as a simple beam with the load at its middle, q b/4 (beam tables)', () => {
  expect(at({ l_1: 0.05 }).m_w).toBeCloseTo((5e3 * 0.09) / 4, 9);
  expect(at({ l_1: 0.05 }).m_w).toBeCloseTo(
    kernelRegistry['wall.line.hinged.moment']!.run(0.09, 0.005, 210e9, 0.3, 5e3),
    9,
  );
  expect(at({ l_1: 0.05 }).sigma! / 1e6).toBeCloseTo(27, 9);
  expect(at({ l_1: 0.08 }).sigma! / 1e6).toBeCloseTo(27, 9);
});

it('gives q a b/l with the line 20 mm from the web, q a with a line on each side (beam tables)', () => {
  expect(at({ l_1: 0.025 }).sigma! / 1e6).toBeCloseTo((6 * 5 * 20 * 70) / 90 / 25, 9);
  expect(at({ l_1: 0.025, n_l: 2 }).sigma! / 1e6).toBeCloseTo((6 * 5 * 20) / 25, 9);
  expect(at({ l_1: 0.005 }).sigma).toBe(0);
  expect(at({ l_1: 0.003 }).sigma).toBe(0);
});

it('lies above the moment of a strip with fixed ends, q a b²/l² (beam tables), and below two lines at the middle', () => {
  for (const n_l of [1, 2])
    for (let l_1 = 0.005; l_1 <= 0.06; l_1 += 0.005) {
      const { sigma, sigma_low, sigma_high } = at({ l_1, n_l });
      expect(sigma!).toBeGreaterThanOrEqual(sigma_low! - 1e-6);
      expect(sigma!).toBeLessThanOrEqual(sigma_high! + 1e-6);
    }
  expect(at({ l_1: 0.025 }).sigma_low! / 1e6).toBeCloseTo((6 * 5 * 20 * 70 ** 2) / 90 ** 2 / 25, 9);
  expect(at({ l_1: 0.025, n_l: 2 }).sigma_high! / 1e6).toBeCloseTo(54, 9);
});

it('allows f_y/γ_M0, or F_y/1.67', () => {
  expect(at({ gamma_M0: 1.1 }).sigma_Rd! / 1e6).toBeCloseTo(322.73, 2);
  expect(valuesGiven(tubeWallLine, 'allowable stress', { f_y: 355e6, Omega_b: 1.67 }).sigma_Rd! / 1e6).toBeCloseTo(
    212.57,
    2,
  );
});

it('reads lap, lines and force from the model', () => {
  const model = demoModel();
  const situation = situationOf(model, 'service-down');
  expect(reads(tubeWallLine, 'l_1', model, 'A')).toBeCloseTo(0.06, 9);
  expect(reads(tubeWallLine, 'n_l', model, 'A')).toBe(1);
  expect(reads(tubeWallLine, 'n_l', model, 'B')).toBe(2);
  expect(reads(tubeWallLine, 'q', model, 'A', situation)).toBe(situation.tubes.get('A')!.wallLine);
  expect(tubeWallLine.applies(model, 'A', situation)).toBe(true);
  const open = demoModel({ panels: { A1: null, B1: null } });
  expect(tubeWallLine.applies(open, '1', situationOf(open))).toMatch(/no panel/);
});

it('has no rule for a round tube', () => {
  const round = demoModel({ grid: { mainTubes: { section: 'CHS 168.3x6.3 hot' } } });
  expect(missingFrom(tubeWallLine, 'l_1', round, 'A')).toMatch(/round tube/);
});

it('takes the wall from where bending takes it', () => {
  for (const symbol of ['B', 't', 'f_y'])
    expect(tubeWallLine.inputs[symbol]!.read, symbol).toBe(tubeBending.inputs[symbol]!.read);
});
