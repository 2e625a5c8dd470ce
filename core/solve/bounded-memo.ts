/** Remembers the last `capacity` values by key and forgets the one longest unused. The caller's promise: the value
 *  depends on the key alone, so remembering changes the time of a call and nothing else. */
export function boundedMemo<Value>(capacity: number): (key: string, make: () => Value) => Value {
  const kept = new Map<string, Value>();
  return (key, make) => {
    const value = kept.has(key) ? (kept.get(key) as Value) : make();
    kept.delete(key);
    kept.set(key, value);
    if (kept.size > capacity) kept.delete(kept.keys().next().value as string);
    return value;
  };
}
