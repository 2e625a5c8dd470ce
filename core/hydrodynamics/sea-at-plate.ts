import type { PlateDocument } from '../document/schema.ts';
import { localGravity } from '../water/sea-water.ts';
import { decay, waveMotion, waveNumber, type WaveMotion } from '../water/waves/dispersion.ts';
import { seaSpectrum } from '../water/waves/sea-spectrum.ts';
import { moment } from '../water/waves/spectrum.ts';

/** What is left of a sea at the plate's depth; linear waves, nothing in their way. SI. */
export interface SeaAtPlate {
  /** A wave of the peak period and of half the significant height: its motion at the plate. */
  readonly peak: WaveMotion;
  /** Four standard deviations of the water's rise there (as a height), and of its vertical velocity half of that (as an amplitude). */
  readonly significantHeight: number;
  readonly significantVelocity: number;
  /** Depth below the surface and the rise there over that at the surface, for the peak period. */
  readonly decay: readonly (readonly [depth: number, part: number])[];
}

/** m0 and m2 of the rise at depth: ∫ ωⁿ S (sinh k(z+d) / sinh kd)² dω. Null where the document states no sea. */
export function seaAtPlate(document: Pick<PlateDocument, 'water' | 'hydrodynamics'>): SeaAtPlate | null {
  const { water, hydrodynamics } = document;
  const sea = hydrodynamics?.sea;
  if (!sea) return null;
  const [gravity, bed, z] = [localGravity(document), hydrodynamics?.bed?.si ?? Infinity, -water.depth.si];
  const [Hs, Tp] = [sea.significantHeight.si, sea.peakPeriod.si];
  const omega = (2 * Math.PI) / Tp;
  const S = seaSpectrum(sea);
  const left = (at: number): number => decay(waveNumber(at, bed, gravity), bed, z) ** 2;
  const k = waveNumber(omega, bed, gravity);
  const deepest = Math.min(bed, Math.max(1.5 * water.depth.si, Math.PI / k));
  return {
    peak: waveMotion(Hs / 2, omega, bed, z, gravity),
    significantHeight: 4 * Math.sqrt(moment(S, 0, omega, left)),
    significantVelocity: 2 * Math.sqrt(moment(S, 2, omega, left)),
    decay: Array.from({ length: 41 }, (_, i) => [(deepest * i) / 40, decay(k, bed, -(deepest * i) / 40)] as const),
  };
}
