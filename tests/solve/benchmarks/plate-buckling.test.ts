import { describe, expect, it } from 'vitest';
import { shellGeometric } from '../../../core/solve/elements/shell-geometric.ts';
import { lowestEigenvalues } from './support/lowest-eigenvalues.ts';
import { PlateUnderTest } from './support/plate-under-test.ts';
import { refinement } from './support/refinement.ts';

type Edge = 'hinged' | 'clamped' | 'free';

/** k in N = k π² D/a² of a whole plate 1 × b under the forces N; a = 1 is the side that carries the load in compression
 *  (load along y, edges y = 0 and b hinged unless told). */
function buckling(
  n: number,
  b: number,
  N: readonly number[],
  sides: readonly [Edge, Edge],
  ends: Edge = 'hinged',
): number {
  const plate = new PlateUnderTest(n, { b, whole: true });
  const hold = (node: number, edge: Edge, along: string): void => {
    if (edge !== 'free') plate.hold(node, edge === 'clamped' ? 'zXY' : `z${along}`);
  };
  for (let i = 0; i <= n; i++) {
    hold(plate.at(0, i), sides[0], 'X');
    hold(plate.at(n, i), sides[1], 'X');
    hold(plate.at(i, 0), ends, 'Y');
    hold(plate.at(i, n), ends, 'Y');
  }
  const Kg = plate.elements.map(({ nodes }) => ({ nodes, stiffness: shellGeometric(plate.coordinates(nodes), N) }));
  const held = new Set(plate.held.keys());
  const [λ] = lowestEigenvalues(plate.elements, Kg, { size: plate.size, held, count: 1 });
  return λ! / Math.PI ** 2;
}

describe('buckling of thin plates: k in N = k π² D/b²', () => {
  for (const [title, b, sides, target] of [
    ['hinged all round, square', 1, ['hinged', 'hinged'], 4],
    ['unloaded sides clamped, a/b 0.661', 0.661, ['clamped', 'clamped'], 6.9709],
    ['one unloaded side clamped, a/b 0.795', 0.795, ['clamped', 'hinged'], 5.4097],
    ['one unloaded side free, square', 1, ['hinged', 'free'], 1.4016],
    ['one clamped, one free, a/b 1.638', 1.638, ['clamped', 'free'], 1.28035],
  ] as const)
    it(`in compression, ${title}: ${target} (Timoshenko & Gere, Theory of Elastic Stability, ch. 9; digits from the strip’s determinant)`, () => {
      const meshes = [6, 12, 24];
      const r = refinement(
        `buckling, ${title}`,
        meshes,
        meshes.map((n) => buckling(n, b, [0, 1, 0], sides)),
        target,
      );
      expect(Math.abs(r.errors[2]!)).toBeLessThan(5e-3);
      expect(Math.abs(r.limit / target - 1)).toBeLessThan(1e-3);
      expect(r.order).toBeGreaterThan(1.7);
    });

  it('in shear, square: 5.34 + 4 hinged, 8.98 + 5.60 clamped (EN 1993-1-5, A.3, and its clamped companion, from memory; within 1 %)', () => {
    for (const [edge, target] of [
      ['hinged', 9.34],
      ['clamped', 14.58],
    ] as const) {
      const meshes = [6, 12, 24];
      const values = meshes.map((n) => buckling(n, 1, [0, 0, 1], [edge, edge], edge));
      const r = refinement(`buckling in shear, ${edge}`, meshes, values, target);
      expect(Math.abs(r.errors[2]!)).toBeLessThan(0.01);
    }
  });
});
