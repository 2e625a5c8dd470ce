import { parentPort, workerData } from 'node:worker_threads';
import { tryMutants } from './try-mutants.ts';

// One run of slips in a thread of its own, which can be stopped when a slip sends a calculation on a long way.
const { only, from } = workerData as { readonly only: readonly string[]; readonly from: number };
const say = (message: object) => parentPort!.postMessage(message);
const broken = await tryMutants({
  only,
  from,
  starts: (n, slip) => say({ kind: 'starts', n, slip }),
  tried: (n, outcome) => say({ kind: 'tried', n, outcome }),
});
say({ kind: 'done', broken });
