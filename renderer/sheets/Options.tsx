import { useState } from 'react';
import type { RawOption } from '../../core/document/edit.ts';
import type { ComparisonView, OptionView } from '../../core/engine/comparison-view.ts';
import { ComparisonPlot } from '../parts/ComparisonPlot.tsx';
import { ComparisonTable } from '../parts/ComparisonTable.tsx';
import { CopyButton } from '../parts/CopyButton.tsx';
import { WaterGainsTable } from '../parts/WaterGainsTable.tsx';
import { figureItem } from '../parts/figure-item.ts';
import { chooseTextFile } from '../parts/choose-text-file.ts';
import { duplicateOption } from '../state/duplicate-option.ts';
import { useSession } from '../state/session-context.ts';
import { said } from '../state/said.ts';
import { takeOverOptions } from '../state/take-over-options.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { BoltedAgainstWelded } from './BoltedAgainstWelded.tsx';
import './options.css';

/** Options as named differences, side by side in full. */
export function OptionsSheet() {
  const comparison = useWorkbench((state) => state.comparison);
  return (
    <div className="options-sheet">
      <OptionActs />
      {comparison && (
        <>
          <section className="compared plotted">
            <h3>{texts.options.plot}</h3>
            <ComparisonPlot comparison={comparison} />
            <CopyFigure of=".comparison-plot" />
          </section>
          <section className="compared">
            <h3>{texts.options.table}</h3>
            <ComparisonTable comparison={comparison} />
          </section>
          <section className="compared">
            <h3>{texts.options.water.title}</h3>
            <WaterGainsTable options={comparison.options} />
          </section>
        </>
      )}
      <BoltedAgainstWelded />
      <OtherDocument />
    </div>
  );
}

const CopyFigure = ({ of }: { of: string }) => (
  <CopyButton label={texts.copy.figure} what={() => figureItem(document.querySelector<SVGSVGElement>(of)!)} />
);

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
  return (
    <section className="option-acts">
      <h2>{option ? option.title : texts.headline.asItStands}</h2>
      <p className="quiet">{option ? t.isOption : t.isDocument}</p>
      {option && <Described key={option.id} option={option} />}
      <div className="acts">
        <button type="button" className="primary" onClick={() => void duplicateOption(session)}>
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
    <label className="titled">
      {texts.options.title}
      <input
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
  const session = useSession();
  const [view, setView] = useState<ComparisonView | null>(null);
  const compare = async () => {
    const file = await chooseTextFile();
    if (!file) return;
    await said(async () => setView(await session.engine.ask('compareWith', { text: file.text })));
  };
  const other = view?.options[1] as OptionView | undefined;
  return (
    <section className="other-document">
      <h3>{texts.options.otherDocument}</h3>
      <p className="quiet">{texts.options.otherHelp}</p>
      <div className="acts">
        <button type="button" onClick={() => void compare()}>
          {texts.options.compareWith}
        </button>
        <button type="button" onClick={() => void takeOverOptions(session)}>
          {texts.options.takeOver}
        </button>
      </div>
      {other && other.faults.length > 0 && <p className="loud">{other.faults[0]!.what}</p>}
      {view && <ComparisonTable comparison={view} />}
    </section>
  );
}
