import { expect, it } from 'vitest';
import { killPoints } from './support/kill-points.ts';

it('finds every acknowledged edit after the program was killed while it wrote, at 40 seeded points', async () => {
  const { acknowledged, inWrite, writtenUnanswered, failures } = await killPoints(40, 20261126);
  console.info(
    `${acknowledged} acknowledged edits, ${inWrite} points in a write, ${writtenUnanswered} of them written`,
  );
  expect(failures).toEqual([]);
  expect(acknowledged).toBeGreaterThan(40);
  // Kills that all fall between two writes would show nothing.
  expect(inWrite).toBeGreaterThanOrEqual(20);
});
