import { useEffect, useRef, type ReactNode } from 'react';
import { texts } from '../texts.ts';
import './dialog.css';

/** A dialog of the page: the browser keeps the focus inside and gives it back. It begins at what has `data-first`. */
export function Dialog({ title, onClose, children }: { title: string; onClose: () => void; children: ReactNode }) {
  const frame = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const dialog = frame.current;
    dialog?.showModal();
    // The browser would begin at the first button, which closes.
    dialog?.querySelector<HTMLElement>('[data-first]')?.focus();
    return () => dialog?.close();
  }, []);
  return (
    <dialog
      ref={frame}
      aria-label={title}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onClick={(event) => event.target === frame.current && onClose()}
    >
      <header>
        <h2>{title}</h2>
        <button type="button" onClick={onClose}>
          {texts.dialog.close}
        </button>
      </header>
      {children}
    </dialog>
  );
}
