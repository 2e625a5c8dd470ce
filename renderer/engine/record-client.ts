import type { FromRecords, RecordCall, RecordCalls, RecordHead, ToRecords } from '../../core/engine/record-messages.ts';
import { refusal, Refusal, type RefusalText } from '../../core/refusal.ts';

let worker: Worker | null = null;
let next = 1;
const asked = new Map<number, { resolve: (value: never) => void; reject: (error: Error) => void }>();
/** Records that the worker holds, and those on their way to it. */
const handed = new Map<string, Promise<RecordHead>>();

/** Asks the worker of records, which begins with the first question. Rejects with a `Refusal` for what cannot be done. */
export function askRecords<C extends RecordCall>(
  call: C,
  takes: RecordCalls[C]['takes'],
): Promise<RecordCalls[C]['gives']> {
  worker ??= started();
  return new Promise((resolve, reject) => {
    const id = next++;
    asked.set(id, { resolve, reject });
    worker!.postMessage({ id, call, takes } satisfies ToRecords);
  });
}

/** Sees to it that the worker holds a record; `bytes` are asked for only where it does not. */
export function holdRecord(hash: string, bytes: () => Promise<Uint8Array>): Promise<RecordHead> {
  const known = handed.get(hash);
  if (known) {
    // what was used last is put away last, there as here
    handed.delete(hash);
    handed.set(hash, known);
    return known;
  }
  const coming = bytes().then((content) => askRecords('open', { bytes: content }));
  handed.set(hash, coming);
  coming.catch(() => handed.delete(hash));
  for (const old of handed.keys()) if (handed.size > mostHeld) handed.delete(old);
  return coming;
}
/** As many as the service holds. */
const mostHeld = 5;

function started(): Worker {
  const fresh = new Worker(new URL('record-worker.js', document.baseURI), { type: 'module' });
  fresh.onmessage = ({ data }: MessageEvent<FromRecords>) => {
    if ('broken' in data) return broke(data.broken);
    const call = asked.get(data.id);
    asked.delete(data.id);
    if ('gives' in data) call?.resolve(data.gives as never);
    else call?.reject(new Refusal(data.refusals as [RefusalText, ...RefusalText[]]));
  };
  fresh.onerror = (event) => {
    event.preventDefault();
    broke(event.message);
  };
  return fresh;
}

/** A worker that broke is ended; a new one takes its place with the next question. */
function broke(why: string): void {
  console.error(why);
  worker?.terminate();
  worker = null;
  handed.clear();
  const left = [...asked.values()];
  asked.clear();
  for (const { reject } of left)
    reject(refusal({ what: 'The record could not be worked out', mend: 'Choose its file again; report it if it stays so.' })); // prettier-ignore
}
