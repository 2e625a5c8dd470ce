import { useMemo } from 'react';
import { keyIfThere } from '../../core/options/key-if-there.ts';
import { searchKey } from '../../core/options/search/search-record.ts';
import { startSearch, useSearch } from '../state/search.ts';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { FoundOptions } from './search/FoundOptions.tsx';
import { SearchProgressView } from './search/SearchProgressView.tsx';
import { SensitivityPart } from './search/SensitivityPart.tsx';
import { WhatMayVary } from './search/WhatMayVary.tsx';
import './search.css';

const t = texts.search;

/** What may vary, what is wanted and what has to be kept; the options found, and what stopped the others. */
export function SearchSheet() {
  const session = useSession();
  const document = useWorkbench((state) => state.document);
  const { of, state, found, refusals, varying } = useSearch();
  const isCurrent = useMemo(
    () => document !== null && of !== null && keyOf(of.raw, of.option) === keyOf(document.raw, of.option),
    [document, of],
  );
  const begin = async () => {
    // What is still typed in a field is kept first, so that it is searched for.
    await session.settled();
    startSearch();
  };
  const title = texts.headline.asItStands;
  const from = options(document?.raw).find(({ id }) => id === document?.option)?.title ?? title;
  return (
    <div className="search-sheet">
      <section className="asked">
        <p className="quiet">{t.from(from)}</p>
        <WhatMayVary />
        <div className="acts">
          <button
            type="button"
            className="primary"
            disabled={state === 'running' || varying !== null || (document?.faults.length ?? 1) > 0}
            onClick={() => void begin()}
          >
            {found ? t.again : t.start}
          </button>
        </div>
        {refusals.map(({ what, mend }) => (
          <p key={what} className="fault">{`${what}. ${mend}`}</p>
        ))}
      </section>
      <section className="answered">
        <SearchProgressView />
        {found && !isCurrent && <p className="loud">{t.stale}</p>}
        {found && <FoundOptions found={found} isCurrent={isCurrent} />}
        <SensitivityPart />
      </section>
    </div>
  );
}

const keyOf = (raw: unknown, option: string | null): string | null =>
  keyIfThere(searchKey, raw as Parameters<typeof searchKey>[0], option);

const options = (raw: unknown): readonly { readonly id: string; readonly title: string }[] => {
  const list = (raw as { readonly options?: unknown } | undefined)?.options;
  return Array.isArray(list) ? (list as readonly { id: string; title: string }[]) : [];
};
