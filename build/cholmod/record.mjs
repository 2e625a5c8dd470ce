// Records the exported matrices of tests/solve/sparse and CHOLMOD's solutions of them anew.
import { fileURLToPath } from 'node:url';
import { runTypeScript } from '../run-typescript.mjs';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
await (await runTypeScript('build/cholmod/record.ts')).record();
