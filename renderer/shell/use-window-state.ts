import { useEffect } from 'react';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';

/** Tells the desktop what the window shows: its title, its file, and whether edits are not kept yet. */
export function useWindowState(): void {
  const session = useSession();
  const title = useWorkbench(({ page, line }) => (page === 'work' ? (line?.name ?? 'Stillplate') : 'Stillplate'));
  const file = useWorkbench(({ line }) => line?.file ?? null);
  const unsaved = useWorkbench(({ keeping }) => keeping.state !== 'kept');
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
