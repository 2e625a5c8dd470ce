import { create } from 'zustand';
import type { MotionSet, MotionView } from '../../core/engine/motion-view.ts';
import type { MarkKind } from '../../core/scene/marks.ts';
import type { FromSolver, ListedKind, SolvedSet, SolveWish, ToSolver } from '../../core/engine/solve-service.ts';
import type { LoadingView } from '../../core/engine/solver-view.ts';
import type { SolveProgress } from '../../core/plate/solve-cases.ts';
import type { SolverTable } from '../../core/plate/results/solver-tables.ts';
import type { MeshStudy } from '../../core/plate/mesh-study.ts';
import type { RefusalText } from '../../core/refusal.ts';
import { notify, useWorkbench } from './workbench.ts';

/** What the window knows of the solved plate. Every part says of which state of the document (`edit`) it is. */
export interface SolverState {
  /** Number of the state that is to be shown; a part with another number is as of before. */
  readonly edit: number;
  readonly sets: Partial<Readonly<Record<SolvedSet['name'], SolvedSet>>>;
  readonly study: { readonly edit: number; readonly study: MeshStudy } | null;
  readonly changed: { readonly edit: number; readonly words: readonly string[]; readonly table: SolverTable } | null;
  readonly motions: Partial<
    Readonly<Record<MotionSet['kind'], { readonly edit: number; readonly motions: MotionSet }>>
  >;
  readonly progress: { readonly at: string; readonly progress: SolveProgress } | null;
  readonly cancelled: boolean;
  readonly refusals: readonly RefusalText[];
  /** What is shown: a set, or by itself the furthest that is current; a loading of it; how much larger it is drawn. */
  readonly chosen: SolvedSet['name'] | null;
  readonly loading: number;
  /** Loadings that the picture is about: those of one direction, or all; and whether colours are the largest of them all. */
  readonly direction: LoadingView['direction'] | null;
  readonly envelope: boolean;
  readonly shape: boolean;
  /** Null: chosen so that the largest displacement is a twentieth of the plate. */
  readonly scale: number | null;
  readonly marks: MarkKind | null;
  /** A motion in the place of the loading's shape, by its place among those found. */
  readonly motion: { readonly kind: MotionSet['kind']; readonly group: number; readonly at: number } | null;
  readonly playing: boolean;
}

const empty: SolverState = {
  edit: 0,
  sets: {},
  study: null,
  changed: null,
  motions: {},
  progress: null,
  cancelled: false,
  refusals: [],
  chosen: null,
  loading: 0,
  direction: null,
  envelope: false,
  shape: false,
  scale: null,
  marks: null,
  motion: null,
  playing: false,
};

export const useSolver = create<SolverState>(() => empty);

/** The set shown: the one chosen, else contact as soon as it is of this state, else linear, else the last that there was. */
export function shownSet({ edit, sets, chosen }: SolverState): SolvedSet | null {
  if (chosen && sets[chosen]) return sets[chosen];
  const { contact, linear } = sets;
  if (contact?.edit === edit) return contact;
  return linear?.edit === edit ? linear : (contact ?? linear ?? null);
}

/** The loading shown, where it is of the plate as it stands: what is laid over the picture. */
export function shownLoading(state: SolverState): LoadingView | null {
  const set = shownSet(state);
  return set?.edit === state.edit ? (set.views[Math.min(state.loading, set.views.length - 1)] ?? null) : null;
}

/** The motion shown, with the state of the document that it is of. */
export function shownMotion({ motion, motions }: SolverState): { readonly view: MotionView; readonly edit: number } | null {
  const found = motion && motions[motion.kind];
  const view = found && motion ? found.motions.groups[motion.group]?.motions[motion.at] : undefined;
  return found && view ? { view, edit: found.edit } : null;
} // prettier-ignore

/** Shows a motion: playing, unless the system asks for little motion; then as a still that can be played. */
export function showMotion(motion: NonNullable<SolverState['motion']>): void {
  useSolver.setState({ motion, playing: !matchMedia('(prefers-reduced-motion: reduce)').matches });
}

/** Shows a loading's own shape again, of a direction: the loading stays where it is of that direction. */
export function showDirection(direction: SolverState['direction']): void {
  const state = useSolver.getState();
  const views = shownSet(state)?.views ?? [];
  const stays = direction === null || views[state.loading]?.direction === direction;
  const first = views.findIndex((view) => view.direction === direction);
  useSolver.setState({ direction, ...(stays || first < 0 ? {} : { loading: first }) });
}

let worker: Worker | null = null;
let asked: { readonly raw: unknown; readonly option: string | null; readonly document: string | undefined } | null =
  null;
let hearTables: ((tables: readonly SolverTable[]) => void) | null = null;

type Forces = Extract<FromSolver, { readonly kind: 'forces' }>;
let toldForces: ((news: Forces) => void) | null = null;

/** Hears the forces that checks take, of the state that is to be shown. Gives what ends it. */
export function hearForces(hear: (news: Forces) => void): () => void {
  toldForces = hear;
  return () => {
    if (toldForces === hear) toldForces = null;
  };
}

/** Starts the solver, once: from then on each state of the document without faults is solved after its hand values are shown. */
export function startSolver(): void {
  if (worker) return;
  started();
  useWorkbench.subscribe(follow);
  follow();
}

function started(): void {
  worker = new Worker(new URL('solver-worker.js', document.baseURI), { type: 'module' });
  worker.onmessage = ({ data }: MessageEvent<FromSolver>) => hear(data);
  worker.onerror = (event) => {
    event.preventDefault();
    hear({ kind: 'broken', why: event.message });
  };
}

const send = (message: ToSolver): void => worker?.postMessage(message);

/** A state is sent when its result is there: hand values come first. */
function follow(): void {
  const { document: view, result, line } = useWorkbench.getState();
  if (!view) return;
  if (asked && asked.option === view.option) {
    if (asked.raw === view.raw) return;
    if (JSON.stringify(asked.raw) === JSON.stringify(view.raw)) {
      // told again as it was: known by itself from now on, so that no later change of the window compares it anew
      asked = { ...asked, raw: view.raw };
      return;
    }
  }
  const edit = useSolver.getState().edit + 1;
  const other = asked !== null && asked.document !== line?.id;
  // what was solved of another document or option is no result “as of before” of this one
  if (other || (asked && asked.option !== view.option)) useSolver.setState({ ...empty, edit });
  // a free motion is of what stopped the solver, and goes with it
  else useSolver.setState(({ motions: { free: _, ...motions }, motion }) => ({ edit, refusals: [], cancelled: false, progress: null, motions, motion: motion?.kind === 'free' ? null : motion })); // prettier-ignore
  asked = { raw: view.raw, option: view.option, document: line?.id };
  if (view.faults.length > 0 || !result) {
    send({ kind: 'cancel' });
    if (!result) asked = null;
    return;
  }
  send({ kind: 'solve', subject: { edit, raw: view.raw, option: view.option } });
}

function hear(news: FromSolver): void {
  const { edit } = useSolver.getState();
  if (news.kind === 'broken') {
    console.error(news.why);
    worker?.terminate();
    started();
    answerTables([]);
    useSolver.setState({ progress: null });
    notify('loud', { what: 'The solver of the whole plate stopped', mend: 'Change something or ask again; report it if it stays so.' }); // prettier-ignore
    return;
  }
  if (news.kind === 'tables' || (news.kind === 'refused' && news.at === 'tables'))
    answerTables(news.kind === 'tables' && news.edit === edit ? news.tables : []);
  // told before the newer state was heard
  if ('edit' in news && news.edit !== edit) return;
  if (news.kind === 'progress') useSolver.setState({ progress: { at: news.at, progress: news.progress } });
  else if (news.kind === 'set') {
    const { name, edit: of } = news.set;
    if (of === edit) useSolver.setState(({ sets }) => ({ sets: { ...sets, [name]: news.set } }));
  } else if (news.kind === 'forces') toldForces?.(news);
  else if (news.kind === 'study') useSolver.setState({ study: news });
  else if (news.kind === 'changed') useSolver.setState({ changed: news });
  else if (news.kind === 'motions') {
    const { motions } = news;
    useSolver.setState((state) => ({ motions: { ...state.motions, [motions.kind]: news } }));
    const group = motions.groups.findIndex((each) => each.motions.length > 0);
    if (group >= 0) showMotion({ kind: motions.kind, group, at: 0 });
  } else if (news.kind === 'refused') useSolver.setState({ refusals: news.refusals });
  else if (news.kind === 'idle') useSolver.setState({ progress: null, cancelled: news.cancelled });
}

function answerTables(tables: readonly SolverTable[]): void {
  hearTables?.(tables);
  hearTables = null;
}

export const wish = (what: SolveWish): void => {
  useSolver.setState({ refusals: [], cancelled: false });
  send({ kind: 'wish', wish: what, base: useWorkbench.getState().comparison?.base ?? null });
};

export const cancelSolving = (): void => send({ kind: 'cancel' });

/** All tables of the motions found. */
export const motionTablesOf = (of: ListedKind): Promise<readonly SolverTable[]> =>
  new Promise((resolve) => {
    hearTables = resolve;
    send({ kind: 'motion tables', of });
  });

/** All tables of a loading of a set; none where the document has moved on or the solver refused (which it then says). */
export const tablesOf = (set: SolvedSet['name'], loading: number): Promise<readonly SolverTable[]> =>
  new Promise((resolve) => {
    hearTables = resolve;
    send({ kind: 'tables', set, loading });
  });
