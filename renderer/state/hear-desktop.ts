import type { MenuCommand } from '../../core/host/host-schema.ts';
import { openHandbook } from './handbook-place.ts';
import { openFile } from './open-file.ts';
import { printBytes } from './print-bytes.ts';
import { save, saveFile } from './save-file.ts';
import type { Session } from './session.ts';
import { said } from './said.ts';
import { takeOverOptions } from './take-over-options.ts';
import { currentNote } from './use-note-job.ts';
import { notify, useWorkbench } from './workbench.ts';

/**
 * Hears the desktop: its menu, and files that the system asks us to open. Called in the task that opens the host: main
 * hands over what it held back as soon as anything of the page listens, and a view listens only once it is drawn.
 */
export function hearDesktop(session: Session): void {
  session.host.listen((event) => {
    if (event.kind === 'menu') obey(session, event.command);
    else if (event.kind === 'refused') notify('loud', event);
    else if (event.kind === 'open-file') {
      const { name, text, handle } = event.file;
      void said(() => session.openText(name.replace(/\.stillplate(\.json)?$|\.json$/i, ''), text, handle));
    }
  });
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
