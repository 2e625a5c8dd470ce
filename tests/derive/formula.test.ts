import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '../../core/derive/evaluate.ts';
import { readCondition, readFormula } from '../../core/derive/formula.ts';
import { Refusal } from '../../core/refusal.ts';

const known = new Set(['a', 'b', 'd', 'e', 'i', 'E', 'N', 't', 'F_t_Rd', 'gamma_M2']);
const read = (text: string) => readFormula(text, known);

describe('reading a formula', () => {
  it('lets the clashing names through that are declared', () => {
    expect(evaluateFormula(read('e + 10 * i + 100 * E + 1000 * N + 10000 * t'), { e: 1, i: 2, E: 3, N: 4, t: 5 })).toBe(
      54321,
    );
    expect(evaluateFormula(read('F_t_Rd / gamma_M2'), { F_t_Rd: 5, gamma_M2: 1.25 })).toBe(4);
    expect(evaluateFormula(read('cos(pi)'), {})).toBe(-1);
  });

  it('refuses an undeclared name, and says which, where, and what is known', () => {
    for (const name of ['h', 'A', 'mm', 'sigma', 'Infinity1', 'tau'])
      expect(() => read(`a + ${name}`)).toThrow(
        new RegExp(`“a \\+ ${name}” uses “${name}”, which is not declared.*known names: a, b, d`),
      );
    expect(() => readFormula('e * 2', new Set(['a']))).toThrow(/uses “e”, which is not declared/);
  });

  it('refuses reserved and unreadable names even when declared', () => {
    expect(() => readFormula('pi * 2', new Set(['pi']))).toThrow(/reserved/);
    expect(() => readFormula('min + 1', new Set(['min']))).toThrow(/reserved/);
    expect(() => readFormula('σ', new Set(['σ']))).toThrow(/Latin letters/);
    expect(() => readFormula('__proto__', new Set(['__proto__']))).toThrow(/Latin letters/);
    expect(() => readFormula('constructor(a)', known)).toThrow(/no known function/);
  });

  const rejected = {
    text: '"s"',
    truth: 'true',
    nothing: 'null',
    infinite: 'Infinity',
    NaN: 'NaN',
    undefined: 'undefined',
    empty: '  ',
    comment: 'a # b',
    assignment: 'a = 2',
    'function definition': 'f(x) = 2 * x',
    block: 'a; b',
    'two lines': 'a\nb',
    array: '[a, b]',
    range: '1:3',
    object: '{a: 1}',
    accessor: 'a.b',
    index: 'a[1]',
    method: 'a.b(2)',
    'optional accessor': 'a?.b',
    unit: '5 mm',
    'implicit product': 'a b',
    'product of brackets': '(a)(b)',
    'product with a name': '2a',
    'name before a bracket': 'a (b + 1)',
    factorial: 'a!',
    percent: '10%',
    modulus: 'a % b',
    'modulus word': 'a mod b',
    transpose: "a'",
    'product by element': 'a .* b',
    conversion: 'a to b',
    'conversion with in': 'a in b',
    'bit or': 'a | b',
    'bit not': '~a',
    xor: 'a xor b',
    shift: 'a << b',
    'nullish choice': 'a ?? b',
    sign: '+a',
    comparison: 'a < b',
    logic: 'a and b',
    negation: 'not a',
    unequal: 'a != b ? 1 : 2',
    'number as condition': 'a ? 1 : 2',
    import: 'import({}, {})',
    evaluate: 'evaluate("1")',
    parse: 'parse("1")',
    createUnit: 'createUnit("q")',
    simplify: 'simplify("a")',
    random: 'random()',
    'if function': 'if(a < b, 1, 2)',
    'logarithm to a base': 'log(a, 2)',
    'min of one': 'min(a)',
    'atan2 of one': 'atan2(a)',
    'root of two': 'sqrt(a, b)',
    'constant called': 'pi(2)',
    unfinished: 'a +',
    'decimal comma': '0,5 * a',
    dollar: '$',
    arrow: 'a => b',
  };
  for (const [what, text] of Object.entries(rejected))
    it(`refuses ${what}: ${text}`, () => {
      const reading = () => read(text);
      expect(reading).toThrow(Refusal);
      expect(reading).not.toThrow(/Cannot read properties/);
    });

  it('reads conditions, chains as two comparisons, and refuses a number in their place', () => {
    expect(readCondition('0 < a <= b', known)).toEqual(readCondition('0 < a and a <= b', known));
    expect(readCondition('(a == b) or not (a < b)', known).kind).toBe('logic');
    for (const text of ['a', 'a + b', 'a != b', 'a < b < "s"', '0 < a != b', 'a and b', '!a', 'a < true'])
      expect(() => readCondition(text, known), text).toThrow(Refusal);
  });
});

describe('evaluating a formula', () => {
  it('refuses what is not finite, with the part and its values', () => {
    expect(() => evaluateFormula(read('1 + a / (b - b)'), { a: 3, b: 2 })).toThrow(
      /^expression a \/ \(b - b\): a \/ \(b - b\) is Infinity, no finite number, with a = 3, b = 2/,
    );
    expect(() => evaluateFormula(read('sqrt(a) + 1'), { a: -1 })).toThrow(/sqrt\(a\) is NaN.*a = -1/);
    expect(() => evaluateFormula(read('min(2, log(a))'), { a: 0 })).toThrow(/log\(a\) is -Infinity/);
    expect(() => evaluateFormula(read('a'), { a: Number.NaN })).toThrow(/a is NaN/);
    expect(() => evaluateFormula(read('a + b'), { a: 1 })).toThrow(/b has no value/);
    expect(() => evaluateFormula(read('a'), {})).toThrow(/a has no value/);
  });

  it('evaluates only the branch that is taken', () =>
    expect(evaluateFormula(read('a > 0 ? b / a : b'), { a: 0, b: 7 })).toBe(7));
});
