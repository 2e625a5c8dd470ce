import { app, dialog, Menu, nativeTheme, protocol, session } from 'electron';
import { randomUUID } from 'node:crypto';
import { mkdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { HostEvent } from '../core/host/host-schema.ts';
import { Refusal } from '../core/refusal.ts';
import { programVersion } from '../core/result.ts';
import { documentFiles } from './host/document-files.ts';
import { events } from './host/events.ts';
import { hostOf } from './host/host-of.ts';
import { jobs } from './host/jobs.ts';
import { noteWork } from './host/note-work.ts';
import { verifyWork } from './host/verify-work.ts';
import { dataFolder } from './host/store/data-folder.ts';
import { openStore } from './host/store/open-store.ts';
import { desktopDialogs } from './window/desktop-dialogs.ts';
import { documentsIn } from './window/documents-in.ts';
import { keepAtHome, refusePermissions, refuseRemoteContent } from './window/guard.ts';
import { hearPages } from './window/ipc.ts';
import { menuTemplate } from './window/menu.ts';
import { openWindow, type OpenedWindow } from './window/open-window.ts';
import { scheme } from './window/page-address.ts';
import { printing } from './window/printing.ts';
import { servePage } from './window/serve-page.ts';
import { sqliteBinding } from './window/sqlite-binding.ts';

const here = dirname(fileURLToPath(import.meta.url));
const folder = dataFolder(process.env, process.platform);

app.enableSandbox();
protocol.registerSchemesAsPrivileged([
  { scheme, privileges: { standard: true, secure: true, supportFetchAPI: true, corsEnabled: false } },
]);
// The name under which Windows groups the window and its recent documents; packaging names the same.
if (process.platform === 'win32') app.setAppUserModelId('stillplate.workbench');
keepBrowserDataIn(join(folder, 'browser'));

// One program for a data folder: a second start hands its files over and ends.
if (app.requestSingleInstanceLock())
  start().catch((error: unknown) => {
    console.error(error);
    dialog.showErrorBox('Stillplate cannot start', error instanceof Error ? error.message : String(error));
    app.exit(1);
  });
else app.quit();

/** What Chromium keeps lies with the documents: the lock for one program is then one for a data folder. */
function keepBrowserDataIn(place: string): void {
  try {
    mkdirSync(place, { recursive: true });
  } catch {
    // The store says in words why the data folder cannot be used; Electron's own place serves until then.
    return;
  }
  app.setPath('userData', place);
}

async function start(): Promise<void> {
  const waiting: string[] = [...documentsIn(process.argv.slice(1), process.cwd())];
  let shown: (OpenedWindow & { readonly tell: (event: HostEvent) => void }) | null = null;
  /** Opens a window once everything is there that one needs. */
  let show: (() => void) | null = null;

  app.on('open-file', (event, path) => {
    event.preventDefault();
    take([path]);
  });
  app.on('second-instance', (_event, args, from) => take(documentsIn(args.slice(1), from)));
  app.on('web-contents-created', (_event, contents) => keepAtHome(contents));

  await app.whenReady();
  refusePermissions(session.defaultSession);
  refuseRemoteContent(session.defaultSession);
  protocol.handle(scheme, (request) => servePage(join(here, '../page'), request));

  const shared = events();
  const files = documentFiles(randomUUID);
  const nativeBinding = sqliteBinding(here);
  const opened = await openStore({
    folder,
    now: new Date().toISOString(),
    ...(nativeBinding === null ? {} : { nativeBinding }),
  });
  const running = jobs(shared.tell);
  const pages = hearPages();
  const printed = printing(join(folder, 'printing'));
  await printed.clear();
  let lastFolder = app.getPath('documents');
  /** What a closing window still writes. */
  const closing = new Set<Promise<void>>();

  show = () => {
    const mine = openWindow({
      folder,
      preload: join(here, 'preload.cjs'),
      last: (work) => {
        closing.add(work);
        void work.finally(() => closing.delete(work));
      },
    });
    const { window } = mine;
    const host = hostOf({
      carrier: 'electron',
      versions: {
        Stillplate: programVersion,
        Electron: process.versions.electron ?? '',
        Chromium: process.versions['chrome'] ?? '',
        Node: process.versions.node,
      },
      dataFolder: folder,
      opened,
      files,
      jobs: running,
      events: shared,
      dialogs: desktopDialogs(window, () => lastFolder, printed),
      noteWork,
      verifyWork,
      shows: mine.mark,
      now: () => new Date().toISOString(),
      newId: randomUUID,
    });
    const now = { ...mine, tell: pages.join(window.webContents, host) };
    shown = now;
    window.on('closed', () => {
      if (shown === now) shown = null;
    });
    handOver();
  };

  /** Files that the system asks us to open, or a second start without any: the window comes forward. */
  function take(paths: readonly string[]): void {
    waiting.push(...paths);
    if (!show) return;
    if (!shown) return show();
    handOver();
    shown.comeForward();
  }

  /** A file goes to the page as a handle, a name and its text. */
  function handOver(): void {
    if (!shown) return;
    const { tell } = shown;
    for (const path of waiting.splice(0)) {
      lastFolder = dirname(path);
      files.choose(path).then(
        (file) => {
          app.addRecentDocument(path);
          tell({ kind: 'open-file', file });
        },
        (error: unknown) => {
          if (error instanceof Refusal) return tell({ kind: 'refused', what: error.what, mend: error.mend });
          console.error(error);
          tell({ kind: 'refused', what: `“${basename(path)}” cannot be opened`, mend: 'Report this, please: it is our fault.' }); // prettier-ignore
        },
      );
    }
  }

  app.setAboutPanelOptions({ applicationName: 'Stillplate', applicationVersion: programVersion, copyright: '' });
  Menu.setApplicationMenu(
    Menu.buildFromTemplate(
      menuTemplate(process.platform === 'darwin', (command) => {
        if (!shown) show?.();
        shown?.tell({ kind: 'menu', command });
      }),
    ),
  );
  nativeTheme.on('updated', () => shared.tell({ kind: 'theme', dark: nativeTheme.shouldUseDarkColors }));
  app.on('activate', () => {
    if (!shown) show?.();
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  // The program ends when what was asked of the disk is done, not before.
  let ended = false;
  app.on('will-quit', (event) => {
    if (ended) return;
    event.preventDefault();
    running.close();
    void Promise.allSettled([opened.store?.close(), printed.clear(), ...closing]).then(() => {
      ended = true;
      app.quit();
    });
  });
  show();
}
