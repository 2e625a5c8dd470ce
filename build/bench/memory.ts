import { execFileSync } from 'node:child_process';
import { build } from 'esbuild';
import { median } from './interleaved.ts';
import type { Measure } from './measure.ts';

const bundle = 'build/bundled/bench-memory.mjs';

/** Peak memory of a process that checks the middle sample, over that of one that only loads the same modules. */
export async function measuredMemory(): Promise<readonly Measure[]> {
  await build({
    entryPoints: ['electron/command/check.ts'],
    outfile: bundle,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    logLevel: 'warning',
  });
  const load = `const { checkVerb } = await import('./${bundle}');`;
  const check = `${load} await checkVerb.run(['samples/middle.stillplate.json', '--json'], { out: () => {}, err: () => {}, folder: process.cwd() });`;
  const peaks = { load: [] as number[], check: [] as number[] };
  for (let round = 0; round < 7; round++) {
    peaks.load.push(peakOf(load));
    peaks.check.push(peakOf(check));
  }
  const ratio = median(peaks.check) / median(peaks.load);
  const mb = (kilobytes: number) => Math.round(kilobytes / 1024);
  return [
    {
      name: `peak memory of check (${mb(median(peaks.check))} MB), over loading its modules (${mb(median(peaks.load))} MB)`,
      ratio,
      goal: 1.5,
      met: ratio <= 1.5,
    },
  ];
}

/** Peak resident memory of a Node process that runs this, in kilobytes. */
function peakOf(script: string): number {
  const ends = 'process.stdout.write(String(process.resourceUsage().maxRSS));';
  return Number(
    execFileSync(process.execPath, ['--input-type=module', '-e', `${script} ${ends}`], { encoding: 'utf8' }),
  );
}
