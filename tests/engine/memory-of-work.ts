import { readFileSync } from 'node:fs';
import type { Edit } from '../../core/document/edit.ts';
import { createEngine } from '../../core/engine/engine.ts';
import { createSolveService } from '../../core/engine/solve-service.ts';
import { readDocumentText } from '../../core/document/read-document.ts';

/** Bytes that are held before and after some work, and how many answers came out of it. */
export interface Held {
  readonly before: number;
  readonly after: number;
  readonly answers: number;
}

/**
 * Edits the small sample and solves its plate, each time another depth, in a Node that was started with --expose-gc.
 * `warm`: so many edits and solves come before anything is measured, for memos to fill. `keep`: hold on to all that is
 * told, to see that it would show.
 */
export function memoryOfWork(
  edits: number,
  solves: number,
  warm: { readonly edits: number; readonly solves: number },
  keep: boolean,
): { readonly edits: Held; readonly solves: Held } {
  const text = readFileSync('samples/small.stillplate.json', 'utf8');
  const raw = readDocumentText(text);
  const kept: unknown[] = [];
  let answers = 0;
  const waiting: (() => void)[] = [];
  const host = {
    later: (goOn: () => void) => void waiting.push(goOn),
    tell: (news: { readonly kind: string }) => {
      if (news.kind === 'result' || news.kind === 'set') answers++;
      if (keep) kept.push(news);
    },
  };
  const rest = () => {
    while (waiting.length > 0) waiting.shift()!();
  };
  const engine = createEngine(host);
  const solver = createSolveService(host);
  engine.open({ text, journal: [] });
  rest();

  const over = (count: number, first: number, work: (n: number) => void): Held => {
    for (let n = 0; n < first; n++) work(n);
    rest();
    const before = inUse();
    answers = 0;
    for (let n = first; n < first + count; n++) work(n);
    rest();
    return { before, after: inUse(), answers };
  };
  return {
    // nine of ten edits are overtaken by the next before the options are compared
    edits: over(edits, warm.edits, (n) => {
      const edit: Edit = { kind: 'setField', option: null, path: ['water', 'depth'], value: depth(n) };
      engine.edit({ edit });
      if (n % 10 === 0) rest();
    }),
    solves: over(solves, warm.solves, (n) => {
      solver({ kind: 'solve', subject: { edit: n, raw: { ...raw, water: { depth: depth(n), density: '1026 kg/m^3' } }, option: null } }); // prettier-ignore
      rest();
    }),
  };
}

const depth = (n: number): string => `${20 + (n % 997) / 100} m`;

function inUse(): number {
  for (let n = 0; n < 3; n++) globalThis.gc!();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}
