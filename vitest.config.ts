import { defineConfig } from 'vitest/config';

/** CI counts tests from a JSON report beside the usual one. */
const report = process.env.STILLPLATE_TEST_REPORT;

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    reporters: report ? ['default', ['json', { outputFile: report }]] : ['default'],
  },
});
