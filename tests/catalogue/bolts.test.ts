import { describe, expect, it } from 'vitest';
import { boltClasses } from '../../core/catalogue/bolt-classes.ts';
import { bolts } from '../../core/catalogue/bolts.ts';
import { massOfBolt } from '../../core/catalogue/mass-of-bolt.ts';
import type { Bolt } from '../../core/catalogue/rows.ts';

const { PI: π, sqrt } = Math;
const bolt = (id: string): Bolt => bolts.find((row) => row.id === id)!;
const mm = (length: number | null): number | null => (length === null ? null : Number((length * 1e3).toFixed(6)));
const metric = bolts.filter(({ series }) => series === 'metric');
const inches = bolts.filter(({ series }) => series === 'inch');

describe('threads', () => {
  it('the areas are those that ISO 898-1 prints (public copies)', () => {
    const printed = {
      M6: 20.1,
      M8: 36.6,
      M10: 58,
      M12: 84.3,
      M14: 115,
      M16: 157,
      M20: 245,
      M24: 353,
      M27: 459,
      M30: 561,
      M36: 817,
    };
    for (const [id, area] of Object.entries(printed)) expect(bolt(id).tensileArea * 1e6).toBeCloseTo(area, 9);
  });

  it('and agree with π/4 [(d2 + d3)/2]², d2 = d − 0.649519 P, d3 = d − 1.226869 P, to three digits (ISO 898-1)', () => {
    for (const { id, diameter: d, pitch: P, tensileArea } of metric) {
      const area = (π / 4) * ((d - 0.649519 * P + (d - 1.226869 * P)) / 2) ** 2;
      expect(Number((area * 1e6).toPrecision(3)), id).toBeCloseTo(tensileArea * 1e6, 9);
    }
  });

  it('inch: π/4 (D − 0.9743/n)² of ASME B1.1, to the printed digits', () => {
    for (const { id, diameter, pitch, tensileArea } of inches) {
      const area = ((π / 4) * (diameter - 0.9743 * pitch) ** 2) / 0.0254 ** 2;
      expect(Math.abs(area - tensileArea / 0.0254 ** 2), id).toBeLessThan(diameter < 0.015 ? 6e-5 : 5.5e-4);
    }
  });

  it('M12 of class 8.8 in tension gives 48.6 kN: 0.9 f_ub A_s / 1.25 (EN 1993-1-8, Table 3.4)', () => {
    const { ultimate } = boltClasses.find(({ id }) => id === '8.8')!;
    expect((0.9 * ultimate * bolt('M12').tensileArea) / 1.25 / 1e3).toBeCloseTo(48.6, 1);
  });
});

describe('holes', () => {
  it('ISO 273 fine, medium, coarse (public copies)', () => {
    const printed = {
      M6: [6.4, 6.6, 7],
      M8: [8.4, 9, 10],
      M10: [10.5, 11, 12],
      M12: [13, 13.5, 14.5],
      M14: [15, 15.5, 16.5],
      M16: [17, 17.5, 18.5],
      M20: [21, 22, 24],
      M22: [23, 24, 26],
      M24: [25, 26, 28],
      M27: [28, 30, 32],
      M30: [31, 33, 35],
      M33: [34, 36, 38],
      M36: [37, 39, 42],
    };
    for (const [id, holes] of Object.entries(printed)) {
      const { holeFine, holeMedium, holeCoarse } = bolt(id);
      expect([holeFine, holeMedium, holeCoarse].map(mm), id).toEqual(holes);
    }
  });

  it('EN 1090-2 Table 11: clearances 1, 2, 3 normal; 3, 4, 6, 8 oversize; 4, 6, 8, 10 short slot; 1.5 d long slot (public copies)', () => {
    const printed = {
      M8: [9, 11, 12, 20],
      M12: [13, 15, 16, 30],
      M14: [15, 17, 18, 35],
      M16: [18, 20, 22, 40],
      M22: [24, 26, 28, 55],
      M24: [26, 30, 32, 60],
      M27: [30, 35, 37, 67.5],
      M36: [39, 44, 46, 90],
    };
    for (const [id, holes] of Object.entries(printed)) {
      const { holeNormal, holeOversize, shortSlotLength, longSlotLength } = bolt(id);
      expect([holeNormal, holeOversize, shortSlotLength, longSlotLength].map(mm), id).toEqual(holes);
    }
  });

  it('every bolt goes through its holes, and its washer covers the normal one', () => {
    for (const b of bolts) {
      expect(b.holeFine, b.id).toBeGreaterThan(b.diameter);
      expect(b.holeMedium, b.id).toBeGreaterThan(b.holeFine);
      expect(b.holeCoarse, b.id).toBeGreaterThan(b.holeMedium);
      expect(b.holeNormal, b.id).toBeGreaterThan(b.diameter);
      expect(b.washerInner, b.id).toBeGreaterThan(b.diameter);
      expect(b.washerOuter, b.id).toBeGreaterThan(b.holeNormal);
      expect(b.headAcrossFlats, b.id).toBeGreaterThan(b.holeNormal);
    }
  });
});

describe('heads', () => {
  it('across corners lies below the sharp hexagon 2/√3 s and above across flats', () => {
    for (const b of bolts) {
      expect(b.headAcrossCorners, b.id).toBeLessThan((2 / sqrt(3)) * b.headAcrossFlats);
      expect(b.headAcrossCorners, b.id).toBeGreaterThan(1.09 * b.headAcrossFlats);
    }
  });

  it('ISO 4032 nuts: s, m max, e min (public copy)', () => {
    const printed = {
      M6: [10, 5.2, 11.05],
      M12: [18, 10.8, 20.03],
      M16: [24, 14.8, 26.75],
      M20: [30, 18, 32.95],
      M22: [34, 19.4, 37.29],
      M27: [41, 23.8, 45.2],
      M36: [55, 31, 60.79],
    };
    for (const [id, row] of Object.entries(printed)) {
      const { headAcrossFlats, nutHeight, headAcrossCorners } = bolt(id);
      expect([headAcrossFlats, nutHeight, headAcrossCorners].map(mm), id).toEqual(row);
    }
  });
});

describe('mass of a bolt set', () => {
  it('the thread weighs what DIN 976 prints for threaded rod, kg per 1000 pieces of 100 mm (public copy)', () => {
    const printed = { M10: 50.2, M12: 72.8, M14: 99.5, M16: 133, M20: 208, M24: 300, M27: 387, M30: 474, M36: 688 };
    for (const [id, mass] of Object.entries(printed)) {
      // both lengths below the thread length of ISO 4014, so that only thread is added
      const perMetre = (massOfBolt(bolt(id), 0.025) - massOfBolt(bolt(id), 0.015)) / 0.01;
      const half = mass < 100 ? 0.05 : 0.5;
      expect(Math.abs(perMetre * 100 - mass), id).toBeLessThanOrEqual(half);
    }
  });

  it('grows by a plain shank beyond the thread length, and with density', () => {
    const m16 = bolt('M16');
    expect((massOfBolt(m16, 0.1) - massOfBolt(m16, 0.08)) / 0.02).toBeCloseTo(7850 * m16.shankArea, 9);
    expect(massOfBolt(m16, 0.08, 8000) / massOfBolt(m16, 0.08)).toBeCloseTo(8000 / 7850, 12);
    expect(massOfBolt(bolt('5/8 in'), 0.08) / massOfBolt(m16, 0.08)).toBeGreaterThan(0.85);
    expect(massOfBolt(bolt('5/8 in'), 0.08) / massOfBolt(m16, 0.08)).toBeLessThan(1.05);
    expect(() => massOfBolt(m16, 0)).toThrow(/length must be positive/);
  });
});

describe('classes', () => {
  it('name and nominal strength of an ISO class say the same: first number × 100, second its tenth as yield (ISO 898-1)', () => {
    for (const c of boltClasses.filter(({ id }) => /^\d+\.\d$/.test(id))) {
      const [hundreds, tenths] = c.id.split('.').map(Number) as [number, number];
      expect(c.ultimate).toBe(hundreds * 1e8);
      expect(c.yield! / c.ultimate).toBeCloseTo(tenths / 10, 12);
    }
  });

  it('alpha_v of EN 1993-1-8 Table 3.4: 0.6 for 4.6, 5.6, 8.8; 0.5 for 6.8, 10.9', () => {
    const alphaV = Object.fromEntries(boltClasses.map((c) => [c.id, c.alphaV]));
    expect(alphaV).toMatchObject({ '4.6': 0.6, '5.6': 0.6, '8.8': 0.6, '6.8': 0.5, '10.9': 0.5 });
  });

  it('a class that may be harder than 350 HV warns of hydrogen under cathodic protection', () => {
    for (const c of boltClasses)
      expect(
        c.cautions.some((text) => text.includes('hydrogen')),
        c.id,
      ).toBe((c.hardnessMax ?? 0) > 350);
  });
});
