// Runs npm scripts in turn, all of them, and says at the end which failed: one run shows everything that is wrong.
import { spawnSync } from 'node:child_process';

const failed = process.argv.slice(2).filter((script) => {
  console.log(`\n— ${script}`);
  return (
    spawnSync('npm', ['run', '--silent', script], { stdio: 'inherit', shell: process.platform === 'win32' }).status !==
    0
  );
});
if (failed.length > 0) {
  console.error(`\nFailed: ${failed.join(', ')}.`);
  process.exitCode = 1;
}
