import { inThread } from './in-thread.ts';
import type { StartWork } from './jobs.ts';

/** What is verified: a PDF, and the text of the document that it is said to be of. */
export interface ToVerify {
  readonly bytes: Uint8Array;
  readonly against: string | null;
}

/** Verifies a note; the work's result is its report as JSON. `worker`: the thread's program; beside the bundle by default. */
export const verifyWork = (what: ToVerify, worker: URL = new URL('./verify-worker.mjs', import.meta.url)): StartWork =>
  inThread(worker, what);
