import { useMemo } from 'react';
import type { Chapter, Entry } from '../../core/handbook/handbook.ts';
import type { RowView } from '../../core/engine/result-view.ts';
import { SectionView } from '../parts/Blocks.tsx';
import { grouped, type Group } from '../parts/check-groups.ts';
import { openHandbook } from '../state/handbook-place.ts';
import { none } from '../state/none.ts';
import { openCheck } from '../state/open-check.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';

const t = texts.handbook;

/** Theory of the checks: their list by what they are about, each with its highest use on the plate that is open; or one page. */
export function TheoryChapter({ chapter, entry }: { chapter: Chapter; entry: string | null }) {
  const rows = useWorkbench((state) => state.result?.rows ?? none);
  const made = useMemo(() => new Map(grouped(rows).map((group) => [group.id, group])), [rows]);
  const shown = chapter.entries.find(({ id }) => id === entry);
  if (shown)
    return (
      <>
        <button type="button" className="link" onClick={() => openHandbook('theory')}>
          {t.allChecks}
        </button>
        <OnThisPlate group={made.get(shown.id)} />
        <SectionView section={shown.section} />
      </>
    );
  const subjects = [...new Set(chapter.entries.map(({ group }) => group))];
  return (
    <>
      <p className="lead">{chapter.lead}</p>
      {subjects.map((subject) => (
        <section key={subject} aria-label={subject}>
          <h3>{subject}</h3>
          <ul className="handbook-list">
            {chapter.entries
              .filter(({ group }) => group === subject)
              .map((each) => (
                <Line key={each.id} entry={each} largest={made.get(each.id)?.largest ?? null} />
              ))}
          </ul>
        </section>
      ))}
    </>
  );
}

const Line = ({ entry, largest }: { entry: Entry; largest: number | null }) => (
  <li>
    <button type="button" className="link" onClick={() => openHandbook('theory', entry.id)}>
      {entry.title}
    </button>
    {largest !== null && <span className="quiet small">{t.highest(largest.toFixed(2))}</span>}
  </li>
);

/** Where the check stands on the plate that is open, with the way to its gravest line. */
function OnThisPlate({ group }: { group: Group | undefined }) {
  const hasResult = useWorkbench((state) => state.result !== null);
  if (!hasResult) return null;
  if (!group) return <p className="quiet">{t.notMade}</p>;
  const [gravest] = group.rows as readonly [RowView];
  const use = gravest.utilisation === null ? '' : ` ${gravest.utilisation.toFixed(2)}`;
  return (
    <p className="on-this-plate">
      {t.onThisPlate(group.rows.length, `${texts.verdict[gravest.verdict]}${use}`, gravest.placeWords)}{' '}
      <button type="button" className="link" onClick={() => openCheck(gravest)}>
        {t.showIt}
      </button>
    </p>
  );
}
