import type { Situation } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { retold } from '../solve/drained.ts';
import { Refusal } from '../refusal.ts';
import type { JointEnd } from './mesh/joint-stiffness.ts';
import { fixingRows, type FixingRow } from './fixing-rows.ts';
import { fixingForces, type BoltForce, type WeldForce } from './results/fixing-forces.ts';
import { readyPlate, solveLoading, type SolvedLoading } from './solve-plate.ts';

/** Use of a fixing's resistance by what it carries: 1 is all of it; null where its resistance is not known. */
export type UseOfFixing = (force: BoltForce | WeldForce) => number | null;

/** One state of the chain: what is gone, and the row that then works hardest. */
export interface UnzipStep {
  /** What went last: a row, or the panels that no row holds any more. */
  readonly lost: string;
  /** Of the rows that are left, the one with the largest use, and that use; null where none can be judged. */
  readonly worst: { readonly row: string; readonly use: number } | null;
}

export interface Unzipping {
  readonly start: string;
  readonly steps: readonly UnzipStep[];
  /** Panels that came off on the way. */
  readonly off: readonly string[];
  /** `holds`: nothing more fails; `not followed`: longer than `mostSteps`, contact did not settle, or what is left could not
   *  be judged. */
  readonly end: 'holds' | 'not followed';
  readonly words: string;
}

/** Longer chains are not followed: the plate is lost by then. */
export const mostSteps = 12;

/**
 * Follows the loss of a row to its end: solves what is left under the given cases, takes away the row whose worst fixing is
 * most above its resistance, and so on until no row is above it. A panel with no row left is off, with its load; so is one
 * that could move freely. A row goes whole when its worst fixing does: on the safe side, since one bolt's loss overloads its
 * neighbours first. Static: the jerk of the loss is not in it. Yields before each state.
 */
export function* unzipping(
  model: Model,
  {
    size,
    start,
    cases,
    use,
    stage = 'contact',
    joints = 'stated',
  }: {
    readonly size: number;
    readonly start: FixingRow;
    readonly cases: readonly Situation[];
    readonly use: UseOfFixing;
    readonly stage?: SolvedLoading['stage'];
    readonly joints?: JointEnd;
  },
): Generator<string, Unzipping> {
  const rows = fixingRows(model);
  const gone = new Set<string>();
  const off: string[] = [];
  const steps: UnzipStep[] = [];
  const done = (end: Unzipping['end']): Unzipping => ({ start: start.id, steps, off, end, words: words(start.id, steps, off, end) }); // prettier-ignore
  let lost = start;
  for (;;) {
    gone.add(lost.id);
    const left = rows.filter(({ id, panel }) => !gone.has(id) && !off.includes(panel));
    let what = lost.id;
    if (!left.some(({ panel }) => panel === lost.panel)) {
      off.push(lost.panel);
      what = `${lost.id}, and with it panel ${lost.panel}`;
    }
    yield `without ${what}`;
    let state = yield* usesOf(model, { size, rows, gone, off, cases, use, stage, joints });
    if (state === 'moves freely' && !off.includes(lost.panel)) {
      off.push(lost.panel);
      what = `${lost.id}, and with it panel ${lost.panel}`;
      state = yield* usesOf(model, { size, rows, gone, off, cases, use, stage, joints });
    }
    if (typeof state === 'string') {
      steps.push({ lost: what, worst: null });
      return done('not followed');
    }
    let worst: UnzipStep['worst'] = null;
    for (const [row, value] of state) if (!worst || value > worst.use) worst = { row, use: value };
    steps.push({ lost: what, worst });
    if (!worst) return done(left.length === 0 ? 'holds' : 'not followed');
    if (worst.use <= 1) return done('holds');
    if (steps.length >= mostSteps) return done('not followed');
    lost = rows.find(({ id }) => id === worst!.row)!;
  }
}

interface State {
  readonly size: number;
  readonly rows: readonly FixingRow[];
  readonly gone: ReadonlySet<string>;
  readonly off: readonly string[];
  readonly cases: readonly Situation[];
  readonly use: UseOfFixing;
  readonly stage: SolvedLoading['stage'];
  readonly joints: JointEnd;
}

/** Largest use of each row over all loadings of the cases, by id, on the plate without what is gone. */
function* usesOf(
  model: Model,
  { size, rows, gone, off, cases, use, stage, joints }: State,
): Generator<string, Map<string, number> | 'moves freely' | 'did not settle'> {
  const without = new Set([...off, ...rows.flatMap(({ id, parts }) => (gone.has(id) ? parts : []))]);
  const rowOf = new Map(rows.flatMap(({ id, parts }) => parts.map((part) => [part, id] as const)));
  const plate = readyPlate(model, { size, without, joints });
  const uses = new Map<string, number>();
  for (const situation of cases)
    for (const loading of situation.loadings.keys())
      for (const variant of situation.present.keys()) {
        let solved: SolvedLoading;
        try {
          const solving = solveLoading(plate, situation, { loading, variant, stage });
          solved = yield* retold(solving, (k) => `${situation.title}: contact, step ${k + 1}`);
        } catch (error) {
          if (error instanceof Refusal) return 'moves freely';
          throw error;
        }
        if (stage === 'contact' && !solved.answer.settled) return 'did not settle';
        const { bolts, welds } = fixingForces(plate, solved);
        for (const force of [...bolts, ...welds]) {
          const value = use(force);
          if (value === null) continue;
          const row = rowOf.get(force.id)!;
          uses.set(row, Math.max(uses.get(row) ?? 0, value));
        }
      }
  return uses;
}

function words(start: string, steps: readonly UnzipStep[], off: readonly string[], end: Unzipping['end']): string {
  const chain = steps.map(({ lost, worst }, i) => {
    const says = worst
      ? `row ${worst.row} at ${worst.use.toFixed(2)} of its strength`
      : end === 'holds'
        ? 'no row is left'
        : 'what is left could not be judged';
    return `${i === 0 ? `row ${lost} is lost` : `${lost} goes`}: ${says}`;
  });
  const panels = off.length > 0 ? `panel${off.length > 1 ? 's' : ''} ${off.join(', ')} ${off.length > 1 ? 'come' : 'comes'} off` : 'no panel comes off'; // prettier-ignore
  const allGone = end === 'holds' && steps.at(-1)!.worst === null;
  const last =
    end === 'holds'
      ? `${panels}${allGone ? '' : '; the others hold'}`
      : `${panels} so far; the chain was not followed to an end`;
  return `Without ${start}: ${chain.join(' → ')} → ${last}.`;
}
