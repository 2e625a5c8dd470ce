import { useEffect, useState } from 'react';
import type { Section } from '../../core/note/note.ts';
import { Refusal } from '../../core/refusal.ts';
import { useSession } from './session-context.ts';
import { useWorkbench } from './workbench.ts';

/** A section of the note for the shown option, asked anew whenever the result changes; null until it is there. */
export function useSection(name: 'fatigue' | 'durability' | 'against' | 'recovery'): Section | null {
  const { engine } = useSession();
  const result = useWorkbench((state) => state.result);
  const [section, setSection] = useState<Section | null>(null);
  useEffect(() => {
    if (!result) return;
    let current = true;
    engine.ask(name, { option: result.option }).then(
      (made) => current && setSection(made),
      (error: unknown) => {
        // The document has a fault that is told at its field.
        if (!(error instanceof Refusal)) throw error;
        if (current) setSection(null);
      },
    );
    return () => {
      current = false;
    };
  }, [engine, name, result]);
  return section;
}
