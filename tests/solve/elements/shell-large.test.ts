import { describe, expect, it } from 'vitest';
import { shellGeometric } from '../../../core/solve/elements/shell-geometric.ts';
import { shellLarge } from '../../../core/solve/elements/shell-large.ts';
import { shellForces, shellRecovery } from '../../../core/solve/elements/shell-recovery.ts';
import { shellShape } from '../../../core/solve/elements/shell-shape.ts';
import { shellStiffness, shellUnits } from '../../../core/solve/elements/shell-stiffness.ts';

const material = { thickness: 0.1, E: 200, nu: 0.3 };
const shapes = [
  Float64Array.of(0, 0, 0, 1.1, 0.1, 0.3, 1.3, 0.9, 0.4, 0.2, 0.8, 0.1),
  Float64Array.of(0, 0, 0.1, 1.1, 0.1, 0, 0.3, 0.9, 0.2),
];
const some = (length: number, size: number): Float64Array =>
  Float64Array.from({ length }, (_, k) => size * Math.sin(3 * k + 1));
const largest = (v: ArrayLike<number>): number => Math.max(...Array.from(v, Math.abs));

describe('a shell in large deflection', () => {
  for (const xyz of shapes) {
    const n = 2 * xyz.length;
    const shell = shellLarge(xyz, material);

    it(`${n / 6} nodes: at rest its tangent is the linear stiffness and its force is nothing`, () => {
      const { force, tangent } = shell.respond(new Float64Array(n));
      expect(largest(force)).toBe(0);
      const K = shellStiffness(shellUnits(xyz, material), material.thickness);
      tangent.forEach((value, k) => expect(Math.abs(value - K[k]!)).toBeLessThan(1e-12 * largest(K)));
    });

    it(`${n / 6} nodes: its tangent is the derivative of its force (central differences, error h²)`, () => {
      const u = some(n, 0.1);
      const { tangent } = shell.respond(u);
      const h = 1e-5;
      for (let j = 0; j < n; j++) {
        const [up, down] = [u.slice(), u.slice()];
        up[j]! += h;
        down[j]! -= h;
        const [a, b] = [shell.respond(up).force, shell.respond(down).force];
        for (let i = 0; i < n; i++)
          expect(Math.abs((a[i]! - b[i]!) / (2 * h) - tangent[i * n + j]!)).toBeLessThan(1e-7 * largest(tangent));
      }
    });

    it(`${n / 6} nodes: stretched in its plane, its tangent has grown by just the geometric stiffness of that pull`, () => {
      const e1 = shellShape(xyz).axes.subarray(0, 3);
      const along = (i: number): number => 0.01 * [0, 1, 2].reduce((sum, k) => sum + e1[k]! * xyz[3 * i + k]!, 0);
      const u = Float64Array.from({ length: n }, (_, k) => (k % 6 < 3 ? along(Math.floor(k / 6)) * e1[k % 6]! : 0));
      const direction = [e1[0]!, e1[1]!, e1[2]!] as const;
      const N = shellForces(shellRecovery(xyz, material, direction), material.thickness, u);
      expect(N[0]! / ((0.01 * 200 * 0.1) / (1 - 0.3 ** 2))).toBeCloseTo(1, 10);
      const own = shellLarge(xyz, material, direction).membraneForces(u);
      own.forEach((value, k) =>
        expect(Math.abs(value - N[6 * Math.floor(k / 3) + (k % 3)]!)).toBeLessThan(1e-10 * N[0]!),
      );
      const [still, pulled] = [shell.respond(new Float64Array(n)).tangent, shell.respond(u).tangent];
      const geometric = shellGeometric(xyz, N, direction);
      pulled.forEach((value, k) =>
        expect(Math.abs(value - still[k]! - geometric[k]!)).toBeLessThan(1e-12 * largest(still)),
      );
      expect(largest(geometric)).toBeGreaterThan(1e-3 * largest(still));
    });
  }
});
