// Bundles the command line into build/bundled/command/, so that it runs on plain Node and starts quickly: mathjs alone
// is a thousand files. pdfkit and the fonts stay outside, since they read files beside their own.
import { build } from 'esbuild';
import { rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';

const root = fileURLToPath(new URL('..', import.meta.url));
const outdir = join(root, 'build/bundled/command');
// Parts of an earlier bundle have other names and would stay.
await rm(outdir, { recursive: true, force: true });
await build({
  absWorkingDir: root,
  entryPoints: [join(root, 'electron/command/run.ts')],
  outdir,
  outExtension: { '.js': '.mjs' },
  bundle: true,
  splitting: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  external: ['pdfkit', 'fontkit', 'fflate'],
  // Packages in the older module form ask for require.
  banner: {
    js: "import { createRequire as _createRequire } from 'node:module'; const require = _createRequire(import.meta.url);",
  },
  sourcemap: 'linked',
  logLevel: 'warning',
});
