// The long runs: `npm run night [-- COUNT]`. Random documents (COUNT, 5,000 by default) and every slip in every check.
// Writes a dated report into tests/night/, to be committed. Exit 1 when something was found.
import { writeFile } from 'node:fs/promises';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { runTypeScript } from './run-typescript.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const count = Number(process.argv[2] ?? 5_000);
const date = new Date().toISOString().slice(0, 10);
const seed = Number(date.replaceAll('-', ''));
const { fuzz } = await runTypeScript('build/night/fuzz.ts');
const { runMutants } = await runTypeScript('build/mutate/run-mutants.ts');
const { survived } = await runTypeScript('build/mutate/survived.ts');
const { mutationText } = await runTypeScript('build/mutate/mutation-text.ts');

const start = Date.now();
const minutes = () => `${((Date.now() - start) / 60_000).toFixed(1)} minutes after the start`;
const { documents, refused, appraised, quantities, slowest, failures } = await fuzz(count, seed);
const lines = [
  `Night of ${date}. Node ${process.version}, ${cpus().length} cores.`,
  '',
  `Random documents: ${documents} from seed ${seed}, ${refused} refused in words, ${appraised} appraised; ${quantities} random quantities; ${failures.length} failures. ${minutes()}.`,
  `Slowest document: seed ${slowest.seed}, ${slowest.seconds.toFixed(1)} s.`,
  ...failures.slice(0, 100).map((failure) => `    ${failure}`),
  '',
  'Slips in checks, one at a time:',
];
const report = await runMutants();
lines.push(mutationText(report), minutes(), '');
const file = `tests/night/${date}.txt`;
await writeFile(file, lines.join('\n'));
console.log(lines.join('\n'));
console.log(`Written: ${file}`);
process.exitCode = failures.length > 0 || report.broken.length > 0 || report.results.some(survived) ? 1 : 0;
