// Ratios of times and memory within one run: `npm run bench`, or one part: `npm run bench --silent -- checks --json`.
// A part is a file in build/bench that exports bench(). A missed goal is reported; the exit code stays 0. A part that
// stops is reported, and the exit code is 1. A run of all parts writes build/bench/report.md and README's table.
import { readFile, writeFile } from 'node:fs/promises';
import { cpus, totalmem } from 'node:os';
import { fileURLToPath } from 'node:url';
import { runTypeScript } from './run-typescript.mjs';

const parts = ['checks', 'window', 'search', 'solver', 'plate', 'fatigue', 'water', 'tank'];
const json = process.argv.includes('--json');
const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const unknown = asked.filter((part) => !parts.includes(part));
if (unknown.length > 0) {
  console.error(`There is no part “${unknown.join('”, “')}” of the benchmark. Parts: ${parts.join(', ')}.`);
  process.exit(2);
}
process.chdir(fileURLToPath(new URL('..', import.meta.url)));

const ran = [];
for (const part of asked.length > 0 ? asked : parts) {
  const start = performance.now();
  const seconds = () => (performance.now() - start) / 1000;
  try {
    const measures = await (await runTypeScript(`build/bench/${part}.ts`)).bench();
    ran.push({ part, measures, seconds: seconds() });
  } catch (error) {
    console.error(error);
    ran.push({ part, measures: [], seconds: seconds(), stopped: String(error.message).split('\n')[0] });
    process.exitCode = 1;
  }
  console.error(`${part}: ${seconds().toFixed(0)} s`);
}

const measures = ran.flatMap((one) => one.measures);
if (json) console.log(JSON.stringify(measures, null, 2));
else
  for (const { name, ratio, goal, met, milliseconds } of measures) {
    const verdict = goal === null ? '' : met ? `goal ${goal}, met` : `goal ${goal}, MISSED`;
    console.log(
      `${ratio.toFixed(2).padStart(8)}  ${verdict.padEnd(16)} ${name}${milliseconds === undefined ? '' : ` (${milliseconds.toFixed(1)} ms)`}`,
    );
  }

if (asked.length === 0) {
  const { table, withTable } = await runTypeScript('build/bench/report.ts');
  const minutes = ran.reduce((sum, one) => sum + one.seconds, 0) / 60;
  const cores = cpus();
  const where = `${new Date().toISOString().slice(0, 10)}, ${cores.length} cores of ${cores[0]?.model.trim()}, ${(totalmem() / 2 ** 30).toFixed(0)} GB, Node ${process.versions.node}, software graphics; ${minutes.toFixed(1)} minutes in all`;
  const text = `${where}.\n\n${table(ran)}`;
  const times = ran.map(({ part, seconds }) => `${part} ${seconds.toFixed(0)} s`).join(', ');
  await writeFile('build/bench/report.md', `# Benchmark\n\n${text}\n\nTime of each part: ${times}.\n`);
  await writeFile('README.md', withTable(await readFile('README.md', 'utf8'), text));
}
