import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDocument, readDocumentText, type RawDocument } from '../../../core/document/read-document.ts';
import { asSmall, type AimId } from '../../../core/options/search/aims.ts';
import { appraised, checkedFront } from '../../../core/options/search/checked-front.ts';
import { askedSpace } from '../../../core/options/search/default-space.ts';
import {
  evaluationOf,
  search,
  searchProblem,
  type Evaluation,
  type Problem,
  type SearchState,
} from '../../../core/options/search/search.ts';
import { drained } from '../../../core/solve/drained.ts';
import { leftStanding, openIn, putsAside } from './puts-aside.ts';

const raw = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
const { motion: _motion, ...calm } = raw['hydrodynamics'] as Record<string, unknown>;
const still: RawDocument = { ...raw, hydrodynamics: calm } as RawDocument;
const aside = ['fatigue', 'serviceability', 'stability', 'handling', 'suspension-slack', 'weld-edge'];

function ended(problem: Problem, by?: Evaluation): SearchState {
  const steps = search(problem, undefined, by);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const words = (front: readonly { readonly digits: readonly number[]; readonly aims: readonly number[] }[]) =>
  front.map(({ digits, aims }) => `${digits.join()}: ${aims.map((value) => value.toPrecision(9)).join(' ')}`).sort();

/** Every option of a space by its digits. */
function every(counts: readonly number[]): number[][] {
  return counts.reduce<number[][]>(
    (all, count) => all.flatMap((begins) => Array.from({ length: count }, (_, i) => [...begins, i])),
    [[]],
  );
}

describe('a search for what is gained in the water, against appraising every combination', () => {
  for (const [name, document, aims] of [
    ['in the stated motion', raw, ['mass', 'addedMass', 'drag']],
    ['in still water, added mass leading', still, ['addedMass', 'mass']],
  ] as const)
    it(`finds the same front ${name}`, () => {
      const asked = { aims: aims as unknown as [AimId], aside, thickness: ['6 mm'], zones: 'panels', open: true } as const; // prettier-ignore
      const problem = searchProblem(document, askedSpace(document, null, asked));
      const passing = every(problem.zones.map(({ count }) => count)).flatMap((digits) => {
        const { aims: all, stops, appraisal } = drained(appraised(document, problem, digits, 'one'));
        const open = openIn(appraisal.rows, aside);
        return stops.length > 0 ? [] : [{ digits, aims: aims.map((aim) => asSmall(aim, all[aim]!)), open }];
      });
      const front = leftStanding(passing);
      expect(front.length).toBeGreaterThan(2);
      const state = ended(problem);
      expect(words(state.front)).toEqual(words(front));
      expect(state.decided).toBe(8);
      const most = state.front.reduce((a, b) => (a.digits.join() < b.digits.join() ? a : b));
      const [shown] = checkedFront(document, problem, [most]);
      expect(shown!.aims.addedMass).toBeGreaterThan(0);
    }, 300_000);
});

it('bounds what any option gains that begins with given zones, in the motion and in still water', () => {
  for (const document of [raw, still]) {
    const aims: [AimId, ...AimId[]] = ['addedMass'];
    const lists = { thickness: ['5 mm'], overlap: ['30 mm', '40 mm'], zones: 'panels', open: true } as const;
    const problem = searchProblem(document, askedSpace(document, null, { aims, ...lists }));
    const by = evaluationOf(problem);
    problem.zones.forEach(({ count }, zone) => {
      for (let candidate = 0; candidate < count; candidate++) by.plain({ zone, candidate });
    });
    const counts = problem.zones.map(({ count }) => count);
    expect(counts).toEqual([3, 3, 3]);
    const gains = new Map(every(counts).map((digits) => [digits.join(), by.most(digits)]));
    for (const [key, own] of gains)
      for (let depth = 0; depth < 3; depth++) {
        const most = by.most(key.split(',').slice(0, depth).map(Number));
        expect(most.addedMass).toBeGreaterThanOrEqual(own.addedMass);
        expect(most.drag).toBeGreaterThanOrEqual(own.drag);
      }
    // All panels left out gain nothing; plans that are each other's mirror image gain the same.
    expect(gains.get('2,2,2')).toEqual({ addedMass: 0, drag: 0 });
    expect(gains.get('0,2,2')).toEqual(gains.get('2,2,0'));
  }
}, 300_000);

it('finds the front of 4,096 options whose gains are no sum over zones, exactly, and asks once for each beginning', () => {
  const thickness = Array.from({ length: 16 }, (_, i) => `${3 + i / 2} mm`);
  const lists = { aims: ['mass', 'holes', 'addedMass'] as [AimId, ...AimId[]], thickness, zones: 'panels' } as const;
  const { water: _water, ...rest } = searchProblem(raw, askedSpace(raw, null, lists));
  // One thickness a column: each candidate has a plan of its own.
  const problem: Problem = { ...rest, water: null, zones: rest.zones.map((zone) => ({ ...zone, column: 1, columns: zone.count })) }; // prettier-ignore
  const mixed = (zone: number, i: number) => (((zone + 1) * 7919 + i * 104729) % 1009) / 1009;
  const mass = (zone: number, i: number) => 5 + i + 3 * mixed(zone, i);
  const holes = (zone: number, i: number) => Math.floor(8 * mixed(zone + 3, i));
  const closed = (zone: number, i: number) => i / 15 + mixed(zone + 6, i) / 9;
  /** Parts reinforce each other; what is not chosen yet is taken at its most. */
  const gained = (digits: readonly number[]) =>
    100 * [0, 1, 2].reduce((product, zone) => product * (1 + (zone < digits.length ? closed(zone, digits[zone]!) : 1.2)), 1); // prettier-ignore
  const aimsOf = (digits: readonly number[]) => [
    digits.reduce((sum, d, zone) => sum + mass(zone, d), 100),
    digits.reduce((sum, d, zone) => sum + holes(zone, d), 0),
    -gained(digits),
  ];
  // What is thick in the first and third zone leaves a check open, another what is thin there.
  const openOf = ([a, , c]: readonly number[]): string[] => [...(a! + c! > 18 ? ['one'] : []), ...(a! + c! < 7 ? ['other'] : [])]; // prettier-ignore
  let solved = 0;
  const by: Evaluation = {
    plain: (one) => ({ mass: 100 + (one ? mass(one.zone, one.candidate) : 0), holes: one ? holes(one.zone, one.candidate) : 0, weight: 0, cost: 0, plan: '', light: { mass: 0, weight: 0 } }), // prettier-ignore
    judge: (digits) => ({ holds: true, aims: aimsOf(digits), open: openOf(digits) }),
    most: (begins) => {
      solved++;
      return { addedMass: gained(begins), drag: 0 };
    },
  };
  const all = every([16, 16, 16]).map((digits) => ({ digits, aims: aimsOf(digits), open: openOf(digits) }));
  all.sort((a, b) => a.aims[1]! - b.aims[1]! || a.aims[0]! - b.aims[0]! || a.aims[2]! - b.aims[2]!);
  const kept: typeof all = [];
  for (const one of all) if (!kept.some((other) => putsAside(other, one))) kept.push(one);
  // Masses that are equal but for their last bits stand in the wrong order.
  const front = leftStanding(kept);
  expect(new Set(front.map(({ open }) => open.join())).size).toBe(3);
  const state = ended(problem, by);
  expect(words(state.front)).toEqual(words(front));
  expect(state.decided).toBe(4096);
  expect(solved).toBeLessThanOrEqual(4096 + 16 ** 2 + 16);
}, 60_000);

it('refuses drag without a motion, and in one outside the tests of edge drag', () => {
  const asked = { aims: ['drag'] as [AimId], thickness: ['5 mm'] };
  expect(() => searchProblem(still, askedSpace(still, null, asked))).toThrow(/needs the motion/);
  const motion = { ...(raw['hydrodynamics'] as { motion: object }).motion, amplitude: '1 mm' };
  const tiny = { ...raw, hydrodynamics: { ...calm, motion } } as RawDocument;
  expect(readDocument(tiny).hydrodynamics!.motion!.amplitude.si).toBe(0.001);
  expect(() => searchProblem(tiny, askedSpace(tiny, null, asked))).toThrow(/outside the tests behind the edge drag/);
});
