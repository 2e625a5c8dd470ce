// `npm run electron-sqlite`: better-sqlite3 compiled for Electron, beside the one for Node that installing makes. One build
// fits one of the two, so a copy of the package is built and only its compiled file is kept. Fetches Electron's headers:
// needs a network, a C++ compiler, and gives up after ten minutes. Where this was written the builder could not be fetched.
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const packages = join(root, 'node_modules');
const { version } = JSON.parse(readFileSync(join(packages, 'electron/package.json'), 'utf8'));
const abi = readFileSync(join(packages, 'electron/abi_version'), 'utf8').trim();
const name = `electron-${abi}-${process.platform}-${process.arch}`;

const work = mkdtempSync(join(tmpdir(), 'stillplate-electron-sqlite-'));
try {
  for (const part of ['better-sqlite3', 'bindings', 'file-uri-to-path'])
    cpSync(join(packages, part), join(work, 'node_modules', part), { recursive: true });
  cpSync(join(packages, 'better-sqlite3/package.json'), join(work, 'package.json'));
  const { status, error } = spawnSync(
    'npx',
    ['--yes', '@electron/rebuild', '--version', version, '--module-dir', work, '--only', 'better-sqlite3', '--force'],
    { stdio: 'inherit', timeout: 600_000, shell: process.platform === 'win32' },
  );
  const made = join(work, 'node_modules/better-sqlite3/build/Release/better_sqlite3.node');
  if (status !== 0 || !existsSync(made)) {
    console.error(
      `better-sqlite3 was not built for Electron ${version}: ${error?.message ?? `the build ended with ${status}`}. It needs a network for Electron's headers and a C++ compiler. Nothing was changed: command line and local address go on with Node's build.`,
    );
    process.exitCode = 1;
  } else {
    const kept = join(root, 'build/native', name);
    mkdirSync(kept, { recursive: true });
    cpSync(made, join(kept, 'better_sqlite3.node'));
    console.log(`Kept as build/native/${name}/better_sqlite3.node, for Electron ${version}.`);
  }
} finally {
  rmSync(work, { recursive: true, force: true });
}
