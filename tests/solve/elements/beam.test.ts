import { describe, expect, it } from 'vitest';
import { beam } from '../../../core/solve/elements/beam.ts';
import type { BeamEnd, BeamInput } from '../../../core/solve/elements/beam.ts';
import { beamEndForces, beamForcesAt, beamLoad } from '../../../core/solve/elements/beam-forces.ts';
import { beamMass } from '../../../core/solve/elements/beam-mass.ts';
import { BenchStructure } from '../benchmarks/support/bench-structure.ts';

const section = { A: 18.732e-4, Iy: 279.43e-8, Iz: 150e-8, J: 439.41e-8, Ay: 9e-4, Az: 8e-4 };
const steel = { E: 210e9, G: 80.769231e9 };
const input: BeamInput = { xyz: Float64Array.of(0, 0, 0, 2, 0, 0), section, ...steel, orientation: [0, 0, 1] };

/** Tip displacement of a cantilever (6) under a force on its free node (6). */
function cantilever(of: BeamInput, force: readonly number[]): Float64Array {
  const structure = new BenchStructure();
  structure.node(of.xyz[0]!, of.xyz[1]!, of.xyz[2]!);
  structure.node(of.xyz[3]!, of.xyz[4]!, of.xyz[5]!);
  structure.elements.push({ nodes: [0, 1], stiffness: beam(of).stiffness });
  structure.hold(0, 'xyzXYZ');
  force.forEach((value, k) => structure.push(1, 'xyzXYZ'[k]!, value));
  return structure.solve();
}

describe('beam', () => {
  it('is a cantilever with shear by the formula P L³/3EI + P L/GA_s in both planes (beam theory)', () => {
    const u = cantilever(input, [0, 1000, 1000, 0, 0, 0]);
    const exact = (I: number, As: number): number => (1000 * 8) / (3 * steel.E * I) + 2000 / (steel.G * As);
    expect(u[7]! / exact(section.Iz, section.Ay)).toBeCloseTo(1, 11);
    expect(u[8]! / exact(section.Iy, section.Az)).toBeCloseTo(1, 11);
    expect(u[10]! / -((1000 * 4) / (2 * steel.E * section.Iy))).toBeCloseTo(1, 11);
  });

  it('with offsets equals the same beam with its end loads carried by statics', () => {
    const offset = [0, 0.03, 0.12] as const;
    const u = cantilever({ ...input, start: { offset }, end: { offset } }, [1000, 0, 0, 0, 0, 0]);
    // A pull at the node is the pull on the axis with a moment o × P turned round: My = -oz P, Mz = oy P at the end.
    const [My, Mz] = [-0.12 * 1000, 0.03 * 1000];
    const [θy, θz] = [(My * 2) / (steel.E * section.Iy), (Mz * 2) / (steel.E * section.Iz)];
    const stretch = 2000 / (steel.E * section.A);
    expect(u[10]! / θy).toBeCloseTo(1, 11);
    expect(u[11]! / θz).toBeCloseTo(1, 11);
    // Node from end: u_node = u_end - θ × o
    expect(u[6]! / (stretch - (θy * 0.12 - θz * 0.03))).toBeCloseTo(1, 11);
  });

  it('with springs adds their flexibility to its own, and with a free one gives the pinned stiffness 3EI/L', () => {
    const end: BeamEnd = { springs: [2e7, Infinity, 3e6, 5e4, 4e5, Infinity] };
    const f = [1000, 0, 700, 50, 0, 0] as const;
    const [a, b] = [cantilever({ ...input, start: end }, f), cantilever(input, f)];
    expect((a[6]! - b[6]!) / (1000 / 2e7)).toBeCloseTo(1, 9);
    expect((a[9]! - b[9]!) / (50 / 5e4)).toBeCloseTo(1, 9);
    const turn = (700 * 2) / 4e5;
    expect((a[8]! - b[8]!) / (700 / 3e6 + turn * 2)).toBeCloseTo(1, 9);
    const free: BeamEnd = { springs: [Infinity, Infinity, Infinity, Infinity, 0, Infinity] };
    const K = beam({ ...input, section: { ...section, Az: Infinity }, end: free }).stiffness;
    expect(K[12 * 4 + 4]! / ((3 * steel.E * section.Iy) / 2)).toBeCloseTo(1, 12);
    expect(Math.abs(K[12 * 10 + 10]!)).toBeLessThan(1e-9 * K[12 * 4 + 4]!);
  });

  it('moves its nodes under a line load as ten shorter ones do, and gives the same forces between', () => {
    const load = { start: [100, -300, -1000], end: [50, 200, -2500] } as const;
    const joint: BeamEnd = { springs: [Infinity, 1e6, 2e6, Infinity, 3e5, 4e5] };
    const whole = new BenchStructure();
    const parts = new BenchStructure();
    const one = beam({ ...input, start: joint, end: joint });
    whole.node(0, 0, 0);
    whole.node(2, 0, 0);
    whole.elements.push({ nodes: [0, 1], stiffness: one.stiffness });
    beamLoad(one, load).forEach((f, k) => whole.push(Math.floor(k / 6), 'xyzXYZ'[k % 6]!, f));
    const pieces = Array.from({ length: 10 }, (_, i) => {
      const q = (t: number) => [0, 1, 2].map((c) => load.start[c]! + (load.end[c]! - load.start[c]!) * t) as never;
      return {
        piece: beam({
          ...input,
          xyz: Float64Array.of(i / 5, 0, 0, (i + 1) / 5, 0, 0),
          ...(i === 0 ? { start: joint } : {}),
          ...(i === 9 ? { end: joint } : {}),
        }),
        load: { start: q(i / 10), end: q((i + 1) / 10) },
      };
    });
    for (let i = 0; i <= 10; i++) parts.node(i / 5, 0, 0);
    pieces.forEach(({ piece, load: q }, i) => {
      parts.elements.push({ nodes: [i, i + 1], stiffness: piece.stiffness });
      beamLoad(piece, q).forEach((f, k) => parts.push(i + Math.floor(k / 6), 'xyzXYZ'[k % 6]!, f));
    });
    for (const structure of [whole, parts]) {
      structure.hold(0, 'xyzXYZ');
      structure.hold(structure.xyz.length / 3 - 1, 'xyz');
    }
    const [u, v] = [whole.solve(), parts.solve()];
    for (const k of [3, 4, 5]) expect(Math.abs(u[6 + k]! - v[60 + k]!)).toBeLessThan(1e-10 * 1e-2);
    const { start, end } = beamEndForces(one, u, load);
    pieces.forEach(({ piece, load: q }, i) => {
      const there = beamEndForces(piece, v.subarray(6 * i, 6 * i + 12), q).end;
      const here = beamForcesAt(one, start, (i + 1) / 5, load);
      for (const name of ['N', 'Vy', 'Vz', 'T', 'My', 'Mz'] as const)
        expect(Math.abs(here[name] - there[name])).toBeLessThan(1e-6);
    });
    for (const name of ['N', 'Vy', 'Vz', 'My', 'Mz'] as const)
      expect(beamForcesAt(one, start, 2, load)[name]).toBeCloseTo(end[name], 7);
    expect(end.My).toBeCloseTo(0, 6);
  });

  it('signs its forces as it says: an upward tip load on a cantilever along x', () => {
    const of = beam(input);
    const u = cantilever(input, [500, 0, 1000, 20, 0, 0]);
    const { start, end } = beamEndForces(of, u);
    const expected = { N: 500, Vy: 0, Vz: 1000, T: 20, My: -2000, Mz: 0 };
    for (const [name, value] of Object.entries(expected)) expect(start[name as 'N']).toBeCloseTo(value, 6);
    expect(end.My).toBeCloseTo(0, 6);
  });

  it('moves as a rigid body with the mass, first and second moments of a rod', () => {
    const M = beamMass(beam(input), { mass: [10, 10, 10], inertia: [0.3, 0.1, 0.2] });
    const rigid = (motion: (x: number) => number[]): Float64Array => Float64Array.from([...motion(0), ...motion(2)]);
    const energy = (u: Float64Array): number => {
      let sum = 0;
      for (let i = 0; i < 12; i++) for (let j = 0; j < 12; j++) sum += u[i]! * M[12 * i + j]! * u[j]!;
      return sum;
    };
    expect(energy(rigid(() => [0, 1, 0, 0, 0, 0]))).toBeCloseTo(20, 10);
    expect(energy(rigid((x) => [0, x, 0, 0, 0, 1]))).toBeCloseTo((10 * 8) / 3 + 0.2 * 2, 10);
    expect(energy(rigid((x) => [0, 0, -x, 0, 1, 0]))).toBeCloseTo((10 * 8) / 3 + 0.1 * 2, 10);
    expect(energy(rigid(() => [0, 0, 0, 1, 0, 0]))).toBeCloseTo(0.6, 10);
  });

  it('turns with its axes: a beam in any direction has the same compliance', () => {
    const [a, b] = [0.6, 0.8];
    const turned = { ...input, xyz: Float64Array.of(0, 0, 0, 2 * a, 0, 2 * b), orientation: [-b, 0, a] as const };
    const u = cantilever(turned, [0, 0, 1000, 0, 0, 0]);
    const along = 1000 * b * (2 / (steel.E * section.A));
    const across = 1000 * a * (8 / (3 * steel.E * section.Iy) + 2 / (steel.G * section.Az));
    expect(u[8]! / (along * b + across * a)).toBeCloseTo(1, 11);
  });

  it('refuses what is no beam, and names it', () => {
    expect(() => beam({ ...input, xyz: new Float64Array(6) })).toThrow(/no length/);
    expect(() => beam({ ...input, orientation: [1, 0, 0] })).toThrow(/along its axis/);
    expect(() => beam({ ...input, section: { ...section, J: 0 } })).toThrow(/J must be positive/);
    const loose: BeamEnd = { springs: [1, 1, 1, 0, 1, 1] };
    expect(() => beam({ ...input, start: loose, end: loose })).toThrow(/turn about its axis/);
  });
});
