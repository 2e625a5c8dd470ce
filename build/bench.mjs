// Ratios of times and memory within one run: `npm run bench`, or one part: `npm run bench --silent -- checks --json`.
// A part is a file in build/bench that exports bench(). A missed goal is reported; the exit code stays 0.
import { fileURLToPath } from 'node:url';
import { runTypeScript } from './run-typescript.mjs';

const parts = ['checks', 'window', 'solver', 'fatigue', 'water', 'tank'];
const json = process.argv.includes('--json');
const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const unknown = asked.filter((part) => !parts.includes(part));
if (unknown.length > 0) {
  console.error(`There is no part “${unknown.join('”, “')}” of the benchmark. Parts: ${parts.join(', ')}.`);
  process.exit(2);
}
process.chdir(fileURLToPath(new URL('..', import.meta.url)));

const measures = [];
for (const part of asked.length > 0 ? asked : parts)
  measures.push(...(await (await runTypeScript(`build/bench/${part}.ts`)).bench()));

if (json) console.log(JSON.stringify(measures, null, 2));
else
  for (const { name, ratio, goal, met, milliseconds } of measures) {
    const verdict = goal === null ? '' : met ? `goal ${goal}, met` : `goal ${goal}, MISSED`;
    console.log(
      `${ratio.toFixed(2).padStart(8)}  ${verdict.padEnd(16)} ${name}${milliseconds === undefined ? '' : ` (${milliseconds.toFixed(1)} ms)`}`,
    );
  }
