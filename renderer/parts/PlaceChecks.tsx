import type { RowView } from '../../core/engine/result-view.ts';
import type { PlaceKind } from '../../core/place-words.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { CheckLine } from './CheckLine.tsx';
import './CheckLine.css';

/** Checks of the selected part, or of all parts of these kinds when none is selected: the worst of each check. */
export function PlaceChecks({ ids, kinds }: { ids?: (id: string) => boolean; kinds: readonly PlaceKind[] }) {
  const result = useWorkbench((state) => state.result);
  const selection = useWorkbench((state) => state.selection);
  if (!result) return null;
  const ofKind = result.rows.filter((row) => (ids ? ids(row.id) : kinds.includes(row.placeKind)));
  const here = ofKind.filter(({ place }) => place === selection);
  const rows = here.length > 0 ? here : worstOfEach(ofKind);
  return (
    <section aria-label={texts.panels.checks}>
      <h3>{here.length > 0 ? `${texts.panels.checks}: ${here[0]!.placeWords}` : texts.panels.checks}</h3>
      <ul className="check-lines">
        {rows.map((row) => (
          <CheckLine key={`${row.id}|${row.place}|${row.situation}`} row={row} />
        ))}
      </ul>
    </section>
  );
}

const rank = { fails: 3, 'cannot be judged': 2, passes: 1, 'not applicable': 0 } as const;

/** The gravest row of each check. */
export function worstOfEach(rows: readonly RowView[]): readonly RowView[] {
  const worst = new Map<string, RowView>();
  for (const row of rows) {
    const other = worst.get(row.id);
    const graver =
      !other ||
      rank[row.verdict] > rank[other.verdict] ||
      (rank[row.verdict] === rank[other.verdict] && (row.utilisation ?? 0) > (other.utilisation ?? 0) + 1e-9);
    if (graver) worst.set(row.id, row);
  }
  return [...worst.values()];
}
