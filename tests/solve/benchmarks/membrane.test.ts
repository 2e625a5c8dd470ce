import { describe, expect, it } from 'vitest';
import { BenchStructure, shellGrid } from './support/bench-structure.ts';
import { refinement } from './support/refinement.ts';

/** Cook's tapered panel 48 × 44/16, E 1, nu 1/3, t 1, shear load 1 on its free side: sinking of that side's middle. */
function cook(n: number, triangles: boolean): number {
  const structure = new BenchStructure();
  const map = (s: number, t: number) => [48 * s, 44 * s * (1 - t) + (44 + 16 * s) * t, 0] as const;
  const { at } = shellGrid(structure, n, n, map, { thickness: 1, E: 1, nu: 1 / 3 }, triangles);
  for (let k = 0; k < (n + 1) ** 2; k++) structure.hold(k, 'zXY');
  for (let j = 0; j <= n; j++) {
    structure.hold(at(0, j), 'xyZ');
    structure.push(at(n, j), 'y', (j === 0 || j === n ? 0.5 : 1) / n);
  }
  return structure.solve()[6 * at(n, n / 2) + 1]!;
}

describe('membrane', () => {
  // 23.96 as published after R. D. Cook (1974); meshes of nine-node elements extrapolate to 23.965 (derived).
  it('Cook’s panel sinks 23.96 with quadrilaterals: within 2 % on 8 × 8', () => {
    const values = [2, 4, 8, 16, 32].map((n) => cook(n, false));
    const { errors, order, limit } = refinement('Cook, four nodes', [2, 4, 8, 16, 32], values, 23.965);
    expect(Math.abs(errors[2]!)).toBeLessThan(0.02);
    expect(Math.abs(errors[4]!)).toBeLessThan(2e-3);
    expect(Math.abs(limit / 23.965 - 1)).toBeLessThan(2e-3);
    expect(order).toBeGreaterThan(1);
  });

  it('and with triangles: within 4 % on 8 × 8', () => {
    const values = [4, 8, 16, 32].map((n) => cook(n, true));
    const { errors, limit } = refinement('Cook, three nodes', [4, 8, 16, 32], values, 23.965);
    expect(Math.abs(errors[1]!)).toBeLessThan(0.04);
    expect(Math.abs(errors[3]!)).toBeLessThan(5e-3);
    expect(Math.abs(limit / 23.965 - 1)).toBeLessThan(3e-3);
  });

  it('bends a rectangle in its plane at any aspect by M L/EI (beam theory): exactly at nu 0, within 2 % at nu 0.3', () => {
    for (const nu of [0, 0.3])
      for (const aspect of [1, 5, 20]) {
        const structure = new BenchStructure();
        const { at } = shellGrid(structure, 2, 1, (s, t) => [2 * aspect * s, t, 0], { thickness: 0.1, E: 1e7, nu });
        structure.hold(at(0, 0), 'xy');
        structure.hold(at(0, 1), 'x');
        for (let k = 0; k < 6; k++) structure.hold(k, 'zXY');
        structure.push(at(2, 0), 'x', 1);
        structure.push(at(2, 1), 'x', -1);
        const u = structure.solve();
        const turn = u[6 * at(2, 0)]! - u[6 * at(2, 1)]!;
        expect(Math.abs(turn / ((2 * aspect) / (1e7 * (0.1 / 12))) - 1)).toBeLessThan(nu ? 0.02 : 1e-9);
      }
  });
});
