// What is shipped, and under which licence: `node build/licences.mjs FILE` writes every package's name, version, kind and
// text. Refuses a kind that is not on the list below, and a package without a text of its own.
import { readdirSync, readFileSync, writeFileSync, existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Kinds that let the program be passed on with their text beside it. */
export const allowed = [
  '0BSD',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BSL-1.0',
  'ISC',
  'MIT',
  'OFL-1.1',
  'Zlib',
];

/** Kinds that a package's own file does not say in these words, read in its licence's text. */
const read = {
  // Bitstream Vera's licence with changes in the public domain: free to bundle, not to be sold by itself.
  'dejavu-fonts-ttf': 'Bitstream-Vera',
  'png-js': 'MIT',
};

/** Packages that only fetch or compile another when it is installed: nothing of them runs. */
const atInstallingOnly = new Set(['prebuild-install']);

/** Folder of a package as seen from another one's folder; null where it is not installed. */
export function folderOf(name, from = root) {
  for (let at = from; ; at = dirname(at)) {
    const found = join(at, 'node_modules', name);
    if (existsSync(join(found, 'package.json'))) return found;
    if (at === dirname(at)) return null;
  }
}

const packageOf = (folder) => JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));

/** The packages named and all that they need to run, by folder. Optional ones that are not installed are left out. */
export function closureOf(names, from = root, known = new Map()) {
  for (const name of names) {
    const folder = folderOf(name, from);
    if (!folder) throw new Error(`${name} is not installed (wanted from ${from}): run npm ci`);
    if (known.has(folder)) continue;
    known.set(folder, name);
    const { dependencies = {}, optionalDependencies = {} } = packageOf(folder);
    const optional = Object.keys(optionalDependencies);
    const needed = Object.keys(dependencies).filter((each) => !atInstallingOnly.has(each) && !optional.includes(each));
    closureOf([...needed, ...optional.filter((each) => folderOf(each, folder))], folder, known);
  }
  return known;
}

/** Every package that package.json declares for running, with all that those need. */
export function shippedPackages() {
  const { dependencies, optionalDependencies } = packageOf(root);
  const optional = Object.keys(optionalDependencies).filter((name) => folderOf(name));
  return closureOf([...Object.keys(dependencies), ...optional]);
}

/** Kinds that all hold for a package (“A AND B”), or one of which may be chosen (“A OR B”): the chosen one. */
export function kindsOf(folder) {
  const { name, license } = packageOf(folder);
  if (read[name]) return [read[name]];
  if (typeof license !== 'string') throw new Error(`${name} does not say its licence`);
  const words = license.replace(/[()]/g, '');
  const choices = words.split(' OR ').map((choice) => choice.split(' AND '));
  const chosen = choices.find((kinds) => kinds.every((kind) => allowed.includes(kind)));
  if (!chosen) throw new Error(`${name} is under ${license}, which is not on the list in build/licences.mjs`);
  return chosen;
}

/** Texts of the licence in a package's folder; where it carries none, its readme if that has one. */
function textsOf(folder) {
  const files = readdirSync(folder).filter((file) => /^(licen[cs]e|copying|notice)/i.test(file));
  const texts = files.map((file) => readFileSync(join(folder, file), 'utf8').trim());
  if (texts.length > 0) return texts;
  const readme = readdirSync(folder).find((file) => /^readme/i.test(file));
  const [, found] =
    /^#+\s*licen[cs]e.*?\n([\s\S]+)/im.exec(readme ? readFileSync(join(folder, readme), 'utf8') : '') ?? [];
  return found ? [found.trim()] : [];
}

/** The list as text. `folders`: of the packages; sorted by name, so that the same packages give the same bytes. */
export function licenceText(folders) {
  const entries = [...new Set(folders)]
    .map((folder) => ({ ...packageOf(folder), kinds: kindsOf(folder), texts: textsOf(folder) }))
    .sort((a, b) => (`${a.name}@${a.version}` < `${b.name}@${b.version}` ? -1 : 1));
  const parts = entries.map(({ name, version, kinds, texts, author }) => {
    const by = typeof author === 'string' ? author : author?.name;
    return [
      `${name} ${version}: ${kinds.join(' and ')}`,
      ...(texts.length > 0
        ? texts
        : [
            `Copyright ${by ?? `the authors of ${name}`}. The package carries no text of its licence; that of the MIT licence stands in LICENSE beside this file.`,
          ]),
    ].join('\n\n');
  });
  const line = '-'.repeat(72);
  return `Stillplate is under the MIT licence. It comes with ${entries.length} packages of others, each under its own:\n\n${parts.join(`\n\n${line}\n\n`)}\n`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folders = [...shippedPackages().keys()];
  const file = process.argv[2] ?? join(root, 'out/THIRD-PARTY-LICENCES.txt');
  writeFileSync(file, licenceText(folders));
  console.log(`Wrote ${file}: ${folders.length} packages.`);
}
