import { requirePositive } from '../refusal.ts';

const { ceil } = Math;

/** What a fillet weld takes to make. SI: m, m³, kg, s, J/m. */
export interface WeldWork {
  readonly length: number;
  /** Volume and mass of the metal laid down, with what stands over the flat face of the fillet. */
  readonly volume: number;
  readonly mass: number;
  readonly passes: number;
  /** Time with the arc burning, and in all. */
  readonly arcTime: number;
  readonly time: number;
  /** Heat of one pass, arc efficiency taken. */
  readonly heatInput: number;
}

/** How it is welded; defaults are common practice for semi-automatic welding in a shop, no source. */
export interface WeldProcess {
  /** Metal laid down in a second of arc, kg/s. */
  readonly deposition: number;
  /** Part of the time in which the arc burns. */
  readonly duty: number;
  /** Largest leg laid in one pass, m. */
  readonly legOfPass: number;
  /** Volts times amperes, W, and the part of it that goes into the work. */
  readonly power: number;
  readonly efficiency: number;
  /** Metal over the flat face, as a part of the triangle. */
  readonly convexity: number;
  readonly density: number;
}

export const shopWelding: WeldProcess = {
  deposition: 2.5 / 3600,
  duty: 0.3,
  legOfPass: 8e-3,
  power: 25 * 220,
  efficiency: 0.8,
  convexity: 0.1,
  density: 7850,
};

/** Work of an equal-legged fillet of throat a along a length (m): section a² and what stands over it, passes by the leg
 *  √2 a, one up to the largest leg of a pass and as its square beyond; arc time = mass / deposition; heat of a pass =
 *  efficiency · power / speed, the speed being what lays its share of the section. Refuses what is not positive.
 *  Efficiency 0.8 of gas-shielded arcs: EN 1011-1, from memory. Rates: common practice, no source: state your own.
 *  Error: a tenth or two in a shop; on deck and in position the time doubles. */
export function weldWork(
  { throat, length }: { readonly throat: number; readonly length: number },
  process: WeldProcess = shopWelding,
): WeldWork {
  const { deposition, duty, legOfPass, power, efficiency, convexity, density } = process;
  requirePositive({ throat, length, deposition, duty, legOfPass, power, efficiency, density });
  const section = throat ** 2 * (1 + convexity);
  const volume = section * length;
  const mass = density * volume;
  // A leg typed in whole millimetres comes back from the throat with rounding.
  const passes = ceil(((Math.SQRT2 * throat) / legOfPass) ** 2 - 1e-9);
  const arcTime = mass / deposition;
  const speed = (deposition * passes) / (density * section);
  return { length, volume, mass, passes, arcTime, time: arcTime / duty, heatInput: (efficiency * power) / speed };
}
