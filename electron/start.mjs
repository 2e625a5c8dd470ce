// `npm start`: opens the window in Electron if its program is there, else serves it at a local address for a browser.
// Never asks Electron's package whether it is there: asking makes it try a download.
import { spawn } from 'node:child_process';
import { accessSync, constants, existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const desktop = join(root, 'build/bundled/desktop');
if (!existsSync(join(desktop, 'serve.mjs')) || !existsSync(join(root, 'build/bundled/page/main.js')))
  await (await import('../build/bundle.mjs')).bundle(['page', 'desktop']);

const args = process.argv.slice(2);
// A Linux machine without a display can show no window; a browser elsewhere on it can.
const hasDisplay = process.platform !== 'linux' || process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
const electron = args.includes('--local') || !hasDisplay ? null : electronProgram();
if (electron) {
  const child = spawn(electron, [root, ...args], { stdio: 'inherit' });
  child.once('error', (error) => {
    console.error(`Electron does not start: ${error.message}. “npm start -- --local” serves the window to a browser.`);
    process.exit(1);
  });
  child.once('exit', (code) => process.exit(code ?? 1));
} else {
  process.argv = [...process.argv.slice(0, 2), ...args.filter((arg) => arg !== '--local')];
  await import('../build/bundled/desktop/serve.mjs');
}

/** Electron's program, or null: the file that its package names, if it is there and may be run. */
function electronProgram() {
  try {
    const folder = dirname(createRequire(import.meta.url).resolve('electron/package.json'));
    const name = readFileSync(join(folder, 'path.txt'), 'utf8').trim();
    const program = join(process.env.ELECTRON_OVERRIDE_DIST_PATH ?? join(folder, 'dist'), name);
    accessSync(program, constants.X_OK);
    return program;
  } catch {
    // Not installed, not downloaded, or not for this machine: the local address serves the same window.
    return null;
  }
}
