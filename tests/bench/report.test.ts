import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { table, withTable } from '../../build/bench/report.ts';

const measure = { name: 'a | b', ratio: 3.456, goal: 3, met: false };

test('a missed goal and a part that stopped are in the table, each on its own line', () => {
  const lines = table([
    { part: 'checks', seconds: 1, measures: [measure, { ...measure, ratio: 2, met: true }] },
    { part: 'window', seconds: 2, measures: [], stopped: 'no browser' },
  ]).split('\n');
  expect(lines.slice(2)).toEqual([
    '| checks | a \\| b | 3.46 | 3 | **missed** |',
    '| checks | a \\| b | 2.00 | 3 | met |',
    '| window | no browser | | | **stopped** |',
  ]);
});

test('README has the place for the table, and the table changes nothing else', async () => {
  const readme = await readFile('README.md', 'utf8');
  const once = withTable(readme, 'the table');
  expect(once).toContain('\n\nthe table\n\n');
  expect(withTable(once, 'another')).toBe(withTable(readme, 'another'));
  expect(() => withTable('nothing', 'the table')).toThrow('no place');
});
