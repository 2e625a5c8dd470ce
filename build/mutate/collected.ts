import { JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect';
import * as chai from 'chai';

/**
 * Stands in for `vitest` while mutants are tried: it collects tests, so that they can be run thousands of times in one
 * process. `expect` is vitest's own. What a test uses beyond this is refused by the bundler or by name.
 */
chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
export const expect = chai.expect;

export interface Collected {
  readonly file: string;
  readonly title: string;
  readonly run: () => unknown;
  readonly before: readonly Hook[];
}

interface Hook {
  readonly run: () => unknown;
  readonly every: boolean;
}

interface Suite {
  readonly title: string;
  readonly hooks: Hook[];
}

export const collected: Collected[] = [];
let suites: Suite[] = [{ title: '', hooks: [] }];
let current = '';

/** Called at the head of each test file by the bundler. */
export function beginFile(name: string): void {
  current = name;
  suites = [{ title: '', hooks: [] }];
}

type Body = (...values: never[]) => unknown;

function test(title: string, run: Body): void {
  const before = suites;
  collected.push({
    file: current,
    title: [...suites.map((suite) => suite.title), title].filter(Boolean).join(' > '),
    run,
    get before() {
      return before.flatMap(({ hooks }) => hooks);
    },
  });
}

function suite(title: string, body: Body): void {
  const outside = suites;
  suites = [...suites, { title, hooks: [] }];
  body();
  suites = outside;
}

const each =
  (declare: (title: string, body: Body) => void) =>
  (cases: readonly unknown[]) =>
  (title: string, body: (...values: unknown[]) => unknown): void =>
    cases.forEach((values, i) =>
      declare(titleOf(title, values, i), () => (Array.isArray(values) ? body(...(values as unknown[])) : body(values))),
    );

/** The title with its first %s filled in, and the case's number. */
const titleOf = (title: string, values: unknown, i: number): string =>
  `${title.replace('%s', String(Array.isArray(values) ? values[0] : values))} [${i}]`;

export const it = Object.assign(test, { each: each(test) });
export { it as test };
export const describe = Object.assign(suite, { each: each(suite) });
export const beforeAll = (run: () => unknown): void => void suites.at(-1)!.hooks.push({ run, every: false });
export const beforeEach = (run: () => unknown): void => void suites.at(-1)!.hooks.push({ run, every: true });

/** Runs tests one after the other until one fails; gives that one, or undefined when all pass. */
export async function firstFailure(
  tests: readonly Collected[],
): Promise<{ readonly test: Collected; readonly error: unknown } | undefined> {
  const done = new Set<Hook>();
  for (const test of tests) {
    try {
      for (const hook of test.before) {
        if (hook.every || !done.has(hook)) await hook.run();
        done.add(hook);
      }
      await test.run();
    } catch (error) {
      return { test, error };
    }
  }
  return undefined;
}
