import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    name: 'electron',
    include: ['tests/electron/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    fileParallelism: false,
    server: { deps: { external: [/build\/bundled\/tests/] } },
  },
});
