import type { Branch } from './tree.ts';
import type { Column } from './pages.ts';
import type { Ink } from './ink.ts';

/** What every setter of a block works with. */
export interface Desk {
  readonly ink: Ink;
  readonly column: Column;
  /** The node that the block's own nodes go under; made when its first piece is put on a page. */
  readonly under: () => Branch;
  /** The next number of a table or figure, counted through the whole note. */
  readonly number: (kind: 'Table' | 'Figure') => number;
}

/** Makes a node when it is first asked for, so that nodes stand in the order of the page. */
export function lazily<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}
