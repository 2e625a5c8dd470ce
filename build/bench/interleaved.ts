/**
 * Median time of each run in milliseconds. The runs take turns, so that whatever slows the machine slows all of them;
 * two rounds beforehand warm them up. Each call gets a number that no other call gets.
 */
export function interleaved<Name extends string>(
  runs: Readonly<Record<Name, (n: number) => unknown>>,
  rounds: number,
): Record<Name, number> {
  const names = Object.keys(runs) as Name[];
  const times = new Map<Name, number[]>(names.map((name) => [name, []]));
  let n = 0;
  for (let round = -2; round < rounds; round++) {
    for (const name of names) {
      const start = performance.now();
      runs[name](++n);
      if (round >= 0) times.get(name)!.push(performance.now() - start);
    }
  }
  return Object.fromEntries(names.map((name) => [name, median(times.get(name)!)])) as Record<Name, number>;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return (sorted[Math.floor((sorted.length - 1) / 2)]! + sorted[Math.ceil((sorted.length - 1) / 2)]!) / 2;
}
