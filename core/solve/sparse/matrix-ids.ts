/** Numbers matrices by their bits: equal ones get one number. What was seen before is known by the object itself. */
export type MatrixIds = (matrix: Float64Array) => number;

/** Forgets all once it holds more than `most` bytes: numbers are never given twice, so what was numbered before is only
 *  not recognised. */
export function matrixIds(most = 64e6): MatrixIds {
  let byObject = new WeakMap<Float64Array, number>();
  let byBits = new Map<number, { readonly bits: Int32Array; readonly id: number }[]>();
  let bytes = 0;
  let next = 0;
  return (matrix) => {
    const known = byObject.get(matrix);
    if (known !== undefined) return known;
    if (bytes > most) {
      byObject = new WeakMap();
      byBits = new Map();
      bytes = 0;
    }
    const bits = new Int32Array(matrix.buffer, matrix.byteOffset, 2 * matrix.length);
    const sum = hashOf(bits);
    const alike = byBits.get(sum) ?? [];
    let id = alike.find((other) => equal(other.bits, bits))?.id;
    if (id === undefined) {
      id = next++;
      alike.push({ bits, id });
      byBits.set(sum, alike);
      bytes += matrix.byteLength;
    }
    byObject.set(matrix, id);
    return id;
  };
}

/** FNV-1a over words (Fowler, Noll and Vo; constants from memory). It only sorts: equality is tested. */
function hashOf(bits: Int32Array): number {
  let hash = 0x811c9dc5 ^ bits.length;
  for (let i = 0; i < bits.length; i++) hash = Math.imul(hash ^ bits[i]!, 0x01000193);
  return hash;
}

function equal(a: Int32Array, b: Int32Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}
