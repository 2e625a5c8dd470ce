import { expect, it } from 'vitest';
import { fuzzReaders } from '../../build/night/readers.ts';

it('5,000 broken registers, records and PDFs each: refused in words or read, nothing thrown, no changed register taken for whole', () => {
  const { cases, refused, failures } = fuzzReaders(5_000, 20260314);
  expect(failures).toEqual([]);
  expect(cases).toBe(20_000);
  expect(refused).toBeGreaterThan(5_000);
});
