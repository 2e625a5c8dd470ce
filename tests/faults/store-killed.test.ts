import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStore } from '../../electron/host/store/open-store.ts';
import { seeded } from '../geometry/seeded.ts';
import { bundled, storeWorker } from '../host/bundled.ts';
import { edit, append, now, textOf, withStore } from '../host/store/opened.ts';

let folder: string;
beforeEach(async () => void (folder = await mkdtemp(join(tmpdir(), 'stillplate-faults-'))));
afterEach(() => rm(folder, { recursive: true, force: true }));

/** 40 seeded points in CI, 500 at night. A kill proves the death of a process, not the loss of power. */
const points = process.env.STILLPLATE_NIGHT ? 500 : 40;

describe('a program that is killed while it writes', () => {
  it(`leaves every acknowledged edit and revision, and a store that is whole, at ${points} points`, async () => {
    const program = fileURLToPath(await bundled('tests/faults/writing-child.ts'));
    const worker = await storeWorker();
    const random = seeded(4711);
    await withStore(folder, (store) =>
      store.ask('createDocument', { id: 'a', name: 'a', text: textOf('a'), mirror: null, now }),
    );
    let written = 0;
    for (let point = 0; point < points; point++) {
      const child = spawn(process.execPath, [program, folder, worker.href, 'a'], {
        stdio: ['ignore', 'pipe', 'inherit'],
      });
      let said = '';
      const enough = new Promise<void>((resolve) => {
        const wanted = 1 + Math.floor(random() * 12);
        child.stdout.on('data', (part: Buffer) => {
          said += part.toString();
          if (said.split('\n').length > wanted) resolve();
        });
        child.once('exit', () => resolve());
      });
      await enough;
      await new Promise((resolve) => setTimeout(resolve, random() * 4));
      const gone = once(child, 'exit');
      child.kill('SIGKILL');
      expect((await gone)[1]).toBe('SIGKILL');
      const whole = said.slice(0, said.lastIndexOf('\n')).split('\n');
      const acknowledged = Math.max(written, ...whole.map((line) => Number(/^\d+$/.exec(line)?.[0] ?? 0)));
      const revision = Math.max(0, ...whole.map((line) => Number(/^revision (\d+)$/.exec(line)?.[1] ?? 0)));
      await withStore(folder, async (store) => {
        expect(store.notices).toEqual([]);
        const { line, journal } = await store.ask('openDocument', { id: 'a' });
        // What was on its way may be there or not; what was acknowledged must be, and nothing else.
        expect(line.head).toBeGreaterThanOrEqual(acknowledged);
        expect(line.head).toBeLessThanOrEqual(acknowledged + 1);
        const names = journal.map(({ edit: json }) => (JSON.parse(json) as { value: string }).value.split(' x')[0]);
        expect(names).toEqual(journal.map((_, n) => `edit ${line.head - journal.length + n + 1}`));
        const revisions = await store.ask('listRevisions', { id: 'a' });
        expect(Math.max(0, ...revisions.map(({ remark }) => Number(remark.replace('at ', ''))))).toBeGreaterThanOrEqual(
          revision,
        );
        written = line.head;
      });
    }
    expect(written).toBeGreaterThan(points);
  }, 900_000);
});

describe('a store that is damaged', () => {
  it('is set aside whole and said, never written over, and a new one is begun', async () => {
    await withStore(folder, async (store) => {
      await store.ask('createDocument', { id: 'a', name: 'a', text: textOf('a'), mirror: null, now });
      await store.ask(
        'appendEdits',
        append(
          'a',
          0,
          Array.from({ length: 300 }, (_, n) => edit(n)),
        ),
      );
    });
    const file = join(folder, 'store.sqlite');
    const bytes = await readFile(file);
    // Pages in the middle are overwritten, as a failing disk does.
    bytes.fill(0xa5, 4096, Math.min(bytes.length, 12 * 4096));
    await writeFile(file, bytes);
    await withStore(folder, async (store) => {
      expect(store.notices.join(' ')).toMatch(/was damaged .* set aside whole/);
      expect(await store.ask('listDocuments', {})).toEqual([]);
    });
    const [place] = await readdir(join(folder, 'set-aside'));
    expect(await readFile(join(folder, 'set-aside', place!, 'store.sqlite'))).toEqual(bytes);
  });

  it('that is no database at all is treated alike', async () => {
    await writeFile(join(folder, 'store.sqlite'), 'This was a database once.'.repeat(400));
    await withStore(folder, (store) => {
      expect(store.notices.join(' ')).toMatch(/damaged/);
      return Promise.resolve();
    });
  });
});

describe('a store that cannot be used', () => {
  it('says what is missing and how to mend it instead of failing, when its folder is a file', async () => {
    const place = join(folder, 'in-the-way');
    await writeFile(place, '');
    const opened = await openStore({ folder: join(place, 'data'), now, lookEvery: 50 }, await storeWorker());
    expect(opened.store).toBeNull();
    if (!opened.store) expect(opened.fault.mend).not.toBe('');
  });

  it('says so when its SQLite was built for another program', async () => {
    const broken = join(folder, 'broken.node');
    await writeFile(broken, 'no binding');
    const opened = await openStore({ folder, now, lookEvery: 50, nativeBinding: broken }, await storeWorker());
    expect(opened.store).toBeNull();
    if (!opened.store) expect(opened.fault.what).toMatch(/SQLite/);
  });
});
