import { useWorkbench } from '../state/workbench.ts';
import { AboutDialog } from './AboutDialog.tsx';
import { FinderDialog } from './FinderDialog.tsx';
import { HistoryDialog } from './HistoryDialog.tsx';
import { ProblemDialog } from './ProblemDialog.tsx';
import { ShortcutsDialog } from './ShortcutsDialog.tsx';

const close = () => useWorkbench.setState({ dialog: null });

/** The one dialog that is open, if any. */
export function Dialogs() {
  const dialog = useWorkbench((state) => state.dialog);
  switch (dialog) {
    case 'finder':
      return <FinderDialog onClose={close} />;
    case 'shortcuts':
      return <ShortcutsDialog onClose={close} />;
    case 'about':
      return <AboutDialog onClose={close} />;
    case 'problem':
      return <ProblemDialog onClose={close} />;
    case 'history':
      return <HistoryDialog onClose={close} />;
    default:
      return null;
  }
}
