import { describe, expect, it } from 'vitest';
import { shellMass } from '../../../core/solve/elements/shell-mass.ts';
import { lowestEigenvalues } from './support/lowest-eigenvalues.ts';
import { PlateUnderTest } from './support/plate-under-test.ts';
import { refinement } from './support/refinement.ts';

/** ω a² √(ρt/D) of the first `count` modes of a whole plate 1 × b on n × n elements. */
function modes(n: number, { b = 1, edges, count }: { b?: number; edges: '' | 'z' | 'zXY'; count: number }): number[] {
  const plate = new PlateUnderTest(n, { b, whole: true });
  for (let i = 0; i <= n; i++)
    for (const [node, along] of [
      [plate.at(0, i), 'X'],
      [plate.at(n, i), 'X'],
      [plate.at(i, 0), 'Y'],
      [plate.at(i, n), 'Y'],
    ] as const)
      plate.hold(node, edges === 'z' ? `z${along}` : edges);
  const thickness = plate.material.thickness;
  const M = plate.elements.map(({ nodes }) => {
    const diagonal = shellMass(plate.coordinates(nodes), { thickness, massPerArea: 1 });
    const stiffness = new Float64Array(576);
    diagonal.forEach((value, k) => (stiffness[25 * k] = value));
    return { nodes, stiffness };
  });
  const rigid = edges === '' ? 3 : 0;
  const held = new Set(plate.held.keys());
  const λ = lowestEigenvalues(plate.elements, M, {
    size: plate.size,
    held,
    count: count + rigid,
    shift: rigid ? 50 : 0,
  });
  return λ.slice(rigid).map(Math.sqrt);
}

describe('natural modes of thin plates: ω a² √(ρt/D) as A. W. Leissa, J. Sound Vib. 31 (1973) 257 (digits from Legendre Ritz)', () => {
  for (const [title, edges, b, targets] of [
    ['free square', '', 1, [13.468, 19.596, 24.27, 34.801, 34.801]],
    ['free 1 × 1.5', '', 1.5, [8.931, 9.517, 20.599, 22.182]],
    ['clamped square', 'zXY', 1, [35.985, 73.394, 73.394, 108.217]],
    ['hinged square', 'z', 1, [19.739, 49.348, 49.348, 78.957]],
    ['hinged 1 × 1.5', 'z', 1.5, [14.256, 27.416]],
  ] as const)
    it(title, () => {
      const meshes = [6, 12, 24];
      const values = meshes.map((n) => modes(n, { b, edges, count: targets.length }));
      targets.forEach((target, k) => expect(Math.abs(values[2]![k]! / target - 1)).toBeLessThan(0.01));
      // Of the first mode: the extrapolated value meets the printed digits.
      const first = refinement(
        `${title}, first`,
        meshes,
        values.map((v) => v[0]!),
        targets[0],
      );
      expect(Math.abs(first.limit / targets[0] - 1)).toBeLessThan(1e-3);
      expect(first.order).toBeGreaterThan(1.7);
    });
});
