import type { Finding } from '../finding.ts';
import type { Estimate } from './estimate.ts';
import { leastSquares } from './least-squares.ts';
import type { CycleResult, RunResult } from './run-results.ts';

/** How a number goes with a run's Keulegan-Carpenter number KC and frequency parameter β: as KC^p β^q. */
export interface Trend {
  readonly of: 'addedMass' | 'dragCoefficient';
  /** p, and q; null where the runs do not tell it apart from p. 95 % intervals. */
  readonly amplitude: Estimate | null;
  readonly frequency: Estimate | null;
}

interface TrendRun {
  readonly run: RunResult;
  readonly cycles: readonly CycleResult[];
}

/** Runs whose KC or β differ by less than this part tell no trend with it. */
const leastSpread = 0.1;
/** Two unknowns that inflate each other's variance by more cannot be told apart. */
const worstInflation = 20;

/**
 * Weighted least squares of  ln y = c + p ln KC + q ln β  over runs, y each run's own result, its error from the scatter of its
 * cycles (s / √n). Where runs lie further off the line than that, errors are raised to what they lie off (Birge's ratio), since
 * the law is then no power. Null exponents where there is one run, or no spread. Textbook weighted regression.
 */
export function trendsOf(runs: readonly TrendRun[]): Trend[] {
  return (['addedMass', 'dragCoefficient'] as const).map((of) => {
    const told = runs.flatMap(({ run, cycles }) => {
      const own = cycles.map((cycle) => (of === 'addedMass' ? cycle.inertia : cycle.dragCoefficient));
      const value = of === 'addedMass' ? run.fit.inertia : run.fit.dragCoefficient;
      const mean = own.reduce((sum, one) => sum + one, 0) / own.length;
      const scatter = Math.sqrt(own.reduce((sum, one) => sum + (one - mean) ** 2, 0) / Math.max(1, own.length - 1) / own.length); // prettier-ignore
      return value > 0 && own.length > 1 ? [{ y: Math.log(value), error: Math.max(rounding, scatter / value), KC: Math.log(run.keuleganCarpenter), beta: Math.log(run.frequencyParameter) }] : []; // prettier-ignore
    });
    const spread = (values: readonly number[]): boolean => Math.max(...values) - Math.min(...values) > leastSpread;
    const columns = [
      ...(spread(told.map(({ KC }) => KC)) ? [{ name: 'amplitude' as const, x: told.map(({ KC }) => KC) }] : []),
      ...(spread(told.map(({ beta }) => beta)) ? [{ name: 'frequency' as const, x: told.map(({ beta }) => beta) }] : []), // prettier-ignore
    ];
    const none = { of, amplitude: null, frequency: null };
    return { ...none, ...fitted(told, columns) };
  });
}

/** A record without noise has cycles that are alike to rounding. */
const rounding = 1e-9;

type Name = 'amplitude' | 'frequency';
interface Column {
  readonly name: Name;
  readonly x: readonly number[];
}

function fitted(
  told: readonly { readonly y: number; readonly error: number }[],
  columns: readonly Column[],
): Partial<Record<Name, Estimate>> {
  const k = columns.length + 1;
  if (columns.length === 0) return {};
  if (told.length < k) return fitted(told, columns.slice(0, -1));
  const weighted = (x: readonly number[]): Float64Array => Float64Array.from(told, ({ error }, i) => x[i]! / error);
  const centred = columns.map(({ x }) => {
    const w = told.map(({ error }) => 1 / error ** 2);
    const mean = x.reduce((sum, one, i) => sum + one * w[i]!, 0) / w.reduce((a, b) => a + b, 0);
    return x.map((one) => one - mean);
  });
  const X = [told.map(() => 1), ...centred].map(weighted);
  const { theta, residual, inverse } = leastSquares(X, weighted(told.map(({ y }) => y)));
  const inflation = (j: number): number => inverse[j * k + j]! * X[j]!.reduce((sum, x) => sum + x * x, 0);
  if (k > 2 && Math.max(inflation(1), inflation(2)) > worstInflation) return fitted(told, columns.slice(0, 1));
  const free = told.length - k;
  const off = free > 0 ? Math.sqrt(residual.reduce((sum, e) => sum + e * e, 0) / free) : 1;
  return Object.fromEntries(
    columns.map(({ name }, i) => {
      const standardError = Math.max(1, off) * Math.sqrt(inverse[(i + 1) * k + i + 1]!);
      const value = theta[i + 1]!;
      return [name, { value, low: value - 2 * standardError, high: value + 2 * standardError, standardError }];
    }),
  );
}

const words = { addedMass: 'added mass', dragCoefficient: 'the drag coefficient' } as const;

/** A number that surely goes with amplitude or frequency, by more than a tenth over a factor of e: one number for the whole test hides it. */
export function trendFindings(trends: readonly Trend[]): Finding[] {
  const sure = (one: Estimate | null): one is Estimate => one !== null && one.low * one.high > 0 && Math.abs(one.value) > 0.1; // prettier-ignore
  return trends.flatMap(({ of, amplitude, frequency }) => {
    const parts = [
      ...(sure(amplitude) ? [`the Keulegan-Carpenter number to the power ${powerText(amplitude)}`] : []),
      ...(sure(frequency) ? [`the frequency parameter to the power ${powerText(frequency)}`] : []),
    ];
    return parts.length === 0 ? [] : [{ id: 'trend', place: 'runs', text: `From run to run ${words[of]} goes with ${parts.join(' and ')}: one number for all runs is their middle, not what holds at each.`, mend: 'Use the runs nearest to the motion in service, or test there.' }]; // prettier-ignore
  });
}

/** An exponent with its interval. */
export const powerText = ({ value, low, high }: Estimate): string => `${fixed(value)} (${fixed(low)} to ${fixed(high)})`; // prettier-ignore
const fixed = (value: number): string => value.toFixed(2).replace('-', '−');
