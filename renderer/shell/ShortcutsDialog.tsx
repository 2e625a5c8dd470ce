import { Dialog } from '../parts/Dialog.tsx';
import { texts } from '../texts.ts';
import { shortcuts } from './shortcuts.ts';

/** Every key and what it does. */
export function ShortcutsDialog({ onClose }: { onClose: () => void }) {
  const mac = navigator.platform.startsWith('Mac');
  return (
    <Dialog title={texts.shortcuts.list} onClose={onClose}>
      <dl className="keys">
        {shortcuts.map(({ keys, title }) => (
          <div key={keys}>
            <dt>{title}</dt>
            <dd>
              <kbd>{inWords(keys, mac)}</kbd>
            </dd>
          </div>
        ))}
        {texts.shortcuts.others.map(([title, keys]) => (
          <div key={keys}>
            <dt>{title}</dt>
            <dd>
              <kbd>{keys}</kbd>
            </dd>
          </div>
        ))}
      </dl>
      <p className="quiet small">{texts.shortcuts.inPicture}</p>
    </Dialog>
  );
}

/** As keyboards print them. */
const inWords = (keys: string, mac: boolean): string =>
  keys
    .replace('Mod', mac ? '⌘' : 'Ctrl')
    .replace('ArrowRight', '→')
    .replace('ArrowLeft', '←')
    .replace('Escape', 'Esc')
    .split('+')
    .join(' + ');
