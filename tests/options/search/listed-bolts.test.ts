import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { appraise } from '../../../core/appraise.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../../core/document/read-document.ts';
import { catalogueWith } from '../../../core/catalogue/catalogue.ts';
import { placesOfLines } from '../../../core/geometry/places-of-lines.ts';
import { boltedAgainstWelded } from '../../../core/options/bolted-against-welded.ts';
import { appraised, checkedFront } from '../../../core/options/search/checked-front.ts';
import { askedSpace } from '../../../core/options/search/default-space.ts';
import { search, searchProblem, type Found, type SearchState } from '../../../core/options/search/search.ts';
import type { SearchSpace } from '../../../core/options/search/search-space.ts';
import { drained } from '../../../core/solve/drained.ts';
import { leftStanding, openIn } from './puts-aside.ts';

const raw = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
const places = placesOfLines(readDocument(raw), catalogueWith(), 'bolted-5')!;
// Every second bolt of the longer rows taken out, corners kept.
const fewer = places.filter(({ x, y }, i) => i % 2 === 0 || (x === '18 mm' && y === '18 mm'));

type Designs = Record<string, { fixing: Record<string, unknown> }>;
/** The sample with its bolted design on a list. */
function listed(of: readonly object[]): RawDocument {
  const changed = structuredClone(raw) as RawDocument & { designs: Designs };
  const { pitch: _, edgeDistance: __, ...rest } = changed.designs['bolted-5']!.fixing;
  changed.designs['bolted-5']!.fixing = { ...rest, places: of };
  return changed;
}

function ended(space: SearchSpace, of: RawDocument): { state: SearchState; problem: ReturnType<typeof searchProblem> } {
  const problem = searchProblem(of, space);
  const steps = search(problem);
  for (;;) {
    const step = steps.next();
    if (step.done) return { state: step.value, problem };
  }
}

it.each<[string, RawDocument]>([
  ['over a design in lines', raw],
  ['over a design on a list', listed(places)],
])(
  'searches candidates in lines and on lists beside each other, as appraising each does: %s',
  (_, from) => {
    const asked = askedSpace(from, null, { aside: ['fatigue', 'suspension-slack', 'serviceability'], aims: ['mass', 'holes', 'use'], thickness: ['5 mm', '8 mm'] }); // prettier-ignore
    const fixing = [
      { name: 'lines of 68 mm', fixing: { pitch: '68 mm', edgeDistance: '18 mm' } },
      { name: 'the same listed', fixing: { places } },
      { name: 'fewer of them', fixing: { places: fewer } },
    ];
    const space: SearchSpace = { ...asked, zones: asked.zones.map((zone) => ({ ...zone, fixing })) };
    const { state, problem } = ended(space, from);
    expect(problem.options).toBe(6);
    const all: Found[] = [];
    for (let index = 0; index < 6; index++) {
      const { aims, stops, appraisal } = drained(appraised(from, problem, [index], 'one'));
      if (stops.length === 0) all.push({ digits: [index], aims: space.aims.map((aim) => aims[aim]!), open: openIn(appraisal.rows, space.aside) }); // prettier-ignore
    }
    const inOrder = (front: readonly Found[]) => front.map(({ digits }) => digits.join()).sort();
    expect(all.length).toBeGreaterThan(1);
    expect(inOrder(state.front)).toEqual(inOrder(leftStanding(all)));
    expect(checkedFront(from, problem, state.front)).toHaveLength(state.front.length);
  },
  300_000,
);

it('tries other bolts on the listed places, and says that a pitch varies nothing there', () => {
  const from = listed(places);
  const space = askedSpace(from, null, { bolt: ['M10', 'M12'] });
  expect(space.zones[0]!.fixing!.map(({ name }) => name)).toEqual([`M10 on ${places.length} listed places`, `M12 on ${places.length} listed places`]); // prettier-ignore
  expect(() => askedSpace(from, null, { pitch: ['60 mm'] })).toThrow(/stand on listed places: a pitch varies nothing/);
});

it('is set against a weld, all else equal, and its bolts and holes are counted as they are listed', () => {
  const from = listed(fewer);
  const { bolted, welded } = boltedAgainstWelded(from, null);
  expect(bolted.work.bolts).toBe(3 * fewer.length);
  expect(bolted.work.holes).toBe(3 * 3 * fewer.length);
  expect(welded.work).toMatchObject({ bolts: 0, holes: 0 });
  const bare = appraise(from, readDocument(from), null);
  expect(bare.model.geometry.panels.map(({ bolts }) => bolts.length)).toEqual([fewer.length, fewer.length, fewer.length]); // prettier-ignore
}, 120_000);
