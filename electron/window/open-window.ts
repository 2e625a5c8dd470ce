import { BrowserWindow, screen } from 'electron';
import { join } from 'node:path';
import { keepAtHome } from './guard.ts';
import { keepPlace, keptPlace } from './kept-place.ts';
import { pageAddress } from './page-address.ts';
import { placeOnDisplays } from './window-place.ts';

/** A window with our page, where it stood last time: isolated, sandboxed, without Node. */
export function openWindow(folder: string, preload: string): BrowserWindow {
  const place = placeOnDisplays(
    keptPlace(folder),
    screen.getAllDisplays().map(({ workArea }) => workArea),
  );
  const window = new BrowserWindow({
    x: place.x,
    y: place.y,
    width: place.width,
    height: place.height,
    minWidth: 1024,
    minHeight: 700,
    show: false,
    title: 'Stillplate',
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
  if (place.maximised) window.maximize();
  keepAtHome(window.webContents);
  window.once('ready-to-show', () => window.show());
  window.on('close', () => {
    void keepPlace(folder, { ...window.getNormalBounds(), maximised: window.isMaximized() }).catch((error: unknown) =>
      console.error(`The window's place cannot be kept: ${String(error)}`),
    );
  });
  // A page that crashed comes back with every edit that was kept.
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason !== 'clean-exit' && !window.isDestroyed()) window.webContents.reload();
  });
  void window.loadURL(pageAddress);
  return window;
}

export const preloadIn = (folder: string): string => join(folder, 'preload.cjs');
