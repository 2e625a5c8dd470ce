import { expect, it } from 'vitest';
import { acousticRange, signalExcess, transmissionLoss, windNoise } from '../../core/recovery/acoustic-budget.ts';
import { shortAbsorption, soundAbsorption } from '../../core/recovery/sound-absorption.ts';

const water = { temperature: 0, salinity: 35, pH: 6, depth: 0 };

it('absorbs at 50 kHz, 0 °C, S 35, pH 6 the 13.966 dB/km that a public package’s manual prints for Francois & Garrison', () =>
  // It takes 273.15 for the zero of temperature where the paper has 273: 0.2 % here.
  expect((1000 * soundAbsorption(50_000, water)) / 13.96602).toBeCloseTo(1, 2));

it('absorbs at 10 kHz, 5 °C under 5000 m about what Fisher & Simmons (1977, table IV) print, 0.52 dB/km, within the tenth by which formulas differ', () =>
  expect(1000 * soundAbsorption(10_000, { temperature: 5, salinity: 35, pH: 8, depth: 4900 })).toBeGreaterThan(
    0.9 * 0.52,
  ));

it('agrees with the shorter formula of Ainslie & McColm (1998) within a tenth over the ocean', () => {
  for (const temperature of [0, 5, 10, 20])
    for (const salinity of [30, 35])
      for (const frequency of [5_000, 11_000, 30_000, 100_000]) {
        const sea = { temperature, salinity, pH: 8, depth: 50 };
        const ratio = shortAbsorption(frequency, sea) / soundAbsorption(frequency, sea);
        expect(Math.abs(ratio - 1), `${frequency} Hz, ${temperature} °C, S ${salinity}`).toBeLessThan(0.12);
      }
});

it('loses 60 dB over 1000 m by spreading alone, and a dB for each kilometre of 0.001 dB/m (definition)', () => {
  expect(transmissionLoss(1000, 0)).toBeCloseTo(60, 12);
  expect(transmissionLoss(1000, 0.001)).toBeCloseTo(61, 12);
});

it('has nothing left at its range, and says zero where even a metre is too far', () => {
  const link = { sourceLevel: 185, noise: 60, bandwidth: 100, threshold: 10, absorption: 0.001 };
  expect(signalExcess(link, acousticRange(link))).toBeCloseTo(0, 5);
  expect(acousticRange({ ...link, sourceLevel: 80 })).toBe(0);
});

it('falls by 17 dB a decade and rises with the wind, as the curves of Wenz do (1962, from memory: 5 to 6 dB an octave)', () => {
  expect(windNoise(10_000, 10) - windNoise(20_000, 10)).toBeGreaterThan(5);
  expect(windNoise(10_000, 10) - windNoise(20_000, 10)).toBeLessThan(6.1);
  expect(windNoise(10_000, 15)).toBeGreaterThan(windNoise(10_000, 5));
});
