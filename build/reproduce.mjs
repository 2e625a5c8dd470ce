// `npm run reproduce`: bundles the same sources in two places and compares every file by its hash, then prints one hash for
// all: whoever bundles the same commit with the same packages gets the same. Exit 1 and the files' names where two differ.
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';

const root = fileURLToPath(new URL('..', import.meta.url));

/** SHA-256 of each file of a folder, by its path there. */
export function hashes(folder) {
  const files = readdirSync(folder, { recursive: true }).filter((file) => statSync(join(folder, file)).isFile());
  return new Map(files.sort().map((file) => [file.replaceAll('\\', '/'), sha256(readFileSync(join(folder, file)))]));
}

const sha256 = (bytes) => createHash('sha256').update(bytes).digest('hex');

/** Bundles a copy of the sources in a folder of its own. `parts`: as build/bundle.mjs names them. */
async function bundledInACopy(parts) {
  const copy = mkdtempSync(join(tmpdir(), 'stillplate-again-'));
  try {
    for (const part of ['core', 'electron', 'renderer', 'samples', 'build/bundle.mjs', 'package.json', 'tsconfig.json'])
      cpSync(join(root, part), join(copy, part), { recursive: true });
    symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'), 'junction');
    const { bundle } = await import(pathToFileURL(join(copy, 'build/bundle.mjs')).href);
    await bundle(parts);
    return hashes(join(copy, 'build/bundled'));
  } finally {
    rmSync(copy, { recursive: true });
  }
}

/** The files that two bundlings of the same sources differ in, and one hash of all. */
export async function reproduce(parts) {
  const [one, two] = [await bundledInACopy(parts), await bundledInACopy(parts)];
  const differ = [...new Set([...one.keys(), ...two.keys()])].filter((file) => one.get(file) !== two.get(file));
  return { files: one.size, differ, hash: sha256([...one].flat().join('\n')) };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { positionals } = parseArgs({ allowPositionals: true });
  const { files, differ, hash } = await reproduce(positionals.length > 0 ? positionals : undefined);
  if (differ.length > 0) {
    console.error(`${differ.length} of ${files} files differ between two bundlings: ${differ.join(', ')}`);
    process.exitCode = 1;
  } else console.log(`${files} files, the same twice: SHA-256 ${hash}`);
}
