import { randomUUID } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { documentFiles } from '../../electron/host/document-files.ts';
import { events } from '../../electron/host/events.ts';
import type { HostParts } from '../../electron/host/host-of.ts';
import { jobs } from '../../electron/host/jobs.ts';
import { noteWork } from '../../electron/host/note-work.ts';
import { verifyWork } from '../../electron/host/verify-work.ts';
import { openStore } from '../../electron/host/store/open-store.ts';
import { noteWorker, storeWorker, verifyWorker } from './bundled.ts';
import { now } from './store/opened.ts';

export interface PartsForTests {
  readonly parts: HostParts;
  readonly folder: string;
  readonly answerDialog: (path: string | null) => void;
  readonly close: () => Promise<void>;
}

/** The real parts of a host in a folder of its own; only dialogs and clock are the test's. */
export async function partsForTests(carrier: HostParts['carrier']): Promise<PartsForTests> {
  const folder = await mkdtemp(join(tmpdir(), 'stillplate-host-'));
  const hub = events();
  const work = await noteWorker();
  const verifier = await verifyWorker();
  const jobList = jobs(hub.tell);
  const opened = await openStore({ folder: join(folder, 'data'), now, lookEvery: 100 }, await storeWorker());
  let chosen: string | null = null;
  const parts: HostParts = {
    carrier,
    versions: { Stillplate: 'test' },
    dataFolder: join(folder, 'data'),
    opened,
    files: documentFiles(randomUUID),
    jobs: jobList,
    events: hub,
    dialogs: {
      chooseFile: async () => chosen,
      choosePlace: async () => chosen,
      showInFolder: async () => undefined,
      print: async () => undefined,
    },
    noteWork: (note) => noteWork(note, work),
    verifyWork: (what) => verifyWork(what, verifier),
    now: () => now,
    newId: randomUUID,
  };
  return {
    parts,
    folder,
    answerDialog: (path) => {
      chosen = path;
    },
    close: async () => {
      jobList.close();
      await opened.store?.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}
