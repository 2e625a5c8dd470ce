import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { HarmonicMotion } from './harmonic-motion.ts';

/** Windows in a cycle over which travel is compared with the fitted motion. */
const windows = 60;
/** A window counts while the motion is this part of its fastest; it sticks under, and slips over, these parts of it. */
const [moving, sticks, slips] = [0.3, 0.2, 1.5];
/** Fewer may be chance. */
const fewest = 3;

/**
 * Stick-slip of the drive: while the fitted motion goes on, the travel stands still for two windows and more, then makes up
 * for it in a jump. One reading that lies off does neither for two windows. `t`: s, of the motion's readings.
 */
export function stickSlip(t: Float64Array, { z, residual, omega }: HarmonicMotion): number[] {
  const step = (2 * Math.PI) / omega / windows;
  const places: number[] = [];
  for (let i = 0, next = -Infinity; i < t.length; i++)
    if (t[i]! >= next) {
      places.push(i);
      next = t[i]! + step * (1 - 1e-6);
    }
  const steps = places.slice(1).map((i, p) => {
    const j = places[p]!;
    const expected = z[i]! - z[j]!;
    return { expected, found: expected + residual[i]! - residual[j]!, at: t[j]! };
  });
  const fastest = Math.max(...steps.map(({ expected }) => Math.abs(expected)));
  const jumps: number[] = [];
  let stuck = 0;
  for (const { expected, found, at } of steps) {
    const isMoving = Math.abs(expected) > moving * fastest;
    const part = found / expected;
    if (isMoving && Math.abs(part) < sticks) stuck++;
    else {
      if (isMoving && stuck >= 2 && part > slips) jumps.push(at);
      stuck = 0;
    }
  }
  return jumps;
}

/** What is said of the jumps found over all runs; nothing where they are few. */
export function stickSlipFindings(jumps: readonly number[]): Finding[] {
  if (jumps.length < fewest) return [];
  return [{ id: 'stick-slip', place: 'travel', text: `The travel sticks and jumps ${jumps.length} times, first at ${significant(jumps[0]!, 4)} s: the drive or its guide holds fast and lets go. What it does between is no motion that the fit knows.`, mend: 'Free the guide or raise the amplitude; with friction in the force, fit dry friction too.' }]; // prettier-ignore
}
