import { build, type Plugin } from 'esbuild';
import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Model } from '../../core/model.ts';
import type { Collected } from './collected.ts';
import type * as entry from './entry.ts';

/** Run from the project's folder. */
const root = process.cwd();

export interface Tried {
  readonly check: string;
  /** What was changed. */
  readonly what: string;
  /** Test that noticed, or undefined for a survivor. */
  readonly killedBy: string | undefined;
}

export interface MutationReport {
  readonly results: readonly Tried[];
  /** Tests that fail without any slip: they cannot notice one. */
  readonly broken: readonly { readonly file: string; readonly title: string; readonly error: unknown }[];
  /** Slips there are, of which a sample may have been tried. */
  readonly made: number;
}

export interface MutationWish {
  /** Ids of checks; all by default. */
  readonly only?: readonly string[];
  /** At most about so many slips, drawn evenly; `offset` chooses which. */
  readonly sample?: number;
  readonly offset?: number;
  readonly progress?: (results: readonly Tried[]) => void;
}

/** Core, the tests of checks and the tools of this folder, evaluated together. */
type Engine = typeof entry & { readonly files: Readonly<Record<string, () => void>> };

/** This test holds the readings of a formula equal to each other, not to the outside world. */
const inwardTests = ['all-checks.test.ts', 'mutants.test.ts'];

/**
 * Puts one slip at a time in a check and runs the tests in tests/checks that concern the check until one fails. No file
 * is rewritten. A slip that no test notices is tried again with everything evaluated anew.
 */
export async function tryMutants({
  only = [],
  sample = Infinity,
  offset = 0,
  progress = () => {},
}: MutationWish = {}): Promise<MutationReport> {
  const tests = (await readdir(join(root, 'tests/checks'))).filter(
    (file) => file.endsWith('.test.ts') && !inwardTests.includes(file),
  );
  const texts = new Map(
    await Promise.all(
      tests.map(async (file) => [file, await readFile(join(root, 'tests/checks', file), 'utf8')] as const),
    ),
  );
  const load = await bundled(tests);
  const shared = load();
  const models = await sampleModels(shared);

  const broken: MutationReport['broken'][number][] = [];
  const sound = new Map<string, readonly Collected[]>();
  /** Tests of a file that pass as things are, read once. */
  const soundTests = async (file: string): Promise<readonly Collected[]> => {
    const known = sound.get(file);
    if (known) return known;
    const passing: Collected[] = [];
    for (const test of collect(shared, file)) {
      const failure = await shared.firstFailure([test]);
      if (failure) broken.push({ file, title: test.title, error: failure.error });
      else passing.push(test);
    }
    sound.set(file, passing);
    return passing;
  };

  const all = shared.checks
    .filter(({ id }) => only.length === 0 || only.includes(id))
    .flatMap((check) => shared.mutantsOf(check).map((mutant, n) => ({ check, mutant, n })))
    .filter(({ check, mutant }) => !mutant.flips || shared.flippedChanges(check, mutant, models));
  const step = Math.max(1, all.length / sample);
  const chosen = all.filter((_, i) => Math.floor((i + offset) / step) !== Math.floor((i + offset - 1) / step));

  const ids = new Set(shared.checks.map(({ id }) => id));
  const results: Tried[] = [];
  const killers = new Map<string, readonly Collected[]>();
  for (const { check, mutant, n } of chosen) {
    const files = tests
      .filter((file) => concerns(texts.get(file)!, check.id))
      .sort((a, b) => Number(b === `${check.id}.test.ts`) - Number(a === `${check.id}.test.ts`));
    const runs: Collected[] = [];
    for (const file of files)
      runs.push(...(await soundTests(file)).filter(({ title }) => !ofAnother(title, check.id, ids)));
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
    if (!killedBy && runs.length > 0)
      killedBy = await killedAfresh(
        load,
        check.id,
        n,
        files.filter((file) => !concernsAll(texts.get(file)!)),
        new Set(broken.map(({ file, title }) => `${file} > ${title}`)),
      );
    results.push({ check: check.id, what: mutant.what, killedBy });
    progress(results);
  }
  return { results, broken, made: all.length };
}

/** A test file may compute at its head, before any mutant is in place: reads it again with the mutant already there. */
async function killedAfresh(
  load: () => Engine,
  id: string,
  n: number,
  files: readonly string[],
  broken: ReadonlySet<string>,
): Promise<string | undefined> {
  const engine = load();
  const check = engine.checks.find((c) => c.id === id)!;
  engine.inPlace(check, engine.mutantsOf(check)[n]!.check);
  for (const file of files) {
    let tests: readonly Collected[];
    try {
      tests = collect(engine, file);
    } catch (error) {
      return `${file} (at its head: ${error instanceof Error ? error.message : String(error)})`;
    }
    const failure = await engine.firstFailure(tests.filter(({ title }) => !broken.has(`${file} > ${title}`)));
    if (failure) return `${file} > ${failure.test.title}`;
  }
  return undefined;
}

/** Whether a test file has to do with a check: it imports the check, or all of them. */
const concerns = (text: string, id: string): boolean => text.includes(`/checks/${id}.ts'`) || concernsAll(text);
const concernsAll = (text: string): boolean => text.includes("/checks/index.ts'");

/** Tests over all checks stand under the id of the check that each is about. */
function ofAnother(title: string, id: string, ids: ReadonlySet<string>): boolean {
  const [head = ''] = title.replace(/ \[\d+\]/, '').split(' > ');
  return ids.has(head) && head !== id;
}

function collect(engine: Engine, file: string): readonly Collected[] {
  const from = engine.collected.length;
  engine.files[file]!();
  return engine.collected.slice(from);
}

/** All tests and core in one text; each call of the function given evaluates it anew. */
async function bundled(tests: readonly string[]): Promise<() => Engine> {
  const files = tests.map((file) => `${JSON.stringify(file)}: () => require('./tests/checks/${file}')`);
  const { outputFiles } = await build({
    absWorkingDir: root,
    stdin: {
      contents: `module.exports = { ...require('./build/mutate/entry.ts'), files: { ${files.join(', ')} } };`,
      resolveDir: root,
      loader: 'js',
    },
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
  const evaluate = new Function('module', 'exports', 'require', outputFiles[0]!.text) as (...scope: unknown[]) => void;
  return () => {
    const module = { exports: {} };
    evaluate(module, module.exports, (name: string): unknown => packages.get(name) ?? require(name));
    return module.exports as Engine;
  };
}

/** Packages without a CommonJS side are imported once; the bundle asks for them by require. */
async function esmPackages(): Promise<ReadonlyMap<string, unknown>> {
  const names = [
    '@vitest/expect',
    'chai',
    'canonicalize',
    '@noble/hashes/sha2.js',
    'clipper2-ts',
    'fast-check',
    'zod',
    'mathjs',
    'mathjs/number',
  ];
  return new Map(
    await Promise.all(names.map(async (name) => [name, asRequired((await import(name)) as Exports)] as const)),
  );
}

/** A package that gives one function by default is that function. */
const asRequired = (exports: Exports): unknown =>
  typeof exports.default === 'function' ? Object.assign(exports.default, exports) : exports;
type Exports = Readonly<Record<string, unknown>>;

/** Test files keep their own address, and say their name when they are read. */
const asIfInPlace: Plugin = {
  name: 'as-if-in-place',
  setup(build) {
    build.onLoad({ filter: /[\\/]tests[\\/].*\.ts$/ }, async ({ path }) => {
      const text = (await readFile(path, 'utf8')).replaceAll(
        'import.meta.url',
        JSON.stringify(pathToFileURL(path).href),
      );
      const name = path.split(/[\\/]/).at(-1)!;
      const head = name.endsWith('.test.ts')
        ? `import { beginFile } from ${JSON.stringify(join(root, 'build/mutate/collected.ts'))}; beginFile(${JSON.stringify(name)});`
        : '';
      return { contents: head + text, loader: 'ts' };
    });
  },
};

/** Models of the samples, to tell where a direction matters. The large one adds nothing but time. */
async function sampleModels(engine: Engine): Promise<readonly Model[]> {
  const files = (await readdir(join(root, 'samples'))).filter(
    (file) => file.endsWith('.stillplate.json') && !file.startsWith('large'),
  );
  const models: Model[] = [];
  for (const file of files) models.push(...engine.modelsOfText(await readFile(join(root, 'samples', file), 'utf8')));
  return models;
}
