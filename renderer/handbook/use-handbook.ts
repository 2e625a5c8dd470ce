import { useEffect, useState } from 'react';
import type { Chapter } from '../../core/handbook/handbook.ts';
import { useSession } from '../state/session-context.ts';

/** The same for every plate, so it is asked for once. */
let asked: Promise<readonly Chapter[]> | null = null;

/** The chapters of the handbook; null until the engine has written them out. */
export function useHandbook(): readonly Chapter[] | null {
  const { engine } = useSession();
  const [chapters, setChapters] = useState<readonly Chapter[] | null>(null);
  useEffect(() => {
    asked ??= engine.ask('handbook', null);
    void asked.then(setChapters);
  }, [engine]);
  return chapters;
}
