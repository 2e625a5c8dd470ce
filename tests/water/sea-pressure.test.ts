import { describe, expect, it } from 'vitest';
import { gravityAt } from '../../core/water/gravity-at.ts';
import { localGravity, seaWaterDensity, waterDensityOf } from '../../core/water/sea-water.ts';
import { seaPressure } from '../../core/water/sea-pressure.ts';
import { viscosity } from '../../core/water/viscosity.ts';

const degrees = Math.PI / 180;

describe('gravity, pressure and viscosity of sea water', () => {
  it('gives the local gravity that WELMEC’s formula gives at 52.3°, 80 m (value printed in a geodesy library’s documentation)', () => {
    expect(Math.abs(gravityAt(52.3 * degrees, 80) - 9.812483709897048)).toBeLessThan(1e-14);
    expect(() => gravityAt(91 * degrees)).toThrow(/91\.00 degrees lies past the pole/);
  });

  it.each([
    [30, 9712.653],
    [90, 9674.23],
  ])(
    'reaches 10,000 dbar where UNESCO Technical Papers in Marine Science 44 (1983) puts it: latitude %d°, %d m',
    (latitude, depth) => {
      // S 35, 0 °C. The paper gives its formula an error of 0.1 m; a metre there is 1.03 dbar.
      const p = seaPressure(35, 0, depth, gravityAt(latitude * degrees));
      expect(Math.abs(p / 1e4 - 10_000)).toBeLessThan(0.103);
    },
  );

  it('is ρ g h near the surface', () => {
    expect(seaPressure(35, 10, 0, 9.80665)).toBe(0);
    // 1026.95241 kg/m³ is EOS-80 at S 35, 10 °C; compression adds 2e-5 of it by 10 m.
    expect(seaPressure(35, 10, 10, 9.80665) / (1026.95241 * 9.80665 * 10)).toBeCloseTo(1.00002, 5);
  });

  it('takes gravity by the document’s latitude', () => {
    const salty = { depth: { si: 3000, typed: '3 km' }, salinity: 35, temperature: { si: 277.15, typed: '4 degC' } };
    const pole = { water: { ...salty, latitude: { si: 90 * degrees, typed: '90 deg' } } };
    expect(localGravity(pole)).toBeCloseTo(9.8321772, 7);
    expect(localGravity({ water: salty })).toBe(9.80665);
    expect(waterDensityOf(pole)).toBe(seaWaterDensity(35, 277.15, 3000, gravityAt(90 * degrees)));
    expect(waterDensityOf(pole)).toBeGreaterThan(waterDensityOf({ water: salty }));
  });

  it('gives the viscosity of water at 20 °C, 1.0016 mPa·s (ISO/TR 3666), and of sea water within its stated 1.5 %', () => {
    expect(Math.abs(viscosity(0, 293.15) / 1.0016e-3 - 1)).toBeLessThan(5e-4);
    // S 40, 25 °C: check value of Millero (1974), another fit to other measurements.
    expect(Math.abs(viscosity(40, 298.15) / 9.6541e-4 - 1)).toBeLessThan(0.015);
    expect(() => viscosity(35, 500)).toThrow(/Viscosity of sea water is not known/);
  });
});
