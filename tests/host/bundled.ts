import { build } from 'esbuild';
import { createHash, randomUUID } from 'node:crypto';
import { mkdir, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const made = new Map<string, Promise<URL>>();

/** A program of this project as plain Node starts it, bundled: a thread and a child process read no TypeScript. */
export function bundled(entry: string): Promise<URL> {
  const found = made.get(entry) ?? bundle(entry);
  made.set(entry, found);
  return found;
}

/** As build/bundle.mjs does for the desktop side, in one file. */
async function bundle(entry: string): Promise<URL> {
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: [entry],
    write: false,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    external: ['pdfkit', 'fontkit', 'pdfjs-dist', 'better-sqlite3', 'electron'],
    banner: {
      js: "import { createRequire as _createRequire } from 'node:module'; const require = _createRequire(import.meta.url);",
    },
    logLevel: 'warning',
  });
  const { contents } = outputFiles[0]!;
  const folder = join(root, 'build/bundled/tests');
  const hash = createHash('sha256').update(contents).digest('hex').slice(0, 16);
  const file = join(folder, `${entry.replace(/\W+/g, '-')}-${hash}.mjs`);
  await mkdir(folder, { recursive: true });
  // Test files run side by side: none may read what another has half written.
  const half = `${file}.${randomUUID()}`;
  await writeFile(half, contents);
  await rename(half, file);
  return pathToFileURL(file);
}

export const storeWorker = (): Promise<URL> => bundled('electron/host/store/store-worker.ts');
export const noteWorker = (): Promise<URL> => bundled('electron/host/note-worker.ts');
export const verifyWorker = (): Promise<URL> => bundled('electron/host/verify-worker.ts');
