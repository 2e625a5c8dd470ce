import { Dialog } from '../parts/Dialog.tsx';
import { texts } from '../texts.ts';
import { shortcuts } from './shortcuts.ts';

/** Every key and what it does. */
export function ShortcutsDialog({ onClose }: { onClose: () => void }) {
  const mac = navigator.platform.startsWith('Mac');
  return (
    <Dialog title={texts.shortcuts.list} onClose={onClose}>
      <dl>
        {shortcuts.map(({ keys, title }) => (
          <div key={keys} className="pair">
            <dt>
              <kbd>{keys.replace('Mod', mac ? '⌘' : 'Ctrl')}</kbd>
            </dt>
            <dd>{title}</dd>
          </div>
        ))}
      </dl>
    </Dialog>
  );
}
