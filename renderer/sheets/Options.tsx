import { useState } from 'react';
import type { RawOption } from '../../core/document/edit.ts';
import type { ComparisonView, OptionView } from '../../core/engine/comparison-view.ts';
import { ComparisonPlot } from '../parts/ComparisonPlot.tsx';
import { ComparisonTable } from '../parts/ComparisonTable.tsx';
import { chooseTextFile } from '../parts/choose-text-file.ts';
import { useSession } from '../state/session-context.ts';
import { notify, useWorkbench } from '../state/workbench.ts';
import { Refusal } from '../../core/refusal.ts';
import { texts } from '../texts.ts';
import './options.css';

/** Options as named differences, side by side in full. */
export function OptionsSheet() {
  const comparison = useWorkbench((state) => state.comparison);
  return (
    <>
      <OptionActs />
      {comparison && (
        <>
          <ComparisonPlot comparison={comparison} />
          <ComparisonTable comparison={comparison} />
        </>
      )}
      <OtherDocument />
    </>
  );
}

/** Duplicate, describe, remove, choose for the note, take over from another document. */
function OptionActs() {
  const session = useSession();
  const shown = useWorkbench((state) => state.document?.option ?? null);
  const raw = useWorkbench((state) => state.document?.raw);
  const base = useWorkbench((state) => state.comparison?.base ?? null);
  const options = Array.isArray(raw?.['options']) ? (raw['options'] as readonly RawOption[]) : [];
  const option = options.find(({ id }) => id === shown);
  const chosen = raw?.['chosen'] ?? null;
  const t = texts.options;
  const free = (id: string) => {
    let n = 2;
    while (options.some((other) => other.id === `${id}-${n}`)) n++;
    return `${id}-${n}`;
  };
  const duplicate = async () => {
    const made: RawOption = option
      ? { ...option, id: free(option.id), title: `${option.title} (${t.copy})` }
      : { id: free('option'), title: t.newTitle, base: null, changes: {} };
    await session.edit({ kind: 'addOption', option: made });
    await session.show(made.id);
  };
  const takeOver = async () => {
    const file = await chooseTextFile();
    if (!file) return;
    try {
      const theirs = (JSON.parse(file.text) as { options?: unknown }).options;
      const list = Array.isArray(theirs) ? (theirs as readonly RawOption[]) : [];
      if (list.length === 0) throw new Refusal([{ what: t.noOptions(file.name), mend: t.noOptionsMend }]);
      for (const other of list)
        await session.edit({
          kind: 'addOption',
          option: { ...other, base: null, id: options.some(({ id }) => id === other.id) ? free(other.id) : other.id },
        });
    } catch (error) {
      if (error instanceof Refusal) notify('loud', error);
      else if (error instanceof SyntaxError) notify('loud', { what: t.noDocument(file.name), mend: t.noDocumentMend });
      else throw error;
    }
  };
  return (
    <section className="option-acts">
      <h3>{option ? option.title : texts.headline.asItStands}</h3>
      {option && <Described option={option} />}
      <div className="acts">
        <button type="button" className="primary" onClick={() => void duplicate()}>
          {t.duplicate}
        </button>
        <button
          type="button"
          disabled={chosen === shown}
          onClick={() => void session.edit({ kind: 'chooseOption', id: shown })}
        >
          {chosen === shown ? t.isChosen : t.choose}
        </button>
        <button
          type="button"
          disabled={base === shown}
          onClick={() => void session.engine.ask('countFrom', { option: shown })}
        >
          {base === shown ? t.isBase : t.countFrom}
        </button>
        <button type="button" onClick={() => void takeOver()}>
          {t.takeOver}
        </button>
        {option && (
          <button type="button" onClick={() => void session.edit({ kind: 'removeOption', id: option.id })}>
            {t.remove}
          </button>
        )}
      </div>
      {option && Object.keys(option.changes).length > 0 && (
        <details>
          <summary>{t.differences}</summary>
          <pre className="small">{JSON.stringify(option.changes, null, 2)}</pre>
        </details>
      )}
    </section>
  );
}

function Described({ option }: { option: RawOption }) {
  const session = useSession();
  const [title, setTitle] = useState(option.title);
  const commit = () =>
    title !== option.title &&
    title.trim() !== '' &&
    void session.edit({ kind: 'describeOption', id: option.id, title, remark: option.remark ?? null });
  return (
    <label>
      {texts.options.title}{' '}
      <input
        key={option.id}
        type="text"
        value={title}
        onChange={({ target }) => setTitle(target.value)}
        onBlur={commit}
        onKeyDown={({ key }) => key === 'Enter' && commit()}
      />
    </label>
  );
}

/** The chosen option of another document beside the one shown here. */
function OtherDocument() {
  const { engine } = useSession();
  const [view, setView] = useState<ComparisonView | null>(null);
  const compare = async () => {
    const file = await chooseTextFile();
    if (!file) return;
    try {
      setView(await engine.ask('compareWith', { text: file.text }));
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      notify('loud', error);
    }
  };
  const other = view?.options[1] as OptionView | undefined;
  return (
    <section>
      <h3>{texts.options.otherDocument}</h3>
      <button type="button" onClick={() => void compare()}>
        {texts.options.compareWith}
      </button>
      {other && other.faults.length > 0 && <p className="loud">{other.faults[0]!.what}</p>}
      {view && <ComparisonTable comparison={view} />}
    </section>
  );
}
