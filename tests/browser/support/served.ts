import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { documentHash } from '../../../core/document/document-hash.ts';
import { readDocumentText, type RawDocument } from '../../../core/document/read-document.ts';
import { replayed } from '../../../core/engine/history.ts';
import { refused, valueOf, type Answer } from '../../../core/host/answer.ts';
import { hostOver } from '../../../core/host/host-over.ts';
import type { Host } from '../../../core/host/host.ts';
import { fromWire, toWire, wireType } from '../../../core/host/wire.ts';
import { heardBy, reachedOut, watchedBy } from '../../build/network-watch.ts';

/** Stillplate on a local address, as `npm start` serves it, with a data folder of its own. */
export interface Served {
  /** The first address, with its token. */
  readonly address: string;
  readonly folder: string;
  /** What the host says to a page. */
  readonly host: Host;
  /** The documents in the store, by name. */
  readonly documents: () => Promise<readonly { readonly id: string; readonly name: string; readonly head: number }[]>;
  /** A document as the store would give it to a page that is opened now. */
  readonly stored: (id: string) => Promise<{ readonly raw: RawDocument; readonly hash: string; readonly head: number }>;
  /** Ends the process at once, as a crash does; the folder stays. */
  readonly kill: () => Promise<void>;
  /** What the watch over its use of the network heard so far. */
  readonly network: () => readonly string[];
  /** An address that the journey itself has the program ask. */
  readonly mayAsk: (address: string) => void;
  /** Ends the process and takes the folder away. Fails where the process ever reached out to another address. */
  readonly close: () => Promise<void>;
}

/** The bundle, from the project's folder. */
const bundled = resolve('build/bundled/desktop/serve.mjs');

/** Starts the bundled program on a port that is free. `folder`: documents of an earlier run. `program`: where it lies elsewhere. */
export async function serveStillplate(folder?: string, program = bundled): Promise<Served> {
  const data = folder ?? (await mkdtemp(join(tmpdir(), 'stillplate-journey-')));
  const log = `${data}-network.txt`;
  const asked: string[] = [];
  const child = spawn(process.execPath, [program], {
    env: { ...watchedBy(log), STILLPLATE_DATA: data },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const address = await addressOf(child);
  const host = await hostAt(address);
  const end = async (signal: NodeJS.Signals): Promise<void> => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    const gone = once(child, 'exit');
    child.kill(signal);
    await gone;
  };
  return {
    address,
    folder: data,
    host,
    documents: async () => valueOf(await host.listDocuments({})),
    stored: async (id) => {
      const { text, journal } = valueOf(await host.openDocument({ id }));
      const { raw } = replayed(readDocumentText(text), journal);
      const line = valueOf(await host.listDocuments({})).find((each) => each.id === id)!;
      return { raw, hash: documentHash(raw), head: line.head };
    },
    kill: () => end('SIGKILL'),
    network: () => heardBy(log),
    mayAsk: (address) => void asked.push(new URL(address).port),
    close: async () => {
      await end('SIGKILL');
      const out = reachedOut(heardBy(log)).filter((line) => !asked.some((port) => line.startsWith('connect') && line.includes(port))); // prettier-ignore
      await Promise.all([data, log].map((each) => rm(each, { recursive: true, force: true })));
      if (out.length > 0) throw new Error(`The program reached out: ${out.join('; ')}`);
    },
  };
}

/** The address that the program prints, or an error with all that it printed instead. */
function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const hear = (part: Buffer): void => {
      said += part.toString();
      const found = /http:\/\/\S+\?token=\S+/.exec(said)?.[0];
      if (found) resolve(found);
    };
    child.stdout!.on('data', hear);
    child.stderr!.on('data', hear);
    child.once('exit', (code) => reject(new Error(`Stillplate ended (${code}) before it served: ${said}`)));
  });
}

/** The host as a page that opened the address asks it. */
async function hostAt(address: string): Promise<Host> {
  const { headers } = await fetch(address, { redirect: 'manual' });
  const { origin } = new URL(address);
  const Cookie = headers.getSetCookie()[0]!.split(';')[0]!;
  return hostOver({
    call: async (name, message): Promise<Answer<unknown>> => {
      try {
        const response = await fetch(`${origin}/call/${name}`, {
          method: 'POST',
          headers: { Cookie, Origin: origin, 'Content-Type': wireType },
          body: toWire(message) as Uint8Array<ArrayBuffer>,
        });
        return fromWire(new Uint8Array(await response.arrayBuffer())) as Answer<unknown>;
      } catch (error) {
        return refused({ what: error instanceof Error ? error.message : String(error), mend: 'Start it again.' });
      }
    },
    listen: () => () => undefined,
  });
}
