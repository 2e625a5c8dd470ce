import { beforeAll, describe, expect, it } from 'vitest';
import { shapeOf } from '../../core/engine/shape-of.ts';
import { loadingView, type LoadingView } from '../../core/engine/solver-view.ts';
import { fixingForces } from '../../core/plate/results/fixing-forces.ts';
import { panelStress } from '../../core/plate/results/panel-stress.ts';
import { tubeForces } from '../../core/plate/results/tube-forces.ts';
import { everySolved, solveCases } from '../../core/plate/solve-cases.ts';
import type { ReadyPlate, SolvedLoading } from '../../core/plate/solve-plate.ts';
import { firstSize } from '../../core/plate/mesh-study.ts';
import { bentPlate, fieldOnVertices, type BentPlate } from '../../core/scene/bent-plate.ts';
import { fieldOf, fieldRange } from '../../core/scene/field.ts';
import { drained } from '../../core/solve/drained.ts';
import { appraisalOf } from '../scene/scene-models.ts';

const { model } = appraisalOf('small');
let plate: ReadyPlate;
let solved: readonly SolvedLoading[];
let views: LoadingView[];
beforeAll(() => {
  const cases = drained(
    solveCases(model, { stage: 'contact', cases: 'service', losses: false, size: firstSize(model) }),
  );
  ({ plate, solved } = cases);
  views = everySolved(cases).map((one) => loadingView(one, 'metric'));
});

/** Signed volume within closed surfaces at a scale, m³ (divergence theorem), of the triangles that `take` says. */
function volume(bent: BentPlate, scale: number, take: (source: number) => boolean): number {
  const at = (v: number): number[] => [0, 1, 2].map((c) => bent.positions[3 * v + c]! + scale * bent.moves[3 * v + c]!);
  let six = 0;
  for (let t = 0; t < bent.triangles.length; t += 3) {
    const corners = [...bent.triangles.subarray(t, t + 3)];
    if (!take(bent.sources[corners[0]!]!)) continue;
    const [a, b, c] = corners.map(at) as [number[], number[], number[]];
    six += a[0]! * (b[1]! * c[2]! - b[2]! * c[1]!) - a[1]! * (b[0]! * c[2]! - b[2]! * c[0]!) + a[2]! * (b[0]! * c[1]! - b[1]! * c[0]!); // prettier-ignore
  }
  return six / 6;
} // prettier-ignore

describe('surfaces of the moved plate', () => {
  it('close each panel about its area times its thickness, moved or not', () => {
    const bent = bentPlate(views[0]!.shape);
    // plates without notches: the rectangle of the outline
    const expected = model.geometry.panels.reduce((sum, { outline: o, thickness }) => sum + (o.x1 - o.x0) * (o.y1 - o.y0) * thickness, 0); // prettier-ignore
    const panels = (source: number): boolean => source < bent.firstOfTubes;
    expect(model.geometry.panels.every(({ design }) => !design.cornerNotch)).toBe(true);
    expect(volume(bent, 0, panels) / expected).toBeCloseTo(1, 5);
    // a thin panel that bends keeps its volume to first order in its slopes
    expect(volume(bent, 1, panels) / expected).toBeCloseTo(1, 3);
  });

  it('face outwards: each triangle turns the way of its corners’ normals', () => {
    const { positions, normals, triangles } = bentPlate(views[0]!.shape);
    const of = (list: Float32Array, v: number): number[] => [...list.subarray(3 * v, 3 * v + 3)];
    let least = 1;
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = [0, 1, 2].map((i) => of(positions, triangles[t + i]!)) as [number[], number[], number[]];
      const [p, q] = [b, c].map((to) => to.map((x, i) => x - a[i]!)) as [number[], number[]];
      const n = [p[1]! * q[2]! - p[2]! * q[1]!, p[2]! * q[0]! - p[0]! * q[2]!, p[0]! * q[1]! - p[1]! * q[0]!];
      const size = Math.hypot(...n);
      for (let i = 0; i < 3; i++) {
        const along = of(normals, triangles[t + i]!).reduce((sum, x, k) => sum + (x * n[k]!) / size, 0);
        least = Math.min(least, along);
      }
    }
    // NaN, of a triangle without area, is not above anything
    expect(least).toBeGreaterThan(0.5);
  });

  it('move as a rigid body where every node does: u = d + θ × r at every point of every section', () => {
    const { coordinates } = plate.structure;
    const [d, θ] = [[0.3, -0.2, 0.7], [0.011, -0.023, 0.017]] as const; // prettier-ignore
    const motion = (x: number, y: number, z: number) => [
      d[0] + θ[1] * z - θ[2] * y,
      d[1] + θ[2] * x - θ[0] * z,
      d[2] + θ[0] * y - θ[1] * x,
    ];
    const u = new Float64Array(2 * coordinates.length);
    for (let n = 0; 3 * n < coordinates.length; n++) {
      const place = [...coordinates.subarray(3 * n, 3 * n + 3)] as [number, number, number];
      u.set([...motion(...place), ...θ], 6 * n);
    }
    const { positions, moves } = bentPlate(shapeOf(plate, u));
    let off = 0;
    for (let k = 0; k < positions.length; k += 3) {
      const meant = motion(positions[k]!, positions[k + 1]!, positions[k + 2]!);
      for (let c = 0; c < 3; c++) off = Math.max(off, Math.abs(moves[k + c]! - meant[c]!));
    }
    expect(off).toBeLessThan(1e-6); // 32 bits of metres
  });
});

describe('fields', () => {
  it('give the extremes that the tables of stresses and forces give, hot places left out', () => {
    const stresses = panelStress(plate, solved[0]!);
    const largest = Math.max(...stresses.map((panel) => panel.largest!.stress.vonMises));
    const [top, bottom] = (['vonMisesTop', 'vonMisesBottom'] as const).map((id) => fieldOf(id, [views[0]!]));
    expect(Math.max(top!.highest!.value, bottom!.highest!.value) / largest).toBeCloseTo(1, 6);
    expect(top!.hasHot).toBe(true);
    const most = (name: 'My' | 'Vz' | 'N'): number => Math.max(...tubeForces(plate, solved[0]!).map((tube) => Math.abs(tube.largest[name].value))); // prettier-ignore
    for (const name of ['My', 'Vz', 'N'] as const) {
      const { highest, lowest } = fieldOf(name, [views[0]!]);
      expect(Math.max(Math.abs(highest!.value), Math.abs(lowest!.value)) / most(name)).toBeCloseTo(1, 6);
    }
    // the larger principal stress is never below the lesser, and von Mises follows from both in plane stress
    const [larger, lesser] = (['largerTop', 'lesserTop'] as const).map((id) => fieldOf(id, [views[0]!]).panels!);
    const off = larger!.flatMap((list, i) =>
      [...list].map((one, k) => {
        const other = lesser![i]![k]!;
        if (one < other) return Infinity;
        return Math.abs(Math.sqrt(one * one - one * other + other * other) - top!.panels![i]![k]!);
      }),
    );
    expect(Math.max(...off)).toBeLessThan(1e-5 * largest);
  });

  it('over several loadings take at each place the value that is largest by size, and say which loading gives the extreme', () => {
    const all = fieldOf('My', views);
    expect(views.length).toBeGreaterThan(1);
    all.tubes!.forEach((list, i) => {
      const sizes = [...list].map((_, k) => Math.max(...views.map(({ fields }) => Math.abs(fields.tubes[i]!.My[k]!))));
      expect([...list].map(Math.abs)).toEqual(sizes);
    });
    const { value, loading } = all.highest!;
    expect(fieldOf('My', [views[loading]!]).highest!.value).toBe(value);
    expect(value).toBe(Math.max(...views.map((view) => fieldOf('My', [view]).highest!.value)));
  });

  it('lie on every vertex of their parts and on none of the others; the map spans nought and both extremes', () => {
    const { shape } = views[0]!;
    const bent = bentPlate(shape);
    for (const [id, on] of [
      ['vonMisesTop', 'panels'],
      ['My', 'tubes'],
      ['rise', 'both'],
    ] as const) {
      // prettier-ignore
      const looks = fieldOnVertices(bent, fieldOf(id, [views[0]!]));
      const wrong = bent.sources.filter((source, v) => {
        const isPanel = source < bent.firstOfTubes;
        return looks[2 * v + 1]! > 0 !== (on === 'both' || isPanel === (on === 'panels'));
      });
      expect(wrong.length).toBe(0);
    }
    const { from, to } = fieldRange(fieldOf('My', [views[0]!]));
    expect(from).toBeLessThanOrEqual(0);
    expect(to).toBeGreaterThan(0);
  });
});

describe('marks', () => {
  it('are the pulls of the bolts and the pressures of contact that the tables list', () => {
    const fixings = fixingForces(plate, solved[0]!);
    const marks = new Map(views[0]!.marks.map((each) => [each.kind, each]));
    const pulled = fixings.bolts.filter(({ pull }) => pull > 0);
    const bolts = marks.get('bolt pull')!;
    expect(bolts.titles).toEqual(pulled.map(({ id }) => `bolt ${id}`));
    pulled.forEach(({ pull, x, y }, i) => {
      expect(bolts.values[i]! / pull).toBeCloseTo(1, 6);
      expect(Math.hypot(bolts.places[3 * i]! - x, bolts.places[3 * i + 1]! - y)).toBeLessThan(1e-6);
    });
    const contact = marks.get('contact pressure')!;
    const largest = Math.max(...fixings.contacts.map(({ pressure }) => pressure));
    expect(Math.max(...contact.values) / largest).toBeCloseTo(1, 6);
    expect(contact.values.every((value) => value > 0)).toBe(true);
  });
});
