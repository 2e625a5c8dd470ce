import { expect } from 'vitest';
import { beamBasis } from '../../core/solve/beam-basis.ts';
import { envelope, envelopeCholesky, solveLower, solveUpper } from '../../core/solve/envelope-cholesky.ts';
import { gaussLegendre } from '../../core/solve/gauss-legendre.ts';

/** A rectangle 1 × ratio with E = t = 1, ν = 0.3, edges that cannot move in the plane, or slide: even polynomials for w,
 *  and for u and v polynomials, odd along their own direction, that vanish on edges that cannot move; energy by Gauss's rule over a quarter, Newton's
 *  method in load steps. A Ritz solution is stiffer than the plate, so it pulls rather too hard. */
export function vonKarman(
  ratio: number,
  Q: number,
  edges: 'hinged' | 'held',
  { finer = 0, slides = false }: { finer?: number; slides?: boolean } = {},
) {
  const nu = 0.3;
  const [D, C] = [1 / (12 * (1 - nu ** 2)), 1 / (1 - nu ** 2)];
  const W = beamBasis([edges, edges], (edges === 'held' ? 12 : 10) + finer, true);
  const U = beamBasis(slides ? ['free', 'free'] : ['hinged', 'hinged'], 10 + finer, true);
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
