import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

/** Files of the window that hold code. */
const files = readdirSync('renderer', { recursive: true, encoding: 'utf8' }).filter((file) => /\.tsx?$/.test(file));

/** A label, a title or a help in words, where it is used. Names of axes are no words. */
const worded = /\b(label|help|title|caption|placeholder|aria-label)(: |=)['"`][A-Za-z]{2,}/;

it('the words of the window stand in texts.ts alone: a translation needs that file only', () => {
  expect(files).toContain('texts.ts');
  expect(worded.test(readFileSync('renderer/texts.ts', 'utf8'))).toBe(true);
  const others = files.filter((file) => file !== 'texts.ts');
  const found = others.flatMap((file) =>
    readFileSync(join('renderer', file), 'utf8')
      .split('\n')
      .flatMap((line, n) => (worded.test(line) ? [`${file}:${n + 1}: ${line.trim()}`] : [])),
  );
  expect(found).toEqual([]);
});
