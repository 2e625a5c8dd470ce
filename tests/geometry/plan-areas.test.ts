import { describe, expect, it } from 'vitest';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { geometryOf } from '../../core/geometry/geometry-of.ts';
import type { Geometry, Panel } from '../../core/geometry/geometry.ts';
import { demoDocument } from './demo-document.ts';
import { randomDocument } from './random-document.ts';

const catalogue = catalogueWith();
const cell = 0.005;

/** Areas by looking at the middle of every 5 mm cell: exact for edges on multiples of 10 mm, whole cells off at holes. */
function raster(geometry: Geometry) {
  const { x0, y0, x1, y1 } = geometry.extents;
  const inPanel = ({ contour, outline, cutouts }: Panel, x: number, y: number): boolean => {
    if (x < outline.x0 || x > outline.x1 || y < outline.y0 || y > outline.y1) return false;
    let inside = false;
    contour.forEach(([ax, ay], i) => {
      const [bx, by] = contour[(i + 1) % contour.length]!;
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
    });
    return inside && !cutouts.some((c) => c.purpose !== 'bolt' && Math.hypot(x - c.x, y - c.y) < c.diameter / 2);
  };
  const count = { solid: 0, tubes: 0, open: 0 };
  const bays = new Map(geometry.bays.map((b) => [b.id, 0]));
  for (let i = 0; i < Math.round((x1 - x0) / cell); i++)
    for (let j = 0; j < Math.round((y1 - y0) / cell); j++) {
      const [x, y] = [x0 + (i + 0.5) * cell, y0 + (j + 0.5) * cell];
      const onTube =
        geometry.mainTubes.some((t) => Math.abs(y - t.at) < t.section.width / 2 && x > t.from && x < t.to) ||
        geometry.crossTubes.some(
          (t) => Math.abs(x - t.at) < t.section.width / 2 && t.pieces.some(([a, b]) => y > a && y < b),
        );
      const solid = onTube || geometry.panels.some((p) => inPanel(p, x, y));
      if (onTube) count.tubes++;
      if (solid) count.solid++;
      const o = geometry.outline;
      if (!solid && x > o.x0 && x < o.x1 && y > o.y0 && y < o.y1) count.open++;
      if (!solid)
        for (const b of geometry.bays)
          if (x > b.opening.x0 && x < b.opening.x1 && y > b.opening.y0 && y < b.opening.y1)
            bays.set(b.id, bays.get(b.id)! + 1);
    }
  const area = (n: number): number => n * cell ** 2;
  return {
    solid: area(count.solid),
    tubes: area(count.tubes),
    open: area(count.open),
    bays: new Map([...bays].map(([id, n]) => [id, area(n)])),
  };
}

describe('plan areas', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('without holes are those of a raster, to the cell (seed %d)', (seed) => {
    const geometry = geometryOf(randomDocument(seed, { holes: false }), catalogue);
    const seen = raster(geometry);
    expect(geometry.areas.solid).toBeCloseTo(seen.solid, 9);
    expect(geometry.areas.tubes).toBeCloseTo(seen.tubes, 9);
    expect(geometry.areas.open).toBeCloseTo(seen.open, 9);
    expect(geometry.areas.panels).toBeCloseTo(seen.solid - seen.tubes, 9);
    for (const bay of geometry.bays) expect(bay.openArea).toBeCloseTo(seen.bays.get(bay.id)!, 9);
  });

  it.each([21, 23, 24, 25, 26, 27])(
    'with an overlap of its own on each side are those of a raster (seed %d)',
    (seed) => {
      const apart = {
        overlap: { sides: { mainLow: '10 mm', mainHigh: '50 mm', crossLow: '30 mm', crossHigh: '60 mm' } },
      };
      const plain = { overlap: { sides: { mainHigh: '50 mm', crossLow: '10 mm' } } };
      const changes = { designs: { plain, notched: apart } };
      const geometry = geometryOf(randomDocument(seed, { holes: false, changes }), catalogue);
      const seen = raster(geometry);
      expect(geometry.panels.some(({ bearings: [low, high] }) => low!.lap !== high!.lap)).toBe(true);
      expect(geometry.areas.solid).toBeCloseTo(seen.solid, 9);
      expect(geometry.areas.open).toBeCloseTo(seen.open, 9);
      for (const bay of geometry.bays) expect(bay.openArea).toBeCloseTo(seen.bays.get(bay.id)!, 9);
    },
  );

  it.each([11, 12, 13, 14])('with holes are those of a raster, to what a raster tells of circles (seed %d)', (seed) => {
    const geometry = geometryOf(randomDocument(seed), catalogue);
    const seen = raster(geometry);
    const rim = geometry.panels.reduce((s, p) => s + p.cutouts.reduce((r, c) => r + Math.PI * c.diameter, 0), 0);
    expect(Math.abs(geometry.areas.solid - seen.solid)).toBeLessThan(0.2 * cell * rim + 1e-9);
    expect(Math.abs(geometry.areas.open - seen.open)).toBeLessThan(0.2 * cell * rim + 1e-9);
  });

  it('are as worked by hand for the invented plate', () => {
    // outline 3450 × 2750; main tubes 3 × 3450 × 150; cross pieces 8 × 1150 × 150; four openings of 950 × 1150 closed but for a hole of 50
    const { areas } = geometryOf(demoDocument(), catalogue);
    const tubes = 3 * 3.45 * 0.15 + 8 * 1.15 * 0.15;
    const closed = 4 * (0.95 * 1.15 - (Math.PI / 4) * 0.05 ** 2);
    expect(areas.outline).toBeCloseTo(3.45 * 2.75, 9);
    expect(areas.tubes).toBeCloseTo(tubes, 9);
    expect(areas.solid).toBeCloseTo(tubes + closed, 7);
    expect(areas.open).toBeCloseTo(3.45 * 2.75 - tubes - closed, 7);
    expect(areas.openRatio).toBeCloseTo((3.45 * 2.75 - tubes - closed) / (3.45 * 2.75), 7);
  });
});
