import { access, constants } from 'node:fs/promises';
import { delimiter, join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';
import { carriedBrowser } from './carried-browser.ts';

/** Software GL, the same on a machine with and without a graphics card, and no calls home. */
const flags = [
  '--no-sandbox',
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-background-networking',
  '--disable-component-update',
  '--no-first-run',
];

/** The page is put together without GL, and edges in the picture are not smoothed: colours and places stay, most of the work goes. */
const plain = ['--disable-gpu-compositing', '--webgl-antialiasing-mode=none'];

/** Starts a headless browser with software GL for a test. The caller closes it. `extra`: further flags, for example `--disable-webgl`. */
export const openBrowser = (extra: readonly string[] = []): Promise<Browser> => openBrowserInFull([...plain, ...extra]);

/** The same as a window is drawn on a desk, smoothed and all: for pictures, and for times of frames. */
export async function openBrowserInFull(extra: readonly string[] = []): Promise<Browser> {
  return chromium.launch({ executablePath: await browserPath(), args: [...flags, ...extra], headless: true });
}

/** Names under which the system's Chromium or Chrome is found. */
const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/** The browser of STILLPLATE_BROWSER, else the system's, else the one that @sparticuz/chromium unpacks (Linux). */
export async function browserPath(): Promise<string> {
  const told = process.env.STILLPLATE_BROWSER;
  if (told) {
    if (await isProgram(told)) return told;
    throw new Error(`STILLPLATE_BROWSER names ${told}, which is no program. Name a Chromium or Chrome, or unset it.`);
  }
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  for (const name of names)
    for (const folder of folders) if (await isProgram(join(folder, name))) return join(folder, name);
  return carriedBrowser();
}

const isProgram = (path: string): Promise<boolean> =>
  access(path, constants.X_OK).then(
    () => true,
    () => false,
  );
