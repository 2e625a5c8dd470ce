import { useEffect, useRef, useState } from 'react';
import type { FromWater, ToWater } from '../../core/engine/water-service.ts';
import type { Section } from '../../core/note/note.ts';
import type { RefusalText } from '../../core/refusal.ts';
import { useWorkbench } from './workbench.ts';

/** Hydrodynamics of the shown option. `current`: of the document as it stands, not as of before. */
export interface HydrodynamicsShown {
  readonly section: Section | null;
  /** Comes after the rest; undefined while it is being worked out, null where there is none. */
  readonly closing: Section | null | undefined;
  readonly current: boolean;
  readonly refusals: readonly RefusalText[];
}

interface Told {
  readonly section: Section | null;
  readonly closing: Section | null | undefined;
  readonly edit: number;
  readonly refusals: readonly RefusalText[];
}

const nothing: Told = { section: null, closing: undefined, edit: 0, refusals: [] };

/** Asks the water's worker whenever the document changes, while a sheet shows it; the last answer stays until the next is there. */
export function useHydrodynamics(): HydrodynamicsShown {
  const view = useWorkbench((state) => state.document);
  const worker = useRef<Worker | null>(null);
  const edit = useRef(0);
  const [shown, setShown] = useState<Told>(nothing);
  const [asked, setAsked] = useState(0);
  useEffect(() => {
    const started = new Worker(new URL('water-worker.js', document.baseURI), { type: 'module' });
    worker.current = started;
    started.onmessage = ({ data }: MessageEvent<FromWater>) => {
      if (data.edit !== edit.current) return;
      if (data.kind === 'section')
        setShown({ section: data.section, closing: undefined, edit: data.edit, refusals: [] });
      else if (data.kind === 'closing') setShown((before) => ({ ...before, closing: data.section }));
      else if (data.kind === 'refused') setShown((before) => ({ ...before, edit: data.edit, refusals: data.refusals }));
      else {
        console.error(data.why);
        setShown((before) => ({ ...before, edit: data.edit, refusals: [{ what: 'Added mass and drag could not be reckoned', mend: 'Change something, and report it if it stays so.' }] })); // prettier-ignore
      }
    };
    return () => started.terminate();
  }, []);
  useEffect(() => {
    // What is wrong in the document is told at its field.
    if (!view || view.faults.length > 0) return;
    edit.current++;
    setAsked(edit.current);
    const message: ToWater = { edit: edit.current, raw: view.raw, option: view.option };
    worker.current?.postMessage(message);
  }, [view]);
  return { section: shown.section, closing: shown.closing, current: shown.edit === asked, refusals: shown.refusals };
}
