import { app, Menu, nativeTheme, protocol, session, type BrowserWindow } from 'electron';
import { randomUUID } from 'node:crypto';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { HostEvent } from '../core/host/host-schema.ts';
import { Refusal } from '../core/refusal.ts';
import { programVersion } from '../core/result.ts';
import { documentFiles } from './host/document-files.ts';
import { events } from './host/events.ts';
import { hostOf } from './host/host-of.ts';
import { jobs } from './host/jobs.ts';
import { noteWork } from './host/note-work.ts';
import { dataFolder } from './host/store/data-folder.ts';
import { openStore } from './host/store/open-store.ts';
import { desktopDialogs } from './window/desktop-dialogs.ts';
import { documentsIn } from './window/documents-in.ts';
import { refusePermissions } from './window/guard.ts';
import { hearPages } from './window/ipc.ts';
import { menuTemplate } from './window/menu.ts';
import { openWindow, preloadIn } from './window/open-window.ts';
import { scheme } from './window/page-address.ts';
import { servePage } from './window/serve-page.ts';

const here = dirname(fileURLToPath(import.meta.url));
const folder = dataFolder(process.env, process.platform);

app.enableSandbox();
protocol.registerSchemesAsPrivileged([
  { scheme, privileges: { standard: true, secure: true, supportFetchAPI: true, corsEnabled: false } },
]);

// One program for all documents: a second start hands its files over and ends.
if (app.requestSingleInstanceLock()) void start();
else app.quit();

async function start(): Promise<void> {
  const waiting: string[] = [...documentsIn(process.argv.slice(1), process.cwd())];
  let openFile = (path: string): void => void waiting.push(path);
  app.on('open-file', (event, path) => {
    event.preventDefault();
    openFile(path);
  });
  app.on('second-instance', (_event, args, from) => {
    const named = documentsIn(args.slice(1), from);
    if (named.length === 0) window?.focus();
    for (const path of named) openFile(path);
  });
  app.on('web-contents-created', (_event, contents) => {
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  });

  let window: BrowserWindow | null = null;
  await app.whenReady();
  refusePermissions(session.defaultSession);
  protocol.handle(scheme, ({ url }) => servePage(join(here, '../page'), url));

  const shared = events();
  const files = documentFiles(randomUUID);
  const opened = await openStore({ folder, now: new Date().toISOString() });
  const running = jobs(shared.tell, randomUUID);
  const pages = hearPages();
  let lastFolder = app.getPath('documents');

  function show(): void {
    const mine = openWindow(folder, preloadIn(here));
    window = mine;
    const host = hostOf({
      carrier: 'electron',
      versions: { Stillplate: programVersion, Electron: process.versions.electron ?? '', Node: process.versions.node },
      dataFolder: folder,
      opened,
      files,
      jobs: running,
      events: shared,
      dialogs: desktopDialogs(mine, () => lastFolder),
      noteWork,
      shows: ({ title, file, unsaved }) => {
        mine.setTitle(title);
        mine.setDocumentEdited(unsaved);
        if (file !== null && process.platform === 'darwin') mine.setRepresentedFilename(file);
      },
      now: () => new Date().toISOString(),
      newId: randomUUID,
    });
    const tell = pages.join(mine.webContents, host);
    Menu.setApplicationMenu(
      Menu.buildFromTemplate(
        menuTemplate(process.platform === 'darwin', (command) => tell({ kind: 'menu', command }), '&Quit'),
      ),
    );
    openFile = (path) => void handOver(path, tell);
    for (const path of waiting.splice(0)) openFile(path);
    mine.on('closed', () => {
      if (window === mine) window = null;
      openFile = (path) => void waiting.push(path);
    });
  }

  /** A file that the system asks us to open goes to the page as a handle, a name and its text. */
  async function handOver(path: string, tell: (event: HostEvent) => void): Promise<void> {
    lastFolder = dirname(path);
    try {
      const file = await files.choose(path);
      app.addRecentDocument(path);
      tell({ kind: 'open-file', file });
      window?.show();
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      tell({ kind: 'refused', what: error.what, mend: error.mend });
    }
  }

  nativeTheme.on('updated', () => shared.tell({ kind: 'theme', dark: nativeTheme.shouldUseDarkColors }));
  app.on('activate', () => {
    if (!window) show();
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  app.on('will-quit', () => {
    running.close();
    void opened.store?.close();
  });
  show();
}
