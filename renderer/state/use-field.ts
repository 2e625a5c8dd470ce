import { optionalParts, valueAt, type FieldPath, type Json } from '../../core/document/edit.ts';
import type { RawDocument } from '../../core/document/read-document.ts';
import type { RefusalText } from '../../core/refusal.ts';
import { useSession } from './session-context.ts';
import { useWorkbench } from './workbench.ts';

/** A field of the document under the shown option. */
export interface Field {
  /** As typed, and as read (`{ si, typed }` for a quantity); undefined where there is none or it could not be read. */
  readonly raw: unknown;
  readonly read: unknown;
  readonly fault: RefusalText | null;
  /** The shown option differs from its base here. */
  readonly differs: boolean;
  readonly set: (value: Json) => void;
  readonly clear: () => void;
}

/** Reads a field and hands back edits: in the shown option where options may differ, else in the document itself. */
export function useField(path: FieldPath): Field {
  const session = useSession();
  const key = path.join('.');
  const raw = useWorkbench(({ document }) => valueAt(document?.laid, path));
  const read = useWorkbench(({ document }) => valueAt(document?.read, path));
  const fault = useWorkbench(({ document }) => faultAt(document?.faults ?? [], key));
  const option = useWorkbench(({ document }) => document?.option ?? null);
  const target = optionalParts.has(path[0]) ? option : null;
  const differs = useWorkbench(({ document }) => target !== null && differsAt(document?.raw, target, path));
  return {
    raw,
    read,
    fault,
    differs,
    set: (value) => void session.edit({ kind: 'setField', option: target, path, value }),
    clear: () => void session.edit({ kind: 'clearField', option: target, path }),
  };
}

/** The fault at a field or inside it; a fault of the option's document has the option's name before the path. */
export function faultAt(faults: readonly RefusalText[], key: string): RefusalText | null {
  const bare = (where: RefusalText['where']) =>
    String(where?.['path'] ?? '').replace(/^options\.[^.]+\.(?!changes|id|title|base)/, '');
  return (
    faults.find(({ where }) => bare(where) === key) ??
    faults.find(({ where }) => bare(where).startsWith(`${key}.`)) ??
    null
  );
}

function differsAt(raw: RawDocument | undefined, option: string, path: FieldPath): boolean {
  const options = raw?.['options'];
  if (!Array.isArray(options)) return false;
  const found = (options as { readonly id: string; readonly changes: unknown }[]).find(({ id }) => id === option);
  let value: unknown = found?.changes;
  for (const key of path) {
    if (Array.isArray(value)) return true;
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return false;
    value = (value as Record<string, unknown>)[key];
  }
  return true;
}
