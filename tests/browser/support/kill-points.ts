import { documentHash } from '../../../core/document/document-hash.ts';
import { startingDocument } from '../../../core/document/starting-document.ts';
import {
  edited,
  historyOf,
  putAway,
  redone,
  undone,
  type Changed,
  type History,
} from '../../../core/engine/history.ts';
import { valueOf } from '../../../core/host/answer.ts';
import type { JournalEntry } from '../../../core/host/host-schema.ts';
import { seeded } from '../../geometry/seeded.ts';
import { serveStillplate, type Served } from './served.ts';

export interface KillReport {
  readonly points: number;
  /** Edits that the program said were kept. */
  readonly acknowledged: number;
  /** Points at which a write was asked for and not answered, and of these the ones that were on the disk all the same. */
  readonly inWrite: number;
  readonly writtenUnanswered: number;
  /** What was not found again, with the point. */
  readonly failures: readonly string[];
}

/** How far the document has come, as the program knows it. */
interface State {
  readonly history: History;
  readonly revisions: number;
}

/**
 * Kills the program, served on a local address, at seeded moments while it writes edits, steps back and revisions, and
 * starts it again on the same store each time. What is found must be the document of the last answer, or of the write
 * that was not answered, whole: to the hash.
 */
export async function killPoints(points: number, seed: number): Promise<KillReport> {
  const random = seeded(seed);
  const failures: string[] = [];
  let [acknowledged, inWrite, writtenUnanswered] = [0, 0, 0];
  let served = await serveStillplate();
  try {
    const raw = startingDocument('metric');
    const text = JSON.stringify(raw);
    const { id } = valueOf(await served.host.createDocument({ name: 'plate', text, file: null }));
    let now: State = { history: historyOf(JSON.parse(text) as History['raw']), revisions: 0 };
    for (let point = 1; point <= points; point++) {
      const before = now.history.head;
      const { answered, asked } = await writeUntilKilled(served, id, now, random);
      acknowledged += answered.history.head - before;
      if (asked) inWrite++;
      const { folder } = served;
      served = await serveStillplate(folder);
      const found = await foundIn(served, id);
      const fits = [answered, ...(asked ? [asked] : [])].find((state) => JSON.stringify(found) === JSON.stringify(factsOf(state))); // prettier-ignore
      if (!fits) {
        failures.push(`point ${point} of seed ${seed}: answered ${JSON.stringify(factsOf(answered))}, found ${JSON.stringify(found)}`); // prettier-ignore
        break;
      }
      if (fits === asked) writtenUnanswered++;
      now = fits;
    }
  } finally {
    await served.close();
  }
  return { points, acknowledged, inWrite, writtenUnanswered, failures };
}

/** Writes one thing after the other; after some answers, and a part of the time that a write takes, the program is killed. */
async function writeUntilKilled(
  served: Served,
  id: string,
  from: State,
  random: () => number,
): Promise<{ readonly answered: State; readonly asked: State | null }> {
  const answers = 1 + Math.floor(random() * 6);
  const part = random();
  let answered = from;
  let asked: State | null = null;
  let took = 5;
  let killing: Promise<void> | null = null;
  for (let n = 0; ; n++) {
    if (n === answers)
      killing = new Promise((resolve) => setTimeout(() => void served.kill().then(resolve), part * 1.5 * took));
    const { next, ask } = nextWrite(served, id, answered, random);
    asked = next;
    const start = performance.now();
    if (!(await ask())) break;
    took = performance.now() - start;
    answered = next;
    asked = null;
  }
  if (!killing) throw new Error('The program refused a write before it was killed');
  await killing;
  return { answered, asked };
}

/** A revision now and then, else one to twenty edits and steps as one message. */
function nextWrite({ host }: Served, id: string, { history, revisions }: State, random: () => number) {
  if (random() < 0.06)
    return {
      next: { history: putAway(history), revisions: revisions + 1 },
      ask: async () =>
        (await host.saveRevision({ id, at: history.head, text: JSON.stringify(history.raw), remark: '' })).ok,
    };
  const count = 1 + Math.floor(random() ** 3 * 20);
  let at = history;
  const entries: JournalEntry[] = [];
  for (let n = 0; n < count; n++) {
    const changed = nextChange(at, random);
    at = changed.history;
    entries.push(...changed.entries);
  }
  return {
    next: { history: at, revisions },
    ask: async () => {
      const answer = await host.appendEdits({ id, writer: 'w', after: history.head, name: 'plate', entries });
      return answer.ok && answer.value.written;
    },
  };
}

function nextChange(history: History, random: () => number): Changed {
  const kind = random();
  const step = kind < 0.2 ? undone(history) : kind < 0.3 ? redone(history) : null;
  const value = `${20 + Math.floor(random() * 400) / 10} m`;
  return step ?? edited(history, { kind: 'setField', option: null, path: ['water', 'depth'], value });
}

/** What is held against each other: head, document and number of revisions, and that the store had nothing to say. */
const factsOf = ({ history, revisions }: State) => ({
  head: history.head,
  hash: documentHash(history.raw),
  revisions,
  notices: [],
});

async function foundIn(served: Served, id: string): Promise<unknown> {
  const { head, hash } = await served.stored(id);
  const { notices, storeFault } = valueOf(await served.host.about({}));
  if (storeFault) throw new Error(storeFault.what);
  return { head, hash, revisions: valueOf(await served.host.listRevisions({ id })).length, notices };
}
