import { Worker } from 'node:worker_threads';
import type { StartWork, Work } from './jobs.ts';
import type { FromNoteWorker } from './note-worker.ts';

/** Sets a note, written by `toWire`, as PDF in a thread of its own. `worker`: the thread's program; beside the bundle by default. */
export const noteWork =
  (note: Uint8Array, worker: URL = new URL('./note-worker.mjs', import.meta.url)): StartWork =>
  (tell): Work => {
    const thread = new Worker(worker, { workerData: note });
    const result = new Promise<Uint8Array>((resolve, reject) => {
      thread.on('message', (message: FromNoteWorker) => {
        if ('bytes' in message) resolve(message.bytes);
        else if ('why' in message) reject(new Error(message.why));
        else tell(message.done, message.of, message.doing);
      });
      thread.on('error', reject);
      thread.on('exit', (code) => reject(new Error(`The writer stopped (${code})`)));
    });
    return { result, stop: () => void thread.terminate() };
  };
