import { defineConfig } from 'vitest/config';
import { LongestFirst } from './build/longest-first.ts';

/** CI counts tests from a JSON report beside the usual one. */
const report = process.env.STILLPLATE_TEST_REPORT;

/** Tests that put a double in the place of a module need a world of their own. */
const withDoubles = ['tests/host/write-file.test.ts', 'tests/host/write-new-file.test.ts'];
/** Tests that open the bundled window in a browser: each waits for the page half of its time, so two share a small machine well. */
const inBrowser = ['tests/browser/**/*.test.ts'];
/** Tests that start the bundled main process against a double of Electron, each window a page in a browser. */
const inElectron = ['tests/electron/**/*.test.ts'];

/** A program that is started by its import must be imported by Node itself. */
const importedByNode = { external: [/build.bundled.tests/] };

export default defineConfig({
  test: {
    testTimeout: 120_000,
    hookTimeout: 300_000,
    // two: the solver's tests fill a core each, and a small machine has two
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
    reporters: report ? ['default', ['json', { outputFile: report }]] : ['default'],
    // A browser fills a small machine: those tests run after the others, not beside them (groupOrder).
    projects: [
      // mathjs is a thousand files: files that share a worker load it once. Core keeps no state but memos of pure functions.
      {
        extends: true,
        test: {
          name: 'shared',
          include: ['tests/**/*.test.ts'],
          exclude: [...withDoubles, ...inBrowser, ...inElectron],
          isolate: false,
        },
      },
      // With the next group: a worker is shared only until a file of another project is next.
      { extends: true, test: { name: 'alone', include: withDoubles, sequence: { groupOrder: 1 } } },
      {
        extends: true,
        test: {
          name: 'electron',
          include: inElectron,
          sequence: { groupOrder: 1 },
          server: { deps: importedByNode },
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: inBrowser,
          sequence: { groupOrder: 2 },
          globalSetup: ['tests/browser/support/bundle-once.ts'],
          isolate: false,
          server: { deps: importedByNode },
          testTimeout: 600_000,
          expect: { poll: { timeout: 180_000, interval: 100 } },
        },
      },
    ],
  },
});
