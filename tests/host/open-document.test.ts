import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Refusal } from '../../core/refusal.ts';
import { openDocument } from '../../electron/host/open-document.ts';
import { inFolder } from '../command/in-folder.ts';
import { middleText } from '../document/middle.ts';

const refusedAt = (path: string) =>
  openDocument(path).then(
    () => Promise.reject(new Error('It was opened')),
    (error: unknown) => (error instanceof Refusal ? error : Promise.reject(error)),
  );

describe('opening a document file', () => {
  it('gives the raw JSON and the document, with or without a byte order mark', () =>
    inFolder(async (folder) => {
      for (const mark of ['', '\ufeff']) {
        const path = join(folder, 'plate.stillplate');
        await writeFile(path, mark + middleText);
        const { raw, document, bytes } = await openDocument(path);
        expect(Buffer.from(bytes).toString('utf8')).toBe(mark + middleText);
        expect(raw).toEqual(JSON.parse(middleText));
        expect(document.designs['underside']!.thickness).toEqual({ si: 0.006, typed: '6 mm' });
      }
    }));

  it('says what is wrong with a file that is none, and which', () =>
    inFolder(async (folder) => {
      const file = async (name: string, bytes: string | Uint8Array) => {
        await writeFile(join(folder, name), bytes);
        return join(folder, name);
      };
      const cases: readonly (readonly [string, RegExp])[] = [
        [join(folder, 'none'), /There is no such file/],
        [folder, /This is a folder, not a document/],
        [join(await file('a-file', 'x'), 'inside'), /a part of the path is a file, not a folder/],
        [join(folder, 'n'.repeat(300)), /the name is too long/],
        [join(folder, 'nul\0nul'), /cannot be read/],
        [await file('latin', Buffer.from('{"schema":"M\xfcller"}', 'latin1')), /not UTF-8 text/],
        [await file('wide', Buffer.from(`\ufeff${middleText}`, 'utf16le')), /not UTF-8 text/],
        [await file('large', new Uint8Array(40_000_001)), /40000001 bytes, the limit is 40,000,000/],
      ];
      for (const [path, what] of cases) {
        const refusal = await refusedAt(path);
        expect(refusal.what).toMatch(what);
        expect(refusal.where).toEqual({ file: path });
        expect(refusal.mend.length).toBeGreaterThan(10);
      }
      await mkdir(join(folder, 'empty'));
      expect((await refusedAt(await file('nothing', ''))).what).toMatch(/The file is empty/);
    }));

  it.runIf(existsSync('/dev/zero'))('does not read a device, which may never end', async () =>
    expect((await refusedAt('/dev/zero')).what).toMatch(/a device, not a document/),
  );
});
