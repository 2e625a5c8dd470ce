import type { LiftFields } from '../document/recovery-field.ts';
import { slamPressure } from '../loads/slam-pressure.ts';
import { hoistResponse } from './hoist-response.ts';
import { tipMotion } from './tip-motion.ts';
import {
  dragForce,
  hydrodynamicForce,
  massForce,
  sinkingSpeed,
  slamForce,
  snapForce,
  tiltedSlam,
  waveAtDepth,
} from './wave-zone.ts';

/** What hangs on the hook. SI. */
export interface LiftLoad {
  readonly fields: Pick<LiftFields, 'motions' | 'tip' | 'line'>;
  readonly density: number;
  /** Mass of the load, water that moves with it inside, its displaced volume, and the hoist line's mass. */
  readonly mass: number;
  readonly entrained: number;
  readonly volume: number;
  readonly lineMass: number;
  readonly addedMass: number;
  readonly area: number;
  /** Shorter side of the outline. */
  readonly breadth: number;
  readonly dragCoefficient: number;
  readonly slamCoefficient: number;
}

/** Significant height, m, and mean zero-crossing period, s. */
export interface Sea {
  readonly Hs: number;
  readonly Tz: number;
}

/** Forces of the water on the load in the splash zone, N. */
export interface SplashForces {
  readonly drag: number;
  readonly slam: number;
  readonly inertia: number;
  /** The larger of touching the water (slam) and just under it (drag and inertia). */
  readonly hydrodynamic: number;
  /** Of the load against the water, m/s, and the pressure with which a flat part of it meets the water, Pa. */
  readonly relative: number;
  readonly pressure: number;
}

/**
 * Splash zone by the simplified method: once as the underside touches (slam and the load's own inertia), once just under water (drag and
 * inertia; its volume is all under, so it does not vary). `tilt`: an edge first; 0: flat. `speed`: of the hoist, m/s.
 * Source: DNV-RP-N103, section 4 (from memory).
 */
export function splashForces(load: LiftLoad, { Hs, Tz }: Sea, speed: number, tilt: number): SplashForces {
  const { density, mass, entrained, volume, area, breadth } = load;
  const tip = tipMotion(load.fields, Hs, Tz);
  const wave = waveAtDepth(Hs, Tz, 0);
  const relative = speed + Math.hypot(tip.speed, wave.speed);
  const flat = slamForce(density, load.slamCoefficient, area, relative);
  const slam = tilt > 0 ? tiltedSlam(flat, load.addedMass, breadth, tilt, relative) : flat;
  // Hung so steeply that the crest passes before all of it is under, half of it meets the wave.
  const part = tilt > 0 && breadth * Math.sin(tilt) > Hs ? 0.5 : 1;
  const drag = part * dragForce(density, load.dragCoefficient, area, relative);
  const added = part * load.addedMass;
  const inertia = massForce(mass + entrained + added, tip.acceleration, density * volume + entrained + added, wave.acceleration); // prettier-ignore
  const touching = hydrodynamicForce(0, slam, mass * tip.acceleration, 0);
  const under = hydrodynamicForce(drag, 0, inertia, 0);
  const pressure = slamPressure({ rho: density, C_s: load.slamCoefficient, v: relative });
  return { drag, slam, inertia, hydrodynamic: Math.max(touching, under), relative, pressure };
}

/** Forces on a load deep under its hook, N: drag of the hoist's own speed, and the line's varying pull from the tip's motion. */
export function deepForces(
  load: LiftLoad,
  { Hs, Tz }: Sea,
  speed: number,
): { readonly drag: number; readonly pull: number } {
  const { pull } = hoistResponse({
    mass: load.mass + load.entrained + load.addedMass + load.lineMass / 3,
    stiffness: load.fields.line.stiffness.si,
    drag: 0.5 * load.density * load.dragCoefficient * load.area,
    amplitude: tipMotion(load.fields, Hs, Tz).rise,
    omega: (2 * Math.PI) / Tz,
  });
  return { drag: dragForce(load.density, load.dragCoefficient, load.area, speed), pull };
}

/**
 * Pull of a snap after the line went slack, N: F = v √(K (M + A)), v = v_f + C v_r; v_f the speed of sinking, v_r that between load and tip,
 * C = 1 below v_f = 0.2 v_r, cos(π (v_f/v_r − 0.2)) up to 0.7, zero beyond.
 * Source: DNV-RP-N103, 4.7 (from memory).
 */
export function snapPull(load: LiftLoad, { Hs, Tz }: Sea, weight: number, speed: number): number {
  const { density, dragCoefficient, area } = load;
  const relative = speed + Math.hypot(tipMotion(load.fields, Hs, Tz).speed, waveAtDepth(Hs, Tz, 0).speed);
  const sink = sinkingSpeed(weight, density, dragCoefficient, area);
  const ratio = sink / relative;
  const C = ratio < 0.2 ? 1 : ratio < 0.7 ? Math.cos(Math.PI * (ratio - 0.2)) : 0;
  return snapForce(sink + C * relative, load.fields.line.stiffness.si, load.mass + load.entrained + load.addedMass);
}
