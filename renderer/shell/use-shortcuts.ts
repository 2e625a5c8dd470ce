import { useEffect } from 'react';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { shortcuts } from './shortcuts.ts';

/** Listens to the keyboard. A key without Ctrl, Command or Alt is left to the field that has the focus; so are undo and redo while a text is typed. */
export function useShortcuts(): void {
  const session = useSession();
  useEffect(() => {
    const hear = (event: KeyboardEvent) => {
      if (event.defaultPrevented) return;
      const keys = keysOf(event);
      const found = shortcuts.find((shortcut) => shortcut.keys === keys);
      if (!found || !(found.everywhere || useWorkbench.getState().page === 'work')) return;
      const target = event.target as HTMLElement;
      const typing = target.matches('input:not([type=checkbox]), textarea') && !target.closest('[data-shortcuts]');
      const ofText =
        keys === '?' || keys === 'Escape' || keys === 'Mod+Z' || keys === 'Mod+Shift+Z' || keys === 'Mod+Y';
      if (typing && ofText && (target as HTMLInputElement).value !== (target as HTMLInputElement).defaultValue) return;
      if (typing && (keys === '?' || keys === 'Escape')) return;
      event.preventDefault();
      found.act(session);
    };
    window.addEventListener('keydown', hear);
    return () => window.removeEventListener('keydown', hear);
  }, [session]);
}

function keysOf({ key, ctrlKey, metaKey, altKey, shiftKey, code }: KeyboardEvent): string {
  // Alt with a digit gives another sign on some keyboards: the place of the key says which digit.
  const digit = altKey ? /^Digit(\d)$/.exec(code)?.[1] : undefined;
  const name = digit ?? (key.length === 1 ? key.toUpperCase() : key);
  const withShift = shiftKey && key.length > 1 ? true : shiftKey && (ctrlKey || metaKey);
  return [ctrlKey || metaKey ? 'Mod' : '', altKey ? 'Alt' : '', withShift ? 'Shift' : '', name]
    .filter(Boolean)
    .join('+');
}
