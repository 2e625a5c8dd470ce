import { describe, expect, it } from 'vitest';
import { planInWater } from '../../core/geometry/plan-in-water.ts';
import { addedWater } from '../../core/plate/added-water.ts';
import { cellMotion, waterUnderMotion, type CellMotion } from '../../core/plate/water-under-motion.ts';
import { addedMass } from '../../core/water/added-mass.ts';
import { stripKernel } from '../../core/water/lattice/doublet-kernel.ts';
import { lattice } from '../../core/water/lattice/lattice.ts';
import { plateLattice } from '../../core/water/lattice/plate-lattice.ts';
import { bars } from '../water/lattice/on-one-row.ts';
import { barePlate } from '../solve/structure/support/bare-plate.ts';
import { ready, sampleModel } from './results/support/solved-sample.ts';

const { PI: π, SQRT2, sin, acos } = Math;

function dot(a: Float64Array, b: Float64Array): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0);
}

/** Force for a motion. */
function force(water: (u: Float64Array, f: Float64Array) => void, u: Float64Array): Float64Array {
  const f = new Float64Array(u.length);
  water(u, f);
  return f;
}

describe('water under a motion of any shape', () => {
  it('of a strip of breadth 2b bent as sin nθ / sin θ, x = b cos θ, is ρ π b²/n a length (thin aerofoil theory: Glauert, Elements of Aerofoil and Airscrew Theory, ch. VII, from memory; n = 1 is Lamb, Hydrodynamics, art. 71)', () => {
    const [cells, b] = [160, 0.5];
    const h = 1 / (cells + 0.5);
    const plan = bars([[0, 1]]);
    const frame = { nx: cells, ny: 1, h, x: h / 4, y: -h / 2 };
    const each: CellMotion = {
      starts: Int32Array.from({ length: cells + 1 }, (_, k) => k),
      freedoms: Int32Array.from({ length: cells }, (_, k) => k),
      parts: new Float64Array(cells).fill(1),
    };
    const water = waterUnderMotion({ frame, lattice: lattice(cells, 1, h, stripKernel(h)) }, plan, 1000, each);
    for (const n of [1, 2, 3, 4, 5]) {
      const u = Float64Array.from({ length: cells }, (_, i) => {
        const θ = acos((frame.x + (i + 0.5) * h - b) / b);
        return sin(n * θ) / sin(θ);
      });
      // a cell is h × h: the row is h long
      const mass = dot(u, force(water, u)) / h;
      expect(Math.abs(mass / ((1000 * π * b ** 2) / n) - 1)).toBeLessThan(5e-3);
    }
  });

  it('of many half-waves tends to 2 ρ/k an area, both sides of an endless sheet with wave number k (potential of sin kx e^(-kz): Lamb, Hydrodynamics, from memory)', () => {
    const plate = barePlate({ a: 2, b: 2, n: 80, m: 80 }, { thickness: 0.01, E: 1, nu: 0 });
    const plan = { rectangles: [{ x0: 0, y0: 0, x1: 2, y1: 2 }], holes: [], thickness: 0 };
    const laid = plateLattice(plan, 120);
    const water = waterUnderMotion(laid, plan, 1000, cellMotion(plate.structure, [], laid, plan));
    const off = [2, 4, 8].map((halves) => {
      const k = (halves * π) / 2;
      const u = new Float64Array(6 * 81 * 81);
      for (let j = 0; j <= 80; j++)
        for (let i = 0; i <= 80; i++) u[6 * plate.at(i, j) + 2] = sin((k * i) / 40) * sin((k * j) / 40);
      // ∫ sin² sin² over 2 × 2 m is 1 m²
      return dot(u, force(water, u)) / (2000 / (k * SQRT2)) - 1;
    });
    // edges let water round them, less and less
    expect(Math.abs(off[0]!)).toBeLessThan(0.08);
    expect(Math.abs(off[1]!)).toBeLessThan(0.03);
    expect(Math.abs(off[2]!)).toBeLessThan(0.015);
  });
});

describe('water of a plate’s natural modes', () => {
  const model = sampleModel('small', (raw) => {
    delete (raw as { hydrodynamics?: unknown }).hydrodynamics; // no growth: the plan as built
  });
  const { structure } = ready(model, 0.2);
  const added = addedWater(model, structure);
  const { coordinates } = structure;
  const { outline } = model.geometry;
  const moved = (w: (x: number, y: number) => readonly [uz: number, θx: number, θy: number]): Float64Array => {
    const u = new Float64Array(2 * coordinates.length);
    for (let n = 0; n < coordinates.length / 3; n++) u.set(w(coordinates[3 * n]!, coordinates[3 * n + 1]!), 6 * n + 2);
    return u;
  };

  it('is the lattice’s own added mass in heave, and its inertia in roll and pitch, with the plate’s own gaps', () => {
    const own = addedMass(planInWater(model.geometry), model.mass.waterDensity, { n: 100 });
    const [xc, yc] = [(outline.x0 + outline.x1) / 2, (outline.y0 + outline.y1) / 2];
    const [heave, roll, pitch] = [
      moved(() => [1, 0, 0]),
      moved((_x, y) => [y - yc, 1, 0]),
      moved((x) => [xc - x, 0, 1]),
    ].map((u) => dot(u, force(added.inertia, u))) as [number, number, number];
    expect(added.method).toBe('flow');
    expect(Math.abs(heave / added.total - 1)).toBeLessThan(1e-9);
    expect(Math.abs(added.total / own.heave.value - 1)).toBeLessThan(1e-9);
    // another lattice than that of the extrapolated values
    expect(Math.abs(roll / own.roll.value - 1)).toBeLessThan(0.01);
    expect(Math.abs(pitch / own.pitch.value - 1)).toBeLessThan(0.01);
  });

  it('is symmetric and positive', () => {
    const [a, b] = [moved((x, y) => [sin(3 * x) * sin(2 * y), 0, 0]), moved((x, y) => [x * y, x, -y])] as const;
    const [Ma, Mb] = [force(added.inertia, a), force(added.inertia, b)];
    const scale = Math.sqrt(dot(a, Ma) * dot(b, Mb));
    expect(Math.abs(dot(a, Mb) - dot(b, Ma)) / scale).toBeLessThan(1e-8);
    expect(dot(a, Ma)).toBeGreaterThan(0);
  });

  it('in a full wave each way is near 2 ρ/k an area, half of what as large a heave moves', () => {
    const [L, B] = [outline.x1 - outline.x0, outline.y1 - outline.y0];
    const bent = moved((x, y) => [2 * sin((2 * π * (x - outline.x0)) / L) * sin((2 * π * (y - outline.y0)) / B), 0, 0]);
    const mass = dot(bent, force(added.inertia, bent)); // ∫ (2 sin sin)² is the outline's area
    const k = 2 * π * Math.hypot(1 / L, 1 / B);
    // edges give 7 % more on a thin plate (above), the height of the tubes about as much again
    const ratio = mass / ((2 * model.mass.waterDensity * L * B) / k);
    expect(ratio).toBeGreaterThan(1.05);
    expect(ratio).toBeLessThan(1.15);
    expect(mass).toBeLessThan(0.55 * added.total);
  });

  it('is said with its source; where the lattice cannot be judged, the rule by area stands in and says why', () => {
    expect(added.said).toMatch(/potential flow about this plan.*solved for each mode/);
    expect(added.cautions.join(' ')).toMatch(/gaps hold it up/);
    const rule = addedWater(model, structure, { mostError: 0 });
    expect(rule.method).toBe('open plate');
    expect(rule.said).toMatch(/rule for open areas.*since the lattice of the flow is off by an estimated/);
    const heave = moved(() => [1, 0, 0]);
    expect(dot(heave, force(rule.inertia, heave)) / rule.total).toBeCloseTo(1, 9);
  });
});
