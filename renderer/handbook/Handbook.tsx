import { useEffect, useRef, useState } from 'react';
import type { Chapter, Entry } from '../../core/handbook/handbook.ts';
import { KeyList } from '../shell/KeyList.tsx';
import { closeHandbook, openHandbook, type ChapterName } from '../state/handbook-place.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { ChapterText } from './ChapterText.tsx';
import { TheoryChapter } from './TheoryChapter.tsx';
import { useHandbook } from './use-handbook.ts';
import './handbook.css';

const t = texts.handbook;

/** The handbook, in place of the picture beside the sheet: chapters, a search over all of them, and what is open. */
export function Handbook() {
  const chapters = useHandbook();
  const { chapter, entry } = useWorkbench((state) => state.handbook);
  const [typed, setTyped] = useState('');
  const search = useRef<HTMLInputElement>(null);
  const body = useRef<HTMLDivElement>(null);
  useEffect(() => search.current?.focus(), []);
  // Another page begins at its top; an entry of a chapter that is read as a whole is brought into view.
  useEffect(() => {
    const shown = entry === null ? null : document.getElementById(entryAnchor(entry));
    if (shown) shown.scrollIntoView();
    else body.current?.scrollTo(0, 0);
  }, [chapters, chapter, entry, typed]);
  const go = (to: ChapterName, at: string | null = null): void => {
    setTyped('');
    openHandbook(to, at);
  };
  const names: readonly (readonly [ChapterName, string])[] = [
    ...(chapters ?? []).map(({ id, title }) => [id, title] as const),
    ['keys', texts.shortcuts.list],
  ];
  return (
    <section className="handbook" aria-label={t.title}>
      <header>
        <h2>{t.title}</h2>
        <input
          ref={search}
          type="search"
          aria-label={t.search}
          placeholder={t.searchHint}
          value={typed}
          onChange={({ target }) => setTyped(target.value)}
        />
        <button type="button" onClick={closeHandbook}>
          {t.close}
        </button>
      </header>
      <nav aria-label={t.chapters}>
        {names.map(([id, title]) => (
          <button
            key={id}
            type="button"
            className="plain"
            aria-current={id === chapter && typed === '' ? 'page' : undefined}
            onClick={() => go(id)}
          >
            {title}
          </button>
        ))}
      </nav>
      <div className="handbook-body" ref={body} tabIndex={0} role="region" aria-label={t.pages}>
        {chapters === null ? (
          <p className="quiet">{t.reading}</p>
        ) : typed.trim() !== '' ? (
          <Found chapters={chapters} typed={typed} go={go} />
        ) : (
          <Page chapter={chapters.find(({ id }) => id === chapter)} entry={entry} />
        )}
      </div>
    </section>
  );
}

const entryAnchor = (entry: string): string => `handbook-${entry}`;

function Page({ chapter, entry }: { chapter: Chapter | undefined; entry: string | null }) {
  if (!chapter) return <KeyList />;
  return chapter.id === 'theory' ? (
    <TheoryChapter chapter={chapter} entry={entry} />
  ) : (
    <ChapterText chapter={chapter} anchorOf={entryAnchor} />
  );
}

/** Entries that have every word typed: those with all of them in the title first. */
function Found({
  chapters,
  typed,
  go,
}: {
  chapters: readonly Chapter[];
  typed: string;
  go: (chapter: ChapterName, entry: string) => void;
}) {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const inTitle = ({ title }: Entry): boolean => words.every((word) => title.toLowerCase().includes(word));
  const found = chapters
    .flatMap((chapter) => chapter.entries.map((entry) => ({ chapter, entry })))
    .filter(({ entry }) => words.every((word) => entry.words.includes(word)))
    .sort((a, b) => Number(inTitle(b.entry)) - Number(inTitle(a.entry)));
  return (
    <>
      <p className="quiet" role="status">
        {t.found(found.length)}
      </p>
      <ul className="handbook-list">
        {found.map(({ chapter, entry }) => (
          <li key={`${chapter.id}|${entry.id}`}>
            <button type="button" className="link" onClick={() => go(chapter.id, entry.id)}>
              {entry.title}
            </button>
            <span className="quiet small">{[chapter.title, entry.group].filter(Boolean).join(', ')}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
