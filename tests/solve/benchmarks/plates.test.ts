import { describe, expect, it } from 'vitest';
import { beam } from '../../../core/solve/elements/beam.ts';
import { BenchStructure, shellGrid } from './support/bench-structure.ts';
import { momentsAt, PlateUnderTest } from './support/plate-under-test.ts';
import { refinement } from './support/refinement.ts';

const meshes = [4, 8, 16];
const solvedAt = <T>(solve: (n: number) => T): T[] => meshes.map(solve);

/** Quarter plate with its two outer sides hinged (w = 0 and no turning along the side) or clamped. */
function quarter(n: number, b: number, clamped: boolean, triangles = false): PlateUnderTest {
  const plate = new PlateUnderTest(n, { b, triangles });
  for (let k = 0; k <= n; k++) {
    plate.hold(plate.at(n, k), clamped ? 'zXY' : 'zX');
    plate.hold(plate.at(k, n), clamped ? 'zXY' : 'zY');
  }
  return plate;
}
const w = (u: Float64Array, node: number): number => u[6 * node + 2]!;

describe('plates of every support (quarter meshes 4, 8, 16)', () => {
  it('hinged, uniform pressure: w and M as Timoshenko & Woinowsky-Krieger, 2nd ed., Table 8 (digits from the Levy series)', () => {
    for (const [b, α, βx, βy] of [
      [1, 0.0040624, 0.0478864, 0.0478864],
      [1.5, 0.007724, 0.0811601, 0.0498427],
      [2, 0.0101287, 0.1016831, 0.0463503],
    ] as const) {
      const values = solvedAt((n) => {
        const plate = quarter(n, b, false).pressure();
        const u = plate.solve();
        return { w: w(u, 0), M: plate.moments(u, 0) };
      });
      const r = refinement(
        `hinged 1 × ${b}, w`,
        meshes,
        values.map((v) => v.w),
        α,
      );
      expect(Math.abs(r.errors[2]!)).toBeLessThan(5e-4); // too near on every mesh to show an order
      const m = refinement(
        `hinged 1 × ${b}, Mx`,
        meshes,
        values.map((v) => v.M[0]),
        βx,
      );
      expect(Math.abs(m.errors[2]!)).toBeLessThan(3e-3);
      expect(m.order).toBeGreaterThan(1.8);
      expect(Math.abs(values[2]!.M[1] / βy - 1)).toBeLessThan(3e-3);
    }
  });

  it('clamped, uniform pressure: w and M as a Ritz solution of 14 × 14 Legendre terms (derived; T&WK Table 35)', () => {
    for (const [b, α, edge, centre] of [
      [1, 0.0012653, -0.051334, 0.022905],
      [1.5, 0.0021965, -0.075659, 0.036771],
      [2, 0.002533, -0.082867, 0.041155],
    ] as const) {
      const values = solvedAt((n) => {
        const plate = quarter(n, b, true).pressure();
        const u = plate.solve();
        return { w: w(u, 0), edge: plate.moments(u, plate.at(n, 0))[0], centre: plate.moments(u, 0)[0] };
      });
      const r = refinement(
        `clamped 1 × ${b}, w`,
        meshes,
        values.map((v) => v.w),
        α,
      );
      expect(Math.abs(r.errors[2]!)).toBeLessThan(5e-3);
      expect(r.order).toBeGreaterThan(1.8);
      expect(Math.abs(r.limit / α - 1)).toBeLessThan(5e-4);
      const e = refinement(
        `clamped 1 × ${b}, M at the edge`,
        meshes,
        values.map((v) => v.edge),
        edge,
      );
      expect(Math.abs(e.errors[2]!)).toBeLessThan(5e-3);
      expect(Math.abs(values[2]!.centre / centre - 1)).toBeLessThan(5e-3);
    }
  });

  it('under a central load P: c in w = c P a²/D by the Levy series (hinged) and T&WK Table 37 (clamped), printed digits', () => {
    for (const [b, clamped, c, digits] of [
      [1, false, 0.0116008, 1e-3],
      [2, false, 0.0165239, 1e-3],
      [1, true, 0.0056, 2e-3],
      [2, true, 0.00722, 2e-3],
    ] as const) {
      const values = solvedAt((n) => {
        const plate = quarter(n, b, clamped);
        plate.push(0, 'z', 0.25);
        return w(plate.solve(), 0);
      });
      const r = refinement(`${clamped ? 'clamped' : 'hinged'} 1 × ${b}, P`, meshes, values, c);
      expect(Math.abs(r.errors[2]!)).toBeLessThan(0.02);
      expect(Math.abs(r.limit / c - 1)).toBeLessThan(digits + 2e-3);
    }
  });

  it('with triangles comes to the same square plates', () => {
    for (const [clamped, α] of [
      [false, 0.0040624],
      [true, 0.0012653],
    ] as const) {
      const values = solvedAt((n) => w(quarter(n, 1, clamped, true).pressure().solve(), 0));
      const r = refinement(`${clamped ? 'clamped' : 'hinged'} square of triangles`, meshes, values, α);
      expect(Math.abs(r.errors[2]!)).toBeLessThan(5e-3);
      expect(r.order).toBeGreaterThan(1.7);
    }
  });

  it('held at points: square at its corners, inset corners, corners with mid-sides (Legendre Ritz with constraints, derived)', () => {
    const cases = [
      ['corners', 0, [0.025507, 0, 0.017747], 0.11171, 0.15044],
      ['inset 0.1 a', 0.1, [0.008595, -0.003827, 0.004123], 0.0687, 0.0863],
      ['corners and mid-sides', -1, [0.00488, 0, 0], 0.0497, NaN],
    ] as const;
    for (const [title, inset, deflections, M0, Medge] of cases) {
      const values = [10, 20, 40].map((n) => {
        const plate = new PlateUnderTest(n).pressure();
        const support = inset > 0 ? plate.at(n * (1 - 2 * inset), n * (1 - 2 * inset)) : plate.at(n, n);
        plate.hold(support, 'z');
        if (inset < 0) for (const k of [plate.at(n, 0), plate.at(0, n)]) plate.hold(k, 'z');
        const u = plate.solve();
        return {
          w: [w(u, 0), w(u, plate.at(n, n)), w(u, plate.at(n, 0))],
          M0: plate.moments(u, 0)[0],
          edge: plate.moments(u, plate.at(0, n))[0],
        };
      });
      const r = refinement(
        `held at ${title}, w`,
        [10, 20, 40],
        values.map((v) => v.w[0]!),
        deflections[0],
      );
      expect(Math.abs(r.errors[2]!)).toBeLessThan(5e-3);
      const scale = Math.abs(deflections[0]);
      deflections.forEach((value, k) => expect(Math.abs(values[2]!.w[k]! - value)).toBeLessThan(5e-3 * scale + 5e-6));
      expect(Math.abs(values[2]!.M0 / M0 - 1)).toBeLessThan(5e-3);
      if (Medge) expect(Math.abs(values[2]!.edge / Medge - 1)).toBeLessThan(5e-3);
    }
  });

  it('with edge beams of g = EI/aD: 0.5, 1, 10 (Legendre Ritz, derived)', () => {
    for (const [g, w0, edge, M0] of [
      [0.5, 0.011537, 0.006217, 0.07018],
      [1, 0.008589, 0.003768, 0.06139],
      [10, 0.004621, 0.000466, 0.04955],
    ] as const) {
      const n = 16;
      const plate = new PlateUnderTest(n).pressure();
      const section = { A: 1, Iy: g, Iz: 1, J: 1e-9, Ay: Infinity, Az: Infinity };
      for (let k = 0; k < n; k++)
        for (const nodes of [
          [plate.at(n, k), plate.at(n, k + 1)],
          [plate.at(k, n), plate.at(k + 1, n)],
        ])
          plate.elements.push({
            nodes,
            stiffness: beam({ xyz: plate.coordinates(nodes), section, E: 1, G: 1, orientation: [0, 0, 1] }).stiffness,
          });
      plate.hold(plate.at(n, n), 'z');
      const u = plate.solve();
      expect(Math.abs(w(u, 0) / w0 - 1)).toBeLessThan(5e-3);
      expect(Math.abs(w(u, plate.at(n, 0)) / edge - 1)).toBeLessThan(5e-3);
      expect(Math.abs(plate.moments(u, 0)[0] / M0 - 1)).toBeLessThan(5e-3);
    }
  });

  it('on line springs along its edges, k a³/D = 10, 100, 1e4: the corners lift on stiff ones (Legendre Ritz, derived)', () => {
    for (const [k, w0, edge, corner] of [
      [10, 0.032037, 0.026924, 0.021636],
      [100, 0.008418, 0.003641, 0.000363],
      [1e4, 0.004159, 0.000042, -0.000085],
    ] as const) {
      const n = 32;
      const plate = new PlateUnderTest(n).pressure();
      const spring = (node: number, share: number): void => {
        const stiffness = new Float64Array(36);
        stiffness[14] = (k * share) / (2 * n);
        plate.elements.push({ nodes: [node], stiffness });
      };
      for (let i = 0; i <= n; i++)
        for (const node of [plate.at(n, i), plate.at(i, n)]) spring(node, i === 0 || i === n ? 0.5 : 1);
      const u = plate.solve();
      [w(u, 0) / w0, w(u, plate.at(n, 0)) / edge].forEach(
        (ratio, r) => expect(Math.abs(ratio - 1)).toBeLessThan(r && k === 1e4 ? 0.02 : 5e-3), // 0.000042 has two digits
      );
      expect(Math.abs(w(u, plate.at(n, n)) - corner)).toBeLessThan(5e-3 * Math.abs(corner) + 2e-6);
    }
  });

  it('on two opposite edges, hinged and clamped, the others free (Ritz, derived)', () => {
    for (const [clamped, b, w0, free, Mx] of [
      [false, 0.5, 0.013713, 0.014645, 0.12364],
      [false, 1, 0.013094, 0.015011, 0.12255],
      [false, 2, 0.012887, 0.015202, 0.12347],
      [true, 0.5, 0.00262, 0.002834, 0.0402],
      [true, 1, 0.00256, 0.002909, 0.0406],
      [true, 2, 0.00259, 0.00292, 0.0415],
    ] as const) {
      const values = solvedAt((n) => {
        const plate = new PlateUnderTest(n, { b }).pressure();
        for (let k = 0; k <= n; k++) plate.hold(plate.at(n, k), clamped ? 'zXY' : 'zX');
        const u = plate.solve();
        return { w: w(u, 0), free: w(u, plate.at(0, n)), Mx: plate.moments(u, 0)[0] };
      });
      const r = refinement(
        `two edges ${clamped ? 'clamped' : 'hinged'} 1 × ${b}, w`,
        meshes,
        values.map((v) => v.w),
        w0,
      );
      expect(Math.abs(r.errors[2]!)).toBeLessThan(5e-3);
      expect(Math.abs(values[2]!.free / free - 1)).toBeLessThan(5e-3);
      expect(Math.abs(values[2]!.Mx / Mx - 1)).toBeLessThan(5e-3);
    }
  });

  it('the rectangular plates of MacNeal & Harder (1985), t/a = 5e-5: quarter meshes 2, 4, 8 (clamped 2 × 10: 2.604, not their 2.56)', () => {
    for (const [b, clamped, point, published, tolerance] of [
      [1, false, false, 4.062, 1e-3],
      [5, false, false, 12.97, 5e-3],
      [1, false, true, 11.6, 0.015],
      [5, false, true, 16.96, 0.04],
      [1, true, false, 1.26, 0.02],
      [5, true, false, 2.604, 1e-3],
      [1, true, true, 5.6, 0.025],
      [5, true, true, 7.23, 0.07],
    ] as const) {
      const values = [2, 4, 8].map((n) => {
        const structure = new BenchStructure();
        const { at, quads } = shellGrid(structure, n, n, (s, t) => [s, b * t, 0], {
          thickness: 1e-4,
          E: 1.7472e7,
          nu: 0.3,
        });
        for (let k = 0; k < (n + 1) ** 2; k++) structure.hold(k, 'xyZ');
        for (let i = 0; i <= n; i++) {
          structure.hold(at(i, 0), 'X');
          structure.hold(at(0, i), 'Y');
          structure.hold(at(i, n), clamped ? 'zXY' : 'zY');
          structure.hold(at(n, i), clamped ? 'zXY' : 'zX');
        }
        if (point) structure.push(0, 'z', 1e-4);
        else for (const quad of quads) for (const k of quad) structure.push(k, 'z', (1e-4 * b) / (4 * n * n));
        return structure.solve()[2]!;
      });
      const r = refinement(
        `${clamped ? 'clamped' : 'hinged'} 2 × ${2 * b}, ${point ? 'P' : 'q'}`,
        [2, 4, 8],
        values,
        published,
      );
      expect(Math.abs(r.errors[2]!)).toBeLessThan(tolerance);
    }
  });

  it('Morley’s skew plates, 30° and 60°, hinged (Morley 1963; digits from Ritz, derived): from above, slower at 30°', () => {
    for (const [degrees, published, tolerance, moments, tolerance2] of [
      [30, 0.4095e-3, 0.04, [0.019, 0.0111], 0.035],
      [60, 0.00256, 0.004, [0.0425, 0.0333], 0.005],
    ] as const) {
      const α = (degrees * Math.PI) / 180;
      const meshes = [8, 16, 32];
      const solved = meshes.map((n) => {
        const structure = new BenchStructure();
        const map = (s: number, t: number) => [s + t * Math.cos(α), t * Math.sin(α), 0] as const;
        const material = { thickness: 0.01, E: 12 * 0.91 * 1e6, nu: 0.3 };
        const { at, quads } = shellGrid(structure, n, n, map, material);
        for (let k = 0; k < (n + 1) ** 2; k++) structure.hold(k, 'xyZ');
        for (let i = 0; i <= n; i++) for (const k of [at(i, 0), at(0, i), at(i, n), at(n, i)]) structure.hold(k, 'z');
        for (const quad of quads) for (const k of quad) structure.push(k, 'z', Math.sin(α) / (4 * n * n));
        const u = structure.solve();
        const middle = at(n / 2, n / 2);
        return { w: w(u, middle), M: momentsAt(structure, material, u, middle) };
      });
      const r = refinement(
        `skew ${degrees}°, w`,
        meshes,
        solved.map((s) => s.w),
        published,
      );
      expect(Math.abs(r.errors[2]!)).toBeLessThan(tolerance);
      expect(r.errors[0]!).toBeGreaterThan(r.errors[1]!);
      expect(r.order).toBeGreaterThan(1);
      const [Mx, My, Mxy] = solved[2]!.M;
      const [mean, radius] = [(Mx + My) / 2, Math.hypot((Mx - My) / 2, Mxy)];
      [mean + radius, mean - radius].forEach((M, k) => {
        console.info(`skew ${degrees}°, M${k + 1}: ${(M / moments[k]!).toFixed(4)} of ${moments[k]}`);
        expect(Math.abs(M / moments[k]! - 1)).toBeLessThan(tolerance2);
      });
    }
  });
});
