/** Whole numbers by their place. Int32Array.from goes through an iterator, which costs a large plate a tenth of its analysis. */
export function numbersOf(count: number, of: (place: number) => number): Int32Array<ArrayBuffer> {
  const list = new Int32Array(count);
  for (let i = 0; i < count; i++) list[i] = of(i);
  return list;
}
