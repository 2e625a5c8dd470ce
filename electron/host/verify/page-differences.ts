/** Where the words of a page differ: what stands there, and what comes out anew. */
export interface PageDifference {
  readonly page: number;
  readonly printed: string;
  readonly recomputed: string;
}

type Pages = readonly (readonly string[])[];

/** Every run of words that differs, page by page, in the order of the note. */
export function pageDifferences(printed: Pages, recomputed: Pages): readonly PageDifference[] {
  const count = Math.max(printed.length, recomputed.length);
  return Array.from({ length: count }, (_, i) =>
    runsThatDiffer(printed[i] ?? [], recomputed[i] ?? []).map(([was, is]) => ({
      page: i + 1,
      printed: was.join(' ') || '(nothing)',
      recomputed: is.join(' ') || '(nothing)',
    })),
  ).flat();
}

type Run = readonly [printed: readonly string[], recomputed: readonly string[]];

/** How far ahead two texts are looked for the place where they go on together. */
const reach = 60;

function runsThatDiffer(a: readonly string[], b: readonly string[]): Run[] {
  const runs: Run[] = [];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    if (i < a.length && a[i] === b[j]) {
      i += 1;
      j += 1;
      continue;
    }
    const [skipA, skipB] = nearestMeeting(a.slice(i, i + reach), b.slice(j, j + reach));
    runs.push([a.slice(i, i + skipA), b.slice(j, j + skipB)]);
    i += skipA;
    j += skipB;
  }
  return runs;
}

/** Fewest words to leave out of both so that the next two are alike; all that is in reach where there are none. */
function nearestMeeting(a: readonly string[], b: readonly string[]): readonly [number, number] {
  const alike = (i: number, j: number): boolean => a[i] === b[j] && a[i + 1] === b[j + 1];
  for (let sum = 1; sum < a.length + b.length; sum++)
    for (let i = Math.max(0, sum - b.length + 1); i <= Math.min(sum, a.length - 1); i++)
      if (alike(i, sum - i)) return [i, sum - i];
  return [a.length, b.length];
}
