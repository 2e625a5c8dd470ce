/** A symmetric matrix kept by rows, each from its first non-zero to the diagonal: entry (i, j), first[i] ≤ j ≤ i,
 *  stands at start[i] + j. A row that begins at 0 is full, so a dense matrix is the same thing with first = 0. */
export interface Envelope {
  readonly size: number;
  readonly first: Int32Array;
  readonly start: Int32Array;
  readonly entries: Float64Array;
}

export function envelope(first: Int32Array): Envelope {
  const start = new Int32Array(first.length);
  let length = 0;
  first.forEach((column, i) => {
    start[i] = length - column;
    length += i - column + 1;
  });
  return { size: first.length, first, start, entries: new Float64Array(length) };
}

/** A ← L with A = L Lᵀ, in place. Gives the row of the first pivot that is not above `least` times its own diagonal
 *  before elimination (the freedom that nothing holds), or -1. Four rows at a time share each row above them; every
 *  entry still sums its products in their order, so the result is that of the plain row form to the last bit.
 *  Source: the row form of Cholesky's method. */
export function envelopeCholesky(A: Envelope, least = 1e-11): number {
  const { size } = A;
  let i = 0;
  for (; i + 4 <= size; i += 4) {
    fourRows(A, i);
    for (let row = i; row < i + 4; row++) {
      eliminate(A, row, i);
      if (!pivoted(A, row, least)) return row;
    }
  }
  for (; i < size; i++) {
    eliminate(A, i, 0);
    if (!pivoted(A, i, least)) return i;
  }
  return -1;
}

/** Rows i to i + 3 against the finished rows before i. */
function fourRows(A: Envelope, i: number): void {
  const { first, start, entries: L } = A;
  const [a, b, c, d] = [start[i]!, start[i + 1]!, start[i + 2]!, start[i + 3]!];
  const left = Math.max(first[i]!, first[i + 1]!, first[i + 2]!, first[i + 3]!);
  // Where not all four rows have begun, each is taken by itself.
  for (let row = i; row < i + 4; row++) eliminate(A, row, 0, Math.min(left, i));
  for (let j = left; j < i; j++) {
    const other = start[j]!;
    const from = Math.max(left, first[j]!);
    let [p, q, r, s] = [L[a + j]!, L[b + j]!, L[c + j]!, L[d + j]!];
    p = before(L, p, a, other, Math.max(first[i]!, first[j]!), from);
    q = before(L, q, b, other, Math.max(first[i + 1]!, first[j]!), from);
    r = before(L, r, c, other, Math.max(first[i + 2]!, first[j]!), from);
    s = before(L, s, d, other, Math.max(first[i + 3]!, first[j]!), from);
    for (let k = from; k < j; k++) {
      const l = L[other + k]!;
      p -= L[a + k]! * l;
      q -= L[b + k]! * l;
      r -= L[c + k]! * l;
      s -= L[d + k]! * l;
    }
    const pivot = L[other + j]!;
    L[a + j] = p / pivot;
    L[b + j] = q / pivot;
    L[c + j] = r / pivot;
    L[d + j] = s / pivot;
  }
}

/** sum - Σ L_ik L_jk over k from `from` to `to`. */
function before(L: Float64Array, sum: number, row: number, other: number, from: number, to: number): number {
  for (let k = from; k < to; k++) sum -= L[row + k]! * L[other + k]!;
  return sum;
}

/** Entries of row i in columns `from` to `to`. */
function eliminate({ first, start, entries: L }: Envelope, i: number, from: number, to = i): void {
  const [row, left] = [start[i]!, first[i]!];
  for (let j = Math.max(left, from); j < to; j++) {
    const other = start[j]!;
    L[row + j] = before(L, L[row + j]!, row, other, Math.max(left, first[j]!), j) / L[other + j]!;
  }
}

/** Turns the diagonal of row i into its pivot's root; false where it is not above `least` times what it was. */
function pivoted({ first, start, entries: L }: Envelope, i: number, least: number): boolean {
  const row = start[i]!;
  const diagonal = L[row + i]!;
  let pivot = diagonal;
  for (let j = first[i]!; j < i; j++) pivot -= L[row + j]! * L[row + j]!;
  if (!(pivot > least * diagonal)) return false;
  L[row + i] = Math.sqrt(pivot);
  return true;
}

/** x ← L⁻¹ x */
export function solveLower({ size, first, start, entries: L }: Envelope, x: Float64Array): Float64Array {
  for (let i = 0; i < size; i++) {
    const row = start[i]!;
    let sum = x[i]!;
    for (let k = first[i]!; k < i; k++) sum -= L[row + k]! * x[k]!;
    x[i] = sum / L[row + i]!;
  }
  return x;
}

/** x ← L⁻ᵀ x */
export function solveUpper({ size, first, start, entries: L }: Envelope, x: Float64Array): Float64Array {
  for (let i = size - 1; i >= 0; i--) {
    const row = start[i]!;
    const value = (x[i]! /= L[row + i]!);
    for (let k = first[i]!; k < i; k++) x[k]! -= L[row + k]! * value;
  }
  return x;
}
