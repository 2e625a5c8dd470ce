import { planOf } from '../../appraise.ts';
import { documentHash } from '../../document/document-hash.ts';
import { laidRaw } from '../../document/edit.ts';
import { documentOfOption } from '../../document/option.ts';
import { readDocument, type RawDocument } from '../../document/read-document.ts';
import type { PlateDocument } from '../../document/schema.ts';
import type { SensitivityRecord } from '../../document/sensitivity-field.ts';
import { sensitivity, sensitivityShares, watchedChecks } from './sensitivity.ts';
import type { Sampling } from './variance-shares.ts';

/** Key of all that the spreads act on: the document under the option, the spreads, and how they are sampled. */
export function sensitivityKey(raw: RawDocument, from: string | null): string {
  const { options: _options, chosen: _chosen, view: _view, project: _project, paper: _paper, search: _search, sensitivity: asked, ...plate } = laidRaw(raw, from); // prettier-ignore
  const { record: _record, ...sampling } = (asked ?? {}) as Record<string, unknown>;
  return documentHash({ ...plate, sensitivity: sampling, from });
}

/** What the stated spreads of an option do, for the note to tell later. Refuses what `spreadsJudged` refuses. */
export function* sensitivityRecord(
  raw: RawDocument,
  option: string | null,
): Generator<JudgedStates, SensitivityRecord> {
  const { document } = documentOfOption(raw, readDocument(raw), option, planOf);
  const found = yield* spreadsJudged(document, document.sensitivity ?? { points: 64, seed: 1 });
  return { of: sensitivityKey(raw, option), from: option, ...found };
}

/** How many states of the plate are judged, of how many. */
export interface JudgedStates {
  readonly done: number;
  readonly of: number;
}

/**
 * What the stated spreads do, each by itself, then all together. Refuses without a spread, where none moves the result,
 * and where a check cannot be judged within them.
 */
export function* spreadsJudged(
  document: PlateDocument,
  { points, seed }: Sampling,
): Generator<JudgedStates, Omit<SensitivityRecord, 'of' | 'from'>> {
  const spreads = document.spreads ?? [];
  const apart = 1 + 2 * spreads.length;
  const ofPoint = spreads.length + 2;
  const of = apart + points * ofPoint;

  const steps = sensitivity(document);
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield { done: step.value.done, of };
  const { governing, moved } = step.value;
  const watched = watchedChecks(step.value);
  const sampling = sensitivityShares(document, watched, { points, seed });
  let sampled = sampling.next();
  for (; !sampled.done; sampled = sampling.next()) yield { done: apart + sampled.value * ofPoint, of };
  const { first, total, mean, sorted } = sampled.value;
  return {
    governing,
    moved: [...moved],
    together: {
      points,
      seed,
      watched: [...watched.values()],
      shares: spreads.map(({ input }, i) => ({ input, first: first[i]!, total: total[i]! })),
      mean,
      quantiles: Array.from({ length: 21 }, (_, n) => quantile(sorted, n / 20)),
      partOverOne: sorted.filter((use) => use > 1).length / sorted.length,
    },
  };
}

/** The value that a part of the sorted values stays at or below, straight between two of them. */
function quantile(sorted: Float64Array, part: number): number {
  const at = part * (sorted.length - 1);
  const below = Math.floor(at);
  const above = Math.min(below + 1, sorted.length - 1);
  return sorted[below]! + (at - below) * (sorted[above]! - sorted[below]!);
}
