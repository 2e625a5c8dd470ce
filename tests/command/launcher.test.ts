import { execFile, spawn } from 'node:child_process';
import { closeSync, existsSync, openSync } from 'node:fs';
import { cp, mkdir, readdir, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { inFolder } from './in-folder.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** A copy of what the program needs to run, without what was built: the shared build stays as it is. */
async function copyTo(folder: string): Promise<string> {
  for (const part of ['core', 'electron', 'samples', 'package.json', 'tsconfig.json', 'build/bundle.mjs'])
    await cp(join(root, part), join(folder, part), { recursive: true });
  await symlink(join(root, 'node_modules'), join(folder, 'node_modules'));
  await mkdir(join(folder, 'elsewhere'));
  return join(folder, 'electron/command/stillplate.mjs');
}

const node = (args: readonly string[], cwd: string) =>
  new Promise<{ code: number | null; out: string; err: string }>((done) => {
    const child = execFile(process.execPath, [...args], { cwd, maxBuffer: 1e8 }, (_, out, err) =>
      done({ code: child.exitCode, out, err }),
    );
  });

describe('the launcher, as plain Node runs it', () => {
  it(
    'builds what is missing, takes paths from the folder it is called in, and gives each exit code',
    { timeout: 180_000 },
    () =>
      inFolder(async (folder) => {
        const launcher = await copyTo(folder);
        const elsewhere = join(folder, 'elsewhere');
        const made = await node([launcher, 'new', 'plate.stillplate'], elsewhere);
        expect(made).toEqual({
          code: 0,
          out: 'Wrote plate.stillplate. Next: stillplate check plate.stillplate\n',
          err: '',
        });
        expect(await readdir(elsewhere)).toEqual(['plate.stillplate']);
        expect((await node([launcher, 'check', 'plate.stillplate'], elsewhere)).code).toBe(0);
        const failing = ['check', '../samples/small.stillplate.json', '--option', 'welded'];
        expect((await node([launcher, ...failing], elsewhere)).code).toBe(1);
        expect((await node([launcher, 'check', 'none'], elsewhere)).code).toBe(2);
        expect((await node([launcher, 'new', 'no/plate.stillplate'], elsewhere)).code).toBe(3);
        expect((await node([launcher, 'note', 'plate.stillplate', '--out', 'note.pdf'], elsewhere)).code).toBe(0);
        expect(await readdir(elsewhere)).toEqual(['note.pdf', 'plate.stillplate']);

        // A reader that closes the pipe early is no fault.
        const child = spawn(process.execPath, [
          launcher,
          'check',
          join(folder, 'samples/middle.stillplate.json'),
          '--json',
          '--every',
        ]);
        let words = '';
        child.stderr.on('data', (chunk) => (words += String(chunk)));
        child.stdout.once('data', () => child.stdout.destroy());
        expect(await new Promise((done) => child.once('exit', done))).toBe(0);
        expect(words).toBe('');

        // Output that is lost is not passed over.
        if (existsSync('/dev/full')) {
          const full = openSync('/dev/full', 'w');
          const lost = spawn(process.execPath, [launcher, 'catalogue'], { stdio: ['ignore', full, 'pipe'] });
          let said = '';
          lost.stderr!.on('data', (chunk) => (said += String(chunk)));
          expect(await new Promise((done) => lost.once('close', done))).toBe(3);
          closeSync(full);
          expect(said).toMatch(/The output cannot be written: .*ENOSPC.*not complete/);
        }

        // A fault of the program itself is neither a failing check nor bad input.
        await writeFile(
          join(folder, 'build/bundled/command/run.mjs'),
          'export const run = async () => { throw new TypeError("broken"); };\n',
        );
        const broken = await node([launcher, 'check', 'plate.stillplate'], elsewhere);
        expect(broken.code).toBe(4);
        expect(broken.err).toMatch(/A fault in Stillplate itself, not in your input.*TypeError: broken/s);
      }),
  );
});
