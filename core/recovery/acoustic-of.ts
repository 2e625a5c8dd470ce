import type { PlateDocument } from '../document/schema.ts';
import { acousticRange, signalExcess, transmissionLoss, windNoise, type AcousticLink } from './acoustic-budget.ts';
import { shortAbsorption, soundAbsorption, type SoundWater } from './sound-absorption.ts';

/** The command on its way to the release: levels in dB, ranges in m. */
export interface AcousticReport {
  readonly link: AcousticLink;
  readonly loss: number;
  readonly excess: number;
  readonly range: number;
  /** dB/m by the other formula. */
  readonly shortAbsorption: number;
}

/** The acoustic budget of a document, or what is missing for it; null where no command is given by sound. */
export function acousticOf({
  recovery,
  water,
}: Pick<PlateDocument, 'recovery' | 'water'>): AcousticReport | { readonly missing: string } | null {
  const acoustic = recovery?.acoustic;
  if (!acoustic) return null;
  if (water.salinity === undefined || !water.temperature)
    return { missing: 'the absorption of sound: it needs the water’s salinity and temperature, not its density' };
  const sea: SoundWater = { temperature: water.temperature.si - 273.15, salinity: water.salinity, pH: acoustic.pH, depth: water.depth.si }; // prettier-ignore
  const noise = acoustic.noise ?? (acoustic.wind ? windNoise(acoustic.frequency, acoustic.wind.si) : undefined);
  if (noise === undefined) return { missing: 'the noise: give its level, or the wind over the sea' };
  if (!(water.salinity > 0)) return { missing: 'the absorption in fresh water: the formula is for sea water' };
  const { sourceLevel, bandwidth, threshold, frequency } = acoustic;
  const link: AcousticLink = { sourceLevel, bandwidth, threshold, noise, absorption: soundAbsorption(frequency, sea) };
  return {
    link,
    loss: transmissionLoss(acoustic.range.si, link.absorption),
    excess: signalExcess(link, acoustic.range.si),
    range: acousticRange(link),
    shortAbsorption: shortAbsorption(frequency, sea),
  };
}
