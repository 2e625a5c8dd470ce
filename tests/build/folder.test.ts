import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { valueOf } from '../../core/host/answer.ts';
import { serveStillplate } from '../browser/support/served.ts';

// The folder that `npm run folder` makes, moved away from this project: nothing of it is within reach there.
const place = mkdtempSync(join(tmpdir(), 'stillplate-folder-'));
const folder = join(place, 'program');
const log = join(place, 'network.txt');
const heard = (): readonly string[] => readFileSync(log, 'utf8').split('\n').filter(Boolean);
const watched = { ...process.env, STILLPLATE_NETWORK_LOG: log, NODE_OPTIONS: `--import=${pathToFileURL(resolve('tests/build/watch-network.mjs')).href}` }; // prettier-ignore
const node = (args: readonly string[]): string =>
  execFileSync(process.execPath, args, { cwd: place, env: watched, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] }); // prettier-ignore

beforeAll(() => {
  execFileSync(process.execPath, ['build/folder.mjs', '--out', folder]);
});
beforeEach(() => writeFileSync(log, ''));
afterAll(() => rmSync(place, { recursive: true }));

it('the watch sees a name looked up, a connection and what is listened at, by fetch as by net', () => {
  node(['--input-type=module', '-e', `
    import { createServer } from 'node:http';
    const server = createServer((_, answer) => answer.end()).listen(0, 'localhost', async () => {
      await fetch('http://localhost:' + server.address().port);
      server.close();
    });`]); // prettier-ignore
  expect(heard().join(' ')).toMatch(/listen localhost.*look up localhost/);
  expect(heard().some((line) => line.startsWith('connect '))).toBe(true);
});

it('commands run from the folder, and none of them reaches out', () => {
  const sample = join(folder, 'samples/small.stillplate.json');
  const commands = [
    ['new', 'plate.stillplate'],
    ['check', 'plate.stillplate', '--json'],
    ['note', 'plate.stillplate', '--out', 'note.pdf'],
    ['verify', 'note.pdf'],
    ['validate', sample],
    ['selfcheck', '--samples', 'none'],
  ];
  const run = pathToFileURL(join(folder, 'build/bundled/command/run.mjs')).href;
  const out = node(['--input-type=module', '-e', `
    const { run } = await import(${JSON.stringify(run)});
    for (const args of ${JSON.stringify(commands)}) {
      const code = await run(args);
      if (code > 1) throw new Error(args.join(' ') + ' ended with ' + code);
    }`]); // prettier-ignore
  expect(out).toContain('comes out again');
  expect(out).toContain('All as expected.');
  expect(heard()).toEqual([]);
});

it('the window is served from the folder to this machine alone, and keeps a document', async () => {
  const before = { ...process.env };
  Object.assign(process.env, watched);
  const served = await serveStillplate(undefined, join(folder, 'start.mjs')).finally(() => {
    for (const name of ['NODE_OPTIONS', 'STILLPLATE_NETWORK_LOG'])
      if (before[name] === undefined) delete process.env[name];
      else process.env[name] = before[name];
  });
  try {
    const first = await fetch(served.address, { redirect: 'manual' });
    const Cookie = first.headers.getSetCookie()[0]!.split(';')[0]!;
    const page = await fetch(new URL('/', served.address), { headers: { Cookie } });
    expect(await page.text()).toContain('<title>Stillplate</title>');
    const text = readFileSync(join(folder, 'samples/small.stillplate.json'), 'utf8');
    const { id } = valueOf(await served.host.createDocument({ name: 'Made here', text, file: null }));
    expect((await served.documents()).map(({ name }) => name)).toEqual(['Made here']);
    expect((await served.stored(id)).head).toBe(0);
    // This test is the browser, outside of the watch. Listening looks its own address up, which asks nobody.
    expect(heard()).toContain('listen 127.0.0.1');
    expect(heard().filter((line) => !/^(listen|look up) (127\.0\.0\.1|::1)$/.test(line))).toEqual([]);
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
