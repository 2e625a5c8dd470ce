import { useEffect, useState } from 'react';
import type { Gives } from '../../core/host/host.ts';
import { programVersion } from '../../core/result.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { saveBytes } from '../parts/save-bytes.ts';
import { useSession } from '../state/session-context.ts';
import { notify, useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';

/** Versions to copy, where data lives, text size, backup. */
export function AboutDialog({ onClose }: { onClose: () => void }) {
  const { host } = useSession();
  const [about, setAbout] = useState<Gives<'about'> | null>(null);
  useEffect(() => {
    void host.about({}).then((answer) => answer.ok && setAbout(answer.value));
  }, [host]);
  const t = texts.about;
  const versions = { Stillplate: programVersion, ...about?.versions };
  const lines = Object.entries(versions).map(([name, version]) => `${name} ${version}`);
  const backUp = async () => {
    const answer = await host.backUp({});
    if (!answer.ok) return notify('loud', answer.refusal);
    await saveBytes(host, answer.value.name, answer.value.bytes, 'application/zip');
  };
  const restore = () => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = '.zip';
    input.addEventListener('change', () => {
      void (async () => {
        const [file] = input.files ?? [];
        if (!file) return;
        const answer = await host.restoreBackup({ bytes: new Uint8Array(await file.arrayBuffer()) });
        if (!answer.ok) return notify('loud', answer.refusal);
        notify('plain', { what: t.restored(answer.value.documents), mend: t.setAside(answer.value.setAside) });
        useWorkbench.setState({ page: 'start', dialog: null });
      })();
    });
    input.click();
  };
  return (
    <Dialog title={t.title} onClose={onClose}>
      <dl>
        {Object.entries(versions).map(([name, version]) => (
          <div key={name} className="pair">
            <dt>{name}</dt>
            <dd>{version}</dd>
          </div>
        ))}
        <div className="pair">
          <dt>{t.data}</dt>
          <dd>{about?.dataFolder}</dd>
        </div>
        {about?.storeFault && (
          <div className="pair">
            <dt>{t.store}</dt>
            <dd className="loud">
              {about.storeFault.what}. {about.storeFault.mend}
            </dd>
          </div>
        )}
        {about?.notices.map((notice) => (
          <div key={notice} className="pair">
            <dt>{t.store}</dt>
            <dd>{notice}</dd>
          </div>
        ))}
      </dl>
      <p className="small quiet">{t.caution}</p>
      <TextSize />
      <div className="acts">
        <button type="button" onClick={() => void navigator.clipboard.writeText(lines.join('\n'))}>
          {t.copy}
        </button>
        <button type="button" onClick={() => void backUp()} disabled={about?.storeFault != null}>
          {t.backUp}
        </button>
        <button type="button" onClick={restore} disabled={about?.storeFault != null}>
          {t.restore}
        </button>
        <button type="button" onClick={() => useWorkbench.setState({ dialog: 'problem' })}>
          {t.problem}
        </button>
        <button type="button" onClick={() => useWorkbench.setState({ dialog: 'shortcuts' })}>
          {texts.shortcuts.list}
        </button>
      </div>
    </Dialog>
  );
}

function TextSize() {
  const [scale, setScale] = useState(Number(document.documentElement.style.getPropertyValue('--text-scale') || 1));
  const set = (value: number) => {
    document.documentElement.style.setProperty('--text-scale', String(value));
    setScale(value);
  };
  return (
    <p>
      <label>
        {texts.about.textSize}{' '}
        <input
          type="range"
          min={0.85}
          max={1.6}
          step={0.05}
          value={scale}
          onChange={({ target }) => set(target.valueAsNumber)}
        />{' '}
        {Math.round(scale * 100)} %
      </label>
    </p>
  );
}
