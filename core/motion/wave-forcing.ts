import { refusal } from '../refusal.ts';
import { waveMotion } from '../water/waves/dispersion.ts';
import type { HarmonicForcing } from './heave-system.ts';

/** A sea and what floats and hangs in it. SI. */
export interface WaveField {
  readonly density: number;
  readonly gravity: number;
  /** Of the sea; Infinity where it is deep. */
  readonly seaDepth: number;
  /** Of the plate below the surface. */
  readonly plateDepth: number;
  /** Area of the float's waterline and its draught; null where the plate hangs from a point that does not move. */
  readonly float: { readonly waterline: number; readonly draught: number } | null;
}

/**
 * Forcing of a wave of 1 m amplitude at omega. The float's: pressure of the undisturbed wave on its bottom,
 *   F1 = ρ g A_w (rise at the draught)  for waves long against the float (Froude-Krylov; diffraction and the float's own
 * waves are left out). The water at the plate moves as the undisturbed wave does there.
 * Refuses a plate that is not under the float and over the bed.
 */
export function waveForcing(
  { density, gravity, seaDepth, plateDepth, float }: WaveField,
  omega: number,
): HarmonicForcing {
  if (!(plateDepth > (float?.draught ?? 0) && plateDepth < seaDepth))
    throw refusal({
      what: `A plate ${plateDepth} m below the surface is not between the float and the bed`,
      where: { option: '--depth' },
      mend: 'Give a depth under the float’s draught and above the bed.',
    });
  const at = (depth: number) => waveMotion(1, omega, seaDepth, -depth, gravity);
  // elevation is the real part of e^{iωt}: velocities lead it by a quarter
  return {
    float: float ? [density * gravity * float.waterline * at(float.draught).rise, 0] : [0, 0],
    plate: [0, 0],
    water: [0, at(plateDepth).w],
  };
}
