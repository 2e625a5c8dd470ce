import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { programVersion } from '../../core/result.ts';
import { documentFiles } from '../host/document-files.ts';
import { events } from '../host/events.ts';
import { hostOf } from '../host/host-of.ts';
import { jobs } from '../host/jobs.ts';
import { noteWork } from '../host/note-work.ts';
import { verifyWork } from '../host/verify-work.ts';
import { dataFolder } from '../host/store/data-folder.ts';
import { openStore } from '../host/store/open-store.ts';
import { openLocalServer } from './local-server.ts';

// The window for a browser of this machine, where Electron is not there: `serve.mjs [--port N]`. Prints one line with its
// address; ends on Ctrl+C with everything on the disk.
const { values } = parseArgs({ options: { port: { type: 'string' } } });
const port = Number(values.port ?? 0);
if (!Number.isInteger(port) || port < 0 || port > 65_535) {
  console.error(`“${values.port}” is no port: name a whole number from 1 to 65535.`);
  process.exit(2);
}

const now = (): string => new Date().toISOString();
const folder = dataFolder(process.env, process.platform);
const shared = events();
const opened = await openStore({ folder, now: now() });
const running = jobs(shared.tell);
const host = hostOf({
  carrier: 'local',
  versions: { Stillplate: programVersion, Node: process.versions.node },
  dataFolder: folder,
  opened,
  files: documentFiles(randomUUID),
  jobs: running,
  events: shared,
  dialogs: null,
  noteWork,
  verifyWork,
  now,
  newId: randomUUID,
});
const server = await openLocalServer({
  host,
  page: join(fileURLToPath(new URL('.', import.meta.url)), '../page'),
  port,
});
console.log(`Stillplate is at ${server.address} (Ctrl+C ends it; documents are kept in ${folder})`);

async function end(): Promise<void> {
  running.close();
  await server.close();
  await opened.store?.close();
  process.exit(0);
}
process.once('SIGINT', () => void end());
process.once('SIGTERM', () => void end());
