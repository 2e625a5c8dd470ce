import { mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStore } from '../../electron/host/store/open-store.ts';
import { storeWorker } from '../host/bundled.ts';
import { edit, append, now, textOf, withStore } from '../host/store/opened.ts';

let folder: string;
beforeEach(async () => void (folder = await mkdtemp(join(tmpdir(), 'stillplate-faults-'))));
afterEach(() => rm(folder, { recursive: true, force: true }));

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
