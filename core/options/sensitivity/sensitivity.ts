import type { CheckRow } from '../../checks/check-row.ts';
import { checkRows } from '../../checks/evaluate-check.ts';
import { checks } from '../../checks/index.ts';
import type { PlateDocument } from '../../document/schema.ts';
import type { Spread } from '../../document/spreads-field.ts';
import type { Model } from '../../model.ts';
import { refusal } from '../../refusal.ts';
import { varianceShares, type Sampling, type VarianceShares } from './variance-shares.ts';
import { variedModel } from './varied-model.ts';

/** A check at its gravest place. */
export interface Reading {
  readonly check: string;
  readonly title: string;
  readonly place: string;
  readonly use: number;
}

/** What one input does by itself at either end of its spread. */
export interface Moved extends Spread {
  /** Utilisation of the check that governs as the document stands; null where it cannot be judged there. */
  readonly atLow: number | null;
  readonly atHigh: number | null;
  /** What governs there, where it is another check. */
  readonly otherAtLow: Reading | null;
  readonly otherAtHigh: Reading | null;
}

export interface Sensitivity {
  readonly governing: Reading;
  /** The input that moves it most first. */
  readonly moved: readonly Moved[];
}

/** Each input by itself to either end of its stated spread: what the check that governs does. Yields how many models are judged. No verdict is changed by it. */
export function* sensitivity(
  document: PlateDocument,
): Generator<{ readonly done: number; readonly of: number }, Sensitivity> {
  const spreads = statedSpreads(document);
  const of = 1 + 2 * spreads.length;
  const governing = gravest(variedModel(document, {}));
  if (!governing) throw nothingGoverns();
  const moved: Moved[] = [];
  for (const spread of spreads) {
    const ends: { readonly use: number | null; readonly other: Reading | null }[] = [];
    for (const [n, part] of [spread.low, spread.high].entries()) {
      yield { done: 1 + 2 * moved.length + n, of };
      const model = variedModel(document, { [spread.input]: 1 + part });
      const most = gravest(model);
      ends.push({
        use: useOfCheck(model, governing.check),
        other: most && most.check !== governing.check ? most : null,
      });
    }
    const [low, high] = ends as [(typeof ends)[0], (typeof ends)[0]];
    moved.push({ ...spread, atLow: low.use, atHigh: high.use, otherAtLow: low.other, otherAtHigh: high.other });
  }
  return { governing, moved: [...moved].sort((a, b) => swing(b, governing) - swing(a, governing)) };
}

/** How far an input moves the governing utilisation over its spread; without end where it cannot be judged there. */
export const swing = ({ atLow, atHigh }: Pick<Moved, 'atLow' | 'atHigh'>, { use }: Reading): number =>
  atLow === null || atHigh === null ? Infinity : Math.max(atLow, atHigh, use) - Math.min(atLow, atHigh, use);

/** The check that governs as the document stands, and each that governs at an end of a spread; by id, with titles. */
export function watchedChecks({ governing, moved }: Sensitivity): ReadonlyMap<string, string> {
  const others = moved.flatMap(({ otherAtLow, otherAtHigh }) =>
    [otherAtLow, otherAtHigh].filter((one) => one !== null),
  );
  return new Map([governing, ...others].map(({ check, title }) => [check, title]));
}

/**
 * Parts of the variance of the watched checks' highest utilisation that each input has, all moving at once, each equally
 * likely anywhere in its spread: an assumption, and said wherever it is shown. Yields how many points are done.
 */
export function sensitivityShares(
  document: PlateDocument,
  watched: ReadonlyMap<string, string>,
  sampling: Sampling,
): Generator<number, VarianceShares> {
  const spreads = statedSpreads(document);
  return varianceShares(
    (x) => {
      const factors = Object.fromEntries(
        spreads.map(({ input, low, high }, i) => [input, 1 + low + (high - low) * x[i]!]),
      );
      const model = variedModel(document, factors);
      return Math.max(
        ...[...watched].map(([id, title]) => {
          const use = useOfCheck(model, id);
          if (use !== null) return use;
          throw refusal({
            what: `Within the spreads “${title}” cannot be judged everywhere`,
            where: { path: 'spreads' },
            mend: 'Narrow the spreads.',
          });
        }),
      );
    },
    spreads.length,
    sampling,
  );
}

function statedSpreads({ spreads }: PlateDocument): readonly Spread[] {
  if (spreads && spreads.length > 0) return spreads;
  throw refusal({
    what: 'No spread of an input is stated',
    where: { path: 'spreads' },
    mend: 'Say how far inputs may be off, and by whose word.',
  });
}

function gravest(model: Model): Reading | null {
  return checks.reduce<Reading | null>((most, check) => {
    const row = highest(checkRows(check, model).rows);
    return row && (!most || row.use > most.use) ? row : most;
  }, null);
}

function useOfCheck(model: Model, id: string): number | null {
  return (
    highest(
      checkRows(
        checks.find((check) => check.id === id)!,
        model,
      ).rows,
    )?.use ?? null
  );
}

function highest(rows: readonly CheckRow[]): Reading | null {
  return rows.reduce<Reading | null>(
    (most, { id, title, place, utilisation, detailing }) =>
      detailing || utilisation === null || (most && most.use >= utilisation)
        ? most
        : { check: id, title, place, use: utilisation },
    null,
  );
}

const nothingGoverns = () =>
  refusal({
    what: 'No check of this option has a utilisation',
    where: { path: 'panels' },
    mend: 'Close a bay, or state the loads.',
  });
