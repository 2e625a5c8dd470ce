/** What counting out compares two options by: what is wanted, small, and the checks that nobody judged. */
export interface Compared {
  readonly aims: readonly number[];
  readonly open: readonly string[];
}

/**
 * The search's rule in other words, for counting out: `a` puts `b` aside where all that is open of `a` is open of `b`, no aim of `a` is
 * larger, and the two are not alike. Sets, and differences by the part of the larger; nothing of the search is used.
 */
export function putsAside(a: Compared, b: Compared): boolean {
  const [ofA, ofB] = [new Set(a.open), new Set(b.open)];
  for (const check of ofA) if (!ofB.has(check)) return false;
  const parts = a.aims.map((own, k) => {
    const other = b.aims[k]!;
    return own === other ? 0 : (own - other) / Math.max(Math.abs(own), Math.abs(other));
  });
  if (parts.some((part) => part > 1e-9)) return false;
  return parts.some((part) => part < -1e-9) || ofB.size > ofA.size;
}

/** Checks without a verdict somewhere, of those that count. */
export const openIn = (
  rows: readonly { readonly id: string; readonly limitState: string; readonly verdict: string }[],
  aside: readonly string[],
): string[] => {
  const open = new Set<string>();
  for (const row of rows)
    if (row.verdict === 'cannot be judged' && ![row.id, row.limitState].some((name) => aside.includes(name)))
      open.add(row.id);
  return [...open].sort((a, b) => (a < b ? -1 : 1));
};

/** What nothing of a list puts aside. */
export const leftStanding = <One extends Compared>(all: readonly One[]): One[] =>
  all.filter((one) => !all.some((other) => putsAside(other, one)));
