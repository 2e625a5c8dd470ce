// `npm run folder -- --out DIR`: the program as one folder that runs with Node alone: command line and the window at a
// local address. Bundles anew, lays beside the bundle the packages that read their own files, samples, licences, starters.
// SQLite's compiled file is the one of this machine's Node; without it the window works and says that nothing is kept.
import { chmodSync, cpSync, existsSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { besideTheBundle, bundle } from './bundle.mjs';
import { closureOf, folderOf, licenceText } from './licences.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const fonts = ['@expo-google-fonts/source-sans-3', 'dejavu-fonts-ttf'];

/** What a package does not read when it runs: types, tests, maps, what its compiling left, its sandboxes for a page. */
const idle =
  /^(types|deps|test|docs?|web|tools|image_decoders|obj|obj\.target|\.deps|test_extension\.node|Makefile)$|\.(map|d\.m?ts|md|a|mk|gypi?|Makefile)$|sandbox/;
/** The faces that are printed: the packages carry every weight. */
const face =
  /^(400Regular|400Regular_Italic|600SemiBold|700Bold|ttf|SourceSans3_\w+\.ttf|DejaVu(Sans|Sans-Bold|MathTeXGyre|SerifCondensed|SerifCondensed-Italic)\.ttf|package\.json|LICEN[CS]E\w*)$/;

/** Makes the folder; refuses one that has something in it. Gives the packages that went in, as folders. */
export async function makeFolder(out) {
  if (existsSync(out) && readdirSync(out).length > 0)
    throw new Error(`${out} has something in it: name a folder that is new or empty.`);
  const inside = await bundle(undefined, join(out, 'build/bundled'));
  // What Electron alone starts, and what only a debugger reads.
  for (const file of readdirSync(join(out, 'build/bundled'), { recursive: true }))
    if (/\.map$|main\.mjs$|preload\.cjs$/.test(file)) rmSync(join(out, 'build/bundled', file));
  for (const part of ['samples', 'LICENSE', 'README.md', 'electron/command/stillplate.mjs'])
    cpSync(join(root, part), join(out, part), { recursive: true });
  const beside = closureOf([...besideTheBundle.filter((name) => folderOf(name)), ...fonts]);
  for (const [from, name] of beside) copyPackage(from, join(out, placeOf(from)), fonts.includes(name));
  const folders = [...beside.keys(), ...inside.map((name) => folderOf(name))];
  writeFileSync(join(out, 'THIRD-PARTY-LICENCES.txt'), licenceText(folders));
  for (const [file, text] of Object.entries(starters)) {
    writeFileSync(join(out, file), text);
    if (file.endsWith('.sh')) chmodSync(join(out, file), 0o755);
  }
  return folders;
}

/** Where a package lies below the root, also when node_modules is a link. */
const placeOf = (from) => relative(root, from);

function copyPackage(from, to, isFont) {
  cpSync(from, to, {
    recursive: true,
    dereference: true,
    filter: (file) => {
      const parts = relative(from, file).split(/[\\/]/).filter(Boolean);
      if (isFont) return parts.every((part) => face.test(part));
      return parts[0] !== 'node_modules' && !parts.some((part) => idle.test(part));
    },
  });
}

const starters = {
  'start.mjs':
    "// The window at a local address of this machine, for its browser: node start.mjs [--port N]\nawait import('./build/bundled/desktop/serve.mjs');\n",
  'stillplate.mjs':
    "// The command line: node stillplate.mjs help\nawait import('./electron/command/stillplate.mjs');\n",
  'start.sh': '#!/bin/sh\nexec node "$(dirname "$0")/start.mjs" "$@"\n',
  'start.cmd': '@node "%~dp0start.mjs" %*\r\n',
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({ options: { out: { type: 'string', default: 'out/folder' } } });
  const out = resolve(values.out);
  const folders = await makeFolder(out);
  console.log(
    `Wrote ${values.out}: ${folders.length} packages of others. Start it with: node ${join(values.out, 'start.mjs')}`,
  );
}
