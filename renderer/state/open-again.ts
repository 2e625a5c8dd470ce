import { said } from './said.ts';
import type { Session } from './session.ts';
import type { SheetName } from './stages.ts';
import { useWorkbench } from './workbench.ts';

/** What stands open, kept by the browser for this tab. */
const key = 'stillplate-open';

/** A page that is loaded anew, by hand or after it crashed, opens again what stood open: at its last edit, on its sheet. */
export async function openAgain(session: Session): Promise<void> {
  const [load] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  const kept = load?.type === 'reload' ? sessionStorage.getItem(key) : null;
  useWorkbench.subscribe(({ line, sheet }) => {
    if (line) sessionStorage.setItem(key, JSON.stringify({ id: line.id, sheet }));
    else sessionStorage.removeItem(key);
  });
  if (!kept) return;
  const { id, sheet } = JSON.parse(kept) as { id: string; sheet: SheetName };
  await said(() => session.openDocument(id));
  useWorkbench.setState({ sheet });
}
