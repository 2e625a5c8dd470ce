import { describe, expect, it } from 'vitest';
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

describe('the patch of MacNeal & Harder (1985), meshed with distorted elements', () => {
  for (const triangles of [false, true])
    for (const [name, state] of Object.entries(states))
      it(`carries ${name} exactly with ${triangles ? 'three' : 'four'} nodes`, () => {
        const structure = patch(triangles);
        for (const n of [0, 1, 2, 3])
          state(...(corners[n] as [number, number])).forEach((value, k) => structure.hold(n, 'xyzXYZ'[k]!, value));
        const u = structure.solve();
        for (const n of [4, 5, 6, 7])
          state(...(corners[n] as [number, number])).forEach((value, k) =>
            expect(Math.abs(u[6 * n + k]! - value)).toBeLessThan(1e-9 * (k < 3 ? 2.4e-4 : 1e-3)),
          );
      });
});
