import { create } from 'zustand';
import type { UserRowKind } from '../../../core/document/user-rows.ts';
import { valueOf } from '../../../core/host/answer.ts';
import type { Host } from '../../../core/host/host.ts';
import { idOf, rowKinds, type OwnRow } from './own-rows.ts';

/** A row kept on this machine for all plates; without a row where what is kept cannot be read. */
export interface KeptRow {
  readonly name: string;
  readonly kept: { readonly kind: UserRowKind; readonly row: OwnRow } | null;
}

/** The rows kept on this machine, read when the sheet is opened and after each change. */
export const useKept = create<{
  readonly rows: readonly KeptRow[];
  readonly refresh: (host: Host) => Promise<void>;
}>((set) => ({
  rows: [],
  refresh: async (host) => {
    const kept = valueOf(await host.listCatalogueAdditions({}));
    set({ rows: kept.map(({ name, text }) => ({ name, kept: keptIn(text) })) });
  },
}));

/** A row as the store keeps it: one text for each kind and name. */
export const additionOf = (kind: UserRowKind, row: OwnRow): { readonly name: string; readonly text: string } => ({
  name: `${kind} ${idOf(row)}`.slice(0, 400),
  text: JSON.stringify({ kind, row }),
});

function keptIn(text: string): KeptRow['kept'] {
  try {
    const { kind, row } = JSON.parse(text) as { kind?: UserRowKind; row?: OwnRow };
    const isRow = typeof row === 'object' && row !== null && idOf(row) !== '';
    return isRow && kind && rowKinds.includes(kind) ? { kind, row } : null;
  } catch {
    // Said beside its name: it is for the person to forget it.
    return null;
  }
}
