import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shellForces, shellRecovery } from '../../../core/solve/elements/shell-recovery.ts';
import { shellStiffness, shellUnits } from '../../../core/solve/elements/shell-stiffness.ts';
import { shellStress } from '../../../core/solve/elements/shell-stress.ts';

const steel = { E: 210e9, nu: 0.3 };
const shapes = {
  'a skewed quadrilateral': Float64Array.of(0, 0, 0, 1.1, 0.1, 0, 1.3, 0.9, 0, 0.2, 0.7, 0),
  'a warped quadrilateral': Float64Array.of(0, 0, 0.05, 1.1, 0.1, -0.04, 1.3, 0.9, 0.06, 0.2, 0.7, -0.05),
  'a triangle': Float64Array.of(0, 0, 0.1, 1.1, 0.1, 0, 0.3, 0.9, 0.2),
};

/** Rotation by the angles of its rows; R is orthogonal. */
const R = ((): number[] => {
  const [a, b] = [0.7, -1.1];
  const [ca, sa, cb, sb] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)];
  return [ca * cb, -sa, ca * sb, sa * cb, ca, sa * sb, -sb, 0, cb];
})();
const rotated = (v: ArrayLike<number>): Float64Array =>
  Float64Array.from({ length: v.length }, (_, k) => {
    const first = 3 * Math.floor(k / 3);
    const row = 3 * (k % 3);
    return R[row]! * v[first]! + R[row + 1]! * v[first + 1]! + R[row + 2]! * v[first + 2]!;
  });
const times = (K: Float64Array, u: ArrayLike<number>): Float64Array =>
  Float64Array.from({ length: u.length }, (_, i) => {
    let sum = 0;
    for (let j = 0; j < u.length; j++) sum += K[i * u.length + j]! * u[j]!;
    return sum;
  });
const largest = (v: ArrayLike<number>): number => Math.max(...Array.from(v, Math.abs));
const some = (length: number): Float64Array => Float64Array.from({ length }, (_, k) => Math.sin(3 * k + 1));

describe('shell', () => {
  for (const [name, xyz] of Object.entries(shapes)) {
    const units = shellUnits(xyz, steel);
    const n = xyz.length / 3;

    it(`${name}: thickness is t times one part and t³ times the other, to the bit; symmetric to the bit`, () => {
      const K = shellStiffness(units, 0.012);
      K.forEach((value, k) => expect(value).toBe(0.012 * units.membrane[k]! + 0.012 ** 3 * units.bending[k]!));
      for (let i = 0; i < 6 * n; i++) for (let j = 0; j < i; j++) expect(K[6 * n * i + j]).toBe(K[6 * n * j + i]);
    });

    it(`${name}: rigid motions cost nothing, and every other motion something`, () => {
      const K = shellStiffness(units, 0.1);
      const scale = largest(K);
      for (let motion = 0; motion < 6; motion++) {
        const θ = [0, 1, 2].map((k) => (motion - 3 === k ? 1 : 0));
        const u = Array.from({ length: n }, (_, i) => {
          const [x, y, z] = [xyz[3 * i]!, xyz[3 * i + 1]!, xyz[3 * i + 2]!];
          const turn = [θ[1]! * z - θ[2]! * y, θ[2]! * x - θ[0]! * z, θ[0]! * y - θ[1]! * x];
          return [...turn.map((value, k) => value + (motion === k ? 1 : 0)), ...θ];
        }).flat();
        expect(largest(times(K, u))).toBeLessThan(1e-12 * scale);
      }
      expect(rank(K, 6 * n, 1e-9)).toBe(6 * n - 6);
    });

    it(`${name}: turning it in space turns its forces, renumbering its nodes renumbers them`, () => {
      const u = some(6 * n);
      const f = times(shellStiffness(units, 0.1), u);
      const turned = times(shellStiffness(shellUnits(rotated(xyz), steel), 0.1), rotated(u));
      const expected = rotated(f);
      turned.forEach((value, k) => expect(Math.abs(value - expected[k]!)).toBeLessThan(1e-11 * largest(f)));
      const on = (v: Float64Array, size: number): Float64Array =>
        Float64Array.from([...v.subarray(size), ...v.subarray(0, size)]);
      const renumbered = times(shellStiffness(shellUnits(on(xyz, 3), steel), 0.1), on(u, 6));
      const order = on(f, 6);
      renumbered.forEach((value, k) => expect(Math.abs(value - order[k]!)).toBeLessThan(1e-11 * largest(f)));
    });

    it(`${name}: its forces per width do not depend on where its own axes lie`, () => {
      const u = some(6 * n);
      const forces = shellForces(shellRecovery(xyz, steel, [1, 0.2, 0]), 0.1, u);
      const turned = shellForces(
        shellRecovery(rotated(xyz), steel, [...rotated([1, 0.2, 0])] as never),
        0.1,
        rotated(u),
      );
      turned.forEach((value, k) => expect(Math.abs(value - forces[k]!)).toBeLessThan(1e-10 * largest(forces)));
    });
  }

  it('stores exactly the energy of any constant strain and curvature, on any convex quadrilateral and triangle', () => {
    const within = (size: number) => fc.double({ min: -size, max: size, noNaN: true });
    const shift = fc.array(within(0.3), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(
        shift,
        fc.array(within(1), { minLength: 6, maxLength: 6 }),
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        (d, state, aspect) => {
          const [εx, εy, γ, κx, κy, κxy] = state as [number, number, number, number, number, number];
          const corners = [0, 0, 1, 0, 1, 1, 0, 1].map((c, k) => (c + 0.8 * d[k]!) * (k % 2 ? 1 : aspect));
          for (const count of [3, 4]) {
            const [E, nu, t] = [12, 0.3, 0.5];
            const xyz = Float64Array.from({ length: 3 * count }, (_, k) =>
              k % 3 < 2 ? corners[2 * Math.floor(k / 3) + (k % 3)]! : 0,
            );
            const u = Float64Array.from({ length: count }).reduce<number[]>((all, _, i) => {
              const [x, y] = [corners[2 * i]!, corners[2 * i + 1]!];
              const w = -(κx * x * x + κy * y * y) / 2 - (κxy * x * y) / 2;
              return [
                ...all,
                εx * x + (γ * y) / 2,
                εy * y + (γ * x) / 2,
                w,
                -κy * y - (κxy * x) / 2,
                κx * x + (κxy * y) / 2,
                0,
              ];
            }, []);
            let area = 0;
            for (let i = 0; i < count; i++) {
              const j = (i + 1) % count;
              area += (corners[2 * i]! * corners[2 * j + 1]! - corners[2 * j]! * corners[2 * i + 1]!) / 2;
            }
            const density = (x: number, y: number, xy: number): number =>
              (E / (1 - nu * nu)) * (x * x + y * y + 2 * nu * x * y + ((1 - nu) / 2) * xy * xy);
            const expected = area * (t * density(εx, εy, γ) + (t ** 3 / 12) * density(κx, κy, κxy));
            const found = times(shellStiffness(shellUnits(xyz, { E, nu }), t), u).reduce(
              (sum, f, k) => sum + f * u[k]!,
              0,
            );
            expect(Math.abs(found - expected)).toBeLessThan(1e-9 * area * E * 20 * Math.max(1, aspect));
          }
        },
      ),
      { seed: 5, numRuns: 200 },
    );
  });

  it('gives stress at the top and the bottom: bending 6 M/t², von Mises and principal of pure shear', () => {
    const bent = [1e5, 0, 0, 100, 0, 0];
    expect(shellStress(bent, 0.01, 'top').x).toBeCloseTo(1e7 + 6e6, 5);
    expect(shellStress(bent, 0.01, 'bottom').vonMises).toBeCloseTo(4e6, 5);
    expect(shellStress(bent, 0.01, 'middle').largest).toBeCloseTo(1e7, 5);
    const shear = shellStress([0, 0, 1e5, 0, 0, 0], 0.01, 'middle');
    expect(shear.vonMises).toBeCloseTo(1e7 * Math.sqrt(3), 5);
    expect([shear.largest, shear.least, shear.angle]).toEqual([1e7, -1e7, Math.PI / 4]);
  });

  it('refuses what is no element, and says which', () => {
    const bad = (xyz: number[]) => () => shellUnits(Float64Array.from(xyz), steel);
    expect(bad([0, 0, 0, 1, 0, 0, 2, 0, 0])).toThrow(/no area/);
    expect(bad([0, 0, 0, 1, 0, 0, 0.2, 0.2, 0, 0, 1, 0])).toThrow(/not convex/);
    expect(bad([0, 0, 0, 1, 0, 0])).toThrow(/3 or 4 nodes/);
    expect(() => shellUnits(shapes['a triangle'], { E: 1, nu: 0.5 })).toThrow(/nu must be/);
    expect(() => shellStiffness(shellUnits(shapes['a triangle'], steel), 0)).toThrow(/thickness must be positive/);
    expect(() => shellRecovery(shapes['a skewed quadrilateral'], steel, [0, 0, 1])).toThrow(/stands square/);
  });
});

/** Rank of a symmetric matrix by pivoted elimination: pivots above `least` of the largest. */
function rank(K: Float64Array, n: number, least: number): number {
  const A = K.slice();
  const left = new Set(Array.from({ length: n }, (_, i) => i));
  const scale = Math.max(...Array.from({ length: n }, (_, i) => A[i * n + i]!));
  let count = 0;
  while (left.size) {
    const p = [...left].reduce((best, i) => (A[i * n + i]! > A[best * n + best]! ? i : best));
    if (!(A[p * n + p]! > least * scale)) break;
    left.delete(p);
    count++;
    for (const i of left) for (const j of left) A[i * n + j]! -= (A[i * n + p]! * A[p * n + j]!) / A[p * n + p]!;
  }
  return count;
}
