import type { Chapter, Entry } from '../../core/handbook/handbook.ts';
import { SectionView } from '../parts/Blocks.tsx';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';

/** A chapter that is read from its beginning to its end. */
export function ChapterText({ chapter, anchorOf }: { chapter: Chapter; anchorOf: (entry: string) => string }) {
  return (
    <>
      <p className="lead">{chapter.lead}</p>
      {chapter.id === 'glossary' ? (
        <dl className="glossary">
          {chapter.entries.map(({ id, title, section }) => (
            <div key={id} id={anchorOf(id)}>
              <dt>{title}</dt>
              {section.blocks.map((block, n) => block.kind === 'paragraph' && <dd key={n}>{block.text}</dd>)}
            </div>
          ))}
        </dl>
      ) : (
        chapter.entries.map((entry) => (
          <div key={entry.id} id={anchorOf(entry.id)} className="handbook-entry">
            <SectionView section={entry.section} />
            {entry.sheet && <ToSheet sheet={entry.sheet} />}
          </div>
        ))
      )}
    </>
  );
}

/** Leads to the sheet that a step is about, while a plate is open. */
function ToSheet({ sheet }: { sheet: NonNullable<Entry['sheet']> }) {
  const isAtWork = useWorkbench((state) => state.page === 'work');
  if (!isAtWork) return null;
  return (
    <button type="button" className="link" onClick={() => useWorkbench.setState({ sheet })}>
      {texts.handbook.toSheet(texts.sheets[sheet])}
    </button>
  );
}
