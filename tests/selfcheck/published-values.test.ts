import { describe, expect, it } from 'vitest';
import { formsOf } from '../../core/checks/forms-of.ts';
import { checks } from '../../core/checks/index.ts';
import { Refusal } from '../../core/refusal.ts';
import { families, publishedValues } from '../../core/selfcheck/published/families.ts';
import { notCompared } from '../../core/selfcheck/published/not-compared.ts';
import { printed } from '../../core/selfcheck/published/printed.ts';
import { sourceInWords } from '../../core/selfcheck/published/published-value.ts';
import { uncompared } from '../../core/selfcheck/selfcheck.ts';
import { valueGiven } from '../../core/selfcheck/value-given.ts';

it('every check registered has a value from outside, or stands by name among those that have none', () => {
  const missing = uncompared().filter((id) => !(id in notCompared));
  expect(
    missing,
    `no outside value: ${missing.join(', ')}. Add one to the family of the check in core/selfcheck/published (a number that its source prints, or worked by hand from it; never this program's own), or a line with the reason in not-compared.ts`,
  ).toEqual([]);
  expect(Object.keys(notCompared).sort(), 'not-compared.ts names a check that has a value, or is none').toEqual([...uncompared()].sort()); // prettier-ignore
  // Held by name: the list may grow only on purpose.
  expect(Object.keys(notCompared).sort()).toEqual(['bolt-hydrogen', 'lift-a-frame', 'lift-winch']);
});

it('takes the tolerance from the digits: 90.432 kN within half a newton, 4.20 within 0.005', () => {
  expect(printed('90.432', 'kN')).toMatchObject({ expected: 90.432, unit: 'kN', per: 1000 });
  expect(printed('90.432').tolerance).toBeCloseTo(0.0005, 12);
  expect(printed('4.20').tolerance).toBeCloseTo(0.005, 12);
  expect(printed('75').tolerance).toBe(0.5);
});

describe.each(families)('$title', ({ values }) => {
  it.each(values.map((value) => [`${value.check.id}: ${value.symbol}, ${value.about} (${sourceInWords(value)})`, value] as const))(
    '%s',
    (_title, { check, safety = 'partial factors', given, symbol, expected, tolerance, per }) => {
      expect(checks.flatMap(formsOf)).toContain(check);
      expect(Math.abs(valueGiven(check, safety, given, symbol) / per - expected)).toBeLessThanOrEqual(tolerance);
      // A value that no input moves would compare nothing.
      const moved = Object.entries(given).filter(([name, value]) =>
        [1.05, 1e-4].some((part) => {
          try {
            return Math.abs(valueGiven(check, safety, { ...given, [name]: value * part }, symbol) / per - expected) > tolerance; // prettier-ignore
          } catch (error) {
            // A part of a bolt, a plate too long for its table.
            if (error instanceof Refusal) return false;
            throw error;
          }
        }),
      );
      expect(moved.length, 'inputs that move the value by more than its tolerance').toBeGreaterThan(0);
    },
  ); // prettier-ignore
});

it('no value stands twice', () => {
  const names = publishedValues.map(({ check, safety, about, symbol }) => `${check.id} ${safety} ${symbol} ${about}`);
  expect(new Set(names).size).toBe(names.length);
});
