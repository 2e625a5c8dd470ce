// Makes slips in the checks, one at a time, and lists those that no test notices: `npm run mutate -- [CHECK …] [--json]`.
// Exit 1 when a slip survives. No file is rewritten.
import { fileURLToPath } from 'node:url';
import { runTypeScript } from './run-typescript.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const { tryMutants } = await runTypeScript('build/mutate/try-mutants.ts');
const { mutationText } = await runTypeScript('build/mutate/mutation-text.ts');

const json = process.argv.includes('--json');
const only = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const progress = (results) => {
  if (!json && process.stderr.isTTY) process.stderr.write(`\r${results.length} slips tried`);
};
const { results, broken } = await tryMutants({ only, progress });
const survivors = results.filter(({ killedBy }) => !killedBy);

if (json)
  console.log(
    JSON.stringify(
      { tried: results.length, survivors, broken: broken.map(({ file, title }) => ({ file, title })) },
      null,
      2,
    ),
  );
else console.log(mutationText({ results, broken }));
process.exitCode = survivors.length > 0 || broken.length > 0 ? 1 : 0;
