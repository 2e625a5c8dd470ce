import { defineConfig } from 'vitest/config';

/** CI counts tests from a JSON report beside the usual one. */
const report = process.env.STILLPLATE_TEST_REPORT;

/** Tests that put a double in the place of a module need a world of their own. */
const withDoubles = ['tests/host/write-file.test.ts', 'tests/host/write-new-file.test.ts'];

export default defineConfig({
  test: {
    testTimeout: 60_000,
    hookTimeout: 120_000,
    reporters: report ? ['default', ['json', { outputFile: report }]] : ['default'],
    projects: [
      // mathjs is a thousand files: files that share a worker load it once. Core keeps no state but memos of pure functions.
      { extends: true, test: { name: 'shared', include: ['tests/**/*.test.ts'], exclude: withDoubles, isolate: false } },
      { extends: true, test: { name: 'alone', include: withDoubles } },
    ],
  },
});
