import { describe, expect, it } from 'vitest';
import { hollowSection } from '../../core/catalogue/hollow-section.ts';
import type { HollowSection } from '../../core/catalogue/rows.ts';
import { standardSections } from '../../core/catalogue/standard-sections.ts';

const section = (id: string): HollowSection => {
  const found = standardSections.find((row) => row.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};

const cm = 1e2;
const cm2 = 1e4;
const cm3 = 1e6;
const cm4 = 1e8;
const inch = 0.0254;

/** Within half a unit of the last printed digit (and a hair for the arithmetic). */
function expectPrinted(value: number, printed: string, name: string): void {
  const half = 0.5001 * 10 ** -(printed.split('.')[1]?.length ?? 0);
  expect(Math.abs(value - Number(printed)), `${name} is ${value}, printed ${printed}`).toBeLessThanOrEqual(half);
}

function expectDerived(value: number, derived: string, name: string): void {
  expect(Math.abs(value / Number(derived) - 1), `${name} is ${value}, derived ${derived}`).toBeLessThan(1e-3);
}

describe('against printed tables', () => {
  // m kg/m, A cm², I cm⁴, i cm, W_el cm³, W_pl cm³, I_t cm⁴, W_t cm³
  it.each([
    ['80x80x5', '11.6', '14.7', '137', '3.05', '34.2', '41.1', '217', '49.8'],
    ['60x60x4', '6.90', '8.79', '45.4', '2.27', '15.1', '18.3', '72.5', '22.0'],
    ['50x50x4', '5.64', '7.19', '25.0', '1.86', '9.99', '12.3', '40.4', '14.5'],
    ['40x40x4', '4.39', '5.59', '11.8', '1.45', '5.91', '7.44', '19.5', '8.54'],
  ])(
    'SHS %s hot finished: EN 10210-2, table of square sections (read in a public copy)',
    (size, m, A, I, i, Wel, Wpl, It, Wt) => {
      const s = section(`SHS ${size} hot`);
      expectPrinted(s.massPerMetre, m, 'm');
      expectPrinted(s.area * cm2, A, 'A');
      expectPrinted(s.inertiaY * cm4, I, 'I');
      expectPrinted(Math.sqrt(s.inertiaY / s.area) * cm, i, 'i');
      expectPrinted(s.elasticY * cm3, Wel, 'W_el');
      expectPrinted(s.plasticY * cm3, Wpl, 'W_pl');
      expectPrinted(s.torsion * cm4, It, 'I_t');
      expectPrinted(s.torsionModulus * cm3, Wt, 'W_t');
      expect(s.inertiaZ).toBeCloseTo(s.inertiaY, 15);
    },
  );

  // m, A, surface m²/m, I_y, W_el,y, W_pl,y, i_y, I_z, W_el,z, W_pl,z, i_z, I_t, W_t
  it.each([
    [
      40,
      20,
      2,
      '1.68',
      '2.14',
      '0.113',
      '4.05',
      '2.02',
      '2.61',
      '1.38',
      '1.34',
      '1.34',
      '1.60',
      '0.79',
      '3.45',
      '2.36',
    ],
    [
      40,
      20,
      3,
      '2.36',
      '3.01',
      '0.110',
      '5.21',
      '2.60',
      '3.50',
      '1.32',
      '1.68',
      '1.68',
      '2.12',
      '0.75',
      '4.57',
      '3.00',
    ],
    [
      50,
      30,
      2.5,
      '2.82',
      '3.59',
      '0.151',
      '11.30',
      '4.52',
      '5.70',
      '1.77',
      '5.05',
      '3.37',
      '3.98',
      '1.19',
      '11.74',
      '5.72',
    ],
    [
      50,
      30,
      4,
      '4.20',
      '5.35',
      '0.146',
      '15.25',
      '6.10',
      '8.05',
      '1.69',
      '6.69',
      '4.46',
      '5.58',
      '1.12',
      '16.53',
      '7.71',
    ],
    [
      60,
      40,
      3,
      '4.25',
      '5.41',
      '0.190',
      '25.38',
      '8.46',
      '10.53',
      '2.17',
      '13.44',
      '6.72',
      '7.94',
      '1.58',
      '29.28',
      '11.17',
    ],
  ] as const)(
    'RHS %fx%fx%f cold formed: EN 10219-2:2006, table of rectangular sections (read in a public copy)',
    (h, b, t, m, A, surface, Iy, Wely, Wply, iy, Iz, Welz, Wplz, iz, It, Wt) => {
      const s = hollowSection({
        id: 'row',
        shape: 'rectangular',
        process: 'cold formed',
        height: h / 1000,
        width: b / 1000,
        wall: t / 1000,
        source: null,
      });
      expectPrinted(s.massPerMetre, m, 'm');
      expectPrinted(s.area * cm2, A, 'A');
      expectPrinted(s.outerPerimeter, surface, 'surface');
      expectPrinted(s.inertiaY * cm4, Iy, 'I_y');
      expectPrinted(s.elasticY * cm3, Wely, 'W_el,y');
      expectPrinted(s.plasticY * cm3, Wply, 'W_pl,y');
      expectPrinted(Math.sqrt(s.inertiaY / s.area) * cm, iy, 'i_y');
      expectPrinted(s.inertiaZ * cm4, Iz, 'I_z');
      expectPrinted(s.elasticZ * cm3, Welz, 'W_el,z');
      expectPrinted(s.plasticZ * cm3, Wplz, 'W_pl,z');
      expectPrinted(Math.sqrt(s.inertiaZ / s.area) * cm, iz, 'i_z');
      expectPrinted(s.torsion * cm4, It, 'I_t');
      expectPrinted(s.torsionModulus * cm3, Wt, 'W_t');
    },
  );

  it('HSS 4x4x1/4: weight 12.21 lb/ft and J 12.8 in⁴ as the American manual prints them (from memory)', () => {
    const s = section('HSS 4x4x1/4');
    expectPrinted(s.massPerMetre * (0.3048 / 0.45359237), '12.21', 'lb/ft');
    expectPrinted(s.torsion / inch ** 4, '12.8', 'J');
  });
});

describe('against values derived apart from this code (closed form, by hand; 0.1 %, for they were rounded on the way)', () => {
  // m, A, I_y, I_z, W_el,y, W_el,z, W_pl,y, W_pl,z, I_t, W_t; "=" as about y
  it.each([
    ['SHS 50x50x3 hot', '4.352 5.543 20.20 = 8.080 = 9.702 = 32.06 11.79'],
    ['SHS 100x100x5 hot', '14.704 18.732 279.43 = 55.886 = 66.358 = 439.41 81.83'],
    ['SHS 150x150x8 hot', '35.13 44.75 1490.6 = 198.8 = 236.9 = 2351 290.7'],
    ['SHS 200x200x10 hot', '58.82 74.93 4471 = 447.1 = 530.9 = 7031 654.6'],
    ['RHS 100x50x5 hot', '10.78 13.73 166.5 54.30 33.30 21.72 42.61 25.78 134.7 36.91'],
    ['RHS 150x100x6.3 hot', '23.15 29.49 897.9 474.1 119.7 94.81 146.7 110.4 986.5 153.1'],
    ['RHS 200x100x8 hot', '35.13 44.75 2234 739.0 223.4 147.8 282.0 171.8 1804 251.2'],
    ['RHS 300x200x10 hot', '74.52 94.93 11819 6278 788.0 627.8 955.5 720.9 12908 1015'],
    ['SHS 50x50x3 cold', '4.246 5.408 19.47 = 7.787 = 9.388 = 32.13 11.77'],
    ['SHS 100x100x6.3 cold', '17.47 22.25 314.2 = 62.83 = 76.38 = 536.0 97.02'],
    ['SHS 200x200x8 cold', '46.51 59.24 3566 = 356.6 = 420.9 = 5815 543.6'],
    ['RHS 200x100x6 cold', '26.40 33.63 1703.3 576.9 170.3 115.4 213.3 131.5 1417.0 200.1'],
  ])('%s', (id, printed) => {
    const s = section(id);
    const [m, A, Iy, Iz, Wely, Welz, Wply, Wplz, It, Wt] = printed.split(' ') as [
      string,
      string,
      string,
      string,
      string,
      string,
      string,
      string,
      string,
      string,
    ];
    const orSame = (own: string, other: string): string => (own === '=' ? other : own);
    expectDerived(s.massPerMetre, m, 'm');
    expectDerived(s.area * cm2, A, 'A');
    expectDerived(s.inertiaY * cm4, Iy, 'I_y');
    expectDerived(s.inertiaZ * cm4, orSame(Iz, Iy), 'I_z');
    expectDerived(s.elasticY * cm3, Wely, 'W_el,y');
    expectDerived(s.elasticZ * cm3, orSame(Welz, Wely), 'W_el,z');
    expectDerived(s.plasticY * cm3, Wply, 'W_pl,y');
    expectDerived(s.plasticZ * cm3, orSame(Wplz, Wply), 'W_pl,z');
    expectDerived(s.torsion * cm4, It, 'I_t');
    expectDerived(s.torsionModulus * cm3, Wt, 'W_t');
  });

  it.each([
    ['CHS 48.3x3.2 hot', '4.534', '11.586', '4.797', '6.520'],
    ['CHS 114.3x5 hot', '17.17', '256.9', '44.95', '59.77'],
    ['CHS 219.1x8 cold', '53.06', '2959.6', '270.2', '356.7'],
  ])('%s: ring', (id, A, I, Wel, Wpl) => {
    const s = section(id);
    expectDerived(s.area * cm2, A, 'A');
    expectDerived(s.inertiaY * cm4, I, 'I');
    expectDerived(s.elasticZ * cm3, Wel, 'W_el');
    expectDerived(s.plasticZ * cm3, Wpl, 'W_pl');
    expect(s.torsion).toBeCloseTo(2 * s.inertiaY, 15);
  });
});

describe('against strips', () => {
  /** Width of a rounded rectangle B × H at height y from the middle. */
  const widthAt = (y: number, H: number, B: number, r: number): number => {
    const into = Math.abs(y) - (H / 2 - r);
    if (Math.abs(y) > H / 2) return 0;
    return into <= 0 ? B : B - 2 * (r - Math.sqrt(Math.max(r * r - into * into, 0)));
  };

  it.each(['RHS 150x100x6.3 cold', 'RHS 200x100x8 hot', 'HSS 6x4x1/4', 'CHS 114.3x5 hot'])(
    '%s: A, I_y, W_pl,y and the bore summed over 200 000 strips agree to 1e-5',
    (id) => {
      const { height: H, width: B, wall: t, nominalWall, outerRadius, innerRadius, ...s } = section(id);
      const strips = 200_000;
      let A = 0;
      let I = 0;
      let W = 0;
      let bore = 0;
      const boreRadius = s.shape === 'round' ? innerRadius : innerRadius * (nominalWall / t);
      for (let k = 0; k < strips; k++) {
        const y = ((k + 0.5) / strips - 0.5) * H;
        const dA = ((widthAt(y, H, B, outerRadius) - widthAt(y, H - 2 * t, B - 2 * t, innerRadius)) * H) / strips;
        A += dA;
        I += y * y * dA;
        W += Math.abs(y) * dA;
        bore += (widthAt(y, H - 2 * nominalWall, B - 2 * nominalWall, boreRadius) * H) / strips;
      }
      expect(s.area / A).toBeCloseTo(1, 5);
      expect(s.inertiaY / I).toBeCloseTo(1, 5);
      expect(s.plasticY / W).toBeCloseTo(1, 5);
      expect(s.innerArea / bore).toBeCloseTo(1, 5);
    },
  );

  it('perimeter, area and bore of every section fit together: area as ordered plus bore fill the outline', () => {
    for (const s of standardSections) {
      const r = s.shape === 'round' ? s.outerRadius : s.outerRadius * (s.nominalWall / s.wall);
      const outline = s.height * s.width - (4 - Math.PI) * r * r;
      expect((s.nominalArea + s.innerArea) / outline, s.id).toBeCloseTo(1, 12);
      // thin-wall estimate: mid-line length times wall
      const midline = s.outerPerimeter - Math.PI * s.wall;
      expect(s.area / (midline * s.wall), s.id).toBeGreaterThan(0.97);
      expect(s.area / (midline * s.wall), s.id).toBeLessThan(1.03);
    }
  });
});

describe('axes, walls and refusals', () => {
  it('y is the axis for bending of the height: the taller way is the stiffer', () => {
    for (const s of standardSections.filter(({ shape }) => shape === 'rectangular')) {
      expect(s.height, s.id).toBeGreaterThan(s.width);
      expect(s.inertiaY, s.id).toBeGreaterThan(s.inertiaZ);
      expect(s.shearAreaZ, s.id).toBeGreaterThan(s.shearAreaY);
    }
  });

  it('a section turned on its side swaps y and z', () => {
    const size = { id: 'own', shape: 'rectangular', process: 'hot finished', wall: 0.006, source: null } as const;
    const up = hollowSection({ ...size, height: 0.15, width: 0.1 });
    const flat = hollowSection({ ...size, height: 0.1, width: 0.15 });
    expect(flat.inertiaZ).toBe(up.inertiaY);
    expect(flat.elasticY).toBe(up.elasticZ);
    expect(flat.torsion).toBeCloseTo(up.torsion, 15);
  });

  it('ASTM A500: the design wall is 0.93 of the nominal wall (AISC 360-16, B4.2), mass follows the nominal wall', () => {
    for (const s of standardSections.filter(({ id }) => id.startsWith('HSS'))) {
      expect(s.wall / s.nominalWall, s.id).toBeCloseTo(0.93, 12);
      expect(s.outerRadius / s.wall, s.id).toBeCloseTo(2, 12);
      expect(s.area / s.nominalArea, s.id).toBeGreaterThan(0.93);
      expect(s.area / s.nominalArea, s.id).toBeLessThan(0.955);
    }
  });

  it('refuses what cannot be made, by name', () => {
    const size = { id: 'own', shape: 'square', process: 'hot finished', source: null } as const;
    expect(() => hollowSection({ ...size, height: 0.1, wall: 0.05 })).toThrow(
      /own cannot be made: its wall leaves no bore/,
    );
    expect(() => hollowSection({ ...size, height: 0.1, width: 0.08, wall: 0.005 })).toThrow(/called square/);
    expect(() => hollowSection({ ...size, height: 0.1, wall: 0.005, outerRadius: 0.06 })).toThrow(/corner radius/);
    expect(() => hollowSection({ ...size, height: 0.1, wall: -0.005 })).toThrow(/wall must be positive/);
    expect(() => hollowSection({ ...size, height: Number.NaN, wall: 0.005 })).toThrow(/height must be positive/);
  });
});
