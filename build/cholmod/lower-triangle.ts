import type { StiffnessSystem } from '../../core/solve/sparse/stiffness-system.ts';

/** The lower triangle of K over the free freedoms, by columns with rows ascending. freedoms: which freedom of the system each
 *  column is. */
export interface LowerTriangle {
  readonly freedoms: Int32Array;
  readonly start: Int32Array;
  readonly row: Int32Array;
  readonly entry: Float64Array;
}

export function lowerTriangle({ elements, held }: StiffnessSystem): LowerTriangle {
  const freedoms = Int32Array.from(Array.from(held.keys()).filter((i) => held[i] === 0));
  const place = new Int32Array(held.length).fill(-1);
  freedoms.forEach((freedom, i) => (place[freedom] = i));
  const size = freedoms.length;
  const count = new Int32Array(size + 1);
  const each = (add: (i: number, j: number, value: number) => void): void => {
    for (const { nodes, stiffness } of elements) {
      const of = nodes.flatMap((node) => [0, 1, 2, 3, 4, 5].map((k) => place[6 * node + k]!));
      for (let a = 0; a < of.length; a++)
        for (let b = 0; b < of.length; b++)
          if (of[b]! >= 0 && of[a]! >= of[b]!) add(of[a]!, of[b]!, stiffness[a * of.length + b]!);
    }
  };
  each((_i, j) => count[j + 1]!++);
  for (let j = 0; j < size; j++) count[j + 1]! += count[j]!;
  const rows = new Int32Array(count[size]!);
  const entries = new Float64Array(count[size]!);
  const next = count.slice(0, size);
  each((i, j, value) => {
    rows[next[j]!] = i;
    entries[next[j]!++] = value;
  });
  // Sums what stands at one place, column by column.
  const start = new Int32Array(size + 1);
  const sum = new Float64Array(size);
  const seen = new Int32Array(size).fill(-1);
  let end = 0;
  for (let j = 0; j < size; j++) {
    const from = end;
    for (let p = count[j]!; p < count[j + 1]!; p++) {
      const i = rows[p]!;
      if (seen[i] !== j) {
        seen[i] = j;
        sum[i] = 0;
        rows[end++] = i;
      }
      sum[i]! += entries[p]!;
    }
    // What is nought for certain is no entry: CHOLMOD then sees, as our ordering does, which freedoms never meet.
    let kept = from;
    for (let p = from; p < end; p++) if (sum[rows[p]!] !== 0 || rows[p] === j) rows[kept++] = rows[p]!;
    end = kept;
    rows.subarray(from, end).sort();
    for (let p = from; p < end; p++) entries[p] = sum[rows[p]!]!;
    start[j + 1] = end;
  }
  return { freedoms, start, row: rows.slice(0, end), entry: entries.slice(0, end) };
}
