import { useEffect, useState } from 'react';
import type { Section } from '../../core/note/note.ts';
import { Refusal } from '../../core/refusal.ts';
import { useSession } from '../state/session-context.ts';
import { useWorkbench, type OpenCheck } from '../state/workbench.ts';

/** A check at its place in full, as the note prints it; asked anew whenever the result changes. Null until it is there. */
export function useExplained({ check, place, situation }: OpenCheck): Section | null {
  const { engine } = useSession();
  const result = useWorkbench((state) => state.result);
  const [section, setSection] = useState<Section | null>(null);
  useEffect(() => {
    let current = true;
    engine.ask('explain', { option: result?.option ?? null, check, place, situation }).then(
      (made) => current && setSection(made),
      (error: unknown) => {
        // The check is no longer made there, or the document has a fault that is told elsewhere.
        if (!(error instanceof Refusal)) throw error;
        if (current) setSection(null);
      },
    );
    return () => {
      current = false;
    };
  }, [engine, result, check, place, situation]);
  return section;
}
