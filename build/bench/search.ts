import { execFileSync } from 'node:child_process';
import { appraise, modelOf } from '../../core/appraise.ts';
import { applyEdit } from '../../core/document/edit.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../core/document/read-document.ts';
import { foundOption } from '../../core/options/search/option-document.ts';
import { search } from '../../core/options/search/search.ts';
import { formulasAndByHand } from './formulas.ts';
import type { Measure } from './measure.ts';
import { middleSpace } from './middle-space.ts';
import { sample } from './sample.ts';
import type { heapOfSearch } from './search-heap.ts';
import { searchedPlates } from './searched-plates.ts';

/** Part `search`: 50,544 options of the middle sample by all closed-form checks, its formulas, the solver in its loop, its memory. */
export async function bench(): Promise<readonly Measure[]> {
  const raw = readDocumentText(await sample('middle'));
  const { engine, hand } = formulasAndByHand(modelOf(readDocument(raw)));
  return [
    {
      name: 'formulas of the middle sample without trace, inputs read, over those written by hand',
      ratio: engine / hand,
      goal: 2,
      met: engine / hand <= 2,
      milliseconds: engine,
    },
    againstScratch(raw),
    ...searchedPlates(raw),
    heap(),
  ];
}

/** Longest that one search is timed, ms; what is timed of it then is said. */
const longest = 45_000;

/** How many times longer an option takes from its written form by `check` than in the search. A few of them take turns with the search. */
function againstScratch(raw: RawDocument): Measure {
  // Thinner ones fail: where none does, the lightest is found at once and beats the others without a check.
  const problem = middleSpace(raw, 4);
  const steps = search(problem);
  let [inSearch, scratch, checked, decided] = [0, 0, 0, 0];
  for (let done = false; !done && inSearch < longest;) {
    const until = inSearch + longest / 8;
    while (!done && inSearch < until) {
      const start = performance.now();
      const step = steps.next();
      inSearch += performance.now() - start;
      done = step.done === true;
      decided = step.value.decided;
    }
    for (let n = 0; n < 3; n++) {
      const digits = problem.zones.map(({ count }, zone) => (checked * (7 + 4 * zone)) % count);
      const start = performance.now();
      const written = applyEdit(raw, { kind: 'addOption', option: foundOption(problem.zones, digits, null, 'one') });
      appraise(written, readDocument(written), 'one');
      scratch += performance.now() - start;
      checked++;
    }
  }
  const ratio = scratch / checked / (inSearch / decided);
  const of = decided < problem.options ? `the first ${decided} of ${problem.options}` : `${problem.options}`;
  return {
    name: `check of an option from scratch, over its part of a search of ${of} options (at least)`,
    ratio,
    goal: 20,
    met: ratio >= 20,
    milliseconds: scratch / checked,
  };
}

/** The heap of a search in a process of its own: after 50,000 options over that after 10,000. */
function heap(): Measure {
  const program = `
    const { runTypeScript } = await import('./build/run-typescript.mjs');
    const { heapOfSearch } = await runTypeScript('build/bench/search-heap.ts');
    console.log(JSON.stringify(await heapOfSearch()));`;
  const said = execFileSync(process.execPath, ['--expose-gc', '--input-type=module', '--eval', program], { encoding: 'utf8' }); // prettier-ignore
  const { early, late } = JSON.parse(said) as Awaited<ReturnType<typeof heapOfSearch>>;
  const mb = (bytes: number): string => `${Math.round(bytes / 2 ** 20)} MB`;
  return {
    name: `heap of a search after 50,000 options (${mb(late)}), over that after 10,000 (${mb(early)})`,
    ratio: late / early,
    goal: 1.1,
    met: late / early <= 1.1,
  };
}
