import { describe, expect, it } from 'vitest';
import { shellForces, shellRecovery } from '../../../core/solve/elements/shell-recovery.ts';
import { BenchStructure } from './support/bench-structure.ts';

/** The patch of MacNeal & Harder, Finite Elements in Analysis and Design 1 (1985) 3: 0.24 × 0.12, t 0.001. */
const material = { thickness: 0.001, E: 1e6, nu: 0.25 };
const corners = [
  [0, 0],
  [0.24, 0],
  [0.24, 0.12],
  [0, 0.12],
  [0.04, 0.02],
  [0.18, 0.03],
  [0.16, 0.08],
  [0.08, 0.08],
] as const;
const quads = [
  [0, 1, 5, 4],
  [1, 2, 6, 5],
  [2, 3, 7, 6],
  [3, 0, 4, 7],
  [4, 5, 6, 7],
];

function patch(triangles: boolean): BenchStructure {
  const structure = new BenchStructure();
  for (const [x, y] of corners) structure.node(x, y);
  for (const [a, b, c, d] of quads)
    for (const nodes of triangles
      ? [
          [a!, b!, c!],
          [a!, c!, d!],
        ]
      : [[a!, b!, c!, d!]])
      structure.shell(nodes, material);
  return structure;
}

/** ux uy uz rx ry rz of the two states at (x, y). */
const states = {
  'constant strain': (x: number, y: number) => [1e-3 * (x + y / 2), 1e-3 * (y + x / 2), 0, 0, 0, 0],
  'constant curvature': (x: number, y: number) => [
    0,
    0,
    (1e-3 * (x * x + x * y + y * y)) / 2,
    1e-3 * (y + x / 2),
    -1e-3 * (x + y / 2),
    0,
  ],
};

/** Nx Ny Nxy Mx My Mxy: stresses 1333.33, 1333.33, 400 over t; moments of a hollow upward press the top, so minus. */
const forces = {
  'constant strain': [1.3333333333, 1.3333333333, 0.4, 0, 0, 0],
  'constant curvature': [0, 0, 0, -1.1111111111e-7, -1.1111111111e-7, -3.3333333333e-8],
};

describe('the patch of MacNeal & Harder (1985), meshed with distorted elements', () => {
  for (const triangles of [false, true])
    for (const name of ['constant strain', 'constant curvature'] as const)
      it(`carries ${name} exactly with ${triangles ? 'three' : 'four'} nodes`, () => {
        const state = states[name];
        const structure = patch(triangles);
        for (const n of [0, 1, 2, 3])
          state(...(corners[n] as [number, number])).forEach((value, k) => structure.hold(n, 'xyzXYZ'[k]!, value));
        const u = structure.solve();
        for (const n of [4, 5, 6, 7])
          state(...(corners[n] as [number, number])).forEach((value, k) =>
            expect(Math.abs(u[6 * n + k]! - value)).toBeLessThan(1e-9 * (k < 3 ? 2.4e-4 : 1e-3)),
          );
        for (const { nodes } of structure.elements) {
          const own = Float64Array.from(nodes.flatMap((n) => [...u.subarray(6 * n, 6 * n + 6)]));
          const found = shellForces(shellRecovery(structure.coordinates(nodes), material), material.thickness, own);
          const scale = name === 'constant strain' ? 1.4 : 1.2e-7;
          found.forEach((value, k) => expect(Math.abs(value - forces[name][k % 6]!)).toBeLessThan(1e-8 * scale));
        }
      });
});
