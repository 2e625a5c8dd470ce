import { execFileSync } from 'node:child_process';
import { expect, it } from 'vitest';
import type { memoryOfWork } from './memory-of-work.ts';

const night = process.env.STILLPLATE_NIGHT !== undefined;

type Memory = ReturnType<typeof memoryOfWork>;

const [edits, solves] = night ? [1000, 100] : [150, 3];
/** So few are enough to see what is kept; memos are full by then. */
const keptOf = { edits: 30, solves: 3 };

/** As it is, and then with all that is told kept, in one Node of its own. */
function measured(): { readonly asIs: Memory; readonly keeping: Memory } {
  const program = `
    const { runTypeScript } = await import('./build/run-typescript.mjs');
    const { memoryOfWork } = await runTypeScript('tests/engine/memory-of-work.ts');
    const asIs = memoryOfWork(${edits}, ${solves}, { edits: 100, solves: 3 }, false);
    const keeping = memoryOfWork(${keptOf.edits}, ${keptOf.solves}, { edits: 10, solves: 1 }, true);
    console.log(JSON.stringify({ asIs, keeping }));`;
  const said = execFileSync(process.execPath, ['--expose-gc', '--input-type=module', '--eval', program], { encoding: 'utf8' }); // prettier-ignore
  return JSON.parse(said) as ReturnType<typeof measured>;
}

const growth = ({ before, after }: { before: number; after: number }): number => after - before;

/** What stays of an edit is a step back; memos fill up to their bound. */
const mostOf = { edits: (count: number) => 12_000 * count + 1_000_000, solves: 2_000_000 };

it('memory holds steady over edits and solves (1,000 and 100 at night), and would not if what is told were kept', () => {
  const { asIs, keeping } = measured();
  expect(asIs.edits.answers).toBe(edits);
  expect(asIs.solves.answers).toBeGreaterThanOrEqual(solves);
  expect(growth(asIs.edits)).toBeLessThan(mostOf.edits(edits));
  expect(growth(asIs.solves)).toBeLessThan(mostOf.solves);
  expect(growth(keeping.edits)).toBeGreaterThan(mostOf.edits(keptOf.edits));
  expect(growth(keeping.solves)).toBeGreaterThan(mostOf.solves);
}, 3_000_000);
