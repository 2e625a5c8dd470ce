import { expect, it } from 'vitest';
import { sampleRows, type selfcheckOf } from '../../core/selfcheck/selfcheck.ts';
import { valueGiven } from '../../core/selfcheck/value-given.ts';
import { publishedValues } from '../../core/selfcheck/published-values.ts';
import { ran } from './ran.ts';

it('every comparison of the small sample comes out as expected, with source, tolerance and verdict in each row', async () => {
  const { code, out } = await ran(['selfcheck', '--samples', 'small', '--json']);
  const { checks, withoutOutsideValue } = JSON.parse(out) as ReturnType<typeof selfcheckOf>;
  expect(checks.filter(({ verdict }) => verdict !== 'as expected')).toEqual([]);
  expect(code).toBe(0);
  for (const kind of ['published', 'traced', 'sample']) expect(checks.filter((row) => row.kind === kind).length).toBeGreaterThan(20); // prettier-ignore
  for (const { id, source } of checks) expect([id, source].every((text) => text.length > 3)).toBe(true);
  // What it cannot show is said.
  expect(withoutOutsideValue.length).toBeGreaterThan(0);
  expect(withoutOutsideValue).not.toContain('bolt-tension');
});

it('a published value is missed when a factor is wrong by one part in a hundred', () => {
  for (const { check, safety, given, symbol, expected, tolerance } of publishedValues) {
    const wrong = Object.fromEntries(Object.entries(given).map(([name, value]) => [name, value * 1.01]));
    if (symbol === 'u') continue; // a ratio of alike terms may keep its value
    expect(Math.abs(valueGiven(check, safety, wrong, symbol) - expected), check.id).toBeGreaterThan(tolerance);
  }
});

it('a recorded value that is otherwise, missing or new is told by its path', () => {
  const rows = sampleRows('x', { base: { massKg: 1, fails: 0 } }, { base: { massKg: 2, new: 'y' } });
  expect(rows.map(({ id, expected, got, verdict }) => [id, expected, got, verdict])).toEqual([
    ['x: base, massKg', 1, 2, 'DIFFERS'],
    ['x: base, fails', 0, 'nothing', 'DIFFERS'],
    ['x: base, new', 'nothing', 'y', 'DIFFERS'],
  ]);
});

it('a sample that is none is refused', async () =>
  expect(await ran(['selfcheck', '--samples', 'huge'])).toMatchObject({ code: 2, err: expect.stringMatching(/There is no sample “huge”/) })); // prettier-ignore
