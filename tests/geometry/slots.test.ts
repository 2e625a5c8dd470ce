import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { fabricationPack } from '../../core/fabrication/fabrication-pack.ts';
import type { Cutout } from '../../core/geometry/geometry.ts';
import { holesApart } from '../../core/geometry/holes-apart.ts';
import { holeArea, holeMoments, holePerimeter, slotRing } from '../../core/geometry/slot.ts';
import { modelFigures } from './slot-figures.ts';
import { fixing, modelWith } from '../checks/bolt-model.ts';

const short = modelWith(fixing({ hole: 'short slot', edgeDistance: '24 mm' }));
const across = modelWith(fixing({ hole: 'short slot', slot: 'across the edge', edgeDistance: '24 mm' }));
const long = modelWith(fixing({ hole: 'long slot', edgeDistance: '30 mm' }));
const round = modelWith(fixing({ edgeDistance: '24 mm' }));
const panelOf = (model: typeof short) => model.geometry.panels.find(({ bolts }) => bolts.length > 0)!;

describe('slotted holes', () => {
  it('EN 1090-2, Table 11: M12 has short slots of 13 × 16 mm and long ones of 13 × 30 mm', () => {
    for (const [model, length] of [
      [short, 0.016],
      [long, 0.03],
    ] as const)
      for (const { hole, slot } of panelOf(model).bolts) expect([hole, slot!.length]).toEqual([0.013, length]);
  });

  it('run along or across the edge that their row lies along', () => {
    for (const { side, slot } of panelOf(short).bolts) expect(slot!.along).toBe(side.startsWith('main') ? 'x' : 'y');
    for (const { side, slot } of panelOf(across).bolts) expect(slot!.along).toBe(side.startsWith('main') ? 'y' : 'x');
  });

  it('take a rectangle and a disc out of the panel, and no more out of the tube than a round hole', () => {
    const [slotted, plain] = [panelOf(short), panelOf(round)];
    const more = slotted.bolts.length * 0.003;
    expect(plain.area - slotted.area).toBeCloseTo(more * 0.013, 12);
    expect(slotted.cutLength - plain.cutLength).toBeCloseTo(2 * more, 12);
    const tubes = (model: typeof short) =>
      model.mass.parts.filter(({ kind }) => kind === 'tubes').map(({ mass }) => mass);
    expect(tubes(short)).toEqual(tubes(round));
    const steel = (model: typeof short) => model.mass.parts.find(({ kind, name }) => kind === 'panels' && name.includes('bolted'))!.mass; // prettier-ignore
    expect(steel(short)).toBeLessThan(steel(round));
  });

  it('have the area, outline and second moments of a fine polygon of theirs', () => {
    const hole = { diameter: 0.013, slot: { length: 0.03, along: 'y' as const } };
    const ring = slotRing(0, 0, hole, 2000);
    let [area, xx, yy, edge] = [0, 0, 0, 0];
    ring.forEach(([x0, y0], i) => {
      const [x1, y1] = ring[(i + 1) % ring.length]!;
      const cross = x0 * y1 - x1 * y0;
      area += cross / 2;
      xx += (cross * (x0 ** 2 + x0 * x1 + x1 ** 2)) / 12;
      yy += (cross * (y0 ** 2 + y0 * y1 + y1 ** 2)) / 12;
      edge += Math.hypot(x1 - x0, y1 - y0);
    });
    const [own] = [holeMoments(hole)];
    for (const [exact, near] of [
      [holeArea(hole), area],
      [holePerimeter(hole), edge],
      [own[0], xx],
      [own[1], yy],
    ] as const)
      expect(Math.abs(near / exact - 1)).toBeLessThan(1e-6);
  });

  it('know the steel between them: two rows of slots end to end, side by side, and crossed (by hand)', () => {
    const at = (x: number, y: number, along?: 'x' | 'y'): Cutout => ({
      ...{ x, y, diameter: 10, purpose: 'bolt' as const },
      ...(along && { slot: { length: 30, along } }),
    });
    expect(holesApart(at(0, 0, 'x'), at(40, 0, 'x'))).toBe(10);
    expect(holesApart(at(0, 0, 'x'), at(0, 25, 'x'))).toBe(15);
    expect(holesApart(at(0, 0, 'x'), at(13, 24, 'y'))).toBe(Math.hypot(3, 14) - 10);
    expect(holesApart(at(0, 0, 'x'), at(5, 5, 'y'))).toBe(-10);
    expect(holesApart(at(0, 0), at(6, 8))).toBe(0);
  });

  it('a long slot without a plate washer, and one too near to the edge, are findings', () => {
    const found = (model: typeof short) => model.geometry.findings.map(({ id }) => id);
    expect(found(long)).toContain('slot-not-covered');
    expect(found(short)).not.toContain('slot-not-covered');
    const covered = fixing({
      ...{ hole: 'long slot', edgeDistance: '30 mm' },
      plateWasher: { width: '40 mm', thickness: '8 mm' },
    });
    expect(found(modelWith(covered))).not.toContain('slot-not-covered');
    // 1.5 · 13 = 19.5 mm from the centre of the round end, which lies 1.5 mm nearer to the edge than the bolt.
    const least = (edgeDistance: string) => found(modelWith(fixing({ hole: 'short slot', edgeDistance })));
    expect(least('20.9 mm')).toContain('edge-distance-too-small');
    expect(least('21.1 mm')).not.toContain('edge-distance-too-small');
  });
});

it('a slot stands in DXF as a polyline with half circles, in SVG as arcs, in the list with its length', () => {
  const { parts, files } = fabricationPack(short, {
    sheet: { width: 3, height: 1.5 },
    bar: 12,
    gap: 0.01,
    kerf: 0.003,
  });
  const { number, pattern } = parts.find(({ pattern: { holes } }) => holes.some(({ slot }) => slot))!;
  const file = (name: string) => files.find((one) => one.name === name)!.text;
  const drawn = new DxfParser()
    .parseSync(file(`${number}.dxf`))!
    .entities.filter(({ type, layer }) => type === 'POLYLINE' && layer === 'INSIDE_CONTOUR') as unknown as {
    vertices: { x: number; y: number; bulge?: number }[];
    shape: boolean;
  }[];
  const slots = pattern.holes.filter(({ slot }) => slot);
  expect(drawn).toHaveLength(slots.length);
  drawn.forEach(({ vertices, shape }, i) => {
    expect(shape).toBe(true);
    // Shoelace formula, and for each bulge b of a chord c the segment of a half circle, π c²/8.
    const area = vertices.reduce((sum, { x, y, bulge }, k) => {
      const next = vertices[(k + 1) % 4]!;
      const round = bulge === 1 ? (Math.PI * Math.hypot(next.x - x, next.y - y) ** 2) / 8 : 0;
      return sum + (x * next.y - next.x * y) / 2 + round;
    }, 0);
    expect(area).toBeCloseTo(1e6 * holeArea(slots[i]!), 4);
    const [mx, my] = [0, 1].map((c) => vertices.reduce((sum, v) => sum + (c ? v.y : v.x), 0) / 4) as [number, number];
    expect([mx, my].map((v) => v.toFixed(4))).toEqual([slots[i]!.x, slots[i]!.y].map((v) => (1000 * v).toFixed(4)));
  });
  expect(file(`${number}.svg`).match(/<path d="M[^"]*A6.5 6.5 0 0 0 [^"]*A6.5 6.5 0 0 0 [^"]*Z"\/>/g)).toHaveLength(slots.length); // prettier-ignore
  const rows = file('plate-holes.csv').trim().split('\r\n');
  expect(rows[0]).toContain('slot length mm,slot along');
  expect(rows.filter((row) => /,16,[xy]$/.test(row)).length).toBeGreaterThan(0);
});

it('plan and panel figure draw each slot, and the caption names its size and way', () => {
  const { plan, panel, caption } = modelFigures(short);
  const count = short.geometry.panels.reduce((sum, { bolts }) => sum + bolts.length, 0);
  expect(plan).toBe(count);
  expect(panel).toBe(panelOf(short).bolts.length);
  expect(caption).toContain('slots 13 × 16 along the edge, round holes ⌀ 13 in the tube');
});
