import type { Appraisal } from '../appraise.ts';
import { checks } from '../checks/index.ts';
import { traceCheck } from '../checks/trace-check.ts';
import { gravest, programVersion } from '../result.ts';
import { methodValues } from './method-values.ts';
import { families } from './published/families.ts';
import { notCompared } from './published/not-compared.ts';
import { sourceInWords, type PublishedValue } from './published/published-value.ts';
import { valueGiven } from './value-given.ts';

/** One comparison: what was expected from outside or from a second way, and what came out here. */
export interface SelfcheckRow {
  readonly kind: 'published' | 'traced' | 'sample';
  /** What it is of: the family of checks, “Methods”, or the sample. */
  readonly family: string;
  readonly id: string;
  /** Of expected, got and tolerance; empty where they are no quantity. */
  readonly unit: string;
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
  /** How many checks there are, and how many of them have a value from outside here. */
  readonly registered: { readonly checks: number; readonly compared: number };
  /** Checks that are not compared with an outside value, and why. */
  readonly withoutOutsideValue: readonly { readonly id: string; readonly reason: string }[];
}

/** Formulas and methods against values from outside this program. */
export function publishedRows(): readonly SelfcheckRow[] {
  const formulas = families.flatMap(({ title, values }) => values.map((value) => ofFormula(title, value)));
  const methods = methodValues.map((value) => compared({ family: 'Methods', unit: '', ...value }));
  return [...formulas, ...methods];
}

function ofFormula(family: string, value: PublishedValue): SelfcheckRow {
  const { check, safety = 'partial factors', about, given, symbol, unit, per } = value;
  return compared({
    ...value,
    family,
    id: `${check.id}: ${symbol}, ${about}`,
    source: sourceInWords(value),
    unit: unit === '1' ? '' : unit,
    got: () => valueGiven(check, safety, given, symbol) / per,
  });
}

type Comparable = Omit<SelfcheckRow, 'kind' | 'got' | 'verdict' | 'expected'> & {
  readonly expected: number;
  readonly got: () => number;
};

function compared({ family, id, unit, source, expected, tolerance, got: work }: Comparable): SelfcheckRow {
  let got: number | string;
  try {
    got = work();
  } catch (error) {
    got = error instanceof Error ? error.message : String(error);
  }
  const same = typeof got === 'number' && Math.abs(got - expected) <= tolerance;
  return { kind: 'published', family, id, unit, source, expected, got, tolerance, verdict: same ? 'as expected' : 'DIFFERS' }; // prettier-ignore
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
    return [{ kind: 'traced', family: about, id: `${check.id}, ${about}`, unit: '', source: 'its printed expressions, evaluated one by one', expected: `${own.length} places to the bit`, got: `${same} places to the bit${why}`, tolerance: 0, verdict }]; // prettier-ignore
  });
}

/** What a sample gives against what is recorded of it, field by field. */
export function sampleRows(name: string, expected: unknown, got: unknown): readonly SelfcheckRow[] {
  const source = `samples/${name}.expected.json`;
  return leaves(expected, got, []).map(({ path, was, is }) => ({
    kind: 'sample',
    family: name,
    unit: '',
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

/** Ids of the checks that no value from outside is compared with. */
export function uncompared(): readonly string[] {
  const known = new Set(families.flatMap(({ values }) => values.map(({ check }) => check.id)));
  return checks.map(({ id }) => id).filter((id) => !known.has(id));
}

export const selfcheckOf = (rows: readonly SelfcheckRow[]): Selfcheck => ({
  schema: 'stillplate-selfcheck/1',
  programVersion,
  checks: rows,
  registered: { checks: checks.length, compared: checks.length - uncompared().length },
  withoutOutsideValue: uncompared().map((id) => ({ id, reason: notCompared[id] ?? 'none was found yet' })),
});
