import type { Bolt, BoltClass } from '../../catalogue/rows.ts';
import type { BoltedFixing } from '../../document/schema.ts';
import { steel } from './tie-stiffness.ts';

/** Tension in each bolt before any load, N: as stated; by the least that the stated torque leaves, (1 - c) T/(k_high d); zero
 *  where neither is stated. */
export function boltPreload({ preload, tightening }: BoltedFixing, bolt: Bolt, { ultimate }: BoltClass): number {
  if (preload) return preload.force?.si ?? preload.ofStrength! * ultimate * bolt.tensileArea;
  if (!tightening) return 0;
  const { torque, k, coatingLoss } = tightening;
  return ((1 - (coatingLoss?.value ?? 0)) * torque.si) / (k.high * bolt.diameter);
}

/**
 * Stiffness of what a bolt clamps, N/m: cones of half angle 30° from washers of 1.5 d through the grip l,
 *    k_m = 0.5774 π E d / (2 ln(5 (0.5774 l + 0.5 d)/(0.5774 l + 2.5 d)))
 * Source: J. E. Shigley, Mechanical Engineering Design, members of one material, washer face 1.5 d; from memory. Parts of two
 * materials: E as of springs in series. A section that a through bolt spans is taken as solid: its sleeve stands for it.
 */
export function clampedStiffness(grip: number, diameter: number, E: number): number {
  const { PI: π, log } = Math;
  const [a, l, d] = [0.5774, grip, diameter];
  return (a * π * E * d) / (2 * log((5 * (a * l + 0.5 * d)) / (a * l + 2.5 * d)));
}

/** Part of a load on a preloaded joint that its bolt takes, until the faces part: k_b/(k_b + k_m). */
export const boltShare = (grip: number, bolt: Bolt, E: number): number => {
  const k = (steel.E * bolt.tensileArea) / (grip + (bolt.headHeight + bolt.nutHeight) / 2);
  return k / (k + clampedStiffness(grip, bolt.diameter, E));
};
