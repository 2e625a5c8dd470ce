import { describe, expect, it } from 'vitest';
import { checkDimensions, dimensionOf, requireConsistent } from '../../core/derive/dimensions.ts';
import { readCondition, readFormula } from '../../core/derive/formula.ts';

const units = {
  F: 'kN',
  f_ub: 'MPa',
  f: 'ksi',
  A_s: 'mm^2',
  k_2: '1',
  M: 'kN*m',
  W: 'cm^3',
  t: 'mm',
  b: 'm',
  E: 'GPa',
  nu: '1',
  theta: 'rad',
  phi: 'deg',
  omega: 'rad/s',
  T: 's',
  n: '1',
  strain: 'mm/m',
  I: 'mm^4',
  q: 'N/mm',
};
const names = new Set(Object.keys(units));
const check = (text: string, unit: string) => checkDimensions(readFormula(text, names), unit, units);

describe('dimensions, by mathjs units', () => {
  it('agree for the formulas of the trade', () => {
    const right = {
      'k_2 * f_ub * A_s': 'N',
      'M / W': 'N/mm^2',
      'F / A_s + f': 'ksi',
      'sqrt((M / W)^2 + 3 * (F / A_s)^2)': 'MPa',
      'E * t^3 / (12 * (1 - nu^2))': 'N*m',
      'pi^2 * E * I / b^2': 'kN',
      '5 / 384 * q * b^4 / (E * I)': 'mm',
      'atan2(t, b)': '1',
      'atan(t / b) + theta + phi': 'deg',
      'b * sin(omega * T)': 'm',
      'omega ^ 2 * b': 'm/s^2',
      'min(t, b, 2 * t)': 'in',
      'abs(t - b)': 'ft',
      'nu > 0.5 ? t : b': 'm',
      '(t ^ 3) ^ (1 / 3) + b': 'mm',
      'cbrt(I / t) + b': 'mm',
      'F ^ 1.5 / (F * sqrt(F))': '1',
      '(F / (f_ub * A_s)) ^ n': '1',
      'strain + 1': '1',
      'b / T ^ 2': 'm/s^2',
      '-t': 'mm',
      'exp(-T * omega)': '1',
      't ^ -(1 + 1)': '1/m^2',
    };
    for (const [text, unit] of Object.entries(right)) expect(() => check(text, unit), text).not.toThrow();
  });

  it('disagree, with the part that is wrong', () => {
    const wrong = [
      ['M / W', 'N', /M \/ W is a quantity in .*, its unit is given as N/],
      ['k_2 * f_ub', '1', /k_2 \* f_ub is a quantity in/],
      ['n * 2', 'mm', /n \* 2 is a pure number, its unit is given as mm/],
      ['b * (t + 1)', 'm^2', /t \+ 1 puts together a quantity in m and a pure number/],
      ['t - F', 'mm', /t - F puts together/],
      ['min(t, 20)', 'mm', /min\(t, 20\) puts together/],
      ['t > 16 ? 1 : 2', '1', /t > 16 puts together/],
      ['n > 1 ? t : 2', 'mm', /n > 1 \? t : 2 puts together/],
      ['atan2(t, n)', '1', /atan2\(t, n\) puts together/],
      ['sin(t)', '1', /sin\(t\) takes a quantity in m/],
      ['log(M)', '1', /log\(M\) takes/],
      ['2 ^ t', '1', /2 \^ t has a quantity in m as its exponent/],
      ['t ^ n', 'mm', /t \^ n has a dimension that changes with its exponent/],
      ['sqrt(t) + t', 'mm', /sqrt\(t\) \+ t puts together a quantity in m\^0\.5 and a quantity in m/],
      ['omega + n', '1/s', /puts together/],
      ['t', 'kNm', /“kNm” is no unit/],
    ] as const;
    for (const [text, unit, message] of wrong) expect(() => check(text, unit), text).toThrow(message);
    expect(() => dimensionOf(readFormula('t', names), {})).toThrow(/t has no unit/);
  });

  it('hold in conditions too', () => {
    const condition = (text: string) => () => requireConsistent(readCondition(text, names), units);
    expect(condition('0.1 * b < t and not (nu == 0.3)')).not.toThrow();
    expect(condition('n < 1 or t <= 3')).toThrow(/t <= 3 puts together a quantity in m and a pure number/);
  });
});
