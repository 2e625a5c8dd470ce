import { useMemo, useState } from 'react';
import { Dialog } from '../parts/Dialog.tsx';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { findables } from './findables.ts';

const most = 14;

/** Finds any field, check, bay, tube or option by typing parts of its words. */
export function FinderDialog({ onClose }: { onClose: () => void }) {
  const session = useSession();
  const result = useWorkbench((state) => state.result);
  const comparison = useWorkbench((state) => state.comparison);
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const all = useMemo(
    () => findables({ result, comparison }, (option) => void session.show(option)),
    [result, comparison, session],
  );
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const found = all
    .filter(({ title, kind }) => words.every((word) => `${title} ${kind}`.toLowerCase().includes(word)))
    .slice(0, most);
  const go = (n: number) => {
    const chosen = found[n];
    if (!chosen) return;
    onClose();
    chosen.go();
  };
  return (
    <Dialog title={texts.finder.title} onClose={onClose}>
      <div className="finder">
        <input
          type="text"
          role="combobox"
          aria-expanded="true"
          aria-controls="found"
          aria-activedescendant={found[at] ? `found-${at}` : undefined}
          aria-label={texts.finder.title}
          placeholder={texts.finder.hint}
          data-first
          value={typed}
          onChange={({ target }) => {
            setTyped(target.value);
            setAt(0);
          }}
          onKeyDown={(event) => {
            if (event.key === 'ArrowDown') setAt(Math.min(at + 1, found.length - 1));
            else if (event.key === 'ArrowUp') setAt(Math.max(at - 1, 0));
            else if (event.key === 'Enter') go(at);
            else return;
            event.preventDefault();
          }}
        />
        {found.length === 0 && <p className="quiet">{texts.finder.none}</p>}
        <ul id="found" role="listbox" aria-label={texts.finder.title}>
          {found.map(({ title, kind }, n) => (
            <li
              key={`${kind}|${title}|${n}`}
              id={`found-${n}`}
              role="option"
              aria-selected={n === at}
              onClick={() => go(n)}
              onMouseMove={() => setAt(n)}
            >
              <span>{title}</span>
              <span className="quiet">{kind}</span>
            </li>
          ))}
        </ul>
      </div>
    </Dialog>
  );
}
