import { link, lstat, mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type * as FileSystem from 'node:fs/promises';
import { CannotWrite } from '../../electron/host/write-file.ts';
import { writeNewFile } from '../../electron/host/write-new-file.ts';
import { ran } from '../command/ran.ts';
import { inFolder } from '../command/in-folder.ts';

/** What happens between the writing beside and the link, and what the disk says to a link and to a write; set by the tests. */
const disk = vi.hoisted(() => ({
  between: null as null | ((path: string) => Promise<void>),
  link: null as null | string,
  write: null as null | string,
}));

vi.mock('node:fs/promises', async (original) => {
  const real = await original<typeof FileSystem>();
  const fault = (code: string) => Object.assign(new Error(`${code}: simulated`), { code });
  return {
    ...real,
    link: async (from: string, to: string) => {
      await disk.between?.(to);
      if (disk.link) throw fault(disk.link);
      return real.link(from, to);
    },
    open: async (...args: Parameters<typeof real.open>) => {
      const file = await real.open(...args);
      if (disk.write === null || args[1] !== 'wx') return file;
      return {
        writeFile: async (bytes: string) => {
          await file.writeFile(bytes.slice(0, bytes.length / 2));
          throw fault(disk.write!);
        },
        sync: () => file.sync(),
        close: () => file.close(),
      };
    },
  };
});

afterEach(() => void Object.assign(disk, { between: null, link: null, write: null }));

const fault = (path: string) =>
  writeNewFile(path, 'new').then(
    (written) => String(written),
    (error: unknown) => (error instanceof CannotWrite ? error.message : Promise.reject(error)),
  );

describe('a new file', () => {
  it('is written whole, with nothing beside', () =>
    inFolder(async (folder) => {
      expect(await fault(join(folder, 'plate'))).toBe('true');
      expect(await readFile(join(folder, 'plate'), 'utf8')).toBe('new');
      expect(await readdir(folder)).toEqual(['plate']);
    }));

  it('never stands over a file, a folder, or a link that leads nowhere', () =>
    inFolder(async (folder) => {
      await writeFile(join(folder, 'file'), 'mine');
      await mkdir(join(folder, 'folder'));
      await symlink('nowhere', join(folder, 'link'));
      for (const name of ['file', 'folder', 'link']) expect(await fault(join(folder, name))).toBe('false');
      expect(await readFile(join(folder, 'file'), 'utf8')).toBe('mine');
      expect((await lstat(join(folder, 'link'))).isSymbolicLink()).toBe(true);
      expect(await readdir(folder)).toEqual(['file', 'folder', 'link']);
    }));

  it.each([null, 'EPERM'])('nor over one that appears while it is written (link: %s), which `new` refuses', (code) =>
    inFolder(async (folder) => {
      disk.link = code;
      disk.between = (path) => writeFile(path, 'theirs');
      expect(await ran(['new', 'plate.stillplate'], folder)).toMatchObject({
        code: 2,
        err: expect.stringMatching(/There is a file of this name already.*nothing was changed/),
      });
      expect(await readFile(join(folder, 'plate.stillplate'), 'utf8')).toBe('theirs');
      expect(await readdir(folder)).toEqual(['plate.stillplate']);
    }),
  );

  it('is written on a disk that knows no links', () =>
    inFolder(async (folder) => {
      disk.link = 'ENOTSUP';
      await expect(link(folder, join(folder, 'x'))).rejects.toThrow(/simulated/);
      expect(await fault(join(folder, 'plate'))).toBe('true');
      expect(await readFile(join(folder, 'plate'), 'utf8')).toBe('new');
      expect(await readdir(folder)).toEqual(['plate']);
    }));

  it.each([null, 'ENOTSUP'])('leaves no half of it on a full disk (link: %s)', (code) =>
    inFolder(async (folder) => {
      disk.link = code;
      // Either the part beside does not fit, or, without links, the file at its own name.
      if (code === null) disk.write = 'ENOSPC';
      else disk.between = () => Promise.resolve(void (disk.write = 'ENOSPC'));
      expect(await fault(join(folder, 'plate'))).toMatch(/Cannot write .*plate: the disk is full/);
      expect(await readdir(folder)).toEqual([]);
    }),
  );

  it('says why a place takes no file', () =>
    inFolder(async (folder) => {
      await writeFile(join(folder, 'file'), 'mine');
      expect(await fault(join(folder, 'no', 'plate'))).toMatch(/the folder does not exist/);
      expect(await fault(join(folder, 'file', 'plate'))).toMatch(/a part of the path is a file/);
      expect(await readdir(folder)).toEqual(['file']);
    }));
});
