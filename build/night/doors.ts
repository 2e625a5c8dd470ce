import { mkdtemp, rm } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { hostCalls } from '../../core/host/host-over.ts';
import { hostSchema } from '../../core/host/host-schema.ts';
import type { Host, HostCall } from '../../core/host/host.ts';
import { fromWire, toWire, wireType } from '../../core/host/wire.ts';
import { Refusal } from '../../core/refusal.ts';
import { run } from '../../electron/command/run.ts';
import { verbs } from '../../electron/command/verbs.ts';
import { serve } from '../../electron/host/serve.ts';
import { openLocalServer } from '../../electron/local/local-server.ts';
import { seeded } from '../../tests/geometry/seeded.ts';

export interface DoorReport {
  readonly cases: number;
  readonly refused: number;
  /** What went wrong, with the seed that brings it back. */
  readonly failures: readonly string[];
}

type Random = () => number;
const one = <T>(of: readonly T[], random: Random): T => of[Math.floor(random() * of.length)]!;

/** Values that a hostile or broken page might send in any place. */
const values = (random: Random): unknown =>
  one<() => unknown>(
    [
      () => null,
      () => random() * 1e9 - 5e8,
      () => one([NaN, Infinity, -1, 0.5, 2 ** 53, 1e308], random),
      () => one(['', 'a', '../../etc', 'x'.repeat(500), '\ud800', '=1+1', '__proto__', 'constructor', '2026-11-26T00:00:00Z'], random), // prettier-ignore
      () => Uint8Array.from({ length: Math.floor(random() * 20) }, () => random() * 256),
      () => Array.from({ length: Math.floor(random() * 4) }, () => values(random)),
      () => JSON.parse('{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}') as unknown,
      () => message(random),
      () => random() > 0.5,
    ],
    random,
  )();

const keys = ['id', 'name', 'text', 'job', 'bytes', 'at', 'after', 'number', 'entries', 'writer', 'remark', 'force', 'handle', 'note', 'against', 'hash', 'file', 'role', 'password', 'certificate', 'reason', 'ask', 'mime', 'unsaved', 'title', 'documentHash']; // prettier-ignore
const message = (random: Random): Record<string, unknown> =>
  Object.fromEntries(Array.from({ length: Math.floor(random() * 5) }, () => [one(keys, random), values(random)]));

/** A message to a call: of the keys that it takes, mostly, with values that may fit. */
function messageTo(name: HostCall, random: Random): unknown {
  if (random() < 0.1) return values(random);
  const wanted = Object.keys(hostSchema[name].takes.shape);
  const given = Object.fromEntries(wanted.filter(() => random() < 0.95).map((key) => [key, values(random)]));
  return random() < 0.1 ? { ...given, ...message(random) } : given;
}

/** A host that hears what comes through: whatever does not fit the schema must never reach it. */
function listening(wrong: (words: string) => void): Host {
  const calls = hostCalls.map((name) => [
    name,
    (given: unknown) => {
      const read = hostSchema[name].takes.safeParse(given);
      if (!read.success) wrong(`${name} was called with what it does not take`);
      return Promise.resolve({ ok: true, value: null });
    },
  ]);
  return { ...Object.fromEntries(calls), listen: () => () => undefined } as unknown as Host;
}

const isRefusal = (answer: unknown): boolean => {
  const { ok, refusal } = answer as { ok: boolean; refusal?: { what: string; mend: string } };
  return !ok && !!refusal?.what && !!refusal.mend;
};

/** A message broken on its way: bytes changed, taken out, put in, cut off. */
function brokenBytes(bytes: Uint8Array, random: Random): Uint8Array {
  const at = Math.floor(random() * bytes.length);
  const changed = bytes.slice();
  changed[at] = Math.floor(random() * 256);
  return one([() => changed, () => bytes.slice(0, at), () => Uint8Array.of(...bytes.subarray(0, at), 255, ...bytes.subarray(at)), () => bytes.slice(at)], random)(); // prettier-ignore
}

/** Messages of the desktop window (“ipc”), past all types. */
export async function fuzzMessages(count: number, seed: number): Promise<DoorReport> {
  const failures: string[] = [];
  let [refused, now] = [0, seed];
  const wrong = (words: string): void => void failures.push(`message, seed ${now}: ${words}`);
  const heard = new Map<HostCall, Parameters<Parameters<typeof serve>[1]>[1]>();
  serve(listening(wrong), (name, hear) => heard.set(name, hear));
  for (let i = 0; i < count; i++) {
    const random = seeded((now = seed + i));
    const name = one(hostCalls, random);
    const isOurWindow = random() > 0.05;
    try {
      const given = messageTo(name, random);
      const answer = await heard.get(name)!(given, { isOurWindow, url: 'x'.repeat(random() * 400) });
      if (isRefusal(answer)) refused += 1;
      else if (!isOurWindow || !answer.ok) wrong(`${name} answered ${JSON.stringify(answer).slice(0, 200)}`);
      // The same message on the wire, whole and broken.
      const wire = toWire(given);
      if (given !== undefined) fromWire(wire);
      fromWire(brokenBytes(wire, random));
    } catch (error) {
      if (!(error instanceof Refusal)) wrong(`${name}: ${String(error)}`);
    }
    if ('polluted' in {}) return { cases: i + 1, refused, failures: [...failures, `message, seed ${now}: prototype changed`] }; // prettier-ignore
  }
  return { cases: count, refused, failures };
}

/** Requests to the local server by one that has the cookie, and by one that has not. */
export async function fuzzLocalServer(count: number, seed: number): Promise<DoorReport> {
  const failures: string[] = [];
  let [refused, now] = [0, seed];
  const wrong = (words: string): void => void failures.push(`request, seed ${now}: ${words}`);
  const folder = await mkdtemp(join(tmpdir(), 'stillplate-doors-'));
  const server = await openLocalServer({ host: listening(wrong), page: folder, longest: 100_000 });
  const send = (path: string, method: string, headers: Record<string, string>, body?: Uint8Array) =>
    new Promise<{ status: number; cookie: string; bytes: Uint8Array }>((resolve, reject) => {
      const sent = request({ host: '127.0.0.1', port: server.port, path, method, headers }, (response) => {
        const parts: Buffer[] = [];
        response.on('data', (part: Buffer) => parts.push(part));
        response.on('end', () => resolve({ status: response.statusCode ?? 0, cookie: response.headers['set-cookie']?.[0]?.split(';')[0] ?? '', bytes: Buffer.concat(parts) })); // prettier-ignore
        response.on('error', reject);
      });
      sent.on('error', reject);
      sent.end(body);
    });
  try {
    const { cookie } = await send(server.address.slice(server.address.indexOf('/?')), 'GET', {});
    const ours = { Cookie: cookie, Origin: `http://127.0.0.1:${server.port}`, 'Content-Type': wireType };
    for (let i = 0; i < count; i++) {
      const random = seeded((now = seed + i));
      const name = one(hostCalls, random);
      const path = one([`/call/${name}`, `/call/${name}`, `/call/${name}`, '/call/__proto__', '/call/constructor', '/..%2f..%2fetc/passwd', '/%00', '//etc', '/?token=x', `/call/${name}/../about`], random); // prettier-ignore
      const method = one(['POST', 'POST', 'POST', 'POST', 'GET', 'PUT', 'DELETE'], random);
      const allowed = random() > 0.2;
      const headers: Record<string, string> = allowed ? ours : one<Record<string, string>>([{ ...ours, Cookie: 'a=b' }, { ...ours, Origin: 'http://elsewhere.example' }, { Cookie: cookie }, { ...ours, Host: 'elsewhere.example' }, { ...ours, 'Content-Type': 'text/plain' }], random); // prettier-ignore
      const wire = toWire(messageTo(name, random));
      const body = random() < 0.5 ? wire : brokenBytes(wire, random);
      try {
        const { status, bytes } = await send(path, method, headers, method === 'GET' ? undefined : body);
        if (status >= 400) refused += 1;
        if (status >= 500) wrong(`${method} ${path} gave ${status}`);
        if (status === 200 && !(allowed && method === 'POST')) wrong(`${method} ${path} was let in with ${JSON.stringify(headers)}`); // prettier-ignore
        if (status === 200) {
          const answer = fromWire(bytes) as { ok: boolean };
          if (!answer.ok && !isRefusal(answer)) wrong(`${path} refused without words`);
          if (!answer.ok) refused += 1;
        }
      } catch (error) {
        wrong(`${method} ${path}: ${String(error)}`);
      }
    }
  } finally {
    await server.close();
    await rm(folder, { recursive: true });
  }
  return { cases: count, refused, failures };
}

const words = ['', '-', '--', '--json', '--out', '--option', '--option=', 'x'.repeat(2000), '__proto__', '--__proto__', '--constructor=1', '\u0000', '../nothing.stillplate', 'nothing.pdf', 'nothing.csv', '.', '-1', '1e999', 'NaN', '10 furlong', '=cmd()', '--certificate', '--date', '2026-13-45', '--role', '--by', '\ud800', '🚢', '--in', '--sheet', '--threads', '--time', '--set']; // prettier-ignore
/** Verbs that do their whole work without a file. */
const alone = new Set(['new', 'handbook', 'selfcheck', 'catalogue']);
/** What only a fault of ours would print. */
const unfit = /undefined|NaN\b(?!”)|\[object|TypeError|RangeError|\bat .+\.(ts|mjs):\d/;

/** Command lines of every verb: each ends with words and a code, whatever stands in it. None of them can be whole. */
export async function fuzzCommands(count: number, seed: number): Promise<DoorReport> {
  const failures: string[] = [];
  const names = [...Object.keys(verbs), 'nothing', '__proto__', 'toString', ''];
  const folder = await mkdtemp(join(tmpdir(), 'stillplate-doors-'));
  const inner = join(folder, 'a', 'b');
  let refused = 0;
  try {
    for (let i = 0; i < count; i++) {
      const random = seeded(seed + i);
      const name = one(names, random);
      // An option that is not there ends every line soon; a file that is not there, once its options are read.
      const stop = alone.has(name) || random() < 0.3 ? '--no-such-option' : 'nothing.stillplate';
      const args = [name, ...Array.from({ length: Math.floor(random() * 5) }, () => one(words, random)), stop];
      const told: string[] = [];
      const tell = (text: string): void => void told.push(text);
      const wrong = (text: string): void => void failures.push(`command, seed ${seed + i}: ${JSON.stringify(args).slice(0, 300)}: ${text}`); // prettier-ignore
      try {
        const code = await run(args, { out: tell, err: tell, folder: inner, input: () => Promise.resolve('') });
        // After “--” every word is a name: one that cannot be written to ends with 3.
        if (code === 2 || code === 3) refused += 1;
        else wrong(`ended with ${code}`);
        if (told.join('').trim() === '') wrong('said nothing');
        // What was typed is shown back: what it says is no fault of ours.
        const own = args.reduce((text, word) => (word.length > 2 ? text.replaceAll(word, '') : text), told.join('\n'));
        if (unfit.test(own)) wrong(own.slice(0, 300));
      } catch (error) {
        wrong(error instanceof Error ? (error.stack ?? error.message).slice(0, 400) : String(error));
      }
    }
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
  return { cases: count, refused, failures };
}
