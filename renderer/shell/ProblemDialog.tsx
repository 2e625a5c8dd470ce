import { useState } from 'react';
import { programVersion } from '../../core/result.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { saveBytes } from '../parts/save-bytes.ts';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';

/** Writes a readable file about a problem. Nothing is sent, and the document goes in only when that is ticked. */
export function ProblemDialog({ onClose }: { onClose: () => void }) {
  const { host, engine } = useSession();
  const [what, setWhat] = useState('');
  const [withDocument, setWithDocument] = useState(false);
  const t = texts.problem;
  const save = async () => {
    const { document, result, notices } = useWorkbench.getState();
    const about = await host.about({});
    const lines = [
      `${texts.program} ${programVersion}`,
      ...(about.ok ? Object.entries(about.value.versions).map(([name, version]) => `${name} ${version}`) : []),
      navigator.userAgent,
      `${window.innerWidth} × ${window.innerHeight}`,
      '',
      what,
      '',
      ...notices.map((notice) => `${notice.what}. ${notice.mend}`),
      `Faults: ${document?.faults.length ?? 0}; rows: ${result?.rows.length ?? 0}`,
      ...(withDocument ? ['', (await engine.ask('text', null)).text] : []),
    ];
    await saveBytes(host, 'stillplate-problem.txt', new TextEncoder().encode(lines.join('\n')), 'text/plain');
    onClose();
  };
  return (
    <Dialog title={t.title} onClose={onClose}>
      <p>{t.lead}</p>
      <label>
        {t.what}
        <textarea rows={6} data-first value={what} onChange={({ target }) => setWhat(target.value)} />
      </label>
      <p>
        <label className="tick">
          <input type="checkbox" checked={withDocument} onChange={({ target }) => setWithDocument(target.checked)} />
          {t.withDocument}
        </label>
      </p>
      <p>
        <button type="button" className="primary" onClick={() => void save()}>
          {t.save}
        </button>
      </p>
    </Dialog>
  );
}
