import fc from 'fast-check';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { boxText } from '../../core/derive/box-text.ts';
import type { Box } from '../../core/derive/box.ts';
import { equationOf, substituted } from '../../core/derive/equation.ts';
import { formulaText } from '../../core/derive/formula-text.ts';
import { readCondition, readFormula, type Formula } from '../../core/derive/formula.ts';
import { mathml } from '../../core/derive/mathml.ts';
import { numberBox } from '../../core/derive/number-box.ts';
import { symbolBox } from '../../core/derive/symbol-box.ts';

const words = /\b(sqrt|cbrt|min|max|abs|sin|cos|tan|asin|atan2|log|log10|exp|pi|and|or|not)\b/;
const named = (text: string) => new Set((text.match(/[A-Za-z]\w*/g) ?? []).filter((word) => !words.test(word)));
const printed = (text: string) => boxText(equationOf(readFormula(text, named(text))));

describe('an equation in print', () => {
  it('sets the formulas of EN 1993-1-8, Table 3.4 and EN 1993-1-1, 6.2.1(5) as they stand there', () => {
    expect(printed('k_2 * f_ub * A_s / gamma_M2')).toBe('k_2·f_ub·A_s/γ_M2');
    expect(printed('min(e_1 / (3 * d_0), f_ub / f_u, 1)')).toBe('min(e_1/(3·d_0), f_ub/f_u, 1)');
    expect(printed('k_1 * alpha_b * f_u * d * t / gamma_M2')).toBe('k_1·α_b·f_u·d·t/γ_M2');
    expect(printed('F_v_Ed / F_v_Rd + F_t_Ed / (1.4 * F_t_Rd)')).toBe('F_v,Ed/F_v,Rd + F_t,Ed/(1.4·F_t,Rd)');
    expect(printed('sqrt(sigma_x^2 + sigma_z^2 - sigma_x * sigma_z + 3 * tau^2)')).toBe(
      '√(σ_x² + σ_z² − σ_x·σ_z + 3·τ²)',
    );
    expect(printed('pi^2 * E / (12 * (1 - nu^2)) * (t / b)^2')).toBe('(π²·E/(12 · (1 − ν²))) · (t/b)²');
    expect(printed('Delta_sigma_C * (2e6 / N)^(1 / m)')).toBe('Δσ_C · (2000000/N)^(1/m)');
  });

  it('brackets what needs it and nothing else', () => {
    const cases = {
      'a - (b + c)': 'a − (b + c)',
      '(a - b) - c': 'a − b − c',
      'a + (b + c)': 'a + b + c',
      '-(a + b)': '−(a + b)',
      '-(a * b)': '−a·b',
      '-a ^ 2': '−a²',
      '(-a) ^ 2': '(−a)²',
      'a * -b': 'a · (−b)',
      'a - -b': 'a − (−b)',
      '-(-a)': '−(−a)',
      'a / (b / c)': 'a/(b/c)',
      'a / b / c': '(a/b)/c',
      'a / b * c': '(a/b)·c',
      'a * (b / c)': 'a·b/c',
      'a * (-b / c)': 'a · (−b)/c',
      '(a / b) ^ 2': '(a/b)²',
      '2 ^ a ^ b': '2^(a^b)',
      '(2 ^ a) ^ b': '(2^a)^b',
      'sqrt(a) ^ 2': '(√a)²',
      'a ^ -3': 'a⁻³',
      'a ^ 1.5': 'a^1.5',
      'a ^ (b / c)': 'a^(b/c)',
      'f_y ^ 2': 'f_y²',
      'cbrt(a * b)': '(a·b)^(1/3)',
      'abs(a - b) * c': '|a − b|·c',
      'sin(a) * cos(b) ^ 2': 'sin(a) · cos(b)²',
      '1e-7 * a': '10⁻⁷·a',
      '2.5e-7 * a': '2.5·10⁻⁷·a',
      'log(a) - log10(b)': 'ln(a) − log_10(b)',
      'a * 0.5': 'a · 0.5',
      'a * (3 / b)': 'a · 3/b',
      '(a + b) * (c + d)': '(a + b) · (c + d)',
      'd > 20 ? a / b : d > 10 ? b : 1': '{a/b if d > 20; b if d > 10; 1 otherwise}',
    };
    for (const [text, expected] of Object.entries(cases)) expect(printed(text), text).toBe(expected);
    const condition = '0 < a and (b < 2 or not (c == 1))';
    expect(boxText(equationOf(readCondition(condition, named(condition))))).toBe('0 < a and (b < 2 or not(c = 1))');
  });

  it('shows substituted numbers with their units, brackets a sign and the power of a unit', () => {
    const shown: Record<string, Box> = {
      M: value('−3.2', 'kN·m'),
      f_y: value('355', 'N/mm²'),
      x: value('1.2·10⁻⁷', 'm'),
      n: value('2', ''),
    };
    const text = (formula: string) =>
      boxText(substituted(readFormula(formula, named(formula)), (name) => shown[name] ?? symbolBox(name)));
    expect(text('n * f_y * x')).toBe('2 · 355 N/mm² · 1.2·10⁻⁷ m');
    expect(text('M * f_y / n')).toBe('(−3.2 kN·m · 355 N/mm²)/2');
    expect(text('n * M')).toBe('2 · (−3.2 kN·m)');
    expect(text('n / f_y')).toBe('2/(355 N/mm²)');
    expect(text('x ^ 2 - M ^ n')).toBe('(1.2·10⁻⁷ m)² − (−3.2 kN·m)²');
    expect(text('f_y * pi')).toBe('355 N/mm² · π');
    expect(text('n ^ 2 + sqrt(n)')).toBe('2² + √2');
  });

  it('means in print what it computes: mathjs reads the printed text to the same fraction', () => {
    let compared = 0;
    fc.assert(
      fc.property(rational, (f) => {
        for (const [set, scope] of [
          [equationOf(f), { a: -1.7, b: 2.3, c: 0.6, d: 3 }],
          [substituted(f, (name) => substitutes[name] ?? symbolBox(name)), { u: 1 }],
        ] as const) {
          const expected = exactly(formulaText(f), { a: -1.7, b: 2.3, c: 0.6, d: 3 });
          const text = boxText(set);
          if (expected !== undefined) expect(exactly(inMathjs(text), scope), text).toBe(expected);
          compared += expected === undefined ? 0 : 1;
        }
      }),
      { numRuns: 1000 },
    );
    expect(compared).toBeGreaterThan(1000);
  });

  it('gives MathML with fractions, scripts and escaped text', () => {
    const set = (text: string) =>
      mathml(equationOf(readFormula(text, named(text)))).replace(/^<math [^>]*>(.*)<\/math>$/, '$1');
    expect(set('sigma_x ^ 2 / 2')).toBe(
      '<mfrac><msubsup><mi mathvariant="italic">σ</mi><mtext>x</mtext><mn>2</mn></msubsup><mn>2</mn></mfrac>',
    );
    expect(set('-sqrt(a)')).toBe('<mrow><mo form="prefix">−</mo><msqrt><mi mathvariant="italic">a</mi></msqrt></mrow>');
    expect(set('a < 1 ? a : 1')).toMatch(
      /^<mrow><mo fence="true">{<\/mo><mtable .*<mo>&lt;<\/mo>.*<mtext>otherwise<\/mtext><\/mtd><\/mtr><\/mtable><\/mrow>$/,
    );
    expect(mathml({ kind: 'text', text: '<b> & "c"' })).toContain('<mtext>&lt;b&gt; &amp; &quot;c&quot;</mtext>');
  });

  it('sets a name as the trade writes it', () => {
    const cases = {
      F_t_Rd: 'F_t,Rd',
      gamma_M2: 'γ_M2',
      alpha_b: 'α_b',
      W_el_y: 'W_el,y',
      e1: 'e_1',
      psi: 'ψ',
      lambda_LT: 'λ_LT',
      Delta_tau_C: 'Δτ_C',
      Delta_F: 'Δ_F',
      KC: 'KC',
      sigma_rho: 'σ_ρ',
      toString: 'toString',
    };
    for (const [name, expected] of Object.entries(cases)) expect(boxText(symbolBox(name)), name).toBe(expected);
  });
});

/** A number in print with its unit, as the trace sets it. */
function value(digits: string, unit: string): Box {
  const number = numberBox(digits);
  return unit
    ? {
        kind: 'row',
        boxes: [...(number.kind === 'row' ? number.boxes : [number]), { kind: 'text', text: `\u00a0${unit}` }],
      }
    : number;
}

const substitutes: Record<string, Box> = {
  a: value('-1.7', ''),
  b: value('2.3', 'u'),
  c: value('6e-1', 'u'),
  d: value('3', ''),
};

/** Formulas whose values are fractions, so that mathjs can take the same value exactly in any order of the same sum. */
const { tree: rational } = fc.letrec<{ tree: Formula }>((tie) => {
  const number = (value: number): Formula => ({ kind: 'number', value });
  return {
    tree: fc.oneof(
      { maxDepth: 4 },
      fc.oneof(
        fc.constantFrom('a', 'b', 'c', 'd').map((name): Formula => ({ kind: 'symbol', name })),
        fc.constantFrom(1, 0.5, 3, 2e-7).map(number),
      ),
      fc.record({ kind: fc.constant('minus'), of: tie('tree') }),
      fc.record({
        kind: fc.constant('binary'),
        operator: fc.constantFrom('+', '-', '*', '/'),
        left: tie('tree'),
        right: tie('tree'),
      }),
      fc.record({
        kind: fc.constant('binary'),
        operator: fc.constant('^'),
        left: tie('tree'),
        right: fc.constantFrom(2, 3).map(number),
      }),
      fc.record({ kind: fc.constant('call'), name: fc.constant('min'), arguments: fc.tuple(tie('tree'), tie('tree')) }),
    ),
  };
});

const fractions = create(all ?? {}, { number: 'Fraction' });
/** The exact value by mathjs as a fraction, undefined where it divides by zero. Its fractions take no 2e-7. */
function exactly(text: string, scope: Record<string, number>): string | undefined {
  try {
    const exact = Object.fromEntries(Object.entries(scope).map(([name, number]) => [name, fractions.fraction(number)]));
    return (
      fractions.evaluate(text.replace(/([\d.]+)e-(\d+)/g, '($1 * 10 ^ (-$2))'), exact) as { toFraction(): string }
    ).toFraction();
  } catch (error) {
    if (/division by zero/i.test(String(error))) return undefined;
    throw error;
  }
}

/** The signs of print as mathjs spells them; nothing is bracketed that was not. */
const inMathjs = (text: string): string =>
  text
    .replace(
      /[⁻⁰¹²³⁴-⁹]+/g,
      (run) => `^(${run.replace(/./g, (c) => (c === '⁻' ? '-' : String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c))))})`,
    )
    .replaceAll('·', '*')
    .replaceAll('−', '-');
