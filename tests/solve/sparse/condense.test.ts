import { describe, expect, it } from 'vitest';
import { condense } from '../../../core/solve/sparse/condense.ts';
import { factorise } from '../../../core/solve/sparse/factorise.ts';
import { plainKernels } from '../../../core/solve/sparse/plain-kernels.ts';
import type { StiffnessSystem } from '../../../core/solve/sparse/stiffness-system.ts';
import { denseMatrix, energyDifference, holding, shellPlate, someForces } from './systems.ts';

/** A plate that is free, and every third node of two of its sides, in no order of note. */
const plate = shellPlate(12, 9, 0.01, 0.05, true);
const kept = Array.from({ length: 10 }, (_, j) => [13 * j + 12, 13 * (9 - j)])
  .flat()
  .filter((_, i) => i % 3 !== 1);

/** The kept nodes as a structure of their own, its first node held. */
function frame(stiffness: Float64Array): StiffnessSystem {
  const held = new Uint8Array(6 * kept.length);
  held.fill(1, 0, 6);
  return {
    coordinates: Float64Array.from(kept.flatMap((node) => [...plate.coordinates.subarray(3 * node, 3 * node + 3)])),
    held,
    elements: [{ nodes: kept.map((_, i) => i), stiffness }],
  };
}

describe('a part condensed onto its kept nodes', () => {
  const f = someForces(plate);
  const whole = holding(plate, (_x, _y, _z, node) => node === kept[0]);

  it('gives the displacements of the full solve, with loads inside it', () => {
    const made = condense(plate, kept);
    const u = made.recover(factorise(frame(made.stiffness)).solve(made.load(f)), f);
    const full = factorise(whole);
    const v = full.solve(f);
    expect(full.residual(u, f)).toBeLessThan(1e-14);
    expect(energyDifference(whole, u, v)).toBeLessThan(Math.max(1e-10, 100 * 2 ** -52 * full.conditionEstimate));
  });

  it('stands in a larger structure beside another like it as any element does', () => {
    const { stiffness, load } = condense(plate, kept);
    const once = factorise(frame(stiffness)).solve(load(f));
    const doubled: StiffnessSystem = {
      ...frame(stiffness),
      elements: [...frame(stiffness).elements, ...frame(stiffness).elements],
    };
    const twice = factorise(doubled).solve(load(f).map((x) => 2 * x));
    once.forEach((x, i) => expect(Math.abs(twice[i]! - x)).toBeLessThan(1e-9 * Math.abs(once[i]!) + 1e-18));
  });

  it('is symmetric, and a rigid motion of its kept nodes takes no force: all six', () => {
    const { stiffness } = condense(plate, kept);
    const n = 6 * kept.length;
    for (let i = 0; i < n; i++) for (let j = 0; j < i; j++) expect(stiffness[i * n + j]).toBe(stiffness[j * n + i]);
    for (let k = 0; k < 6; k++) {
      const motion = kept.flatMap((node) => {
        const [x, y, z] = plate.coordinates.subarray(3 * node, 3 * node + 3) as unknown as [number, number, number];
        const turn = [k === 3 ? 1 : 0, k === 4 ? 1 : 0, k === 5 ? 1 : 0] as const;
        const move = [turn[1] * z - turn[2] * y, turn[2] * x - turn[0] * z, turn[0] * y - turn[1] * x];
        return [0, 1, 2].map((c) => (k === c ? 1 : 0) + move[c]!).concat(turn);
      });
      for (let i = 0; i < n; i++) {
        let force = 0;
        let gross = 0;
        for (let j = 0; j < n; j++) {
          force += stiffness[i * n + j]! * motion[j]!;
          gross += Math.abs(stiffness[i * n + j]! * motion[j]!);
        }
        expect(Math.abs(force)).toBeLessThan(1e-7 * gross + 1e-6);
      }
    }
  });

  it('is the Schur complement of the dense matrix', () => {
    const small = holding(shellPlate(2, 1, 0.02), (x, y) => x === 0 && y === 0, [2, 3]);
    const nodes = [5, 2, 0];
    const { stiffness } = condense(small, nodes);
    const { K, freedoms } = denseMatrix(small);
    const n = freedoms.length;
    // Gauss: every freedom of a node that is not kept is eliminated from all others.
    const gone = new Set<number>();
    freedoms.forEach((freedom, k) => {
      if (nodes.includes(Math.floor(freedom / 6))) return;
      gone.add(k);
      for (let i = 0; i < n; i++) {
        if (gone.has(i)) continue;
        const factor = K[i * n + k]! / K[k * n + k]!;
        for (let j = 0; j < n; j++) K[i * n + j]! -= factor * K[k * n + j]!;
      }
    });
    const size = 6 * nodes.length;
    const most = stiffness.reduce((a, b) => Math.max(a, Math.abs(b)), 0);
    for (let a = 0; a < size; a++)
      for (let b = 0; b < size; b++) {
        const [i, j] = [a, b].map((c) => freedoms.indexOf(6 * nodes[Math.floor(c / 6)]! + (c % 6))) as [number, number];
        const expected = i < 0 || j < 0 ? 0 : K[i * n + j]!;
        expect(Math.abs(stiffness[a * size + b]! - expected)).toBeLessThan(1e-12 * most);
      }
  });

  it('gives the same bits by plain kernels and by those of WebAssembly', () => {
    const [one, other] = [condense(plate, kept, { kernels: plainKernels }), condense(plate, kept)];
    expect(one.stiffness).toEqual(other.stiffness);
    expect(one.load(f)).toEqual(other.load(f));
  });

  it('splits exactly by thickness: a flat panel is membrane in t plus bending in t³, condensed or not', () => {
    // Each part condensed by itself has free motions inside, so the split is looked at on the sum: S(t) of a flat plate, whose
    // membrane and bending share no freedom, scales by t in one and by t³ in the other.
    const flat = (t: number) => condense(shellPlate(8, 6, t), [0, 8, 54, 62, 4]).stiffness;
    const [thin, thick] = [flat(0.005), flat(0.01)];
    const n = 30;
    const most = [0, 0];
    const off = [0, 0];
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        const [a, b] = [[0, 1, 5].includes(i % 6), [0, 1, 5].includes(j % 6)];
        if (a !== b) expect(thin[i * n + j]).toBe(0);
        else {
          const part = a ? 0 : 1;
          const scaled = thin[i * n + j]! * (a ? 2 : 8);
          most[part] = Math.max(most[part]!, Math.abs(scaled));
          off[part] = Math.max(off[part]!, Math.abs(thick[i * n + j]! - scaled));
        }
      }
    expect(off[0]! / most[0]!).toBeLessThan(1e-12);
    expect(off[1]! / most[1]!).toBeLessThan(1e-12);
  });

  it('refuses kept nodes that are twice, that are not there, and none that can move', () => {
    expect(() => condense(plate, [1, 1])).toThrow(/kept twice/);
    expect(() => condense(plate, [9999])).toThrow(/no node 9999/);
    expect(() => condense(whole, [kept[0]!])).toThrow(/No kept node can move/);
  });
});
