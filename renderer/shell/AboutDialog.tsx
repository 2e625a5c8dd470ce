import { useEffect, useState } from 'react';
import type { Gives } from '../../core/host/host.ts';
import { programVersion } from '../../core/result.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { CopyButton } from '../parts/CopyButton.tsx';
import { saveBytes } from '../parts/save-bytes.ts';
import { largestText, smallestText, useSettings } from '../state/settings.ts';
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
      <Appearance />
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
      <div className="acts">
        <CopyButton label={t.copy} what={() => lines.join('\n')} />
        <button type="button" className="link small" onClick={() => useWorkbench.setState({ dialog: 'problem' })}>
          {t.problem}
        </button>
        <button
          type="button"
          className="link small"
          onClick={() => void backUp()}
          disabled={about === null || about.storeFault !== null}
        >
          {t.backUp}
        </button>
        <button
          type="button"
          className="link small"
          onClick={restore}
          disabled={about === null || about.storeFault !== null}
        >
          {t.restore}
        </button>
      </div>
    </Dialog>
  );
}

/** Size of text, and light or dark. Motion follows the system. */
function Appearance() {
  const { textScale, theme } = useSettings();
  const t = texts.about;
  return (
    <div className="appearance">
      <label htmlFor="text-size">{t.textSize}</label>
      <span className="size">
        <input
          id="text-size"
          type="range"
          min={smallestText}
          max={largestText}
          step={0.05}
          value={textScale}
          onChange={({ target }) => useSettings.setState({ textScale: target.valueAsNumber })}
        />
        <output htmlFor="text-size">{Math.round(textScale * 100)} %</output>
      </span>
      <span id="theme">{t.theme}</span>
      <div className="one-of" role="group" aria-labelledby="theme">
        {(['system', 'light', 'dark'] as const).map((each) => (
          <button
            key={each}
            type="button"
            aria-pressed={theme === each}
            onClick={() => useSettings.setState({ theme: each })}
          >
            {t.themes[each]}
          </button>
        ))}
      </div>
    </div>
  );
}
