import { expect, it } from 'vitest';
import { byEngine, byHand } from '../../build/bench/motion.ts';

it('an hour by the engine is, to rounding, the loop by hand that the benchmark measures it against', () => {
  const [engine, hand] = [byEngine(), byHand()];
  const largest = hand.reduce((most, z) => Math.max(most, Math.abs(z)), 0);
  expect(largest).toBeGreaterThan(0.05);
  engine.forEach((z, n) => { if (Math.abs(z - hand[n]!) > 1e-9 * largest) throw new Error(`${n}: ${z} and ${hand[n]}`); }); // prettier-ignore
});
