import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { checks } from '../../../core/checks/index.ts';
import { readDocumentText } from '../../../core/document/read-document.ts';
import { askedSpace } from '../../../core/options/search/default-space.ts';
import { judgedOption } from '../../../core/options/search/judged-option.ts';
import { search, searchProblem, type Problem } from '../../../core/options/search/search.ts';
import { leftStanding, putsAside } from './puts-aside.ts';

const small = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
/** Loaded until thin panels fail. */
const service = { ...(small['loads'] as { service: object }).service, force: '24 kN' };
const raw = { ...small, loads: { ...(small['loads'] as object), service } };
const night = process.env.STILLPLATE_NIGHT !== undefined;
/** For each of three panels every combination of these, or none: 37³ options at night, else 5³. Water sees 4³ plans of them, or 3³. */
const lists = night
  ? { thickness: ['2 mm', '2.5 mm', '3 mm', '4 mm', '6 mm', '8 mm'], overlap: ['30 mm', '35 mm', '40 mm'], pitch: ['60 mm', '68 mm'] }
  : { thickness: ['2.5 mm', '4 mm'], overlap: ['30 mm', '40 mm'], pitch: ['68 mm'] }; // prettier-ignore
const asked = {
  ...lists,
  aims: ['mass', 'addedMass', 'drag'] as ['mass', 'addedMass', 'drag'],
  zones: 'panels',
  open: true,
  aside: ['fatigue', 'serviceability', 'stability', 'handling', 'suspension-slack', 'weld-edge'],
} as const;

interface One {
  readonly digits: readonly number[];
  readonly aims: readonly number[];
  readonly open: readonly string[];
}

/** Every option judged by every check that is not set aside, and its water solved, none left out for what another has; equal plans
 *  share a solve. */
function everyOne(problem: Problem): One[] {
  // What stops most comes first, so that this ends: in no order does another verdict come out.
  const early = ['panel-bending-four-sides', 'panel-bending-bolts'];
  const order = [...checks.keys()].sort((a, b) => early.indexOf(checks[b]!.id) - early.indexOf(checks[a]!.id) || a - b);
  const passing: One[] = [];
  const [a, b, c] = problem.zones.map(({ count }) => count) as [number, number, number];
  for (let i = 0; i < a; i++)
    for (let j = 0; j < b; j++)
      for (let k = 0; k < c; k++) {
        const verdict = judgedOption(problem, [i, j, k], order);
        if (verdict.holds) passing.push({ digits: [i, j, k], aims: verdict.aims, open: verdict.open });
      }
  return passing;
}

function frontOf(passing: readonly One[]): One[] {
  const front: One[] = [];
  for (const one of [...passing].sort((p, q) => p.aims[0]! - q.aims[0]!))
    if (!front.some((other) => putsAside(other, one))) front.push(one);
  // Masses that are equal but for their last bits may stand in the wrong order.
  return leftStanding(front);
}

const words = (front: readonly One[]): string[] =>
  front.map(({ digits, aims }) => `${digits.join()}: ${aims.map((value) => value.toPrecision(12)).join(' ')}`).sort();

it('finds the front of mass, added mass and drag area that judging every option finds, exactly (50,653 options at night, else 125)', () => {
  const problem = searchProblem(raw, askedSpace(raw, null, asked));
  expect(problem.options).toBe(night ? 37 ** 3 : 5 ** 3);
  const steps = search(problem);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const { front, judged, decided } = step.value;
  // A problem of its own, so that no solve of the search is used again.
  const passing = everyOne(searchProblem(raw, askedSpace(raw, null, asked)));
  if (night) console.log(`${problem.options} options: ${passing.length} pass, ${front.length} are beaten by none; the search judged ${judged}.`); // prettier-ignore
  expect(passing.length).toBeLessThan(problem.options);
  expect(front.length).toBeGreaterThan(3);
  expect(words(front)).toEqual(words(frontOf(passing)));
  expect(decided).toBe(problem.options);
  expect(judged).toBeLessThan(problem.options);
}, 20_000_000);
