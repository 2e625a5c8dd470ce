import type { Motion, TubeFrame } from './tube-frame.ts';
import { addLoad, addSparse, resultant, type Resultant, type SparseLoad } from './tube-lines.ts';

/** A load on the cells with the frame's motion under it (nothing holds it: inertia balances what is not balanced). Both
 *  are linear, so sums of loads cost no solution of their own. */
export interface Loaded {
  readonly load: Float64Array;
  readonly motion: Motion;
}

/** A load on few cells; its motion is solved when it is first asked for. */
export interface Pattern {
  readonly load: SparseLoad;
  readonly motion: () => Motion;
}

export const loaded = (frame: TubeFrame, load: Float64Array): Loaded => ({ load, motion: frame.motion(load) });

export const copyOf = ({ load, motion }: Loaded): Loaded => ({
  load: Float64Array.from(load),
  motion: Float64Array.from(motion),
});

export function addLoaded(into: Loaded, other: Loaded, scale: number): void {
  addLoad(into.load, other.load, scale);
  addLoad(into.motion, other.motion, scale);
}

export function addPattern(into: Loaded, { load, motion }: Pattern, scale: number): void {
  addSparse(into.load, load, scale);
  addLoad(into.motion, motion(), scale);
}

/** A sum of loads, each times a factor. */
export function sumOf(first: Loaded, terms: readonly (readonly [Loaded, number])[]): Loaded {
  const sum = { load: new Float64Array(first.load.length), motion: new Float64Array(first.motion.length) };
  for (const [term, scale] of terms) addLoaded(sum, term, scale);
  return sum;
}

/** Unit loads of inertia (see `massLoads`) in the parts that make up a resultant. */
export type Spread = readonly [Loaded, Loaded, Loaded];
export const spreadOf = (spread: Spread, of: Resultant): (readonly [Loaded, number])[] =>
  spread.map((unit, i) => [unit, of[i]!] as const);

export const forceOf = (frame: TubeFrame, { load }: Loaded): number => resultant(frame.lines, load)[0];
