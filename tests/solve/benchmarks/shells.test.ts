import { describe, expect, it } from 'vitest';
import { BenchStructure, shellGrid } from './support/bench-structure.ts';
import { refinement } from './support/refinement.ts';

const { PI: π, sin, cos } = Math;

/** Share of a unit tip load on node j of m + 1 across a strip. */
const tip = (j: number, m: number): number => (j === 0 || j === m ? 0.5 : 1) / m;

/** The 6 × 0.2 × 0.1 cantilever of MacNeal & Harder: mean tip displacement along the load, or its twist. */
function straight(kind: 'rectangles' | 'trapezia' | 'parallelograms', load: 'x' | 'y' | 'z' | 'twist'): number {
  const structure = new BenchStructure();
  const shift = (i: number, j: number): number => {
    if (i === 0 || i === 6 || kind === 'rectangles') return 0;
    return 0.1 * (j ? 1 : -1) * (kind === 'trapezia' && i % 2 ? -1 : 1);
  };
  const map = (s: number, t: number) => [6 * s + shift(Math.round(6 * s), t), 0.2 * t, 0] as const;
  const { at } = shellGrid(structure, 6, 1, map, { thickness: 0.1, E: 1e7, nu: 0.3 });
  for (const j of [0, 1]) structure.hold(at(0, j), 'xyzXYZ');
  for (const j of [0, 1]) {
    if (load === 'twist') structure.push(at(6, j), 'z', j ? 5 : -5);
    else structure.push(at(6, j), load, 0.5);
  }
  const u = structure.solve();
  const [a, b] = [0, 1].map((j) => u.subarray(6 * at(6, j)));
  if (load === 'twist') return (b![2]! - a![2]!) / 0.2;
  const k = 'xyz'.indexOf(load);
  return (a![k]! + b![k]!) / 2;
}

describe('beams of shells, MacNeal & Harder, Finite Elements in Analysis and Design 1 (1985) 3', () => {
  // Their target for the twist, 0.03208, has the finite thickness of the strip (t/b = ½) in it, which no thin-plate element
  // sees: T L/(G b t³/3) = 0.0234 is the answer of the theory that the element solves.
  const twist = 6 / ((1e7 / 2.6) * ((0.2 * 0.1 ** 3) / 3));
  for (const [kind, inPlane] of [
    ['rectangles', 0.01],
    ['trapezia', 0.03],
    ['parallelograms', 0.045],
  ] as const)
    it(`straight cantilever of six ${kind}: 3e-5 stretched, 0.1081 in plane, 0.4321 out of plane`, () => {
      const ratio = (load: 'x' | 'y' | 'z' | 'twist', target: number): number => {
        const value = straight(kind, load) / target;
        console.info(`straight cantilever of ${kind}, ${load}: ${value.toFixed(4)} of ${target}`);
        return value;
      };
      expect(Math.abs(ratio('x', 3e-5) - 1)).toBeLessThan(5e-3);
      expect(Math.abs(ratio('y', 0.1081) - 1)).toBeLessThan(inPlane);
      expect(Math.abs(ratio('z', 0.4321) - 1)).toBeLessThan(0.02);
      expect(Math.abs(ratio('twist', twist) - 1)).toBeLessThan(5e-3);
    });

  it('curved 90° cantilever: in plane 0.08734 published, 0.08856 by curved-beam theory; out of plane by thin-strip theory', () => {
    const solve = (n: number, load: 'x' | 'z'): number => {
      const structure = new BenchStructure();
      const m = n / 6;
      const map = (s: number, t: number) => {
        const [R, φ] = [4.12 + 0.2 * t, (s * π) / 2];
        return [R * sin(φ), R * cos(φ), 0] as const;
      };
      const { at } = shellGrid(structure, n, m, map, { thickness: 0.1, E: 1e7, nu: 0.25 });
      for (let j = 0; j <= m; j++) {
        structure.hold(at(0, j), 'xyzXYZ');
        structure.push(at(n, j), load, tip(j, m));
      }
      const u = structure.solve();
      const k = 'xyz'.indexOf(load);
      return (u[6 * at(n, 0) + k]! + u[6 * at(n, m) + k]!) / 2;
    };
    const meshes = [6, 12, 24];
    const r = refinement(
      'curved beam in plane',
      meshes,
      meshes.map((n) => solve(n, 'x')),
      0.08856,
    );
    expect(Math.abs(r.errors[0]!)).toBeLessThan(0.025); // the published 0.08734 is where 6 × 1 elements stand
    expect(Math.abs(r.errors[2]!)).toBeLessThan(3e-3);
    // P R³ (π/4EI + (3π/4 - 2)/GJ) with J = b t³/3 of a thin strip; the published 0.5022 has J of a rectangle 2 : 1.
    const [EI, GJ] = [1e7 * ((0.2 * 0.1 ** 3) / 12), 4e6 * ((0.2 * 0.1 ** 3) / 3)];
    const thin = 4.22 ** 3 * (π / 4 / EI + ((3 * π) / 4 - 2) / GJ);
    const out = refinement(
      'curved beam out of plane',
      meshes,
      meshes.map((n) => solve(n, 'z')),
      thin,
    );
    expect(Math.abs(out.errors[2]!)).toBeLessThan(0.01);
  });

  it('twisted 90° cantilever, t 0.32: 0.005424 and 0.001754; t 0.0032: 0.005256 and 0.001294 for 1e-6 (from memory)', () => {
    const solve = (n: number, load: 'y' | 'z', thickness: number): number => {
      const structure = new BenchStructure();
      const m = n / 6;
      const map = (s: number, t: number) => {
        const [φ, width] = [(s * π) / 2, 1.1 * (t - 0.5)];
        return [12 * s, width * sin(φ), width * cos(φ)] as const;
      };
      const { at } = shellGrid(structure, n, m, map, { thickness, E: 29e6, nu: 0.22 });
      for (let j = 0; j <= m; j++) {
        structure.hold(at(0, j), 'xyzXYZ');
        structure.push(at(n, j), load, tip(j, m));
      }
      return structure.solve()[6 * at(n, m / 2) + 'xyz'.indexOf(load)]!;
    };
    for (const [thickness, load, target] of [
      [0.32, 'y', 0.005424],
      [0.32, 'z', 0.001754],
      [0.0032, 'y', 5256],
      [0.0032, 'z', 1294],
    ] as const) {
      const meshes = [12, 24, 48];
      const r = refinement(
        `twisted beam t ${thickness}, ${load}`,
        meshes,
        meshes.map((n) => solve(n, load, thickness)),
        target,
      );
      expect(Math.abs(r.errors[0]!)).toBeLessThan(0.01);
      expect(Math.abs(r.errors[2]!)).toBeLessThan(0.005);
    }
  });
});

describe('a square tube of shells, midline 95 × 95 × 5, 1 m, against beam theory', () => {
  const [b, t, L, E, nu] = [0.095, 0.005, 1, 210e9, 0.3];
  const G = E / (2 * (1 + nu));

  /** Four walls of n across and 4 n along; corners share nodes, so that walls meet in their drilling and bending freedoms. */
  function tube(n: number): {
    structure: BenchStructure;
    ring: (i: number) => { node: number; x: number; y: number }[];
  } {
    const structure = new BenchStructure();
    const around = Array.from({ length: 4 * n }, (_, k) => {
      const s = (k % n) / n - 0.5;
      const [x, y] = [s * b, -b / 2];
      return [
        [x, y],
        [-y, x],
        [-x, -y],
        [y, -x],
      ][Math.floor(k / n)] as [number, number];
    });
    const stations = 10 * n;
    for (let i = 0; i <= stations; i++) for (const [x, y] of around) structure.node(x, y, (L * i) / stations);
    for (let i = 0; i < stations; i++)
      for (let k = 0; k < 4 * n; k++) {
        const next = (k + 1) % (4 * n);
        const at = (row: number, place: number): number => 4 * n * row + place;
        structure.shell([at(i, k), at(i, next), at(i + 1, next), at(i + 1, k)], { thickness: t, E, nu });
      }
    const ring = (i: number) => around.map(([x, y], k) => ({ node: 4 * n * (i < 0 ? stations : i) + k, x, y }));
    return { structure, ring };
  }

  it('twists by T L/(G 4A²t/4b) (Bredt), with the walls’ own twist (4 b t³/3)', () => {
    const values = [2, 4].map((n) => {
      const { structure, ring } = tube(n);
      // Shear flow q = T/2A along the midline at both ends; corners get half a wall element from each side.
      const q = 1000 / (2 * b * b);
      for (const [end, sign] of [
        [-1, 1],
        [0, -1],
      ] as const) {
        const nodes = ring(end);
        nodes.forEach(({ node, x, y }, k) => {
          for (const step of [-1, 1]) {
            const other = nodes[(k + step + 4 * n) % (4 * n)]!;
            structure.push(node, 'x', (sign * q * step * (other.x - x)) / 2);
            structure.push(node, 'y', (sign * q * step * (other.y - y)) / 2);
          }
        });
      }
      const first = ring(0);
      structure.hold(first[0]!.node, 'xyz');
      structure.hold(first[n]!.node, 'yz');
      structure.hold(first[3 * n]!.node, 'z');
      const u = structure.solve();
      const turn = (nodes: { node: number; x: number; y: number }[]): number =>
        nodes.reduce((sum, { node, x, y }) => sum + (x * u[6 * node + 1]! - y * u[6 * node]!) / (x * x + y * y), 0) /
        nodes.length;
      return turn(ring(-1)) - turn(first);
    });
    const exact = (1000 * L) / (G * (b ** 3 * t + (4 * b * t ** 3) / 3));
    values.forEach((value, k) =>
      console.info(`tube of shells in torsion, ${[2, 4][k]} a wall: ${(value / exact).toFixed(4)}`),
    );
    expect(Math.abs(values[1]! / exact - 1)).toBeLessThan(0.01);
  });

  it('bends under an end moment by M L/EI of its midline', () => {
    const { structure, ring } = tube(4);
    const I = (2 * b ** 3 * t) / 3 + (2 * b * t ** 3) / 12;
    // σ = M y/I along the midline: consistent forces of a linear traction.
    for (const [end, sign] of [
      [-1, 1],
      [0, -1],
    ] as const) {
      const nodes = ring(end);
      nodes.forEach(({ node, y }, k) => {
        for (const step of [-1, 1]) {
          const other = nodes[(k + step + 16) % 16]!;
          structure.push(node, 'z', (sign * (1000 / I) * t * (b / 4) * (2 * y + other.y)) / 6);
        }
      });
    }
    const first = ring(0);
    structure.hold(first[0]!.node, 'xyz');
    structure.hold(first[4]!.node, 'yz');
    structure.hold(first[12]!.node, 'z');
    const u = structure.solve();
    const slope = (nodes: { node: number; y: number }[]): number => {
      const [low, high] = [nodes[2]!, nodes[10]!];
      return (u[6 * high.node + 2]! - u[6 * low.node + 2]!) / (high.y - low.y);
    };
    const value = (slope(ring(-1)) - slope(first)) / ((1000 * L) / (E * I));
    console.info(`tube of shells in bending: ${value.toFixed(4)}`);
    expect(Math.abs(value - 1)).toBeLessThan(0.005);
  });
});

describe('curved shells', () => {
  const meshes = [4, 8, 16, 32];

  it('Scordelis–Lo roof: 0.3024 at the middle of the free edge, fine meshes of deep shells 0.3006 (published, from memory)', () => {
    const values = meshes.map((n) => {
      const structure = new BenchStructure();
      const map = (s: number, t: number) => {
        const φ = (t * 40 * π) / 180;
        return [25 * s, 25 * sin(φ), 25 * cos(φ)] as const;
      };
      const { at, quads } = shellGrid(structure, n, n, map, { thickness: 0.25, E: 4.32e8, nu: 0 });
      for (let i = 0; i <= n; i++) {
        structure.hold(at(i, 0), 'yXZ');
        structure.hold(at(0, i), 'yz');
        structure.hold(at(n, i), 'xYZ');
      }
      const area = (25 / n) * 50 * sin(((20 / n) * π) / 180);
      for (const quad of quads) for (const k of quad) structure.push(k, 'z', (-90 * area) / 4);
      return -structure.solve()[6 * at(n, n) + 2]!;
    });
    const r = refinement('Scordelis–Lo roof', meshes, values, 0.3024);
    expect(r.errors[0]!).toBeLessThan(0.06);
    expect(Math.abs(r.errors[1]!)).toBeLessThan(0.01);
    expect(Math.abs(values[3]! / 0.3006 - 1)).toBeLessThan(2e-3);
  });

  it('pinched cylinder with end diaphragms: 1.8248e-5 under the load (series, from memory)', () => {
    const values = meshes.map((n) => {
      const structure = new BenchStructure();
      const map = (s: number, t: number) => [300 * s, 300 * sin((t * π) / 2), 300 * cos((t * π) / 2)] as const;
      const { at } = shellGrid(structure, n, n, map, { thickness: 3, E: 3e6, nu: 0.3 });
      for (let i = 0; i <= n; i++) {
        structure.hold(at(i, 0), 'yXZ');
        structure.hold(at(i, n), 'zXY');
        structure.hold(at(0, i), 'yz');
        structure.hold(at(n, i), 'xYZ');
      }
      structure.push(at(n, 0), 'z', -0.25);
      return -structure.solve()[6 * at(n, 0) + 2]!;
    });
    const r = refinement('pinched cylinder', meshes, values, 1.8248e-5);
    expect(Math.abs(r.errors[1]!)).toBeLessThan(0.06);
    expect(Math.abs(r.errors[3]!)).toBeLessThan(0.015);
  });

  it('hemisphere with an 18° hole: 0.0940 (MacNeal & Harder), 0.0935 (later fine meshes; from memory); late on coarse meshes', () => {
    const values = meshes.map((n) => {
      const structure = new BenchStructure();
      const map = (s: number, t: number) => {
        const [φ, θ] = [(s * π) / 2, (t * 72 * π) / 180];
        return [10 * cos(θ) * cos(φ), 10 * cos(θ) * sin(φ), 10 * sin(θ)] as const;
      };
      const { at } = shellGrid(structure, n, n, map, { thickness: 0.04, E: 6.825e7, nu: 0.3 });
      for (let j = 0; j <= n; j++) {
        structure.hold(at(0, j), 'yXZ');
        structure.hold(at(n, j), 'xYZ');
      }
      structure.hold(at(0, 0), 'z');
      structure.push(at(0, 0), 'x', 1);
      structure.push(at(n, 0), 'y', -1);
      const u = structure.solve();
      // Symmetric in its two loads.
      expect(Math.abs(u[6 * at(0, 0)]! / -u[6 * at(n, 0) + 1]! - 1)).toBeLessThan(1e-6);
      return u[6 * at(0, 0)]!;
    });
    const r = refinement('hemisphere', meshes, values, 0.0935);
    expect(Math.abs(r.errors[2]!)).toBeLessThan(0.04);
    expect(Math.abs(r.errors[3]!)).toBeLessThan(0.005);
  });
});
