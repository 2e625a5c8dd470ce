import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { appraise } from '../../../core/appraise.ts';
import { applyEdit } from '../../../core/document/edit.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../../core/document/read-document.ts';
import { createSearchService, type FromSearch } from '../../../core/engine/search-service.ts';
import type { SolvedForces } from '../../../core/loads/solved-forces.ts';
import { askedOf } from '../../../core/options/search/asked-of.ts';
import { appraised, checkedFront } from '../../../core/options/search/checked-front.ts';
import { askedSpace } from '../../../core/options/search/default-space.ts';
import { useOf, worstStop } from '../../../core/options/search/judge.ts';
import { foundOption } from '../../../core/options/search/option-document.ts';
import { optionSolver } from '../../../core/options/search/option-solver.ts';
import { searchKey, searchRecord } from '../../../core/options/search/search-record.ts';
import { search, searchProblem, type Problem, type SearchState } from '../../../core/options/search/search.ts';
import { solvedForcesOf } from '../../../core/plate/solved-forces-of.ts';
import { drained } from '../../../core/solve/drained.ts';
import { solverSession } from '../../../core/solve/sparse/solver-session.ts';
import { leftStanding, openIn } from './puts-aside.ts';

const { recovery: _recovery, ...small } = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
const service = { ...(small['loads'] as { service: object }).service, force: '26 kN' };
/** One panel, loaded until welds that hold by hand do not with the whole plate's forces. */
const raw = {
  ...small,
  options: [],
  chosen: null,
  panels: { A1: 'welded-4' },
  loads: { ...(small['loads'] as object), service },
  forces: { from: 'hand and solver', mesh: '300 mm' },
  search: {
    aims: ['mass', 'use'],
    thickness: ['3 mm', '4 mm', '6 mm', '8 mm'],
    throat: ['3 mm', '4 mm', '5 mm'],
    side: ['topside', 'underside'],
    aside: ['fatigue', 'serviceability', 'handling', 'suspension-slack', 'hanging-stability', 'weld-edge', 'weld-size', 'weld-end-return'], // prettier-ignore
  },
} as unknown as RawDocument;

const problemOf = (document: RawDocument): Problem =>
  searchProblem(document, askedSpace(document, null, askedOf(readDocument(document).search)));

/** The search run to its end, with how many steps it told of. */
function ended(problem: Problem): { readonly state: SearchState; readonly steps: number } {
  const steps = search(problem);
  let step = steps.next();
  let told = 0;
  for (; !step.done; step = steps.next()) told++;
  return { state: step.value, steps: told };
}

/** An option appraised from its written form with forces of a solver that has solved nothing before. */
function fromScratch({ zones, aside, space }: Problem, digits: readonly number[]) {
  const laid = applyEdit(raw, { kind: 'addOption', option: foundOption(zones, digits, null, 'one') });
  const document = readDocument(laid);
  const forces = drained(solvedForcesOf(appraise(laid, document, 'one').model, solverSession()));
  const { model, rows } = appraise(laid, document, 'one', forces);
  const passes = worstStop(rows, { aside, judged: space.judged }) === null;
  return { forces, passes, aims: [model.mass.total, useOf(rows, aside)], open: openIn(rows, [...aside]) };
}

describe('a search of a document that takes forces from the whole plate, against solving every option from scratch', () => {
  const problem = problemOf(raw);
  const inSearch = new Map<string, SolvedForces>();
  const { solve } = problem.solver!;
  const heard: Problem = {
    ...problem,
    solver: {
      *solve(model) {
        const forces = yield* solve(model);
        inSearch.set(forces.key, forces);
        return forces;
      },
    },
  };
  const { state, steps } = ended(heard);
  const all: (ReturnType<typeof fromScratch> & { digits: number[] })[] = [];
  for (let i = 0; i < problem.options; i++) all.push({ digits: [i], ...fromScratch(problem, [i]) });
  const byHand = ended(problemOf({ ...raw, forces: { from: 'hand' } } as RawDocument)).state;

  it('finds the front that solving all of them finds, exactly, and not the one by hand', () => {
    const passing = all.filter(({ passes }) => passes);
    const front = leftStanding(passing);
    const words = (found: readonly { digits: readonly number[]; aims: readonly number[]; open: readonly string[] }[]) =>
      found.map(({ digits, aims, open }) => `${digits.join()}: ${aims.join(' ')} ${open.join()}`).sort();
    expect(front.length).toBeGreaterThan(1);
    expect(words(state.front)).toEqual(words(front));
    expect(words(byHand.front)).not.toEqual(words(front));
    expect(state.decided).toBe(problem.options);
  });

  it('solves only what holds by hand, says so as it goes, and names what only the solver stops', () => {
    expect(state.solved).toBeGreaterThan(state.front.length);
    expect(state.solved).toBeLessThan(problem.options);
    expect(steps).toBeGreaterThan(10 * state.solved);
    const only = Object.entries(state.stopped).filter(([id]) => id.endsWith('-by-solution'));
    expect(only.length).toBeGreaterThan(0);
    for (const [, { title }] of only) expect(title).toMatch(/, with the whole plate’s forces$/);
    const stopped = Object.values(state.stopped).reduce((sum, { count }) => sum + count, 0);
    expect(stopped + state.passing + state.beaten).toBe(problem.options);
  });

  it('takes of each option the very forces that a solver from scratch finds', () => {
    expect(inSearch.size).toBeGreaterThanOrEqual(state.front.length);
    for (const [key, forces] of inSearch) expect(all.find((one) => one.forces.key === key)?.forces).toEqual(forces);
  });

  it('shows each found option solved, with what stops the next thinner one, and keeps a record that is of this search alone', () => {
    const shown = checkedFront(raw, problem, state.front);
    for (const { appraisal } of shown) expect(appraisal.rows.some(({ both }) => both?.governs === 'solver')).toBe(true);
    const thinner = shown.flatMap((one) => one.thinner);
    expect(thinner.some(({ stops }) => stops.length > 0)).toBe(true);
    const record = searchRecord(raw, problem, state, shown);
    expect(record).toMatchObject({ of: searchKey(raw, null), solved: state.solved });
    expect(searchKey({ ...raw, forces: { from: 'hand', mesh: '300 mm' } }, null)).not.toBe(record.of);
    expect(searchKey({ ...raw, forces: { from: 'hand and solver', mesh: '200 mm' } }, null)).not.toBe(record.of);
  });

  it('gives the same after being left in the middle of solves and taken up again from its state as text', () => {
    let left: SearchState | undefined;
    // Of what was solved nothing is remembered between rounds; a round may end anywhere within an option, and begins it again.
    for (let round = 1; left?.next !== null; round++) {
      const steps = search({ ...problem, solver: optionSolver() }, left);
      const before = left?.solved ?? 0;
      for (;;) {
        const step = steps.next();
        left = JSON.parse(JSON.stringify(step.value)) as SearchState;
        if (step.done || (left.solved > before && (left.solving?.done ?? 0) % 7 === round % 7)) break;
      }
    }
    expect(left).toEqual(JSON.parse(JSON.stringify(state)));
  });
}, 600_000);

it('hears a stop between two steps of a solve, and goes on to the same end', () => {
  const asked = { ...raw, search: { ...(raw['search'] as object), thickness: ['8 mm', '10 mm'], throat: ['4 mm'], side: ['topside'] } }; // prettier-ignore
  const ran = (stop: boolean): FromSearch => {
    const told: FromSearch[] = [];
    const waiting: (() => void)[] = [];
    const hear = createSearchService({ tell: (news) => told.push(news), later: (goOn) => waiting.push(goOn), isDue: () => true }); // prettier-ignore
    hear({ kind: 'search', edit: 1, raw: asked, option: null });
    const isSolving = () => {
      const last = told.at(-1);
      return last?.kind === 'progress' && last.progress.solver?.doing?.what.includes('contact');
    };
    while (stop && !isSolving()) waiting.shift()!();
    if (stop) {
      hear({ kind: 'stop' });
      const before = told.length;
      while (waiting.length > 0) waiting.shift()!();
      expect(told).toHaveLength(before);
      hear({ kind: 'go on' });
    }
    while (waiting.length > 0) waiting.shift()!();
    return told.at(-1)!;
  };
  const whole = ran(false);
  expect(whole).toMatchObject({ kind: 'found', progress: { solver: { left: 0, doing: null } } });
  expect(ran(true)).toEqual(whole);
}, 300_000);

it('judges a row by the solver’s demand where the engineer chose it, whatever the larger one by hand says', () => {
  const thin = { ...(raw['search'] as object), thickness: ['6 mm'], throat: ['4 mm'], side: ['topside'], aside: ['fatigue', 'serviceability', 'suspension-slack', 'hanging-stability', 'handling'] }; // prettier-ignore
  const document = { ...raw, search: thin } as RawDocument;
  const { appraisal } = drained(appraised(document, problemOf(document), [0], 'one'));
  const row = appraisal.rows.find(({ both }) => both?.governs === 'hand' && both.solver.utilisation !== null)!;
  const chosen = [{ check: row.id, take: 'solver', reason: 'invented for this test' }];
  const other = { ...document, forces: { ...(raw['forces'] as object), choose: chosen } } as RawDocument;
  const again = drained(appraised(other, problemOf(other), [0], 'one'));
  const { state } = ended(problemOf(other));
  expect(again.stops).toEqual([]);
  expect(state.front[0]!.aims[1]).toBe(again.aims.use);
}, 300_000);
