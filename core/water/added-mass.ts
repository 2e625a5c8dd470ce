import { refusal } from '../refusal.ts';
import type { Image } from './lattice/doublet-kernel.ts';
import { outlineOf, type Plan } from './lattice/plan.ts';
import { plateLattice, plateProblem } from './lattice/plate-lattice.ts';
import { solvePair } from './lattice/solve-pair.ts';
import { wellPlaced } from './lattice/well-placed.ts';

/** A number found on finer and finer lattices. */
export interface Extrapolated {
  readonly value: number;
  /** Estimate of what is still wrong with it, as a part of the value. */
  readonly error: number;
  /** As found on each lattice, coarse to fine. */
  readonly found: readonly number[];
}

/** Added mass of a plate in potential flow at zero amplitude, of heave, roll (about x) and pitch (about y), through the outline's centre. */
export interface AddedMass {
  /** kg. */
  readonly heave: Extrapolated;
  /** Of the solid plate of the same outline and edge height, kg. */
  readonly solid: Extrapolated;
  readonly ratio: Extrapolated;
  /** kg·m². */
  readonly roll: Extrapolated;
  readonly pitch: Extrapolated;
  /** Heave with roll and with pitch, kg·m; roll with pitch, kg·m². Zero for a plan with that symmetry. */
  readonly heaveRoll: number;
  readonly heavePitch: number;
  readonly rollPitch: number;
  /** Cells along the longer side of each lattice. */
  readonly cells: readonly number[];
  readonly iterations: number;
  readonly residual: number;
}

/**
 * Added mass of a plan by cells of constant doublet strength on three lattices, extrapolated in h² (edges are placed to second
 * order, see `cover`); the error is the change between the last two extrapolations, and not less than 0.1 %. density in kg/m³.
 * n: cells along the longer side of the finest, about (see `wellPlaced`); by default such that the narrowest bar has six, 80 at least and 200 at most.
 * Refuses a plan without area.
 */
export function addedMass(
  plan: Plan,
  density: number,
  { n = cellsFor(plan), images = [] }: { n?: number; images?: readonly Image[] } = {},
): AddedMass {
  const outline = outlineOf(plan);
  if (!(outline.x1 > outline.x0 && outline.y1 > outline.y0))
    throw refusal({ what: 'The plan has no area', mend: 'Give rectangles [x0, y0, x1, y1] in metres with x0 < x1 and y0 < y1.' }); // prettier-ignore
  const solid: Plan = { rectangles: [outline], holes: [], thickness: plan.thickness };
  const [xc, yc] = [(outline.x0 + outline.x1) / 2, (outline.y0 + outline.y1) / 2];
  const cells = [n / 2, n / Math.SQRT2, n].map((count) => wellPlaced(plan, Math.round(count)));
  const rounds = cells.map((count) => {
    const { frame, lattice } = plateLattice(plan, count, images);
    const ours = plateProblem(plan, frame);
    const full = plateProblem(solid, frame);
    const along = (of: (x: number, y: number) => number): Float64Array =>
      ours.grip.map((part, k) => part * of(frame.x + ((k % frame.nx) + 0.5) * frame.h - xc, frame.y + (Math.floor(k / frame.nx) + 0.5) * frame.h - yc)); // prettier-ignore
    const [roll, pitch] = [along((_x, y) => y), along((x) => -x)];
    const [heaved, solidHeaved] = solvePair(lattice, [
      { D: ours.D, v: ours.grip },
      { D: full.D, v: full.grip },
    ]);
    const [rolled, pitched] = solvePair(lattice, [
      { D: ours.D, v: roll },
      { D: ours.D, v: pitch },
    ]);
    const sum = (a: Float64Array, b: Float64Array): number => {
      let total = 0;
      for (let k = 0; k < a.length; k++) total += a[k]! * b[k]!;
      return density * frame.h ** 2 * total;
    };
    return {
      heave: sum(ours.grip, heaved.mu),
      solid: sum(full.grip, solidHeaved.mu),
      roll: sum(roll, rolled.mu),
      pitch: sum(pitch, pitched.mu),
      heaveRoll: sum(roll, heaved.mu),
      heavePitch: sum(pitch, heaved.mu),
      rollPitch: sum(roll, pitched.mu),
      iterations: heaved.iterations + rolled.iterations,
      residual: Math.max(heaved.residual, solidHeaved.residual, rolled.residual, pitched.residual),
    };
  });
  const of = (read: (round: (typeof rounds)[number]) => number): Extrapolated => extrapolated(rounds.map(read), cells);
  return {
    heave: of((r) => r.heave),
    solid: of((r) => r.solid),
    ratio: of((r) => r.heave / r.solid),
    roll: of((r) => r.roll),
    pitch: of((r) => r.pitch),
    heaveRoll: coupling(of((r) => r.heaveRoll).value, of((r) => r.heave).value, of((r) => r.roll).value),
    heavePitch: coupling(of((r) => r.heavePitch).value, of((r) => r.heave).value, of((r) => r.pitch).value),
    rollPitch: coupling(of((r) => r.rollPitch).value, of((r) => r.roll).value, of((r) => r.pitch).value),
    cells,
    iterations: rounds.reduce((sum, { iterations }) => sum + iterations, 0),
    residual: Math.max(...rounds.map(({ residual }) => residual)),
  };
}

/** Below this part of the two masses that it couples, a coupling is what the equations' tolerance leaves of none. */
const noCoupling = 1e-7;
const coupling = (value: number, a: number, b: number): number => (Math.abs(value) < noCoupling * Math.sqrt(a * b) ? 0 : value); // prettier-ignore

/** The limit of numbers found with n cells, if what is missing falls as 1/n². */
export function extrapolated(found: readonly number[], cells: readonly number[]): Extrapolated {
  const limit = (a: number, b: number): number => {
    const [u, v] = [cells[a]! ** 2, cells[b]! ** 2];
    return (found[b]! * v - found[a]! * u) / (v - u);
  };
  const last = found.length - 1;
  const value = limit(last - 1, last);
  const before = limit(last - 2, last - 1);
  return { value, error: Math.max(1e-3, value === 0 ? 0 : Math.abs(value - before) / Math.abs(value)), found };
}

/** Cells along the longer side such that the narrowest rectangle has six. */
export function cellsFor(plan: Plan): number {
  const { x0, x1, y0, y1 } = outlineOf(plan);
  const narrow = Math.min(...plan.rectangles.map((r) => Math.min(r.x1 - r.x0, r.y1 - r.y0)));
  return Math.min(200, Math.max(80, Math.ceil((6 * Math.max(x1 - x0, y1 - y0)) / narrow)));
}
