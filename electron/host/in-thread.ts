import { Worker } from 'node:worker_threads';
import type { StartWork, Work } from './jobs.ts';

/** What a thread that does long work says: how far it is, then what came out or why nothing did. */
export type FromThread =
  | { readonly done: number; readonly of: number; readonly doing: string }
  | { readonly bytes: Uint8Array }
  | { readonly why: string };

/** Work in a thread of its own: it holds no window, and stopping it is stopping the thread. */
export const inThread =
  (program: URL, given: unknown): StartWork =>
  (tell): Work => {
    const thread = new Worker(program, { workerData: given });
    const result = new Promise<Uint8Array>((resolve, reject) => {
      thread.on('message', (message: FromThread) => {
        if ('bytes' in message) resolve(message.bytes);
        else if ('why' in message) reject(new Error(message.why));
        else tell(message.done, message.of, message.doing);
      });
      thread.on('error', reject);
      thread.on('exit', (code) => reject(new Error(`The work stopped before its end (${code})`)));
    });
    return { result, stop: () => void thread.terminate() };
  };
