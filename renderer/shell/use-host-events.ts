import { useEffect } from 'react';
import type { MenuCommand } from '../../core/host/host-schema.ts';
import { openHandbook } from '../state/handbook-place.ts';
import { openFile } from '../state/open-file.ts';
import { printBytes } from '../state/print-bytes.ts';
import { save, saveFile } from '../state/save-file.ts';
import type { Session } from '../state/session.ts';
import { useSession } from '../state/session-context.ts';
import { said } from '../state/said.ts';
import { takeOverOptions } from '../state/take-over-options.ts';
import { currentNote } from '../state/use-note-job.ts';
import { notify, useWorkbench } from '../state/workbench.ts';

/** Hears the desktop: its menu, and files that the system asks us to open. Tells it what the window shows. */
export function useHostEvents(): void {
  const session = useSession();
  const title = useWorkbench(({ page, line }) => (page === 'work' ? (line?.name ?? 'Stillplate') : 'Stillplate'));
  const file = useWorkbench(({ line }) => line?.file ?? null);
  const unsaved = useWorkbench(({ keeping }) => keeping.state !== 'kept');
  useEffect(
    () =>
      session.host.listen((event) => {
        if (event.kind === 'menu') obey(session, event.command);
        else if (event.kind === 'refused') notify('loud', event);
        else if (event.kind === 'open-file') {
          const { name, text, handle } = event.file;
          void said(() => session.openText(name.replace(/\.stillplate(\.json)?$|\.json$/i, ''), text, handle));
        }
      }),
    [session],
  );
  useEffect(() => {
    document.title = title === 'Stillplate' ? title : `${title} – Stillplate`;
    void session.host.showState({ title: document.title, file, unsaved });
  }, [session, title, file, unsaved]);
  // The browser asks before a window closes whose edits are not kept.
  useEffect(() => {
    if (!unsaved) return;
    const ask = (event: BeforeUnloadEvent) => event.preventDefault();
    window.addEventListener('beforeunload', ask);
    return () => window.removeEventListener('beforeunload', ask);
  }, [unsaved]);
}

function obey(session: Session, command: MenuCommand): void {
  const show = useWorkbench.setState;
  const { page } = useWorkbench.getState();
  switch (command) {
    case 'new':
      return void session.close().then(() => show({ page: 'new' }));
    case 'open':
      return void openFile(session);
    // Options of another file where a plate is open; else there is nothing that they could be options of.
    case 'import':
      return void (page === 'work' ? takeOverOptions(session) : openFile(session));
    case 'close':
      return void session.close();
    case 'undo':
      return void (page === 'work' && session.undo());
    case 'redo':
      return void (page === 'work' && session.redo());
    case 'save':
      return void (page === 'work' && save(session));
    case 'save-as':
      return void (page === 'work' && saveFile(session));
    case 'revisions':
      return show({ dialog: page === 'work' ? 'history' : null });
    case 'find':
      return show({ dialog: page === 'work' ? 'finder' : null });
    case 'note':
      return show({ sheet: 'note' });
    case 'print':
      if (page === 'work') void printNote(session);
      return;
    case 'handbook':
      return openHandbook();
    case 'shortcuts':
      return show({ dialog: 'shortcuts' });
    case 'about':
      return show({ dialog: 'about' });
  }
}

/** Prints the note of the plate as it stands, made first where there is none. */
const printNote = (session: Session): Promise<void> =>
  said(async () => {
    useWorkbench.setState({ sheet: 'note' });
    const bytes = await currentNote(session);
    if (bytes) await printBytes(session.host, bytes);
  });
