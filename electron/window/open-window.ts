import { BrowserWindow, dialog, nativeTheme, screen } from 'electron';
import type { Takes } from '../../core/host/host.ts';
import { keepPlace, keptPlace } from './kept-place.ts';
import { pageAddress } from './page-address.ts';
import { placeOnDisplays } from './window-place.ts';

export interface OpenedWindow {
  readonly window: BrowserWindow;
  /** Shows what the page holds in the title, with a mark for what is not kept yet. */
  readonly mark: (state: Takes<'showState'>) => void;
  readonly comeForward: () => void;
}

/** More crashes than this within `soon` ms are no accident: the page would crash again. */
const reloads = 3;
const soon = 60_000;

/**
 * A window with our page, where it stood last time: isolated, sandboxed, without Node. `last` hears what is still
 * written while it closes.
 */
export function openWindow({
  folder,
  preload,
  last,
}: {
  readonly folder: string;
  readonly preload: string;
  readonly last: (work: Promise<void>) => void;
}): OpenedWindow {
  const place = placeOnDisplays(
    keptPlace(folder),
    screen.getAllDisplays().map(({ workArea }) => workArea),
  );
  const window = new BrowserWindow({
    x: place.x,
    y: place.y,
    width: place.width,
    height: place.height,
    minWidth: Math.min(1024, place.width),
    minHeight: Math.min(700, place.height),
    show: false,
    title: 'Stillplate',
    // The page's own paper, so that nothing flashes before it is drawn.
    backgroundColor: nativeTheme.shouldUseDarkColors ? '#12181b' : '#fbfaf7',
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    },
  });
  const { webContents } = window;
  if (place.maximised) window.maximize();
  window.once('ready-to-show', () => window.show());
  // The title is that of `mark`: the page's own knows no mark.
  window.on('page-title-updated', (event) => event.preventDefault());
  window.on('close', () => {
    const kept = keepPlace(folder, { ...window.getNormalBounds(), maximised: window.isMaximized() });
    last(kept.catch((error: unknown) => console.error(`The window's place cannot be kept: ${String(error)}`)));
  });

  // The page asks to stay while an edit is not acknowledged; Electron would keep the window open without a word.
  webContents.on('will-prevent-unload', (event) => {
    const answer = dialog.showMessageBoxSync(window, {
      type: 'warning',
      message: 'The last edits are not in the store yet.',
      detail: 'They are written as soon as the disk takes them. Closing now may lose them.',
      buttons: ['Keep open', 'Close all the same'],
      defaultId: 0,
      cancelId: 0,
    });
    if (answer === 1) event.preventDefault();
  });

  // A page that crashed comes back with every edit that was kept; one that crashes again and again asks first.
  const crashes: number[] = [];
  webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason === 'clean-exit' || window.isDestroyed()) return;
    const now = performance.now();
    crashes.push(now);
    if (crashes.filter((time) => now - time < soon).length <= reloads) return webContents.reload();
    const answer = dialog.showMessageBoxSync(window, {
      type: 'error',
      message: 'The window stopped several times in a minute.',
      detail: `Every edit that was acknowledged is kept. (${reason})`,
      buttons: ['Close Stillplate', 'Load it once more'],
      defaultId: 0,
      cancelId: 0,
    });
    crashes.length = 0;
    if (answer === 1) webContents.reload();
    else window.destroy();
  });

  // A load that a refused navigation or a closing window breaks off is no fault; anything else is told.
  window.loadURL(pageAddress).catch((error: unknown) => {
    if (!window.isDestroyed()) console.error(`The page was not loaded: ${String(error)}`);
  });
  return {
    window,
    mark: ({ title, unsaved }) => {
      window.setTitle(unsaved ? `• ${title}` : title);
      window.setDocumentEdited(unsaved);
    },
    comeForward: () => {
      if (window.isMinimized()) window.restore();
      window.show();
      window.focus();
    },
  };
}
