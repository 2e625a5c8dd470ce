import { requirePositive } from '../refusal.ts';

/** Sea water that sound runs through. */
export interface SoundWater {
  /** °C. */
  readonly temperature: number;
  /** Practical salinity. */
  readonly salinity: number;
  readonly pH: number;
  /** m. */
  readonly depth: number;
}

/**
 * Absorption of sound in sea water, dB/m, at f Hz: boric acid, magnesium sulphate, water itself,
 *   α = A1 f1 f² / (f1² + f²) + A2 P2 f2 f² / (f2² + f²) + A3 P3 f²   in dB/km, f in kHz.
 * Range: 200 Hz to 1 MHz, ocean water. Source: Francois & Garrison, J. Acoust. Soc. Am. 72 (1982) 896 and 1879.
 */
export function soundAbsorption(frequency: number, { temperature: T, salinity: S, pH, depth: z }: SoundWater): number {
  requirePositive({ frequency, salinity: S });
  const f = frequency / 1000;
  const c = 1412 + 3.21 * T + 1.19 * S + 0.0167 * z;
  const kelvin = T + 273;
  const A1 = (8.86 / c) * 10 ** (0.78 * pH - 5);
  const f1 = 2.8 * Math.sqrt(S / 35) * 10 ** (4 - 1245 / kelvin);
  const A2 = ((21.44 * S) / c) * (1 + 0.025 * T);
  const P2 = 1 - 1.37e-4 * z + 6.2e-9 * z ** 2;
  const f2 = (8.17 * 10 ** (8 - 1990 / kelvin)) / (1 + 0.0018 * (S - 35));
  const P3 = 1 - 3.83e-5 * z + 4.9e-10 * z ** 2;
  const A3 = T <= 20
    ? 4.937e-4 - 2.59e-5 * T + 9.11e-7 * T ** 2 - 1.5e-8 * T ** 3
    : 3.964e-4 - 1.146e-5 * T + 1.45e-7 * T ** 2 - 6.5e-10 * T ** 3; // prettier-ignore
  const perKm =
    (A1 * f1 * f ** 2) / (f1 ** 2 + f ** 2) + (A2 * P2 * f2 * f ** 2) / (f2 ** 2 + f ** 2) + A3 * P3 * f ** 2;
  return perKm / 1000;
}

/**
 * The same by a shorter formula of the same measurements, dB/m; depth in m. Within a tenth of the other in ocean water.
 * Source: Ainslie & McColm, J. Acoust. Soc. Am. 103 (1998) 1671.
 */
export function shortAbsorption(frequency: number, { temperature: T, salinity: S, pH, depth }: SoundWater): number {
  const f = frequency / 1000;
  const z = depth / 1000;
  const f1 = 0.78 * Math.sqrt(S / 35) * Math.exp(T / 26);
  const f2 = 42 * Math.exp(T / 17);
  const perKm =
    (0.106 * f1 * f ** 2 * Math.exp((pH - 8) / 0.56)) / (f ** 2 + f1 ** 2) +
    (0.52 * (1 + T / 43) * (S / 35) * f2 * f ** 2 * Math.exp(-z / 6)) / (f ** 2 + f2 ** 2) +
    0.00049 * f ** 2 * Math.exp(-(T / 27 + z / 17));
  return perKm / 1000;
}
