import { describe, expect, it } from 'vitest';
import type { ReadyPlate } from '../../../core/plate/solve-plate.ts';
import { addedMassByArea } from '../../../core/plate/added-mass-by-area.ts';
import { plateMassesIn } from '../../../core/plate/plate-masses.ts';
import { openAreaRule, thinPlateCoefficient } from '../../../core/water/added-mass-rules.ts';
import { massProduct } from '../../../core/solve/structure/modes-of-structure.ts';
import {
  closedByWeight,
  nearWaves,
  plateModes,
  type PlateModes,
  type PlateModesSettings,
} from '../../../core/plate/plate-modes.ts';
import { ready, sampleModel } from '../../plate/results/support/solved-sample.ts';

const { PI: π } = Math;

function modes(plate: ReadyPlate, settings: PlateModesSettings): PlateModes {
  const steps = plateModes(plate, settings);
  for (;;) {
    const next = steps.next();
    if (next.done) return next.value;
  }
}

describe('the plate’s own modes', () => {
  const model = sampleModel('small');
  const plate = ready(model, 0.2);
  const hung = modes(plate, { holding: 'hung', count: 4 });
  const free = modes(plate, { holding: 'free', count: 4 });

  it('move the mass of the plate, in water with what is in it and around it', () => {
    const { mass, movingMass } = model.loads.plate;
    expect(hung.air.verticalMass).toBeCloseTo(mass, 6);
    expect(hung.water.verticalMass).toBeCloseTo(movingMass + hung.added.total, 3);
    expect(hung.added.method).toBe('flow');
  });

  it('carry less water than the rule for open areas gave them as to a heave: a bent shape moves less', () => {
    const { outline, areas } = model.geometry;
    const [s, l] = [outline.x1 - outline.x0, outline.y1 - outline.y0].sort((a, b) => a - b) as [number, number];
    const closed = thinPlateCoefficient(l / s) * model.mass.waterDensity * (π / 4) * s * s * l;
    const rule = addedMassByArea(model, plate.structure);
    expect(rule.method).toBe('open plate');
    expect(rule.total / (closed * openAreaRule(areas.openRatio)!)).toBeCloseTo(1, 9);
    const { shape } = free.water.modes[0]!;
    const [water, byArea] = [new Float64Array(shape.length), new Float64Array(shape.length)];
    free.added.inertia(shape, water);
    for (const { node, mass } of rule.points) byArea[6 * node + 2]! += mass * shape[6 * node + 2]!;
    const of = (f: Float64Array): number => f.reduce((sum, value, i) => sum + value * shape[i]!, 0);
    expect(of(water)).toBeGreaterThan(0);
    expect(of(water)).toBeLessThan(0.7 * of(byArea));
  });

  it('settle, and leave out what nothing holds: six motions when free, three on a bridle of four legs to one point', () => {
    for (const set of [hung.air, hung.water, free.air, free.water]) {
      expect(set.converged).toBe(true);
      set.modes.forEach(({ residual, frequency }, k) => {
        expect(residual).toBeLessThan(1e-5);
        if (k > 0) expect(frequency).toBeGreaterThanOrEqual(set.modes[k - 1]!.frequency);
      });
    }
    expect([free.air.rigid, hung.air.rigid]).toEqual([6, 3]);
    for (const { supportGive } of [...hung.air.modes, ...hung.water.modes]) expect(supportGive).toBeLessThan(1e-3);
  });

  it('are lower in water than in air, and each mode takes its part of the heaving mass', () => {
    for (const { air, water } of [hung, free])
      water.modes.forEach(({ frequency }, k) => expect(frequency).toBeLessThan(air.modes[k]!.frequency));
    for (const { modes: list, verticalMass } of [hung.air, hung.water])
      expect(list.reduce((sum, mode) => sum + mode.verticalMass, 0)).toBeLessThan(verticalMass);
    expect(hung.water.modes[0]!.verticalMass).toBeGreaterThan(0.4 * hung.water.verticalMass);
    for (const { verticalMass } of free.water.modes) expect(verticalMass).toBeLessThan(1e-6);
  });

  it('are at right angles to each other and to rigid motions in the mass', () => {
    const size = 2 * plate.structure.coordinates.length;
    const weight = massProduct({ everyWay: plateMassesIn(model, plate.structure, 'water'), water: free.added.inertia }, size); // prettier-ignore
    const shapes = [
      Float64Array.from({ length: size }, (_, i) => (i % 6 === 2 ? 1 : 0)),
      Float64Array.from({ length: size }, (_, i) => (i % 6 === 0 ? 1 : 0)),
      ...free.water.modes.map(({ shape }) => shape),
    ];
    const product = (a: Float64Array, b: Float64Array): number => {
      const Mb = weight(b);
      return a.reduce((sum, value, i) => sum + value * Mb[i]!, 0);
    };
    for (let i = 2; i < shapes.length; i++)
      for (let j = 0; j < i; j++) {
        const scale = Math.sqrt(product(shapes[i]!, shapes[i]!) * product(shapes[j]!, shapes[j]!));
        expect(Math.abs(product(shapes[i]!, shapes[j]!)) / scale).toBeLessThan(1e-6);
      }
  });

  it('fall when a panel is no longer pressed on its tubes', () => {
    const closed = closedByWeight(plate);
    expect(closed.some((one) => one === 1)).toBe(true);
    const open = modes(plate, { holding: 'hung', count: 4, closed: new Uint8Array(closed.length) });
    open.water.modes.forEach(({ frequency }, k) =>
      expect(frequency).toBeLessThanOrEqual(hung.water.modes[k]!.frequency * (1 + 1e-9)),
    );
    expect(open.water.modes[0]!.frequency).toBeLessThan(0.9999 * hung.water.modes[0]!.frequency);
  });

  it('keep to 2 % when the mesh is made finer', () => {
    const finer = modes(ready(model, 0.1), { holding: 'hung', count: 1 });
    expect(Math.abs(finer.water.modes[0]!.frequency / hung.water.modes[0]!.frequency - 1)).toBeLessThan(0.02);
  });

  it('of the bare tubes count each tube’s water alone, and say so', () => {
    const bare = sampleModel('small', (raw) => {
      (raw as { panels?: unknown }).panels = {};
    });
    const added = addedMassByArea(bare, ready(bare, 0.2).structure);
    expect(bare.geometry.areas.openRatio).toBeGreaterThan(0.5);
    expect(added.method).toBe('each part alone');
    expect(added.cautions.join(' ')).toContain('the least that the water can add');
    // 1.51 ρ π (w/2)² a metre of a square tube: DNV-RP-C205, app. D, from memory
    const tubes = [...bare.geometry.mainTubes, ...bare.geometry.crossTubes];
    const sum = tubes.reduce((kg, { section, from, to }) => kg + 1.51 * bare.mass.waterDensity * π * (section.width / 2) ** 2 * (to - from), 0); // prettier-ignore
    if (tubes.every(({ section }) => section.shape === 'square')) expect(added.total / sum).toBeCloseTo(1, 9);
    else expect(added.total).toBeGreaterThan(0);
  });
});

describe('a frequency near the waves', () => {
  it('is told, at theirs and at twice and three times', () => {
    const found = (f: number, T = 7): string => nearWaves([{ frequency: f }], T, 'hung').map(({ text }) => text).join(); // prettier-ignore
    expect(found(1 / 7)).toMatch(/the waves’ own frequency, 0\.143 Hz/);
    expect(found(2.1 / 7)).toMatch(/2 times the waves’/);
    expect(found(3.5 / 7)).toMatch(/3 times the waves’/);
    expect(found(0.7 / 7)).toBe('');
    expect(found(3 * 1.41 / 7)).toBe('');
    expect(found(15)).toBe('');
  }); // prettier-ignore
});
