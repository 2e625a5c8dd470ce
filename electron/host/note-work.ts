import { inThread } from './in-thread.ts';
import type { StartWork } from './jobs.ts';

/** Sets a note, written by `toWire`, as PDF. `worker`: the thread's program; beside the bundle by default. */
export const noteWork = (note: Uint8Array, worker: URL = new URL('./note-worker.mjs', import.meta.url)): StartWork =>
  inThread(worker, note);
