import { randomBytes } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { refused } from '../../core/host/answer.ts';
import type { Host, HostCall } from '../../core/host/host.ts';
import { fromWire, toWire, wireType } from '../../core/host/wire.ts';
import { Refusal } from '../../core/refusal.ts';
import { serve, type Receive } from '../host/serve.ts';
import { pageHeaders } from '../window/content-policy.ts';
import { pageFile } from '../window/page-file.ts';
import { eventStreams } from './event-streams.ts';
import { guards, sameText, type GuardName, type Site } from './guards.ts';

export interface LocalServer {
  /** The first address: it holds the token that becomes a cookie. */
  readonly address: string;
  readonly port: number;
  readonly close: () => Promise<void>;
}

export interface LocalServerOptions {
  readonly host: Host;
  /** Folder of the bundled page. */
  readonly page: string;
  /** 0: any that is free. */
  readonly port?: number;
  /** Guards that are left out; only a test does that, to see that each is what stops its attack. */
  readonly without?: readonly GuardName[];
  /** Longest message, in bytes. A backup may be longer. */
  readonly longest?: number;
}

const longestMessage = 100_000_000;
const longestBackup = 1_000_000_000;

/**
 * Serves page and host to browsers of this machine: on loopback addresses only, to those who opened the address with
 * the token.
 */
export async function openLocalServer(options: LocalServerOptions): Promise<LocalServer> {
  const token = randomBytes(32).toString('base64url');
  const secret = randomBytes(32).toString('base64url');
  const without = new Set(options.without);
  const events = eventStreams(randomBytes(6).toString('hex'));
  const heard = new Map<string, Parameters<Receive>[1]>();
  serve(options.host, (name, hear) => heard.set(name, hear));
  const stopListening = options.host.listen(events.tell);
  let site: Site = { port: 0, cookieName: '', secret };

  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    for (const [name, value] of Object.entries(pageHeaders)) response.setHeader(name, value);
    const say = (status: number, words: string): void => {
      response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8', Connection: 'close' });
      response.end(`${words}\n`);
    };
    const { pathname, searchParams } = new URL(request.url ?? '/', 'http://local');
    const isEntry = request.method === 'GET' && pathname === '/' && searchParams.has('token');
    for (const [name, guard] of Object.entries(guards)) {
      // The first address is opened from outside, without a cookie: the token is what it brings.
      if (without.has(name as GuardName) || (isEntry && name === 'cookie')) continue;
      const verdict = guard(request, site);
      if (verdict) return say(verdict.status, verdict.what);
    }
    if (isEntry) {
      if (!without.has('token') && !sameText(searchParams.get('token')!, token))
        return say(403, 'This address is of an earlier run. Open the one that Stillplate printed last');
      // The token leaves the address bar, and with it the page's history and what it could send on.
      response.writeHead(303, {
        Location: '/',
        'Set-Cookie': `${site.cookieName}=${secret}; HttpOnly; SameSite=Strict; Path=/`,
      });
      return void response.end();
    }
    const call = /^\/call\/([A-Za-z]+)$/.exec(pathname)?.[1];
    if (request.method === 'POST') {
      const hear = heard.get((call ?? '') as HostCall);
      if (!hear) return say(404, 'There is no such call');
      const most = call === 'restoreBackup' ? longestBackup : (options.longest ?? longestMessage);
      const body = await bodyOf(request, without.has('size') ? Infinity : most);
      if (!body) return say(413, `The message is longer than ${most} bytes`);
      const given = await messageOf(body, (message) => hear(message, { isOurWindow: true, url: request.headers.origin ?? '' })); // prettier-ignore
      response.writeHead(200, { 'Content-Type': wireType });
      return void response.end(toWire(given));
    }
    if (call) return say(405, 'A call is a POST');
    if (pathname === '/events') return events.serve(request, response);
    const file = await pageFile(options.page, pathname === '/' ? '/index.html' : pathname, !without.has('path'));
    if (!file) return say(404, 'There is no such file');
    response.writeHead(200, { 'Content-Type': file.type, 'Content-Length': file.bytes.length });
    response.end(request.method === 'HEAD' ? undefined : file.bytes);
  };

  const { servers, port } = await onLoopback(options.port ?? 0, (request, response) => {
    answer(request, response).catch((error: unknown) => {
      // A connection that broke off has nobody to be told; anything else is a fault of ours.
      if (!request.destroyed) console.error(error);
      response.destroy();
    });
  });
  // Cookies do not know ports: another program on this machine must not get ours under the same name.
  site = { port, cookieName: `stillplate-${port}`, secret };
  return {
    address: `http://127.0.0.1:${port}/?token=${token}`,
    port,
    close: async () => {
      stopListening();
      events.close();
      await Promise.all(servers.map(closed));
    },
  };
}

/** The host's answer to what came, also when it is no message. */
async function messageOf(body: Uint8Array, hear: (message: unknown) => Promise<unknown>): Promise<unknown> {
  let message: unknown;
  try {
    message = fromWire(body);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return refused(error.all[0]!);
  }
  return hear(message);
}

/** The body of a request, or null when it is longer than allowed: then no more of it is read. */
async function bodyOf(request: IncomingMessage, most: number): Promise<Uint8Array | null> {
  if (Number(request.headers['content-length'] ?? 0) > most) return null;
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length;
    if (size > most) return null;
    parts.push(part);
  }
  return Buffer.concat(parts);
}

/** Servers on both loopback addresses at one port; on the first alone where the machine has no IPv6. */
async function onLoopback(wanted: number, hear: (request: IncomingMessage, response: ServerResponse) => void) {
  for (let tries = 5; ; tries--) {
    const first = await listening(hear, '127.0.0.1', wanted);
    const { port } = first.address() as AddressInfo;
    try {
      return { servers: [first, await listening(hear, '::1', port)], port };
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code;
      if (code === 'EADDRNOTAVAIL' || code === 'EAFNOSUPPORT' || code === 'EINVAL') return { servers: [first], port };
      await closed(first);
      // Another program has that port on the other address: any other will do, unless this one was asked for.
      if (code !== 'EADDRINUSE' || wanted !== 0 || tries === 0) throw error;
    }
  }
}

function listening(
  hear: (request: IncomingMessage, response: ServerResponse) => void,
  address: string,
  port: number,
): Promise<Server> {
  const server = createServer({ headersTimeout: 10_000, requestTimeout: 120_000, maxHeaderSize: 16_384 }, hear);
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen({ host: address, port, exclusive: true }, () => resolve(server));
  });
}

const closed = (server: Server): Promise<void> =>
  new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
