import { pageHeaders } from './content-policy.ts';
import { isOurs } from './page-address.ts';
import { pageFile } from './page-file.ts';

/** Answers a request of the page's own scheme with a file of the bundled page; another host's, or another method's, is not found. */
export async function servePage(folder: string, { url, method }: Pick<Request, 'url' | 'method'>): Promise<Response> {
  const file = isOurs(url) && method === 'GET' ? await pageFile(folder, new URL(url).pathname) : null;
  if (!file) return new Response('Not found', { status: 404, headers: pageHeaders });
  return new Response(file.bytes as Uint8Array<ArrayBuffer>, {
    headers: { ...pageHeaders, 'Content-Type': file.type },
  });
}
