// Bundles the command line into build/bundled/command.mjs, so that it runs on plain Node. Packages stay outside.
import { build } from 'esbuild';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';

const root = fileURLToPath(new URL('..', import.meta.url));
await build({
  absWorkingDir: root,
  entryPoints: [join(root, 'electron/command/run.ts')],
  outfile: join(root, 'build/bundled/command.mjs'),
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  packages: 'external',
  sourcemap: 'linked',
  logLevel: 'warning',
});
