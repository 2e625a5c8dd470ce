import { expect, it } from 'vitest';
import { tubeWallPressure } from '../../core/checks/tube-wall-pressure.ts';
import { valuesGiven } from '../checks/bolt-values.ts';
import { BenchStructure, shellGrid } from './benchmarks/support/bench-structure.ts';

const [E, nu, t, width] = [210e9, 0.3, 0.002, 0.01];

/** A quarter of a closed tube of clear sides b (up and down) and h, as shells in plane strain: how far the middles of both walls go in under 1 kPa. */
function shells(b: number, h: number, n = 40): readonly [top: number, side: number] {
  const structure = new BenchStructure();
  const corner = Math.round((n * b) / (b + h));
  const at = (i: number): readonly [number, number] =>
    i <= corner ? [((i / corner) * b) / 2, h / 2] : [b / 2, ((1 - (i - corner) / (n - corner)) * h) / 2];
  shellGrid(structure, n, 1, (s, y) => { const [x, z] = at(Math.round(s * n)); return [x, y * width, z]; }, { thickness: t, E, nu }); // prettier-ignore
  const node = (i: number, j: number): number => 2 * i + j;
  for (let i = 0; i <= n; i++)
    for (const j of [0, 1]) {
      structure.hold(node(i, j), 'yXZ');
      if (i === 0) structure.hold(node(i, j), 'xY');
      if (i === n) structure.hold(node(i, j), 'zY');
      if (i === n) continue;
      // Each element's pressure goes half to either end, square to its own wall.
      const length = Math.hypot(at(i + 1)[0] - at(i)[0], at(i + 1)[1] - at(i)[1]);
      for (const end of [i, i + 1]) structure.push(node(end, j), i < corner ? 'z' : 'x', (-1e3 * length * width) / 4);
    }
  const u = structure.solve();
  return [-u[6 * node(0, 0) + 2]!, -u[6 * node(n, 0)]!];
}

it.each([
  [0.2, 0.2],
  [0.2, 0.1],
  [0.2, 0.15],
])('the wall of a sealed tube %s by %s m bends in as shells of the whole ring do', (b, h) => {
  const given = { round: 0, B: b + 2 * t, H: h + 2 * t, t, E, nu, p: 1e3 };
  const { w_m, m_c } = valuesGiven(tubeWallPressure, 'partial factors', given);
  const [top, side] = shells(b, h);
  expect(Math.abs(top / w_m! - 1)).toBeLessThan(0.005);
  // The smaller wall by the same moments at its ends.
  const D = (E * t ** 3) / (12 * (1 - nu ** 2));
  const smaller = ((5 * 1e3 * h ** 4) / 384 - (m_c! * h ** 2) / 8) / D;
  expect(Math.abs(side - smaller)).toBeLessThan(0.005 * w_m!);
});
