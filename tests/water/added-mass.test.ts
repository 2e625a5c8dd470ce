import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addedMass } from '../../core/water/added-mass.ts';
import type { Rectangle } from '../../core/water/lattice/plan.ts';
import { plateLattice, plateProblem } from '../../core/water/lattice/plate-lattice.ts';
import { solvePair } from '../../core/water/lattice/solve-pair.ts';
import { equalBars } from './lattice/on-one-row.ts';

const { PI } = Math;
const plan = (rectangles: readonly Rectangle[], thickness = 0) => ({ rectangles, holes: [], thickness });
const plate = (a: number, b = a): Rectangle => ({ x0: 0, y0: 0, x1: a, y1: b });
const slats = (count: number, w: number, g: number): Rectangle[] =>
  equalBars(count, w, g).map(([x0, x1]) => ({ x0, y0: 0, x1, y1: 1 }));
const turned = (of: readonly Rectangle[]): Rectangle[] => of.map(({ x0, y0, x1, y1 }) => ({ x0: y0, y0: x0, x1: y1, y1: x1 })); // prettier-ignore
const crossing = (count: number, w: number, g: number): Rectangle[] => [...slats(count, w, g), ...turned(slats(count, w, g))]; // prettier-ignore
const off = (found: number, published: number): number => Math.abs(found / published - 1);

describe('added mass of thin plates', () => {
  it.each([
    [1, 0.579],
    [1.25, 0.642],
    [1.5, 0.69],
    [2, 0.757],
    [2.5, 0.801],
    [3, 0.8318],
    [4, 0.872],
    [5, 0.897],
    [10, 0.947],
  ])('has the coefficient of DNV-RP-C205, appendix D, at an aspect ratio of %d: %d (table from memory)', (b, C_A) => {
    // At 3 the recalled table prints 0.830; a flat-doublet panel method with double extrapolation gives 0.8318, and so do we.
    const { solid, heave, ratio } = addedMass(plan([plate(b, 1)]), 1025, { n: b > 4 ? 120 : 60 });
    expect(off(solid.value / (1025 * (PI / 4) * b), C_A)).toBeLessThan(0.005);
    expect(heave.value).toBeCloseTo(solid.value, 6);
    expect(ratio.value).toBeCloseTo(1, 12);
  });

  it('gives a disc 8/3 ρ a³ within 0.5 % (Lamb): 341,667 kg for 5 m', () => {
    const steps = 160;
    const rows = Array.from({ length: steps }, (_, k): Rectangle => {
      const [y0, y1] = [(10 * k) / steps - 5, (10 * (k + 1)) / steps - 5];
      const half = Math.sqrt(25 - ((y0 + y1) / 2) ** 2);
      return { x0: -half, x1: half, y0, y1 };
    });
    expect(off(addedMass(plan(rows), 1025, { n: 100 }).heave.value, 341_667)).toBeLessThan(0.005);
  });

  it.each([
    ['5 slats 4:1', slats(5, 4, 1), 0.263, 0.01],
    ['5 slats 2:1', slats(5, 2, 1), 0.182, 0.01],
    ['5 slats 1:1', slats(5, 1, 1), 0.106, 0.01],
    ['9 slats 1:1', slats(9, 1, 1), 0.056, 0.015],
    ['5+5 bars 2:1', crossing(5, 2, 1), 0.4, 0.015],
    ['5+5 bars 1:1', crossing(5, 1, 1), 0.228, 0.01],
    ['5+5 bars 1:4', crossing(5, 1, 4), 0.04, 0.03],
    ['9+9 bars 1:1', crossing(9, 1, 1), 0.131, 0.02],
  ] as const)(
    'gives the ratio of %s to the solid square (panel method on masked lattices, derived for this project)',
    (_, of, published, tolerance) => {
      const { ratio, residual } = addedMass(plan(of), 1000, { n: 108 });
      expect(off(ratio.value, published)).toBeLessThan(tolerance);
      expect(residual).toBeLessThan(1e-7);
    },
  );

  it.each([
    [0.1, 0.729, 1.645, 0.02],
    [0.25, 0.875, 1.169, 0.005],
    [1, 0.9925, 1.0076, 0.005],
    [2, 0.9989, 1.0011, 0.005],
  ])(
    'feels a free surface and a wall at %d breadths (image doublets, derived for this project)',
    (h, surface, wall, tolerance) => {
      const at = (sense: 1 | -1) =>
        addedMass(plan([plate(1)]), 1, { n: 48, images: [{ height: 2 * h, sense }] }).solid.value / ((PI / 4) * 0.579);
      expect(off(at(1), surface)).toBeLessThan(tolerance);
      expect(off(at(-1), wall)).toBeLessThan(tolerance);
    },
  );

  it('turns by the inertia of a disc, 16/45 ρ a⁵ (Lamb), the same about both axes, and without coupling', () => {
    const rows = Array.from({ length: 120 }, (_, k): Rectangle => {
      const [y0, y1] = [k / 60 - 1, (k + 1) / 60 - 1];
      const half = Math.sqrt(1 - ((y0 + y1) / 2) ** 2);
      return { x0: -half, x1: half, y0, y1 };
    });
    const { roll, pitch, heaveRoll, rollPitch } = addedMass(plan(rows), 1, { n: 84 });
    expect(off(roll.value, 16 / 45)).toBeLessThan(0.01);
    expect(off(pitch.value, 16 / 45)).toBeLessThan(0.01);
    expect(Math.abs(heaveRoll)).toBeLessThan(1e-6);
    expect(Math.abs(rollPitch)).toBeLessThan(1e-6);
  });

  it('gains by the height of its edges, and refuses a plan without area', () => {
    const thin = addedMass(plan(crossing(5, 1, 4)), 1, { n: 60 });
    const tubes = addedMass(plan(crossing(5, 1, 4), 1 / 21), 1, { n: 60 });
    expect(tubes.heave.value).toBeGreaterThan(1.3 * thin.heave.value);
    expect(() => addedMass(plan([{ x0: 0, y0: 0, x1: 0, y1: 1 }]), 1)).toThrow(/no area/);
  });
});

describe('properties that theory asks for, on any one lattice', () => {
  const side = fc.integer({ min: 0, max: 12 });
  const rectangle = fc
    .tuple(side, side, fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 8 }))
    .map(([x, y, w, h]): Rectangle => ({ x0: x / 20, y0: y / 20, x1: (x + w) / 20, y1: (y + h) / 20 }));
  const frame: Rectangle[] = [
    { x0: 0, y0: 0, x1: 1, y1: 0.1 },
    { x0: 0, y0: 0.9, x1: 1, y1: 1 },
    { x0: 0, y0: 0, x1: 0.1, y1: 1 },
    { x0: 0.9, y0: 0, x1: 1, y1: 1 },
  ];
  const rounds = (of: readonly Rectangle[]) => addedMass(plan([...frame, ...of]), 1, { n: 26 }).heave.found;

  it('is never above the solid plate, thick or thin', () => {
    fc.assert(
      fc.property(fc.array(rectangle, { maxLength: 6 }), fc.constantFrom(0, 0.05), (some, t) => {
        for (const ratio of addedMass(plan([...frame, ...some], t), 1, { n: 26 }).ratio.found)
          expect(ratio).toBeLessThanOrEqual(1 + 1e-7);
      }),
      { numRuns: 25, seed: 7 },
    );
  });

  it('never falls when a bay is closed', () => {
    const open = crossing(4, 1, 3);
    const bays = equalBars(4, 1, 3);
    const bay = (i: number, j: number): Rectangle => ({ x0: bays[i]![1], x1: bays[i + 1]![0], y0: bays[j]![1], y1: bays[j + 1]![0] }); // prettier-ignore
    fc.assert(
      fc.property(fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6, 7, 8], { minLength: 3 }), (order) => {
        let before = rounds(open);
        let closed: Rectangle[] = [...open];
        for (const k of order) {
          closed = [...closed, bay(k % 3, Math.floor(k / 3))];
          const now = rounds(closed);
          now.forEach((mass, i) => expect(mass).toBeGreaterThanOrEqual(before[i]! * (1 - 1e-7)));
          before = now;
        }
      }),
      { numRuns: 6, seed: 11 },
    );
  });

  it('parallel strips carry no less than each by itself, crossing bars no less than either family', () => {
    for (const [count, w, g] of [
      [3, 1, 1],
      [4, 3, 1],
      [5, 1, 4],
    ] as const) {
      // prettier-ignore
      const family = slats(count, w, g);
      const { frame, lattice } = plateLattice(plan(family), 44);
      const mass = (of: readonly Rectangle[]): number => {
        const { D, grip } = plateProblem(plan(of), frame);
        const [{ mu }] = solvePair(lattice, [
          { D, v: grip },
          { D, v: grip },
        ]);
        return mu.reduce((sum, value) => sum + value, 0);
      };
      const both = mass(family);
      expect(both).toBeGreaterThan(family.reduce((sum, one) => sum + mass([one]), 0));
      expect(mass([...family, ...turned(family)])).toBeGreaterThan(both);
    }
  });
});
