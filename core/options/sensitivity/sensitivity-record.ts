import { planOf } from '../../appraise.ts';
import { documentHash } from '../../document/document-hash.ts';
import { laidRaw } from '../../document/edit.ts';
import { documentOfOption } from '../../document/option.ts';
import { readDocument, type RawDocument } from '../../document/read-document.ts';
import type { PlateDocument } from '../../document/schema.ts';
import { plateAlone } from '../../document/plate-alone.ts';
import { sensitivityField, type SensitivityRecord } from '../../document/sensitivity-field.ts';
import { retold } from '../../solve/drained.ts';
import { sensitivity, sensitivityShares, watchedChecks } from './sensitivity.ts';
import type { Sampling } from './variance-shares.ts';

/** Key of all that the spreads act on: the document under the option, the spreads, and how they are sampled. */
export function sensitivityKey(raw: RawDocument, from: string | null): string {
  const laid = laidRaw(raw, from);
  const { project: _project, paper: _paper, ...plate } = plateAlone(laid);
  const { record: _record, ...sampling } = (laid['sensitivity'] ?? {}) as Record<string, unknown>;
  return documentHash({ ...plate, spreads: laid['spreads'], sensitivity: sampling, from });
}

/** What the stated spreads of an option do, for the note to tell later. Refuses what `spreadsJudged` refuses. */
export function* sensitivityRecord(
  raw: RawDocument,
  option: string | null,
): Generator<JudgedStates, SensitivityRecord> {
  const { document } = documentOfOption(raw, readDocument(raw), option, planOf);
  const found = yield* spreadsJudged(document, document.sensitivity ?? sensitivityField.parse({}));
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

  const found = yield* retold(sensitivity(document), ({ done }) => ({ done, of }));
  const { governing, moved } = found;
  const watched = watchedChecks(found);
  const sampling = sensitivityShares(document, watched, { points, seed });
  const { first, total, mean, sorted } = yield* retold(sampling, (k) => ({ done: apart + k * ofPoint, of }));
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
