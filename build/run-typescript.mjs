import { build } from 'esbuild';
import { mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** Bundles a TypeScript file of this project for plain Node and imports it. Packages stay outside the bundle. */
export async function runTypeScript(entry, plugins = []) {
  const outfile = join(root, 'build/bundled', entry.replace(/\W+/g, '-') + '.mjs');
  await mkdir(dirname(outfile), { recursive: true });
  await build({
    entryPoints: [join(root, entry)],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    logLevel: 'warning',
    plugins,
  });
  return import(`${pathToFileURL(outfile).href}?${process.pid}`);
}
