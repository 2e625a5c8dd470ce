import { useEffect } from 'react';
import { useSession } from './session-context.ts';
import { openSettings } from './settings.ts';

let opened = false;

/** Brings the settings of this machine back, once for a page. */
export function useKeptSettings(): void {
  const { host } = useSession();
  useEffect(() => {
    if (opened) return;
    opened = true;
    void openSettings(host);
  }, [host]);
}
