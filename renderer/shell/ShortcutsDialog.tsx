import { Dialog } from '../parts/Dialog.tsx';
import { texts } from '../texts.ts';
import { KeyList } from './KeyList.tsx';

/** Every key and what it does. */
export function ShortcutsDialog({ onClose }: { onClose: () => void }) {
  return (
    <Dialog title={texts.shortcuts.list} onClose={onClose}>
      <KeyList />
    </Dialog>
  );
}
