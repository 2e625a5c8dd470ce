import { describe, expect, it } from 'vitest';
import { slidingPlate } from '../../../core/solve/sliding-plate.ts';
import { factoriser } from '../../../core/plate/solve-plate.ts';
import {
  largeForces,
  largeNewton,
  linearForces,
  type LargeAnswer,
} from '../../../core/solve/structure/large-newton.ts';
import { largePanels } from '../../../core/plate/large-panel.ts';
import { gathered, panelPart } from '../../../core/plate/large-part.ts';
import { ready, sampleModel, solvedLoading } from '../../plate/results/support/solved-sample.ts';
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

describe('a flat panel pressed in its plane', () => {
  it('is balanced up to k π² D/b² and no further: k = 4 hinged (Timoshenko & Gere, Theory of Elastic Stability, 2nd ed., art. 9.2)', () => {
    const n = 12;
    const plate = barePlate({ a: 1, b: 1, n, m: n }, material);
    const nodes = (n + 1) ** 2;
    const [x0, x1, y0, y1] = edgesOf(plate);
    const held = heldAt(nodes, [
      ...[...x0, ...x1, ...y0, ...y1].map((node) => [node, 'z'] as const),
      [plate.at(0, 0), 'xy'],
      [plate.at(n, 0), 'y'],
    ]);
    const D = (material.E * material.thickness ** 3) / (12 * (1 - material.nu ** 2));
    const critical = 4 * Math.PI ** 2 * D;
    const run = (N: number): LargeAnswer => {
      const f = new Float64Array(6 * nodes);
      for (const [edge, sign] of [[x0, 1], [x1, -1]] as const)
        edge.forEach((node, k) => (f[6 * node]! += (sign * N * (k % n === 0 ? 0.5 : 1)) / n)); // prettier-ignore
      const part = panelPart(plate.structure, 0, held);
      const still = new Float64Array(f.length);
      return largeNewton(part, { f: gathered(part, f), given: still, flat: still, steps: 1, factorise: factoriser() });
    };
    expect(run(0.95 * critical)).toMatchObject({ converged: true, reached: 1 });
    const beyond = run(1.5 * critical);
    expect(beyond).toMatchObject({ converged: false, stopped: 'tangent' });
    expect(Math.abs(beyond.reached * 1.5 - 1)).toBeLessThan(0.02);
  });
});

describe('panels of a plate beyond small deflections', () => {
  const model = (times: number) =>
    sampleModel('small', (raw) => {
      const { service } = (raw as unknown as { loads: { service: { force: string } } }).loads;
      const [value, unit] = service.force.split(' ') as [string, string];
      service.force = `${times * Number(value)} ${unit}`;
    });
  const solve = (times: number, situation: string, settings: { beyond?: number; most?: number } = {}) => {
    const plate = ready(model(times), 0.2);
    const solved = solvedLoading(plate, situation);
    expect(solved.answer.settled).toBe(true);
    const steps = largePanels(plate, solved, settings);
    for (;;) {
      const next = steps.next();
      if (next.done) return { plate, solved, large: next.value };
    }
  };

  it('are left as they are while they dip by less than half their thickness', () => {
    const { solved, large } = solve(1, 'service-down');
    expect(large.panels).toEqual([]);
    expect(large.solved).toBe(solved);
    expect(large.converged).toBe(true);
  });

  it('are near the linear answer under little load, and nearer under less', () => {
    const off = [1, 0.5].map((times) => {
      const { large } = solve(times, 'service-up', { beyond: 0 });
      expect(large.converged).toBe(true);
      expect(large.panels).toHaveLength(3);
      return Math.max(...large.panels.map((panel) => Math.abs(panel.large! / panel.linear - 1)));
    }) as [number, number];
    expect(off[0]).toBeLessThan(0.03);
    expect(off[1]).toBeLessThan(off[0]);
  });

  it('balance every node: panels with their stretch, tubes, bolts and contact as they are', () => {
    const { plate, large } = solve(40, 'service-up');
    expect(large.converged).toBe(true);
    expect(large.panels.map(({ id }) => id)).toEqual(['A1', 'A2', 'A3']);
    const { structure, elements } = plate;
    const { u, closed, pressing, settled } = large.solved.answer;
    const { coordinates, beams, panels } = structure;
    const rest = Float64Array.from(large.outer, (value) => -value);
    linearForces(coordinates, elements.slice(0, beams.length), u).forEach((value, i) => (rest[i]! += value));
    const flat = large.flat;
    panels.forEach((_, k) => {
      const part = panelPart(structure, k);
      const { force } = largeForces(part, gathered(part, u), gathered(part, flat));
      force.forEach((value, i) => (rest[6 * part.nodes[Math.floor(i / 6)]! + (i % 6)]! += value));
    });
    const most = Math.max(...large.outer.map(Math.abs));
    expect(Math.max(...rest.map(Math.abs)) / most).toBeLessThan(2e-6);
    // pulled off their tubes they hang on their bolts and stretch: less than by small deflections
    for (const panel of large.panels) expect(panel.large).toBeLessThan(panel.linear);
    expect(large.panels[0]!.cells).toHaveLength(30 * (panels[0]!.shells[1] - panels[0]!.shells[0]));
    // contact presses, and keeps its word
    expect(settled).toBe(true);
    pressing.forEach((force, i) => expect(closed[i] ? force > 0 : force === 0).toBe(true));
    // the outer ones are each other's mirror
    expect(large.panels[0]!.large! / large.panels[2]!.large!).toBeCloseTo(1, 5);
  });

  it('say so when panels and tubes were not brought into balance', () => {
    const { large } = solve(40, 'service-up', { most: 2 });
    expect(large.converged).toBe(false);
    expect(large.solved.answer.settled).toBe(false);
    expect(large.unbalanced).toBeGreaterThan(1e-6);
    expect(large.findings.map(({ id }) => id)).toContain('large-deflection-not-converged');
    expect(large.findings[0]!.text).toMatch(/after 2 rounds panels and tubes were still out of balance by/);
  });

  it('ask for contact that has settled', () => {
    const plate = ready(model(1), 0.2);
    const linear = solvedLoading(plate, 'service-up', { stage: 'linear' });
    expect(() => largePanels(plate, linear).next()).toThrow(/contact that has settled/);
  });
});
