import { execFile } from 'node:child_process';
import { access, mkdtemp, readFile, rename, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';

/**
 * Path of the Chromium that the package @sparticuz/chromium carries (Linux), unpacked once for each of its versions.
 * The package unpacks straight into the folder for temporary files and takes whatever lies there as whole. So it is
 * told a fresh folder, which is renamed when it is complete: test workers that start together, or one that was killed,
 * leave nobody half a program.
 */
export async function carriedBrowser(): Promise<string> {
  const manifest = createRequire(import.meta.url)
    .resolve('@sparticuz/chromium')
    .replace(/build.index\.js$/, 'package.json');
  const { version } = JSON.parse(await readFile(manifest, 'utf8')) as { version: string };
  const place = join(tmpdir(), `stillplate-chromium-${version}`);
  const program = join(place, 'chromium');
  if (await exists(program)) return program;
  const fresh = await mkdtemp(join(tmpdir(), 'stillplate-chromium-'));
  const unpack = `import('@sparticuz/chromium').then((carried) => carried.default.executablePath())`;
  await promisify(execFile)(process.execPath, ['--input-type=module', '-e', unpack], {
    cwd: dirname(manifest),
    env: { ...process.env, TMPDIR: fresh },
  });
  await rename(fresh, place).catch(async (error: unknown) => {
    await rm(fresh, { recursive: true, force: true });
    // Another worker was first.
    if (!(await exists(program))) throw error;
  });
  return program;
}

const exists = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );
