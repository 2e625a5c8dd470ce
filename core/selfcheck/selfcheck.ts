import type { Appraisal } from '../appraise.ts';
import { checks } from '../checks/index.ts';
import { traceCheck } from '../checks/trace-check.ts';
import { gravest, programVersion } from '../result.ts';
import { methodValues } from './method-values.ts';
import { publishedValues } from './published-values.ts';
import { valueGiven } from './value-given.ts';

/** One comparison: what was expected from outside or from a second way, and what came out here. */
export interface SelfcheckRow {
  readonly kind: 'published' | 'traced' | 'sample';
  readonly id: string;
  readonly source: string;
  readonly expected: number | string;
  readonly got: number | string;
  readonly tolerance: number;
  readonly verdict: 'as expected' | 'DIFFERS';
}

export interface Selfcheck {
  readonly schema: 'stillplate-selfcheck/1';
  readonly programVersion: string;
  readonly checks: readonly SelfcheckRow[];
  /** Checks that have no outside value in this list; the tests of the source compare each of them. */
  readonly withoutOutsideValue: readonly string[];
}

/** Formulas and methods against values from outside this program. */
export function publishedRows(): readonly SelfcheckRow[] {
  const formulas = publishedValues.map(
    ({ check, safety, about, source, given, symbol, expected, tolerance }) =>
    compared(`${check.id}: ${symbol}, ${about}`, source, expected, tolerance, () => valueGiven(check, safety, given, symbol)), // prettier-ignore
  );
  const methods = methodValues.map(({ id, source, expected, tolerance, got }) => compared(id, source, expected, tolerance, got)); // prettier-ignore
  return [...formulas, ...methods];
}

function compared(id: string, source: string, expected: number, tolerance: number, work: () => number): SelfcheckRow {
  let got: number | string;
  try {
    got = work();
  } catch (error) {
    got = error instanceof Error ? error.message : String(error);
  }
  const same = typeof got === 'number' && Math.abs(got - expected) <= tolerance;
  return { kind: 'published', id, source, expected, got, tolerance, verdict: same ? 'as expected' : 'DIFFERS' };
}

/**
 * For each check: the gravest row of each place, computed by its generated function, made again from the printed
 * expressions. The trace refuses where a bit differs.
 */
export function tracedRows({ model, rows }: Appraisal, about: string): readonly SelfcheckRow[] {
  const judged = gravest(rows).filter(({ utilisation }) => utilisation !== null);
  return checks.flatMap((check): SelfcheckRow[] => {
    const own = judged.filter(({ id }) => id === check.id);
    if (own.length === 0) return [];
    let [same, why] = [0, ''];
    for (const { place, situation } of own) {
      // A check of no situation asks for none; as the note does, any is handed to it.
      const of = model.loads.situations.find(({ id }) => id === situation) ?? model.loads.situations[0]!;
      try {
        const trace = traceCheck(check, model, place, of);
        if ('missing' in trace) throw new Error(trace.missing);
        same += 1;
      } catch (error) {
        why ||= `; at ${place}: ${error instanceof Error ? error.message : String(error)}`;
      }
    }
    const verdict = same === own.length ? 'as expected' : 'DIFFERS';
    return [{ kind: 'traced', id: `${check.id}, ${about}`, source: 'its printed expressions, evaluated one by one', expected: `${own.length} places to the bit`, got: `${same} places to the bit${why}`, tolerance: 0, verdict }]; // prettier-ignore
  });
}

/** What a sample gives against what is recorded of it, field by field. */
export function sampleRows(name: string, expected: unknown, got: unknown): readonly SelfcheckRow[] {
  const source = `samples/${name}.expected.json`;
  return leaves(expected, got, []).map(({ path, was, is }) => ({
    kind: 'sample',
    id: `${name}: ${path.join(', ')}`,
    source,
    expected: was,
    got: is,
    tolerance: 0,
    verdict: was === is ? 'as expected' : 'DIFFERS',
  }));
}

interface Leaf {
  readonly path: readonly string[];
  readonly was: number | string;
  readonly is: number | string;
}

function leaves(expected: unknown, got: unknown, path: readonly string[]): Leaf[] {
  const isGroup = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
  if (isGroup(expected) || isGroup(got)) {
    const [a, b] = [isGroup(expected) ? expected : {}, isGroup(got) ? got : {}];
    return [...new Set([...Object.keys(a), ...Object.keys(b)])].flatMap((key) =>
      leaves(a[key], b[key], [...path, key]),
    );
  }
  const plain = (value: unknown): number | string => (typeof value === 'number' ? value : String(value ?? 'nothing'));
  return [{ path, was: plain(expected), is: plain(got) }];
}

export const selfcheckOf = (rows: readonly SelfcheckRow[]): Selfcheck => ({
  schema: 'stillplate-selfcheck/1',
  programVersion,
  checks: rows,
  withoutOutsideValue: checks.map(({ id }) => id).filter((id) => !publishedValues.some(({ check }) => check.id === id)),
});
