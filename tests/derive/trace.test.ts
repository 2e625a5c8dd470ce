import { describe, expect, it } from 'vitest';
import { boxText } from '../../core/derive/box-text.ts';
import { readFormula } from '../../core/derive/formula.ts';
import { traceOf, type Evaluated, type FormatQuantity } from '../../core/derive/trace.ts';

const format: FormatQuantity = (si, unit) =>
  ({
    N: { number: (si / 1e3).toFixed(1), unit: 'kN' },
    MPa: { number: (si / 1e6).toFixed(0), unit: 'MPa' },
    'mm^2': { number: (si * 1e6).toFixed(1), unit: 'mm²' },
    '1': { number: String(si), unit: '' },
  })[unit] ?? { number: String(si), unit };

// An M12 bolt of class 8.8 by EN 1993-1-8, Table 3.4: A_s 84.3 mm² (ISO 898-1, Table 4), f_ub 800 MPa (Table 3.1).
const input = (symbol: string, unit: string) => ({ symbol, unit, meaning: symbol, from: 'catalogue: fasteners' });
const inputs = [
  { ...input('A_s', 'mm^2'), source: 'ISO 898-1' },
  input('f_ub', 'MPa'),
  input('k_2', '1'),
  input('gamma_M2', '1'),
];
const formula = readFormula('k_2 * f_ub * A_s / gamma_M2', new Set(inputs.map(({ symbol }) => symbol)));
const given = { A_s: 84.3e-6, f_ub: 800e6, k_2: 0.9, gamma_M2: 1.25 };
const bolt: Evaluated = {
  inputs,
  steps: [
    { symbol: 'F_t_Rd', unit: 'N', meaning: 'tension resistance', formula },
    { symbol: 'two', unit: '1', meaning: 'a constant', formula: readFormula('1 + 1', new Set()) },
    { symbol: 'F_g', unit: 'N', meaning: 'force in the group', kernel: 'bolt group', arguments: ['F_t_Rd', 'two'] },
  ],
  values: { ...given, F_t_Rd: (0.9 * 800e6 * 84.3e-6) / 1.25, two: 2, F_g: 97113.6 },
};

describe('the trace of a check', () => {
  it('shows each input and step with its numbers in their units', () => {
    expect(traceOf(bolt, format).map(({ plain }) => plain)).toEqual([
      'A_s = 84.3 mm²',
      'f_ub = 800 MPa',
      'k_2 = 0.9',
      'γ_M2 = 1.25',
      'F_t,Rd = k_2·f_ub·A_s/γ_M2 = 0.9 · 800 MPa · 84.3 mm²/1.25 = 48.6 kN',
      'two = 1 + 1 = 2',
      'F_g = bolt group(F_t,Rd = 48.6 kN, two = 2) = 97.1 kN',
    ]);
  });

  it('gives the parts as boxes, and where an input comes from', () => {
    const [area, , , , resistance, constant, kernel] = traceOf(bolt, format);
    expect(area).toMatchObject({ from: 'catalogue: fasteners', source: 'ISO 898-1', formula: undefined });
    expect(resistance?.formula?.kind).toBe('fraction');
    expect(resistance?.substituted?.kind).toBe('fraction');
    expect(constant?.substituted).toBeUndefined();
    expect(kernel?.formula).toBeUndefined();
    expect(boxText(kernel!.substituted!)).toMatch(/^bolt group\(F_t,Rd = .*, two = 2\)$/);
    expect(boxText(kernel!.result)).toBe('97.1 kN');
  });

  it('refuses to print a formula that does not give what was computed', () => {
    const stale = { ...bolt, values: { ...bolt.values, F_t_Rd: 48557 } };
    expect(() => traceOf(stale, format)).toThrow(/F_t_Rd was computed as 48557, its printed formula gives 48556\.8/);
  });

  it('refuses a value that is missing', () =>
    expect(() => traceOf({ ...bolt, values: given }, format)).toThrow(/F_t_Rd was computed as undefined/));
});
