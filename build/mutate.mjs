// Makes slips in the checks, one at a time, and lists those that no test notices: `npm run mutate -- [CHECK …] [--json]`.
// Exit 1 when a slip survives. No file is rewritten.
import { fileURLToPath } from 'node:url';
import { runTypeScript } from './run-typescript.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const { runMutants } = await runTypeScript('build/mutate/run-mutants.ts');
const { mutationText } = await runTypeScript('build/mutate/mutation-text.ts');

const json = process.argv.includes('--json');
const only = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const report = await runMutants(only, (results) => {
  if (!json && process.stderr.isTTY) process.stderr.write(`\r${results.length} slips tried`);
});
const survivors = report.results.filter(({ killedBy }) => killedBy === undefined);
console.log(
  json
    ? JSON.stringify({ tried: report.results.length, survivors, broken: report.broken }, null, 2)
    : mutationText(report),
);
process.exitCode = survivors.length > 0 || report.broken.length > 0 ? 1 : 0;
