import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { sampleRows, selfcheckOf } from '../../core/selfcheck/selfcheck.ts';
import { verificationReport } from '../../core/selfcheck/verification-report.ts';
import { readPdf } from '../host/read-pdf.ts';
import { inFolder } from './in-folder.ts';
import { ran } from './ran.ts';

it('every comparison of the small sample comes out as expected, with source, tolerance and verdict in each row', async () => {
  const { code, out } = await ran(['selfcheck', '--samples', 'small', '--json']);
  const { checks, withoutOutsideValue } = JSON.parse(out) as ReturnType<typeof selfcheckOf>;
  expect(checks.filter(({ verdict }) => verdict !== 'as expected')).toEqual([]);
  expect(code).toBe(0);
  for (const kind of ['published', 'traced', 'sample']) expect(checks.filter((row) => row.kind === kind).length).toBeGreaterThan(20); // prettier-ignore
  for (const { id, source } of checks) expect([id, source].every((text) => text.length > 3)).toBe(true);
  // What it cannot show is said.
  for (const { id, reason } of withoutOutsideValue) expect(reason.length, id).toBeGreaterThan(20);
});

it('writes the same as a report that names each source, what was not compared, and the limits', () =>
  inFolder(async (folder) => {
    const pdf = join(folder, 'report.pdf');
    const { code, out } = await ran(['selfcheck', '--samples', 'none', '--json', '--pdf', pdf]);
    expect(code).toBe(0);
    const { checks, withoutOutsideValue } = JSON.parse(out) as ReturnType<typeof selfcheckOf>;
    const { pages, check } = readPdf(await readFile(pdf));
    const text = pages.join('\n').replace(/\s+/g, ' ');
    expect(check).not.toMatch(/warning/i);
    expect(text).toContain(`All ${checks.length} comparisons came out as expected`);
    for (const { source } of checks) expect(text.replace(/\W/g, '')).toContain(source.slice(0, 8).replace(/\W/g, ''));
    expect(text).toContain(`${withoutOutsideValue.length} of `);
    expect(text).toContain('Not run: no sample was named');
    expect(text).toContain('Limits of validation');
  }));

it('a report of a copy that differs says so on its first page, and which value', () => {
  const row = { kind: 'published', family: 'Bolts', unit: 'kN', id: 'bolt', source: 'EN 1993-1-8', expected: 1, got: 2, tolerance: 0, verdict: 'DIFFERS' } as const; // prettier-ignore
  const note = verificationReport(selfcheckOf([row]), { date: '2026-03-14', machine: 'here' });
  expect(note.stamp).toBe('DIFFERS');
  expect(JSON.stringify(note.sections[0])).toMatch(/1 of 1 comparisons differ.*"bolt"/);
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
