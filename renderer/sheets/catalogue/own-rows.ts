import { valueAt, type Json } from '../../../core/document/edit.ts';
import { listOfKind } from '../../../core/document/row-like.ts';
import type { UserRowKind } from '../../../core/document/user-rows.ts';
import type { Session } from '../../state/session.ts';
import { useWorkbench } from '../../state/workbench.ts';

export type OwnRow = { readonly [name: string]: Json };

export const rowKinds = Object.keys(listOfKind) as readonly UserRowKind[];

/** The document's own rows of a kind, as they were typed. */
export function ownRowsOf(laid: unknown, kind: UserRowKind): readonly OwnRow[] {
  const rows = valueAt(laid, ['catalogue', listOfKind[kind]]);
  return Array.isArray(rows) ? (rows as readonly OwnRow[]) : [];
}

/** A row as an attribute of what shows it. */
export const placeOf = (kind: UserRowKind, id: string): string => `${kind} ${id}`;

/** Adds a row to the document's own, and shows it. */
export async function addOwnRow(session: Session, kind: UserRowKind, row: OwnRow): Promise<void> {
  const value = [...ownRowsOf(useWorkbench.getState().document?.laid, kind), row];
  await session.edit({ kind: 'setField', option: null, path: ['catalogue', listOfKind[kind]], value });
  showOwnRow(kind, idOf(row));
}

/** Brings a row that was just added into sight, its first field ready to be typed into: once the sheet has drawn it. */
function showOwnRow(kind: UserRowKind, id: string): void {
  requestAnimationFrame(() =>
    requestAnimationFrame(() => {
      const row = document.querySelector(`[data-own-row="${CSS.escape(placeOf(kind, id))}"]`);
      row?.scrollIntoView({ block: 'start' });
      row?.querySelector('input')?.focus({ preventScroll: true });
    }),
  );
}

export const idOf = (row: OwnRow): string => (typeof row['id'] === 'string' ? row['id'] : '');
