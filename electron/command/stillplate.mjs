#!/usr/bin/env node
// Runs the command line on plain Node: the bundle that installing makes, made now if it is absent.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const bundle = new URL('../../build/bundled/command/run.mjs', import.meta.url);
if (!existsSync(fileURLToPath(bundle))) await (await import('../../build/bundle.mjs')).bundle(['command']);
const { run } = await import(bundle.href);

// A reader that has seen enough ("… | head") closes the pipe: no fault.
process.stdout.on('error', (error) => {
  if (error.code === 'EPIPE') process.exit(0);
  console.error(`The output cannot be written: ${error.message}. What was printed is not complete.`);
  process.exit(3);
});

try {
  process.exitCode = await run(process.argv.slice(2));
} catch (error) {
  // 1 would say that a check fails.
  console.error(
    'A fault in Stillplate itself, not in your input. Nothing was changed. Please report it with the document.',
  );
  console.error(error);
  process.exitCode = 4;
}
