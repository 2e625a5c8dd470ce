import { describe, expect, it } from 'vitest';
import { closingOrder } from '../../core/water/closing-order.ts';
import type { Plan, Rectangle } from '../../core/water/lattice/plan.ts';
import { forceOfMotion, forceOfPairs, movingPairs, outermost } from '../../core/water/motion-force.ts';
import { readPlan } from '../../core/water/read-plan.ts';
import { waterReport } from '../../core/water/water-report.ts';
import { equalBars } from './lattice/on-one-row.ts';

const { PI } = Math;
const off = (found: number, published: number): number => Math.abs(found / published - 1);
const plan = (rectangles: Rectangle[], thickness = 0): Plan => ({ rectangles, holes: [], thickness });
const still = { density: 1025, amplitude: 0, period: null, depth: null, aboveBed: null, cells: 40 };
const third = (k: number): Rectangle => ({ x0: 0, x1: 10, y0: (10 * k) / 3, y1: (10 * (k + 1)) / 3 });
const square: Rectangle = { x0: 0, y0: 0, x1: 10, y1: 10 };

describe('what is said of a plate', () => {
  it('a 10 m square at zero amplitude carries 466,114 kg (panel method, derived for this project; DNV-RP-C205: 0.579), and has no drag coefficient', () => {
    const { quantities, unjudged } = waterReport(plan([square]), still);
    expect(off(quantities['addedMass.heave']!.value, 466_114)).toBeLessThan(0.002);
    expect(off(quantities['addedMass.byAspect']!.value, 466_114)).toBeLessThan(0.001);
    expect(quantities['addedMass.ratio']!.value).toBeCloseTo(1, 9);
    expect(quantities['drag.referenceArea']!.value).toBe(100);
    expect(quantities['drag.coefficient']).toBeUndefined();
    expect(unjudged.map(({ id }) => id)).toEqual(['drag.coefficient', 'drag.area', 'force.peak']);
  });

  it('gives force, KC with its width and ranges that hold their best', () => {
    const { quantities } = waterReport(plan([square]), { ...still, amplitude: 0.5, period: 6 });
    expect(quantities['drag.kc']!.value).toBeCloseTo((2 * PI * 0.5) / 10, 12);
    expect(quantities['drag.kcWidth']!.value).toBe(10);
    for (const id of ['drag.coefficient', 'drag.area', 'force.peak']) {
      const { low, value, high } = quantities[id]!;
      expect(low!).toBeLessThanOrEqual(value);
      expect(high!).toBeGreaterThanOrEqual(value);
    }
    // 466,114 kg · ω² · 0.5 m at 6 s
    expect(off(quantities['force.inertia']!.value, 466_114 * (PI / 3) ** 2 * 0.5)).toBeLessThan(0.002);
  });

  it('the middle of a solid plate carries well over its area of inertia, shares add to one', () => {
    const parts = { low: third(0), middle: third(1), high: third(2) };
    const { quantities } = waterReport(plan([square]), { ...still, parts });
    const of = (id: string, what: string) => quantities[`panel.${id}.${what}`]!.value;
    // 2-D elliptic: the middle third has (2/π)(asin(1/3) + (1/3)√(8/9)) = 0.416 of it (Lamb); a square's corners press less: more.
    expect(of('middle', 'shareOfInertia')).toBeGreaterThan(0.4);
    expect(of('middle', 'shareOfInertia')).toBeLessThan(0.45);
    const sum = Object.keys(parts).reduce((total, id) => total + of(id, 'shareOfInertia'), 0);
    expect(sum).toBeCloseTo(1, 6);
    expect(of('low', 'shareOfDrag')).toBeGreaterThan(of('low', 'shareOfArea'));
    // the lattice’s rim cells end a quarter of a cell inside the plate
    expect(Math.abs(of('middle', 'shareOfDrag') - 1 / 3)).toBeLessThan(0.01);
  });

  it('cannot be judged nearer to the surface than a breadth; feels the bed', () => {
    const near = waterReport(plan([square]), { ...still, depth: 9 });
    expect(near.unjudged[0]!.id).toBe('addedMass.heave');
    expect(near.unjudged[0]!.reason).toMatch(/waves that it makes/);
    // 1.169 at a quarter of the breadth (image doublets, derived for this project)
    const low = waterReport(plan([square]), { ...still, aboveBed: 2.5 });
    expect(off(low.quantities['addedMass.heave']!.value, 1.169 * 466_114)).toBeLessThan(0.005);
  });

  it('shows why the rules differ for slats: theory far below the open-area rule, the screen a little below theory', () => {
    const slats = equalBars(5, 4, 1).map(([x0, x1]) => ({ x0, x1, y0: 0, y1: 1 }));
    const { quantities } = waterReport(plan(slats), { ...still, density: 1, cells: 80 });
    const solid = 0.579 * (PI / 4);
    expect(off(quantities['addedMass.heave']!.value, 0.263 * solid)).toBeLessThan(0.01);
    // Screen of the same inertial length: 0.242 (derived for this project), with pitch and gap counted over its own bars.
    expect(off(quantities['addedMass.byScreen']!.value, 0.242 * solid)).toBeLessThan(0.08);
    expect(quantities['addedMass.byScreen']!.value).toBeLessThan(quantities['addedMass.heave']!.value);
    expect(quantities['addedMass.byOpenArea']!.value).toBeGreaterThan(0.8 * solid);
  });

  it('refuses a negative amplitude', () => {
    expect(() => waterReport(plan([square]), { ...still, amplitude: -1 })).toThrow(/amplitude of -1 m/);
  });
});

describe('force of a motion', () => {
  it('has the drag-to-inertia ratio Cd KC / (π² C_A) of a square plate: 0.440 at Cd 8, KC 0.3142', () => {
    const { inertia, drag, peak, phase } = forceOfMotion(466_114, 8 * 100, 1025, 0.5, 6);
    expect(drag / inertia).toBeCloseTo((8 * 0.314159) / (PI ** 2 * 0.579), 3);
    expect([peak, phase]).toEqual([inertia, 0]);
  });

  it('peaks where the sum over a finely cut cycle does, also for a record of the same motion', () => {
    const [m, CdS, rho, a, T] = [1000, 40, 1025, 0.6, 5];
    const { peak, phase } = forceOfMotion(m, CdS, rho, a, T);
    const omega = (2 * PI) / T;
    const force = (t: number) =>
      m * a * omega ** 2 * Math.sin(t) + 0.5 * rho * CdS * (a * omega) ** 2 * Math.cos(t) ** 2;
    const largest = Math.max(...Array.from({ length: 1001 }, (_, i) => force(((PI / 2) * i) / 1000)));
    expect(off(peak, largest)).toBeLessThan(1e-5);
    // inertia peaks at a quarter of the cycle: the two press together before it
    expect(off(force(PI / 2 - phase), peak)).toBeLessThan(1e-12);
    for (const [perCycle, within] of [
      [40, 0.005],
      [400, 1e-4],
    ] as const) {
      const x = Float64Array.from({ length: 3 * perCycle }, (_, i) => a * Math.sin((2 * PI * i) / perCycle));
      const pairs = outermost(movingPairs(x, T / perCycle));
      expect(off(forceOfPairs(pairs, m, CdS, rho).peak, peak)).toBeLessThan(within);
    }
  });

  it('lies at an outermost pair of an irregular record, whatever added mass and drag are', () => {
    const x = Float64Array.from({ length: 4000 }, (_, i) => [1, 0.6, 0.35, 0.2].reduce((sum, part, k) => sum + part * Math.sin(0.05 * i * (1 + 0.37 * k) + k), 0)); // prettier-ignore
    const all = movingPairs(x, 0.25);
    const kept = outermost(all);
    expect(kept.length).toBeLessThan(all.length / 10);
    for (const [m, CdS] of [
      [1, 0.001],
      [1000, 0],
      [1000, 1],
      [1000, 20],
      [1, 500],
    ] as const)
      // prettier-ignore
      expect(forceOfPairs(kept, m, CdS, 1025).peak).toBeCloseTo(forceOfPairs(all, m, CdS, 1025).peak, 9);
  });
});

describe('the order of closing', () => {
  const bars = equalBars(4, 1, 3);
  const open = plan([...bars.map(([x0, x1]) => ({ x0, x1, y0: 0, y1: 1 })), ...bars.map(([y0, y1]) => ({ x0: 0, x1: 1, y0, y1 }))]); // prettier-ignore
  const bay = (i: number, j: number): Rectangle => ({ x0: bars[i]![1], x1: bars[i + 1]![0], y0: bars[j]![1], y1: bars[j + 1]![0] }); // prettier-ignore
  const bays = Object.fromEntries([0, 1, 2].flatMap((j) => [0, 1, 2].map((i) => [`${i}${j}`, bay(i, j)])));

  it('rises with each bay to the solid plate; the best sets are no worse than the greedy ones', () => {
    const greedy = closingOrder(open, bays, 1, { cells: 26 });
    const exact = closingOrder(open, bays, 1, { cells: 26, exact: true });
    expect(greedy).toHaveLength(10);
    for (let k = 1; k < 10; k++) {
      expect(greedy[k]!.addedMass).toBeGreaterThan(greedy[k - 1]!.addedMass);
      expect(exact[k]!.addedMass).toBeGreaterThanOrEqual(greedy[k]!.addedMass * (1 - 1e-6));
      expect(exact[k]!.closed).toHaveLength(k);
    }
    expect(off(greedy[9]!.addedMass, 0.579 * (PI / 4))).toBeLessThan(0.01);
    // Neighbours help each other: the second bay shares a side with the first.
    const [a, b] = greedy[2]!.closed.map((id) => [Number(id[0]), Number(id[1])]) as [number[], number[]];
    expect(Math.abs(a[0]! - b[0]!) + Math.abs(a[1]! - b[1]!)).toBe(1);
  });

  it('refuses to try more sets than it can', () => {
    const many = Object.fromEntries(Array.from({ length: 11 }, (_, k) => [String(k), bay(0, 0)]));
    expect(() => closingOrder(open, many, 1, { exact: true })).toThrow(/11 bays are too many/);
  });
});

describe('a plan as a file', () => {
  it('is read with its density, thin unless it says otherwise', () => {
    expect(readPlan('{"rectangles":[[0,0,2,1]],"density":1025}')).toEqual({
      plan: { rectangles: [{ x0: 0, y0: 0, x1: 2, y1: 1 }], holes: [], thickness: 0 },
      density: 1025,
    });
  });

  it.each([
    ['{', /no JSON/],
    ['[]', /no object/],
    ['{"rectangles":[],"density":1025}', /no rectangles/],
    ['{"rectangles":[[0,0,2]],"density":1025}', /rectangles\.0: “rectangles” has a row that is not 4 numbers/],
    ['{"rectangles":[[0,0,2,0]],"density":1025}', /rectangles\.0: A rectangle from \(0, 0\) to \(2, 0\) has no area/],
    ['{"rectangles":[[0,0,2,1]]}', /no density/],
    ['{"rectangles":[[0,0,2,1]],"density":1025,"unit":"mm"}', /has no “unit”/],
    ['{"rectangles":[[0,0,2,1]],"density":1025,"thickness":-1}', /thickness is no length/],
  ])('%s is refused', (text, words) => expect(() => readPlan(text)).toThrow(words));
});
