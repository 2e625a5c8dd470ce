import { build, type Plugin } from 'esbuild';
import { copyFile, mkdir, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll } from 'vitest';
import { noteWorker, storeWorker, verifyWorker } from '../host/bundled.ts';
import { desktop, type Desktop } from './electron.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** A change of a source file while it is bundled: a guard undone. `find` must be there. */
export interface Undo {
  readonly file: string;
  readonly find: string | RegExp;
  readonly put: string;
}

export interface Started {
  readonly desk: Desktop;
  /** The data folder. */
  readonly folder: string;
  /** Ends the program as the user does, and waits until it is over. */
  readonly end: () => Promise<void>;
}

export interface StartWith {
  readonly undo?: readonly Undo[];
  /** A folder with the page; a small page of the tests by default. */
  readonly page?: string;
  /** Words after the program's name. */
  readonly args?: readonly string[];
  /** A data folder of an earlier start. */
  readonly folder?: string;
  /** What the test decides before the program starts. */
  readonly before?: (desk: Desktop) => void;
}

/** The names of main's imports, given by the double that is started next. */
const seat = '__electronOfTheNextStart';
let starts = 0;

/** Starts the real main process in this Node, bundled as for Electron but for `electron` itself, which is the double. */
export async function startMain(
  browser: Browser,
  { undo = [], page, args = [], folder, before }: StartWith = {},
): Promise<Started> {
  const program = await bundledMain(undo, page);
  const data = folder ?? (await mkdtemp(join(tmpdir(), 'stillplate-electron-')));
  const desk = desktop(browser);
  before?.(desk);
  const { argv, env } = process;
  process.argv = [argv[0]!, program, ...args];
  process.env = { ...env, STILLPLATE_DATA: data };
  (globalThis as Record<string, unknown>)[seat] = desk.electron;
  // A program starts when it is imported: each start is an address of its own.
  await import(/* @vite-ignore */ `${pathToFileURL(program).href}?start=${++starts}`);
  if (desk.isFirst) await until(() => desk.windows.length > 0);
  process.argv = argv;
  process.env = env;
  return {
    desk,
    folder: data,
    end: async () => {
      for (const window of desk.windows) window.asksToStay = false;
      desk.quit();
      await desk.ended;
      await desk.close();
      if (folder === undefined) await rm(data, { recursive: true, force: true });
    },
  };
}

/** Waits until something is so; the test's own time limit ends it. */
export async function until(isSo: () => boolean | Promise<boolean>): Promise<void> {
  while (!(await isSo())) await new Promise((resolve) => setTimeout(resolve, 10));
}

const made = new Map<string, Promise<string>>();
const bundles = join(root, 'build/bundled/tests');
const places: string[] = [];
afterAll(async () => {
  for (const place of places) await rm(place, { recursive: true, force: true });
});

function bundledMain(undo: readonly Undo[], page: string | undefined): Promise<string> {
  const key = JSON.stringify([undo.map(({ file, find, put }) => [file, String(find), put]), page]);
  const found = made.get(key) ?? bundle(undo, page);
  made.set(key, found);
  return found;
}

async function bundle(undo: readonly Undo[], page: string | undefined): Promise<string> {
  // A folder of its own: files of tests run side by side, and no number of a worker tells them apart.
  await mkdir(bundles, { recursive: true });
  const place = await mkdtemp(join(bundles, 'electron-'));
  places.push(place);
  const folder = join(place, 'desktop');
  await mkdir(folder, { recursive: true });
  const shared = {
    absWorkingDir: root,
    bundle: true,
    platform: 'node',
    target: 'node20',
    logLevel: 'warning',
  } as const;
  const undone = changed(undo);
  const external = ['pdfkit', 'fontkit', 'pdfjs-dist', 'better-sqlite3'];
  await build({
    ...shared,
    plugins: [undone, theDouble],
    external,
    entryPoints: ['electron/main.ts'],
    format: 'esm',
    outfile: join(folder, 'main.mjs'),
    banner: { js: "import { createRequire as _createRequire } from 'node:module'; const require = _createRequire(import.meta.url);" }, // prettier-ignore
  });
  await build({ ...shared, plugins: [undone], external: ['electron'], entryPoints: ['electron/preload.ts'], format: 'cjs', outfile: join(folder, 'preload.cjs') }); // prettier-ignore
  await copyFile(await storeWorker(), join(folder, 'store-worker.mjs'));
  await copyFile(await noteWorker(), join(folder, 'note-worker.mjs'));
  await copyFile(await verifyWorker(), join(folder, 'verify-worker.mjs'));
  await symlink(page ?? (await smallPage(place)), join(place, 'page'), 'dir');
  return join(folder, 'main.mjs');
}

const theDouble: Plugin = {
  name: 'the double',
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /^electron$/ }, () => ({ path: 'electron', namespace: 'double' }));
    onLoad({ filter: /.*/, namespace: 'double' }, () => ({ contents: `module.exports = globalThis.${seat};` }));
  },
};

const changed = (undo: readonly Undo[]): Plugin => ({
  name: 'undo',
  setup: ({ onLoad }) => {
    for (const file of new Set(undo.map((each) => each.file)))
      onLoad({ filter: new RegExp(`/${file.replace(/[.]/g, '\\.')}$`) }, async ({ path }) => {
        let contents = await readFile(path, 'utf8');
        for (const { find, put } of undo.filter((each) => each.file === file)) {
          const after = contents.replace(find, put);
          if (after === contents) throw new Error(`${file} holds nothing to undo: ${String(find)}`);
          contents = after;
        }
        return { contents, loader: 'ts' };
      });
  },
});

/** A page of our own for tests that need no more of it than that it calls and listens. */
async function smallPage(place: string): Promise<string> {
  const folder = join(place, 'small-page');
  await mkdir(join(folder, 'samples'), { recursive: true });
  await writeFile(join(folder, 'index.html'), '<!doctype html><html lang="en-GB"><title>Small page</title><script type="module" src="main.js"></script></html>'); // prettier-ignore
  await writeFile(
    join(folder, 'main.js'),
    `const heard = []; window.heard = heard; stillplateHost.listen((event) => heard.push(event));`,
  );
  await writeFile(join(folder, 'secret.txt'), 'a kind of file that no page has');
  await writeFile(join(place, 'outside.json'), '{"outside": true}');
  await symlink(join(place, 'outside.json'), join(folder, 'link.json'));
  return folder;
}
