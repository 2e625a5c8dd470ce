// AssemblyScript: compiled by build/generate/fronts.ts into core/solve/sparse/fronts-wasm.ts.
// The dense kernels of core/solve/sparse/front-kernels.ts with two doubles at a time. Each entry subtracts its products one
// by one in ascending order of the pivot, a multiplication and then a subtraction, as plain-kernels.ts does: the same bits.
// Addresses are in bytes. No fused or relaxed instruction may be used here.

/** As blockWidth in front-kernels.ts. */
const blockWidth: usize = 72;

function round6(n: usize): usize {
  return 6 * ((n + 5) / 6);
}

function at(start: usize, i: usize): f64 {
  return load<f64>(start + (i << 3));
}

function put(start: usize, i: usize, value: f64): void {
  store<f64>(start + (i << 3), value);
}

export function clear(w: usize, b: usize, panel: usize, update: usize): void {
  const height = round6(b);
  const zero = f64x2.splat(0);
  const end = panel + (((round6(w) + height) * w) << 3);
  for (let p = panel; p < end; p += 16) v128.store(p, zero);
  for (let j: usize = 0; j < b; j++) {
    const last = update + (((j + 1) * height) << 3);
    // Columns are of even length: two by two from the row on or above the diagonal.
    for (let p = update + ((j * height + (j & ~1)) << 3); p < last; p += 16) v128.store(p, zero);
  }
}

export function addUpdate(
  child: usize,
  b: usize,
  runs: usize,
  runCount: usize,
  w: usize,
  further: usize,
  panel: usize,
  update: usize,
): void {
  const own = round6(w);
  const height = round6(b);
  const ldU = round6(further);
  const ld = own + ldU;
  let j: usize = 0;
  for (let r: usize = 0; r < runCount; r++) {
    const start: usize = load<u32>(runs + (r << 3));
    const length: usize = load<u32>(runs + (r << 3) + 4);
    for (let c: usize = 0; c < length; c++, j++) {
      const column = start + c;
      const to = column < w ? panel + ((column * ld) << 3) : update + (((column - own) * ldU - own) << 3);
      let from = child + ((j * height + j) << 3);
      let row = column;
      for (let s = r; s < runCount; s++) {
        const first: usize = load<u32>(runs + (s << 3));
        if (s > r) row = first;
        const end = first + <usize>load<u32>(runs + (s << 3) + 4);
        let p = to + (row << 3);
        const last = to + (end << 3);
        for (; p + 16 <= last; p += 16, from += 16) v128.store(p, f64x2.add(v128.load(p), v128.load(from)));
        if (p < last) {
          store<f64>(p, load<f64>(p) + load<f64>(from));
          from += 8;
        }
      }
    }
  }
}

export function factor(
  w: usize,
  b: usize,
  panel: usize,
  update: usize,
  diagonal: usize,
  least: f64,
  scratch: usize,
): i32 {
  const own = round6(w);
  const ldU = round6(b);
  const ld = own + ldU;
  const A = scratch;
  const B = scratch + ((blockWidth * ld) << 3);
  for (let k0: usize = 0; k0 < w; k0 += blockWidth) {
    const k1 = min(k0 + blockWidth, w);
    for (let j = k0; j < k1; j += 4) {
      const width = min<usize>(4, k1 - j);
      if (j > k0) {
        packColumns(panel, ld, j, width, k0, j, B);
        tiles(A, B, j - k0, k0, 6 * (j / 6), ld, panel + ((j * ld) << 3), ld);
      }
      const failed = finish(panel, ld, j, width, diagonal, least);
      if (failed >= 0) return failed;
      packRows(panel, ld, j, width, k0, A);
    }
    for (let j = k1; j < w; j += 4) {
      packColumns(panel, ld, j, min<usize>(4, w - j), k0, k1, B);
      tiles(A, B, k1 - k0, k0, 6 * (j / 6), ld, panel + ((j * ld) << 3), ld);
    }
    for (let j: usize = 0; j < b; j += 4) {
      packColumns(panel, ld, own + j, min<usize>(4, b - j), k0, k1, B);
      tiles(A, B, k1 - k0, k0, own + 6 * (j / 6), ld, update + ((j * ldU - own) << 3), ldU);
    }
  }
  return -1;
}

/** B ← rows j … j + 3 of L in columns k0 … k1 - 1, four by four; zero beyond `width` rows. */
function packColumns(panel: usize, ld: usize, j: usize, width: usize, k0: usize, k1: usize, B: usize): void {
  let from = panel + ((k0 * ld + j) << 3);
  const end = B + ((k1 - k0) << 5);
  const step = ld << 3;
  if (width === 4) {
    for (let to = B; to < end; to += 32, from += step) {
      v128.store(to, v128.load(from));
      v128.store(to, v128.load(from, 16), 16);
    }
    return;
  }
  for (let to = B; to < end; to += 32, from += step)
    for (let c: usize = 0; c < 4; c++) put(to, c, c < width ? at(from, c) : 0);
}

/** A ← columns j … of L from row `top`, by sixes of rows; what stands above the diagonal as zero. */
function packRows(panel: usize, ld: usize, j: usize, width: usize, top: usize, A: usize): void {
  for (let c: usize = 0; c < width; c++) {
    const column = panel + (((j + c) * ld) << 3);
    let to = A + ((6 * (j - top + c)) << 3);
    let row = top;
    for (; row <= j + c; row += 6, to += (6 * blockWidth) << 3)
      for (let i: usize = 0; i < 6; i++) put(to, i, row + i < j + c ? 0 : at(column, row + i));
    let from = column + (row << 3);
    const end = column + (ld << 3);
    for (; from < end; from += 48, to += (6 * blockWidth) << 3) {
      v128.store(to, v128.load(from));
      v128.store(to, v128.load(from, 16), 16);
      v128.store(to, v128.load(from, 32), 32);
    }
  }
}

/** C ← C - A Bᵀ for four columns from C, rows `from` to ld, in tiles of 6 × 4. */
function tiles(A: usize, B: usize, depth: usize, top: usize, from: usize, ld: usize, C: usize, ldC: usize): void {
  const step = ldC << 3;
  const endB = B + (depth << 5);
  let block = A + (((from - top) * blockWidth) << 3);
  let p = C + (from << 3);
  const last = C + (ld << 3);
  for (; p < last; p += 48, block += (6 * blockWidth) << 3) {
    const p1 = p + step;
    const p2 = p1 + step;
    const p3 = p2 + step;
    let c00 = v128.load(p);
    let c10 = v128.load(p, 16);
    let c20 = v128.load(p, 32);
    let c01 = v128.load(p1);
    let c11 = v128.load(p1, 16);
    let c21 = v128.load(p1, 32);
    let c02 = v128.load(p2);
    let c12 = v128.load(p2, 16);
    let c22 = v128.load(p2, 32);
    let c03 = v128.load(p3);
    let c13 = v128.load(p3, 16);
    let c23 = v128.load(p3, 32);
    let a = block;
    for (let q = B; q < endB; q += 32, a += 48) {
      const a0 = v128.load(a);
      const a1 = v128.load(a, 16);
      const a2 = v128.load(a, 32);
      let l = v128.load64_splat(q);
      c00 = f64x2.sub(c00, f64x2.mul(a0, l));
      c10 = f64x2.sub(c10, f64x2.mul(a1, l));
      c20 = f64x2.sub(c20, f64x2.mul(a2, l));
      l = v128.load64_splat(q, 8);
      c01 = f64x2.sub(c01, f64x2.mul(a0, l));
      c11 = f64x2.sub(c11, f64x2.mul(a1, l));
      c21 = f64x2.sub(c21, f64x2.mul(a2, l));
      l = v128.load64_splat(q, 16);
      c02 = f64x2.sub(c02, f64x2.mul(a0, l));
      c12 = f64x2.sub(c12, f64x2.mul(a1, l));
      c22 = f64x2.sub(c22, f64x2.mul(a2, l));
      l = v128.load64_splat(q, 24);
      c03 = f64x2.sub(c03, f64x2.mul(a0, l));
      c13 = f64x2.sub(c13, f64x2.mul(a1, l));
      c23 = f64x2.sub(c23, f64x2.mul(a2, l));
    }
    v128.store(p, c00);
    v128.store(p, c10, 16);
    v128.store(p, c20, 32);
    v128.store(p1, c01);
    v128.store(p1, c11, 16);
    v128.store(p1, c21, 32);
    v128.store(p2, c02);
    v128.store(p2, c12, 16);
    v128.store(p2, c22, 32);
    v128.store(p3, c03);
    v128.store(p3, c13, 16);
    v128.store(p3, c23, 32);
  }
}

/** Up to four columns that have had all earlier pivots: their pivots, and each other's. */
function finish(panel: usize, ld: usize, j: usize, width: usize, diagonal: usize, least: f64): i32 {
  const step = ld << 3;
  const first = panel + ((j * ld) << 3);
  const corner = j + width;
  // The triangle of the columns themselves.
  for (let k = j; k < corner; k++) {
    const column = panel + ((k * ld) << 3);
    const pivot = at(column, k);
    if (!(pivot > least * at(diagonal, k))) return <i32>k;
    const root = Math.sqrt(pivot);
    put(column, k, root);
    for (let i = k + 1; i < corner; i++) put(column, i, at(column, i) / root);
    for (let c = k + 1; c < corner; c++) {
      const l = at(column, c);
      const other = panel + ((c * ld) << 3);
      for (let i = c; i < corner; i++) put(other, i, at(other, i) - at(column, i) * l);
    }
  }
  // The rows below it, two by two.
  let row = corner;
  if (row & 1) {
    for (let k = j; k < corner; k++) {
      const column = panel + ((k * ld) << 3);
      let value = at(column, row);
      for (let c = j; c < k; c++) {
        const before = panel + ((c * ld) << 3);
        value -= at(before, row) * at(before, k);
      }
      put(column, row, value / at(column, k));
    }
    row++;
  }
  const end = first + (ld << 3);
  if (width === 4) {
    const second = first + step;
    const third = second + step;
    const fourth = third + step;
    const d0 = v128.load64_splat(first + (j << 3));
    const d1 = v128.load64_splat(second + (j << 3), 8);
    const d2 = v128.load64_splat(third + (j << 3), 16);
    const d3 = v128.load64_splat(fourth + (j << 3), 24);
    const l10 = v128.load64_splat(first + (j << 3), 8);
    const l20 = v128.load64_splat(first + (j << 3), 16);
    const l30 = v128.load64_splat(first + (j << 3), 24);
    const l21 = v128.load64_splat(second + (j << 3), 16);
    const l31 = v128.load64_splat(second + (j << 3), 24);
    const l32 = v128.load64_splat(third + (j << 3), 24);
    for (let p = first + (row << 3); p < end; p += 16) {
      const p1 = p + step;
      const p2 = p1 + step;
      const p3 = p2 + step;
      const v0 = f64x2.div(v128.load(p), d0);
      const v1 = f64x2.div(f64x2.sub(v128.load(p1), f64x2.mul(v0, l10)), d1);
      const v2 = f64x2.div(f64x2.sub(f64x2.sub(v128.load(p2), f64x2.mul(v0, l20)), f64x2.mul(v1, l21)), d2);
      const v3 = f64x2.div(
        f64x2.sub(
          f64x2.sub(f64x2.sub(v128.load(p3), f64x2.mul(v0, l30)), f64x2.mul(v1, l31)),
          f64x2.mul(v2, l32),
        ),
        d3,
      );
      v128.store(p, v0);
      v128.store(p1, v1);
      v128.store(p2, v2);
      v128.store(p3, v3);
    }
    return -1;
  }
  for (let k = j; k < corner; k++) {
    const column = panel + ((k * ld) << 3);
    const root = v128.load64_splat(column + (k << 3));
    for (let p = row << 3; p < step; p += 16) {
      let value = v128.load(column + p);
      for (let c = j; c < k; c++) {
        const before = panel + ((c * ld) << 3);
        value = f64x2.sub(value, f64x2.mul(v128.load(before + p), v128.load64_splat(before + (k << 3))));
      }
      v128.store(column + p, f64x2.div(value, root));
    }
  }
  return -1;
}

/** x ← L⁻¹ x of one front; x: where its own freedoms stand; vector: where the whole stands. */
export function lower(w: usize, b: usize, panel: usize, vector: usize, x: usize, rows: usize, t: usize): void {
  const below = round6(w);
  const ld = below + round6(b);
  memory.copy(t, x, w << 3);
  memory.fill(t + (w << 3), 0, (ld - w) << 3);
  const step = ld << 3;
  for (let j: usize = 0; j < w; j += 4) {
    const end = min(j + 4, w);
    for (let k = j; k < end; k++) {
      const column = panel + k * step;
      const value = at(t, k) / at(column, k);
      put(t, k, value);
      for (let i = k + 1; i < end; i++) put(t, i, at(t, i) - at(column, i) * value);
    }
    let row = end;
    if (row & 1) {
      let value = at(t, row);
      for (let k = j; k < end; k++) value -= at(panel + k * step, row) * at(t, k);
      put(t, row, value);
      row++;
    }
    let p = panel + j * step + (row << 3);
    const last = t + (ld << 3);
    if (end - j === 4) {
      const y0 = v128.load64_splat(t + (j << 3));
      const y1 = v128.load64_splat(t + (j << 3), 8);
      const y2 = v128.load64_splat(t + (j << 3), 16);
      const y3 = v128.load64_splat(t + (j << 3), 24);
      for (let q = t + (row << 3); q < last; q += 16, p += 16) {
        const p2 = p + 2 * step;
        let value = f64x2.sub(v128.load(q), f64x2.mul(v128.load(p), y0));
        value = f64x2.sub(value, f64x2.mul(v128.load(p + step), y1));
        value = f64x2.sub(value, f64x2.mul(v128.load(p2), y2));
        v128.store(q, f64x2.sub(value, f64x2.mul(v128.load(p2 + step), y3)));
      }
    } else
      for (let q = t + (row << 3); q < last; q += 16, p += 16) {
        let value = v128.load(q);
        for (let k = j; k < end; k++)
          value = f64x2.sub(value, f64x2.mul(v128.load(p + (k - j) * step), v128.load64_splat(t + (k << 3))));
        v128.store(q, value);
      }
  }
  memory.copy(x, t, w << 3);
  for (let i: usize = 0; i < b; i++) {
    const p = vector + (<usize>load<u32>(rows + (i << 2)) << 3);
    store<f64>(p, load<f64>(p) + at(t, below + i));
  }
}

/** x ← L⁻ᵀ x of one front. */
export function upper(w: usize, b: usize, panel: usize, vector: usize, x: usize, rows: usize, t: usize): void {
  const below = round6(w);
  const ld = below + round6(b);
  memory.copy(t, x, w << 3);
  memory.fill(t + (w << 3), 0, (ld - w) << 3);
  for (let i: usize = 0; i < b; i++) put(t, below + i, load<f64>(vector + (<usize>load<u32>(rows + (i << 2)) << 3)));
  const step = ld << 3;
  for (let group: usize = (w + 3) / 4; group > 0; group--) {
    const j: usize = (group - 1) << 2;
    const end = min(j + 4, w);
    const from = end < w ? end : below;
    let s0 = f64x2.splat(0);
    let s1 = f64x2.splat(0);
    let s2 = f64x2.splat(0);
    let s3 = f64x2.splat(0);
    const last = t + (ld << 3);
    const first = panel + j * step;
    // Of columns beyond the last, what is summed is not used.
    const o1: usize = end - j > 1 ? step : 0;
    const o2: usize = end - j > 2 ? 2 * step : 0;
    const o3: usize = end - j > 3 ? 3 * step : 0;
    let p = first + (from << 3);
    for (let q = t + (from << 3); q < last; q += 16, p += 16) {
      const y = v128.load(q);
      s0 = f64x2.add(s0, f64x2.mul(v128.load(p), y));
      s1 = f64x2.add(s1, f64x2.mul(v128.load(p + o1), y));
      s2 = f64x2.add(s2, f64x2.mul(v128.load(p + o2), y));
      s3 = f64x2.add(s3, f64x2.mul(v128.load(p + o3), y));
    }
    for (let k = end; k > j; k--) {
      const c = k - 1;
      const column = panel + c * step;
      const s = c - j === 0 ? s0 : c - j === 1 ? s1 : c - j === 2 ? s2 : s3;
      let value = at(t, c) - (f64x2.extract_lane(s, 0) + f64x2.extract_lane(s, 1));
      for (let i = k; i < end; i++) value -= at(column, i) * at(t, i);
      put(t, c, value / at(column, c));
    }
  }
  memory.copy(x, t, w << 3);
}
