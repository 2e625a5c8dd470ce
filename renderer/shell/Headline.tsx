import { closeHandbook, openHandbook } from '../state/handbook-place.ts';
import { openCheck } from '../state/open-check.ts';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './headline.css';

/** Across the top: which document and option, and what decides. Fails and unjudged stand louder than passes. */
export function Headline() {
  const hasResult = useWorkbench((state) => state.result !== null);
  const hasFaults = useWorkbench((state) => (state.document?.faults.length ?? 0) > 0);
  const t = texts.headline;
  return (
    <header className="headline">
      <div className="doc">
        <Which />
        <Steps />
      </div>
      {hasResult ? <Deciding /> : <p className={hasFaults ? 'loud' : 'quiet'}>{hasFaults ? t.noResult : t.reading}</p>}
    </header>
  );
}

function Which() {
  const session = useSession();
  const name = useWorkbench(({ document }) =>
    String((document?.raw['project'] as { name?: unknown } | undefined)?.name ?? ''),
  );
  const title = useWorkbench(({ document, result }) => (document?.option === null ? null : result?.title));
  const basis = useWorkbench(({ result }) => result?.basis);
  const keeping = useWorkbench((state) => state.keeping.state);
  const t = texts.headline;
  return (
    <div className="which">
      <button type="button" className="link" onClick={() => void session.close()}>
        {t.home}
      </button>
      <h1>{name}</h1>
      <span className={`keeping ${keeping === 'not kept' ? 'loud' : 'quiet'}`} role="status">
        {keeping === 'kept' ? t.kept : keeping === 'writing' ? t.writing : t.notKept}
      </span>
      <span className="quiet by">{[title ?? t.asItStands, basis].filter(Boolean).join(' · ')}</span>
    </div>
  );
}

function Steps() {
  const session = useSession();
  const undo = useWorkbench((state) => state.document?.undo ?? null);
  const hasHandbook = useWorkbench((state) => state.handbook.isOpen);
  const redo = useWorkbench((state) => state.document?.redo ?? null);
  const t = texts.headline;
  return (
    <div className="steps">
      <button type="button" disabled={undo === null} title={undo ?? undefined} onClick={() => void session.undo()}>
        {t.undo}
      </button>
      <button type="button" disabled={redo === null} title={redo ?? undefined} onClick={() => void session.redo()}>
        {t.redo}
      </button>
      <button type="button" aria-pressed={hasHandbook} onClick={() => (hasHandbook ? closeHandbook() : openHandbook())}>
        {texts.handbook.title}
      </button>
      {(['finder', 'history', 'shortcuts', 'about'] as const).map((dialog) => (
        <button key={dialog} type="button" onClick={() => useWorkbench.setState({ dialog })}>
          {t.dialogs[dialog]}
        </button>
      ))}
    </div>
  );
}

const loudnessOf = { fails: 'loud', 'cannot be judged': 'unjudged', passes: '', 'not applicable': '' } as const;

function Deciding() {
  const result = useWorkbench((state) => state.result)!;
  const t = texts.headline;
  const { governing, highest } = result;
  const differs = highest && highest.utilisation !== null && highest.utilisation !== governing?.utilisation;
  return (
    <dl className={result.current ? 'facts' : 'facts stale'}>
      <div className="deciding">
        <dt>{result.current ? t.decides : <span className="loud">{t.stale}</span>}</dt>
        <dd>
          {governing && (
            <button type="button" className="link" onClick={() => openCheck(governing)}>
              <strong className={loudnessOf[governing.verdict]}>
                {governing.utilisation === null ? texts.verdict[governing.verdict] : governing.utilisation.toFixed(2)}
              </strong>
              {governing.title}, {governing.placeWords}
            </button>
          )}
        </dd>
      </div>
      <div>
        <dt>{t.verdicts}</dt>
        <dd className="counts">
          <Count says={t.fails(result.fails)} loudness={result.fails > 0 ? 'loud' : ''} />
          <Count says={t.unjudged(result.unjudged)} loudness={result.unjudged > 0 ? 'unjudged' : ''} />
          <Count says={t.findings(result.findings.length)} />
        </dd>
      </div>
      {differs && (
        <div title={`${highest.title}, ${highest.placeWords}`}>
          <dt>{t.highest}</dt>
          <dd>{highest.utilisation!.toFixed(2)}</dd>
        </div>
      )}
      <Fact title={t.mass} id="mass.air" />
      <Fact title={t.weight} id="weight.submerged" />
      <Fact title={t.open} id="ratio.open" />
    </dl>
  );
}

/** How many lines of a kind there are; opens the sheet that lists them. */
function Count({ says, loudness = '' }: { says: string; loudness?: 'loud' | 'unjudged' | '' }) {
  return (
    <button type="button" className={`count ${loudness}`} onClick={() => useWorkbench.setState({ sheet: 'strength' })}>
      {says}
    </button>
  );
}

function Fact({ title, id }: { title: string; id: string }) {
  const quantity = useWorkbench((state) => state.result?.quantities[id]);
  return (
    <div title={quantity ? `${quantity.title}. ${quantity.source}` : undefined}>
      <dt>{title}</dt>
      <dd>{quantity?.text ?? '–'}</dd>
    </div>
  );
}
