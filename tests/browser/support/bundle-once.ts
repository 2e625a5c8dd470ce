import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

/**
 * Bundles page and desktop once, before the first journey, from the project's folder, as `node build/bundle.mjs page desktop` does.
 * STILLPLATE_BUNDLED=1: they lie there already.
 */
export async function setup(): Promise<void> {
  if (process.env.STILLPLATE_BUNDLED === '1') return;
  const program = pathToFileURL(resolve('build/bundle.mjs')).href;
  const { bundle } = (await import(program)) as { bundle: (names: readonly string[]) => Promise<void> };
  await bundle(['page', 'desktop']);
}
