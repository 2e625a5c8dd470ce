import type { RawOption } from '../document/edit.ts';
import { sensitivityRecord } from '../options/sensitivity/sensitivity-record.ts';
import type { SensitivityRecord } from '../document/sensitivity-field.ts';
import { readDocument, type RawDocument } from '../document/read-document.ts';
import type { SearchRecord } from '../document/search-field.ts';
import { laidRaw } from '../document/edit.ts';
import type { Figure } from '../note/note.ts';
import { planFigure } from '../note/drawing-section.ts';
import { askedOf } from '../options/search/asked-of.ts';
import { aimIds, aimWords, type AimId } from '../options/search/aims.ts';
import { inOrder, shownOption, type ShownOption } from '../options/search/checked-front.ts';
import { askedSpace } from '../options/search/default-space.ts';
import { search, searchProblem, type Problem, type SearchState } from '../options/search/search.ts';
import { governingWords, mostFirst, searchRecord, thinnerWords } from '../options/search/search-record.ts';
import { formatQuantity, printedUnit, unitText } from '../quantity/format-quantity.ts';
import type { SolveProgress } from '../plate/solve-cases.ts';
import { retold } from '../solve/drained.ts';
import { Refusal, type RefusalText } from '../refusal.ts';

export type ToSearch =
  /** `edit` numbers the state of the document; what it searches for stands in it. */
  | { readonly kind: 'search'; readonly edit: number; readonly raw: RawDocument; readonly option: string | null }
  /** What moves the governing check most, over the spreads that the document states. */
  | { readonly kind: 'sensitivity'; readonly edit: number; readonly raw: RawDocument; readonly option: string | null }
  | { readonly kind: 'stop' }
  /** Takes a stopped search up again where it was left. */
  | { readonly kind: 'go on' };

/** An aim of an option, in SI and as printed. */
export interface AimView {
  readonly value: number;
  readonly printed: number;
  readonly text: string;
}

export interface FoundView {
  readonly option: RawOption;
  readonly aims: Readonly<Partial<Record<AimId, AimView>>>;
  readonly plan: Figure;
  readonly governing: string;
  readonly unjudged: readonly string[];
  readonly failsAside: readonly string[];
  readonly whyNotThinner: readonly string[];
}

export interface SearchProgress {
  readonly options: number;
  readonly decided: number;
  readonly judged: number;
  readonly passing: number;
  readonly beaten: number;
  /** Where plates are solved: how many were, how many options at most are still to be, and what is being done. */
  readonly solver: { readonly solved: number; readonly left: number; readonly doing: SolveProgress | null } | null;
  readonly stopped: readonly { readonly title: string; readonly count: number }[];
  /** Aims of what was found so far, in the order of `aims`. */
  readonly front: readonly (readonly number[])[];
  readonly aims: readonly AimId[];
  /** What the best may still be better by, as a part of it; null while nothing is found. */
  readonly gap: number | null;
}

export type FromSearch =
  | { readonly kind: 'progress'; readonly edit: number; readonly progress: SearchProgress }
  /** Options found are being appraised in full. */
  | {
      readonly kind: 'appraising';
      readonly edit: number;
      readonly done: number;
      readonly of: number;
      /** What is being solved for it, in words; empty where nothing is. */
      readonly what: string;
    }
  | {
      readonly kind: 'found';
      readonly edit: number;
      readonly progress: SearchProgress;
      readonly found: readonly FoundView[];
      readonly units: Readonly<Record<AimId, string>>;
      /** For the note, once the person wants it kept. */
      readonly record: SearchRecord;
    }
  | { readonly kind: 'varying'; readonly edit: number; readonly done: number; readonly of: number }
  | { readonly kind: 'sensitive'; readonly edit: number; readonly found: SensitivityRecord }
  | { readonly kind: 'stopped'; readonly edit: number }
  | { readonly kind: 'refused'; readonly edit: number; readonly refusals: readonly RefusalText[] }
  | { readonly kind: 'broken'; readonly why: string };

export interface SearchPort {
  readonly tell: (news: FromSearch) => void;
  /** Runs the next slice after what has come meanwhile was heard. */
  readonly later: (goOn: () => void) => void;
  /** True when a slice has lasted long enough. */
  readonly isDue: () => boolean;
}

/** A search in slices: a stop is heard between two of them, and a stopped search goes on where it was left. */
export function createSearchService({ tell, later, isDue }: SearchPort): (message: ToSearch) => void {
  let work: Generator<FromSearch | null, void> | null = null;
  let edit = 0;
  let isWaiting = false;
  let isStopped = false;

  return (message) => {
    if (message.kind === 'search' || message.kind === 'sensitivity') {
      edit = message.edit;
      isStopped = false;
      work = message.kind === 'search' ? searching(message) : varying(message);
    } else if (message.kind === 'stop') {
      if (work && !isStopped) tell({ kind: 'stopped', edit });
      isStopped = true;
    } else isStopped = false;
    again();
  };

  function again(): void {
    if (isWaiting || isStopped || !work) return;
    isWaiting = true;
    later(slice);
  }

  function slice(): void {
    isWaiting = false;
    if (isStopped || !work) return;
    try {
      let news: FromSearch | null = null;
      do {
        const step = work.next();
        if (step.done) {
          work = null;
          break;
        }
        if (step.value && step.value.kind !== 'progress') tell(step.value);
        else news = step.value ?? news;
      } while (!isDue());
      if (news) tell(news);
    } catch (error) {
      work = null;
      if (error instanceof Refusal) tell({ kind: 'refused', edit, refusals: error.all });
      else tell({ kind: 'broken', why: error instanceof Error ? (error.stack ?? error.message) : String(error) });
    }
    again();
  }
}

function* searching({
  edit,
  raw,
  option,
}: Extract<ToSearch, { readonly kind: 'search' }>): Generator<FromSearch | null, void> {
  const asked = askedOf(readDocument(laidRaw(raw, option)).search);
  const problem = searchProblem(raw, askedSpace(raw, option, asked));
  const state = yield* retold(search(problem), (news) => ({ kind: 'progress' as const, edit, progress: progressOf(problem, news) })); // prettier-ignore
  const front = inOrder(raw, state.front);
  const shown: ShownOption[] = [];
  for (const { found, id } of front) {
    const at = { kind: 'appraising', edit, done: shown.length, of: front.length } as const;
    yield { ...at, what: '' };
    const appraising = shownOption(raw, problem, found, id);
    let part = appraising.next();
    for (; !part.done; part = appraising.next()) yield { ...at, what: part.value.what };
    shown.push(part.value);
  }
  yield {
    kind: 'found',
    edit,
    progress: progressOf(problem, state),
    found: shown.map((one) => foundView(problem, one)),
    units: Object.fromEntries(aimIds.map((aim) => [aim, unitOf(problem, aim)])) as Record<AimId, string>,
    record: searchRecord(raw, problem, state, shown),
  };
}

function* varying({
  edit,
  raw,
  option,
}: Extract<ToSearch, { readonly kind: 'sensitivity' }>): Generator<FromSearch | null, void> {
  const found = yield* retold(sensitivityRecord(raw, option), (news) => ({ kind: 'varying' as const, edit, ...news }));
  yield { kind: 'sensitive', edit, found };
}

function progressOf({ options, space, solver }: Problem, state: SearchState): SearchProgress {
  const { decided, judged, passing, beaten, front, bound, next, solved, solving } = state;
  const best = front.reduce((least, { aims }) => Math.min(least, aims[0]!), Infinity);
  return {
    options,
    decided,
    judged,
    passing,
    beaten,
    solver: solver ? { solved, left: options - decided, doing: solving } : null,
    stopped: mostFirst(state),
    front: front.map(({ aims }) => aims),
    aims: space.aims,
    gap:
      best === Infinity ? null
      : next === null || bound === null || best === 0 ? 0
      : Math.max(0, (best - bound) / Math.abs(best)), // prettier-ignore
  };
}

function foundView(problem: Problem, one: ShownOption): FoundView {
  const { model, rows } = one.appraisal;
  return {
    option: one.option,
    aims: Object.fromEntries(
      Object.entries(one.aims).map(([aim, value]) => [aim, aimView(problem, aim as AimId, value)]),
    ),
    plan: planFigure(model),
    governing: governingWords(one),
    unjudged: [...new Set(rows.filter(({ verdict }) => verdict === 'cannot be judged').map(({ title }) => title))],
    failsAside: one.aside,
    whyNotThinner: one.thinner.map((thinner) => thinnerWords(thinner, one.thinner.length > 1)),
  };
}

function aimView({ base }: Problem, aim: AimId, value: number): AimView {
  if (aim === 'holes') return { value, printed: value, text: String(value) };
  const { number } = formatQuantity(value, printedUnit(aimWords[aim].unit, base.units));
  return { value, printed: Number(number), text: number };
}

function unitOf({ base }: Problem, aim: AimId): string {
  if (aim === 'cost') return base.rates?.currency ?? '';
  const printed = printedUnit(aimWords[aim].unit, base.units);
  return printed === '1' ? '' : unitText(printed);
}
