import type { Bolt } from './geometry.ts';

/** How many bolts stand on a line along x (at one y) or along y (at one x), from one end to the other; m, to 1 µm. */
export type BoltRows = (along: 'x' | 'y', at: number, from: number, to: number) => number;

/** Sorts the bolts of a panel into lines once, so that each of its fields can count its own. */
export function boltRows(bolts: readonly Bolt[]): BoltRows {
  const lines = { x: new Map<number, Bolt[]>(), y: new Map<number, Bolt[]>() };
  for (const bolt of bolts)
    for (const along of ['x', 'y'] as const) {
      const key = Math.round(bolt[across[along]] / micron);
      const line = lines[along].get(key);
      if (line) line.push(bolt);
      else lines[along].set(key, [bolt]);
    }
  return (along, at, from, to) => {
    const key = Math.round(at / micron);
    // a position on the border of two keys may stand under either
    const near = [key - 1, key, key + 1].flatMap((k) => lines[along].get(k) ?? []);
    return near.filter(
      (b) => Math.abs(b[across[along]] - at) < micron && b[along] > from - micron && b[along] < to + micron,
    ).length;
  };
}

const micron = 1e-6;
const across = { x: 'y', y: 'x' } as const;
