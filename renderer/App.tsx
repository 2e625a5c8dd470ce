import { Handbook } from './handbook/Handbook.tsx';
import { NewPlatePage } from './start/NewPlatePage.tsx';
import { StartPage } from './start/StartPage.tsx';
import { Dialogs } from './shell/Dialogs.tsx';
import { Notices } from './shell/Notices.tsx';
import { useKeptSettings } from './state/use-kept-settings.ts';
import { useWindowState } from './shell/use-window-state.ts';
import { useShortcuts } from './shell/use-shortcuts.ts';
import { Work } from './shell/Work.tsx';
import { useWorkbench } from './state/workbench.ts';

/** The window: the start page, a new plate, or a document at work. */
export function App() {
  const page = useWorkbench((state) => state.page);
  const hasHandbook = useWorkbench((state) => state.handbook.isOpen);
  useShortcuts();
  useWindowState();
  useKeptSettings();
  return (
    <>
      {page !== 'work' && hasHandbook && (
        <main className="handbook-page">
          <Handbook />
        </main>
      )}
      {page === 'start' && !hasHandbook && <StartPage />}
      {page === 'new' && !hasHandbook && <NewPlatePage />}
      {page === 'work' && <Work />}
      <Notices />
      <Dialogs />
    </>
  );
}
