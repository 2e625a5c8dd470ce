import { Worker } from 'node:worker_threads';
import type { HostEvent } from '../../../core/host/host-schema.ts';
import { Refusal, refusal, type RefusalText } from '../../../core/refusal.ts';
import type { FromStore, OpenedStore, Store, StoreThreadData, ToStore } from './store.ts';

interface Asked {
  readonly resolve: (value: unknown) => void;
  readonly reject: (error: Error) => void;
}

/**
 * Opens the store of a data folder in a thread. Never rejects: without SQLite, or with a folder that cannot be used,
 * it says why there is none. `worker`: the thread's program; beside the bundle by default.
 */
export function openStore(
  data: Omit<StoreThreadData, 'lookEvery'> & { readonly lookEvery?: number },
  worker: URL = new URL('./store-worker.mjs', import.meta.url),
): Promise<OpenedStore> {
  const thread = new Worker(worker, { workerData: { lookEvery: 1000, ...data } satisfies StoreThreadData });
  const asked = new Map<number, Asked>();
  const hearers = new Set<(event: HostEvent) => void>();
  let next = 1;
  let over: Error | null = null;

  const end = (error: Error): void => {
    over ??= error;
    for (const { reject } of asked.values()) reject(over);
    asked.clear();
  };
  const ask: Store['ask'] = (call, takes) =>
    new Promise((resolve, reject) => {
      if (over) return reject(over);
      const id = next++;
      asked.set(id, { resolve: resolve as (value: unknown) => void, reject });
      thread.postMessage({ id, call, takes } satisfies ToStore);
    });
  const close = async (): Promise<void> => {
    if (over) return;
    const gone = new Promise<void>((resolve) => thread.once('exit', () => resolve()));
    thread.postMessage({ close: true } satisfies ToStore);
    await gone;
  };
  const listen: Store['listen'] = (hear) => {
    hearers.add(hear);
    return () => void hearers.delete(hear);
  };
  const store: Store = { ask, listen, close };

  return new Promise((resolve) => {
    thread.on('message', (message: FromStore) => {
      if ('event' in message) for (const hear of hearers) hear(message.event);
      else if ('opened' in message) resolve({ store, ...message.opened });
      else if ('fault' in message) {
        resolve({ store: null, fault: message.fault });
        void thread.terminate();
      } else {
        const call = asked.get(message.id);
        asked.delete(message.id);
        if ('gives' in message) call?.resolve(message.gives);
        else if ('refusals' in message) call?.reject(new Refusal(message.refusals as [RefusalText, ...RefusalText[]]));
        else call?.reject(new Error(message.broken));
      }
    });
    thread.on('error', (error) => {
      resolve({ store: null, fault: { what: `The store stopped: ${error.message}`, mend: restart } });
      end(refusal({ what: `The store stopped: ${error.message}`, mend: restart }));
    });
    thread.on('exit', () => end(refusal({ what: 'The store is closed', mend: restart })));
  });
}

const restart = 'Start Stillplate again: every edit that was acknowledged is kept.';
