import type { Lattice } from './lattice.ts';

/** A complex field on a lattice. */
export interface ComplexField {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** What one call leaves behind. */
export interface ComplexAnswer {
  readonly iterations: number;
  readonly residual: number;
  /** Σ r μ of what is left of v; Σ v μ with it is off by the square of the residual only (the matrix is symmetric). */
  readonly rest: readonly [re: number, im: number];
}

export type ComplexSolver = (
  D: ComplexField,
  v: ComplexField,
  mu: ComplexField,
  K: ComplexField,
  options?: { readonly tolerance?: number; readonly most?: number; readonly begun?: boolean },
) => ComplexAnswer;

/**
 * Solves, one after another in the same scratch, (K + D) μ = v with D and v complex, by conjugate gradients for complex
 * symmetric matrices (COCG; van der Vorst and Melissen, IEEE Trans. Magn. 26, 1990) with the preconditioner of `solvePair`. D.re is Infinity where a cell is open.
 * mu holds the start and is overwritten with the answer; K μ is left in `K` (its residual is that of this recurrence). `begun`: K holds
 * K μ of the start already, from a call before of other D and v: one transform less.
 */
export function complexSolver({ nx, ny, own, apply, approximateInverse }: Lattice): ComplexSolver {
  const n = nx * ny;
  const fresh = (): Float64Array => new Float64Array(n);
  // Fields by their parts, so that no loop asks an object for its arrays.
  const [dRe, dIm] = [fresh(), fresh()];
  const [rRe, rIm, pRe, pIm, zRe, zIm] = [fresh(), fresh(), fresh(), fresh(), fresh(), fresh()];
  /** Scaled residual, then (K + D) p. */
  const [qRe, qIm] = [fresh(), fresh()];
  const scale = fresh();
  return (D, v, mu, K, { tolerance = 1e-4, most = 200, begun = false } = {}) => {
    const [muRe, muIm, kRe, kIm] = [mu.re, mu.im, K.re, K.im];
    for (const field of [dRe, dIm, rRe, rIm, pRe, pIm, qRe, qIm, scale]) field.fill(0);
    if (!begun) apply(muRe, muIm, kRe, kIm);
    let size = 0;
    let left = 0;
    for (let k = 0; k < n; k++) {
      const a = D.re[k]!;
      if (a === Infinity) {
        muRe[k] = muIm[k] = 0;
        continue;
      }
      const b = D.im[k]!;
      dRe[k] = a;
      dIm[k] = b;
      const s = Math.sqrt(own / (own + Math.sqrt(a * a + b * b)));
      const c = muRe[k]!;
      const d = muIm[k]!;
      const re = v.re[k]! - kRe[k]! - (a * c - b * d);
      const im = v.im[k]! - kIm[k]! - (a * d + b * c);
      scale[k] = s;
      rRe[k] = re;
      rIm[k] = im;
      qRe[k] = re * s;
      qIm[k] = im * s;
      size += v.re[k]! ** 2 + v.im[k]! ** 2;
      left += re * re + im * im;
    }
    const goal = tolerance * tolerance * size;
    let [rhoRe, rhoIm] = [0, 0];
    let iterations = 0;
    for (; left > goal && iterations < most; iterations++) {
      approximateInverse(qRe, qIm, zRe, zIm);
      let nowRe = 0;
      let nowIm = 0;
      for (let k = 0; k < n; k++) {
        const a = qRe[k]!;
        const b = qIm[k]!;
        const c = zRe[k]!;
        const d = zIm[k]!;
        nowRe += a * c - b * d;
        nowIm += a * d + b * c;
      }
      const [bRe, bIm] = iterations === 0 ? [0, 0] : quotient(nowRe, nowIm, rhoRe, rhoIm);
      [rhoRe, rhoIm] = [nowRe, nowIm];
      for (let k = 0; k < n; k++) {
        const s = scale[k]!;
        const c = pRe[k]!;
        const d = pIm[k]!;
        pRe[k] = s * zRe[k]! + bRe * c - bIm * d;
        pIm[k] = s * zIm[k]! + bRe * d + bIm * c;
      }
      apply(pRe, pIm, zRe, zIm);
      let pqRe = 0;
      let pqIm = 0;
      for (let k = 0; k < n; k++) {
        const a = dRe[k]!;
        const b = dIm[k]!;
        const c = pRe[k]!;
        const d = pIm[k]!;
        const re = zRe[k]! + a * c - b * d;
        const im = zIm[k]! + a * d + b * c;
        qRe[k] = re;
        qIm[k] = im;
        // p is zero in an open cell
        pqRe += c * re - d * im;
        pqIm += c * im + d * re;
      }
      const [aRe, aIm] = quotient(rhoRe, rhoIm, pqRe, pqIm);
      left = 0;
      for (let k = 0; k < n; k++) {
        const c = pRe[k]!;
        const d = pIm[k]!;
        const e = qRe[k]!;
        const f = qIm[k]!;
        const s = scale[k]!;
        const g = zRe[k]!;
        const h = zIm[k]!;
        muRe[k] = muRe[k]! + aRe * c - aIm * d;
        muIm[k] = muIm[k]! + aRe * d + aIm * c;
        kRe[k] = kRe[k]! + aRe * g - aIm * h;
        kIm[k] = kIm[k]! + aRe * h + aIm * g;
        const re = s === 0 ? 0 : rRe[k]! - (aRe * e - aIm * f);
        const im = s === 0 ? 0 : rIm[k]! - (aRe * f + aIm * e);
        rRe[k] = re;
        rIm[k] = im;
        qRe[k] = re * s;
        qIm[k] = im * s;
        left += re * re + im * im;
      }
    }
    const rest: [number, number] = [0, 0];
    for (let k = 0; k < n; k++) {
      rest[0] += rRe[k]! * muRe[k]! - rIm[k]! * muIm[k]!;
      rest[1] += rRe[k]! * muIm[k]! + rIm[k]! * muRe[k]!;
    }
    return { iterations, residual: size === 0 ? 0 : Math.sqrt(left / size), rest };
  };
}

const quotient = (a: number, b: number, c: number, d: number): [number, number] => {
  const m = c * c + d * d;
  return [(a * c + b * d) / m, (b * c - a * d) / m];
};
