// Makes slips in the checks, one at a time, and lists those that no test notices: `npm run mutate -- [CHECK …] [--json]`.
// Exit 1 when a slip survives. No file is rewritten.
import { tryMutants } from './mutate/try-mutants.mjs';

const json = process.argv.includes('--json');
const only = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const progress = (results) => {
  if (!json && process.stderr.isTTY) process.stderr.write(`\r${results.length} slips tried`);
};
const { results, broken } = await tryMutants({ only, progress });
const survivors = results.filter(({ killedBy }) => !killedBy);

if (json) console.log(JSON.stringify({ tried: results.length, survivors, broken: broken.map(({ file, title }) => ({ file, title })) }, null, 2));
else console.log(mutationText(results, broken));
process.exitCode = survivors.length > 0 || broken.length > 0 ? 1 : 0;

function mutationText(all, brokenTests) {
  const checks = [...new Set(all.map(({ check }) => check))];
  const lines = [''];
  for (const check of checks) {
    const own = all.filter((result) => result.check === check);
    const left = own.filter(({ killedBy }) => !killedBy);
    lines.push(`${check.padEnd(34)} ${own.length} slips, ${left.length === 0 ? 'all noticed' : `${left.length} not noticed`}`);
    for (const { what } of left) lines.push(`    ${what}`);
  }
  for (const { file, title } of brokenTests) lines.push(`A test fails without any slip and was left out: ${file}, ${title}`);
  lines.push('', `${all.length} slips tried, ${all.filter(({ killedBy }) => !killedBy).length} not noticed.`);
  return lines.join('\n');
}
