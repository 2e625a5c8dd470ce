import { describe, expect, it } from 'vitest';
import { twoSidedPlate } from '../../core/solve/two-sided-plate.ts';

const unit = (ratio: number, nu = 0.3) => ({ a: 1, b: ratio, t: 1, E: 12 * (1 - nu ** 2), nu, q: 1 });
const edgeMiddle = ({ shape: { field } }: ReturnType<typeof twoSidedPlate>): { w: number; Mx: number } => {
  const at = ((field.columns - 1) / 2) * field.rows;
  return { w: field.w[at]!, Mx: field.Mx[at]! };
};

describe('plate on two opposite edges', () => {
  it('hinged ends: independent Ritz values, derived (w and Mx, centre and free edge)', () => {
    for (const [ratio, w, wEdge, M, MEdge] of [
      [0.5, 0.013713, 0.014645, 0.12364, 0.12781],
      [1, 0.013094, 0.015011, 0.12255, 0.13109],
      [2, 0.012887, 0.015202, 0.12347, 0.1328],
    ] as const) {
      const plate = twoSidedPlate(unit(ratio), 'hinged');
      expect(Math.abs(plate.deflectionCentre - w)).toBeLessThan(0.6e-6);
      expect(Math.abs(plate.momentXCentre - M)).toBeLessThan(0.6e-5);
      expect(Math.abs(edgeMiddle(plate).w - wEdge)).toBeLessThan(0.6e-6);
      expect(Math.abs(edgeMiddle(plate).Mx - MEdge)).toBeLessThan(0.6e-5);
      expect(plate.momentEdgeX).toBe(0);
    }
  });

  it('held ends: independent Ritz values, derived (support moment at mid-edge only, 2 %)', () => {
    for (const [ratio, w, wEdge, M, MEdge, support] of [
      [0.5, 0.00262, 0.002834, 0.0402, 0.0423, -0.0836],
      [1, 0.00256, 0.002909, 0.0406, 0.0433, -0.0815],
      [2, 0.00259, 0.00292, 0.0415, 0.0436, -0.0833],
    ] as const) {
      const plate = twoSidedPlate(unit(ratio), 'held');
      expect(Math.abs(plate.deflectionCentre / w - 1)).toBeLessThan(0.005);
      expect(Math.abs(edgeMiddle(plate).w / wEdge - 1)).toBeLessThan(0.005);
      expect(Math.abs(plate.momentXCentre / M - 1)).toBeLessThan(0.005);
      // At the free edge the singular corners slow both Ritz values down: they scatter by 0.5 % each.
      expect(Math.abs(edgeMiddle(plate).Mx / MEdge - 1)).toBeLessThan(0.01);
      expect(Math.abs(plate.momentEdgeX / support - 1)).toBeLessThan(0.02);
    }
  });

  it('a narrow strip bends as a beam with E I, not D: 5 q L⁴ / 384 E I (beam tables)', () => {
    const beam = 5 / 384 / 0.91;
    const { deflectionCentre, momentXCentre } = twoSidedPlate(unit(0.05), 'hinged');
    expect(Math.abs(deflectionCentre / beam - 1)).toBeLessThan(2e-3);
    expect(Math.abs(momentXCentre - 0.125)).toBeLessThan(1e-4);
    expect(Math.abs(twoSidedPlate(unit(0.02), 'hinged').deflectionCentre / beam - 1)).toBeLessThan(5e-4);
  });

  it('with ν = 0 is a beam at any width', () => {
    for (const ratio of [0.3, 1, 3]) {
      const hinged = twoSidedPlate(unit(ratio, 0), 'hinged');
      expect(hinged.deflectionLargest).toBeCloseTo(5 / 384, 10);
      expect(hinged.momentLargest).toBeCloseTo(1 / 8, 9);
      expect(hinged.edgeReactionLargest).toBeCloseTo(0.5, 8);
      const held = twoSidedPlate(unit(ratio, 0), 'held');
      expect(held.deflectionLargest).toBeCloseTo(1 / 384, 10);
      expect(held.momentEdgeX).toBeCloseTo(-1 / 12, 9);
      expect(held.momentLargest).toBeLessThanOrEqual(1 / 12 + 1e-9);
    }
  });

  it('reads held ends outside the corners, where the moment has no bound', () => {
    const { shape, largestAt, momentLargest, momentEdgeX } = twoSidedPlate(unit(1), 'held');
    expect(momentLargest).toBeGreaterThan(-momentEdgeX);
    expect(Math.hypot(largestAt[0], largestAt[1])).toBeGreaterThanOrEqual(0.05 - 1e-9);
    expect(shape.error).toBeLessThan(0.01);
  });
});
