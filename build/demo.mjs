// Checks the middle sample, writes its note and its option table into out/, and prints where. Exit 0 also when a check
// honestly fails or cannot be judged, and says so; another code only when the program itself fails.
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { bundle } from './bundle.mjs';

await bundle(['command']);

const root = fileURLToPath(new URL('..', import.meta.url));
const sample = 'samples/middle.stillplate.json';
const { run } = await import('./bundled/command/run.mjs');

await mkdir(new URL('../out/', import.meta.url), { recursive: true });
const check = await stillplate('check', sample);
console.log(check.text);
const note = await stillplate('note', sample, '--out', 'out/middle-note.pdf');
const table = await stillplate('compare', sample);
const json = await stillplate('compare', sample, '--json');
await writeFile(`${root}/out/middle-options.txt`, table.text);
await writeFile(`${root}/out/middle-options.json`, json.text);

console.log(table.text);
console.log('Written:');
console.log('  out/middle-note.pdf       the check note of the chosen option');
console.log('  out/middle-options.txt    all options side by side, as above');
console.log('  out/middle-options.json   the same for other programs, SI');
console.log(
  check.code === 0
    ? '\nEvery check of the chosen option is judged and passes.'
    : '\nIn the chosen option a check fails or cannot be judged: that is an honest result, said above and on page one of the note, not a fault of the program.',
);
if (note.code !== check.code) fail(`check and note disagree: exit codes ${check.code} and ${note.code}`);

/** Runs one command line; gives what it printed and its exit code, 0 or 1. Anything else is a failure of the program. */
async function stillplate(...args) {
  const out = [];
  const code = await run(args, {
    out: (text) => out.push(text.endsWith('\n') ? text : `${text}\n`),
    err: (text) => console.error(text),
    folder: root,
  });
  if (code !== 0 && code !== 1) fail(`stillplate ${args.join(' ')} ended with exit code ${code}`);
  return { text: out.join(''), code };
}

function fail(why) {
  console.error(why);
  process.exit(2);
}
