import { describe, expect, it } from 'vitest';
import { beamBasis } from '../../core/solve/beam-basis.ts';
import { envelope, envelopeCholesky, solveLower, solveUpper } from '../../core/solve/envelope-cholesky.ts';
import { gaussLegendre } from '../../core/solve/gauss-legendre.ts';
import { inPlanePull } from '../../core/solve/in-plane-pull.ts';
import { largeDeflection } from '../../core/solve/large-deflection.ts';

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
      const { pullMiddle, pullAverage } = vonKarman(ratio, Q, edges, 2);
      const bound = inPlanePull({ a: ratio, b: 1, t: 1, E: 1, nu: 0.3, q: Q }, edges);
      expect(Math.max(...pullAverage), `${edges} ${ratio} ${Q}`).toBeLessThan(bound);
      expect(Math.max(...pullMiddle), `${edges} ${ratio} ${Q}`).toBeLessThan(1.06 * bound);
    }
  });
});

/** A rectangle 1 × ratio with E = t = 1, ν = 0.3, edges that cannot move: even polynomials for w, and for u and v
 *  polynomials that vanish on the edges, odd along their own direction; energy by Gauss's rule over a quarter, Newton's
 *  method in load steps. A Ritz solution is stiffer than the plate, so it pulls rather too hard. */
function vonKarman(ratio: number, Q: number, edges: 'hinged' | 'held', finer = 0) {
  const nu = 0.3;
  const [D, C] = [1 / (12 * (1 - nu ** 2)), 1 / (1 - nu ** 2)];
  const W = beamBasis([edges, edges], (edges === 'held' ? 12 : 10) + finer, true);
  const U = beamBasis(['hinged', 'hinged'], 10 + finer, true);
  const [nw, nu1] = [W.size ** 2, U.size ** 2];
  const n = nw + 2 * nu1;
  const outer = (f: Float64Array, g: Float64Array): Float64Array =>
    Float64Array.from({ length: f.length * g.length }, (_, k) => f[Math.floor(k / g.length)]! * g[k % g.length]!);
  const at = (x: number, y: number) => {
    const [ξ, η, s] = [2 * x - 1, (2 * y) / ratio - 1, 2 / ratio];
    const even = (basis: typeof W, place: number, scale: number) =>
      [0, 1, 2].map((k) => basis.at(place, k as 0 | 1 | 2).map((v) => scale ** k * v)) as [
        Float64Array,
        Float64Array,
        Float64Array,
      ];
    /** place times an even function is odd: (p f)' = f + p f'. */
    const odd = (place: number, scale: number) => {
      const [f, g] = [U.at(place, 0), U.at(place, 1)];
      return [f.map((v) => place * v), f.map((v, k) => scale * (v + place * g[k]!))] as [Float64Array, Float64Array];
    };
    const [[fx, gx, hx], [fy, gy, hy]] = [even(W, ξ, 2), even(W, η, s)];
    const [[ox, dox], [oy, doy]] = [odd(ξ, 2), odd(η, s)];
    const [[ex, dex], [ey, dey]] = [even(U, ξ, 2), even(U, η, s)];
    return {
      w: outer(fx, fy),
      wx: outer(gx, fy),
      wy: outer(fx, gy),
      wxx: outer(hx, fy),
      wyy: outer(fx, hy),
      wxy: outer(gx, gy),
      ux: outer(dox, ey),
      uy: outer(ox, dey),
      vx: outer(dex, oy),
      vy: outer(ex, doy),
    };
  };
  const gauss = gaussLegendre(10);
  // A quarter of the plate is enough, since all is mirrored.
  const places = [...gauss.x].flatMap((ξ, i) =>
    [...gauss.x].map((η, j) => ({
      weight: (gauss.weight[i]! * gauss.weight[j]! * ratio) / 16,
      ...at((1 + ξ) / 4, ((1 + η) / 4) * ratio),
    })),
  );
  const z = new Float64Array(n);
  const dot = (f: Float64Array, from: number): number => f.reduce((sum, value, k) => sum + value * z[from + k]!, 0);
  const strains = (p: ReturnType<typeof at>) => {
    const [wx, wy] = [dot(p.wx, 0), dot(p.wy, 0)];
    const nuv = nw + nu1;
    const e = [
      dot(p.ux, nw) + wx ** 2 / 2,
      dot(p.vy, nuv) + wy ** 2 / 2,
      dot(p.uy, nw) + dot(p.vx, nuv) + wx * wy,
    ] as const;
    return { wx, wy, N: [C * (e[0] + nu * e[1]), C * (e[1] + nu * e[0]), (C * (1 - nu) * e[2]) / 2] as const };
  };
  for (let step = 1; step <= 5; step++)
    for (let round = 0; round < 8; round++) {
      const H = envelope(new Int32Array(n));
      const rest = new Float64Array(n);
      for (const p of places) {
        const { wx, wy, N } = strains(p);
        const [wxx, wyy, wxy] = [dot(p.wxx, 0), dot(p.wyy, 0), dot(p.wxy, 0)];
        const [e1, e2, e3] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
        for (let k = 0; k < nw; k++) {
          e1[k] = wx * p.wx[k]!;
          e2[k] = wy * p.wy[k]!;
          e3[k] = wx * p.wy[k]! + wy * p.wx[k]!;
          const bending =
            D * ((wxx + nu * wyy) * p.wxx[k]! + (wyy + nu * wxx) * p.wyy[k]! + 2 * (1 - nu) * wxy * p.wxy[k]!);
          rest[k]! += p.weight * (((Q * step) / 5) * p.w[k]! - bending);
        }
        for (let k = 0; k < nu1; k++) {
          e1[nw + k] = p.ux[k]!;
          e3[nw + k] = p.uy[k]!;
          e2[nw + nu1 + k] = p.vy[k]!;
          e3[nw + nu1 + k] = p.vx[k]!;
        }
        for (let i = 0; i < n; i++) {
          rest[i]! -= p.weight * (N[0] * e1[i]! + N[1] * e2[i]! + N[2] * e3[i]!);
          const [c1, c2, c3] = [C * (e1[i]! + nu * e2[i]!), C * (e2[i]! + nu * e1[i]!), (C * (1 - nu) * e3[i]!) / 2];
          for (let j = 0; j <= i; j++) {
            let value = c1 * e1[j]! + c2 * e2[j]! + c3 * e3[j]!;
            if (i < nw)
              value +=
                D *
                  ((p.wxx[i]! + nu * p.wyy[i]!) * p.wxx[j]! +
                    (p.wyy[i]! + nu * p.wxx[i]!) * p.wyy[j]! +
                    2 * (1 - nu) * p.wxy[i]! * p.wxy[j]!) +
                N[0] * p.wx[i]! * p.wx[j]! +
                N[1] * p.wy[i]! * p.wy[j]! +
                N[2] * (p.wx[i]! * p.wy[j]! + p.wy[i]! * p.wx[j]!);
            H.entries[H.start[i]! + j]! += p.weight * value;
          }
        }
      }
      expect(envelopeCholesky(H)).toBe(-1);
      solveUpper(H, solveLower(H, rest)).forEach((change, k) => (z[k]! += change));
      if (Math.hypot(...rest) < 1e-10) break;
    }
  const centre = at(0.5, ratio / 2);
  const pull = (x: number, y: number): readonly [number, number] => [strains(at(x, y)).N[0], strains(at(x, y)).N[1]];
  const along = [...gauss.x].map((ξ) => (1 + ξ) / 2);
  const average = (values: number[]): number =>
    values.reduce((sum, value, i) => sum + (gauss.weight[i]! * value) / 2, 0);
  return {
    w: dot(centre.w, 0),
    membraneCentre: strains(centre).N[0],
    pullMiddle: [pull(0, ratio / 2)[0], pull(0.5, 0)[1]],
    pullAverage: [average(along.map((s) => pull(0, s * ratio)[0])), average(along.map((s) => pull(s, 0)[1]))],
  };
}
