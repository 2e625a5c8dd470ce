import { get, request as send, type IncomingMessage, type RequestOptions } from 'node:http';
import { bundled } from '../host/bundled.ts';
import type { Host } from '../../core/host/host.ts';
import type { LocalServer } from '../../electron/local/local-server.ts';

export interface Replied {
  readonly status: number;
  readonly headers: IncomingMessage['headers'];
  readonly bytes: Buffer;
}

/** One request as it is, with no client's kindness: path and headers go out as they are given. */
export function ask(port: number, path: string, options: RequestOptions = {}, body?: Uint8Array): Promise<Replied> {
  return new Promise((resolve, reject) => {
    const request = send({ host: '127.0.0.1', port, path, agent: false, ...options }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, bytes: Buffer.concat(parts) }),
      );
      response.on('error', reject);
    });
    request.on('error', reject);
    request.end(body);
  });
}

/** Opens the first address and gives the cookie, as a browser keeps it. */
export async function cookieOf({ address, port }: LocalServer): Promise<string> {
  const { headers, status } = await ask(port, address.slice(address.indexOf('/?')));
  if (status !== 303) throw new Error(`The first address gave ${status}`);
  return headers['set-cookie']![0]!.split(';')[0]!;
}

/** The page's own client, with what a browser gives it: cookie, Origin and server-sent events. */
export async function pageClient(server: LocalServer, cookie: string): Promise<Host> {
  const { localHost } = (await import((await bundled('renderer/host/local-host.ts')).href)) as {
    localHost: () => Host;
  };
  const base = `http://127.0.0.1:${server.port}`;
  const headers = { Cookie: cookie, Origin: base };
  const realFetch = globalThis.fetch;
  const world = globalThis as unknown as Record<string, unknown>;
  world['fetch'] = (path: string, init: RequestInit) =>
    path.startsWith('/call/')
      ? realFetch(`${base}${path}`, { ...init, headers: { ...(init.headers as Record<string, string>), ...headers } })
      : realFetch(path, init);
  // the page never goes here
  world['addEventListener'] = () => undefined;
  world['EventSource'] = class {
    onmessage: ((event: { data: string }) => void) | null = null;
    constructor(path: string) {
      get({ host: '127.0.0.1', port: server.port, path, headers: { Cookie: cookie }, agent: false }, (response) => {
        let text = '';
        response.on('error', () => undefined);
        response.setEncoding('utf8').on('data', (part: string) => {
          text += part;
          for (let end; (end = text.indexOf('\n\n')) >= 0; text = text.slice(end + 2)) {
            const data = /^data: (.*)$/m.exec(text.slice(0, end))?.[1];
            if (data !== undefined) this.onmessage?.({ data });
          }
        });
      }).on('error', () => undefined);
    }
  };
  return localHost();
}
