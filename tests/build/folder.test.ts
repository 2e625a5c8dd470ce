import { execFile, execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { valueOf } from '../../core/host/answer.ts';
import { verbs } from '../../electron/command/verbs.ts';
import { serveStillplate } from '../browser/support/served.ts';
import { testIdentity } from '../host/test-identity.ts';
import { timeAuthority } from '../host/time-authority.ts';
import { heardBy, watchedBy } from './network-watch.ts';

// The folder that `npm run folder` makes, moved away from this project: nothing of it is within reach there.
const place = mkdtempSync(join(tmpdir(), 'stillplate-folder-'));
const folder = join(place, 'program');
const log = join(place, 'network.txt');

beforeAll(() => {
  execFileSync(process.execPath, ['build/folder.mjs', '--out', folder]);
});
beforeEach(() => writeFileSync(log, ''));
afterAll(() => rmSync(place, { recursive: true }));

it('the watch sees a name looked up, a connection, what is listened at and a program started, in threads too', () => {
  const there = `
    import { execFileSync, spawn } from 'node:child_process';
    import { Resolver } from 'node:dns';
    import { createServer } from 'node:http';
    const server = createServer((_, answer) => answer.end()).listen(0, 'localhost', async () => {
      await fetch('http://localhost:' + server.address().port);
      server.close();
      spawn('true');
      execFileSync('true');
      const resolver = new Resolver();
      resolver.setServers(['127.0.0.1']);
      resolver.resolve4('stillplate.invalid', () => undefined);
      resolver.cancel();
    });`;
  for (const script of [
    there,
    `
    import { Worker } from 'node:worker_threads';
    new Worker(new URL('data:text/javascript,' + encodeURIComponent(${JSON.stringify(there)})));`,
  ]) {
    // prettier-ignore
    writeFileSync(log, '');
    execFileSync(process.execPath, ['--input-type=module', '-e', script], { env: watchedBy(log) });
    const heard = heardBy(log).join('\n');
    expect(heard).toMatch(
      /listen localhost[^]*look up localhost[^]*start [^]*start true[^]*look up stillplate.invalid/,
    );
    expect(heard).toMatch(/^connect /m);
  }
});

/** Names of every command, from the program itself, with the line that its help gives as an example. */
const examples = Object.entries(verbs).map(([name, { help }]) => {
  const line = /^Example: stillplate (.+)$/m.exec(help)?.[1];
  return { name, args: line?.split(' ') ?? [] };
});

it('every command runs from the folder as its help shows it, and none of them reaches out', async () => {
  expect(examples.filter(({ name, args }) => args[0] !== name)).toEqual([]);
  writeFileSync(join(folder, 'id.p12'), testIdentity());
  const run = pathToFileURL(join(folder, 'build/bundled/command/run.mjs')).href;
  const script = `
    const { run } = await import(${JSON.stringify(run)});
    for (const args of ${JSON.stringify(examples.map(({ args }) => args))}) {
      let said = 0;
      const out = (text) => { said += text.length; console.log(text); };
      const err = (text) => console.log('WRONG ' + text);
      const code = await run(args, { out, err, folder: process.cwd(), input: async () => 'pw' });
      console.log('ENDED ' + args[0] + ' with ' + code + (said > 20 ? '' : ' and says nothing'));
    }`;
  const { stdout } = await promisify(execFile)(process.execPath, ['--input-type=module', '-e', script], { cwd: folder, env: watchedBy(log), maxBuffer: 1e8 }); // prettier-ignore
  // Some options of the sample fail on purpose: to compare and to search them ends with 1.
  const codeOf = (name: string): number => (['compare', 'search'].includes(name) ? 1 : 0);
  expect(stdout.match(/^ENDED .+$/gm)).toEqual(examples.map(({ name }) => `ENDED ${name} with ${codeOf(name)}`));
  expect(stdout.match(/^WRONG .+$/gm)).toBeNull();
  expect(stdout).toContain('comes out again');
  expect(stdout).toContain('All as expected.');
  expect(heardBy(log)).toEqual([]);
}, 600_000);

it('a time-stamp that is asked for is the one use of the network, of its address alone', async () => {
  const authority = await timeAuthority();
  const sign = ['stillplate.mjs', 'sign', 'middle.pdf', '--certificate', 'id.p12', '--password-stdin', '--role', 'author', '--out', 'stamped.pdf', '--timestamp', authority.address]; // prettier-ignore
  const child = promisify(execFile)(process.execPath, sign, { cwd: folder, env: watchedBy(log) });
  child.child.stdin!.end('pw');
  expect((await child).stdout).toContain('time-stamped');
  await authority.close();
  const to = new URL(authority.address);
  for (const line of heardBy(log)) expect(line).toMatch(new RegExp(`^connect .*"${to.hostname}".*|^look up ${to.hostname}$`)); // prettier-ignore
  expect(heardBy(log).filter((line) => line.startsWith('connect'))).toHaveLength(1);
  expect(heardBy(log).join()).toContain(to.port);
});

it('the window is served from the folder to this machine alone, and keeps a document', async () => {
  const served = await serveStillplate(undefined, join(folder, 'start.mjs'));
  try {
    const first = await fetch(served.address, { redirect: 'manual' });
    const Cookie = first.headers.getSetCookie()[0]!.split(';')[0]!;
    const page = await fetch(new URL('/', served.address), { headers: { Cookie } });
    expect(await page.text()).toContain('<title>Stillplate</title>');
    const text = readFileSync(join(folder, 'samples/small.stillplate.json'), 'utf8');
    const { id } = valueOf(await served.host.createDocument({ name: 'Made here', text, file: null }));
    expect((await served.documents()).map(({ name }) => name)).toEqual(['Made here']);
    expect((await served.stored(id)).head).toBe(0);
    // This test is the browser, outside of the watch; `close` fails where the program did more than listen.
    expect(served.network()).toContain('listen 127.0.0.1');
  } finally {
    await served.close();
  }
});

it('says whose work it ships', () => {
  const text = readFileSync(join(folder, 'THIRD-PARTY-LICENCES.txt'), 'utf8');
  for (const name of ['react', 'three', 'mathjs', 'pdfkit', '@expo-google-fonts/source-sans-3'])
    expect(text).toMatch(new RegExp(`^${name} \\d[^\\n]*: `, 'm'));
  expect(existsSync(join(folder, 'LICENSE'))).toBe(true);
});
