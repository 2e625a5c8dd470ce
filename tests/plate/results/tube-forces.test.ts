import { describe, expect, it } from 'vitest';
import { catalogueWith } from '../../../core/catalogue/catalogue.ts';
import type { FramePoint } from '../../../core/loads/tube-frame.ts';
import { sectionStress, tubeForces } from '../../../core/plate/results/tube-forces.ts';
import { levelGrid } from './support/level-plate.ts';
import { ready, sampleModel, solvedLoading } from './support/solved-sample.ts';

describe('forces along the tubes of a bare grid in one plane', () => {
  const model = sampleModel('middle');
  const { plate } = model.loads;
  const grid = levelGrid(model, 0.5);
  const solved = solvedLoading(grid, 'service-down');
  const { items } = solved.situation.supports!;
  const load = solved.situation.loadings[0]!.onTubes;
  const points = items.map(({ place }) => plate.points.find((p) => p.x === place.x && p.y === place.y)!);

  it('agree with the exact grillage: moment, shear, torque and rise along every tube', () => {
    expect(grid.structure.shells).toHaveLength(0);
    const motion = plate.frame.motion(load, points.map((point, i) => [point, solved.answer.forces[i]!])); // prettier-ignore
    const exact = plate.lines.tubes.map(() => ({ moment: 0, shear: 0, torque: 0, rise: [] as [number, number][] }));
    // what is told from the supports here is told from the mean plane there: the supports lie in a plane
    const [a, b, c] = points.map((p) => plate.frame.riseAt(p, motion)) as [number, number, number];
    const [p, q, r] = points as [FramePoint, FramePoint, FramePoint];
    const plane = (x: number, y: number): number =>
      a + ((b - a) * (x - p.x)) / (q.x - p.x) + ((c - a) * (y - p.y)) / (r.y - p.y);
    plate.frame.walk(motion, load, (tube, place, M, V, T, rise) => {
      const e = exact[tube]!;
      const { at, set } = plate.lines.tubes[tube]!;
      e.moment = Math.max(e.moment, Math.abs(M));
      e.shear = Math.max(e.shear, Math.abs(V));
      e.torque = Math.max(e.torque, Math.abs(T));
      e.rise.push([place, rise - (set === 'main' ? plane(place, at) : plane(at, place))]);
    });
    const most = (of: (e: (typeof exact)[number]) => number) => Math.max(...exact.map(of));
    const rises = most(({ rise }) => Math.max(...rise.map(([, w]) => Math.abs(w))));
    expect(rises).toBeGreaterThan(1e-5);
    tubeForces(grid, solved).forEach(({ at, rise, largest }, tube) => {
      const e = exact[tube]!;
      expect(Math.abs(Math.abs(largest.My.value) - e.moment)).toBeLessThan(1e-8 * most(({ moment }) => moment));
      expect(Math.abs(Math.abs(largest.Vz.value) - e.shear)).toBeLessThan(1e-8 * most(({ shear }) => shear));
      expect(Math.abs(Math.abs(largest.T.value) - e.torque)).toBeLessThan(1e-8 * most(({ moment }) => moment));
      let compared = 0;
      for (const [place, w] of e.rise) {
        const i = at.findIndex((s) => Math.abs(s - place) < 1e-9);
        if (i < 0) continue;
        compared++;
        expect(Math.abs(rise[i]! - w)).toBeLessThan(1e-8 * rises);
      }
      expect(compared).toBeGreaterThan(3);
    });
  });

  it('bends without axial force, shear in plan or bending in plan', () => {
    for (const { largest } of tubeForces(grid, solved)) {
      const scale = Math.abs(largest.Vz.value) + 1;
      for (const quantity of ['N', 'Vy', 'Mz'] as const)
        expect(Math.abs(largest[quantity].value)).toBeLessThan(1e-7 * scale);
    }
  });
});

it('moment is the slope’s integral: My changes along a tube by the area of Vz, between jumps', () => {
  const plate = ready(sampleModel('small'), 0.3);
  for (const { at, My, Vz, T, N, largest } of tubeForces(plate, solvedLoading(plate, 'service-down'))) {
    for (let i = 1; i < at.length; i++) {
      const step = at[i]! - at[i - 1]!;
      if (step < 1e-9) continue; // a node: jumps of what panels bring
      // uniform load between stations: the trapezium is exact for shear that is straight
      expect(Math.abs(My[i]! - My[i - 1]! - ((Vz[i]! + Vz[i - 1]!) / 2) * step)).toBeLessThan(1e-3 * Math.abs(largest.My.value)); // prettier-ignore
      expect(N[i]).toBeCloseTo(N[i - 1]!, 6);
      expect(Number.isFinite(T[i])).toBe(true);
    }
  }
});

describe('elastic stress at a section', () => {
  const none = { N: 0, Vy: 0, Vz: 0, T: 0, My: 0, Mz: 0 };
  const section = catalogueWith({}).section('SHS 100x100x5 hot');

  it('is N/A and M/W with the printed values of EN 10210-2: A = 18.7 cm², W = 55.9 cm³', () => {
    expect(sectionStress(section, { ...none, N: 18.7e3 }).normal / 1e6).toBeCloseTo(10, 1);
    expect(sectionStress(section, { ...none, My: -5.59e3 }).normal / 1e6).toBeCloseTo(100, 0);
    expect(sectionStress(section, { ...none, N: -18.7e3, My: 5.59e3, Mz: 5.59e3 }).normal / 1e6).toBeCloseTo(-210, 0);
  });

  it('is V S/(I b) at the neutral axis: between V/(2 h t) and 1.5 times that, in von Mises √3 τ', () => {
    const { fibre, axis } = sectionStress(section, { ...none, Vz: 10e3 });
    const mean = 10e3 / (2 * 0.1 * 0.005);
    expect(fibre).toBe(0);
    expect(axis).toBeGreaterThan(Math.sqrt(3) * mean);
    expect(axis).toBeLessThan(1.5 * Math.sqrt(3) * mean);
  });

  it('counts both bending moments of a round tube as one', () => {
    const round = catalogueWith({}).section('CHS 114.3x6.3 hot');
    const both = sectionStress(round, { ...none, My: 3e3, Mz: 4e3 });
    expect(both.normal).toBeCloseTo(sectionStress(round, { ...none, My: 5e3 }).normal, 6);
  });
});
