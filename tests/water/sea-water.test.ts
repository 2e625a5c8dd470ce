import { describe, expect, it } from 'vitest';
import { eos80 } from '../../core/water/eos80.ts';
import { seaWaterDensity, waterDensityOf } from '../../core/water/sea-water.ts';
import { demoDocument } from '../geometry/demo-document.ts';

describe('density of sea water', () => {
  it.each([
    [0, 5, 0, 999.96675],
    [0, 5, 1000, 1044.12802],
    [0, 25, 0, 997.04796],
    [0, 25, 1000, 1037.90204],
    [35, 5, 0, 1027.67547],
    [35, 5, 1000, 1069.48914],
    [35, 25, 0, 1023.34306],
    [35, 25, 1000, 1062.53817],
  ])(
    'is the check value of UNESCO Technical Papers in Marine Science 44 (1983): S %d, %d °C, %d bar',
    (S, t, p, rho) => {
      expect(Math.abs(eos80(S, t, p) - rho)).toBeLessThan(1e-5);
    },
  );

  it('reads temperature as ITS-90 and turns depth into pressure', () => {
    // 1000 dbar is near 990 m; an oceanographic package's documentation prints 1030.818 for S 35, t90 13 °C, 1000 dbar.
    expect(eos80(35, 13 * 1.00024, 100)).toBeCloseTo(1030.818, 3);
    const mean = (eos80(35, 13 * 1.00024, 0) + eos80(35, 13 * 1.00024, 100)) / 2;
    const depth = (100 * 1e5) / (mean * 9.80665);
    expect(seaWaterDensity(35, 286.15, depth)).toBeCloseTo(1030.818, 3);
    expect(seaWaterDensity(35, 286.15)).toBe(eos80(35, 13 * 1.00024, 0));
  });

  it('refuses what lies outside the formula, by name', () => {
    expect(() => seaWaterDensity(43, 283.15)).toThrow(/salinity of 43/);
    expect(() => seaWaterDensity(35, 333.15)).toThrow(/temperature of 60.01 °C/);
    expect(() => seaWaterDensity(35, 283.15, -1)).toThrow(/depth of -1 m/);
  });

  it('comes from the document, stated or by salinity and temperature', () => {
    expect(waterDensityOf(demoDocument())).toBe(1026);
    const salty = { water: { density: null, salinity: 8, temperature: '10 degC', depth: '50 m' } };
    expect(waterDensityOf(demoDocument(salty))).toBe(seaWaterDensity(8, 283.15, 50));
    const { density: _density, ...without } = demoDocument().water;
    expect(() => waterDensityOf({ ...demoDocument(), water: without })).toThrow(/density is not given/);
    // Reading refuses both at once; what builds a document otherwise is held here.
    const both = (density: number) => {
      const document = demoDocument(salty);
      return { ...document, water: { ...document.water, density: { si: density, typed: `${density} kg/m^3` } } };
    };
    expect(() => waterDensityOf(both(1026))).toThrow(/given twice: 1026 kg\/m\^3, and 1006\.\d\d/);
    expect(waterDensityOf(both(1006))).toBe(1006);
  });
});
