import { readFile, realpath } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
};

/**
 * A file of the bundled page by the path of a request, or null: no such file, a way out of the folder (also through a
 * link), a kind of file that no page has. `inside: false` leaves the way out open; only a test does that.
 */
export async function pageFile(
  folder: string,
  pathname: string,
  inside = true,
): Promise<{ readonly type: string; readonly bytes: Uint8Array } | null> {
  let wanted: string;
  try {
    wanted = decodeURIComponent(pathname);
  } catch {
    return null;
  }
  const type = types[extname(wanted)];
  if (!type || wanted.includes('\0')) return null;
  try {
    const root = await realpath(folder);
    const file = await realpath(join(root, wanted));
    if (inside && !file.startsWith(root + sep)) return null;
    return { type, bytes: await readFile(file) };
  } catch {
    // Whatever keeps a file from being read, the page is told no more than that it is not there.
    return null;
  }
}
