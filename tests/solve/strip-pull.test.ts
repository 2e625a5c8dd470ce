import { describe, expect, it } from 'vitest';
import { stripPull } from '../../core/solve/strip-pull.ts';

const strip = (q: number) => ({ a: 1, t: 0.01, E: 210e9, nu: 0.3, q });
const D = (210e9 * 0.01 ** 3) / (12 * 0.91);
const near = (value: number, expected: number, part: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(part);

describe('long plate with edges that cannot move (Timoshenko & Woinowsky-Krieger, 2nd ed., ch. 1)', () => {
  it('hinged, 50 in × ½ in steel under 20 psi: u 3.795, σ1 15 830 psi, σ2 19 930 psi (art. 2, worked example, from memory)', () => {
    const { u, stressMembrane, momentLargest, stressLargest } = stripPull(
      { a: 50, t: 0.5, E: 30e6, nu: 0.3, q: 20 },
      'hinged',
    );
    near(u, 3.795, 5e-4); // the book reads a curve of logarithms
    near(stressMembrane, 15830, 1e-3);
    near((6 * momentLargest) / 0.25, 19930, 2e-3);
    near(stressLargest, 35760, 2e-3);
  });

  it('satisfies the book’s own equation for u: U1(u) hinged, U2(u) held, by its closed forms', () => {
    for (const q of [2e4, 1e5, 5e5]) {
      const load = (strip(q).E / ((1 - 0.09) * q)) ** 2 * 0.01 ** 8; // E² h⁸ / ((1-ν²)² q² l⁸)
      const u = stripPull(strip(q), 'hinged').u;
      const t = Math.tanh(u);
      if (u > 0.8)
        near(
          (135 / 16) * (t / u ** 9) + (27 / 16) * (t ** 2 / u ** 8) - 135 / (16 * u ** 8) + 9 / (8 * u ** 6),
          load,
          1e-8,
        );
      const v = stripPull(strip(q), 'held').u;
      const s = Math.sinh(v) ** 2;
      if (v > 0.8)
        near(
          -81 / (16 * v ** 7 * Math.tanh(v)) - 27 / (16 * v ** 6 * s) + 27 / (4 * v ** 8) + 9 / (8 * v ** 6),
          load,
          1e-8,
        );
      expect(Math.max(u, v)).toBeGreaterThan(0.8);
    }
  });

  it('tends to the beam of small deflections: 5/384, 1/8; 1/384, 1/24, 1/12', () => {
    const [hinged, held] = [stripPull(strip(1), 'hinged'), stripPull(strip(1), 'held')];
    near(hinged.deflection, 5 / (384 * D), 1e-6);
    near(hinged.momentCentre, 1 / 8, 1e-6);
    near(held.deflection, 1 / (384 * D), 1e-6);
    near(held.momentEdge, -1 / 12, 1e-6);
    near(held.momentCentre, 1 / 24, 1e-6);
    // The pull follows from the small deflection's own slope: E t/(2(1-ν²) a) ∫ w'² dx, ∫ = 17 q² a⁷/(20160 D²) hinged.
    near(hinged.pull, ((210e9 * 0.01) / (2 * 0.91)) * (17 / (20160 * D ** 2)), 1e-6);
    near(held.pull, ((210e9 * 0.01) / (2 * 0.91)) * (1 / (30240 * D ** 2)), 1e-6);
  });

  it('tends to a membrane for heavy load: pull (E t q² a² / 24 (1 - ν²))^⅓, sag q a² / 8 S', () => {
    for (const edges of ['hinged', 'held'] as const) {
      const { pull, deflection, momentLargest } = stripPull({ ...strip(1e6), t: 1e-4 }, edges);
      near(pull, Math.cbrt((210e9 * 1e-4 * 1e12) / (24 * 0.91)), 0.03);
      near(deflection, 1e6 / (8 * pull), 0.03);
      expect(Number.isFinite(momentLargest)).toBe(true);
    }
  });

  it('passes smoothly from series to closed form at u = 1', () => {
    for (const edges of ['hinged', 'held'] as const) {
      let [low, high] = [1e2, 1e6];
      for (let step = 0; step < 60; step++) {
        const q = Math.sqrt(low * high);
        if (stripPull(strip(q), edges).u < 1) low = q;
        else high = q;
      }
      const [below, above] = [stripPull(strip(low), edges), stripPull(strip(high), edges)];
      for (const of of ['pull', 'momentCentre', 'momentLargest', 'deflection'] as const)
        near(below[of], above[of], 1e-9);
    }
  });

  it('obeys statics: M centre − M edge + S w = q a² / 8, at any load', () => {
    for (const edges of ['hinged', 'held'] as const)
      for (const q of [1, 1e3, 2e4, 1e6, 1e8]) {
        const { momentCentre, momentEdge, pull, deflection } = stripPull(strip(q), edges);
        near(momentCentre - momentEdge + pull * deflection, q / 8, 1e-8);
      }
  });

  it('carries nothing without load, mirrors with its sign, and refuses no thickness', () => {
    const zero = stripPull(strip(0), 'held');
    expect([zero.pull, zero.deflection, zero.stressLargest]).toEqual([0, 0, 0]);
    const [up, down] = [stripPull(strip(5e4), 'held'), stripPull(strip(-5e4), 'held')];
    expect(down.pull).toBe(up.pull);
    expect(down.deflection).toBe(-up.deflection);
    expect(() => stripPull({ ...strip(1), t: 0 }, 'held')).toThrow(/t must be positive/);
  });
});
