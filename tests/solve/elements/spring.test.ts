import { describe, expect, it } from 'vitest';
import { lineSpring } from '../../../core/solve/elements/line-spring.ts';
import { spring } from '../../../core/solve/elements/spring.ts';
import { BenchStructure } from '../benchmarks/support/bench-structure.ts';

describe('spring', () => {
  it('between two arms: a force and a moment on the free node are carried as statics says', () => {
    const made = spring({
      stiffness: [1e6, 2e6, 3e6, 4e4, 5e4, 6e4],
      offsets: [
        [0.5, 0, 0],
        [0.2, 0.1, -0.3],
      ],
    });
    const structure = new BenchStructure();
    structure.node(0, 0);
    structure.node(0.3, -0.1, 0.3);
    structure.elements.push({ nodes: [0, 1], stiffness: made.stiffness });
    structure.hold(0, 'xyzXYZ');
    const force = [100, 200, 300, 10, 20, 30];
    force.forEach((value, k) => structure.push(1, 'xyzXYZ'[k]!, value));
    // At the spring: the force, and the moment less offset × force.
    const [x, y, z] = [0.2, 0.1, -0.3];
    const arm = [y * 300 - z * 200, z * 100 - x * 300, x * 200 - y * 100];
    const expected = [100, 200, 300, 10 - arm[0]!, 20 - arm[1]!, 30 - arm[2]!];
    made.forces(structure.solve()).forEach((value, k) => expect(value).toBeCloseTo(expected[k]!, 8));
  });

  it('to the ground holds a node by itself, along turned axes', () => {
    const [c, s] = [0.6, 0.8];
    const made = spring({
      stiffness: [1e3, 2e3, 3e3, 1, 1, 1],
      offsets: [[0, 0, 0]],
      axes: [c, s, 0, -s, c, 0, 0, 0, 1],
    });
    const structure = new BenchStructure();
    structure.node(0, 0);
    structure.elements.push({ nodes: [0], stiffness: made.stiffness });
    structure.push(0, 'x', 10);
    const u = structure.solve();
    expect(u[0]!).toBeCloseTo(10 * (c * c / 1e3 + s * s / 2e3), 12); // prettier-ignore
    [...made.forces(u)].slice(0, 2).forEach((value, k) => expect(value).toBeCloseTo([10 * c, -10 * s][k]!, 10));
  });

  it('a rigid motion of both nodes costs nothing when its ends lie at one place', () => {
    const made = spring({ stiffness: [1, 2, 3, 4, 5, 6], offsets: [[0.5, 0.2, 0.1], [-0.5, 0.1, 0.4]] }); // prettier-ignore
    // Nodes at minus the offsets: ends at the origin, turning about it moves the nodes by θ × (-o).
    for (const θ of [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ]) {
      const node = (o: number[]): number[] => [
        -(θ[1]! * o[2]! - θ[2]! * o[1]!),
        -(θ[2]! * o[0]! - θ[0]! * o[2]!),
        -(θ[0]! * o[1]! - θ[1]! * o[0]!),
        ...θ,
      ]; // prettier-ignore
      const u = Float64Array.from([...node([0.5, 0.2, 0.1]), ...node([-0.5, 0.1, 0.4])]);
      made.forces(u).forEach((value) => expect(Math.abs(value)).toBeLessThan(1e-14));
    }
  });

  it('four equal inclined lines share a load: each pulls P/(4 sin) (statics), and sinks P L/(4 EA sin²)', () => {
    const [P, EA, h, a] = [1000, 5e6, 3, 2];
    const L = Math.hypot(h, a, a);
    const structure = new BenchStructure();
    structure.node(0, 0);
    structure.hold(0, 'XYZ');
    const lines = [[1, 1], [1, -1], [-1, 1], [-1, -1]].map(([sx, sy]) =>
      lineSpring({ offset: [0, 0, 0], to: [sx! * a, sy! * a, h], EA }),
    ); // prettier-ignore
    for (const { stiffness } of lines) structure.elements.push({ nodes: [0], stiffness });
    structure.push(0, 'z', -P);
    const u = structure.solve();
    for (const line of lines) expect(line.forces(u)[0]!).toBeCloseTo((P * L) / (4 * h), 8);
    expect(u[2]! / ((-P * L ** 3) / (4 * EA * h ** 2))).toBeCloseTo(1, 11);
  });

  it('refuses what is no spring and no line', () => {
    const stiffness = [1, 1, 1, 1, 1, 1] as const;
    expect(() => spring({ stiffness: [-1, 0, 0, 0, 0, 0], offsets: [[0, 0, 0]] })).toThrow(/zero or more/);
    expect(() => spring({ stiffness, offsets: [[0, 0, 0]], axes: [1, 0, 0, 1, 0, 0, 0, 0, 1] })).toThrow(/square/);
    expect(() => lineSpring({ offset: [0, 0, 0], to: [0, 0, 0], EA: 1 })).toThrow(/no length/);
    expect(() => lineSpring({ offset: [0, 0, 0], to: [0, 0, 1], EA: 0 })).toThrow(/EA must be positive/);
  });
});
