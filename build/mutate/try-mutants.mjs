import { build } from 'esbuild';
import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** This test holds the readings of a formula equal to each other, not to the outside world. */
const inwardTests = ['all-checks.test.ts', 'mutants.test.ts'];

/**
 * Makes mutants of checks and runs, for each, the tests in tests/checks that import the check, until one fails.
 * `only`: ids of checks, all by default. `sample`: at most so many mutants, drawn evenly. Gives a list of
 * `{ check, what, killedBy }`; `killedBy` is undefined for a survivor. `broken` are tests that fail without a mutant:
 * they cannot kill.
 */
export async function tryMutants({ only = [], sample = Infinity, offset = 0, progress = () => {} } = {}) {
  const tests = (await readdir(join(root, 'tests/checks'))).filter((file) => file.endsWith('.test.ts') && !inwardTests.includes(file));
  const texts = new Map(await Promise.all(tests.map(async (file) => [file, await readFile(join(root, 'tests/checks', file), 'utf8')])));
  const load = await bundled(tests);
  const shared = load();
  const models = await sampleModels(shared);

  const broken = [];
  const sound = new Map();
  /** Tests of a file that pass as things are, read once. */
  const soundTests = async (file) => {
    if (!sound.has(file)) {
      const passing = [];
      for (const test of collect(shared, file)) {
        const failure = await shared.firstFailure([test]);
        if (failure) broken.push({ file, title: test.title, error: failure.error });
        else passing.push(test);
      }
      sound.set(file, passing);
    }
    return sound.get(file);
  };

  const all = shared.checks
    .filter(({ id }) => only.length === 0 || only.includes(id))
    .flatMap((check) => shared.mutantsOf(check).map((mutant, n) => ({ check, mutant, n })))
    .filter(({ check, mutant }) => !mutant.flips || models.length === 0 || shared.flippedChanges(check, mutant, models));
  const step = Math.max(1, all.length / sample);
  const chosen = all.filter((_, i) => Math.floor((i + offset) / step) !== Math.floor((i + offset - 1) / step));

  const results = [];
  const killers = new Map();
  for (const { check, mutant, n } of chosen) {
    const files = tests.filter((file) => concerns(texts.get(file), file, check.id));
    const runs = (await Promise.all(files.map(soundTests))).flat();
    const first = killers.get(check.id) ?? [];
    const undo = shared.inPlace(check, mutant.check);
    let failure;
    try {
      failure = await shared.firstFailure([...first, ...runs.filter((test) => !first.includes(test))]);
    } finally {
      undo();
    }
    let killedBy = failure && `${failure.test.file} > ${failure.test.title}`;
    if (failure && !first.includes(failure.test)) killers.set(check.id, [failure.test, ...first].slice(0, 12));
    if (!killedBy && runs.length > 0) killedBy = await killedAfresh(load, check.id, n, files, new Set(broken.map(({ file, title }) => `${file} > ${title}`)));
    results.push({ check: check.id, what: mutant.what, killedBy });
    progress(results);
  }
  return { results, broken, made: all.length };
}

/** A test file may compute at its head, before any mutant is in place: reads it again with the mutant already there. */
async function killedAfresh(load, id, n, files, broken) {
  const engine = load();
  const check = engine.checks.find((c) => c.id === id);
  engine.inPlace(check, engine.mutantsOf(check)[n].check);
  for (const file of files) {
    let tests;
    try {
      tests = collect(engine, file);
    } catch (error) {
      return `${file} (at its head: ${error.message})`;
    }
    const failure = await engine.firstFailure(tests.filter(({ title }) => !broken.has(`${file} > ${title}`)));
    if (failure) return `${file} > ${failure.test.title}`;
  }
  return undefined;
}

/** Own test file first, then every test that imports the check or all of them. */
function concerns(text, file, id) {
  return file === `${id}.test.ts` || text.includes(`/checks/${id}.ts'`) || text.includes("/checks/index.ts'") || text.includes("/core/appraise.ts'");
}

function collect(engine, file) {
  const from = engine.collected.length;
  engine.files[file]();
  return engine.collected.slice(from);
}

/** All tests and core in one text; each call of the function given evaluates it anew. */
async function bundled(tests) {
  const files = tests.map((file) => `${JSON.stringify(file)}: () => require('./tests/checks/${file}')`);
  const { outputFiles } = await build({
    absWorkingDir: root,
    stdin: { contents: `module.exports = { ...require('./build/mutate/entry.ts'), files: { ${files.join(', ')} } };`, resolveDir: root, loader: 'js' },
    bundle: true,
    write: false,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    packages: 'external',
    alias: { vitest: join(root, 'build/mutate/collected.ts') },
    plugins: [asIfInPlace],
    logLevel: 'error',
  });
  const require = createRequire(join(root, 'package.json'));
  const packages = await esmPackages();
  const evaluate = new Function('module', 'exports', 'require', outputFiles[0].text);
  return () => {
    const module = { exports: {} };
    evaluate(module, module.exports, (name) => packages.get(name) ?? require(name));
    return module.exports;
  };
}

/** Packages without a CommonJS side are imported once; the bundle asks for them by require. */
async function esmPackages() {
  const names = ['@vitest/expect', 'chai', 'canonicalize', '@noble/hashes/sha2.js', 'clipper2-ts', 'fast-check', 'zod', 'mathjs', 'mathjs/number'];
  return new Map(await Promise.all(names.map(async (name) => [name, asRequired(await import(name))])));
}

/** A package that gives one function by default is that function. */
const asRequired = (exports) => (typeof exports.default === 'function' ? Object.assign(exports.default, exports) : exports);

/** Test files keep their own address, and say their name when they are read. */
const asIfInPlace = {
  name: 'as-if-in-place',
  setup(build) {
    build.onLoad({ filter: /[\\/]tests[\\/].*\.ts$/ }, async ({ path }) => {
      const text = (await readFile(path, 'utf8')).replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href));
      const name = path.split(/[\\/]/).at(-1);
      const head = name.endsWith('.test.ts') ? `import { beginFile } from ${JSON.stringify(join(root, 'build/mutate/collected.ts'))}; beginFile(${JSON.stringify(name)});` : '';
      return { contents: head + text, loader: 'ts' };
    });
  },
};

/** Models of the samples, to tell where a direction matters. Where a sample cannot be read, all direction slips are tried. */
async function sampleModels(engine) {
  const folder = join(root, 'samples');
  if (!existsSync(folder)) return [];
  const files = (await readdir(folder)).filter((file) => file.endsWith('.stillplate.json') && !file.startsWith('large'));
  const models = [];
  for (const file of files) models.push(...engine.modelsOfText(await readFile(join(folder, file), 'utf8')));
  return models;
}
