import type { Spectrum } from './spectrum.ts';

/** Periods between which nine tenths of a sea's energy lie, s. near: the peak's frequency, rad/s. */
export function waveBand(S: Spectrum, near: number): { readonly shortest: number; readonly longest: number } {
  const steps = 2000;
  const [a, b] = [Math.log(near / 15), Math.log(near * 100)];
  const omegas = Array.from({ length: steps + 1 }, (_, i) => Math.exp(a + (i * (b - a)) / steps));
  let sum = 0;
  const upTo = omegas.map((omega) => (sum += omega * S(omega)));
  const at = (part: number): number => (2 * Math.PI) / omegas[upTo.findIndex((energy) => energy >= part * sum)]!;
  return { shortest: at(0.95), longest: at(0.05) };
}
