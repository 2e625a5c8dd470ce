// Writes the generated sources, or with --check says whether they are stale (exit 1).
import { runTypeScript } from './run-typescript.mjs';

process.exitCode = await (
  await runTypeScript('build/generate/checks.ts')
).generate({ check: process.argv.includes('--check') });
