import type { Store } from '../../../electron/host/store/store.ts';
import { openStore } from '../../../electron/host/store/open-store.ts';
import { startingDocument } from '../../../core/document/starting-document.ts';
import { storeWorker } from '../bundled.ts';

export const now = '2026-05-04T10:20:30.000Z';
export const later = '2026-05-04T11:00:00.000Z';

/** A small document's text, with a name. */
export const textOf = (name: string): string => {
  const document = startingDocument('metric');
  return JSON.stringify({ ...document, project: { ...document.project, name } }, null, 2);
};

/** A store in its real thread, or an error that says why there is none. */
export async function opened(folder: string, lookEvery = 50): Promise<Store & { readonly notices: readonly string[] }> {
  const answer = await openStore({ folder, now, lookEvery }, await storeWorker());
  if (!answer.store) throw new Error(`${answer.fault.what}. ${answer.fault.mend}`);
  return { ...answer.store, notices: answer.notices };
}

/** Runs with a store and closes it. */
export async function withStore<T>(
  folder: string,
  test: (store: Awaited<ReturnType<typeof opened>>) => Promise<T>,
): Promise<T> {
  const store = await opened(folder);
  try {
    return await test(store);
  } finally {
    await store.close();
  }
}

export const edit = (n: number) => ({
  kind: 'edit' as const,
  edit: JSON.stringify({ kind: 'setField', option: null, path: ['project', 'name'], value: `name ${n}` }),
});
export const step = (kind: 'undo' | 'redo') => ({ kind, edit: '' });

export const append = (id: string, after: number, entries: readonly ReturnType<typeof edit | typeof step>[], writer = 'w1') => ({
  id, writer, after, name: `after ${after}`, entries, now: later,
}); // prettier-ignore

/** What a call refused with. */
export const refusalOf = (work: Promise<unknown>): Promise<string> =>
  work.then(
    () => 'not refused',
    (error: Error) => error.message,
  );
