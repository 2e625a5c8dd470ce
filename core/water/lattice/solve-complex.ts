import type { Lattice } from './lattice.ts';

/** A complex field on a lattice. */
export interface ComplexField {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/**
 * (K + D) μ = v with D and v complex, by conjugate gradients for complex symmetric matrices (COCG; van der Vorst and Melissen,
 * IEEE Trans. Magn. 26, 1990) with the preconditioner of `solvePair`. D.re is Infinity where a cell is open.
 * mu holds the start and is overwritten with the answer; K μ is left in `K` (its residual is that of this recurrence).
 */
export function solveComplex(
  { own, apply, approximateInverse }: Lattice,
  D: ComplexField,
  v: ComplexField,
  mu: ComplexField,
  K: ComplexField,
  { tolerance = 1e-4, most = 200 }: { tolerance?: number; most?: number } = {},
): { readonly iterations: number; readonly residual: number } {
  const n = mu.re.length;
  const fresh = (): ComplexField => ({ re: new Float64Array(n), im: new Float64Array(n) });
  const [r, p, z, q] = [fresh(), fresh(), fresh(), fresh()];
  const scale = new Float64Array(n);
  let size = 0;
  for (let k = 0; k < n; k++) {
    const d = D.re[k]!;
    scale[k] = d < Infinity ? Math.sqrt(own / (own + Math.hypot(d, D.im[k]!))) : 0;
    if (scale[k] === 0) mu.re[k] = mu.im[k] = 0;
    else size += v.re[k]! ** 2 + v.im[k]! ** 2;
  }
  size = Math.sqrt(size);
  apply(mu.re, mu.im, K.re, K.im);
  for (let k = 0; k < n; k++) {
    if (scale[k] === 0) continue;
    const [a, b, c, d] = [D.re[k]!, D.im[k]!, mu.re[k]!, mu.im[k]!];
    r.re[k] = v.re[k]! - K.re[k]! - (a * c - b * d);
    r.im[k] = v.im[k]! - K.im[k]! - (a * d + b * c);
  }
  let [rhoRe, rhoIm] = [0, 0];
  let residual = norm(r);
  let iterations = 0;
  for (; residual > tolerance * size && iterations < most; iterations++) {
    for (let k = 0; k < n; k++) {
      q.re[k] = r.re[k]! * scale[k]!;
      q.im[k] = r.im[k]! * scale[k]!;
    }
    approximateInverse(q.re, q.im, z.re, z.im);
    let [nowRe, nowIm] = [0, 0];
    for (let k = 0; k < n; k++) {
      z.re[k] = z.re[k]! * scale[k]!;
      z.im[k] = z.im[k]! * scale[k]!;
      nowRe += r.re[k]! * z.re[k]! - r.im[k]! * z.im[k]!;
      nowIm += r.re[k]! * z.im[k]! + r.im[k]! * z.re[k]!;
    }
    const [bRe, bIm] = iterations === 0 ? [0, 0] : quotient(nowRe, nowIm, rhoRe, rhoIm);
    [rhoRe, rhoIm] = [nowRe, nowIm];
    for (let k = 0; k < n; k++) {
      const [c, d] = [p.re[k]!, p.im[k]!];
      p.re[k] = z.re[k]! + bRe * c - bIm * d;
      p.im[k] = z.im[k]! + bRe * d + bIm * c;
    }
    apply(p.re, p.im, z.re, z.im);
    let [pqRe, pqIm] = [0, 0];
    for (let k = 0; k < n; k++) {
      if (scale[k] === 0) {
        q.re[k] = q.im[k] = 0;
        continue;
      }
      const [a, b, c, d] = [D.re[k]!, D.im[k]!, p.re[k]!, p.im[k]!];
      q.re[k] = z.re[k]! + a * c - b * d;
      q.im[k] = z.im[k]! + a * d + b * c;
      pqRe += c * q.re[k]! - d * q.im[k]!;
      pqIm += c * q.im[k]! + d * q.re[k]!;
    }
    const [aRe, aIm] = quotient(rhoRe, rhoIm, pqRe, pqIm);
    for (let k = 0; k < n; k++) {
      const [c, d, e, f] = [p.re[k]!, p.im[k]!, q.re[k]!, q.im[k]!];
      mu.re[k] = mu.re[k]! + aRe * c - aIm * d;
      mu.im[k] = mu.im[k]! + aRe * d + aIm * c;
      r.re[k] = r.re[k]! - (aRe * e - aIm * f);
      r.im[k] = r.im[k]! - (aRe * f + aIm * e);
      K.re[k] = K.re[k]! + aRe * z.re[k]! - aIm * z.im[k]!;
      K.im[k] = K.im[k]! + aRe * z.im[k]! + aIm * z.re[k]!;
    }
    residual = norm(r);
  }
  return { iterations, residual: residual / size };
}

const quotient = (a: number, b: number, c: number, d: number): [number, number] => {
  const m = c * c + d * d;
  return [(a * c + b * d) / m, (b * c - a * d) / m];
};

function norm({ re, im }: ComplexField): number {
  let sum = 0;
  for (let k = 0; k < re.length; k++) sum += re[k]! ** 2 + im[k]! ** 2;
  return Math.sqrt(sum);
}
