import { randomUUID } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { documentHash } from '../../core/document/document-hash.ts';
import { valueOf, type Answer } from '../../core/host/answer.ts';
import { hostCalls } from '../../core/host/host-over.ts';
import { hostSchema, hostEventSchema, type HostEvent, type JournalEntry } from '../../core/host/host-schema.ts';
import type { Gives, Host, HostCall, Takes } from '../../core/host/host.ts';
import { toWire } from '../../core/host/wire.ts';
import { emptyRegister, withEvent, type IssueEvent } from '../../core/issue/register.ts';
import type { Note, Section } from '../../core/note/note.ts';
import { writeNote } from '../../electron/host/note/write-note.ts';
import { readSignatures } from '../../electron/host/sign/read-signatures.ts';
import { attachment, sampleNote } from './sample-note.ts';
import { edit, step, textOf } from './store/opened.ts';
import { testIdentity } from './test-identity.ts';

/** A host behind a carrier, as the contract sees it. */
export interface UnderTest {
  readonly host: Host;
  /** The page loaded anew: another client of the same host. */
  readonly reload: () => Promise<Host>;
  readonly close: () => Promise<void>;
  /** A folder for the user's files. */
  readonly folder: string;
  /** Has the user choose this path in the next dialog, or turn back; null where there are no dialogs. */
  readonly answerDialog: ((path: string | null) => void) | null;
  /** Sends a message as it is, past the types. */
  readonly raw: (host: Host, name: HostCall, message: unknown) => Promise<Answer<unknown>>;
}

/** What every carrier of the host must do alike. */
export function contract(carrier: Gives<'about'>['carrier'], open: () => Promise<UnderTest>): void {
  describe(`the host over ${carrier}`, () => {
    let test: UnderTest;
    let host: Host;
    const heard: HostEvent[] = [];
    beforeAll(async () => {
      test = await open();
      host = test.host;
      host.listen((event) => heard.push(hostEventSchema.parse(event)));
    });
    afterAll(() => test.close());

    /** Calls, and holds the answer to the schema. */
    async function ask<C extends HostCall>(name: C, message: Takes<C>, on = host): Promise<Gives<C>> {
      const value = valueOf(await (on[name] as (m: Takes<C>) => Promise<Answer<Gives<C>>>)(message));
      return hostSchema[name].gives.parse(value) as Gives<C>;
    }
    async function refusalOf<C extends HostCall>(name: C, message: Takes<C>): Promise<string> {
      const answer = await (host[name] as (m: Takes<C>) => Promise<Answer<Gives<C>>>)(message);
      if (answer.ok) return 'not refused';
      expect(answer.refusal.mend).not.toBe('');
      return answer.refusal.what;
    }
    const until = async (seen: (event: HostEvent) => boolean): Promise<HostEvent> => {
      for (;;) {
        const found = heard.find(seen);
        if (found) return found;
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
    };
    const create = (name: string) => ask('createDocument', { name, text: textOf(name), file: null });

    it('has every call of the schema and says what it is', async () => {
      for (const name of hostCalls) expect(typeof host[name]).toBe('function');
      const about = await ask('about', {});
      expect(about).toMatchObject({ carrier, storeFault: null, hasDialogs: test.answerDialog !== null });
      expect(about.versions['SQLite']).toMatch(/^3\./);
    });

    it('keeps a document: edits in order, a conflict told, a revision, the trash', async () => {
      const { id } = await create('Contract');
      const append = (after: number, writer: string, entries: JournalEntry[] = [edit(after + 1)]) =>
        ask('appendEdits', { id, writer, after, name: 'renamed', entries });
      expect(await append(0, 'one')).toEqual({ written: true, head: 1 });
      expect(await append(0, 'two')).toEqual({ written: false, head: 1, since: [edit(1)] });
      expect(await append(1, 'two', [edit(2), step('undo')])).toEqual({ written: true, head: 3 });
      await until((event) => event.kind === 'document-changed' && event.id === id && event.head === 3 && event.writer === 'two'); // prettier-ignore
      const opened = await ask('openDocument', { id });
      expect(opened).toMatchObject({ text: textOf('Contract'), journal: [edit(1), edit(2), step('undo')] });
      expect(opened.line).toMatchObject({ name: 'renamed', head: 3, trashed: false });

      const line = await ask('saveRevision', { id, at: 3, text: textOf('R'), remark: 'as sent' });
      expect(line).toMatchObject({ number: 1, remark: 'as sent', documentHash: documentHash(JSON.parse(textOf('R'))) });
      await until((event) => event.kind === 'revision-saved' && event.id === id && event.at === 3);
      expect(await ask('listRevisions', { id })).toEqual([line]);
      expect(await ask('readRevision', { id, number: 1 })).toEqual({ text: textOf('R') });
      expect((await ask('openDocument', { id })).journal).toEqual([]);

      expect(await ask('trashDocument', { id })).toMatchObject({ trashed: true });
      expect(await refusalOf('openDocument', { id })).toContain('in the trash');
      expect(await ask('restoreDocument', { id })).toMatchObject({ trashed: false });
      expect((await ask('listDocuments', {})).map((each) => each.id)).toContain(id);
      await ask('trashDocument', { id });
      expect(await ask('destroyDocument', { id })).toBe(null);
      expect(await refusalOf('openDocument', { id })).toContain('no longer in the store');
    });

    it('carries texts of every script, bytes of every value and keys of the wire as they are', async () => {
      const text = textOf('Ærø Бриз 海洋平台 \u{1F6A2} \u2028 {"$bytes": 3}');
      const { id } = await ask('createDocument', { name: 'Ærø \u{1F6A2}', text, file: null });
      expect((await ask('openDocument', { id })).text).toBe(text);
      const bytes = Uint8Array.from({ length: 100_000 }, (_, i) => (i * 7919) % 256);
      const { hash } = await ask('keepRecord', { name: '$bytes', bytes });
      expect(await ask('readRecord', { hash })).toEqual({ name: '$bytes', bytes });
      await ask('keepNote', { id, name: 'n.pdf', documentHash: 'h', bytes: new Uint8Array(0) });
      expect(await ask('readNote', { id, number: 1 })).toEqual({ name: 'n.pdf', bytes: new Uint8Array(0) });
      expect(await ask('listNotes', { id })).toMatchObject([{ number: 1, name: 'n.pdf', bytes: 0 }]);
    });

    it('keeps a register that only grows, and signs a note without keeping the password', async () => {
      const { id } = await ask('createDocument', { name: 'n', text: textOf('n'), file: null });
      expect(await ask('readRegister', { id })).toEqual({ text: null });
      const said = (text: string): IssueEvent => ({ kind: 'comment', date: '2026-03-14', by: { role: 'checker', name: 'Second' }, text, required: false }); // prettier-ignore
      const one = withEvent(emptyRegister, said('one'));
      const [two, other] = [withEvent(one, said('two')), withEvent(emptyRegister, said('other'))];
      for (const register of [one, two]) await ask('keepRegister', { id, text: JSON.stringify(register) });
      expect(await ask('readRegister', { id })).toEqual({ text: JSON.stringify(two) });
      for (const register of [one, other, emptyRegister])
        expect(await refusalOf('keepRegister', { id, text: JSON.stringify(register) })).toContain('lacks');
      const changed = JSON.stringify(withEvent(two, said('three'))).replace('"one"', '"ome"');
      expect(await refusalOf('keepRegister', { id, text: changed })).toContain('Entry 1');
      expect(await ask('readRegister', { id })).toEqual({ text: JSON.stringify(two) });

      const signOff: Section = { title: 'Sign-off', blocks: [{ kind: 'signOff', roles: ['Author'], fields: ['Name', 'Date', 'Signature'] }] }; // prettier-ignore
      const bytes = new Uint8Array(await writeNote({ ...sampleNote, sections: [signOff] }));
      const message = { bytes, certificate: testIdentity(), role: 'author', at: new Date(Date.now() + 60_000).toISOString(), reason: null, timeStampAt: null, seal: null } as const; // prettier-ignore
      const refusal = await refusalOf('signNote', { ...message, password: 'not the password' });
      expect(refusal).toContain('does not open');
      expect(refusal).not.toContain('not the password');
      const signed = await ask('signNote', { ...message, password: 'pw' });
      expect(signed.signer).toBe('Test rsa');
      expect(signed.bytes.subarray(0, bytes.length)).toEqual(bytes);
      expect(await readSignatures(signed.bytes)).toMatchObject([{ signer: 'Test rsa' }]);
    });

    it('refuses in words what is no message, and never rejects', async () => {
      const message = { id: 'no id!', at: -1 };
      const answer = await test.raw(host, 'openDocument', message);
      expect(answer).toMatchObject({ ok: false, refusal: { where: { call: 'openDocument' } } });
      for (const wrong of [null, 7, 'x', [], { id: 'a', more: 1 }, undefined])
        expect((await test.raw(host, 'openDocument', wrong)).ok).toBe(false);
      expect(await refusalOf('createDocument', { name: 'x', text: '{"a": ', file: null })).toContain('cut off');
      expect(await refusalOf('createDocument', { name: 'x'.repeat(401), text: textOf('x'), file: null })).toContain('more than createDocument takes'); // prettier-ignore
    });

    it('keeps settings and catalogue rows', async () => {
      await ask('keepSettings', { text: '{"size":1.2}' });
      expect(await ask('readSettings', {})).toEqual({ text: '{"size":1.2}' });
      await ask('keepCatalogueAddition', { name: 'plates', text: '[]' });
      expect(await ask('listCatalogueAdditions', {})).toEqual([{ name: 'plates', text: '[]' }]);
      await ask('dropCatalogueAddition', { name: 'plates' });
      expect(await ask('listCatalogueAdditions', {})).toEqual([]);
      expect(await ask('showState', { title: 'a', file: null, unsaved: true })).toBe(null);
    });

    it('backs up and restores in one step, the present store set aside', async () => {
      const { id } = await create('Before');
      const backup = await ask('backUp', {});
      expect(backup.name).toMatch(/\.stillplate-backup$/);
      const after = await create('After');
      const { documents, setAside } = await ask('restoreBackup', { bytes: backup.bytes });
      const ids = (await ask('listDocuments', {})).map((line) => line.id);
      expect(ids).toContain(id);
      expect(ids).not.toContain(after.id);
      expect(documents).toBe(ids.length);
      expect(setAside).toContain('before-restore');
      expect(await refusalOf('restoreBackup', { bytes: Uint8Array.of(1, 2, 3) })).toContain('no ZIP file');
    });

    describe('jobs', () => {
      const start = async (note: unknown) => {
        const job = randomUUID();
        await ask('startNote', { job, note: toWire(note) });
        return job;
      };
      const ended = (job: string) => until((event) => event.kind === 'job-ended' && event.job === job);

      it('tells progress, then the end, and gives the PDF', async () => {
        const job = await start(sampleNote);
        expect(await ended(job)).toMatchObject({ outcome: 'done' });
        const shares = heard.flatMap((event) => (event.kind === 'job-progress' && event.job === job ? [event.done / event.of] : [])); // prettier-ignore
        expect(shares.length).toBeGreaterThan(5);
        expect(shares).toEqual([...shares].sort((a, b) => a - b));
        expect(shares.at(-1)).toBeLessThan(1);
        expect(await ask('jobState', { job })).toMatchObject({ state: 'done', why: null });
        const { bytes } = await ask('jobResult', { job });
        expect(new TextDecoder().decode(bytes.subarray(0, 5))).toBe('%PDF-');
        // The attachments came through the carrier byte by byte: the file says their length.
        expect(new TextDecoder('latin1').decode(bytes)).toContain(`/Size ${attachment.length}`);
      });

      it('is found again, running, by a page that was loaded anew, and ends there', async () => {
        const job = await start(longNote);
        await until((event) => event.kind === 'job-progress' && event.job === job);
        const anew = await test.reload();
        const outcome = new Promise((resolve) =>
          anew.listen((event) => event.kind === 'job-ended' && event.job === job && resolve(event.outcome)),
        );
        expect(await ask('listJobs', {}, anew)).toContain(job);
        expect(await ask('jobState', { job }, anew)).toMatchObject({ state: 'running', why: null });
        expect(await outcome).toBe('done');
        expect((await ask('jobResult', { job }, anew)).bytes.length).toBeGreaterThan(10_000);
      });

      it('stops when it is cancelled, gives nothing then, and says so', async () => {
        const job = await start(longNote);
        await until((event) => event.kind === 'job-progress' && event.job === job);
        expect(await ask('cancelJob', { job })).toBe(null);
        expect(await ended(job)).toMatchObject({ outcome: 'cancelled' });
        expect(await ask('jobState', { job })).toMatchObject({ state: 'cancelled' });
        expect(await refusalOf('jobResult', { job })).toContain('cancelled');
        await ask('cancelJob', { job });
        expect(await ask('jobState', { job })).toMatchObject({ state: 'cancelled' });
      });

      it('fails with the reason for a note that cannot be set, and refuses a job that is not there', async () => {
        const job = await start({ title: 'no note' });
        expect(await ended(job)).toMatchObject({ outcome: 'failed' });
        expect((await ask('jobState', { job })).why).toContain('no note');
        expect(await refusalOf('jobState', { job: 'none' })).toContain('not known any more');
        expect(await refusalOf('startNote', { job, note: toWire(sampleNote) })).toContain('started before');
      });
    });

    it('verifies a note as a job: what cannot be verified is said, and no other job has a report', async () => {
      const ended = (job: string) => until((event) => event.kind === 'job-ended' && event.job === job);
      const [verify, note] = [randomUUID(), randomUUID()];
      await ask('startVerify', { job: verify, bytes: new TextEncoder().encode('%PDF-1.7 half'), against: null });
      expect(await ended(verify)).toMatchObject({ outcome: 'failed' });
      expect((await ask('jobState', { job: verify })).why).toContain('cannot be read as PDF');
      expect(await refusalOf('verifyResult', { job: verify })).toContain('cannot be read as PDF');
      await ask('startNote', { job: note, note: toWire(sampleNote) });
      await ended(note);
      expect(await refusalOf('verifyResult', { job: note })).toContain('verified no note');
    });

    describe('files of the user', () => {
      it('are asked for by dialogs, or the refusal says what to do instead', async () => {
        if (test.answerDialog) {
          test.answerDialog(null);
          expect(await ask('chooseFile', {})).toBe(null);
        } else expect(await refusalOf('chooseFile', {})).toContain('cannot ask the desktop for a file');
      });

      it('are imported, written with each save, and never over a change from outside', async () => {
        const { answerDialog, folder } = test;
        // A carrier without dialogs gets no path: the test above holds its refusal.
        if (!answerDialog) return expect(await refusalOf('saveFileAs', { name: 'a', bytes: Uint8Array.of(1), mime: 'a/b' })).toContain('browser'); // prettier-ignore
        const path = join(folder, 'tower.stillplate');
        await writeFile(path, textOf('Tower'));
        answerDialog(path);
        const file = (await ask('chooseFile', {}))!;
        expect(file).toMatchObject({ name: 'tower.stillplate', text: textOf('Tower'), readOnly: false });
        const { id, file: mirrored } = await ask('createDocument', { name: 'Tower', text: file.text, file: file.handle }); // prettier-ignore
        expect(mirrored).toBe('tower.stillplate');
        const saved = await ask('saveMirror', { id, text: textOf('Tower 2'), force: false });
        expect(saved).toMatchObject({ written: true, file: { name: 'tower.stillplate' } });
        expect(await readFile(path, 'utf8')).toBe(textOf('Tower 2'));
        await ask('showInFolder', { name: 'tower.stillplate' });

        await writeFile(path, textOf('from outside'));
        expect(await ask('saveMirror', { id, text: textOf('Tower 3'), force: false })).toEqual({
          written: false,
          changedOutside: true,
          text: textOf('from outside'),
        });
        expect(await readFile(path, 'utf8')).toBe(textOf('from outside'));
        expect(await ask('saveMirror', { id, text: textOf('Tower 3'), force: true })).toMatchObject({ written: true });
        expect(await readFile(path, 'utf8')).toBe(textOf('Tower 3'));

        expect(await ask('mirrorDocument', { id, text: textOf('T'), handle: null, ask: false })).toMatchObject({ file: null }); // prettier-ignore
        expect(await refusalOf('saveMirror', { id, text: textOf('T'), force: false })).toContain(
          'not written to a file',
        );
        answerDialog(join(folder, 'other.stillplate'));
        expect(await ask('mirrorDocument', { id, text: textOf('T'), handle: null, ask: true })).toMatchObject({ file: 'other.stillplate' }); // prettier-ignore
        expect(await readFile(join(folder, 'other.stillplate'), 'utf8')).toBe(textOf('T'));
      });
    });
  });
}

/** Long enough that a page can be loaded anew while it is set. */
const longNote: Note = {
  ...sampleNote,
  attachments: [],
  sections: Array.from({ length: 150 }, (_, s) => ({
    title: `Section ${s + 1}`,
    blocks: Array.from({ length: 12 }, (_, p) => ({
      kind: 'paragraph' as const,
      text: `Paragraph ${p + 1}. ${'The load is the stated pressure; it includes added mass at the closed area. '.repeat(8)}`,
    })),
  })),
};
