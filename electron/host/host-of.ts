import { basename } from 'node:path';
import type { Answer } from '../../core/host/answer.ts';
import type { Gives, Host, HostCall, Takes } from '../../core/host/host.ts';
import { refusal } from '../../core/refusal.ts';
import { answered } from './answered.ts';
import { signedNote } from './sign/signed-note.ts';
import type { Dialogs } from './dialogs.ts';
import type { DocumentFiles } from './document-files.ts';
import type { Events } from './events.ts';
import type { Jobs, StartWork } from './jobs.ts';
import type { OpenedStore, Store } from './store/store.ts';
import type { ToVerify } from './verify-work.ts';
import { verifyReading } from './verify/verify-reading.ts';

/** What a host is made of. Several windows share all but their dialogs. */
export interface HostParts {
  readonly carrier: Gives<'about'>['carrier'];
  readonly versions: Readonly<Record<string, string>>;
  readonly dataFolder: string;
  readonly opened: OpenedStore;
  readonly files: DocumentFiles;
  readonly jobs: Jobs;
  readonly events: Events;
  /** Null where there are none: the local server. */
  readonly dialogs: Dialogs | null;
  readonly noteWork: (note: Uint8Array) => StartWork;
  readonly verifyWork: (what: ToVerify) => StartWork;
  /** Hears what the window shows. */
  readonly shows?: (state: Takes<'showState'>) => void;
  /** The time as ISO 8601. */
  readonly now: () => string;
  readonly newId: () => string;
}

/** The calls without their answers' frame: each gives its value or throws a refusal. */
type Calls = { readonly [C in HostCall]: (message: Takes<C>) => Gives<C> | Promise<Gives<C>> };

/** The host, whatever carries its messages. */
export function hostOf(parts: HostParts): Host {
  const { opened, files, jobs, events, now, newId } = parts;
  const ask: Store['ask'] = (call, takes) => storeOf(opened).ask(call, takes);

  const calls: Calls = {
    about: () => ({
      carrier: parts.carrier,
      versions: { ...parts.versions, ...(opened.store ? { SQLite: opened.sqlite } : {}) },
      dataFolder: parts.dataFolder,
      storeFault: opened.store ? null : opened.fault,
      notices: opened.store ? [...opened.notices] : [],
      hasDialogs: parts.dialogs !== null,
    }),

    listDocuments: () => ask('listDocuments', {}),
    createDocument: ({ name, text, file }) =>
      ask('createDocument', { id: newId(), name, text, mirror: file === null ? null : files.chosen(file), now: now() }),
    openDocument: (message) => ask('openDocument', message),
    appendEdits: (message) => ask('appendEdits', { ...message, now: now() }),
    saveRevision: (message) => ask('saveRevision', { ...message, now: now() }),
    listRevisions: (message) => ask('listRevisions', message),
    readRevision: (message) => ask('readRevision', message),
    trashDocument: ({ id }) => ask('trashDocument', { id, now: now() }),
    restoreDocument: (message) => ask('restoreDocument', message),
    destroyDocument: (message) => ask('destroyDocument', message),

    chooseFile: async () => {
      const path = await dialogsOf(parts).chooseFile();
      return path === null ? null : files.choose(path);
    },
    saveFileAs: async ({ name, bytes, mime }) => {
      const path = await dialogsOf(parts).choosePlace(basename(name), mime);
      return path === null ? null : (await files.write(path, bytes)).file;
    },
    mirrorDocument: async ({ id, text, handle, ask: asks }) => {
      if (asks) {
        const { line } = await ask('openDocument', { id });
        const path = await dialogsOf(parts).choosePlace(fileNameOf(line.name), 'application/json');
        if (path === null) return line;
        return ask('setMirror', { id, mirror: (await files.write(path, text)).mirror });
      }
      if (handle === null) return ask('setMirror', { id, mirror: null });
      const over = await files.writeOver(files.chosen(handle), text, false);
      if ('changed' in over)
        throw refusal({
          what: 'The file was changed since it was chosen',
          where: { document: id },
          mend: 'Choose it again, or save under another name; nothing was written.',
        });
      return ask('setMirror', { id, mirror: over.mirror });
    },
    saveMirror: async ({ id, text, force }) => {
      const mirror = await ask('mirrorOf', { id });
      if (!mirror)
        throw refusal({
          what: 'This document is not written to a file',
          where: { document: id },
          mend: 'Choose a file for it first.',
        });
      const over = await files.writeOver(mirror, text, force);
      if ('changed' in over) return { written: false, changedOutside: true, text: over.changed };
      await ask('setMirror', { id, mirror: over.mirror });
      return { written: true, file: over.file };
    },
    showInFolder: async ({ name }) => {
      await dialogsOf(parts).showInFolder(files.writtenAt(name));
      return null;
    },

    startNote: ({ job, note }) => {
      jobs.start(job, parts.noteWork(note));
      return null;
    },
    startVerify: ({ job, ...what }) => {
      jobs.start(job, parts.verifyWork(what));
      return null;
    },
    verifyResult: ({ job }) => verifyReading(jobs.result(job)),
    cancelJob: ({ job }) => {
      jobs.cancel(job);
      return null;
    },
    jobState: ({ job }) => jobs.state(job),
    listJobs: () => jobs.list(),
    jobResult: ({ job }) => ({ bytes: jobs.result(job) }),
    keepNote: (message) => ask('keepNote', { ...message, now: now() }),
    listNotes: (message) => ask('listNotes', message),
    readNote: (message) => ask('readNote', message),
    readRegister: (message) => ask('readRegister', message),
    keepRegister: (message) => ask('keepRegister', { ...message, now: now() }),
    signNote: signedNote,

    listCatalogueAdditions: () => ask('listCatalogueAdditions', {}),
    keepCatalogueAddition: (message) => ask('keepCatalogueAddition', { ...message, now: now() }),
    dropCatalogueAddition: (message) => ask('dropCatalogueAddition', message),
    keepRecord: (message) => ask('keepRecord', { ...message, now: now() }),
    readRecord: (message) => ask('readRecord', message),
    backUp: () => ask('backUp', { now: now() }),
    restoreBackup: ({ bytes }) => ask('restoreBackup', { bytes, now: now() }),
    readSettings: () => ask('readSettings', {}),
    keepSettings: (message) => ask('keepSettings', message),

    showState: (message) => {
      parts.shows?.(message);
      return null;
    },
    print: async ({ bytes }) => {
      await dialogsOf(parts).print(bytes);
      return null;
    },
  };

  const listen: Host['listen'] = (hear) => {
    const stops = [events.listen(hear), ...(opened.store ? [opened.store.listen(hear)] : [])];
    return () => {
      for (const stop of stops) stop();
    };
  };
  const answers = Object.entries(calls).map(
    ([name, call]) =>
      [
        name,
        (message: never): Promise<Answer<unknown>> => answered(() => (call as (m: never) => unknown)(message)),
      ] as const,
  );
  return { ...Object.fromEntries(answers), listen } as unknown as Host;
}

function storeOf(opened: OpenedStore): Store {
  if (opened.store) return opened.store;
  throw refusal(opened.fault);
}

function dialogsOf({ dialogs }: HostParts): Dialogs {
  if (dialogs) return dialogs;
  throw refusal({
    what: 'A window in a browser cannot ask the desktop for a file',
    mend: 'Use the browser’s own way: choose the file in the page, and save it as a download.',
  });
}

/** A document's name as that of a file on any system. */
const fileNameOf = (name: string): string =>
  `${
    name
      .replace(/[\p{Cc}<>:"/\\|?*]+/gu, ' ')
      .trim()
      .slice(0, 120) || 'plate'
  }.stillplate`;
