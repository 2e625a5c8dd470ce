import { build } from 'esbuild';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Broken, Tried } from './try-mutants.ts';

export interface MutationReport {
  readonly results: readonly Tried[];
  readonly broken: readonly Broken[];
}

/** A slip can send a calculation on a very long way; a test that takes longer than this fails by its own time limit. */
const limit = 90_000;

type Message =
  | { readonly kind: 'starts'; readonly n: number; readonly slip: Omit<Tried, 'killedBy'> }
  | { readonly kind: 'tried'; readonly n: number; readonly killedBy: string | undefined }
  | { readonly kind: 'done'; readonly broken: readonly Broken[] };

/** Tries every slip in these checks (all when empty). Run from the project's folder. */
export async function runMutants(
  only: readonly string[] = [],
  progress: (results: readonly Tried[]) => void = () => {},
): Promise<MutationReport> {
  const script = join(process.cwd(), 'build/bundled/mutate-worker.mjs');
  await build({
    entryPoints: ['build/mutate/worker.ts'],
    outfile: script,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    logLevel: 'warning',
  });
  const results: Tried[] = [];
  for (let from = 0; ;) {
    const stopped = await oneRun(script, { only, from }, (tried) => {
      results.push(tried);
      progress(results);
    });
    if (typeof stopped !== 'number') return { results, broken: stopped };
    from = stopped + 1;
  }
}

/** Runs until all is done, and gives the broken tests, or until a slip takes too long, and gives its number. */
function oneRun(
  script: string,
  workerData: { readonly only: readonly string[]; readonly from: number },
  tell: (tried: Tried) => void,
): Promise<readonly Broken[] | number> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(script, { workerData });
    let slip: Omit<Tried, 'killedBy'>;
    let timer: NodeJS.Timeout;
    worker.on('error', reject);
    worker.on('message', (message: Message) => {
      clearTimeout(timer);
      if (message.kind === 'done') resolve(message.broken);
      else if (message.kind === 'tried') tell({ ...slip, killedBy: message.killedBy });
      else {
        slip = message.slip;
        timer = setTimeout(() => {
          tell({ ...slip, killedBy: `the tests' time limit (stopped after ${limit / 1000} s)` });
          void worker.terminate().then(() => resolve(message.n));
        }, limit);
      }
    });
  });
}
