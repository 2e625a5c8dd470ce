import { build } from 'esbuild';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Broken, Outcome, Tried } from './try-mutants.ts';

export interface MutationReport {
  readonly results: readonly Tried[];
  readonly broken: readonly Broken[];
}

/**
 * A slip can send a calculation on a very long way; a test that takes longer than this fails by its own time limit.
 * Seconds of the processor, not of the clock: a busy machine makes no slip noticed.
 */
const limit = 90;

type Slip = Omit<Tried, keyof Outcome>;
type Message =
  | { readonly kind: 'starts'; readonly n: number; readonly slip: Slip }
  | { readonly kind: 'tried'; readonly n: number; readonly outcome: Outcome }
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
    let slip: Slip;
    let timer: NodeJS.Timeout;
    worker.on('error', reject);
    worker.on('message', (message: Message) => {
      clearInterval(timer);
      if (message.kind === 'done') resolve(message.broken);
      else if (message.kind === 'tried') tell({ ...slip, ...message.outcome });
      else {
        slip = message.slip;
        const start = processorSeconds();
        timer = setInterval(() => {
          if (processorSeconds() - start < limit) return;
          clearInterval(timer);
          tell({ ...slip, killedBy: `the tests' time limit (stopped after ${limit} s)`, neverANumber: false });
          void worker.terminate().then(() => resolve(message.n));
        }, 1000);
      }
    });
  });
}

/** Of this process, all its threads. */
function processorSeconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}
