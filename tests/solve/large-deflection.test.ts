import { describe, expect, it } from 'vitest';
import { inPlanePull } from '../../core/solve/in-plane-pull.ts';
import { largeDeflection } from '../../core/solve/large-deflection.ts';
import { vonKarman } from './von-karman.ts';

/** E = t = a = 1: q is Q and answers are multiples of t and of E t²/a². */
const square = (Q: number, nu = 0.3) => ({ a: 1, b: 1, t: 1, E: 1, nu, q: Q });
const near = (value: number, expected: number, part: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(part);

describe('square plate of large deflection, edges that cannot move', () => {
  it('held: S. Levy, NACA Report 740 (from memory): w/t 0.237, 0.471, 0.695, 0.912, 1.121 at Q = 17.79, 38.3, 63.4, 95, 134.9 (ν = 0.316)', () => {
    for (const [Q, w] of [
      [17.79, 0.237],
      [38.3, 0.471],
      [63.4, 0.695],
      [95, 0.912],
      [134.9, 1.121],
    ] as const)
      near(largeDeflection(square(Q), 'held').deflectionCentre, w, 0.015);
  });
  it('hinged: Roark’s Formulas, 7th ed., ch. 11 (from memory): w/t 1.26 at Q = 100, 1.77 at 250', () => {
    near(largeDeflection(square(100), 'hinged').deflectionCentre, 1.26, 0.005);
    near(largeDeflection(square(250), 'hinged').deflectionCentre, 1.77, 0.005);
  });
  it('starts as small deflections do', () => {
    const [held, hinged] = [largeDeflection(square(0.01), 'held'), largeDeflection(square(0.01), 'hinged')];
    near(held.deflectionCentre, 0.01 * 0.0138171, 1e-3);
    near(held.bendingEdge, 0.01 * 6 * 0.051334, 2e-3);
    near(hinged.deflectionCentre, 0.01 * 0.0443609, 1e-3);
    near(hinged.bendingCentre, 0.01 * 6 * 0.0478864, 2e-3);
  });
  it('grows with the load everywhere and less than in proportion', () => {
    for (const edges of ['held', 'hinged'] as const) {
      let last = largeDeflection(square(0.5), edges);
      for (let Q = 1; Q <= 400; Q += 0.5) {
        const now = largeDeflection(square(Q), edges);
        for (const of of ['deflectionCentre', 'membraneCentre', 'bendingCentre', 'stressLargest'] as const)
          expect(now[of]).toBeGreaterThan(last[of]);
        expect(now.deflectionCentre / Q).toBeLessThan(last.deflectionCentre / last.load);
        last = now;
      }
    }
  });
  it('cannot be judged outside the table: load, sides, ν', () => {
    expect(() => largeDeflection(square(410), 'held')).toThrow(/cannot be judged.*410.*ends at 402/);
    expect(() => largeDeflection({ ...square(10), b: 1.2 }, 'held')).toThrow(/cannot be judged.*for squares/);
    expect(() => largeDeflection(square(10, 0.45), 'hinged')).toThrow(/cannot be judged.*0.45/);
  });
});

describe('against von Kármán’s equations solved here by Ritz’s method', () => {
  it('squares: deflection and membrane stress of the table within 1 %, between its rows too', () => {
    for (const [edges, Q] of [
      ['hinged', 20],
      ['held', 130],
    ] as const) {
      const [karman, table] = [vonKarman(1, Q, edges), largeDeflection(square(Q), edges)];
      near(karman.w, table.deflectionCentre, 0.01);
      near(karman.membraneCentre, table.membraneCentre, 0.01);
    }
  });
  it('rectangles: inPlanePull bounds the average pull on any edge, and the middle of the long edge but for 6 %', () => {
    const cases = [
      ['hinged', 1.5, 60],
      ['hinged', 2, 250],
      ['held', 1, 250],
      ['held', 2, 250],
      ['held', 2.5, 60],
    ] as const;
    for (const [edges, ratio, Q] of cases) {
      const { pullMiddle, pullAverage } = vonKarman(ratio, Q, edges, { finer: 2 });
      const bound = inPlanePull({ a: ratio, b: 1, t: 1, E: 1, nu: 0.3, q: Q }, edges);
      expect(Math.max(...pullAverage), `${edges} ${ratio} ${Q}`).toBeLessThan(bound);
      expect(Math.max(...pullMiddle), `${edges} ${ratio} ${Q}`).toBeLessThan(1.06 * bound);
    }
  });
});
