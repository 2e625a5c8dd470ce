import { describe, expect, it } from 'vitest';
import { factorise } from '../../../core/solve/sparse/factorise.ts';
import { Mechanism } from '../../../core/solve/sparse/mechanism.ts';
import type { StiffnessSystem } from '../../../core/solve/sparse/stiffness-system.ts';
import { holding, shellPlate } from './systems.ts';

function mechanismOf(system: StiffnessSystem): Mechanism {
  try {
    factorise(system);
  } catch (error) {
    if (error instanceof Mechanism) return error;
    throw error;
  }
  throw new Error('It was factorised');
}

/** A spring from one freedom to the ground. */
function spring(node: number, freedom: number, stiffness: number): StiffnessSystem['elements'][number] {
  const K = new Float64Array(36);
  K[7 * freedom] = stiffness;
  return { nodes: [node], stiffness: K };
}

describe('a structure that something can move', () => {
  for (const [n, t] of [
    [4, 0.01],
    [20, 0.001],
    [60, 0.01],
  ] as const) {
    const free = shellPlate(n, n, t);
    const hinged = holding(free, (x) => x === 0, [0, 1, 2]);
    const tip = (n + 1) ** 2 - 1;

    it(`a plate of ${n} × ${n} elements, ${t * 1e3} mm, hinged along one side turns about it: w = -x θy`, () => {
      const { motion, node, freedom, share } = mechanismOf(hinged);
      expect(Math.abs(share)).toBeLessThan(1e-14);
      expect(Math.abs(motion[6 * node + freedom]!)).toBeGreaterThan(0.1);
      expect(motion.reduce((most, x) => Math.max(most, Math.abs(x)), 0)).toBe(1);
      const turn = motion[6 * tip + 4]!;
      for (let i = 0; i <= tip; i++) {
        expect(Math.abs(motion[6 * i + 2]! + free.coordinates[3 * i]! * turn)).toBeLessThan(1e-6);
        expect(Math.abs(motion[6 * i + 4]! - turn)).toBeLessThan(1e-6);
        for (const k of [0, 1, 3, 5]) expect(Math.abs(motion[6 * i + k]!)).toBeLessThan(1e-6);
      }
    });

    it(`the same held softly at one corner (1 N/m) is not taken for one: n = ${n}, ${t * 1e3} mm`, () => {
      const softly = { ...hinged, elements: [...hinged.elements, spring(tip, 2, 1)] };
      const f = new Float64Array(hinged.held.length);
      f[6 * tip + 2] = 1;
      // It turns as a rigid body: all of the newton goes into the spring. Its own bending is much less.
      expect(Math.abs(factorise(softly).solve(f)[6 * tip + 2]! - 1)).toBeLessThan(n === 60 ? 0.05 : 1e-2);
    });

    it(`one that nothing holds at all moves as a rigid body: n = ${n}, ${t * 1e3} mm`, () => {
      expect(Math.abs(mechanismOf(free).share)).toBeLessThan(1e-14);
    });
  }

  it('a node that no element touches', () => {
    const plate = holding(shellPlate(2, 2, 0.01), (x) => x === 0);
    const alone: StiffnessSystem = {
      coordinates: Float64Array.from([...plate.coordinates, 1, 1, 1]),
      held: Uint8Array.from([...plate.held, 1, 1, 0, 1, 1, 1]),
      elements: plate.elements,
    };
    const { node, freedom, motion } = mechanismOf(alone);
    expect([node, freedom]).toEqual([9, 2]);
    expect(motion.indexOf(1)).toBe(6 * 9 + 2);
    expect(motion.filter((x) => x !== 0).length).toBe(1);
  });

  it('a spring that pushes: the structure is not stable, and the energy of the motion is below zero', () => {
    const plate = holding(shellPlate(4, 4, 0.01), (x) => x === 0);
    const { share } = mechanismOf({ ...plate, elements: [...plate.elements, spring(24, 2, -1e7)] });
    expect(share).toBeLessThan(-1e-5);
  });
});
