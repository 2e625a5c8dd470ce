import { describe, expect, it } from 'vitest';
import { factorise } from '../../../core/solve/sparse/factorise.ts';
import { panelBuckling, type PanelBuckling } from '../../../core/plate/buckling-of-panels.ts';
import {
  geometricElements,
  structureBuckling,
  type BucklingSet,
} from '../../../core/solve/structure/buckling-of-structure.ts';
import { modeSupport } from '../../../core/solve/structure/modes-support.ts';
import { partElements } from '../../../core/solve/structure/part-elements.ts';
import type { ReadyPlate, SolvedLoading } from '../../../core/plate/solve-plate.ts';
import { ready, sampleModel, solvedLoading } from '../../plate/results/support/solved-sample.ts';
import { bareGrid, shs100x5 } from './support/bare-grid.ts';
import { barePlate, edgesOf, heldAt, solvedWith, type BarePlate } from './support/bare-plate.ts';

const { PI: π } = Math;
const material = { thickness: 0.005, E: 210e9, nu: 0.3 };
const D = (material.E * material.thickness ** 3) / (12 * (1 - material.nu ** 2));

function end<T>(steps: Generator<number, T>): T {
  for (;;) {
    const next = steps.next();
    if (next.done) return next.value;
  }
}

/** Nodal forces of Nx Ny Nxy on the edges, N/m. */
function pulled(plate: BarePlate, [Nx, Ny, Nxy]: readonly [number, number, number]): Float64Array {
  const { structure } = plate;
  const [a, b] = [structure.panels[0]!.xs.at(-1)!, structure.panels[0]!.ys.at(-1)!];
  const f = new Float64Array(2 * structure.coordinates.length);
  const [x0, x1, y0, y1] = edgesOf(plate);
  const lay = (edge: readonly number[], length: number, x: number, y: number): void =>
    edge.forEach((node, k) => {
      const share = (length / (edge.length - 1)) * (k === 0 || k === edge.length - 1 ? 0.5 : 1);
      f[6 * node]! += share * x;
      f[6 * node + 1]! += share * y;
    });
  lay(x0, b, -Nx, -Nxy);
  lay(x1, b, Nx, Nxy);
  lay(y0, a, -Nxy, -Ny);
  lay(y1, a, Nxy, Ny);
  return f;
}

/** Factors of a plate whose edges x = 0, a, y = 0, b are hinged (z), clamped (zXY) or free, loads solved first. */
function buckling(
  size: Parameters<typeof barePlate>[0],
  edges: readonly [string, string, string, string],
  N: readonly [number, number, number],
  count = 1,
): BucklingSet {
  const plate = barePlate(size, material);
  const nodes = plate.structure.coordinates.length / 3;
  const all = Array.from({ length: nodes }, (_, k) => k);
  const corner = [plate.at(0, 0), plate.at(plate.n, 0)] as const;
  // in the plane: held as a free plate, so that the loads alone make the stress
  const inPlane = [[corner[0], 'xy'], [corner[1], 'y']] as const; // prettier-ignore
  const u = solvedWith(plate, heldAt(nodes, [...inPlane, ...all.map((k) => [k, 'zXY'] as const)]), pulled(plate, N));
  const list = edgesOf(plate).flatMap((edge, e) => edge.map((node) => [node, edges[e]!] as const));
  const support = modeSupport(plate.structure, plate.elements, (system) => factorise(system), {
    held: heldAt(nodes, [...inPlane, ...list]),
  });
  expect(support.rigid).toHaveLength(0);
  return end(structureBuckling(support, geometricElements(plate, u), count));
}

describe('buckling of a plate under the stress that was solved: k in N = k π² D/b² (S. P. Timoshenko & J. M. Gere, Theory of Elastic Stability, 2nd ed., ch. 9; digits from the strip’s determinant)', () => {
  const unit = (π ** 2 * D) / 0.5 ** 2;
  for (const [title, a, edges, k] of [
    ['hinged, a/b = 1', 0.5, ['z', 'z', 'z', 'z'], 4],
    ['hinged, a/b = 2: two half waves', 1, ['z', 'z', 'z', 'z'], 4],
    ['sides clamped, a/b = 0.661', 0.3305, ['z', 'z', 'zXY', 'zXY'], 6.9709],
    ['one side clamped, a/b = 0.795', 0.3975, ['z', 'z', 'zXY', 'z'], 5.4097],
    ['one side free, a/b = 2', 1, ['z', 'z', 'z', ''], 0.66814],
    ['one side clamped, one free, a/b = 1.638', 0.819, ['z', 'z', 'zXY', ''], 1.28035],
  ] as const)
    it(title, () => {
      const coarse = buckling({ a, b: 0.5, n: 10, m: 8 }, edges, [-100e3, 0, 0]);
      const fine = buckling({ a, b: 0.5, n: 20, m: 16 }, edges, [-100e3, 0, 0]);
      const [rough, better] = [coarse, fine].map(({ modes }) => (modes[0]!.factor * 100e3) / unit) as [number, number];
      expect(fine.converged).toBe(true);
      expect(fine.modes[0]!.most).toMatchObject({ kind: 'panel', id: 'P' });
      expect(Math.abs(better / k - 1)).toBeLessThan(0.012);
      expect(Math.abs((better + (better - rough) / 3) / k - 1)).toBeLessThan(2e-3);
    });

  it('in shear: 5.34 + 4 (b/a)² hinged (fit, within 1 %; from memory), the same for either sign', () => {
    const shear = (N: number): number => (buckling({ a: 0.5, b: 0.5, n: 20, m: 20 }, ['z', 'z', 'z', 'z'], [0, 0, N]).modes[0]!.factor * 100e3) / unit;
    expect(Math.abs(shear(100e3) / 9.34 - 1)).toBeLessThan(0.015);
    expect(Math.abs(shear(100e3) / shear(-100e3) - 1)).toBeLessThan(1e-9);
  }); // prettier-ignore

  it('in compression both ways: half of that one way; pulled, it never does', () => {
    const size = { a: 0.5, b: 0.5, n: 12, m: 12 };
    const edges = ['z', 'z', 'z', 'z'] as const;
    const one = buckling(size, edges, [-100e3, 0, 0]).modes[0]!.factor;
    const two = buckling(size, edges, [-100e3, -100e3, 0]).modes[0]!.factor;
    expect(two / one).toBeCloseTo(0.5, 2);
    expect(buckling(size, edges, [100e3, 100e3, 0]).modes).toHaveLength(0);
  });

  it('comes at half the factor under twice the load', () => {
    const size = { a: 0.6, b: 0.5, n: 9, m: 8 };
    const factor = (N: number): number => buckling(size, ['z', 'z', 'zXY', 'z'], [-N, 0, N / 3]).modes[0]!.factor;
    expect(factor(200e3) / factor(100e3)).toBeCloseTo(0.5, 9);
  });
});

describe('buckling of a tube', () => {
  it('SHS 100 × 100 × 5 of 4 m, hinged, comes at 361.970 kN (L. Euler: π² E I/L²)', () => {
    const grid = bareGrid([0, 4], [0], { parts: 10 });
    const { beams } = partElements(grid.structure);
    const nodes = grid.structure.coordinates.length / 3;
    const held = heldAt(nodes, [[grid.at(0, 0), 'xyzX'], [grid.at(1, 0), 'yz']]); // prettier-ignore
    const f = new Float64Array(6 * nodes);
    f[6 * grid.at(1, 0)] = -100e3;
    const u = factorise({ coordinates: grid.structure.coordinates, elements: grid.elements, held }).solve(f);
    const support = modeSupport(grid.structure, grid.elements, (system) => factorise(system), { held });
    const { modes } = end(structureBuckling(support, geometricElements({ structure: grid.structure, beams }, u), 4));
    const euler = (π ** 2 * shs100x5.E * shs100x5.Iy) / 16;
    expect(euler).toBeCloseTo(361970, -2);
    // twice each: the tube is square
    [1, 1, 4, 4].forEach((k, i) => expect(Math.abs((modes[i]!.factor * 100e3) / (k * euler) - 1)).toBeLessThan(2e-3));
    expect(modes[0]!.most.kind).toBe('tube');
  });
});

describe('buckling of a plate’s panels', () => {
  const plate = ready(sampleModel('small'), 0.2);
  const of = (own: ReadyPlate, solved: SolvedLoading): PanelBuckling => end(panelBuckling(own, solved, { count: 2 }));

  it('has factors that settle, and half of them under twice the displacements', () => {
    const solved = solvedLoading(plate, 'service-down');
    const set = of(plate, solved);
    expect(set.converged).toBe(true);
    expect(set.modes[0]!.factor).toBeGreaterThan(0);
    expect(set.modes[0]!.residual).toBeLessThan(1e-5);
    const twice = { ...solved, answer: { ...solved.answer, u: solved.answer.u.map((value) => 2 * value) } };
    expect(of(plate, twice).modes[0]!.factor / set.modes[0]!.factor).toBeCloseTo(0.5, 8);
    expect(set.findings.map(({ id }) => id)).toEqual(set.modes[0]!.factor < 1 ? ['panel-buckles'] : []);
    const much = { ...solved, answer: { ...solved.answer, u: solved.answer.u.map((value) => 2 * set.modes[0]!.factor * value) } }; // prettier-ignore
    const [finding] = of(plate, much).findings;
    expect(finding).toMatchObject({ id: 'panel-buckles' });
    expect(finding!.text).toContain('buckles at 0.5');
  });

  it('finds nothing where the loading pulls the panels, and says up to where it looked', () => {
    const set = of(plate, solvedLoading(plate, 'service-up'));
    expect(set).toMatchObject({ modes: [], within: 100, converged: true, findings: [] });
  });

  it('leaves a rigid turn of the whole alone: panels and tubes hold each other in balance', () => {
    const solved = solvedLoading(plate, 'service-up');
    const { coordinates } = plate.structure;
    const turn = Float64Array.from({ length: 2 * coordinates.length }, (_, i) => {
      const node = Math.floor(i / 6);
      return i % 6 === 2 ? coordinates[3 * node + 1]! : i % 6 === 1 ? -coordinates[3 * node + 2]! : i % 6 === 3 ? 1 : 0;
    });
    let [sum, gross] = [0, 0];
    for (const { nodes, stiffness } of geometricElements(plate, solved.answer.u)) {
      const own = nodes.flatMap((n) => [...turn.subarray(6 * n, 6 * n + 6)]);
      let work = 0;
      own.forEach((x, i) => own.forEach((y, j) => (work += x * stiffness[i * own.length + j]! * y)));
      sum += work;
      gross += Math.abs(work);
    }
    // what is rigid between a tube's axis and its neighbour's face has no geometric stiffness
    expect(Math.abs(sum) / gross).toBeLessThan(0.1);
  });
});
