import { putAwayNotice, useWorkbench } from '../state/workbench.ts';
import { useSession } from '../state/session-context.ts';
import { texts } from '../texts.ts';
import './notices.css';

/** What the window has to say, until it is put away; a conflict with another window asks for a choice. */
export function Notices() {
  const session = useSession();
  const notices = useWorkbench((state) => state.notices);
  const conflict = useWorkbench((state) => state.conflict);
  const keeping = useWorkbench((state) => state.keeping);
  const outside = useWorkbench((state) => state.outside);
  const t = texts.notices;
  return (
    <div className="notices" role="region" aria-label={t.label} aria-live="polite">
      {conflict && (
        <div className="notice loud" role="alertdialog" aria-label={t.conflict(conflict.since.length)}>
          <p>{t.conflict(conflict.since.length)}</p>
          <button type="button" className="primary" onClick={() => void session.settle('keep both')}>
            {t.keepBoth}
          </button>
          <button type="button" onClick={() => void session.settle('take theirs')}>
            {t.takeTheirs}
          </button>
        </div>
      )}
      {outside && (
        <div className="notice loud" role="alertdialog" aria-label={t.outside(outside.file)}>
          <p>{t.outside(outside.file)}</p>
          <button type="button" className="primary" onClick={() => void session.settleFile('keep both')}>
            {t.keepBothFiles}
          </button>
          <button type="button" onClick={() => void session.settleFile('write over')}>
            {t.writeOver}
          </button>
        </div>
      )}
      {keeping.state === 'not kept' && (
        <div className="notice loud">
          <p>
            {t.notKept} {keeping.refusal.what}. {keeping.refusal.mend}
          </p>
        </div>
      )}
      {notices.map(({ id, tone, what, mend }) => (
        <div key={id} className={`notice ${tone}`}>
          <p>
            {what}. <span className="quiet">{mend}</span>
          </p>
          <button type="button" className="plain small" onClick={() => putAwayNotice(id)}>
            {t.close}
          </button>
        </div>
      ))}
    </div>
  );
}
