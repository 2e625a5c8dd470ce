import { eliminate } from '../../solve/eliminate.ts';
import type { ComplexField } from './solve-complex.ts';

/** A field μ and what the lattice makes of it, K μ. */
export interface Carried {
  readonly mu: ComplexField;
  readonly K: ComplexField;
}

/**
 * Of all sums of the fields the one that leaves nothing of (K + D) μ = v along any of them (Galerkin), left in `to`, which may be
 * one of them: a start for `complexSolver` that costs no transform, K being carried along. D.re is Infinity where a cell is open;
 * there the fields are zero. Without fields, or where two are the same, `to` stays as it is.
 */
export function bestAmong(fields: readonly Carried[], D: ComplexField, v: ComplexField, to: Carried): void {
  const m = fields.length;
  if (m === 0) return;
  const n = v.re.length;
  // The complex equations as real ones: real parts of the factors, then imaginary.
  const rows = Array.from({ length: 2 * m }, () => new Float64Array(2 * m + 1));
  const put = (i: number, j: number, re: number, im: number): void => {
    rows[i]![j] = rows[m + i]![m + j] = re;
    rows[m + i]![j] = im;
    rows[i]![m + j] = -im;
  };
  const [re, im] = [new Float64Array(n), new Float64Array(n)];
  fields.forEach(({ mu, K }, j) => {
    for (let k = 0; k < n; k++) {
      const open = D.re[k] === Infinity;
      const [a, b, c, d] = [D.re[k]!, D.im[k]!, mu.re[k]!, mu.im[k]!];
      re[k] = open ? 0 : K.re[k]! + a * c - b * d;
      im[k] = open ? 0 : K.im[k]! + a * d + b * c;
    }
    for (let i = 0; i <= j; i++) {
      const [x, y] = product(fields[i]!.mu, re, im);
      put(i, j, x, y);
      put(j, i, x, y);
    }
    [rows[j]![2 * m], rows[m + j]![2 * m]] = product(mu, v.re, v.im);
  });
  const factor = eliminate(rows);
  if (!factor.every(Number.isFinite)) return;
  for (const part of ['mu', 'K'] as const) {
    re.fill(0);
    im.fill(0);
    fields.forEach((field, j) => {
      const [a, b] = [factor[j]!, factor[m + j]!];
      const of = field[part];
      for (let k = 0; k < n; k++) {
        re[k] = re[k]! + a * of.re[k]! - b * of.im[k]!;
        im[k] = im[k]! + a * of.im[k]! + b * of.re[k]!;
      }
    });
    to[part].re.set(re);
    to[part].im.set(im);
  }
}

/** Σ u w, neither conjugated. */
function product(u: ComplexField, wRe: Float64Array, wIm: Float64Array): [re: number, im: number] {
  let [re, im] = [0, 0];
  for (let k = 0; k < wRe.length; k++) {
    re += u.re[k]! * wRe[k]! - u.im[k]! * wIm[k]!;
    im += u.re[k]! * wIm[k]! + u.im[k]! * wRe[k]!;
  }
  return [re, im];
}
