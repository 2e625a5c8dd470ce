import { readFile, realpath } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import { isOurs } from './page-address.ts';
import { pageHeaders } from './content-policy.ts';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.json': 'application/json; charset=utf-8',
  '.ttf': 'font/ttf',
  '.map': 'application/json; charset=utf-8',
  '.wasm': 'application/wasm',
};

/**
 * Answers a request of the page's own scheme with a file of the bundled page. Everything else is not found: another
 * host, a way out of the folder (also through a link), a kind of file that no page has.
 */
export async function servePage(folder: string, { url, method }: Pick<Request, 'url' | 'method'>): Promise<Response> {
  const missing = new Response('Not found', { status: 404, headers: pageHeaders });
  if (!isOurs(url) || method !== 'GET') return missing;
  const { pathname } = new URL(url);
  let wanted: string;
  try {
    wanted = decodeURIComponent(pathname);
  } catch {
    return missing;
  }
  const type = types[extname(wanted)];
  if (!type || wanted.includes('\0')) return missing;
  try {
    const root = await realpath(folder);
    const file = await realpath(join(root, wanted));
    if (!file.startsWith(root + sep)) return missing;
    return new Response(await readFile(file), { headers: { ...pageHeaders, 'Content-Type': type } });
  } catch {
    // Whatever keeps a file from being read, the page is told no more than that it is not there.
    return missing;
  }
}
