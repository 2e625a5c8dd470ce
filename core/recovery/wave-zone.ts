import { requirePositive } from '../refusal.ts';
import { g } from '../water/sea-water.ts';

/** Characteristic motion of the water that the simplified method takes, m/s and m/s². */
export interface WaveMotionAt {
  readonly speed: number;
  readonly acceleration: number;
}

/**
 * Water at a depth d below the surface in a sea of significant height Hs and mean period Tz: amplitude 0.9 Hs, deep water,
 *   v = ζ (2π/T) e^(−4π² d / (T² g)),  a = ζ (2π/T)² e^(…).
 * Source: DNV-RP-N103, simplified method, by period (from memory).
 */
export function waveAtDepth(Hs: number, Tz: number, depth: number): WaveMotionAt {
  requirePositive({ Tz });
  const omega = (2 * Math.PI) / Tz;
  const left = 0.9 * Hs * Math.exp((-(omega ** 2) * depth) / g);
  return { speed: left * omega, acceleration: left * omega ** 2 };
}

/** The same whatever the period: v = 0.30 √(π g Hs) e^(−0.35 d/Hs), a = 0.10 π g e^(−0.35 d/Hs). Source: as above (from memory). */
export function waveOfAnyPeriod(Hs: number, depth: number): WaveMotionAt {
  requirePositive({ Hs });
  const left = Math.exp((-0.35 * depth) / Hs);
  return { speed: 0.3 * Math.sqrt(Math.PI * g * Hs) * left, acceleration: 0.1 * Math.PI * g * left };
}

/** Shortest mean period that a sea of this height can have, s: 8.898 √(Hs/g). Source: DNV-RP-H103, 4.3.2 (a steepness of 1/7 at 1.8 Hs). */
export const shortestPeriod = (Hs: number): number => 8.898 * Math.sqrt(Hs / g);

/** Characteristic hydrodynamic force, N: √((F_D + F_slam)² + (F_M − F_ρ)²). Source: DNV-RP-N103, 4.3 (from memory). */
export const hydrodynamicForce = (drag: number, slam: number, mass: number, buoyancy: number): number =>
  Math.hypot(drag + slam, mass - buoyancy);

/** Inertia of the load on the line and of the water that it holds, N: √([(M + A) a_ct]² + [(ρV + A) a_w]²). Source: as above. */
export const massForce = (moving: number, tip: number, carried: number, water: number): number =>
  Math.hypot(moving * tip, carried * water);

/** Slam, N: ½ ρ C_s A v². Source: as above. */
export const slamForce = (density: number, Cs: number, area: number, speed: number): number =>
  0.5 * density * Cs * area * speed ** 2;

/** Drag, N: ½ ρ C_D A v². */
export const dragForce = (density: number, Cd: number, area: number, speed: number): number =>
  0.5 * density * Cd * area * speed ** 2;

/**
 * Slam of a plate that enters tilted, edge first, N: its added mass at the surface, half of that in deep water, grows from nothing to
 * all over the height b sin θ, F = v² (A/2) / (b sin θ); never more than that of the flat plate.
 * Source: von Kármán (1929), momentum of an entering body; derived here for a plate whose added mass grows in step with its depth.
 */
export function tiltedSlam(flat: number, addedMass: number, breadth: number, tilt: number, speed: number): number {
  return Math.min(flat, (speed ** 2 * addedMass) / (2 * breadth * Math.sin(tilt)));
}

/** Pull of a line that comes taut with a jerk, N: v √(K (M + A)). Source: as above. */
export const snapForce = (speed: number, stiffness: number, moving: number): number =>
  speed * Math.sqrt(stiffness * moving);

/** Speed at which drag balances a weight in water, m/s: √(2 W / (ρ C_D A)). Zero for what does not sink. */
export const sinkingSpeed = (weight: number, density: number, Cd: number, area: number): number =>
  Math.sqrt((2 * Math.max(0, weight)) / (density * Cd * area));

/** Natural period on the hoist, s: 2π √((M + A + m L / 3) / K). Source: as above. */
export const hoistPeriod = (moving: number, lineMass: number, stiffness: number): number =>
  2 * Math.PI * Math.sqrt((moving + lineMass / 3) / stiffness);
