import type { RawDocument } from '../document/read-document.ts';
import { appraise, asksSolver } from '../appraise.ts';
import { readDocument } from '../document/read-document.ts';
import type { Model } from '../model.ts';
import type { UnitSystem } from '../quantity/format-quantity.ts';
import { Refusal, type RefusalText } from '../refusal.ts';
import { panelBuckling, type PanelBuckling } from '../plate/buckling-of-panels.ts';
import { plateModes } from '../plate/plate-modes.ts';
import { motionTables, type ListedMotion } from '../plate/results/motion-csv.ts';
import { readyPlate, type ReadyPlate, type SolvedLoading } from '../plate/solve-plate.ts';
import { FreeMotion } from '../plate/free-motion.ts';
import { firstSize, meshStudy, type MeshStudy } from '../plate/mesh-study.ts';
import type { SolvedForces } from '../loads/solved-forces.ts';
import { retold } from '../solve/drained.ts';
import { solvedForcesOf } from '../plate/solved-forces-of.ts';
import { serviceRanges, type BoltRange } from '../plate/results/bolt-ranges.ts';
import { changesBetween, changesTable } from '../plate/results/changes-between.ts';
import { changeWords } from '../plate/results/change-words.ts';
import { rangeTables, type SolverTable } from '../plate/results/solver-tables.ts';
import { shownTables } from '../plate/results/whole-tables.ts';
import { everySolved, solveCases, type SolvedCases, type SolveProgress } from '../plate/solve-cases.ts';
import { bucklingView, freeMotionView, modesView, type MotionSet } from './motion-view.ts';
import { loadingView, type LoadingView } from './solver-view.ts';

/** Which plate is to be solved: the document as it is after an edit, under an option. `edit` numbers the states of it. */
export interface SolveSubject {
  readonly edit: number;
  readonly raw: RawDocument;
  readonly option: string | null;
}

export type SolveWish = 'all cases' | 'losses' | 'mesh study' | 'what changed' | 'natural modes' | 'buckling';

/** Motions that are listed in tables: a free one has no number. */
export type ListedKind = Exclude<MotionSet['kind'], 'free'>;

/** What the page tells the solver. */
export type ToSolver =
  | { readonly kind: 'solve'; readonly subject: SolveSubject }
  /** `base`: the option that changes are counted from. */
  | { readonly kind: 'wish'; readonly wish: SolveWish; readonly base: string | null }
  | { readonly kind: 'cancel' }
  /** All tables of a loading shown, by its place in the last list of the stage. */
  | { readonly kind: 'tables'; readonly set: SolvedSet['name']; readonly loading: number }
  /** All tables of the motions told last. */
  | { readonly kind: 'motion tables'; readonly of: ListedKind };

/** Loadings solved together. `edit`: the state of the document that they are of. */
export interface SolvedSet {
  readonly name: 'linear' | 'contact' | 'all cases' | 'losses';
  readonly edit: number;
  readonly views: readonly LoadingView[];
  /** What turning the service load round does to each bolt. */
  readonly ranges: readonly BoltRange[];
}

/** What the solver tells. */
export type FromSolver =
  | { readonly kind: 'progress'; readonly edit: number; readonly at: string; readonly progress: SolveProgress }
  | { readonly kind: 'set'; readonly set: SolvedSet }
  /** What the checks take, where the document asks for it. */
  | { readonly kind: 'forces'; readonly edit: number; readonly option: string | null; readonly forces: SolvedForces }
  | { readonly kind: 'study'; readonly edit: number; readonly study: MeshStudy }
  | { readonly kind: 'changed'; readonly edit: number; readonly words: readonly string[]; readonly table: SolverTable }
  | { readonly kind: 'motions'; readonly edit: number; readonly motions: MotionSet }
  | { readonly kind: 'tables'; readonly edit: number; readonly tables: readonly SolverTable[] }
  | { readonly kind: 'refused'; readonly edit: number; readonly at: string; readonly refusals: readonly RefusalText[] }
  | { readonly kind: 'idle'; readonly edit: number; readonly cancelled: boolean }
  | { readonly kind: 'broken'; readonly why: string };

/** Where the service is heard: `later` runs its next slice after what has come meanwhile was heard. */
export interface SolverPort {
  readonly tell: (news: FromSolver) => void;
  readonly later: (goOn: () => void) => void;
}

interface Task {
  readonly at: string;
  readonly work: Generator<SolveProgress, void>;
}

/**
 * Solves the whole plate in slices: of each state of the document first linear, then with contact, on the first mesh, then the
 * forces that checks take where the document asks for them; more on request. A newer state or a cancel is heard between two slices and drops what was under way, so nothing old is told after it.
 */
export function createSolveService({ tell, later }: SolverPort): (message: ToSolver) => void {
  let subject: SolveSubject | null = null;
  let model: Model | null = null;
  let tasks: Task[] = [];
  let isWaiting = false;
  const kept = new Map<SolvedSet['name'], SolvedCases>();
  const moved = new Map<ListedKind, { readonly plate: ReadyPlate; readonly motions: readonly ListedMotion[] }>();

  function hear(message: ToSolver): void {
    if (message.kind === 'solve') begin(message.subject);
    else if (message.kind === 'cancel') {
      const had = tasks.length > 0;
      tasks = [];
      if (had && subject) tell({ kind: 'idle', edit: subject.edit, cancelled: true });
    } else if (!subject || !model) return;
    else if (message.kind === 'motion tables') motionsListed(message.of, subject);
    else if (message.kind === 'wish') add(message.wish, wished(message, subject, model));
    else tables(message.set, message.loading, subject, model);
  }

  function begin(next: SolveSubject): void {
    subject = next;
    model = null;
    tasks = [];
    kept.clear();
    moved.clear();
    add('linear', firstThenContact(next));
  }

  function add(at: string, work: Task['work']): void {
    tasks.push({ at, work });
    if (isWaiting) return;
    isWaiting = true;
    later(slice);
  }

  function slice(): void {
    isWaiting = false;
    const task = tasks[0];
    if (!task || !subject) return;
    const { edit } = subject;
    try {
      const step = task.work.next();
      if (step.done) tasks.shift();
      else tell({ kind: 'progress', edit, at: task.at, progress: step.value });
    } catch (error) {
      tasks.shift();
      if (!(error instanceof Refusal)) {
        tasks = [];
        tell({ kind: 'broken', why: error instanceof Error ? (error.stack ?? error.message) : String(error) });
        return;
      }
      if (error instanceof FreeMotion) tell({ kind: 'motions', edit, motions: freeMotionView(error) });
      tell({ kind: 'refused', edit, at: task.at, refusals: error.all });
    }
    if (tasks.length === 0) return tell({ kind: 'idle', edit, cancelled: false });
    isWaiting = true;
    later(slice);
  }

  function* firstThenContact(of: SolveSubject): Generator<SolveProgress, void> {
    model = appraise(of.raw, readDocument(of.raw), of.option).model;
    yield { done: 0, of: 2, what: 'linear' };
    for (const stage of ['linear', 'contact'] as const)
      keep(stage, of, model, yield* solveCases(model, { size: firstSize(model), stage, cases: 'service', losses: false })); // prettier-ignore
    if (asksSolver(model.document))
      tell({ kind: 'forces', edit: of.edit, option: of.option, forces: yield* solvedForcesOf(model) });
  }

  function* wished(
    { wish, base }: { wish: SolveWish; base: string | null },
    of: SolveSubject,
    on: Model,
  ): Generator<SolveProgress, void> {
    const size = firstSize(on);
    if (wish === 'mesh study') {
      let done = 0;
      const study = yield* retold(meshStudy(on), (what) => ({ done: done++, of: 3, what }));
      tell({ kind: 'study', edit: of.edit, study });
    } else if (wish === 'what changed') yield* change(of, base, on);
    else if (wish === 'natural modes') yield* modes(of, on);
    else if (wish === 'buckling') yield* buckling(of, on);
    else keep(wish, of, on, yield* solveCases(on, { size, stage: 'contact', cases: wish === 'losses' ? 'service' : 'all', losses: wish === 'losses' })); // prettier-ignore
  }

  function* change(of: SolveSubject, base: string | null, on: Model): Generator<SolveProgress, void> {
    const was = appraise(of.raw, readDocument(of.raw), base).model;
    const request = { stage: 'contact', cases: 'service', losses: false } as const;
    const before = yield* solveCases(was, { size: firstSize(was), ...request });
    const after = kept.get('contact') ?? (yield* solveCases(on, { size: firstSize(on), ...request }));
    const changes = changesBetween(before, after);
    const words = changes.flatMap(({ title, loading, changed }) => [
      `${title}, ${loading}`,
      ...changeWords(changed, unitsOf(on)),
    ]);
    tell({ kind: 'changed', edit: of.edit, words, table: changesTable(changes) });
  }

  /** Hung on the suspension of service where there is one; else free. */
  function* modes(of: SolveSubject, on: Model): Generator<SolveProgress, void> {
    yield { done: 0, of: modeSteps, what: 'natural modes' };
    const plate = kept.get('contact')?.plate ?? readyPlate(on, { size: firstSize(on) });
    const hangs = on.loads.situations.some(({ loadCase, supports }) => loadCase === 'service' && supports !== null);
    const found = yield* counted('natural modes', modeSteps, plateModes(plate, { holding: hangs ? 'hung' : 'free', count: modeCount })); // prettier-ignore
    const listed = (group: string, { modes: list }: typeof found.air): ListedMotion[] =>
      list.map(({ frequency, shape }) => ({ group, value: frequency, shape }));
    moved.set('modes', { plate, motions: [...listed('in air', found.air), ...listed('with added mass', found.water)] });
    tell({ kind: 'motions', edit: of.edit, motions: modesView(plate, found) });
  }

  /** Under each loading of service, as it was solved with contact. */
  function* buckling(of: SolveSubject, on: Model): Generator<SolveProgress, void> {
    const cases = kept.get('contact') ?? (yield* solveCases(on, { size: firstSize(on), stage: 'contact', cases: 'service', losses: false })); // prettier-ignore
    const { plate, solved } = cases;
    const found: (PanelBuckling & { readonly solved: SolvedLoading })[] = [];
    for (const one of solved) {
      const what = `buckling, ${one.situation.title}, ${one.loading}`;
      yield { done: found.length, of: solved.length, what };
      const own = yield* counted(what, bucklingSteps, panelBuckling(plate, one, { count: bucklingCount }));
      found.push({ ...own, solved: one });
    }
    const motions = found.flatMap(({ solved: { situation, loading }, modes: list }) =>
      list.map(({ factor, shape }): ListedMotion => ({ group: `${situation.id}, ${loading}`, value: factor, shape })),
    );
    moved.set('buckling', { plate, motions });
    tell({ kind: 'motions', edit: of.edit, motions: bucklingView(plate, found) });
  }

  function motionsListed(kind: ListedKind, of: SolveSubject): void {
    const found = moved.get(kind);
    if (found)
      tell({ kind: 'tables', edit: of.edit, tables: motionTables(found.plate.structure, kind, found.motions) });
    else
      tell({
        kind: 'refused',
        edit: of.edit,
        at: 'tables',
        refusals: [{ what: 'These motions have not been found as the document stands', mend: 'Ask for them, then save their tables.' }], // prettier-ignore
      });
  }

  function keep(name: SolvedSet['name'], of: SolveSubject, on: Model, cases: SolvedCases): void {
    kept.set(name, cases);
    const views = everySolved(cases).map((one) => loadingView(one, unitsOf(on)));
    tell({ kind: 'set', set: { name, edit: of.edit, views, ranges: serviceRanges(cases) } });
  }

  function tables(name: SolvedSet['name'], loading: number, of: SolveSubject, on: Model): void {
    const cases = kept.get(name);
    const found = cases && everySolved(cases)[loading];
    if (found)
      tell({
        kind: 'tables',
        edit: of.edit,
        tables: [...shownTables(found, unitsOf(on)), ...rangeTables(serviceRanges(cases), unitsOf(on))],
      });
    else
      tell({
        kind: 'refused',
        edit: of.edit,
        at: 'tables',
        refusals: [{ what: 'This loading has not been solved as the document stands', mend: 'Wait until it is solved, then save its tables.' }], // prettier-ignore
      });
  }

  return hear;
}

/** How many motions are looked for, and solves that this takes as a rule, for the progress. */
const modeCount = 6;
const modeSteps = 60;
const bucklingCount = 3;
const bucklingSteps = 30;

/** Progress of work that says how many solves it has done. */
const counted = <T>(what: string, steps: number, work: Generator<number, T>): Generator<SolveProgress, T> =>
  retold(work, (done) => ({ done, of: Math.max(steps, done + 1), what }));

const unitsOf = ({ document }: Model): UnitSystem => document.units;
