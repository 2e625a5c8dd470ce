import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './headline.css';

/** Across the top: which document and option, and what decides. Fails and unjudged stand louder than passes. */
export function Headline() {
  const session = useSession();
  const { document, result, keeping } = useWorkbench();
  const t = texts.headline;
  const name = String((document?.raw['project'] as { name?: unknown } | undefined)?.name ?? '');
  return (
    <header className="headline">
      <div className="doc">
        <button type="button" className="plain" onClick={() => void session.close()}>
          {t.home}
        </button>
        <h1>{name}</h1>
        <span className="quiet">
          {document?.option === null ? t.asItStands : result?.title} · {result?.basis} · {result?.units}
        </span>
        <span className={`keeping ${keeping.state === 'not kept' ? 'loud' : 'quiet'}`} role="status">
          {keeping.state === 'kept' ? t.kept : keeping.state === 'writing' ? t.writing : t.notKept}
        </span>
        <span className="steps">
          <button
            type="button"
            disabled={!document?.undo}
            title={document?.undo ?? undefined}
            onClick={() => void session.undo()}
          >
            {t.undo}
          </button>
          <button
            type="button"
            disabled={!document?.redo}
            title={document?.redo ?? undefined}
            onClick={() => void session.redo()}
          >
            {t.redo}
          </button>
          <button type="button" onClick={() => useWorkbench.setState({ dialog: 'finder' })}>
            {t.find}
          </button>
          <button type="button" onClick={() => useWorkbench.setState({ dialog: 'history' })}>
            {t.revisions}
          </button>
          <button type="button" onClick={() => useWorkbench.setState({ dialog: 'about' })}>
            {t.about}
          </button>
        </span>
      </div>
      {result ? <Deciding /> : <p className="loud">{t.noResult}</p>}
    </header>
  );
}

function Deciding() {
  const result = useWorkbench((state) => state.result)!;
  const t = texts.headline;
  const { governing, highest } = result;
  const open = () =>
    governing &&
    useWorkbench.setState({
      sheet: 'strength',
      openCheck: { check: governing.id, place: governing.place, situation: governing.situation },
      selection: governing.place,
    });
  return (
    <dl className={result.current ? 'facts' : 'facts stale'}>
      <div className="deciding">
        <dt>{t.decides}</dt>
        <dd>
          <button type="button" className="plain" onClick={open}>
            {governing && (
              <>
                <strong className={governing.verdict === 'passes' ? '' : 'loud'}>
                  {governing.utilisation === null ? texts.verdict[governing.verdict] : governing.utilisation.toFixed(2)}
                </strong>{' '}
                {governing.title}, {governing.placeWords}
              </>
            )}
          </button>
        </dd>
      </div>
      <div>
        <dt className="unseen">Counts</dt>
        <dd className="counts">
          <span className={result.fails > 0 ? 'count loud' : 'count'}>{t.fails(result.fails)}</span>
          <span className={result.unjudged > 0 ? 'count unjudged' : 'count'}>{t.unjudged(result.unjudged)}</span>
          <span className="count">{t.findings(result.findings.length)}</span>
        </dd>
      </div>
      {highest && highest !== governing && (
        <div>
          <dt>Highest use</dt>
          <dd>{highest.utilisation?.toFixed(2)}</dd>
        </div>
      )}
      <Fact title={t.mass} id="mass.air" />
      <Fact title={t.weight} id="weight.submerged" />
      <Fact title={t.open} id="ratio.open" />
      {!result.current && <p className="loud">{t.stale}</p>}
    </dl>
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
