/** A number in [0, 1) for a seed and a count: the same on every machine, and any one can be had without those before it.
 *  Two rounds of a 32-bit mixing of (seed, count). For sampling, not for secrets.
 *  Source of the mixing constants: MurmurHash3's finaliser (public domain), from memory. */
export function countedRandom(seed: number, count: number): number {
  let h = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(count + 1, 0xc2b2ae35);
  for (let round = 0; round < 2; round++) {
    h ^= h >>> 16;
    h = Math.imul(h, 0x85ebca6b);
    h ^= h >>> 13;
    h = Math.imul(h, 0xc2b2ae35);
    h ^= h >>> 16;
  }
  return (h >>> 0) / 2 ** 32;
}
