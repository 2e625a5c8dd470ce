import { expect, it } from 'vitest';

interface Reproduce {
  readonly reproduce: (parts: readonly string[]) => Promise<{ files: number; differ: readonly string[]; hash: string }>;
}
const { reproduce } = (await import('../../build/reproduce.mjs' as string)) as Reproduce;

// The page holds core and renderer; `npm run reproduce` bundles command line and desktop side twice as well.
it('core and renderer bundle to the same bytes twice, from folders of other names', async () => {
  const { files, differ, hash } = await reproduce(['page']);
  expect(files).toBeGreaterThan(20);
  expect(differ).toEqual([]);
  expect(hash).toMatch(/^[0-9a-f]{64}$/);
});
