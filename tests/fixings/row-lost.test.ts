import { describe, expect, it } from 'vitest';
import { fixingKernels } from '../../core/fixings/kernels.ts';
import { largeSquareWithin } from '../../core/fixings/large-square-within.ts';
import { rowLostInPlane } from '../../core/fixings/row-lost-in-plane.ts';
import { rowLostEdgeMoment, rowLostReaction, rowLostStress } from '../../core/fixings/row-lost-plate.ts';
import { rowLostTension } from '../../core/fixings/row-lost-tension.ts';
import { rowsLeft } from '../../core/fixings/rows-left.ts';
import { tensionGroup } from '../../core/fixings/tension-group.ts';
import { heldPlate } from '../../core/solve/held-plate.ts';

const steel = { t: 0.01, E: 210e9, nu: 0.3, q: 1e4 };

describe('what is left when a row of bolts is lost', () => {
  it('takes the row with its corners', () => {
    const rows = { a: 2, b: 1, nx: 5, ny: 3 };
    expect(rowsLeft(rows, 'yHigh')).toHaveLength(12 - 5);
    expect(rowsLeft(rows, 'yLow').every(([, y]) => y > 0)).toBe(true);
    expect(rowsLeft(rows, 'yHigh').every(([, y]) => y < 1)).toBe(true);
    expect(rowsLeft(rows, 'xLow').every(([x]) => x > 0)).toBe(true);
    expect(rowsLeft(rows, 'xHigh').every(([x]) => x < 2)).toBe(true);
    expect(rowsLeft(rows, 'xHigh')).toHaveLength(12 - 3);
  });

  it('gives half the load to a bolt of a square with three in a row (by hand: 1/5 + 0.6 · 0.6 / 1.2)', () => {
    expect(rowLostTension({ a: 2, b: 2, nx: 3, ny: 3 }, { q: 1000, ix: 0, iy: 0 })).toBeCloseTo(0.5 * 4000, 6);
    expect(rowLostTension({ a: 2, b: 2, nx: 3, ny: 3 }, { q: -1000, ix: 0.5, iy: 0 })).toBeCloseTo(0.5 * 6000, 6);
    expect(rowLostTension({ a: 2, b: 2, nx: 3, ny: 3 }, { q: 1000, ix: 0, iy: 0.5 })).toBeCloseTo(0.5 * 6000, 6);
  });

  it('takes the worse of the two directions', () => {
    const wide = rowLostTension({ a: 3, b: 1, nx: 3, ny: 9 }, { q: 1000, ix: 0, iy: 0 });
    expect(rowLostTension({ a: 1, b: 3, nx: 9, ny: 3 }, { q: 1000, ix: 0, iy: 0 })).toBeCloseTo(wide, 9);
    expect(rowLostReaction({ ...steel, a: 1, b: 2, nx: 3, ny: 5, ix: 0.03, iy: 0.02 })).toBeCloseTo(
      rowLostReaction({ ...steel, a: 2, b: 1, nx: 5, ny: 3, ix: 0.02, iy: 0.03 }),
      3,
    );
  });

  it('balances force and moment in tension, and stays exact on one line through the force', () => {
    const bolts = [[0, 0], [1, 0.2], [0.4, 1.1], [1.5, 0.9]] as const; // prettier-ignore
    const R = tensionGroup(bolts, 10, [0.9, 0.3]);
    expect(R.reduce((s, r) => s + r, 0)).toBeCloseTo(10, 12);
    expect(R.reduce((s, r, i) => s + r * bolts[i]![0], 0)).toBeCloseTo(9, 12);
    expect(R.reduce((s, r, i) => s + r * bolts[i]![1], 0)).toBeCloseTo(3, 12);
    expect(tensionGroup([[0, 0], [2, 2]], 4, [0.5, 0.5])).toEqual([3, 1]); // prettier-ignore
    expect(() => tensionGroup([[0, 0], [2, 2]], 4, [0.5, 0.6])).toThrow(/one line/); // prettier-ignore
  });

  it('refuses two rows of which one is lost, and says that the panel turns', () => {
    expect(() => rowLostTension({ a: 1, b: 1, nx: 5, ny: 2 }, { q: 1, ix: 0, iy: 0 })).toThrow(/turns about it/);
    expect(rowLostTension({ a: 1, b: 1, nx: 5, ny: 2 }, { q: 0, ix: 0, iy: 0 })).toBe(0);
  });

  it('puts more on the bolts beside the gap when the plate bends than when it is rigid, and less than the whole load', () => {
    for (const n of [4, 6, 9]) {
      const field = { a: 1, b: 1, nx: n, ny: n, ix: 0.03, iy: 0.03 };
      const bending = rowLostReaction({ ...steel, ...field });
      expect(bending).toBeGreaterThan(1.2 * rowLostTension(field, { q: steel.q, ix: 0.03, iy: 0.03 }));
      expect(bending).toBeLessThan(steel.q * 1.06 ** 2);
    }
    expect(rowLostReaction({ ...steel, q: 0, a: 1, b: 1, nx: 4, ny: 4, ix: 0.03, iy: 0.03 })).toBe(0);
    expect(rowLostReaction({ ...steel, q: -1e4, a: 1, b: 1, nx: 4, ny: 4, ix: 0.03, iy: 0.03 })).toBeCloseTo(
      rowLostReaction({ ...steel, a: 1, b: 1, nx: 4, ny: 4, ix: 0.03, iy: 0.03 }),
      6,
    );
  });

  it('tends to the cantilever q a²/2 for a long field with a long edge free (beam theory), above the plate with all edges held', () => {
    expect(rowLostEdgeMoment({ ...steel, a: 1, b: 8 }) / steel.q).toBeCloseTo(0.5, 1);
    expect(rowLostEdgeMoment({ ...steel, a: 8, b: 1 }) / steel.q).toBeCloseTo(0.5, 1);
    for (const b of [1, 1.5, 2]) {
      const held = heldPlate({ ...steel, a: 1, b });
      expect(rowLostEdgeMoment({ ...steel, a: 1, b })).toBeGreaterThan(
        Math.max(Math.abs(held.momentEdgeX), Math.abs(held.momentEdgeY)),
      );
    }
    expect(rowLostEdgeMoment({ ...steel, q: 0, a: 1, b: 1 })).toBe(0);
  });

  it('hangs a weight beside the centroid of what is left: by hand for a square with three in a row', () => {
    // 5 bolts, centroid at x = 0.4 and y = 1, Σr² = 1.2 + 4, weight along y at x = 1: M = 0.6 W; farthest bolts (1, 0), (1, 2)
    const turn = 0.6 / 5.2;
    const expected = Math.hypot(turn * 1, 1 / 5 + turn * 0.6);
    expect(rowLostInPlane({ a: 2, b: 2, nx: 3, ny: 3 }, 1000)).toBeCloseTo(1000 * expected, 6);
  });

  it('bounds deflection by the square inside, and says nothing where that is not tabled', () => {
    const plate = { ...steel, a: 1, b: 1 };
    expect(largeSquareWithin({ ...plate, q: 100 })).toBeCloseTo(
      (0.97 * 0.0012653 * 100) / ((210e9 * 0.01 ** 3) / 10.92),
      8,
    );
    expect(largeSquareWithin({ ...plate, q: 63.4 * 210e9 * 1e-8 })).toBeCloseTo(0.97 * 0.696 * 0.01, 5);
    expect(largeSquareWithin({ ...plate, q: 1e7 })).toBe(0);
    expect(largeSquareWithin({ ...plate, nu: 0.45 })).toBe(0);
  });

  it('names as many units as arguments for each registered kernel', () => {
    for (const [name, { argumentNames, argumentUnits, title, error, source }] of Object.entries(fixingKernels)) {
      expect(argumentNames, name).toHaveLength(argumentUnits.length);
      expect(title && error && source.length, name).toBeTruthy();
    }
  });

  it('passes its arguments on in the order of their names', () => {
    const run = (name: string, values: Record<string, number>): number => {
      const kernel = fixingKernels[name]!;
      return kernel.run(...kernel.argumentNames.map((n) => values[n]!));
    };
    const all = { ...steel, a: 1, b: 1.4, nx: 4, ny: 5, ix: 0.03, iy: 0.02, W: 900, exclusionRadius: 0.03 };
    expect(run('bolts.rowLost.group', all)).toBe(rowLostTension(all, all));
    expect(run('bolts.rowLost.plate', all)).toBe(rowLostReaction(all));
    expect(run('bolts.rowLost.stress', all)).toBe(rowLostStress(all));
    expect(run('bolts.rowLost.edgeMoment', all)).toBe(rowLostEdgeMoment(all));
    expect(run('bolts.rowLost.inPlane', all)).toBe(rowLostInPlane(all, 900));
    expect(run('plate.largeSquareWithin', all)).toBe(largeSquareWithin(all));
  });
});
