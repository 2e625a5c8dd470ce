import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { kernels } from '../../core/solve/kernels.ts';
import { heldPlate } from '../../core/solve/held-plate.ts';
import { hingedPlate } from '../../core/solve/hinged-plate.ts';

/** A panel of plausible numbers, by argument name. */
const sample: Readonly<Record<string, number>> = {
  a: 1.1,
  b: 1.1,
  t: 0.01,
  E: 210e9,
  nu: 0.3,
  q: 8e3,
  fy: 355e6,
  p: 2e3,
  P: 1e3,
  EI: 6e5,
  nx: 4,
  ny: 4,
  insetX: 0.04,
  insetY: 0.04,
  exclusionRadius: 0.03,
};

describe('registered kernels', () => {
  for (const [name, kernel] of Object.entries(kernels))
    it(`${name} gives one finite number and says its units, source and error`, () => {
      const args = kernel.argumentNames.map((argument) => sample[argument]!);
      expect(args.every(Number.isFinite)).toBe(true);
      expect(kernel.argumentUnits).toHaveLength(args.length);
      for (const words of [kernel.unit, ...kernel.argumentUnits])
        if (words !== '1') expect(() => unit(1, words)).not.toThrow();
      expect(Number.isFinite(kernel.run(...args))).toBe(true);
      expect(kernel.source.length).toBeGreaterThan(0);
      expect(kernel.error).not.toBe('');
      expect(kernel.title).not.toBe('');
    });

  it('gives each result in the unit that its arguments imply: doubling length, time and mass scales agree', () => {
    // Dimensional homogeneity: measured in other units of length, time and mass, the number changes by its unit alone.
    const [length, time, mass] = [1.7, 0.6, 2.3];
    const scale = (words: string): number => {
      if (words === '1') return 1;
      const { dimensions } = unit(1, words) as unknown as { dimensions: number[] };
      return mass ** dimensions[0]! * length ** dimensions[1]! * time ** dimensions[2]!;
    };
    for (const [name, { run, unit: words, argumentUnits, argumentNames }] of Object.entries(kernels)) {
      const args = argumentNames.map((argument) => sample[argument]!);
      const there = run(...args.map((value, i) => value * scale(argumentUnits[i]!)));
      const [expected, scatter] = [run(...args) * scale(words), name === 'plate.bolted.error' ? 1e-4 : 1e-9];
      expect(Math.abs(there - expected), name).toBeLessThanOrEqual(scatter * Math.abs(expected) + 1e-30);
    }
  });

  it('hands on what the kernels themselves answer', () => {
    const plate = { a: 1.2, b: 0.9, t: 0.012, E: 200e9, nu: 0.3, q: 6e3 };
    const args = Object.values(plate);
    expect(kernels['plate.hinged.moment']!.run(...args)).toBe(hingedPlate(plate).momentLargest);
    expect(kernels['plate.held.momentEdge']!.run(...args)).toBe(-heldPlate(plate).momentEdgeY);
    expect(kernels['plate.held.stress']!.run(...args)).toBe(heldPlate(plate).stressLargest);
  });

  it('bolts carry the pressure: the least largest force is their even share', () => {
    const args = kernels['plate.bolted.boltForce']!.argumentNames.map((argument) => sample[argument]!);
    expect(kernels['plate.bolted.boltForce']!.run(...args)).toBeGreaterThan((8e3 * 1.1 ** 2) / 12);
  });
});
