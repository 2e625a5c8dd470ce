import { execFileSync } from 'node:child_process';
import { expect, it } from 'vitest';
import type { memoryOfWork } from './memory-of-work.ts';

const night = process.env.STILLPLATE_NIGHT !== undefined;

function measured(edits: number, solves: number, keep: boolean): ReturnType<typeof memoryOfWork> {
  const program = `
    const { runTypeScript } = await import('./build/run-typescript.mjs');
    const { memoryOfWork } = await runTypeScript('tests/engine/memory-of-work.ts');
    console.log(JSON.stringify(memoryOfWork(${edits}, ${solves}, ${keep})));`;
  const said = execFileSync(process.execPath, ['--expose-gc', '--input-type=module', '--eval', program], { encoding: 'utf8' }); // prettier-ignore
  return JSON.parse(said) as ReturnType<typeof memoryOfWork>;
}

const growth = ({ before, after }: { before: number; after: number }): number => after - before;

/** What stays of an edit is a step back; memos fill up to their bound. */
const mostOf = { edits: (count: number) => 12_000 * count + 1_000_000, solves: 2_000_000 };

it('memory holds steady over edits and solves (1,000 and 100 at night)', () => {
  const [edits, solves] = night ? [1000, 100] : [150, 3];
  const held = measured(edits, solves, false);
  expect(held.edits.answers).toBe(edits);
  expect(held.solves.answers).toBeGreaterThanOrEqual(solves);
  expect(growth(held.edits)).toBeLessThan(mostOf.edits(edits));
  expect(growth(held.solves)).toBeLessThan(mostOf.solves);
}, 3_000_000);

it('and would not, if what is told were kept', () => {
  const held = measured(30, 4, true);
  expect(growth(held.edits)).toBeGreaterThan(mostOf.edits(30));
  expect(growth(held.solves)).toBeGreaterThan(mostOf.solves);
}, 600_000);
