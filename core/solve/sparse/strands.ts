import type { ElementStiffness } from '../structure/element-stiffness.ts';

/** An element's freedoms in strands that do not meet in its matrix: strand[a] of freedom a (6 a node), from 0 in order of
 *  their first freedom, or -1 where nothing of the element acts. */
export interface Strands {
  readonly strand: Int8Array;
  readonly count: number;
  /** The freedoms of each strand, ascending. */
  readonly members: readonly Int32Array[];
}

/** The strands of an element, by the entries of its pattern (or of its matrix, if it states no pattern) that are not zero.
 *  Each matrix is looked at once as long as it lives. */
export function strandsOf({
  stiffness,
  pattern = stiffness,
}: Pick<ElementStiffness, 'stiffness' | 'pattern'>): Strands {
  const found = known.get(pattern);
  if (found) return found;
  const size = Math.sqrt(pattern.length);
  const made = theOne(size > 127 ? wholeOf(size) : looked(pattern, size));
  known.set(pattern, made);
  return made;
}

/** Equal strands are one object. There are few: a kind of element has its own. */
function theOne(strand: Int8Array): Strands {
  const key = strand.join(' ');
  const found = kinds.get(key);
  if (found) return found;
  const count = strand.reduce((most, of) => Math.max(most, of + 1), 0);
  const all = Int32Array.from(strand.keys());
  const made = { strand, count, members: Array.from({ length: count }, (_, s) => all.filter((a) => strand[a] === s)) };
  kinds.set(key, made);
  return made;
}

const kinds = new Map<string, Strands>();
const known = new WeakMap<Float64Array, Strands>();

/** A condensed part: all its freedoms meet. */
const wholeOf = (size: number): Int8Array => new Int8Array(size);

function looked(pattern: Float64Array, size: number): Int8Array {
  const strand = new Int8Array(size).fill(-1);
  const path: number[] = [];
  let count = 0;
  for (let first = 0; first < size; first++) {
    if (strand[first] !== -1 || !actsOn(pattern, size, first)) continue;
    strand[first] = count;
    path.push(first);
    for (let i = path.pop(); i !== undefined; i = path.pop())
      for (let j = 0; j < size; j++)
        if (strand[j] === -1 && (pattern[i * size + j] !== 0 || pattern[j * size + i] !== 0)) {
          strand[j] = count;
          path.push(j);
        }
    count++;
  }
  return strand;
}

function actsOn(pattern: Float64Array, size: number, i: number): boolean {
  for (let j = 0; j < size; j++) if (pattern[i * size + j] !== 0) return true;
  return false;
}

/** Whether what meets in `inner` meets in `outer` as well. */
export function isWithin(inner: Strands, outer: Strands): boolean {
  if (inner === outer) return true;
  if (inner.strand.length !== outer.strand.length) return false;
  const image = new Int8Array(inner.count).fill(-1);
  for (let a = 0; a < inner.strand.length; a++) {
    const of = inner.strand[a]!;
    if (of < 0) continue;
    const into = outer.strand[a]!;
    if (into < 0 || (image[of] !== -1 && image[of] !== into)) return false;
    image[of] = into;
  }
  return true;
}
