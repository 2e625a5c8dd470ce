import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatQuantity,
  fromUnit,
  inUnit,
  printedUnit,
  quantityText,
  significant,
  unitText,
} from '../../core/quantity/format-quantity.ts';
import { kinds, type Kind } from '../../core/quantity/kinds.ts';
import { readQuantity } from '../../core/quantity/read-quantity.ts';
import { unitReading } from '../../core/quantity/units.ts';

const thin = '\u202f';

describe('a number with significant figures', () => {
  it.each([
    [0, '0'],
    [-0, '0'],
    [1, '1.000'],
    [12345, `12${thin}350`],
    [-12345, `−12${thin}350`],
    [1234.5, '1235'],
    [999949, `999${thin}900`],
    [999999.9, `1${thin}000${thin}000`],
    [9.9996, '10.00'],
    [9.9994, '9.999'],
    [0.1 + 0.2, '0.3000'],
    [0.00012344, '0.0001234'],
    [1.2e-5, '1.200·10⁻⁵'],
    [-1.2e9, '−1.200·10⁹'],
    [1e-300, '1.000·10⁻³⁰⁰'],
  ])('%d prints as %s', (value, text) => expect(significant(value)).toBe(text));

  it('as many figures as asked for', () => {
    expect(significant(Math.PI, 2)).toBe('3.1');
    expect(significant(Math.PI, 6)).toBe('3.14159');
    expect(significant(27315, 2)).toBe(`27${thin}000`);
  });

  it.each([NaN, Infinity, -Infinity])('%d is never printed as a result', (value) =>
    expect(() => significant(value)).toThrow(/A value to be printed is/),
  );

  it('is off by half a unit of the last figure at most', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-12, max: 1e12, noNaN: true }),
        fc.integer({ min: 1, max: 8 }),
        (value, figures) => {
          const printed = readQuantity(`${significant(value, figures)} m`, 'length').si;
          expect(Math.abs(printed - value)).toBeLessThanOrEqual(
            0.5000001 * 10 ** (Math.floor(Math.log10(value)) - figures + 1),
          );
        },
      ),
      { seed: 20260101, numRuns: 1000 },
    );
  });
});

describe('units in print', () => {
  it('as the trade writes them', () => {
    expect(['kN*m', 'mm^2', 'tonne', 'lbm/ft^3', 'degC', 'm^-1', 'N*m/m'].map(unitText)).toEqual([
      'kN·m',
      'mm²',
      't',
      'lb/ft³',
      '°C',
      'm⁻¹',
      'N·m/m',
    ]);
    expect(formatQuantity(12345, 'kN')).toEqual({ number: '12.35', unit: 'kN' });
    expect(formatQuantity(0.81, '1')).toEqual({ number: '0.8100', unit: '' });
    expect(quantityText(282.15, 'degC')).toBe('9.000 °C');
  });

  const stated = ['mm', 'm', 'mm^2', 'm^2', 'cm^2', 'mm^3', 'cm^3', 'm^3', 'mm^4', 'cm^4', 'm^4', 'N', 'kN', 'N/m', 'kN/m', 'N/mm', 'kN*m', 'N*m', 'N*m/m', 'kN*m/m', 'N*mm/mm', 'MPa', 'kPa', 'Pa', 'GPa', 'kg', 'kg/m', 'kg/m^3', 'kg/m^2', 'm/s', 'm/s^2', 'N*m^2', 'kN*m^2']; // prettier-ignore
  it.each(stated)('%s has an inch unit of the same kind', (unit) => {
    const printed = printedUnit(unit, 'inch');
    expect(printed).not.toBe(unit);
    expect(unitReading(printed).dimensions).toEqual(unitReading(unit).dimensions);
    expect(printedUnit(unit, 'metric')).toBe(unit);
  });

  it('units of time, angle and pure numbers stay', () =>
    expect(['s', 'rad', '1', 'K'].map((unit) => printedUnit(unit, 'inch'))).toEqual(['s', 'rad', '1', 'K']));

  it('inch values: 6 mm, 355 MPa, 1025 kg/m³ and 12 kN', () => {
    // 6/25.4; 355e6/6894757.293168; 1025/16.01846337; 12000/4.4482216152605: NIST SP 811 (2008), B.8 (from memory).
    expect(quantityText(0.006, printedUnit('mm', 'inch'))).toBe('0.2362 in');
    expect(quantityText(355e6, printedUnit('MPa', 'inch'))).toBe('51.49 ksi');
    expect(quantityText(1025, printedUnit('kg/m^3', 'inch'))).toBe('63.99 lb/ft³');
    expect(quantityText(12000, printedUnit('kN', 'inch'))).toBe('2698 lbf');
  });
});

describe('reading what was printed', () => {
  const printed: readonly (readonly [Kind, string])[] = [
    ['length', 'mm'], ['length', 'in'], ['length', 'ft'], ['area', 'm^2'], ['area', 'in^2'], ['volume', 'm^3'], ['modulus', 'cm^3'], ['inertia', 'cm^4'], ['mass', 'kg'], ['mass', 'lbm'], ['mass', 'tonne'],
    ['density', 'kg/m^3'], ['density', 'lbm/ft^3'], ['areaMass', 'kg/m^2'], ['force', 'kN'], ['force', 'lbf'], ['lineForce', 'N/mm'], ['lineForce', 'lbf/in'], ['stress', 'MPa'], ['stress', 'ksi'], ['stress', 'psi'],
    ['moment', 'kN*m'], ['moment', 'lbf*ft'], ['time', 'minute'], ['speed', 'm/s'], ['speed', 'ft/s'], ['angle', 'deg'], ['temperature', 'degC'],
  ]; // prettier-ignore

  it('gives the value back to the printed figures, in every unit and size', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...printed),
        fc.double({ min: -1e9, max: 1e9, noNaN: true }),
        ([kind, unit], value) => {
          fc.pre(value === 0 || Math.abs(value) > 1e-12);
          const si = fromUnit(value, unit);
          const back = inUnit(readQuantity(quantityText(si, unit, 12), kind).si, unit);
          expect(Math.abs(back - value)).toBeLessThanOrEqual(
            1e-11 * Math.abs(value) + (kind === 'temperature' ? 1e-9 : 0),
          );
        },
      ),
      { seed: 20260102, numRuns: 1500 },
    );
  });

  it('any text gives a quantity or a refusal, never another error or a value that is not finite', () => {
    const number = fc.constantFrom(
      '1',
      '10',
      '3/8',
      '1 1/2',
      '1½',
      '-2',
      '−2',
      '1,5',
      '1,000',
      '12 350',
      '1e999',
      '1e-999',
      '0',
      '1.2·10⁷',
      '1/0',
      '.',
      '',
    );
    // prettier-ignore
    const mark = fc.constantFrom('mm', 'in', 'ft', "'", '"', 'kN', 'm', '*', '/', '^2', '²', '·', ' ', '-', 'degC', '°', 'K', 'kNm', 'lb', 'lbf', 'MPa', 'ton', '(', '3', '1/2');
    const built = fc
      .tuple(number, fc.array(mark, { minLength: 1, maxLength: 3 }))
      .map(([first, marks]) => `${first} ${marks.join('')}`);
    const text = fc.oneof(
      { weight: 3, arbitrary: built },
      { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 20 }) },
    );
    let accepted = 0;
    fc.assert(
      fc.property(text, (typed) => {
        for (const kind of Object.keys(kinds) as Kind[]) {
          try {
            expect(Number.isFinite(readQuantity(typed, kind).si)).toBe(true);
            accepted++;
          } catch (error) {
            expect((error as Error).name).toBe('Refusal');
          }
        }
      }),
      { seed: 20260103, numRuns: 1000 },
    );
    // Both sides of the claim were met.
    expect(accepted).toBeGreaterThan(100);
  });
});
