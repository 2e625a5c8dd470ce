import fc from 'fast-check';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { evaluateCondition, evaluateFormula } from '../../core/derive/evaluate.ts';
import { finite } from '../../core/derive/finite.ts';
import { formulaText } from '../../core/derive/formula-text.ts';
import { readCondition, readFormula, type Condition, type Formula } from '../../core/derive/formula.ts';
import { functionSource, type StepSource } from '../../core/derive/generate.ts';
import { partsOf } from '../../core/derive/parts-of.ts';
import { Refusal } from '../../core/refusal.ts';
import { anyCondition, anyFormula, known, names, values } from './arbitrary-formula.ts';

/** mathjs whole, as the outside reference. Its comparisons allow a relative slip of 1e-12 by default; ours none. */
const reference = create(all ?? {}, { relTol: Number.MIN_VALUE, absTol: 0, predictable: true });

type Generated = (v: Record<string, number>, k?: Record<string, (...x: number[]) => number>) => number[];
/** The function itself: its first line alone has types, and is held by a test below. */
function generated(inputs: readonly string[], steps: readonly StepSource[]): Generated {
  const body = functionSource('steps', inputs, steps).split('\n').slice(1, -2).join('\n');
  const run = new Function('finite', 'v', 'k', body) as (
    guard: typeof finite,
    ...rest: Parameters<Generated>
  ) => number[];
  return (v, k) => run(finite, v, k);
}
const generatedValue = (f: Formula | Condition, v: Record<string, number>) =>
  generated(names, [{ symbol: 'y', formula: f }])(v)[0];

/** The value, or undefined when it was refused; any other error is a failure. */
function unlessRefused<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/** mathjs gives the first of 0 and −0 as their min and max, Math the one with the sign: not compared. */
const tiesOfZeros = (f: Formula | Condition, v: Record<string, number>): boolean =>
  (f.kind === 'call' &&
    /min|max/.test(f.name) &&
    f.arguments.filter((x) => unlessRefused(() => evaluateFormula(x, v)) === 0).length > 1) ||
  partsOf(f).some((part) => tiesOfZeros(part, v));

describe('one formula, three readings', () => {
  it('reads back from its own text as the same tree', () => {
    fc.assert(
      fc.property(anyFormula, (f) => void expect(readFormula(formulaText(f), known)).toEqual(f)),
      { numRuns: 1000 },
    );
    fc.assert(
      fc.property(anyCondition, (c) => void expect(readCondition(formulaText(c), known)).toEqual(c)),
      { numRuns: 500 },
    );
  });

  it('evaluates to the same bits as the generated function, and is refused by both or by none', () => {
    const seen = { refused: 0, finite: 0 };
    fc.assert(
      fc.property(anyFormula, values, (f, v) => {
        const value = unlessRefused(() => evaluateFormula(f, v));
        seen[value === undefined ? 'refused' : 'finite']++;
        expect(unlessRefused(() => generatedValue(f, v))).toBe(value);
      }),
      { numRuns: 1000 },
    );
    expect(Math.min(seen.refused, seen.finite)).toBeGreaterThan(100);
  });

  it('evaluates as mathjs does, to the bit, wherever every part is finite', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyFormula, values, (f, v) => {
        const value = unlessRefused(() => evaluateFormula(f, v));
        if (value === undefined || tiesOfZeros(f, v)) return;
        compared++;
        expect(reference.evaluate(formulaText(f), { ...v })).toBe(value);
      }),
      { numRuns: 1000 },
    );
    expect(compared).toBeGreaterThan(100);
  });

  it('judges conditions as mathjs does', () => {
    fc.assert(
      fc.property(anyCondition, values, (c, v) => {
        const holds = unlessRefused(() => evaluateCondition(c, v));
        expect(unlessRefused(() => generatedValue(c, v))).toBe(holds === undefined ? undefined : Number(holds));
        if (holds !== undefined && !tiesOfZeros(c, v)) expect(reference.evaluate(formulaText(c), { ...v })).toBe(holds);
      }),
      { numRuns: 500 },
    );
  });

  it('takes cube roots within 1 ulp of mathjs, which refines its own', () => {
    const f = readFormula('cbrt(a)', known);
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (a) => {
        const value = evaluateFormula(f, { a });
        expect(Math.abs(value - (reference.evaluate('cbrt(a)', { a }) as number))).toBeLessThanOrEqual(
          Number.EPSILON * Math.abs(value),
        );
      }),
    );
  });
});

describe('the generated function', () => {
  const f = (text: string) => readFormula(text, new Set([...names, 'x', 'y', 'z']));

  it('gives all steps in order and calls kernels by name', () => {
    const steps: StepSource[] = [
      { symbol: 'x', formula: f('a + 1') },
      { symbol: 'y', kernel: 'plate.hinged', arguments: ['x', 'new'] },
      { symbol: 'z', formula: f('y / x') },
      { symbol: 'w', formula: readCondition('1 < z < 4', new Set(['z'])) },
    ];
    const run = generated(['a', 'new', 'k'], steps);
    expect(run({ a: 2, new: 5 }, { 'plate.hinged': (p, q) => p * q })).toEqual([3, 15, 5, 0]);
    expect(functionSource('boltTension', ['a', 'new', 'k'], steps)).toBe(
      `export function boltTension(v: Readonly<Record<"a" | "new", number>>, k: Readonly<Record<"plate.hinged", (...values: number[]) => number>>): number[] {
  const _a = v.a;
  const _new = v.new;
  const _x = finite(_a + 1, "x");
  const _y = finite(k["plate.hinged"](_x, _new), "y");
  const _z = finite(_y / _x, "z");
  const _w = finite(1 < _z && _z < 4 ? 1 : 0, "w");
  return [_x, _y, _z, _w];
}
`,
    );
  });

  it('refuses an infinite part that its consumer would hide', () => {
    const hidden = [
      '1 / (1 / a)',
      'min(3, 1 / a)',
      'atan(1 / a)',
      '1 / a > 2 ? 1 : 0',
      '(1 / a) ^ 0',
      'exp(-1 / a)',
      'atan2(1 / a, 1)',
    ];
    for (const text of hidden)
      expect(() => generatedValue(f(text), { a: 0 }), text).toThrow(/1 \/ a is -?Infinity, no finite number/);
  });

  it('leaves the branch alone that is not taken', () =>
    expect(generatedValue(f('a > 0 ? min(1, e / a) : 1'), { a: 0, e: 3 })).toBe(1));

  it('refuses steps out of order and symbols given twice', () => {
    expect(() => functionSource('f', ['a'], [{ symbol: 'x', formula: f('y') }])).toThrow(/x uses y before it is known/);
    expect(() => functionSource('f', ['a'], [{ symbol: 'a', formula: f('1') }])).toThrow(/a is given twice/);
    expect(() => functionSource('f', ['a', 'x y'], [])).toThrow(/“x y” is no name/);
  });
});
