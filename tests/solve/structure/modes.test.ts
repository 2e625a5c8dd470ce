import { describe, expect, it } from 'vitest';
import { factorise } from '../../../core/solve/sparse/factorise.ts';
import { structureModes, type ModeSet } from '../../../core/solve/structure/modes-of-structure.ts';
import { modeSupport, type ModeHolding } from '../../../core/solve/structure/modes-support.ts';
import type { SupportPart } from '../../../core/solve/structure/structure.ts';
import { bareGrid, shs100x5, shs100x5Mass, type BareGrid } from './support/bare-grid.ts';

const { PI: π, sqrt } = Math;

function modes({ structure, elements, masses }: BareGrid, holding: ModeHolding, count: number): ModeSet {
  const steps = structureModes(
    modeSupport(structure, elements, (system) => factorise(system), holding),
    { everyWay: masses },
    count,
  );
  for (;;) {
    const next = steps.next();
    if (next.done) return next.value;
  }
}

/** Freedoms of nodes by letter: x y z of displacement, X Y Z of rotation. */
function held({ structure }: BareGrid, list: readonly (readonly [node: number, letters: string])[]): Uint8Array {
  const out = new Uint8Array(2 * structure.coordinates.length);
  for (const [node, letters] of list) for (const letter of letters) out[6 * node + 'xyzXYZ'.indexOf(letter)] = 1;
  return out;
}

/** In the plane of x and z only. */
const inPlane = (grid: BareGrid): readonly (readonly [number, string])[] =>
  Array.from({ length: grid.structure.coordinates.length / 3 }, (_, n) => [n, 'xyXZ'] as const);

/** Frequencies on two meshes, carried on to no size at all: lumped masses are off as its square. Tells the finer one's too. */
function extrapolated(
  grids: readonly [coarse: BareGrid, fine: BareGrid],
  holding: (grid: BareGrid) => ModeHolding,
  count: number,
): { fine: ModeSet; limit: number[] } {
  const [coarse, fine] = grids.map((grid) => modes(grid, holding(grid), count)) as [ModeSet, ModeSet];
  expect(fine.converged).toBe(true);
  const limit = fine.modes.map(({ frequency, residual }, k) => {
    expect(residual).toBeLessThan(1e-6);
    return frequency + (frequency - coarse.modes[k]!.frequency) / 3;
  });
  return { fine, limit };
}

describe('natural modes of beams: (βL)² √(EI/mL⁴)/2π (R. D. Blevins, Formulas for Natural Frequency and Mode Shape, Table 8-1, from memory; βL from the characteristic equations)', () => {
  const L = 4;
  const beams = [bareGrid([0, L], [0], { parts: 20 }), bareGrid([0, L], [0], { parts: 40 })] as const;
  const unit = sqrt((shs100x5.E * shs100x5.Iy) / (shs100x5Mass * L ** 4)) / (2 * π);
  for (const [title, ends, βL] of [
    ['both ends hinged', ['z', 'z'], [π, 2 * π, 3 * π]],
    ['both ends clamped', ['zY', 'zY'], [4.730041, 7.853205, 10.995608]],
    ['one end clamped', ['zY', ''], [1.875104, 4.694091, 7.854757]],
    ['clamped and hinged', ['zY', 'z'], [3.926602, 7.068583, 10.210176]],
    ['free', ['', ''], [4.730041, 7.853205, 10.995608]],
  ] as const)
    it(title, () => {
      const { fine, limit } = extrapolated(
        beams,
        (beam) => ({ held: held(beam, [...inPlane(beam), [beam.at(0, 0), ends[0]], [beam.at(1, 0), ends[1]]]) }),
        3,
      );
      βL.forEach((root, k) => {
        expect(Math.abs(fine.modes[k]!.frequency / (root ** 2 * unit) - 1)).toBeLessThan(5e-3);
        expect(Math.abs(limit[k]! / (root ** 2 * unit) - 1)).toBeLessThan(1e-4);
      });
    });
});

describe('natural modes of a grid of 3 × 7 tubes (digits from exact beam elements with consistent mass, derived)', () => {
  const xs = [0, 1, 2, 3, 4, 5, 6].map((i) => i / 2);
  const ys = [0, 0.5, 1];
  const grid = bareGrid(xs, ys, { parts: 8 });
  const both = [bareGrid(xs, ys, { parts: 4 }), grid] as const;
  const flat = ({ structure }: BareGrid) =>
    Array.from({ length: structure.coordinates.length / 3 }, (_, n) => [n, 'xyZ'] as const);

  it('free: 53.251, 69.663, 145.62, 153.34 Hz, three rigid motions left out', () => {
    const { fine, limit } = extrapolated(both, (own) => ({ held: held(own, flat(own)) }), 4);
    expect(fine.rigid).toBe(3);
    [53.251, 69.663, 145.62, 153.34].forEach((target, k) =>
      expect(Math.abs(limit[k]! / target - 1)).toBeLessThan(1e-4),
    );
    fine.modes.forEach(({ verticalMass }) => expect(verticalMass).toBeLessThan(1e-9));
  });

  it('free in space: the same among those in its plane, six rigid motions left out', () => {
    const { fine, limit } = extrapolated(both, () => ({}), 8);
    expect(fine.rigid).toBe(6);
    for (const target of [53.251, 69.663, 145.62])
      expect(Math.min(...limit.map((frequency) => Math.abs(frequency / target - 1)))).toBeLessThan(1e-4);
  });

  it('middle clamped: 25.652, 32.857, 64.973, 69.663 Hz', () => {
    const { fine, limit } = extrapolated(
      both,
      (own) => ({ held: held(own, [...flat(own), [own.at(3, 1), 'zXY']]) }),
      4,
    );
    expect(fine.rigid).toBe(0);
    [25.652, 32.857, 64.973, 69.663].forEach((target, k) =>
      expect(Math.abs(limit[k]! / target - 1)).toBeLessThan(1e-4),
    );
  });

  it('hung on lines is as held upright there, to the give that it tells', () => {
    const places = [grid.at(1, 0), grid.at(5, 0), grid.at(1, 2), grid.at(5, 2)];
    const supports = places.map((node): SupportPart => ({
      id: `${node}`,
      node,
      offset: [0, 0, 0],
      direction: [0, 0, 1],
    }));
    const hung = modes(grid, { supports }, 8);
    const firm = modes(grid, { held: held(grid, places.map((node) => [node, 'z'])) }, 8); // prettier-ignore
    expect(hung.rigid).toBe(3);
    expect(firm.rigid).toBe(3);
    hung.modes.forEach(({ frequency, supportGive }, k) => {
      expect(supportGive).toBeLessThan(2e-3);
      expect(frequency * (1 + supportGive)).toBeCloseTo(firm.modes[k]!.frequency, 2);
      expect(frequency).toBeLessThanOrEqual(firm.modes[k]!.frequency * (1 + 1e-9));
    });
    // heaving the supports moves every mass: all modes together carry all of it that they can
    const total = hung.modes.reduce((sum, { verticalMass }) => sum + verticalMass, 0);
    expect(total).toBeLessThanOrEqual(hung.verticalMass);
    expect(hung.verticalMass).toBeCloseTo((3 * 3 + 7) * shs100x5Mass, 8);
  });

  it('a leaning leg leaves the plate fewer free motions than an upright line', () => {
    const support = (node: number, x: number, y: number): SupportPart => ({ id: `${node}`, node, offset: [0, 0, 0], direction: [x, y, 1] });
    const apex = [
      support(grid.at(1, 0), 0.5, 0.25),
      support(grid.at(5, 0), -0.5, 0.25),
      support(grid.at(1, 2), 0.5, -0.25),
      support(grid.at(5, 2), -0.5, -0.25),
    ];
    // four legs to one point hold no turning about it, and of the four forces three are independent
    expect(modes(grid, { supports: apex }, 1).rigid).toBe(6 - 3);
    expect(modes(grid, { supports: apex.slice(0, 1) }, 1).rigid).toBe(5);
    expect(modes(grid, { supports: [...apex.slice(0, 3), support(grid.at(4, 1), 0, 0)] }, 1).rigid).toBe(2);
  }); // prettier-ignore
});

describe('natural modes', () => {
  const xs = [0, 0.7, 1.5, 2.4];
  const ys = [0, 0.9, 1.6];
  const grid = bareGrid(xs, ys, { parts: 3 });

  it('are met from above by Rayleigh’s method on the bend under the plate’s own weight (S. P. Timoshenko, Vibration Problems in Engineering, art. 4, from memory)', () => {
    const supports = [grid.at(0, 0), grid.at(3, 0), grid.at(0, 2), grid.at(3, 2)].map((node): SupportPart => ({
      id: `${node}`,
      node,
      offset: [0, 0, 0],
      direction: [0, 0, 1],
    }));
    const support = modeSupport(grid.structure, grid.elements, (system) => factorise(system), { supports });
    const weight = new Float64Array(2 * grid.structure.coordinates.length);
    for (const { node, mass } of grid.masses) weight[6 * node + 2]! += mass;
    const u = support.factor.solve(weight);
    // ω² ≤ Σ m u / Σ m u², for a weight of 1 N a kilogram
    let [work, kinetic] = [0, 0];
    weight.forEach((mass, i) => {
      work += mass * u[i]!;
      kinetic += mass * u[i]! ** 2;
    });
    const rayleigh = sqrt(work / kinetic) / (2 * π);
    const [first] = modes(grid, { supports }, 1).modes;
    expect(first!.frequency).toBeLessThanOrEqual(rayleigh);
    expect(first!.frequency / rayleigh).toBeGreaterThan(0.98);
  });

  it('scale with the root of mass and of stiffness', () => {
    const base = modes(grid, {}, 5).modes;
    const heavy = modes({ ...grid, masses: grid.masses.map((m) => ({ ...m, mass: 4 * m.mass })) }, {}, 5).modes;
    base.forEach(({ frequency }, k) => expect(heavy[k]!.frequency / frequency).toBeCloseTo(0.5, 9));
  });

  it('never rise when mass is added, wherever it is (Rayleigh’s principle)', () => {
    const base = modes(grid, {}, 6).modes;
    for (const at of [0, 5, 9, 20]) {
      const masses = [...grid.masses, { node: at, offset: [0.1, 0, 0.2] as const, mass: 30 }];
      modes({ ...grid, masses }, {}, 6).modes.forEach(({ frequency }, k) =>
        expect(frequency).toBeLessThanOrEqual(base[k]!.frequency * (1 + 1e-9)),
      );
    }
  });

  it('never fall when a support is added', () => {
    const support = (node: number): SupportPart => ({ id: `${node}`, node, offset: [0, 0, 0], direction: [0, 0, 1] });
    const three = [grid.at(0, 0), grid.at(3, 0), grid.at(1, 2)].map(support);
    const few = modes(grid, { supports: three }, 5).modes;
    const more = modes(grid, { supports: [...three, support(grid.at(2, 1))] }, 5).modes;
    more.forEach(({ frequency }, k) => expect(frequency).toBeGreaterThanOrEqual(few[k]!.frequency * (1 - 1e-9)));
  });

  it('of a mirrored grid are even or odd', () => {
    const even = bareGrid([0, 1, 2], [0, 0.8], { parts: 4 });
    const N = even.structure.coordinates.length / 3;
    const at = (x: number, y: number): number => {
      for (let n = 0; n < N; n++)
        if (Math.hypot(even.structure.coordinates[3 * n]! - x, even.structure.coordinates[3 * n + 1]! - y) < 1e-9) return n;
      throw new Error('no node');
    };
    for (const { shape } of modes(even, {}, 4).modes) {
      const ratios = Array.from({ length: N }, (_, n) => n)
        .filter((n) => Math.abs(shape[6 * n + 2]!) > 0.05)
        .map((n) => shape[6 * at(2 - even.structure.coordinates[3 * n]!, even.structure.coordinates[3 * n + 1]!) + 2]! / shape[6 * n + 2]!);
      expect(ratios.every((r) => Math.abs(r - 1) < 1e-5) || ratios.every((r) => Math.abs(r + 1) < 1e-5)).toBe(true);
    }
  }); // prettier-ignore

  it('turned by a rigid frame change nothing', () => {
    const swapped = bareGrid(ys, xs, { parts: 3 });
    const base = modes(grid, {}, 6).modes;
    modes(swapped, {}, 6).modes.forEach(({ frequency }, k) =>
      expect(Math.abs(frequency / base[k]!.frequency - 1)).toBeLessThan(1e-9),
    );
  });
});
