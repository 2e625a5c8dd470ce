import { build } from 'esbuild';
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chmod, mkdir, readdir, readFile, readlink, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type * as FileSystem from 'node:fs/promises';
import { CannotWrite, writeFileWhole } from '../../electron/host/write-file.ts';
import { inFolder } from '../command/in-folder.ts';

/** What the disk does to the next write; the tests set it. */
const disk = vi.hoisted(() => ({
  fault: null as null | { readonly at: 'open' | 'write' | 'sync'; readonly code: string },
}));

vi.mock('node:fs/promises', async (original) => {
  const real = await original<typeof FileSystem>();
  const fail = (): never => {
    throw Object.assign(new Error(`${disk.fault!.code}: simulated`), { code: disk.fault!.code });
  };
  return {
    ...real,
    open: async (...args: Parameters<typeof real.open>) => {
      if (args[1] !== 'wx' || disk.fault === null) return real.open(...args);
      if (disk.fault.at === 'open') fail();
      const file = await real.open(...args);
      return {
        // Half of it reaches the disk before the fault.
        writeFile: async (bytes: string) => {
          await file.writeFile(bytes.slice(0, bytes.length / 2));
          if (disk.fault?.at === 'write') fail();
        },
        sync: async () => {
          if (disk.fault?.at === 'sync') fail();
        },
        close: () => file.close(),
      };
    },
  };
});

afterEach(() => void (disk.fault = null));

const fault = (path: string) =>
  writeFileWhole(path, 'new and longer').then(
    () => 'written',
    (error: unknown) => (error instanceof CannotWrite ? error.message : Promise.reject(error)),
  );

describe('a file is written whole or not at all', () => {
  it('writes, replaces, and leaves nothing beside', () =>
    inFolder(async (folder) => {
      const path = join(folder, 'note.pdf');
      await writeFileWhole(path, 'old');
      await writeFileWhole(path, Uint8Array.of(1, 2, 3));
      expect([...(await readFile(path))]).toEqual([1, 2, 3]);
      expect(await readdir(folder)).toEqual(['note.pdf']);
    }));

  it.each([
    ['write', 'ENOSPC', /the disk is full/],
    ['sync', 'ENOSPC', /the disk is full/],
    ['write', 'EDQUOT', /full for this user/],
    ['open', 'EACCES', /the folder may not be written to/],
    ['open', 'EROFS', /the disk is read-only/],
    ['write', 'EIO', /EIO/],
  ] as const)('a fault at %s, %s: the old file stays, the half goes, the reason is told', (at, code, reason) =>
    inFolder(async (folder) => {
      const path = join(folder, 'note.pdf');
      await writeFile(path, 'old');
      disk.fault = { at, code };
      expect(await fault(path)).toMatch(reason);
      expect(await readFile(path, 'utf8')).toBe('old');
      expect(await readdir(folder)).toEqual(['note.pdf']);
    }),
  );

  it('says why a place takes no file', () =>
    inFolder(async (folder) => {
      await writeFile(join(folder, 'file'), 'old');
      await mkdir(join(folder, 'sub'));
      expect(await fault(join(folder, 'no', 'note.pdf'))).toMatch(/the folder does not exist/);
      expect(await fault(join(folder, 'file', 'note.pdf'))).toMatch(/a part of the path is a file, not a folder/);
      expect(await fault(join(folder, 'sub'))).toMatch(/a folder is in its place/);
      expect(await fault(join(folder, 'n'.repeat(300)))).toMatch(/name is too long/);
      expect(await readdir(folder)).toEqual(['file', 'sub']);
    }));

  it('a name as long as the system allows can be written', () =>
    inFolder(async (folder) => {
      const name = 'n'.repeat(255);
      await writeFileWhole(join(folder, name), 'x');
      expect(await readdir(folder)).toEqual([name]);
    }));

  it.runIf(existsSync('/dev/full'))('never puts a file in the place of a device', async () => {
    expect(await fault('/dev/full')).toMatch(/a device is in its place/);
    expect((await stat('/dev/full')).isCharacterDevice()).toBe(true);
  });

  it.skipIf(process.platform === 'win32')('a link stays a link, and an old file keeps its permissions', () =>
    inFolder(async (folder) => {
      await mkdir(join(folder, 'issued'));
      await writeFile(join(folder, 'issued', 'note.pdf'), 'old');
      await chmod(join(folder, 'issued', 'note.pdf'), 0o600);
      await symlink(join('issued', 'note.pdf'), join(folder, 'latest.pdf'));
      await writeFileWhole(join(folder, 'latest.pdf'), 'new');
      expect(await readlink(join(folder, 'latest.pdf'))).toBe(join('issued', 'note.pdf'));
      expect(await readFile(join(folder, 'issued', 'note.pdf'), 'utf8')).toBe('new');
      expect((await stat(join(folder, 'issued', 'note.pdf'))).mode & 0o777).toBe(0o600);
    }),
  );

  it('killed half-way it leaves the old file, and the next run writes', { timeout: 120_000 }, () =>
    inFolder(async (folder) => {
      const path = join(folder, 'note.pdf');
      const script = join(folder, 'write.mjs');
      await build({
        entryPoints: [fileURLToPath(new URL('../../electron/host/write-file.ts', import.meta.url))],
        outfile: join(folder, 'write-file.mjs'),
        bundle: true,
        platform: 'node',
        format: 'esm',
        logLevel: 'error',
      });
      await writeFile(
        script,
        `import { writeFileWhole } from './write-file.mjs';\nawait writeFileWhole(${JSON.stringify(path)}, new Uint8Array(200_000_000));\n`,
      );
      let caught = 0;
      for (let kill = 0; kill < 5; kill++) {
        await writeFile(path, 'old');
        const child = spawn(process.execPath, [script], { stdio: 'inherit' });
        const ended = new Promise((done) => child.once('exit', done));
        // As soon as the part stands in the folder the child is killed: it is then writing.
        while (child.exitCode === null && !(await readdir(folder)).some((name) => name.endsWith('.part')))
          await new Promise((next) => setTimeout(next, 1));
        child.kill('SIGKILL');
        await ended;
        const now = await readFile(path);
        expect(now.toString('utf8', 0, 3) === 'old' ? now.length : now.length - 200_000_000 + 3).toBe(3);
        if (now.length === 3) caught++;
        for (const name of await readdir(folder)) if (name.endsWith('.part')) await rm(join(folder, name));
      }
      expect(caught).toBeGreaterThan(0);
      await writeFileWhole(path, 'new');
      expect(await readFile(path, 'utf8')).toBe('new');
    }),
  );
});
