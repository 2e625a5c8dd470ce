import { requirePositive } from '../refusal.ts';

/** Levels in dB re 1 µPa (at 1 m for the source), Hz, m, dB/m. */
export interface AcousticLink {
  readonly sourceLevel: number;
  /** In a hertz. */
  readonly noise: number;
  readonly bandwidth: number;
  readonly threshold: number;
  readonly absorption: number;
}

/** Loss on the way, dB: spreading over a sphere and absorption, 20 log10 r + α r. Source: Urick, Principles of Underwater Sound (from memory). */
export function transmissionLoss(range: number, absorption: number): number {
  requirePositive({ range });
  return 20 * Math.log10(range) + absorption * range;
}

/** What is left over the threshold of detection, dB: SL − TL − (N + 10 log10 B) − DT. Negative: not heard. */
export const signalExcess = (
  { sourceLevel, noise, bandwidth, threshold, absorption }: AcousticLink,
  range: number,
): number => sourceLevel - transmissionLoss(range, absorption) - (noise + 10 * Math.log10(bandwidth)) - threshold;

/** Range, m, at which nothing is left over: by halving, to a part in 1e9. Zero where even a metre is too far. */
export function acousticRange(link: AcousticLink): number {
  if (signalExcess(link, 1) <= 0) return 0;
  let [near, far] = [1, 2];
  while (signalExcess(link, far) > 0 && far < 1e9) [near, far] = [far, 2 * far];
  for (let n = 0; n < 60 && far - near > 1e-9 * far; n++) {
    const middle = (near + far) / 2;
    if (signalExcess(link, middle) > 0) near = middle;
    else far = middle;
  }
  return near;
}

/**
 * Noise of the wind over the sea in a hertz, dB re 1 µPa: 50 + 7.5 √w + 20 log10 f − 40 log10(f + 0.4), w in m/s and f in kHz.
 * For some hundred hertz to 100 kHz, away from ships and breakers. Source: fit to the curves of Wenz (1962) by Coates (1990), from memory.
 */
export function windNoise(frequency: number, wind: number): number {
  requirePositive({ frequency });
  const f = frequency / 1000;
  return 50 + 7.5 * Math.sqrt(wind) + 20 * Math.log10(f) - 40 * Math.log10(f + 0.4);
}
