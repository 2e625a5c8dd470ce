import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { FittedRun } from './fitted-run.ts';
import { forceColumns, type Unknown } from './force-columns.ts';
import { leastSquares } from './least-squares.ts';
import { criticalValue95, neweyWest } from './newey-west.ts';
import type { Also, TankSetup } from './tank-setup.ts';

/** A term that the model does not have and that what is left over asks for. SI. */
export interface LeftOut {
  readonly term: Also;
  readonly value: number;
  readonly standardError: number;
  /** What drag and inertia would change by, as parts of them. */
  readonly drag: number;
  readonly inertia: number;
}

const candidates: readonly Also[] = ['dry friction', 'linear damping', 'force drift', 'delay'];
/** Readings that a test of the residual looks at: more tell no more of a term that is worth a finding. */
const mostReadings = 20_000;
/** A term counts from so many times the 95 % critical value on: four are tried, and travel’s noise is not in its error. */
const surely = 1.6;
/** And where it changes drag or inertia by this part. */
const matters = 0.02;

/**
 * Tests what a fit leaves over: each term that was not asked for, and that the record can tell apart, is fitted beside the
 * others; its error by Newey and West with the lag of a cycle. Gives those that are surely there and change a result.
 * `worst`: the variance inflation beyond which two terms cannot be told apart.
 */
export function leftOutOf(
  unknowns: readonly Unknown[],
  parts: readonly FittedRun[],
  setup: TankSetup,
  { theta, cycle, onePeriod, worst }: { readonly theta: Float64Array; readonly cycle: number; readonly onePeriod: boolean; readonly worst: number }, // prettier-ignore
): LeftOut[] {
  const every = Math.max(1, Math.ceil(parts.reduce((sum, { at }) => sum + at.length, 0) / mostReadings));
  const thin = parts.map((part) => {
    const { at, t, F } = part;
    const n = Math.ceil(at.length / every);
    const of = (values: Float64Array): Float64Array => Float64Array.from({ length: n }, (_, i) => values[i * every]!);
    return { part, at: Int32Array.from({ length: n }, (_, i) => at[i * every]!), t: of(t), F: of(F) };
  });
  const joined = (each: readonly Float64Array[]): Float64Array => Float64Array.from(each.flatMap((own) => [...own]));
  const y = joined(thin.map(({ F }) => F));
  const columnsOf = (names: readonly Unknown[], of: Float64Array): Float64Array[] => {
    const all = thin.map(({ part, at, t }) => forceColumns(names, part.motion, { at, t }, of, setup));
    return names.map((_, j) => joined(all.map((own) => own[j]!)));
  };
  const X = columnsOf(unknowns, theta);
  const lag = Math.max(1, Math.round(cycle / every));
  const critical = surely * criticalValue95(Math.min(1, (lag + 1) / y.length));
  return candidates.flatMap((term): LeftOut[] => {
    if (unknowns.includes(term) || (term === 'delay' && onePeriod) || y.length < 4 * lag) return [];
    const all = [...X, columnsOf([term], theta)[0]!];
    const k = all.length;
    const { theta: own, residual, inverse } = leastSquares(all, y);
    const inflation = (j: number): number => inverse[j * k + j]! * all[j]!.reduce((sum, x) => sum + x * x, 0);
    // a drift of the force inflates its zero alone, which no result depends on
    if (Math.max(inflation(1), term === 'force drift' ? 1 : inflation(k - 1)) > worst) return [];
    const psi = residual.map((e, i) => e * all.reduce((sum, column, j) => sum + inverse[(k - 1) * k + j]! * column[i]!, 0)); // prettier-ignore
    const standardError = Math.sqrt(neweyWest([psi], lag)[0]!);
    const value = own[k - 1]!;
    const [inertia, drag] = [own[0]! / theta[0]! - 1, own[1]! / theta[1]! - 1];
    const counts = Math.abs(value) > critical * standardError && Math.max(Math.abs(inertia), Math.abs(drag)) > matters;
    return counts ? [{ term, value, standardError, drag, inertia }] : [];
  });
}

const units = { 'dry friction': 'N', 'linear damping': 'N s/m', 'force drift': 'N/s', delay: 's' } as const;

export const leftOutFindings = (terms: readonly LeftOut[]): Finding[] =>
  terms.map(({ term, value, standardError, drag, inertia }) => ({ id: 'term-left-out', place: 'model', text: `What the model leaves over asks for ${term}: ${significant(value, 3)} ${units[term]} (± ${significant(2 * standardError, 2)}), which would change the drag coefficient by ${signedPercent(drag)} and the inertia by ${signedPercent(inertia)}.`, mend: `Ask for it in the model, if the rig has it; else look for what acts alike.` })); // prettier-ignore

const signedPercent = (part: number): string => `${part < 0 ? '−' : '+'}${significant(100 * Math.abs(part), 2)} %`;
