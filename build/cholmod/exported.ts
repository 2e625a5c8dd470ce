import { gunzipSync, gzipSync } from 'node:zlib';
import type { StiffnessSystem } from '../../core/solve/sparse/stiffness-system.ts';
import type { ElementStiffness } from '../../core/solve/structure/element-stiffness.ts';
import type { LowerTriangle } from './lower-triangle.ts';

/** A symmetric matrix as Matrix Market text (coordinate real symmetric; the format is NIST's), compressed. Entries keep all
 *  their digits. A comment line gives each row's freedom in the system it came from. */
export function matrixMarket({ freedoms, start, row, entry }: LowerTriangle): Buffer {
  const lines = ['%%MatrixMarket matrix coordinate real symmetric', `% freedoms ${freedoms.join(' ')}`];
  lines.push(`${freedoms.length} ${freedoms.length} ${entry.length}`);
  for (let j = 0; j < freedoms.length; j++)
    for (let p = start[j]!; p < start[j + 1]!; p++) lines.push(`${row[p]! + 1} ${j + 1} ${entry[p]!}`);
  return gzipSync(`${lines.join('\n')}\n`, { level: 9 });
}

/** The matrix as a system again: each block of two nodes becomes an element, so that their sum is the matrix entry by entry.
 *  Coordinates are unknown and zero: the order of elimination comes from the graph alone. */
export function systemOf(compressed: Uint8Array): StiffnessSystem {
  const lines = gunzipSync(compressed).toString().trim().split('\n');
  const freedoms = lines[1]!.replace('% freedoms ', '').split(' ').map(Number);
  const nodes = Math.floor(freedoms.at(-1)! / 6) + 1;
  const held = new Uint8Array(6 * nodes).fill(1);
  for (const freedom of freedoms) held[freedom] = 0;
  const blocks = new Map<number, ElementStiffness>();
  for (const line of lines.slice(3)) {
    const [row, column, entry] = line.split(' ').map(Number);
    const [i, j] = [freedoms[row! - 1]!, freedoms[column! - 1]!];
    const [a, b] = [Math.floor(i / 6), Math.floor(j / 6)];
    const key = a * nodes + b;
    if (!blocks.has(key))
      blocks.set(key, { nodes: a === b ? [a] : [a, b], stiffness: new Float64Array(a === b ? 36 : 144) });
    const { stiffness } = blocks.get(key)!;
    const [r, c, size] = a === b ? [i % 6, j % 6, 6] : [i % 6, 6 + (j % 6), 12];
    stiffness[r * size + c] = stiffness[c * size + r] = entry!;
  }
  return { coordinates: new Float64Array(3 * nodes), held, elements: [...blocks.values()] };
}
