import { build, type Plugin } from 'esbuild';
import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Model } from '../../core/model.ts';
import type { Collected } from './collected.ts';
import type * as entry from './entry.ts';
import type { Mutant } from './mutants.ts';

/** Run from the project's folder. */
const root = process.cwd();

export interface Tried {
  /** Ids of the checks that have the changed thing. */
  readonly checks: readonly string[];
  /** What was changed. */
  readonly what: string;
  /** Test that noticed, or undefined for a survivor. */
  readonly killedBy: string | undefined;
  /** Set where tests and samples read the changed input and were never given a number, or only zero: it shows nowhere. */
  readonly neverANumber: boolean;
}

/** What became of a slip. */
export type Outcome = Pick<Tried, 'killedBy' | 'neverANumber'>;

/** A test that fails without any slip: it cannot notice one. */
export interface Broken {
  readonly file: string;
  readonly title: string;
  readonly error: string;
}

export interface MutationWish {
  /** Ids of checks; all when empty. */
  readonly only: readonly string[];
  /** Number of the first slip to try. */
  readonly from: number;
  readonly starts: (n: number, slip: Omit<Tried, keyof Outcome>) => void;
  readonly tried: (n: number, outcome: Outcome) => void;
}

/** Core, the tests of checks and the tools of this folder, evaluated together. */
type Engine = typeof entry & { readonly files: Readonly<Record<string, () => void>> };

/** This test holds the readings of a formula equal to each other, not to the outside world. */
const inwardTests = ['all-checks.test.ts'];

/**
 * Puts one slip at a time in the checks and runs the tests in tests/checks that concern them until one fails. No file
 * is rewritten. A slip that no test notices is tried again with everything evaluated anew. Gives the tests left out.
 */
export async function tryMutants({ only, from, starts, tried }: MutationWish): Promise<readonly Broken[]> {
  const folder = join(root, 'tests/checks');
  const tests = (await readdir(folder)).filter((file) => file.endsWith('.test.ts') && !inwardTests.includes(file));
  const texts = new Map<string, string>();
  for (const file of tests) texts.set(file, await readFile(join(folder, file), 'utf8'));
  const load = await bundled(tests);
  const shared = load();
  const models = await sampleModels(shared);
  const broken: Broken[] = [];
  const sound = new Map<string, readonly Collected[]>();
  /** Tests of a file that pass as things are, read once. */
  const soundTests = async (file: string): Promise<readonly Collected[]> => {
    const known = sound.get(file);
    if (known) return known;
    const passing: Collected[] = [];
    for (const test of collect(shared, file)) {
      const failure = await shared.firstFailure([test]);
      if (failure) broken.push({ file, title: test.title, error: String(failure.error) });
      else passing.push(test);
    }
    sound.set(file, passing);
    return passing;
  };

  const known = new Set(shared.checks.map(({ id }) => id));
  const killers = new Map<string, readonly Collected[]>();
  for (const [n, mutant] of shared.mutantsOf(shared.checks).entries()) {
    const ids = mutant.checks.map(({ id }) => id);
    if (n < from || (only.length > 0 && !ids.some((id) => only.includes(id)))) continue;
    if (mutant.flips && !shared.flippedChanges(mutant, models)) continue;
    const own = tests.filter((file) => ids.some((id) => texts.get(file)!.includes(`/checks/${id}.ts'`)));
    const overAll = tests.filter((file) => !own.includes(file) && texts.get(file)!.includes("/checks/index.ts'"));
    const runs: Collected[] = [];
    for (const file of [...own, ...overAll])
      runs.push(...(await soundTests(file)).filter(({ title }) => !ofAnother(title, ids, known)));
    starts(n, { checks: ids, what: mutant.what });
    const first = killers.get(ids[0]!) ?? [];
    const undo = mutant.apply();
    const failure = await shared.firstFailure([
      ...first.filter((test) => runs.includes(test)),
      ...runs.filter((test) => !first.includes(test)),
    ]);
    undo();
    if (failure) {
      killers.set(ids[0]!, [failure.test, ...first.filter((test) => test !== failure.test)].slice(0, 12));
      tried(n, { killedBy: `${failure.test.file} > ${failure.test.title}`, neverANumber: false });
    } else tried(n, await triedAfresh(load, n, mutant, own, broken));
  }
  return broken;
}

/** A test file may compute at its head, before any slip is in place: reads it again with the slip already there. */
async function triedAfresh(
  load: () => Engine,
  n: number,
  { readings: before }: Mutant,
  files: readonly string[],
  broken: readonly Broken[],
): Promise<Outcome> {
  const engine = load();
  const { apply, readings } = engine.mutantsOf(engine.checks)[n]!;
  apply();
  for (const file of files) {
    let tests: readonly Collected[];
    try {
      tests = collect(engine, file);
    } catch (error) {
      const said = error instanceof Error ? error.message : String(error);
      return { killedBy: `${file} (at its head: ${said})`, neverANumber: false };
    }
    const isBroken = ({ title }: Collected) => broken.some((other) => other.file === file && other.title === title);
    const failure = await engine.firstFailure(tests.filter((test) => !isBroken(test)));
    if (failure) return { killedBy: `${file} > ${failure.test.title}`, neverANumber: false };
  }
  // Every answer was what it is without the slip. An input that nothing ever read is a survivor all the same.
  const neverANumber = before !== undefined && before.asked > 0 && before.changed === 0 && readings!.changed === 0;
  return { killedBy: undefined, neverANumber };
}

/** Tests over all checks stand under the id of the check that each is about. */
function ofAnother(title: string, ids: readonly string[], known: ReadonlySet<string>): boolean {
  const [head = ''] = title.replace(/ \[\d+\]/, '').split(' > ');
  return known.has(head) && !ids.includes(head);
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
