import { parentPort } from 'node:worker_threads';
import { openStore } from '../../electron/host/store/open-store.ts';

// A program that writes one edit after the other into a store and prints each number that was acknowledged, until it is
// killed: FOLDER WORKER ID.
if (parentPort) throw new Error('This is a program of its own');
const [folder, worker, id] = process.argv.slice(2) as [string, string, string];
const now = '2026-05-04T10:20:30.000Z';
const opened = await openStore({ folder, now }, new URL(worker));
if (!opened.store) throw new Error(opened.fault.what);
const { line } = await opened.store.ask('openDocument', { id });
for (let head = line.head; ; head++) {
  const answer = await opened.store.ask('appendEdits', {
    id,
    writer: 'child',
    after: head,
    name: `edit ${head + 1}`,
    entries: [
      {
        kind: 'edit',
        edit: JSON.stringify({
          kind: 'setField',
          option: null,
          path: ['project', 'name'],
          value: `edit ${head + 1} ${'x'.repeat(400)}`,
        }),
      },
    ],
    now,
  });
  if (!answer.written) throw new Error('somebody else writes');
  // Every seventh edit a revision puts the journal away: another kind of write to be cut in the middle.
  process.stdout.write(`${answer.head}\n`);
  if (answer.head % 7 === 0) {
    const { text } = await opened.store.ask('openDocument', { id });
    await opened.store.ask('saveRevision', { id, at: answer.head, text, remark: `at ${answer.head}`, now });
    process.stdout.write(`revision ${answer.head}\n`);
  }
}
