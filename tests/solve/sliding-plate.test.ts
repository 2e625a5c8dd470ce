import { describe, expect, it } from 'vitest';
import { hingedPlate } from '../../core/solve/hinged-plate.ts';
import { curvesEnd, slidingPlate, slidingShape } from '../../core/solve/sliding-plate.ts';
import { vonKarman } from './von-karman.ts';

/** E = t = s = 1: q is Q = q s⁴ / (E t⁴) and deflections are multiples of t. */
const plate = (ratio: number, Q: number, nu = 0.3) => ({ a: ratio, b: 1, t: 1, E: 1, nu, q: Q });
const deflection = (ratio: number, Q: number, nu = 0.3): number => slidingPlate(plate(ratio, Q, nu)).deflection;
const small = (ratio: number, Q: number, nu = 0.3): number => hingedPlate(plate(ratio, Q, nu)).deflectionCentre;
const { PI: π, abs, exp, log, sin, cos, sqrt } = Math;

/** w/t of ASTM E1300, app. X1 (coefficients read in several open copies): a fit to plates free to slip, ν = 0.22. */
function slippingGlass(ratio: number, Q: number): number {
  const r0 = 0.553 - 3.83 * ratio + 1.11 * ratio ** 2 - 0.0969 * ratio ** 3;
  const r1 = -2.29 + 5.83 * ratio - 2.17 * ratio ** 2 + 0.2067 * ratio ** 3;
  const r2 = 1.485 - 1.908 * ratio + 0.815 * ratio ** 2 - 0.0822 * ratio ** 3;
  const x = log(log(Q * ratio ** 2));
  return exp(r0 + r1 * x + r2 * x ** 2);
}

describe('plate of large deflection on hinged edges that slide', () => {
  // The fit itself scatters: at 1 : 3 it lies 7 % below and 6 % above the plate it was fitted to, on one curve.
  it.each([
    [1, 29.4, 0.02],
    [1, 99.4, 0.02],
    [1, 180, 0.02],
    [1.5, 10, 0.02],
    [1.5, 50, 0.02],
    [1.5, 100, 0.02],
    [2, 10, 0.04],
    [2, 50, 0.04],
    [3, 20, 0.09],
    [3, 60, 0.09],
    [5, 20, 0.09],
  ])('sides 1 : %d, Q = %d: w/t of ASTM E1300, app. X1 (ν = 0.22), within %d', (ratio, Q, part) => {
    expect(abs(deflection(ratio, Q, 0.22) / slippingGlass(ratio, Q) - 1)).toBeLessThan(part);
  });

  it('deflects more than with straight edges, S. Levy, NACA Report 737, no mean edge force (from memory): w/t 0.486, 0.962, 1.424, 1.870 at Q = 12.1, 29.4, 56.9, 99.4 (ν = 0.316), and less than 30 % more', () => {
    for (const [Q, w] of [
      [12.1, 0.486],
      [29.4, 0.962],
      [56.9, 1.424],
      [99.4, 1.87],
    ] as const) {
      expect(deflection(1, Q, 0.316)).toBeGreaterThan(w);
      expect(deflection(1, Q, 0.316)).toBeLessThan(1.3 * w);
    }
  });

  it.each([
    [1, 60],
    [1.5, 60],
    [2.5, 25],
  ])('sides 1 : %d, Q = %d: as von Kármán’s equations in displacements, by Ritz’s method, to 0.003', (ratio, Q) => {
    expect(abs(deflection(ratio, Q) / vonKarman(ratio, Q, 'hinged', { slides: true, finer: 2 }).w - 1)).toBeLessThan(
      0.003,
    );
  });

  it('begins as the plate of small deflections, whatever way it lies and is loaded', () => {
    expect(abs(deflection(1, 0.01) / (0.01 * 0.00406235 * 10.92) - 1)).toBeLessThan(1e-4);
    expect(deflection(1.7, 0)).toBe(0);
    expect(slidingPlate({ ...plate(1.7, 40), a: 1, b: 1.7 }).deflection).toBeCloseTo(deflection(1.7, 40), 5);
    expect(deflection(1.7, -40)).toBe(-deflection(1.7, 40));
  });

  it('knows ν by the stiffness D alone: the same w/ŵ at the same small deflection/ŵ', () => {
    const unit = (nu: number): number => 1 / sqrt(12 * (1 - nu ** 2));
    const Q = (nu: number): number => (2 * unit(nu)) / small(1.3, 1, nu);
    expect(deflection(1.3, Q(0.45), 0.45) / unit(0.45)).toBeCloseTo(deflection(1.3, Q(0), 0) / unit(0), 9);
  });

  it('grows with the load everywhere, and its stiffness too; beyond the curves the last stiffness holds on', () => {
    for (const ratio of [1, 1.4, 2, 3]) {
      let last = { w: 0, stiffness: 0 };
      for (let share = 0.05; share < 1.6; share += 0.05) {
        const Q = (share * curvesEnd) / sqrt(10.92) / small(ratio, 1);
        const w = deflection(ratio, Q);
        expect(w).toBeGreaterThan(last.w);
        expect(Q / w).toBeGreaterThan((1 - 1e-9) * last.stiffness);
        if (share > 1.05) expect(Q / w).toBeCloseTo(last.stiffness, 9);
        last = { w, stiffness: Q / w };
      }
    }
  });

  it('takes small deflections beyond 1 : 5, where a plate bends to a cylinder and sliding edges add at most 2 %', () => {
    expect(deflection(5.01, 50)).toBe(small(5.01, 50));
    for (const ratio of [1, 2, 3, 3.5, 4, 4.5, 5])
      for (const thicknesses of [0.2, 1, 2, 3, 5, 10]) {
        const Q = thicknesses / small(ratio, 1);
        expect(deflection(ratio, Q)).toBeLessThan(1.02 * small(ratio, Q));
      }
  });

  it('stress on either face stays below that of small deflections to 1 : 2.5, and within 3.5 % of it to 1 : 5', () => {
    for (const ratio of [1, 1.5, 2, 2.5, 4, 5])
      for (const thicknesses of [0.3, 1, 3, 6, 10]) {
        const Q = thicknesses / small(ratio, 1);
        const linear = hingedPlate(plate(ratio, Q)).stressLargest;
        expect(largestStress(ratio, Q) / linear).toBeLessThan(ratio > 2.5 ? 1.035 : 1.005);
        expect(largestStress(ratio, Q) / linear).toBeGreaterThan(0.6);
      }
  });

  it('refuses a plate without thickness', () =>
    expect(() => slidingPlate({ ...plate(1, 1), t: 0 })).toThrow(/t must be positive/));
});

/** Largest von Mises stress, membrane and bending, of either face, over E t² / s² = 1, at ν = 0.3. */
function largestStress(ratio: number, Q: number): number {
  const nu = 0.3;
  const k = sqrt(12 * (1 - nu ** 2));
  const { m, n, W, Φ, clamped } = slidingShape(ratio, Q * k ** 3);
  const [X, Y] = clamped;
  let largest = 0;
  for (let i = 0; i <= 10; i++)
    for (let j = 0; j <= 10; j++) {
      const [x, y] = [i / 20, j / 20];
      let [xx, yy, xy] = [0, 0, 0];
      W.forEach((w, s) => {
        const [p, r] = [m[s]! * π, n[s]! * π];
        xx -= w * p ** 2 * sin(p * x) * sin(r * y);
        yy -= w * (r / ratio) ** 2 * sin(p * x) * sin(r * y);
        xy += ((w * p * r) / ratio) * cos(p * x) * cos(r * y);
      });
      const f = ([0, 1, 2] as const).map((order) => X.at(2 * x - 1, order).map((v) => v * 2 ** order));
      const g = ([0, 1, 2] as const).map((order) => Y.at(2 * y - 1, order).map((v) => v * (2 / ratio) ** order));
      const stress = (p: number, s: number): number =>
        Φ.reduce((sum, φ, at) => sum + φ * f[p]![Math.floor(at / Y.size)]! * g[s]![at % Y.size]!, 0);
      const [Nx, Ny, Nxy] = [stress(0, 2), stress(2, 0), -stress(1, 1)];
      for (const face of [6 / k, -6 / k]) {
        const [sx, sy, sxy] = [Nx + face * (xx + nu * yy), Ny + face * (yy + nu * xx), Nxy + face * (1 - nu) * xy];
        largest = Math.max(largest, sqrt(sx ** 2 + sy ** 2 - sx * sy + 3 * sxy ** 2));
      }
    }
  return largest / k ** 2;
}
