import { useEffect, useState } from 'react';
import type { FieldPath } from '../../core/document/edit.ts';
import type { Kind } from '../../core/quantity/kinds.ts';
import { Refusal, type RefusalText } from '../../core/refusal.ts';
import { useField } from '../state/use-field.ts';
import { useSession } from '../state/session-context.ts';
import { FieldFrame } from './FieldFrame.tsx';
import { useTyped } from './use-typed.ts';

/** A quantity in any unit: keeps what was typed, shows its SI value, and says beside the field what is wrong with it. */
export function QuantityField({
  path,
  kind,
  label,
  help,
  optional = false,
}: {
  path: FieldPath;
  kind: Kind;
  label: string;
  help?: string;
  /** May be left out: an emptied field takes it out of the document. */
  optional?: boolean;
}) {
  const field = useField(path);
  const held = typedOf(field.raw);
  const { typed, control } = useTyped(held, (text) =>
    text.trim() === '' && optional ? field.clear() : field.set(text),
  );
  const meaning = useMeaning(kind, typed);
  const fault = typed === held ? field.fault : meaning.fault;
  return (
    <FieldFrame
      label={label}
      help={help}
      si={fault || sameText(meaning.text, typed) ? undefined : meaning.text}
      fault={fault}
      differs={field.differs}
      onReset={field.clear}
    >
      {(frame) => <input type="text" spellCheck={false} autoComplete="off" {...frame} {...control} />}
    </FieldFrame>
  );
}

/** A value typed in its SI unit needs no second telling. */
const sameText = (text: string | undefined, typed: string): boolean =>
  text?.replaceAll(/\s/g, '') === typed.replaceAll(/\s/g, '');

/** As typed: a bare text, or the `typed` of a pair. */
function typedOf(raw: unknown): string {
  if (typeof raw === 'string') return raw;
  if (typeof raw === 'object' && raw !== null && 'typed' in raw) return String(raw.typed);
  return raw === undefined || raw === null ? '' : JSON.stringify(raw);
}

/** What a typed text means, asked of the engine while it is typed. */
function useMeaning(kind: Kind, typed: string): { readonly text?: string; readonly fault: RefusalText | null } {
  const { engine } = useSession();
  const [meaning, setMeaning] = useState<{ text?: string; fault: RefusalText | null }>({ fault: null });
  useEffect(() => {
    let current = true;
    const set = (now: { text?: string; fault: RefusalText | null }) => {
      if (current) setMeaning(now);
    };
    if (typed.trim() === '') set({ fault: null });
    else
      engine.ask('readQuantity', { kind, typed }).then(
        ({ text }) => set({ text, fault: null }),
        (error: unknown) => {
          if (!(error instanceof Refusal)) throw error;
          set({ fault: error });
        },
      );
    return () => {
      current = false;
    };
  }, [engine, kind, typed]);
  return meaning;
}
