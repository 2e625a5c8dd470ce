import { describe, expect, it } from 'vitest';
import { slidingPlate } from '../../../core/solve/sliding-plate.ts';
import { factoriser } from '../../../core/solve/solve-plate.ts';
import { largeNewton, type LargeAnswer } from '../../../core/solve/structure/large-newton.ts';
import { panelPart } from '../../../core/solve/structure/large-part.ts';
import { barePlate, edgesOf, heldAt } from './support/bare-plate.ts';

type Deflected = LargeAnswer & { readonly w: number };

const material = { thickness: 0.01, E: 210e9, nu: 0.3 };

/** A plate 1 × ratio under Q = q a⁴/(E t⁴): edges x and y held by the letters given; answers with w at the centre over t. */
function deflected(
  { n, ratio = 1, edges }: { n: number; ratio?: number; edges: readonly [string, string] },
  Q: number,
  steps = 1,
): Deflected {
  const m = Math.round(n * ratio);
  const plate = barePlate({ a: 1, b: ratio, n, m }, material);
  const nodes = (n + 1) * (m + 1);
  const [x0, x1, y0, y1] = edgesOf(plate);
  const slides = edges[0].includes('x') ? [] : ([[plate.at(n / 2, m / 2), 'xy'], [plate.at(0, m / 2), 'y']] as const); // prettier-ignore
  const held = heldAt(nodes, [
    ...[...x0, ...x1].map((node) => [node, edges[0]] as const),
    ...[...y0, ...y1].map((node) => [node, edges[1]] as const),
    ...slides,
  ]);
  const q = Q * material.E * material.thickness ** 4;
  const f = new Float64Array(6 * nodes);
  for (const { nodes: own, a, b } of plate.structure.shells) for (const k of own) f[6 * k + 2]! += (q * a * b) / 4;
  const part = panelPart(plate.structure, 0, held);
  const at = (whole: Float64Array): Float64Array =>
    Float64Array.from({ length: whole.length }, (_, i) => whole[6 * part.nodes[Math.floor(i / 6)]! + (i % 6)]!);
  const nothing = new Float64Array(f.length);
  const answer = largeNewton(part, { f: at(f), given: nothing, flat: nothing, steps, factorise: factoriser() });
  const centre = part.nodes.indexOf(plate.at(n / 2, m / 2));
  return { ...answer, w: answer.u[6 * centre + 2]! / material.thickness };
}

const clamped = ['xyzXYZ', 'xyzXYZ'] as const;
const hinged = ['xyzX', 'xyzY'] as const;
const sliding = ['zX', 'zY'] as const;

describe('large deflection of a square panel whose edges cannot move (S. Levy, NACA TR 737 and 740; digits from von Kármán Ritz at ν = 0.3, derived)', () => {
  for (const [title, edges, rows] of [
    [
      'clamped',
      clamped,
      [
        [1, 0.0138],
        [17.8, 0.2388],
        [63.4, 0.696],
        [184, 1.3091],
        [402, 1.867],
      ],
    ],
    [
      'hinged',
      hinged,
      [
        [1, 0.0442],
        [12.1, 0.4258],
        [99.4, 1.2603],
        [358, 2.0167],
      ],
    ],
  ] as const)
    // prettier-ignore
    it(title, () => {
      for (const [Q, target] of rows) {
        const steps = Math.ceil(Q / 100);
        const [coarse, fine] = [8, 16].map((n) => deflected({ n, edges }, Q, steps)) as [Deflected, Deflected];
        expect([fine.converged, fine.reached]).toEqual([true, 1]);
        expect(Math.abs(fine.w / target - 1)).toBeLessThan(0.015);
        // the digits printed, or half a per cent
        const limit = fine.w + (fine.w - coarse.w) / 3;
        expect(Math.abs(limit - target)).toBeLessThan(Math.max(5e-3 * target, 6e-5));
      }
    });

  it('comes nearer with the square of the mesh’s size', () => {
    const [a, b, c] = [4, 8, 16].map((n) => deflected({ n, edges: hinged }, 99.4).w) as [number, number, number];
    expect(Math.abs(c + (c - b) / 3 - 1.2603)).toBeLessThan(2e-3);
    expect(Math.log2(Math.abs(b - a) / Math.abs(c - b))).toBeGreaterThan(1.6);
  });
});

describe('large deflection of a panel whose edges may slide', () => {
  it('is that of von Kármán’s equations with a stress function clamped at its edges (T&WK, Theory of Plates and Shells, 2nd ed., art. 102)', () => {
    for (const [ratio, Q] of [[1, 40], [1, 150], [1.5, 40]] as const) {
      const { w, converged } = deflected({ n: 16, ratio, edges: sliding }, Q);
      const q = Q * material.E * material.thickness ** 4;
      const exact = slidingPlate({ a: 1, b: ratio, t: material.thickness, E: material.E, nu: material.nu, q }).deflection;
      expect(converged).toBe(true);
      expect(Math.abs(w / (exact / material.thickness) - 1)).toBeLessThan(0.01);
    }
  }); // prettier-ignore
});

describe('Newton’s method of a panel', () => {
  it('gives the same in one step and in many, and as much down as up', () => {
    const one = deflected({ n: 8, edges: hinged }, 99.4);
    const many = deflected({ n: 8, edges: hinged }, 99.4, 7);
    expect(Math.abs(many.w / one.w - 1)).toBeLessThan(1e-8);
    expect(deflected({ n: 8, edges: hinged }, -99.4).w).toBeCloseTo(-one.w, 10);
  });

  it('is linear for little load', () => {
    const small = deflected({ n: 8, edges: clamped }, 1e-3);
    expect(small.w / 1e-3).toBeCloseTo(deflected({ n: 8, edges: clamped }, 2e-3).w / 2e-3, 6);
  });
});
