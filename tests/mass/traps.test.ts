import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { geometryOf } from '../../core/geometry/geometry-of.ts';
import { drainTime } from '../../core/mass/drain-time.ts';
import { heldVolume } from '../../core/mass/held-volume.ts';
import { massReport } from '../../core/mass/mass-report-of.ts';
import { demoDocument } from '../geometry/demo-document.ts';

const catalogue = catalogueWith();
const report = (...changes: unknown[]) => {
  const document = demoDocument(...changes);
  return massReport(document, geometryOf(document, catalogue), catalogue);
};
const length = fc.double({ min: 0.1, max: 3, noNaN: true });

describe('a tilted tray', () => {
  it('keeps what lies under the level through its lower wall’s top, summed in strips', () => {
    fc.assert(
      fc.property(
        length,
        length,
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        fc.double({ min: 0, max: 1.2, noNaN: true }),
        (a, b, h, tilt) => {
          const n = 20_000;
          const strips = (L: number, W: number) => {
            let sum = 0;
            for (let i = 0; i < n; i++) sum += Math.max(0, h - ((i + 0.5) / n) * L * Math.tan(tilt));
            return (sum * W * L) / n;
          };
          const summed = Math.max(strips(a, b), strips(b, a));
          expect(Math.abs(heldVolume(a, b, h, tilt) - summed)).toBeLessThan(1e-4 * a * b * h);
        },
      ),
      { seed: 3, numRuns: 60 },
    );
  });

  it('keeps all when level', () => expect(heldVolume(1, 2, 0.1, 0)).toBeCloseTo(0.2, 12));
});

describe('draining', () => {
  it('takes the time that stepping through Torricelli’s law takes, and loses no water on the way', () => {
    const [area, hole, height, g] = [1.1, 0.002, 0.15, 9.80665];
    const dt = 1e-3;
    let [volume, out, t] = [area * height, 0, 0];
    // stop at a thousandth of the head: the last of it takes √0.001 of the whole time
    while (volume > 1e-3 * area * height) {
      const flow = 0.6 * hole * Math.sqrt((2 * g * volume) / area) * dt;
      volume -= flow;
      out += flow;
      t += dt;
    }
    expect(volume + out).toBeCloseTo(area * height, 9);
    const whole = drainTime({ area, hole, height, drive: g });
    expect(t / (whole * (1 - Math.sqrt(1e-3)))).toBeCloseTo(1, 3);
  });

  it('refuses a hole of nothing', () =>
    expect(() => drainTime({ area: 1, hole: 0, height: 1, drive: 9.8 })).toThrow(/a must be positive/));
});

describe('trays and bells', () => {
  const holes = (purpose: string) => [{ x: '0 mm', y: '0 mm', diameter: '50 mm', purpose }];
  const floor = {
    designs: { deck: { side: 'underside', holes: holes('drain') } },
    loads: { liftOut: { speed: '0.5 m/s', dragCoefficient: { value: 2, source: 'invented' }, tilt: '5 deg' } },
  };

  it('are closed bays of a flush grid: a bell under a topside panel', () => {
    const { trays, bells } = report();
    expect(trays).toEqual([]);
    expect(bells.map((b) => b.bay)).toEqual(['A1', 'A3', 'B1', 'B3']);
    const volume = 0.95 * 1.15 * 0.15;
    expect(bells[0]!.level).toBeCloseTo(volume, 12);
    expect(bells[0]!.effect).toBeCloseTo(1026 * 9.80665 * volume, 6);
    // t = 2 A √h / (0.6 a √(2 g ρ / ρ_air)), by hand: 2 · 1.0925 · √0.15 / (0.6 · 1.9635e-3 · √(2 · 9.80665 · 837.55)) = 5.60 s
    expect(bells[0]!.drainTime).toBeCloseTo(5.6, 2);
  });

  it('are trays over an underside panel, which spill when tilted', () => {
    const { trays, bells } = report(floor);
    expect(bells).toEqual([]);
    expect(trays[0]!.effect).toBeCloseTo(1026 * 0.95 * 1.15 * 0.15, 9);
    // 5° along 0.95 m: the mean depth falls by half of 83 mm
    expect(trays[0]!.tilted).toBeCloseTo(0.95 * 1.15 * (0.15 - (0.95 * Math.tan((5 * Math.PI) / 180)) / 2), 9);
    // t = 2 · 1.0925 · √0.15 / (0.6 · 1.9635e-3 · √(2 · 9.80665)) = 162 s
    expect(trays[0]!.drainTime).toBeCloseTo(162.2, 0);
  });

  it('never drain or vent without a hole', () => {
    expect(report({ designs: { deck: { holes: [] } } }).bells[0]!.drainTime).toBe(null);
  });

  it('do not form in a stacked grid, where the other tubes leave gaps, nor under cross tubes that are less high', () => {
    const stacked = report({ grid: { arrangement: 'stacked' }, designs: { deck: { support: 'cross tubes' } } });
    expect([stacked.trays, stacked.bells]).toEqual([[], []]);
    const shallow = { grid: { crossTubes: { section: 'RHS 150x100x8 hot', tubes: null } } };
    expect(
      report(shallow, floor, {
        grid: { crossTubes: { section: 'SHS 100x100x8 hot' } },
        designs: { deck: { support: 'main tubes' } },
      }).trays,
    ).toEqual([]);
    // as bells they close to the depth of the lower tubes
    expect(report({ grid: { crossTubes: { section: 'SHS 100x100x8 hot' } } }).bells[0]!.level).toBeCloseTo(
      1.0 * 1.15 * 0.1,
      12,
    );
  });
});
