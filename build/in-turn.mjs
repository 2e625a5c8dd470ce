// Runs npm scripts in turn, all of them, and says at the end which failed: one run shows everything that is wrong.
// Scripts joined by commas run side by side, and each tells what it said once it has ended.
import { spawn } from 'node:child_process';

const ended = (script, stdio) =>
  new Promise((resolve) => {
    const said = [];
    const run = spawn('npm', ['run', '--silent', script], { stdio, shell: process.platform === 'win32' });
    run.stdout?.on('data', (data) => said.push(data));
    run.stderr?.on('data', (data) => said.push(data));
    run.on('error', (error) => said.push(Buffer.from(`${error.message}\n`)));
    run.on('close', (code) => resolve({ code, said: Buffer.concat(said) }));
  });

const failed = [];
for (const scripts of process.argv.slice(2).map((group) => group.split(','))) {
  if (scripts.length === 1) console.log(`\n— ${scripts[0]}`);
  await Promise.all(
    scripts.map(async (script) => {
      const { code, said } = await ended(script, scripts.length === 1 ? 'inherit' : ['ignore', 'pipe', 'pipe']);
      if (scripts.length > 1) process.stdout.write(`\n— ${script}\n${said.toString()}`);
      if (code !== 0) failed.push(script);
    }),
  );
}
if (failed.length > 0) {
  console.error(`\nFailed: ${failed.join(', ')}.`);
  process.exitCode = 1;
}
