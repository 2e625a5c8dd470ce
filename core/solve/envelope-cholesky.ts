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
 *  before elimination (the freedom that nothing holds), or -1. Source: the row form of Cholesky's method. */
export function envelopeCholesky({ size, first, start, entries: L }: Envelope, least = 1e-11): number {
  for (let i = 0; i < size; i++) {
    const [row, left] = [start[i]!, first[i]!];
    const before = L[row + i]!;
    let pivot = before;
    for (let j = left; j < i; j++) {
      const other = start[j]!;
      let sum = L[row + j]!;
      for (let k = Math.max(left, first[j]!); k < j; k++) sum -= L[row + k]! * L[other + k]!;
      sum /= L[other + j]!;
      L[row + j] = sum;
      pivot -= sum * sum;
    }
    if (!(pivot > least * before)) return i;
    L[row + i] = Math.sqrt(pivot);
  }
  return -1;
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
