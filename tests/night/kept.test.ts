import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { minimal } from '../../build/night/minimal.ts';
import { outcomeOf, type KeptCase } from '../../build/night/readers.ts';

const folder = 'tests/night/kept';

it.each(readdirSync(folder))('%s, on which a reader once broke, is refused in words or read', (file) => {
  const { reader, text } = JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')) as KeptCase;
  expect(outcomeOf(reader, text)).toBeTypeOf('string');
});

it('a failing text is kept without anything that can be left out', () => {
  const text = `some words, ${'x'.repeat(1000)} and [ somewhere ] a pair, ${'y'.repeat(333)}`;
  let asked = 0;
  const fails = (shorter: string): boolean => {
    asked += 1;
    return /\[.*\]/s.test(shorter);
  };
  expect(minimal(text, fails)).toBe('[]');
  expect(asked).toBeLessThan(text.length);
});
