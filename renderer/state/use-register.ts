import { useCallback, useEffect, useState } from 'react';
import type { IssueView } from '../../core/note/issue-view.ts';
import { valueOf } from '../../core/host/answer.ts';
import { Refusal } from '../../core/refusal.ts';
import { said } from './said.ts';
import { useSession } from './session-context.ts';
import { useWorkbench } from './workbench.ts';

/** The register of the open document's notes, and where the note of the shown option stands by it. */
export interface ShownRegister {
  /** Its text as it is kept; null before its first entry. */
  readonly text: string | null;
  readonly view: IssueView | null;
  /** Keeps a register that goes on from this one, and shows it. Rejects with the store's refusal. */
  readonly keep: (text: string) => Promise<void>;
}

/** Null where the document is in no store: then nothing keeps a register. */
export function useRegister(): ShownRegister | null {
  const { host, engine } = useSession();
  const id = useWorkbench(({ line }) => line?.id ?? null);
  const result = useWorkbench((state) => state.result);
  const [text, setText] = useState<string | null | undefined>(undefined);
  const [view, setView] = useState<IssueView | null>(null);
  const read = useCallback(async () => {
    if (id !== null) setText(valueOf(await host.readRegister({ id })).text);
  }, [host, id]);
  useEffect(() => void said(read), [read]);
  useEffect(() => {
    if (!result || text === undefined) return;
    let current = true;
    engine.ask('issue', { option: result.option, register: text }).then(
      (made) => current && setView(made),
      (error: unknown) => {
        // The document has a fault that is told at its field.
        if (!(error instanceof Refusal)) throw error;
        if (current) setView(null);
      },
    );
    return () => {
      current = false;
    };
  }, [engine, result, text]);
  if (id === null) return null;
  return {
    text: text ?? null,
    view,
    keep: async (longer) => {
      try {
        valueOf(await host.keepRegister({ id, text: longer }));
      } finally {
        await read();
      }
    },
  };
}
