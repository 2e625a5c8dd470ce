import { useEffect, useState } from 'react';
import { valueOf } from '../../core/host/answer.ts';
import type { RevisionLine } from '../../core/host/host-schema.ts';
import { readDocumentText } from '../../core/document/read-document.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { saveBytes } from '../parts/save-bytes.ts';
import { useSession } from '../state/session-context.ts';
import { notify, useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';

/** Revisions of the document: make one, save as a file, bring one back. */
export function HistoryDialog({ onClose }: { onClose: () => void }) {
  const session = useSession();
  const line = useWorkbench((state) => state.line);
  const [remark, setRemark] = useState('');
  const [revisions, setRevisions] = useState<readonly RevisionLine[]>([]);
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
  const saveFile = async () => {
    const { text } = await session.engine.ask('text', null);
    await saveBytes(
      session.host,
      `${line?.name ?? 'plate'}.stillplate`,
      new TextEncoder().encode(text),
      'application/json',
    );
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
      <p>
        <input
          type="text"
          aria-label={t.remark}
          placeholder={t.remark}
          value={remark}
          onChange={({ target }) => setRemark(target.value)}
        />{' '}
        <button type="button" className="primary" disabled={!line} onClick={() => void make()}>
          {t.make}
        </button>
      </p>
      <ul className="recent">
        {revisions.map(({ number, made, remark: said, documentHash }) => (
          <li key={number}>
            <span className="name">
              {t.revision(number)} {said}
            </span>
            <span className="quiet small">
              {made.slice(0, 16).replace('T', ' ')} · {documentHash.slice(0, 12)}
            </span>
            <button type="button" onClick={() => void bringBack(number)}>
              {t.bringBack}
            </button>
          </li>
        ))}
      </ul>
      <div className="acts">
        <button type="button" onClick={() => void saveFile()}>
          {t.saveFile}
        </button>
        <button type="button" disabled={!line} onClick={() => void mirror()}>
          {line?.file ? t.mirrored(line.file) : t.mirror}
        </button>
      </div>
    </Dialog>
  );
}
