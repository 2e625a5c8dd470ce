import { refusal } from '../../refusal.ts';

/** What the transforms of one length share: radices in their order and the twiddles of every stage. */
export interface FourierPlan {
  readonly n: number;
  readonly radices: readonly number[];
  /** cos and −sin of 2π p k / n_l for each stage: p over n_l / r, then k over 1 … r − 1. */
  readonly twiddles: readonly Float64Array[];
}

/** Smallest length not under n that the transform takes: 2^a 3^b 5^c. */
export function fourierLength(n: number): number {
  for (let length = n; ; length++) {
    let rest = length;
    for (const r of [2, 3, 5]) while (rest % r === 0) rest /= r;
    if (rest === 1) return length;
  }
}

/** Plan of the transform of length n = 2^a 3^b 5^c. Refuses another length. */
export function fourierPlan(n: number): FourierPlan {
  const radices: number[] = [];
  let rest = n;
  for (const r of [5, 3, 4, 2])
    while (rest % r === 0) {
      radices.push(r);
      rest /= r;
    }
  if (rest !== 1)
    throw refusal({ what: `A Fourier transform of length ${n} is not made`, mend: 'Take a length 2^a 3^b 5^c.' });
  let length = n;
  const twiddles = radices.map((r) => {
    const m = length / r;
    const w = new Float64Array(2 * m * (r - 1));
    for (let p = 0, at = 0; p < m; p++)
      for (let k = 1; k < r; k++) {
        const angle = (2 * Math.PI * p * k) / length;
        w[at++] = Math.cos(angle);
        w[at++] = -Math.sin(angle);
      }
    length = m;
    return w;
  });
  return { n, radices, twiddles };
}

/**
 * Discrete Fourier transforms, X_k = Σ x_j exp(−2πi jk/n), of `batch` complex series at once.
 * re, im: n × batch, entry j of series b at j · batch + b; overwritten with the result. spareRe, spareIm: as long, scratch.
 * Gives true where the result stands in the spare arrays instead (an odd number of stages). The inverse, without 1/n, is the
 * same with re and im in each other's place. Stockham's order: no bit reversal, and the innermost loop runs over neighbours.
 */
export function fourier(
  { n, radices, twiddles }: FourierPlan,
  re: Float64Array,
  im: Float64Array,
  spareRe: Float64Array,
  spareIm: Float64Array,
  batch: number,
): boolean {
  let [xr, xi, yr, yi] = [re, im, spareRe, spareIm];
  let length = n;
  let s = batch;
  for (let stage = 0; stage < radices.length; stage++) {
    const r = radices[stage]!;
    const w = twiddles[stage]!;
    const m = length / r;
    if (r === 4) radix4(m, s, w, xr, xi, yr, yi);
    else if (r === 5) radix5(m, s, w, xr, xi, yr, yi);
    else if (r === 3) radix3(m, s, w, xr, xi, yr, yi);
    else radix2(m, s, w, xr, xi, yr, yi);
    length = m;
    s *= r;
    [xr, xi, yr, yi] = [yr, yi, xr, xi];
  }
  return radices.length % 2 === 1;
}

type A = Float64Array;

function radix2(m: number, s: number, w: A, xr: A, xi: A, yr: A, yi: A): void {
  for (let p = 0; p < m; p++) {
    const [c, d] = [w[2 * p]!, w[2 * p + 1]!];
    const [a, b] = [s * p, s * (p + m)];
    const [u, v] = [s * 2 * p, s * (2 * p + 1)];
    for (let q = 0; q < s; q++) {
      const ar = xr[a + q]!;
      const ai = xi[a + q]!;
      const br = xr[b + q]!;
      const bi = xi[b + q]!;
      yr[u + q] = ar + br;
      yi[u + q] = ai + bi;
      const er = ar - br;
      const ei = ai - bi;
      yr[v + q] = er * c - ei * d;
      yi[v + q] = er * d + ei * c;
    }
  }
}

const half3 = Math.sqrt(3) / 2;

function radix3(m: number, s: number, w: A, xr: A, xi: A, yr: A, yi: A): void {
  for (let p = 0; p < m; p++) {
    const [c1, d1, c2, d2] = [w[4 * p]!, w[4 * p + 1]!, w[4 * p + 2]!, w[4 * p + 3]!];
    const [a, b, c] = [s * p, s * (p + m), s * (p + 2 * m)];
    const u = s * 3 * p;
    for (let q = 0; q < s; q++) {
      const ar = xr[a + q]!;
      const ai = xi[a + q]!;
      const sr = xr[b + q]! + xr[c + q]!;
      const si = xi[b + q]! + xi[c + q]!;
      const er = half3 * (xr[b + q]! - xr[c + q]!);
      const ei = half3 * (xi[b + q]! - xi[c + q]!);
      yr[u + q] = ar + sr;
      yi[u + q] = ai + si;
      const hr = ar - sr / 2;
      const hi = ai - si / 2;
      const fr = hr + ei;
      const fi = hi - er;
      const gr = hr - ei;
      const gi = hi + er;
      yr[u + s + q] = fr * c1 - fi * d1;
      yi[u + s + q] = fr * d1 + fi * c1;
      yr[u + 2 * s + q] = gr * c2 - gi * d2;
      yi[u + 2 * s + q] = gr * d2 + gi * c2;
    }
  }
}

function radix4(m: number, s: number, w: A, xr: A, xi: A, yr: A, yi: A): void {
  for (let p = 0; p < m; p++) {
    const at = 6 * p;
    const c1 = w[at]!;
    const d1 = w[at + 1]!;
    const c2 = w[at + 2]!;
    const d2 = w[at + 3]!;
    const c3 = w[at + 4]!;
    const d3 = w[at + 5]!;
    const a = s * p;
    const b = a + s * m;
    const c = b + s * m;
    const d = c + s * m;
    const u = s * 4 * p;
    for (let q = 0; q < s; q++) {
      const tr = xr[a + q]! + xr[c + q]!;
      const ti = xi[a + q]! + xi[c + q]!;
      const er = xr[a + q]! - xr[c + q]!;
      const ei = xi[a + q]! - xi[c + q]!;
      const sr = xr[b + q]! + xr[d + q]!;
      const si = xi[b + q]! + xi[d + q]!;
      const fr = xr[b + q]! - xr[d + q]!;
      const fi = xi[b + q]! - xi[d + q]!;
      yr[u + q] = tr + sr;
      yi[u + q] = ti + si;
      const gr = er + fi;
      const gi = ei - fr;
      yr[u + s + q] = gr * c1 - gi * d1;
      yi[u + s + q] = gr * d1 + gi * c1;
      const hr = tr - sr;
      const hi = ti - si;
      yr[u + 2 * s + q] = hr * c2 - hi * d2;
      yi[u + 2 * s + q] = hr * d2 + hi * c2;
      const kr = er - fi;
      const ki = ei + fr;
      yr[u + 3 * s + q] = kr * c3 - ki * d3;
      yi[u + 3 * s + q] = kr * d3 + ki * c3;
    }
  }
}

const [cos72, sin72, cos144, sin144] = [1, 2].flatMap((k) => [
  Math.cos((2 * Math.PI * k) / 5),
  Math.sin((2 * Math.PI * k) / 5),
]) as [number, number, number, number];

function radix5(m: number, s: number, w: A, xr: A, xi: A, yr: A, yi: A): void {
  for (let p = 0; p < m; p++) {
    const at = 8 * p;
    const [c1, d1, c2, d2] = [w[at]!, w[at + 1]!, w[at + 2]!, w[at + 3]!];
    const [c3, d3, c4, d4] = [w[at + 4]!, w[at + 5]!, w[at + 6]!, w[at + 7]!];
    const a = s * p;
    const [b, c, d, e] = [a + s * m, a + 2 * s * m, a + 3 * s * m, a + 4 * s * m];
    const u = s * 5 * p;
    for (let q = 0; q < s; q++) {
      const ar = xr[a + q]!;
      const ai = xi[a + q]!;
      const s1r = xr[b + q]! + xr[e + q]!;
      const s1i = xi[b + q]! + xi[e + q]!;
      const e1r = xr[b + q]! - xr[e + q]!;
      const e1i = xi[b + q]! - xi[e + q]!;
      const s2r = xr[c + q]! + xr[d + q]!;
      const s2i = xi[c + q]! + xi[d + q]!;
      const e2r = xr[c + q]! - xr[d + q]!;
      const e2i = xi[c + q]! - xi[d + q]!;
      yr[u + q] = ar + s1r + s2r;
      yi[u + q] = ai + s1i + s2i;
      const g1r = ar + cos72 * s1r + cos144 * s2r;
      const g1i = ai + cos72 * s1i + cos144 * s2i;
      const h1r = sin72 * e1r + sin144 * e2r;
      const h1i = sin72 * e1i + sin144 * e2i;
      const g2r = ar + cos144 * s1r + cos72 * s2r;
      const g2i = ai + cos144 * s1i + cos72 * s2i;
      const h2r = sin144 * e1r - sin72 * e2r;
      const h2i = sin144 * e1i - sin72 * e2i;
      yr[u + s + q] = (g1r + h1i) * c1 - (g1i - h1r) * d1;
      yi[u + s + q] = (g1r + h1i) * d1 + (g1i - h1r) * c1;
      yr[u + 2 * s + q] = (g2r + h2i) * c2 - (g2i - h2r) * d2;
      yi[u + 2 * s + q] = (g2r + h2i) * d2 + (g2i - h2r) * c2;
      yr[u + 3 * s + q] = (g2r - h2i) * c3 - (g2i + h2r) * d3;
      yi[u + 3 * s + q] = (g2r - h2i) * d3 + (g2i + h2r) * c3;
      yr[u + 4 * s + q] = (g1r - h1i) * c4 - (g1i + h1r) * d4;
      yi[u + 4 * s + q] = (g1r - h1i) * d4 + (g1i + h1r) * c4;
    }
  }
}
