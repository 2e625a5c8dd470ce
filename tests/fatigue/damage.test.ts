import { describe, expect, it } from 'vitest';
import { cycleDamage } from '../../core/fatigue/cycle-damage.ts';
import { designFatigueFactors } from '../../core/fatigue/design-fatigue-factor.ts';
import { incompleteGamma } from '../../core/fatigue/incomplete-gamma.ts';
import { blocksOf, cyclesBeyond, cyclesOf, weibullParts, type LoadHistory } from '../../core/fatigue/load-history.ts';
import { snCurve, type SnCurve } from '../../core/fatigue/sn-curve.ts';
import { weibullDamage, weibullScale } from '../../core/fatigue/weibull-damage.ts';

const MPa = 1e6;

describe('the incomplete gamma function', () => {
  // scipy 1.17.1: gammainc(a, x) gamma(a), gammaincc(a, x) gamma(a)
  it.each([
    [4, 0.5, 0.010509735337744944, 5.989490264662255],
    [4, 12, 5.986249252753251, 0.013750747246748539],
    [1.3, 2.2, 0.7417166371769844, 0.15575405912929266],
    [2.5, 3.5, 1.0360343155785858, 0.2933060726005513],
    [6, 5.9, 64.57526892153406, 55.42473107846594],
    [11, 3, 1060.8323265090553, 3627739.167673491],
    [11, 25, 3626671.848037952, 2128.151962047973],
    [17.667, 16, 51006934606968.945, 86556042712219.28],
    [0.7, 0.01, 0.05663900769340207, 1.241416324954156],
  ])('at a = %d, x = %d is as scipy gives it', (a, x, lower, upper) => {
    const given = incompleteGamma(a, x);
    expect(given.lower / lower).toBeCloseTo(1, 10);
    expect(given.upper / upper).toBeCloseTo(1, 10);
  });

  it('has its parts at the ends, Γ(5) = 24', () => {
    expect(incompleteGamma(5, 0).upper).toBeCloseTo(24, 10);
    expect(incompleteGamma(5, Infinity)).toEqual({ lower: expect.closeTo(24, 10), upper: 0 });
  });

  it('refuses a negative x', () => expect(() => incompleteGamma(2, -1)).toThrow(/x = -1/));
});

/** ∫ of the density times 1/N, cut finely by the trapezium rule in ln S: no closed form in it. */
function byQuadrature(curve: SnCurve, q: number, h: number, n: number): number {
  let D = 0;
  const [from, to, steps] = [Math.log(q * 1e-4), Math.log(q * 200 ** (1 / h)), 200_000];
  for (let i = 0; i <= steps; i++) {
    const S = Math.exp(from + ((to - from) * i) / steps);
    const density = (h / q) * (S / q) ** (h - 1) * Math.exp(-((S / q) ** h));
    D += (i === 0 || i === steps ? 0.5 : 1) * density * S * cycleDamage(curve, S);
  }
  return (n * D * (to - from)) / steps;
}

describe('damage of Weibull ranges in closed form', () => {
  const of = (name: string, where: 'air' | 'free' | 'protected', largest = 150, n0 = 1e8, h = 1, n = 1e8) =>
    weibullDamage(snCurve(name, where), { q: weibullScale(largest * MPa, n0, h), h, n });

  it('has the scale 8.1430 MPa for 150 MPa in 10⁸ cycles, shape 1 (by hand: 150 / ln 10⁸)', () => {
    expect(weibullScale(150, 1e8, 1)).toBeCloseTo(8.143, 4);
  });

  // Worked by hand with the tables' constants; the knee there is at 10⁷ cycles, here where the lines meet.
  it.each([
    ['F', 'air', 0.25359],
    ['D', 'air', 0.091996],
    ['F', 'free', 1.356776],
  ] as const)('gives %s %s the damage %d for that distribution over 10⁸ cycles', (name, where, D) => {
    expect(Math.abs(of(name, where) / D - 1)).toBeLessThan(1e-4);
  });

  it('would give F in air 0.452385 with one slope all the way: wrong, and not what it gives', () => {
    const curve = snCurve('F', 'air');
    const D = weibullDamage({ ...curve, m_2: 3 }, { q: weibullScale(150 * MPa, 1e8, 1), h: 1, n: 1e8 });
    expect(D / 0.452385).toBeCloseTo(1, 5);
  });

  // scipy 1.17.1, quad to 1e-12 on either side of the knee.
  it('is as scipy integrates it: F protected, 180 MPa in 10⁸, shape 0.9, and W3 protected, 60 MPa in 4·10⁶, shape 1.2, over 4·10⁷', () => {
    expect(of('F', 'protected', 180, 1e8, 0.9, 4e7) / 0.1611987306085496).toBeCloseTo(1, 9);
    expect(of('W3', 'protected', 60, 4e6, 1.2, 4e7) / 0.2665493687537321).toBeCloseTo(1, 9);
  });

  it('is as the trapezium rule integrates it, for shapes from 0.6 to 2, with and without a cut-off', () => {
    for (const curve of [snCurve('F3', 'protected'), snCurve('C1', 'free'), snCurve('71', 'air')])
      for (const h of [0.6, 1, 2]) {
        const q = weibullScale(120 * MPa, 1e8, h);
        expect(Math.abs(weibullDamage(curve, { q, h, n: 1e7 }) / byQuadrature(curve, q, h, 1e7) - 1)).toBeLessThan(
          curve.cutOff > 0 ? 2e-4 : 1e-6,
        );
      }
  });

  it('refuses a shape of nothing and a single cycle', () => {
    expect(() => weibullScale(1, 1e8, 0)).toThrow(/shape must be positive/);
    expect(() => weibullScale(1, 1, 1)).toThrow(/logarithm of the cycles/);
  });
});

describe('damage of a narrow-band sea state', () => {
  it('is n (2 √2 σ)³ Γ(2.5) / a with one slope: σ 10 MPa, 10⁷ cycles, F free to corrode, 1.25971 (by hand)', () => {
    const [part] = weibullParts({ kind: 'scatter', states: [{ deviation: 1, cycles: 1e7 }] });
    expect(weibullDamage(snCurve('F', 'free'), { ...part!, q: part!.q * 10 * MPa })).toBeCloseTo(1.25971, 4);
  });

  it('adds over the states of a scatter table', () => {
    const states = [
      { deviation: 0.1, cycles: 3e6 },
      { deviation: 0.25, cycles: 2e5 },
      { deviation: 0, cycles: 1e6 },
    ];
    const history: LoadHistory = { kind: 'scatter', states };
    const curve = snCurve('F', 'protected');
    const sum = (parts: readonly { q: number; h: number; n: number }[]) =>
      parts.reduce((all, part) => all + weibullDamage(curve, { ...part, q: part.q * 100 * MPa }), 0);
    expect(sum(weibullParts(history))).toBeCloseTo(
      sum(weibullParts({ ...history, states: states.slice(0, 1) })) +
        sum(weibullParts({ ...history, states: states.slice(1) })),
      12,
    );
    expect(cyclesOf(history)).toBe(4.2e6);
  });
});

describe('a history cut into blocks', () => {
  const histories: readonly LoadHistory[] = [
    { kind: 'weibull', largest: 1, inCycles: 1e8, shape: 1, cycles: 4e7 },
    { kind: 'weibull', largest: 1.3, inCycles: 4e6, shape: 0.7, cycles: 4e6 },
    {
      kind: 'scatter',
      states: [
        { deviation: 0.05, cycles: 3e7 },
        { deviation: 0.2, cycles: 1e5 },
      ],
    },
  ];

  it.each(histories.map((history) => [history.kind, history] as const))(
    'keeps the cycles and, to 0.1 %%, the damage of the closed form (%s)',
    (_kind, history) => {
      const { ratio, n } = blocksOf(history);
      const total = n.reduce((sum, count) => sum + count, 0);
      expect(Math.abs(total - cyclesOf(history))).toBeLessThan(0.02);
      for (const name of ['W3', 'C']) {
        const curve = snCurve(name, 'protected');
        const blocks = ratio.reduce((sum, r, i) => sum + n[i]! * cycleDamage(curve, r * 150 * MPa), 0);
        const closed = weibullParts(history).reduce(
          (sum, part) => sum + weibullDamage(curve, { ...part, q: part.q * 150 * MPa }),
          0,
        );
        expect(Math.abs(blocks / closed - 1)).toBeLessThan(1e-3);
      }
    },
  );

  it('is one block where every cycle is alike', () => {
    expect(blocksOf({ kind: 'constant', ratio: 0.8, cycles: 5e6 })).toEqual({
      ratio: Float64Array.of(0.8),
      n: Float64Array.of(5e6),
    });
  });

  it('exceeds the largest range once in its cycles: 1 of 10⁸', () => {
    expect(cyclesBeyond({ kind: 'weibull', largest: 2, inCycles: 1e8, shape: 0.9, cycles: 1e8 }, 2)).toBeCloseTo(1, 6);
  });
});

it('asks for ten lives where nothing can be inspected and much depends on it, one where neither holds (NORSOK N-004, Table 8-1, from memory)', () => {
  expect(designFatigueFactors).toEqual({
    none: { substantial: 10, limited: 3 },
    'under water': { substantial: 3, limited: 2 },
    'above water': { substantial: 2, limited: 1 },
  });
});
