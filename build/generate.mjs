// Writes the generated sources, or with --check says whether they are stale (exit 1).
import { runTypeScript } from './run-typescript.mjs';

const check = process.argv.includes('--check');
for (const made of ['fronts', 'checks'])
  if ((await (await runTypeScript(`build/generate/${made}.ts`)).generate({ check })) !== 0) process.exitCode = 1;
