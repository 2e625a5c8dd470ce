import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { granted } from '../../core/host/answer.ts';
import { hostCalls } from '../../core/host/host-over.ts';
import type { Host } from '../../core/host/host.ts';
import { fromWire, toWire, wireType } from '../../core/host/wire.ts';
import type { GuardName } from '../../electron/local/guards.ts';
import { openLocalServer, type LocalServer } from '../../electron/local/local-server.ts';
import { ask, cookieOf, type Replied } from './browser-like.ts';

/** A host that grants everything: what gets through to it was not stopped. */
const open = {
  ...Object.fromEntries(hostCalls.map((name) => [name, async () => granted('let through')])),
  listen: () => () => undefined,
} as unknown as Host;

let folder: string;
let page: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stillplate-local-'));
  page = join(folder, 'page');
  await mkdir(page);
  await writeFile(join(page, 'index.html'), '<!doctype html><title>page</title>');
  await writeFile(join(page, 'main.js'), 'export {}');
  await writeFile(join(folder, 'secret.json'), '{"secret":1}');
  await symlink(join(folder, 'secret.json'), join(page, 'link.json'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function on<T>(
  without: readonly GuardName[],
  test: (server: LocalServer, cookie: string) => Promise<T>,
): Promise<T> {
  const server = await openLocalServer({ host: open, page, without, longest: 10_000 });
  try {
    return await test(server, await cookieOf(server));
  } finally {
    await server.close();
  }
}

type Attack = (server: LocalServer, cookie: string) => Promise<Replied>;
/** A call as our page makes it, with some headers otherwise; null takes one away. */
const call =
  (changes: Readonly<Record<string, string | null>>, body = toWire({})): Attack =>
  ({ port }, cookie) => {
    const headers = {
      Host: `127.0.0.1:${port}`,
      Origin: `http://127.0.0.1:${port}`,
      Cookie: cookie,
      'Content-Type': wireType,
      ...changes,
    };
    const given = Object.fromEntries(
      Object.entries(headers).filter((each): each is [string, string] => each[1] !== null),
    );
    return ask(port, '/call/listDocuments', { method: 'POST', headers: given }, body);
  };
const read =
  (path: string, changes: Readonly<Record<string, string>> = {}): Attack =>
  ({ port }, cookie) =>
    ask(port, path, { headers: { Cookie: cookie, ...changes } });

const letThrough = ({ status, bytes }: Replied): boolean =>
  status === 200 && (fromWire(bytes) as { value?: unknown }).value === 'let through';
/** The whole message was read; that it is no message of a call is said in the answer. */
const read200 = ({ status }: Replied): boolean => status === 200;
const shows =
  (text: string) =>
  ({ status, bytes }: Replied): boolean =>
    status === 200 && bytes.includes(text);

/** Each attack is right in all but one thing; its guard is the only one that stops it. */
const attacks: readonly [name: string, guard: GuardName, attack: Attack, status: number, worked: (reply: Replied) => boolean][] = [
  ['a foreign name that points to this machine (DNS rebinding)', 'host', call({ Host: 'plate.example:80', Origin: null }), 421, () => true],
  ['a read under a foreign name', 'host', read('/index.html', { Host: 'plate.example' }), 421, shows('page')],
  ['our name with another port', 'host', read('/index.html', { Host: '127.0.0.1:1' }), 421, shows('page')],
  ['a call from a page of another site', 'origin', call({ Origin: 'http://plate.example' }), 403, letThrough],
  ['a call from another port of this machine', 'origin', call({ Origin: 'http://127.0.0.1:1' }), 403, letThrough],
  ['a call from a page without a site', 'origin', call({ Origin: 'null' }), 403, letThrough],
  ['a call that says no site', 'origin', call({ Origin: null }), 403, letThrough],
  ['a read that another site set off', 'origin', read('/main.js', { 'Sec-Fetch-Site': 'cross-site' }), 403, shows('export')],
  ['events read by another site', 'origin', read('/main.js', { Origin: 'http://plate.example' }), 403, shows('export')],
  ['a call without the cookie', 'cookie', call({ Cookie: null }), 403, letThrough],
  ['a call with a guessed cookie', 'cookie', ({ port }, cookie) => call({ Cookie: `${cookie.split('=')[0]}=guess` })({ port } as LocalServer, cookie), 403, letThrough],
  ['a read without the cookie', 'cookie', read('/main.js', { Cookie: 'other=1' }), 403, shows('export')],
  ['a form of another site (a type that needs no leave)', 'type', call({ 'Content-Type': 'text/plain' }), 415, letThrough],
  ['a message that is too large', 'size', call({}, toWire({ text: 'x'.repeat(20_000) })), 413, read200],
  ['a message that is too large and says no length', 'size', call({ 'Transfer-Encoding': 'chunked' }, toWire({ text: 'x'.repeat(20_000) })), 413, read200],
  ['a way out of the folder', 'path', read('/..%2fsecret.json'), 404, shows('secret')],
  ['a way out of the folder, further in', 'path', read('/parts/..%2f..%2fsecret.json'.replace('/parts/..%2f', '/')), 404, shows('secret')],
  ['a link that leads out of the folder', 'path', read('/link.json'), 404, shows('secret')],
  ['a token of an earlier run', 'token', read('/?token=guess'), 403, ({ status }) => status === 303],
  ['a method that asks leave for another site', 'method', ({ port }, cookie) => ask(port, '/main.js', { method: 'OPTIONS', headers: { Cookie: cookie } }), 405, shows('export')],
]; // prettier-ignore

describe('the local server refuses', () => {
  it.each(attacks)('%s', async (_name, guard, attack, status, worked) => {
    const refusedReply = await on([], attack);
    expect(refusedReply.status).toBe(status);
    expect(refusedReply.bytes.toString()).not.toContain('secret');
    // Without its guard the same attack works: it is this guard that stops it.
    const reply = await on([guard], attack);
    expect(reply.status).not.toBe(status);
    expect(worked(reply)).toBe(true);
  });

  it('a connection from another machine: it listens on loopback addresses only', () =>
    on([], async ({ port }) => {
      const outside = Object.values(networkInterfaces())
        .flat()
        .filter((each) => each && !each.internal && each.family === 'IPv4')
        .map((each) => each!.address);
      const tries = await Promise.all(outside.map((host) => connects(host, port)));
      expect(await connects('127.0.0.1', port)).toBe(true);
      expect(tries.filter((reached) => reached)).toEqual([]);
    }));

  it('files and calls that are not there, and a broken message, in words', () =>
    on([], async (server, cookie) => {
      expect((await read('/none.js')(server, cookie)).status).toBe(404);
      expect((await read('/%zz')(server, cookie)).status).toBe(404);
      expect((await read('/index.html%00.js')(server, cookie)).status).toBe(404);
      expect((await read('/call/about')(server, cookie)).status).toBe(405);
      for (const broken of [Uint8Array.of(), Uint8Array.of(9, 9, 9, 9, 9), Uint8Array.of(0, 0, 0, 2, 123, 125, 7)]) {
        const reply = await call({}, broken)(server, cookie);
        expect(fromWire(reply.bytes)).toMatchObject({ ok: false, refusal: { what: 'What came is no message of Stillplate' } }); // prettier-ignore
      }
      const headers = { Cookie: cookie, Origin: `http://127.0.0.1:${server.port}`, 'Content-Type': wireType };
      for (const name of ['none', 'toString', '__proto__', 'listen'])
        expect((await ask(server.port, `/call/${name}`, { method: 'POST', headers }, toWire({}))).status).toBe(404);
    }));
});

describe('the local server answers', () => {
  it('with the content policy and its companions on every reply', () =>
    on([], async (server, cookie) => {
      for (const reply of [
        await read('/')(server, cookie),
        await read('/main.js')(server, cookie),
        await read('/none')(server, cookie),
        await call({})(server, cookie),
        await call({ Cookie: null })(server, cookie),
        await ask(server.port, server.address.slice(server.address.indexOf('/?'))),
      ])
        expect(reply.headers).toMatchObject({
          'content-security-policy':
            "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'; object-src 'none'; style-src 'self'; img-src 'self' blob: data:; font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
          'x-content-type-options': 'nosniff',
          'referrer-policy': 'no-referrer',
          'cross-origin-opener-policy': 'same-origin',
          'cross-origin-embedder-policy': 'require-corp',
        });
    }));

  it('the first address with a strict cookie, and takes the token out of it', () =>
    on([], async (server) => {
      const { headers } = await ask(server.port, server.address.slice(server.address.indexOf('/?')));
      expect(headers.location).toBe('/');
      expect(headers['set-cookie']![0]).toMatch(/^stillplate-\d+=[\w-]{43}; HttpOnly; SameSite=Strict; Path=\/$/);
      expect(headers['set-cookie']![0]).not.toContain(server.address.split('token=')[1]);
    }));

  it('on both loopback addresses and under localhost', () =>
    on([], async (server, cookie) => {
      for (const [host, name] of [
        ['127.0.0.1', '127.0.0.1'],
        ['127.0.0.1', 'localhost'],
        ['::1', '[::1]'],
      ] as const) {
        const headers = { Cookie: cookie, Host: `${name}:${server.port}` };
        // A machine without IPv6 has one address only.
        const reply = await ask(server.port, '/main.js', { host, headers }).catch(
          (error: NodeJS.ErrnoException) => error,
        );
        if (reply instanceof Error)
          expect(host === '::1' && ['EADDRNOTAVAIL', 'EAFNOSUPPORT', 'ECONNREFUSED'].includes(reply.code ?? '')).toBe(true); // prettier-ignore
        else expect(reply.status).toBe(200);
      }
    }));
});

const connects = (host: string, port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const socket = connect({ host, port, timeout: 2000 }, () => end(true));
    const end = (reached: boolean): void => {
      socket.destroy();
      resolve(reached);
    };
    socket.on('error', () => end(false)).on('timeout', () => end(false));
  });
