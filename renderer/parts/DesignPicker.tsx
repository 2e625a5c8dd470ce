import { useState } from 'react';
import { valueAt, type Json } from '../../core/document/edit.ts';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';

/** Which panel design the fields below are about; new ones, other names, and taking one out. */
export function DesignPicker({
  names,
  shown,
  onShow,
}: {
  names: readonly string[];
  shown: string | null;
  onShow: (design: string) => void;
}) {
  const session = useSession();
  const option = useWorkbench((state) => state.document?.option ?? null);
  const laid = useWorkbench((state) => state.document?.laid);
  const uses = useWorkbench((state) => state.result?.bays.filter(({ design }) => design === shown).length ?? 0);
  const [name, setName] = useState<string | null>(null);
  const copy = async () => {
    const base = shown ?? 'panel';
    let n = 2;
    while (names.includes(`${base} ${n}`)) n++;
    await session.edit({
      kind: 'setField',
      option,
      path: ['designs', `${base} ${n}`],
      value: valueAt(laid, ['designs', base]) as Json,
    });
    onShow(`${base} ${n}`);
  };
  const rename = async () => {
    if (shown !== null && name !== null && name !== '' && name !== shown) {
      await session.edit({ kind: 'renameDesign', from: shown, to: name });
      onShow(name);
    }
    setName(null);
  };
  return (
    <div className="design-picker">
      <label>
        <strong>{texts.panels.design}</strong>
        <select value={shown ?? ''} onChange={({ target }) => onShow(target.value)}>
          {names.map((each) => (
            <option key={each}>{each}</option>
          ))}
        </select>
      </label>
      <span className="quiet small">{texts.panels.usedBy(uses)}</span>
      <div className="acts">
        <button type="button" className="link small" disabled={shown === null} onClick={() => void copy()}>
          {texts.panels.newDesign}
        </button>
        {name === null ? (
          <button type="button" className="link small" disabled={shown === null} onClick={() => setName(shown)}>
            {texts.panels.rename}
          </button>
        ) : (
          <input
            type="text"
            aria-label={texts.panels.rename}
            autoFocus
            value={name}
            onChange={({ target }) => setName(target.value)}
            onBlur={() => void rename()}
            onKeyDown={(event) => {
              if (event.key === 'Enter') void rename();
              if (event.key !== 'Escape') return;
              event.preventDefault();
              setName(null);
            }}
          />
        )}
        <button
          type="button"
          className="link small"
          disabled={shown === null || uses > 0}
          title={uses > 0 ? texts.panels.usedBy(uses) : undefined}
          onClick={() => void session.edit({ kind: 'clearField', option, path: ['designs', shown!] })}
        >
          {texts.panels.remove}
        </button>
      </div>
    </div>
  );
}
