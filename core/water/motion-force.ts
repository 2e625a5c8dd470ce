import { requirePositive } from '../refusal.ts';

/** Force of the water on a plate that moves as a sine. */
export interface MotionForce {
  /** Amplitudes of inertia and of drag, and the peak of both together, N. */
  readonly inertia: number;
  readonly drag: number;
  readonly peak: number;
  /** By how much the peak follows that of inertia, rad. */
  readonly phase: number;
}

/**
 * x = a sin ωt: F = A ω² a sin ωt − ρ Cd S (ω a)² |cos ωt| cos ωt / 2. mass A in kg, CdS in m², density in kg/m³, SI.
 * The peak: at the end of the stroke while 2 drag ≤ inertia, else drag + inertia² / (4 drag).
 * Source: Morison's sum for a body moved in still water (Sarpkaya and Isaacson, 1981); peak derived here.
 */
export function forceOfMotion(
  mass: number,
  CdS: number,
  density: number,
  amplitude: number,
  period: number,
): MotionForce {
  requirePositive({ mass, amplitude, period });
  const omega = (2 * Math.PI) / period;
  const inertia = mass * omega ** 2 * amplitude;
  const drag = 0.5 * density * CdS * (omega * amplitude) ** 2;
  // sin θ I + cos² θ D over the quarter in which both press the same way: sin θ = I / 2D
  const s = drag > 0 ? inertia / (2 * drag) : Infinity;
  return s >= 1
    ? { inertia, drag, peak: inertia, phase: 0 }
    : { inertia, drag, peak: drag + inertia ** 2 / (4 * drag), phase: Math.PI / 2 - Math.asin(s) };
}

/**
 * Force for a recorded motion x(t), m, at equal steps, s: −A ẍ − ρ Cd S |ẋ| ẋ / 2, derivatives by central differences, the two
 * ends left out. Gives N for each inner sample. Refuses fewer than 3 samples.
 */
export function forceOfRecord(x: Float64Array, step: number, mass: number, CdS: number, density: number): Float64Array {
  requirePositive({ step, 'number of samples above 2': x.length - 2 });
  const force = new Float64Array(x.length - 2);
  for (let i = 0; i < force.length; i++) {
    const v = (x[i + 2]! - x[i]!) / (2 * step);
    const a = (x[i + 2]! - 2 * x[i + 1]! + x[i]!) / step ** 2;
    force[i] = -mass * a - 0.5 * density * CdS * Math.abs(v) * v;
  }
  return force;
}
