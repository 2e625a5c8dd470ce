import { describe, expect, it } from 'vitest';
import { envelope, envelopeCholesky, solveLower, solveUpper } from '../../../core/solve/envelope-cholesky.ts';
import { elimination } from '../../../core/solve/sparse/elimination.ts';
import { factorFronts } from '../../../core/solve/sparse/factor-fronts.ts';
import { factorise, solveOnce } from '../../../core/solve/sparse/factorise.ts';
import { plainKernels } from '../../../core/solve/sparse/plain-kernels.ts';
import type { StiffnessSystem } from '../../../core/solve/sparse/stiffness-system.ts';
import { frontKernels, wasmKernelsHere } from '../../../core/solve/sparse/wasm-kernels.ts';
import {
  chance,
  denseMatrix,
  energyDifference,
  holding,
  largestDifference,
  randomSystem,
  shellPlate,
  someForces,
} from './systems.ts';

const eps = 2 ** -52;

/** The same system solved by rows of its envelope, in the order it is given in. */
function byEnvelope(system: StiffnessSystem, f: Float64Array): Float64Array {
  const { K, freedoms } = denseMatrix(system);
  const n = freedoms.length;
  const A = envelope(
    Int32Array.from({ length: n }, (_, i) => K.subarray(i * n, i * n + i + 1).findIndex((x) => x !== 0)),
  );
  for (let i = 0; i < n; i++) for (let j = A.first[i]!; j <= i; j++) A.entries[A.start[i]! + j] = K[i * n + j]!;
  expect(envelopeCholesky(A)).toBe(-1);
  const x = solveUpper(
    A,
    solveLower(
      A,
      Float64Array.from(freedoms, (freedom) => f[freedom]!),
    ),
  );
  const u = new Float64Array(f.length);
  freedoms.forEach((freedom, i) => (u[freedom] = x[i]!));
  return u;
}

const clampedPlate = (n: number, m: number, t: number, turned = false): StiffnessSystem =>
  holding(shellPlate(n, m, t, 0.05, turned), (_x, _y, _z, node) => node <= n);

describe('factorisation by fronts', () => {
  it('gives the displacements of the envelope method, on random systems of every shape', () => {
    for (let seed = 1; seed <= 25; seed++) {
      const system = randomSystem(2 + 2 * seed, 3 * seed, seed);
      const f = someForces(system, seed);
      const made = factorise(system);
      const u = made.solve(f);
      expect(made.residual(u, f)).toBeLessThan(1e-14);
      expect(energyDifference(system, u, byEnvelope(system, f))).toBeLessThan(
        Math.max(1e-10, 100 * eps * made.conditionEstimate),
      );
    }
  });

  it('and on a thin shell that stands askew', () => {
    const system = clampedPlate(9, 7, 0.002, true);
    const f = someForces(system);
    const made = factorise(system);
    const u = made.solve(f);
    expect(made.residual(u, f)).toBeLessThan(1e-14);
    const most = Math.max(1e-10, 100 * eps * made.conditionEstimate);
    expect(energyDifference(system, u, byEnvelope(system, f))).toBeLessThan(most);
  });

  it('leaves held freedoms at zero and what was handed in untouched', () => {
    const system = clampedPlate(5, 4, 0.01);
    const f = someForces(system);
    const before = Float64Array.from(f);
    const u = factorise(system).solve(f);
    expect(f).toEqual(before);
    system.held.forEach((held, i) => held && expect(u[i]).toBe(0));
  });

  it('gives the same bits twice, and after solving something else', () => {
    const system = clampedPlate(12, 9, 0.01);
    const [f, g] = [someForces(system, 1), someForces(system, 2)];
    const made = factorise(system);
    const u = made.solve(f);
    made.solve(g);
    expect(made.solve(f)).toEqual(u);
    expect(factorise(system).solve(f)).toEqual(u);
  });

  it('gives the same bits in WebAssembly and in plain TypeScript: factor and solution', () => {
    const kernels = wasmKernelsHere();
    if (!kernels) throw new Error('WebAssembly with vectors must run where the tests run');
    const ragged = holding(clampedPlate(29, 23, 0.01, true), (_x, _y, _z, node) => node % 11 === 0, [1, 3, 4]);
    for (const system of [ragged, randomSystem(40, 60, 3), randomSystem(1, 0, 5)]) {
      const order = elimination(system);
      const [one, other] = [plainKernels, kernels].map((make) => factorFronts(order, system, make));
      let compared = 0;
      let different = 0;
      one!.fronts.forEach(({ w, b, panel }) => {
        const ld = 6 * Math.ceil(w / 6) + 6 * Math.ceil(b / 6);
        for (let k = 0; k < w; k++)
          for (let i = k; i < ld; i++, compared++)
            if (one!.kernels.doubles[panel + k * ld + i] !== other!.kernels.doubles[panel + k * ld + i]) different++;
      });
      expect(different).toBe(0);
      expect(compared).toBeGreaterThanOrEqual(order.size);
      const f = someForces(system);
      expect(factorise(system, { kernels: plainKernels }).solve(f)).toEqual(factorise(system, { kernels }).solve(f));
    }
    // The kernels that are used unless told are those of WebAssembly: its memory comes in pages of 64 KiB.
    expect(frontKernels(10).doubles.buffer.byteLength).toBe(65536);
  });

  it('does not depend on how nodes are numbered or elements listed', () => {
    const system = clampedPlate(11, 8, 0.01, true);
    const next = chance(7);
    const count = system.held.length / 6;
    const mixed = (length: number): number[] =>
      Array.from({ length }, (_, i) => [next(), i] as const)
        .sort((a, b) => a[0] - b[0])
        .map(([, i]) => i);
    const number = mixed(count);
    const renumbered: StiffnessSystem = {
      coordinates: new Float64Array(3 * count),
      held: new Uint8Array(6 * count),
      elements: mixed(system.elements.length).map((e) => ({
        nodes: system.elements[e]!.nodes.map((node) => number[node]!),
        stiffness: system.elements[e]!.stiffness,
      })),
    };
    const f = someForces(system);
    const g = new Float64Array(f.length);
    number.forEach((to, from) => {
      renumbered.coordinates.set(system.coordinates.subarray(3 * from, 3 * from + 3), 3 * to);
      renumbered.held.set(system.held.subarray(6 * from, 6 * from + 6), 6 * to);
      g.set(f.subarray(6 * from, 6 * from + 6), 6 * to);
    });
    const u = factorise(system).solve(f);
    const v = factorise(renumbered).solve(g);
    const back = Float64Array.from(u, (_, i) => v[6 * number[Math.floor(i / 6)]! + (i % 6)]!);
    expect(largestDifference(back, u)).toBeLessThan(1e-9);
    expect(energyDifference(system, back, u)).toBeLessThan(1e-10);
  });

  it('turned in space as a whole with its loads, it moves the same, turned', () => {
    const [flat, turned] = [clampedPlate(9, 7, 0.01), clampedPlate(9, 7, 0.01, true)];
    // As in `shellPlate`: rows of a rotation with no zero entry, the third their cross product.
    const turn = (v: ArrayLike<number>, i: number): number[] => {
      const [x, y, z] = [v[i]!, v[i + 1]!, v[i + 2]!];
      return [(2 * x + y - 2 * z) / 3, (-2 * x + 2 * y - z) / 3, (x + 2 * y + 2 * z) / 3];
    };
    const f = someForces(flat);
    const g = new Float64Array(f.length);
    for (let i = 0; i < f.length; i += 3) g.set(turn(f, i), i);
    const u = factorise(flat).solve(f);
    const v = factorise(turned).solve(g);
    const w = new Float64Array(u.length);
    for (let i = 0; i < u.length; i += 3) w.set(turn(u, i), i);
    // what rounding of both matrices can make of the condition, as a bound
    const bound = 100 * eps * factorise(flat).conditionEstimate;
    expect(largestDifference(v, w)).toBeLessThan(Math.min(bound, 1e-8));
    expect(energyDifference(turned, v, w)).toBeLessThan(Math.max(1e-10, bound));
  });

  it('is linear and symmetric: superposition, and Maxwell and Betti', () => {
    const system = clampedPlate(8, 8, 0.01, true);
    const [f, g] = [someForces(system, 3), someForces(system, 4)];
    const made = factorise(system);
    const [u, v] = [made.solve(f), made.solve(g)];
    const both = made.solve(f.map((value, i) => 2 * value - g[i]!));
    expect(
      largestDifference(
        both,
        u.map((value, i) => 2 * value - v[i]!),
      ),
    ).toBeLessThan(1e-10);
    const work = (a: Float64Array, b: Float64Array): number => a.reduce((sum, x, i) => sum + x * b[i]!, 0);
    expect(Math.abs(work(f, v) / work(g, u) - 1)).toBeLessThan(1e-10);
  });

  it('lets an elimination serve again when only stiffness has changed', () => {
    const [thin, thick] = [clampedPlate(10, 6, 0.005), clampedPlate(10, 6, 0.02)];
    const f = someForces(thin);
    const { elimination: order } = factorise(thin);
    expect(factorise(thick, { elimination: order }).solve(f)).toEqual(factorise(thick).solve(f));
  });

  it('has a residual at rounding on a thin plate whose condition is above 1e10, better once refined', () => {
    const system = clampedPlate(30, 30, 0.0005);
    const made = factorise(system);
    const f = someForces(system);
    expect(made.conditionEstimate).toBeGreaterThan(1e10);
    const once = solveOnce(factorFronts(elimination(system), system, frontKernels), f);
    const refined = made.solve(f);
    expect(made.residual(refined, f)).toBeLessThan(1e-15);
    expect(made.residual(refined, f)).toBeLessThanOrEqual(made.residual(once, f));
  });

  it('grows as nested dissection does: four times the unknowns, at most nine times the work', () => {
    const work = [20, 40, 80].map((n) => elimination(clampedPlate(n, n, 0.01)).flops);
    expect(work[1]! / work[0]!).toBeLessThan(9);
    expect(work[2]! / work[1]!).toBeLessThan(9);
  });

  it('holds at most one and a half times the bytes of its factor', () => {
    const made = factorise(clampedPlate(60, 60, 0.01));
    expect(made.bytes).toBeLessThan(1.5 * made.factorBytes);
  });

  it('solves a system of which everything is held, and one without nodes', () => {
    const held = holding(shellPlate(2, 2, 0.01), () => true);
    expect(
      factorise(held)
        .solve(someForces(held))
        .every((u) => u === 0),
    ).toBe(true);
    const none = { coordinates: new Float64Array(0), held: new Uint8Array(0), elements: [] };
    expect(factorise(none).solve(new Float64Array(0)).length).toBe(0);
  });
});

describe('what it refuses', () => {
  const system = clampedPlate(2, 2, 0.01);
  it('arrays that do not belong together', () =>
    expect(() => factorise({ ...system, held: new Uint8Array(7) })).toThrow(/do not belong together/));
  it('a matrix of the wrong size', () =>
    expect(() => factorise({ ...system, elements: [{ nodes: [0], stiffness: new Float64Array(35) }] })).toThrow(
      /matrix of 35 entries.*Give 36/s,
    ));
  it('a node that is not there', () =>
    expect(() => factorise({ ...system, elements: [{ nodes: [99], stiffness: new Float64Array(36) }] })).toThrow(
      /no node 99/,
    ));
  it('an entry that is not a number', () =>
    expect(() =>
      factorise({ ...system, elements: [{ nodes: [0], stiffness: new Float64Array(36).fill(NaN) }] }),
    ).toThrow(/has the entry NaN/));
  it('forces that are not numbers', () => {
    const f = new Float64Array(system.held.length);
    f[6 * 8 + 2] = Infinity;
    expect(() => factorise(system).solve(f)).toThrow(/force.*Infinity/);
  });
});
