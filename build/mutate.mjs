// Makes slips in the checks, one at a time, and lists those that no test notices: `npm run mutate -- [CHECK …] [--json]`.
// Exit 1 when a slip survives. No file is rewritten. Survivors are also said on stderr as they are found.
import { fileURLToPath } from 'node:url';
import { runTypeScript } from './run-typescript.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const { runMutants } = await runTypeScript('build/mutate/run-mutants.ts');
const { survived } = await runTypeScript('build/mutate/survived.ts');
const { mutationText } = await runTypeScript('build/mutate/mutation-text.ts');

const json = process.argv.includes('--json');
const only = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const report = await runMutants(only, (results) => {
  if (json) return;
  const last = results.at(-1);
  if (survived(last)) console.error(`not noticed: ${last.checks[0]}: ${last.what}`);
  else if (results.length % 50 === 0) console.error(`${results.length} slips tried, last of ${last.checks[0]}`);
});
const survivors = report.results.filter(survived);
const neverANumber = report.results.filter((slip) => slip.neverANumber);
console.log(
  json
    ? JSON.stringify({ tried: report.results.length, survivors, neverANumber, broken: report.broken }, null, 2)
    : mutationText(report),
);
process.exitCode = survivors.length > 0 || report.broken.length > 0 ? 1 : 0;
