import { expect, it } from 'vitest';
import { fuzzCommands, fuzzLocalServer, fuzzMessages } from '../../build/night/doors.ts';

it('12,000 messages of a hostile page: only what a call takes reaches the host, the rest is refused in words', async () => {
  const { refused, failures } = await fuzzMessages(12_000, 20260314);
  expect(failures).toEqual([]);
  expect(refused).toBeGreaterThan(6_000);
});

it('1,500 requests to the local server: nothing without the cookie, no fault of ours, words for what is refused', async () => {
  const { refused, failures } = await fuzzLocalServer(1_500, 20260314);
  expect(failures).toEqual([]);
  expect(refused).toBeGreaterThan(700);
});

it('6,500 command lines of every verb: refused in words, nothing thrown', async () => {
  const { refused, failures } = await fuzzCommands(6_500, 20260314);
  expect(failures).toEqual([]);
  expect(refused).toBe(6_500);
});
