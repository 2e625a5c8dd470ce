import { useEffect, useState } from 'react';
import { recordsIn } from '../../core/document/records-in.ts';
import type { PreviewView } from '../../core/engine/messages.ts';
import { valueOf, type Answer } from '../../core/host/answer.ts';
import type { DocumentLine } from '../../core/host/host-schema.ts';
import type { RefusalText } from '../../core/refusal.ts';
import { FigureView } from '../parts/FigureView.tsx';
import { localTime } from '../parts/local-time.ts';
import { none } from '../state/none.ts';
import { openHandbook } from '../state/handbook-place.ts';
import { openFile } from '../state/open-file.ts';
import { said } from '../state/said.ts';
import type { Session } from '../state/session.ts';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { sampleNames } from './sample-names.ts';
import './start.css';

/** What one sees first: what this is for, a new plate, the samples as small plans, and what one worked on. */
export function StartPage() {
  const t = texts.start;
  return (
    <main className="start">
      <header>
        <h1>{texts.program}</h1>
        <p className="lead">{t.lead}</p>
        <div className="acts">
          <button type="button" className="primary" onClick={() => useWorkbench.setState({ page: 'new' })}>
            {t.newPlate}
          </button>
          <OpenFile />
          <button type="button" onClick={() => openHandbook()}>
            {texts.handbook.title}
          </button>
        </div>
      </header>
      <Recent />
      <section aria-labelledby="samples">
        <h2 id="samples">{t.samples}</h2>
        <p className="quiet">{t.samplesHelp}</p>
        <ul className="cards">
          {sampleNames.map((name) => (
            <Sample key={name} name={name} />
          ))}
        </ul>
      </section>
      <footer className="quiet small">
        <p>{t.caution}</p>
        <div className="acts">
          <button type="button" className="link" onClick={() => useWorkbench.setState({ dialog: 'about' })}>
            {texts.about.title}
          </button>
          <button type="button" className="link" onClick={() => useWorkbench.setState({ dialog: 'problem' })}>
            {texts.about.problem}
          </button>
        </div>
      </footer>
    </main>
  );
}

function OpenFile() {
  const session = useSession();
  return (
    <button type="button" onClick={() => void openFile(session)}>
      {texts.start.open}
    </button>
  );
}

/** Documents in the store, the newest first, and the trash. */
function Recent() {
  const session = useSession();
  const [lines, setLines] = useState<readonly DocumentLine[] | null>(null);
  const [trash, setTrash] = useState(false);
  const [all, setAll] = useState(false);
  const [fault, setFault] = useState<RefusalText | null>(null);
  const refresh = () =>
    void session.host.listDocuments({}).then((answer) => {
      setLines(answer.ok ? answer.value : none);
      setFault(answer.ok ? null : answer.refusal);
    });
  useEffect(refresh, [session]);
  const shown = (lines ?? []).filter(({ trashed }) => trashed === trash);
  const t = texts.start;
  const act = (work: () => Promise<Answer<unknown>>) =>
    void said(async () => {
      valueOf(await work());
      refresh();
    });
  const several = all ? shown : shown.slice(0, few);
  return (
    <section aria-labelledby="recent">
      <header className="titled">
        <h2 id="recent">{trash ? t.trash : t.recent}</h2>
        {(trash || lines?.some(({ trashed }) => trashed)) && (
          <button type="button" className="link small" onClick={() => setTrash(!trash)}>
            {trash ? t.backFromTrash : t.showTrash}
          </button>
        )}
      </header>
      {fault && (
        <p className="loud" role="alert">
          {fault.what}. {fault.mend}
        </p>
      )}
      {lines !== null && shown.length === 0 && <p className="quiet">{trash ? t.trashEmpty : t.noRecent}</p>}
      <ul className="recent">
        {several.map((line) => (
          <li key={line.id}>
            <button
              type="button"
              className="plain name"
              disabled={trash || line.fault !== null}
              onClick={() => void said(() => session.openDocument(line.id))}
            >
              {line.name}
            </button>
            <span className={line.fault ? 'loud small' : 'quiet small'}>
              {line.fault ?? [line.file, localTime(line.changed)].filter(Boolean).join(' · ')}
            </span>
            {trash ? (
              <>
                <button
                  type="button"
                  className="link small"
                  onClick={() => act(() => session.host.restoreDocument({ id: line.id }))}
                >
                  {t.restore}
                </button>
                <button
                  type="button"
                  className="link small"
                  onClick={() => act(() => session.host.destroyDocument({ id: line.id }))}
                >
                  {t.destroy}
                </button>
              </>
            ) : (
              <button
                type="button"
                className="link small"
                aria-label={t.toTrashOf(line.name)}
                onClick={() => act(() => session.host.trashDocument({ id: line.id }))}
              >
                {t.toTrash}
              </button>
            )}
          </li>
        ))}
      </ul>
      {several.length < shown.length && (
        <button type="button" className="link small" onClick={() => setAll(true)}>
          {t.showAll(shown.length)}
        </button>
      )}
    </section>
  );
}

/** So many documents are shown at first. */
const few = 8;

/** Opens a copy of a sample; the records that its tests are of go into the store with it. */
async function openSample(session: Session, name: string, text: string): Promise<void> {
  for (const record of recordsIn(text)) {
    const bytes = new Uint8Array(await (await fetch(`samples/${record}`)).arrayBuffer());
    // without a store the sample opens all the same, and the sheet asks for the file
    await session.host.keepRecord({ name: record, bytes });
  }
  await session.openText(name, text, null);
}

function Sample({ name }: { name: string }) {
  const session = useSession();
  const [sample, setSample] = useState<{ readonly text: string; readonly preview: PreviewView } | null>(null);
  useEffect(() => {
    let current = true;
    void (async () => {
      const text = await (await fetch(`samples/${name}.stillplate.json`)).text();
      const preview = await session.engine.ask('preview', { text });
      if (current) setSample({ text, preview });
    })();
    return () => {
      current = false;
    };
  }, [session, name]);
  return (
    <li>
      <button
        type="button"
        className="card"
        disabled={!sample}
        onClick={() => sample && void said(() => openSample(session, sample.preview.name, sample.text))}
      >
        <span className="plan" aria-hidden="true">
          {sample?.preview.plan && <FigureView figure={sample.preview.plan} width={260} plain />}
        </span>
        <strong>{sample?.preview.name ?? texts.start.drawing}</strong>
        <dl>
          {sample?.preview.facts.map(([title, text]) => (
            <div key={title}>
              <dt>{title}</dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
      </button>
    </li>
  );
}
