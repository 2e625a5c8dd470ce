import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDocument, type RawDocument } from '../../core/document/read-document.ts';
import { inPlaneMasses } from '../../core/hydrodynamics/in-plane-masses.ts';
import { waterHere } from '../../core/hydrodynamics/water-here.ts';
import { modelOfOption } from '../../core/options/model-of-option.ts';
import { barInCrossFlow } from '../../core/water/bar-in-cross-flow.ts';

const small = JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as RawDocument & { water: object };
const modelWith = (changes: object) => {
  const raw = { ...small, ...changes } as RawDocument;
  return modelOfOption(raw, readDocument(raw), null);
};

describe('a bar square to its axis', () => {
  const of = (across: number, along: number): number => barInCrossFlow({ across, along }, 1) / (Math.PI * (across / 2) ** 2); // prettier-ignore

  it('is 1.5132 for a square (exact: 2πR² less its area, R = Γ(1/4)² side / 4π^(3/2)) within the table’s last digit', () => {
    expect(Math.abs(of(0.2, 0.2) - 1.51317)).toBeLessThan(0.005);
  });

  it('has the printed values of DNV-RP-C205, appendix D (from memory), 1 for a flat plate across and for a circle', () => {
    for (const [ratio, C] of [[10, 1.14], [5, 1.21], [2, 1.36], [1, 1.51], [0.5, 1.7], [0.2, 1.98], [0.1, 2.23]] as const)
      expect(of(ratio, 1)).toBeCloseTo(C, 12);
    expect(of(1e6, 1)).toBeCloseTo(1, 5);
    expect(barInCrossFlow({ across: 1, along: 1, round: true }, 1)).toBeCloseTo(Math.PI / 4, 12);
    // between the rows it falls all the way, and edgewise it stays at the last row
    for (let r = 0.1; r < 50; r *= 1.1) expect(of(1.1 * r, 1)).toBeLessThanOrEqual(of(r, 1));
    expect(of(0.01, 1)).toBeCloseTo(2.23, 12);
    expect(() => of(0, 1)).toThrow(/across must be positive/);
  }); // prettier-ignore
});

describe('the plate in its own plane', () => {
  const model = modelWith({ hydrodynamics: undefined });
  const { surge, sway, yaw } = inPlaneMasses(model);

  it('is its tubes across the motion as bars by themselves: squares by their exact value, worked apart', () => {
    for (const [found, tubes] of [[surge, model.geometry.crossTubes], [sway, model.geometry.mainTubes]] as const) {
      const by = tubes.reduce((sum, { section, pieces }) => {
        expect(section.width).toBe(section.height);
        const length = pieces.reduce((all, [from, to]) => all + to - from, 0);
        return sum + 1.51317 * Math.PI * (section.height / 2) ** 2 * length * model.mass.waterDensity;
      }, 0);
      expect(Math.abs(found.best / by - 1)).toBeLessThan(0.004);
      expect(found.low).toBeLessThan(found.best);
      // a rib on a wall: half of a bar twice as high, 0.5 · 1.36 · 4 / 1.51 of it
      expect(found.high / found.best).toBeCloseTo((0.5 * 1.36 * 4) / 1.51, 9);
    }
    // its radius of gyration lies within the outline
    const { x0, x1, y0, y1 } = model.geometry.extents;
    expect(Math.sqrt(yaw.best / (surge.best + sway.best))).toBeLessThan(Math.hypot(x1 - x0, y1 - y0) / 2);
  }); // prettier-ignore

  it('grows with what has grown on it', () => {
    const growth = { years: 3, source: 'x', rows: [{ from: '0 m', to: '99 m', years: 1, thickness: '30 mm' }] };
    expect(inPlaneMasses(modelWith({ hydrodynamics: { growth } })).surge.best).toBeGreaterThan(surge.best);
  });
});

describe('the water where the plate hangs', () => {
  const water = { salinity: 35, temperature: '13 degC', depth: '50 m', latitude: '52.3 deg' };

  it('has the gravity of its latitude (WELMEC: 9.81248371 m/s² at 52.3° and 80 m), the pressure of its column and viscosity', () => {
    const { quantities, unjudged } = waterHere(modelWith({ water, hydrodynamics: {} }));
    expect(quantities['water.gravity']!.value - 3.085e-6 * 80).toBeCloseTo(9.81248371, 8);
    // ρ g h with EOS-80's density of the surface and of 50 m on either side
    const { value } = quantities['water.pressure']!;
    expect(value).toBeGreaterThan(1026.3 * 9.8127 * 50);
    expect(value).toBeLessThan(1026.7 * 9.8128 * 50);
    // 1.22 mPa·s at 35 and 15 °C, 1.30 at 13 °C in tables of sea water (ITTC 7.5-02-01-03: 1.2200 at 15 °C), from memory; the fit within 1.5 %
    const at15 = waterHere(modelWith({ water: { ...water, temperature: '15 degC' }, hydrodynamics: {} }));
    expect(Math.abs(at15.quantities['water.viscosity']!.value / 1.22e-3 - 1)).toBeLessThan(0.015);
    expect(unjudged).toEqual([]);
  });

  it('says why its viscosity is not known, and what of the sea is left', () => {
    const { quantities, unjudged } = waterHere(
      modelWith({ water: { density: '1025 kg/m^3', depth: '30 m' }, hydrodynamics: { wave: { height: '1.5 m', period: '6 s', source: 'x' } } }),
    ); // prettier-ignore
    expect(unjudged).toEqual([{ id: 'water.viscosity', reason: 'salinity and temperature are not stated' }]);
    expect(quantities['water.pressure']!.value).toBeCloseTo(1025 * 9.80665 * 30, 6);
    // deep water: 0.75 m exp(−k 30 m), k = (2π/6)² / g
    expect(quantities['wave.motionAtPlate']!.value).toBeCloseTo(
      0.75 * Math.exp((-((Math.PI / 3) ** 2) / 9.80665) * 30),
      6,
    );
  });
});
