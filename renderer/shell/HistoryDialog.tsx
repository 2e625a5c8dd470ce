import { useEffect, useState } from 'react';
import { valueOf } from '../../core/host/answer.ts';
import type { RevisionLine } from '../../core/host/host-schema.ts';
import { readDocumentText } from '../../core/document/read-document.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { localTime } from '../parts/local-time.ts';
import { none } from '../state/none.ts';
import { saveFile } from '../state/save-file.ts';
import { useSession } from '../state/session-context.ts';
import { notify, useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';

/** Revisions of the document: make one, save as a file, bring one back. */
export function HistoryDialog({ onClose }: { onClose: () => void }) {
  const session = useSession();
  const line = useWorkbench((state) => state.line);
  const [remark, setRemark] = useState('');
  const [revisions, setRevisions] = useState<readonly RevisionLine[] | null>(null);
  const [hasDialogs, setHasDialogs] = useState(false);
  useEffect(() => {
    void session.host.about({}).then((answer) => setHasDialogs(answer.ok && answer.value.hasDialogs));
  }, [session]);
  const t = texts.history;
  const refresh = () => {
    if (line)
      void session.host.listRevisions({ id: line.id }).then((answer) => setRevisions(answer.ok ? answer.value : []));
  };
  useEffect(refresh, [session, line]);
  const make = async () => {
    await session.saveRevision(remark);
    setRemark('');
    refresh();
  };
  const mirror = async () => {
    if (!line) return;
    const { text } = await session.engine.ask('text', null);
    const answer = await session.host.mirrorDocument({ id: line.id, text, handle: null, ask: true });
    if (answer.ok) useWorkbench.setState({ line: answer.value });
    else notify('loud', answer.refusal);
  };
  const bringBack = async (number: number) => {
    if (!line) return;
    const { text } = valueOf(await session.host.readRevision({ id: line.id, number }));
    await session.edit({ kind: 'replaceDocument', document: readDocumentText(text) });
    onClose();
  };
  return (
    <Dialog title={t.title} onClose={onClose}>
      <p className="quiet">{t.lead}</p>
      <form
        className="making"
        onSubmit={(event) => {
          event.preventDefault();
          void make();
        }}
      >
        <input
          type="text"
          data-first
          aria-label={t.remark}
          placeholder={t.remark}
          maxLength={400}
          value={remark}
          onChange={({ target }) => setRemark(target.value)}
        />
        <button type="submit" className="primary" disabled={!line}>
          {t.make}
        </button>
      </form>
      {!line && <p className="loud">{t.needsStore}</p>}
      {line && revisions !== null && revisions.length === 0 && <p className="quiet">{t.none}</p>}
      <ul className="revisions">
        {[...(revisions ?? none)].reverse().map(({ number, made, remark: said, documentHash }) => (
          <li key={number}>
            <strong>{t.revision(number)}</strong>
            <span className="remark">{said}</span>
            <span className="quiet small">
              {localTime(made)} <code>{documentHash.slice(0, 12)}</code>
            </span>
            <button type="button" className="link small" onClick={() => void bringBack(number)}>
              {t.bringBack}
            </button>
          </li>
        ))}
      </ul>
      <h3>{t.files}</h3>
      <div className="acts">
        <button type="button" onClick={() => void saveFile(session)}>
          {t.saveFile}
        </button>
        <button type="button" disabled={!line || !hasDialogs} onClick={() => void mirror()}>
          {t.mirror}
        </button>
      </div>
      <p className="quiet small">{line?.file ? t.mirrored(line.file) : hasDialogs ? t.mirrorHelp : t.mirrorNeeds}</p>
    </Dialog>
  );
}
