import type { Complex } from './heave-system.ts';

// A handful of operations on [re, im]; a library's objects would be made and thrown away at every frequency.
export const add = ([a, b]: Complex, [c, d]: Complex): Complex => [a + c, b + d];
export const minus = ([a, b]: Complex, [c, d]: Complex): Complex => [a - c, b - d];
export const times = ([a, b]: Complex, [c, d]: Complex): Complex => [a * c - b * d, a * d + b * c];
export const divide = ([a, b]: Complex, [c, d]: Complex): Complex => {
  const size = c * c + d * d;
  return [(a * c + b * d) / size, (b * c - a * d) / size];
};
export const magnitude = ([a, b]: Complex): number => Math.hypot(a, b);
/** Time derivative of an amplitude of e^{iωt}. */
export const rate = (z: Complex, omega: number): Complex => times([0, omega], z);
/** Mean over a cycle of the product of two harmonic quantities. */
export const meanProduct = ([a, b]: Complex, [c, d]: Complex): number => (a * c + b * d) / 2;
