import Sqlite from 'better-sqlite3';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { valueOf, type Answer } from '../../../core/host/answer.ts';
import { createEngine } from '../../../core/engine/engine.ts';
import { replayed, undone } from '../../../core/engine/history.ts';
import { readDocumentText } from '../../../core/document/read-document.ts';
import { emptyRegister, withEvent, type IssueEvent } from '../../../core/issue/register.ts';
import { directHost } from '../../../electron/host/direct-host.ts';
import { hostOf } from '../../../electron/host/host-of.ts';
import { partsForTests } from '../host-parts.ts';
import { edit, textOf } from './opened.ts';

/** A year back, ten forward, back before the document was made, and twice the same moment. */
const clock = [
  '2026-05-04T10:20:30.000Z',
  '2025-05-04T10:20:30.000Z',
  '2035-05-04T10:20:30.000Z',
  '2019-01-01T00:00:00.000Z',
  '2019-01-01T00:00:00.000Z',
];
const said = (text: string): IssueEvent => ({
  kind: 'comment',
  date: '2026-05-04',
  by: { role: 'checker', name: 'Second' },
  text,
  required: false,
});

it('keeps edits, revisions, notes and register in the order they came in while the clock jumps', async () => {
  const { parts, close } = await partsForTests('direct');
  try {
    let now = clock[0]!;
    const host = directHost(hostOf({ ...parts, now: () => now }));
    const got = async <T>(answer: Promise<Answer<T>>): Promise<T> => valueOf(await answer);
    const { id } = await got(host.createDocument({ name: 'a', text: textOf('a'), file: null }));

    let head = 0;
    let register = emptyRegister;
    for (const [n, moment] of clock.entries()) {
      now = moment;
      const append = {
        id,
        writer: 'w',
        after: head,
        name: `name ${head + 2}`,
        entries: [edit(head + 1), edit(head + 2)],
      };
      expect(await got(host.appendEdits(append))).toEqual({ written: true, head: head + 2 });
      head += 2;
      const { raw } = await opened();
      expect(raw['project']).toMatchObject({ name: `name ${head}` });
      register = withEvent(register, said(`round ${n}`));
      await got(host.keepRegister({ id, text: JSON.stringify(register) }));
      await got(host.keepNote({ id, name: `${n}.pdf`, documentHash: 'h', bytes: Uint8Array.of(n) }));
      if (n === clock.length - 1) break; // the last two edits stay in the journal
      await got(host.saveRevision({ id, at: head, text: JSON.stringify(raw), remark: `round ${n}` }));
      expect((await opened()).raw).toEqual(raw);
    }

    const revisions = await got(host.listRevisions({ id }));
    expect(revisions.map(({ number, made, remark }) => [number, made, remark])).toEqual(
      clock.slice(0, -1).map((made, n) => [n + 1, made, `round ${n}`]),
    );
    for (const { number } of revisions) {
      const { text } = await got(host.readRevision({ id, number }));
      expect(JSON.parse(text)).toMatchObject({ project: { name: `name ${2 * number}` } });
    }
    expect(editsIn(parts.dataFolder)).toEqual(Array.from({ length: head }, (_, n) => edit(n + 1).edit));
    expect((await got(host.listNotes({ id }))).map(({ number, name, made }) => [number, name, made])).toEqual(
      clock.map((made, n) => [n + 1, `${n}.pdf`, made]),
    );
    expect(await got(host.readRegister({ id }))).toEqual({ text: JSON.stringify(register) });

    // what is opened begins at the newest revision by number, and steps back through the edits after it
    const history = await opened();
    expect(history.past).toHaveLength(2);
    const back = undone(history)!;
    expect(back.history.raw['project']).toMatchObject({ name: `name ${head - 1}` });
    const stepBack = () => got(host.appendEdits({ id, writer: 'w', after: head, name: 'back', entries: [...back.entries] })); // prettier-ignore
    now = clock[1]!;
    expect(await stepBack()).toEqual({ written: true, head: head + 1 });
    expect((await opened()).raw['project']).toMatchObject({ name: `name ${head - 1}` });
    // a message that lost its answer is found again although it is sent at another time
    now = clock[2]!;
    expect(await stepBack()).toEqual({ written: true, head: head + 1 });

    /** The document as a window finds it. */
    async function opened() {
      const { text, journal } = await got(host.openDocument({ id }));
      const engine = createEngine({ tell: () => undefined, later: () => undefined });
      engine.open({ text, journal });
      const history = replayed(readDocumentText(text), journal);
      expect(JSON.parse(engine.text(null).text)).toEqual(history.raw);
      return history;
    }
  } finally {
    await close();
  }
});

/** Every edit that the store holds, those put away with revisions first. */
function editsIn(folder: string): readonly string[] {
  const db = new Sqlite(join(folder, 'store.sqlite'), { readonly: true });
  try {
    const putAway = db.prepare<[], string>('SELECT journal FROM revisions ORDER BY number').pluck().all();
    const left = db.prepare<[], string>('SELECT edit FROM journal ORDER BY number').pluck().all();
    return [
      ...putAway.flatMap((journal) => (JSON.parse(journal) as { edit: string }[]).map((each) => each.edit)),
      ...left,
    ];
  } finally {
    db.close();
  }
}
