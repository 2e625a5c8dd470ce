import { blockWidth, round6, type Front, type FrontKernels } from './front-kernels.ts';

/** The dense kernels in plain TypeScript: what runs where WebAssembly may not, with the same bits. */
export function plainKernels(count: number): FrontKernels {
  const doubles = new Float64Array(count);
  const integers = new Int32Array(doubles.buffer);
  return {
    doubles,
    integers,
    clear: (front) => clear(doubles, front),
    addUpdate: (child, b, runs, runCount, parent) => addUpdate(doubles, integers, child, b, runs, runCount, parent),
    factor: (front, diagonal, least, scratch) => factor(doubles, front, diagonal, least, scratch),
    lower: (front, x, own, rows, t) => lower(doubles, integers, front, x, own, rows, t),
    upper: (front, x, own, rows, t) => upper(doubles, integers, front, x, own, rows, t),
  };
}

function clear(M: Float64Array, { w, b, panel, update }: Front): void {
  const height = round6(b);
  M.fill(0, panel, panel + (round6(w) + height) * w);
  for (let j = 0; j < b; j++) M.fill(0, update + j * height + j, update + (j + 1) * height);
}

function addUpdate(
  M: Float64Array,
  I: Int32Array,
  child: number,
  b: number,
  runs: number,
  runCount: number,
  { w, b: further, panel, update }: Front,
): void {
  const own = round6(w);
  const height = round6(b);
  const [ld, ldU] = [own + round6(further), round6(further)];
  let j = 0;
  for (let r = 0; r < runCount; r++)
    for (let c = 0; c < I[runs + 2 * r + 1]!; c++, j++) {
      const column = I[runs + 2 * r]! + c;
      // Row i of the parent stands at to + i.
      const to = column < w ? panel + column * ld : update + (column - own) * ldU - own;
      let from = child + j * height + j;
      let row = column;
      for (let s = r; s < runCount; s++) {
        if (s > r) row = I[runs + 2 * s]!;
        const end = I[runs + 2 * s]! + I[runs + 2 * s + 1]!;
        for (; row < end; row++) M[to + row]! += M[from++]!;
      }
    }
}

function factor(
  M: Float64Array,
  { w, b, panel, update }: Front,
  diagonal: number,
  least: number,
  scratch: number,
): number {
  const own = round6(w);
  const ldU = round6(b);
  const ld = own + ldU;
  const A = scratch;
  const B = scratch + blockWidth * ld;
  for (let k0 = 0; k0 < w; k0 += blockWidth) {
    const k1 = Math.min(k0 + blockWidth, w);
    const top = 6 * Math.floor(k0 / 6);
    // The block's own columns, four at a time; finished ones are kept by sixes of rows in A.
    for (let j = k0; j < k1; j += 4) {
      const width = Math.min(4, k1 - j);
      if (j > k0) {
        packColumns(M, panel, ld, j, width, k0, j, B);
        tiles(M, A, B, j - k0, top, 6 * Math.floor(j / 6), ld, panel + j * ld, ld);
      }
      const failed = finish(M, panel, ld, j, width, diagonal, least);
      if (failed >= 0) return failed;
      packRows(M, panel, ld, j, width, k0, top, A);
    }
    // What is left of the panel, then the update.
    for (let j = k1; j < w; j += 4) {
      packColumns(M, panel, ld, j, Math.min(4, w - j), k0, k1, B);
      tiles(M, A, B, k1 - k0, top, 6 * Math.floor(j / 6), ld, panel + j * ld, ld);
    }
    for (let j = 0; j < b; j += 4) {
      packColumns(M, panel, ld, own + j, Math.min(4, b - j), k0, k1, B);
      tiles(M, A, B, k1 - k0, top, own + 6 * Math.floor(j / 6), ld, update + j * ldU - own, ldU);
    }
  }
  return -1;
}

/** B ← rows j … j + 3 of L in columns k0 … k1 - 1, four by four; zero beyond `width` rows. */
function packColumns(
  M: Float64Array,
  panel: number,
  ld: number,
  j: number,
  width: number,
  k0: number,
  k1: number,
  B: number,
): void {
  for (let k = k0; k < k1; k++)
    for (let c = 0; c < 4; c++) M[B + 4 * (k - k0) + c] = c < width ? M[panel + k * ld + j + c]! : 0;
}

/** A ← columns j … of L below row `top`, by sixes of rows; what stands above the diagonal as zero. */
function packRows(
  M: Float64Array,
  panel: number,
  ld: number,
  j: number,
  width: number,
  k0: number,
  top: number,
  A: number,
): void {
  for (let row = top; row < ld; row += 6)
    for (let c = 0; c < width; c++) {
      const to = A + (row - top) * blockWidth + 6 * (j - k0 + c);
      const from = panel + (j + c) * ld + row;
      for (let i = 0; i < 6; i++) M[to + i] = row + i < j + c ? 0 : M[from + i]!;
    }
}

/** C ← C - A B^T for four columns from C, rows `from` to ld. Two tiles of 3 × 4 make one of 6 × 4: what plain
 *  JavaScript keeps in registers. */
function tiles(
  M: Float64Array,
  A: number,
  B: number,
  depth: number,
  top: number,
  from: number,
  ld: number,
  C: number,
  ldC: number,
): void {
  const [C1, C2, C3] = [C + ldC, C + 2 * ldC, C + 3 * ldC];
  for (let row = from; row < ld; row += 3) {
    const six = row - ((row - top) % 6);
    let a = A + (six - top) * blockWidth + (row - six);
    let b = B;
    let [c00, c10, c20] = [M[C + row]!, M[C + row + 1]!, M[C + row + 2]!];
    let [c01, c11, c21] = [M[C1 + row]!, M[C1 + row + 1]!, M[C1 + row + 2]!];
    let [c02, c12, c22] = [M[C2 + row]!, M[C2 + row + 1]!, M[C2 + row + 2]!];
    let [c03, c13, c23] = [M[C3 + row]!, M[C3 + row + 1]!, M[C3 + row + 2]!];
    for (let k = 0; k < depth; k++, a += 6, b += 4) {
      const a0 = M[a]!;
      const a1 = M[a + 1]!;
      const a2 = M[a + 2]!;
      const b0 = M[b]!;
      c00 -= a0 * b0;
      c10 -= a1 * b0;
      c20 -= a2 * b0;
      const b1 = M[b + 1]!;
      c01 -= a0 * b1;
      c11 -= a1 * b1;
      c21 -= a2 * b1;
      const b2 = M[b + 2]!;
      c02 -= a0 * b2;
      c12 -= a1 * b2;
      c22 -= a2 * b2;
      const b3 = M[b + 3]!;
      c03 -= a0 * b3;
      c13 -= a1 * b3;
      c23 -= a2 * b3;
    }
    M[C + row] = c00;
    M[C + row + 1] = c10;
    M[C + row + 2] = c20;
    M[C1 + row] = c01;
    M[C1 + row + 1] = c11;
    M[C1 + row + 2] = c21;
    M[C2 + row] = c02;
    M[C2 + row + 1] = c12;
    M[C2 + row + 2] = c22;
    M[C3 + row] = c03;
    M[C3 + row + 1] = c13;
    M[C3 + row + 2] = c23;
  }
}

/** Up to four columns that have had all earlier pivots: their pivots, and each other's. */
function finish(
  M: Float64Array,
  panel: number,
  ld: number,
  j: number,
  width: number,
  diagonal: number,
  least: number,
): number {
  for (let k = j; k < j + width; k++) {
    const column = panel + k * ld;
    const pivot = M[column + k]!;
    if (!(pivot > least * M[diagonal + k]!)) return k;
    const root = Math.sqrt(pivot);
    M[column + k] = root;
    for (let i = k + 1; i < ld; i++) M[column + i]! /= root;
    for (let c = k + 1; c < j + width; c++) {
      const l = M[column + c]!;
      const other = panel + c * ld;
      for (let i = c; i < ld; i++) M[other + i]! -= M[column + i]! * l;
    }
  }
  return -1;
}

function lower(
  M: Float64Array,
  I: Int32Array,
  { w, b, panel }: Front,
  x: number,
  own: number,
  rows: number,
  t: number,
): void {
  const below = round6(w);
  const ld = below + round6(b);
  for (let i = 0; i < ld; i++) M[t + i] = i < w ? M[x + own + i]! : 0;
  for (let k = 0; k < w; k++) {
    const column = panel + k * ld;
    const value = (M[t + k]! /= M[column + k]!);
    for (let i = k + 1; i < ld; i++) M[t + i]! -= M[column + i]! * value;
  }
  for (let i = 0; i < w; i++) M[x + own + i] = M[t + i]!;
  for (let i = 0; i < b; i++) M[x + I[rows + i]!]! += M[t + below + i]!;
}

/** The sums run over even and odd rows apart, below the four columns at hand, as two lanes would. */
function upper(
  M: Float64Array,
  I: Int32Array,
  { w, b, panel }: Front,
  x: number,
  own: number,
  rows: number,
  t: number,
): void {
  const below = round6(w);
  const ld = below + round6(b);
  for (let i = 0; i < ld; i++) M[t + i] = i < w ? M[x + own + i]! : 0;
  for (let i = 0; i < b; i++) M[t + below + i] = M[x + I[rows + i]!]!;
  for (let first = 4 * Math.floor((w - 1) / 4); first >= 0; first -= 4) {
    const end = Math.min(first + 4, w);
    const from = end < w ? end : below;
    for (let k = end - 1; k >= first; k--) {
      const column = panel + k * ld;
      let even = 0;
      let odd = 0;
      for (let i = from; i < ld; i += 2) {
        even += M[column + i]! * M[t + i]!;
        odd += M[column + i + 1]! * M[t + i + 1]!;
      }
      let value = M[t + k]! - (even + odd);
      for (let i = k + 1; i < end; i++) value -= M[column + i]! * M[t + i]!;
      M[t + k] = value / M[column + k]!;
    }
  }
  for (let i = 0; i < w; i++) M[x + own + i] = M[t + i]!;
}
