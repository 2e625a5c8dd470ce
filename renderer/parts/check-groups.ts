import type { RowView } from '../../core/engine/result-view.ts';

/** The rows of one check, gravest first. */
export interface Group {
  readonly id: string;
  readonly title: string;
  readonly fails: number;
  readonly unjudged: number;
  readonly largest: number | null;
  readonly rows: readonly RowView[];
}

const rank = { fails: 3, 'cannot be judged': 2, passes: 1, 'not applicable': 0 } as const;
const byGravity = (a: RowView, b: RowView): number =>
  rank[b.verdict] - rank[a.verdict] || (b.utilisation ?? -1) - (a.utilisation ?? -1);

/** Rows by their check: checks that fail first, then those not judged, then by the largest utilisation. */
export function grouped(rows: readonly RowView[]): readonly Group[] {
  const byCheck = new Map<string, RowView[]>();
  for (const row of rows) {
    const of = byCheck.get(row.id);
    if (of) of.push(row);
    else byCheck.set(row.id, [row]);
  }
  return [...byCheck]
    .map(([id, of]): Group => {
      const count = (verdict: RowView['verdict']) => of.filter((row) => row.verdict === verdict).length;
      const uses = of.flatMap(({ utilisation }) => (utilisation === null ? [] : [utilisation]));
      return {
        id,
        title: of[0]!.title,
        fails: count('fails'),
        unjudged: count('cannot be judged'),
        largest: uses.length === 0 ? null : Math.max(...uses),
        rows: of.sort(byGravity),
      };
    })
    .sort((a, b) => gravity(b) - gravity(a) || (b.largest ?? -1) - (a.largest ?? -1));
}

const gravity = ({ fails, unjudged }: Group): number => (fails > 0 ? 2 : unjudged > 0 ? 1 : 0);
