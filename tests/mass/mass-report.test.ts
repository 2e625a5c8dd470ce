import { describe, expect, it } from 'vitest';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import type { PlateDocument } from '../../core/document/schema.ts';
import { geometryOf } from '../../core/geometry/geometry-of.ts';
import type { Geometry, Panel, Tube } from '../../core/geometry/geometry.ts';
import { massReport } from '../../core/mass/mass-report-of.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { randomDocument } from '../geometry/random-document.ts';
import { seeded } from '../geometry/seeded.ts';

const catalogue = catalogueWith();
const reportOf = (document: PlateDocument) => massReport(document, geometryOf(document, catalogue), catalogue);
const report = (...changes: unknown[]) => reportOf(demoDocument(...changes));
const mass = (r: ReturnType<typeof report>, kind: string) =>
  r.parts.filter((p) => p.kind === kind).reduce((s, p) => s + p.mass, 0);
const noPanels = { panels: { A1: null, A3: null, B1: null, B3: null } };

/** Nothing but tubes and panels: welds and eyes as thin as dust. */
const bare = {
  mass: { weld: 0 },
  grid: { suspension: { eye: { thickness: '1 um', weldThroat: '1 um' } } },
  designs: { plain: { fixing: { throat: '1 um' } }, notched: { fixing: { throat: '1 um' } } },
};

/** Sums over random points in the plate's box: what stands there, tube wall, bore or panel. */
function sampled(geometry: Geometry, n: number, seed: number) {
  const { x0, y0, x1, y1 } = geometry.extents;
  const [z0, z1] = [-0.2, 0.2];
  const box = (x1 - x0) * (y1 - y0) * (z1 - z0);
  const next = seeded(seed);
  const sums = { steel: 0, bore: 0, panel: 0 };
  const moment = { m: 0, x: 0, y: 0, z: 0, xx: 0, yy: 0, zz: 0 };
  for (let i = 0; i < n; i++) {
    const [x, y, z] = [x0 + next() * (x1 - x0), y0 + next() * (y1 - y0), z0 + next() * (z1 - z0)];
    const tube = [...geometry.mainTubes, ...geometry.crossTubes]
      .map((t) => whereIn(t, x, y, z))
      .find((w) => w !== 'out');
    const inPlate = tube === undefined && geometry.panels.some((p) => isIn(p, x, y, z));
    if (tube === 'bore') sums.bore++;
    if (tube === 'steel') sums.steel++;
    if (inPlate) sums.panel++;
    if (tube === 'steel' || inPlate) {
      moment.m++;
      moment.x += x;
      moment.y += y;
      moment.z += z;
      moment.xx += y * y + z * z;
      moment.yy += x * x + z * z;
      moment.zz += x * x + y * y;
    }
  }
  const volume = (k: number) => ({ value: (k / n) * box, sigma: (Math.sqrt(k) / n) * box });
  return { steel: volume(sums.steel), bore: volume(sums.bore), panel: volume(sums.panel), moment };
}

function whereIn(tube: Tube, x: number, y: number, z: number): 'out' | 'steel' | 'bore' {
  const [along, across] = tube.set === 'main' ? [x, y - tube.at] : [y, x - tube.at];
  if (!tube.pieces.some(([a, b]) => along > a && along < b)) return 'out';
  const { width, height, nominalWall: t, outerRadius, innerRadius } = tube.section;
  const rounded = (w: number, h: number, r: number): boolean => {
    const [dx, dz] = [Math.abs(across) - w / 2 + r, Math.abs(z - (tube.bottom + tube.top) / 2) - h / 2 + r];
    return Math.max(dx, dz) < r && Math.hypot(Math.max(dx, 0), Math.max(dz, 0)) < r;
  };
  if (!rounded(width, height, outerRadius)) return 'out';
  return rounded(width - 2 * t, height - 2 * t, innerRadius) ? 'bore' : 'steel';
}

function isIn(panel: Panel, x: number, y: number, z: number): boolean {
  const { x0, y0, x1, y1 } = panel.outline;
  if (z < panel.bottom || z > panel.top || x < x0 || x > x1 || y < y0 || y > y1) return false;
  const s = panel.design.cornerNotch?.si ?? 0;
  if (Math.min(x - x0, x1 - x) < s && Math.min(y - y0, y1 - y) < s) return false;
  return !panel.cutouts.some((c) => Math.hypot(x - c.x, y - c.y) < c.diameter / 2);
}

describe('masses and volumes', () => {
  it.each([21, 22, 23, 24])('agree with random points in the plate, four deviations wide (seed %d)', (seed) => {
    const document = randomDocument(seed, { changes: bare });
    const geometry = geometryOf(document, catalogue);
    const r = massReport(document, geometry, catalogue);
    const seen = sampled(geometry, 200_000, seed);
    const volume = (kind: string) => r.parts.filter((p) => p.kind === kind).reduce((s, p) => s + p.volume, 0);
    expect(Math.abs(volume('tubes') - seen.steel.value)).toBeLessThan(4 * seen.steel.sigma);
    expect(Math.abs(volume('panels') - seen.panel.value)).toBeLessThan(4 * seen.panel.sigma + 1e-12);
    expect(Math.abs(r.displaced.sealed - r.displaced.flooded - seen.bore.value)).toBeLessThan(4 * seen.bore.sigma);
    expect(r.entrainedWater).toBeCloseTo(1026 * (r.displaced.sealed - r.displaced.flooded), 6);

    // one density: centre and inertia are those of the points that met steel
    const { m, x, y, z, xx, yy, zz } = seen.moment;
    const spread = 4 / Math.sqrt(m);
    const { x0, x1, y0, y1 } = geometry.extents;
    expect(Math.abs(r.centre[0] - x / m)).toBeLessThan(spread * (x1 - x0) * 0.5);
    expect(Math.abs(r.centre[1] - y / m)).toBeLessThan(spread * (y1 - y0) * 0.5);
    expect(Math.abs(r.centre[2] - z / m)).toBeLessThan(spread * 0.15);
    const [cx, cy, cz] = [x / m, y / m, z / m];
    const about = [xx / m - cy ** 2 - cz ** 2, yy / m - cx ** 2 - cz ** 2, zz / m - cx ** 2 - cy ** 2];
    r.inertia.forEach((I, k) => expect(Math.abs(I / r.total / about[k]! - 1)).toBeLessThan(1.5 * spread));
  });

  it('are as worked by hand from the tables for four tubes', () => {
    // SHS 100 × 100 × 5 hot finished: 14.7 kg/m, 18.7 cm² (EN 10210-2:2006, Table B.2); tubes of 1.2 m and 1.1 m
    const tubes = (spacing: string) => ({ section: 'SHS 100x100x5 hot', count: 2, spacing, overhang: '50 mm' });
    const r = report(noPanels, {
      grid: {
        arrangement: 'stacked',
        mainTubes: tubes('1 m'),
        crossTubes: tubes('1.1 m'),
        suspension: { attachments: [{ id: 'S', x: '0 m', y: '0 m' }] },
      },
      mass: { weld: 0.02 },
    });
    const metres = 2 * 1.2 + 2 * 1.1;
    expect(Math.abs(mass(r, 'tubes') / metres - 14.7)).toBeLessThan(0.05);
    expect(mass(r, 'welds')).toBeCloseTo(0.02 * mass(r, 'tubes'), 9);
    expect(r.displaced.sealed - r.displaced.flooded).toBeCloseTo(
      metres * (0.1 ** 2 - 18.73e-4 - (4 - Math.PI) * 0.0075 ** 2),
      4,
    );
    // centre at half the spacings; main tubes half a height below the faces that touch, cross tubes above
    const steel = r.parts.filter((p) => p.kind === 'tubes');
    steel.forEach((p, i) =>
      p.centre.forEach((v, k) => expect(v).toBeCloseTo([0.55, 0.5, i === 0 ? -0.05 : 0.05][k]!, 9)),
    );
  });

  it('count a crossing once: flush pieces end at the main tubes’ faces, stacked tubes run through', () => {
    const length = (arrangement: string) =>
      mass(report(noPanels, { grid: { arrangement } }), 'tubes') / (7850 * catalogue.section('SHS 150x150x8 hot').area);
    expect(length('stacked')).toBeCloseTo(3 * 3.45 + 4 * 2.75, 9);
    expect(length('flush')).toBeCloseTo(3 * 3.45 + 4 * 2 * 1.15, 9);
  });

  it('add up, part by part', () => {
    const r = report({
      protection: { coating: { thickness: '350 um', dryDensity: '1500 kg/m^3' } },
      mass: {
        tolerance: 0.03,
        extras: [{ name: 'Anodes', mass: '40 kg', volume: '15 L', x: '1 m', y: '1 m', z: '0 m' }],
      },
    });
    expect(r.parts.reduce((s, p) => s + p.mass, 0)).toBeCloseTo(r.total, 9);
    expect(r.parts.reduce((s, p) => s + p.volume, 0)).toBeCloseTo(r.displaced.flooded, 12);
    for (const k of [0, 1, 2] as const)
      expect(r.parts.reduce((s, p) => s + p.mass * p.centre[k], 0) / r.total).toBeCloseTo(r.centre[k], 9);
    expect(mass(r, 'extras')).toBe(40);
    // the document's allowance on tubes and panels; drilled steel is no matter of rolling
    expect(mass(r, 'tolerance')).toBeCloseTo(
      0.03 * (mass(report({ designs: { deck: { fixing: { into: 'welded stud' } } } }), 'tubes') + r.panels),
      9,
    );
    // coated: perimeters × lengths, both faces and cut edges of four panels
    const perimeter = 4 * 0.15 - (8 - 2 * Math.PI) * 0.012;
    const plates =
      4 *
      (2 * (1.07 * 1.27 - (Math.PI / 4) * (0.05 ** 2 + 26 * 0.013 ** 2)) +
        0.01 * (2 * 2.34 + Math.PI * (0.05 + 26 * 0.013)));
    expect(mass(r, 'coating')).toBeCloseTo(1500 * 0.00035 * (perimeter * (3 * 3.45 + 8 * 1.15) + plates), 9);
    expect(
      mass(
        report({
          designs: { deck: { material: 'HDPE PE100 sheet' } },
          protection: { coating: { thickness: '350 um', dryDensity: '1500 kg/m^3' } },
        }),
        'coating',
      ),
    ).toBeCloseTo(1500 * 0.00035 * perimeter * (3 * 3.45 + 8 * 1.15), 9);
  });

  it('weigh the fillets of welded panels by throat squared', () => {
    const welded = {
      designs: {
        deck: {
          fixing: {
            kind: 'welded',
            throat: '5 mm',
            pattern: 'all round',
            bolt: null,
            class: null,
            pitch: null,
            edgeDistance: null,
            shear: null,
            into: null,
          },
        },
      },
      mass: { weld: 0 },
    };
    expect(mass(report(welded), 'welds')).toBeCloseTo(7850 * 4 * 2 * 2.34 * 0.005 ** 2, 9);
  });

  it('keep the water out of sealed tubes, but not out of what bolts take up in them', () => {
    const sealed = { grid: { mainTubes: { flooding: 'sealed' }, crossTubes: { flooding: 'sealed' } } };
    const through = { designs: { deck: { fixing: { into: 'through-bolt with sleeve' } } } };
    const r = report(sealed, through);
    expect(r.displaced.asBuilt).toBe(r.displaced.sealed);
    expect(r.entrainedWater).toBeCloseTo(0, 9);
    // bore: tube's outline less its steel; in it for each bolt a shank of 12 mm and a sleeve, bore 13 mm and wall 3 mm, 134 mm long
    const { area } = catalogue.section('SHS 150x150x8 hot');
    const bore = (0.15 ** 2 - (4 - Math.PI) * 0.012 ** 2 - area) * (3 * 3.45 + 8 * 1.15);
    const inside = 4 * 26 * 0.134 * Math.PI * (0.012 ** 2 / 4 + 0.016 * 0.003);
    expect(r.displaced.sealed - r.displaced.flooded).toBeCloseTo(bore - inside, 9);
    expect(r.submergedWeight.asBuilt).toBeCloseTo(9.80665 * (r.total - 1026 * r.displaced.sealed), 6);
    expect(r.submergedWeight.flooded - r.submergedWeight.sealed).toBeCloseTo(9.80665 * 1026 * (bore - inside), 6);
    const flooded = report(through);
    expect(flooded.displaced.asBuilt).toBe(flooded.displaced.flooded);
    expect(flooded.entrainedWater).toBeCloseTo(1026 * (bore - inside), 6);
  });

  it('need the density of the water', () => {
    const document = demoDocument();
    expect(() => reportOf({ ...document, water: { depth: document.water.depth } })).toThrow(/density is not given/);
  });
});

describe('the least weight, where weight helps (EN 1990, 4.1.2, from memory: the lower value of a permanent action)', () => {
  const g = 9.80665;
  const whole = { protection: { lossPerFace: { panel: '0 mm', tubeOutside: '0 mm', tubeInside: '0 mm' } } };
  const coated = (density: string) => ({ protection: { coating: { thickness: '350 um', dryDensity: density } } });
  const lopsided = { panels: { A3: null, B3: null } };

  it('is that of the same plate without weld allowance, coating and tolerance upwards, sums and moments', () => {
    const bareOf = report(whole, lopsided, { mass: { weld: 0 } });
    const least = report(whole, lopsided, coated('1500 kg/m^3'), { mass: { weld: 0.02, tolerance: 0.03 } }).least;
    for (const medium of ['air', 'water'] as const)
      for (const key of ['weight', 'momentX', 'momentY'] as const)
        expect(least[medium][key]).toBeCloseTo(bareOf.least[medium][key], 6);
    expect(bareOf.least.air.weight).toBeCloseTo(g * bareOf.total, 6);
    expect(bareOf.least.water.weight).toBeCloseTo(bareOf.submergedWeight.asBuilt, 6);
    // moments by Archimedes: weight at the centre of mass less buoyancy at that of the water displaced
    const [G, B] = [bareOf.centre, bareOf.centreOfBuoyancy];
    const buoyancy = 1026 * bareOf.displaced.asBuilt;
    expect(bareOf.least.water.momentX).toBeCloseTo(g * (bareOf.total * G[0] - buoyancy * B[0]), 6);
    expect(bareOf.least.water.momentY).toBeCloseTo(g * (bareOf.total * G[1] - buoyancy * B[1]), 6);
    expect(Math.abs(G[0] - 1.65)).toBeGreaterThan(0.05);
  });

  it('keeps what makes the plate lighter: a coating lighter than water (not in air), a tolerance downwards', () => {
    const bareOf = report(whole, { mass: { weld: 0 } });
    const light = report(whole, { mass: { weld: 0 } }, coated('900 kg/m^3'));
    expect(light.least.water.weight).toBeCloseTo(light.submergedWeight.asBuilt, 6);
    expect(light.least.water.weight).toBeLessThan(bareOf.least.water.weight);
    expect(light.least.air.weight).toBeCloseTo(bareOf.least.air.weight, 6);
    const thin = report(whole, { mass: { weld: 0, tolerance: -0.05 } });
    expect(thin.least.water.weight).toBeCloseTo(thin.submergedWeight.asBuilt, 6);
    expect(thin.least.water.weight).toBeLessThan(0.96 * bareOf.least.water.weight);
  });

  it('keeps extras whole, and the fillets that a drawing shows', () => {
    const anodes = { name: 'Anodes', mass: '40 kg', volume: '15 L', x: '1 m', y: '1 m', z: '0 m' };
    const [without, withThem] = [report(whole), report(whole, { mass: { extras: [anodes] } })];
    expect(withThem.least.water.weight - without.least.water.weight).toBeCloseTo(g * (40 - 1026 * 0.015), 6);
    expect(withThem.least.water.momentX - without.least.water.momentX).toBeCloseTo(g * (40 - 1026 * 0.015), 6);
  });

  it('takes off what corrodes, worked by hand: both faces of panels, tubes outside, and inside where they are flooded', () => {
    const loss = { protection: { lossPerFace: { panel: '0.4 mm', tubeOutside: '0.5 mm', tubeInside: '0.2 mm' } } };
    const lost = (...changes: unknown[]) =>
      (report(whole, { mass: { weld: 0 } }, ...changes).least.water.weight -
        report(loss, { mass: { weld: 0 } }, ...changes).least.water.weight) /
      (g * (7850 - 1026));
    // SHS 150 × 150 × 8 hot finished: corners 1.5 t outside, 1.0 t inside (EN 10210-2:2006, 6)
    const outside = 4 * 0.15 - (8 - 2 * Math.PI) * 0.012;
    const inside = 4 * 0.134 - (8 - 2 * Math.PI) * 0.008;
    const metres = 3 * 3.45 + 8 * 1.15;
    const panels = 4 * (1.07 * 1.27 - (Math.PI / 4) * (0.05 ** 2 + 26 * 0.013 ** 2)) * 2 * 0.0004;
    expect(lost()).toBeCloseTo(panels + metres * (outside * 0.0005 + inside * 0.0002), 9);
    expect(lost({ grid: { mainTubes: { flooding: 'sealed' }, crossTubes: { flooding: 'sealed' } } })).toBeCloseTo(
      panels + metres * outside * 0.0005,
      9,
    );
    const round = { section: 'CHS 114.3x6.3 hot' };
    expect(lost(noPanels, { grid: { arrangement: 'stacked', mainTubes: round, crossTubes: round } })).toBeCloseTo(
      Math.PI * (3 * 3.45 + 4 * 2.75) * (0.1143 * 0.0005 + (0.1143 - 0.0126) * 0.0002),
      9,
    );
  });

  it('is never above the weight as built', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const r = reportOf(randomDocument(seed, { changes: coated('1500 kg/m^3') }));
      expect(r.least.water.weight).toBeLessThan(r.submergedWeight.asBuilt);
      expect(r.least.air.weight).toBeLessThan(g * r.total);
    }
  });
});
