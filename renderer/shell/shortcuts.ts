import type { Session } from '../state/session.ts';
import { closeHandbook, openHandbook } from '../state/handbook-place.ts';
import { topics } from '../state/stages.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';

/** One thing that a key does. `keys` as a keyboard names them, with Mod for Ctrl or Command. */
export interface Shortcut {
  readonly keys: string;
  readonly title: string;
  readonly act: (session: Session) => void;
  /** Also where no plate is open. */
  readonly everywhere?: true;
}

const t = texts.shortcuts;

/** Every shortcut of the window, in the order of their list. */
export const shortcuts: readonly Shortcut[] = [
  { keys: 'Mod+K', title: t.find, act: () => useWorkbench.setState({ dialog: 'finder' }) },
  { keys: 'Mod+Z', title: t.undo, act: (session) => void session.undo() },
  { keys: 'Mod+Shift+Z', title: t.redo, act: (session) => void session.redo() },
  { keys: 'Mod+Y', title: t.redo, act: (session) => void session.redo() },
  { keys: 'Mod+S', title: t.save, act: () => useWorkbench.setState({ dialog: 'history' }) },
  // The first nine have their number, the note has 0; the finder leads to all.
  ...topics.flatMap((name, n) => {
    const digit = name === 'note' ? 0 : n < 9 ? n + 1 : null;
    const act = (): void => useWorkbench.setState({ sheet: name });
    return digit === null ? [] : [{ keys: `Alt+${digit}`, title: t.sheet(texts.sheets[name]), act }];
  }),
  { keys: 'Mod+Shift+ArrowRight', title: t.nextOption, act: (session) => step(session, 1) },
  { keys: 'Mod+Shift+ArrowLeft', title: t.lastOption, act: (session) => step(session, -1) },
  {
    keys: 'F1',
    title: t.handbook,
    act: () => (useWorkbench.getState().handbook.isOpen ? closeHandbook() : openHandbook()),
    everywhere: true,
  },
  { keys: '?', title: t.list, act: () => useWorkbench.setState({ dialog: 'shortcuts' }) },
  {
    keys: 'Escape',
    title: t.close,
    act: () => useWorkbench.setState({ dialog: null, openCheck: null, selection: null }),
  },
];

/** Shows the next or the one before of the options. */
function step(session: Session, by: number): void {
  const { comparison, document } = useWorkbench.getState();
  const ids = comparison?.options.map(({ id }) => id) ?? [];
  const at = ids.indexOf(document?.option ?? null);
  if (ids.length > 1) void session.show(ids[(at + by + ids.length) % ids.length]!);
}
