import { fourier, fourierLength, fourierPlan, type FourierPlan } from './fourier.ts';
import type { Kernel } from './doublet-kernel.ts';

/** A uniform lattice of nx × ny square cells with its operator; cell (i, j) stands at j · nx + i. */
export interface Lattice {
  readonly nx: number;
  readonly ny: number;
  readonly h: number;
  /** Velocity of a cell that has unit strength, 1/m. */
  readonly own: number;
  /** w = K μ for two independent fields at once: (reIn, imIn) to (reOut, imOut), each nx · ny. Inputs stay as they are. */
  readonly apply: Pairwise;
  /** z ≈ K⁻¹ r for two fields at once: the inverse of the nearest periodic operator. */
  readonly approximateInverse: Pairwise;
}

export type Pairwise = (reIn: Float64Array, imIn: Float64Array, reOut: Float64Array, imOut: Float64Array) => void;

/**
 * The operator on a uniform lattice is a convolution; the kernel is real and even, so one complex transform serves two real
 * fields, or one complex field, without unpacking. The preconditioner is T. Chan's: of all periodic operators the nearest
 * in the Frobenius norm (T. F. Chan, SIAM J. Sci. Stat. Comput. 9, 1988), positive definite where the operator is.
 */
export function lattice(nx: number, ny: number, h: number, kernel: Kernel): Lattice {
  const [px, py] = [padded(nx), padded(ny)];
  const exact = symbolOf(px, py, (i, j) => (i < nx && j < ny ? kernel(i, j) : 0));
  const [qx, qy] = [fourierLength(nx), fourierLength(ny)];
  const nearest = symbolOf(qx, qy, (i, j) => {
    let sum = 0;
    for (const [a, u] of [
      [i, qx - i],
      [qx - i, i],
    ] as const)
      // prettier-ignore
      for (const [b, v] of [[j, qy - j], [qy - j, j]] as const) // prettier-ignore
        if (u > 0 && v > 0 && u <= qx && v <= qy) sum += u * v * kernel(a, b);
    return sum / (qx * qy);
  });
  const inverse = nearest.map((value) => 1 / value);
  const room = roomFor(px, py, ny);
  return {
    nx,
    ny,
    h,
    own: kernel(0, 0),
    apply: convolution(nx, ny, px, py, exact, room),
    approximateInverse: convolution(nx, ny, qx, qy, inverse, room),
  };
}

/** Room for a convolution without wrapping; a single row or column needs none. */
const padded = (n: number): number => (n === 1 ? 1 : fourierLength(2 * n - 1));

/** Transform of an even real array a(|i|, |j|) with period px × py; only 0 … px/2 by 0 … py/2 is kept, divided by px · py. */
function symbolOf(px: number, py: number, a: (i: number, j: number) => number): Float64Array {
  const [hx, hy] = [Math.floor(px / 2) + 1, Math.floor(py / 2) + 1];
  const rows = transformReal(px, hy, (i, j) => a(Math.min(i, px - i), j));
  const all = transformReal(py, hx, (j, i) => rows[i * hy + Math.min(j, py - j)]!);
  // all: (py/2 + 1) rows of hx entries, real since even.
  return all.map((value) => value / (px * py));
}

/** Real parts of transforms of even real series x(j, b), batch b; the first n/2 + 1 entries of each, entry k of series b at k · batch + b. */
function transformReal(n: number, batch: number, x: (j: number, b: number) => number): Float64Array {
  const size = n * batch;
  const [re, im, spareRe, spareIm] = [0, 1, 2, 3].map(() => new Float64Array(size)) as [A, A, A, A];
  for (let j = 0; j < n; j++) for (let b = 0; b < batch; b++) re[j * batch + b] = x(j, b);
  const swapped = fourier(fourierPlan(n), re, im, spareRe, spareIm, batch);
  return (swapped ? spareRe : re).slice(0, (Math.floor(n / 2) + 1) * batch);
}
type A = Float64Array;

/** Series handled together: their scratch stays in the cache. */
const together = 40;

/** What convolutions that never run at once work in: scratch for `together` series, and one half-transformed field. */
interface Room {
  readonly series: readonly [A, A, A, A];
  /** px columns of ny entries, entry (i, j) at i · ny + j */
  readonly middle: readonly [A, A];
}

const roomFor = (px: number, py: number, ny: number): Room => {
  const fresh = (size: number): A => new Float64Array(size);
  const scratch = Math.max(px, py) * together;
  return {
    series: [fresh(scratch), fresh(scratch), fresh(scratch), fresh(scratch)],
    middle: [fresh(px * ny), fresh(px * ny)],
  };
};

/**
 * Field · kernel by transforms along x of the rows that hold something, then along y of a few columns at a time: there,
 * back, and only the rows that are wanted.
 */
function convolution(
  nx: number,
  ny: number,
  px: number,
  py: number,
  symbol: Float64Array,
  { series: [ar, ai, br, bi], middle: [middleRe, middleIm] }: Room,
): Pairwise {
  const [alongX, alongY] = [fourierPlan(px), fourierPlan(py)];
  const hx = Math.floor(px / 2) + 1;

  return (reIn, imIn, reOut, imOut) => {
    for (let j0 = 0; j0 < ny; j0 += together) {
      const batch = Math.min(together, ny - j0);
      for (let b = 0; b < batch; b++) {
        const row = (j0 + b) * nx;
        for (let i = 0, at = b; i < nx; i++, at += batch) {
          ar[at] = reIn[row + i]!;
          ai[at] = imIn[row + i]!;
        }
      }
      ar.fill(0, nx * batch, px * batch);
      ai.fill(0, nx * batch, px * batch);
      const [re, im] = run(alongX, ar, ai, br, bi, batch);
      for (let i = 0, at = 0; i < px; i++) {
        const to = i * ny + j0;
        for (let b = 0; b < batch; b++, at++) {
          middleRe[to + b] = re[at]!;
          middleIm[to + b] = im[at]!;
        }
      }
    }
    for (let i0 = 0; i0 < px; i0 += together) {
      const batch = Math.min(together, px - i0);
      for (let b = 0; b < batch; b++) {
        const column = (i0 + b) * ny;
        for (let j = 0, at = b; j < ny; j++, at += batch) {
          ar[at] = middleRe[column + j]!;
          ai[at] = middleIm[column + j]!;
        }
      }
      ar.fill(0, ny * batch, py * batch);
      ai.fill(0, ny * batch, py * batch);
      const [re, im] = run(alongY, ar, ai, br, bi, batch);
      for (let j = 0, at = 0; j < py; j++) {
        const row = Math.min(j, py - j) * hx;
        for (let b = 0; b < batch; b++, at++) {
          const i = i0 + b;
          const factor = symbol[row + (i < hx ? i : px - i)]!;
          re[at] = re[at]! * factor;
          im[at] = im[at]! * factor;
        }
      }
      const other = re === ar;
      const [im2, re2] = other ? run(alongY, ai, ar, bi, br, batch) : run(alongY, bi, br, ai, ar, batch);
      for (let b = 0; b < batch; b++) {
        const column = (i0 + b) * ny;
        for (let j = 0, at = b; j < ny; j++, at += batch) {
          middleRe[column + j] = re2[at]!;
          middleIm[column + j] = im2[at]!;
        }
      }
    }
    for (let j0 = 0; j0 < ny; j0 += together) {
      const batch = Math.min(together, ny - j0);
      for (let i = 0, at = 0; i < px; i++) {
        const from = i * ny + j0;
        for (let b = 0; b < batch; b++, at++) {
          ar[at] = middleRe[from + b]!;
          ai[at] = middleIm[from + b]!;
        }
      }
      const [im, re] = run(alongX, ai, ar, bi, br, batch);
      for (let b = 0; b < batch; b++) {
        const row = (j0 + b) * nx;
        for (let i = 0, at = b; i < nx; i++, at += batch) {
          reOut[row + i] = re[at]!;
          imOut[row + i] = im[at]!;
        }
      }
    }
  };
}

/** The transform, and the arrays in which it ended. */
function run(plan: FourierPlan, re: A, im: A, spareRe: A, spareIm: A, batch: number): readonly [A, A] {
  return fourier(plan, re, im, spareRe, spareIm, batch) ? [spareRe, spareIm] : [re, im];
}
