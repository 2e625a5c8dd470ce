import { describe, expect, it } from 'vitest';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { geometryOf } from '../../core/geometry/geometry-of.ts';
import { massReport } from '../../core/mass/mass-report-of.ts';
import { demoDocument } from '../geometry/demo-document.ts';

const catalogue = catalogueWith();
const report = (...changes: unknown[]) => {
  const document = demoDocument(...changes);
  return massReport(document, geometryOf(document, catalogue), catalogue);
};
const hung = (kind: string, points: [string, string][], more: object = {}) => ({
  grid: {
    suspension: {
      kind,
      apex: kind === 'bridle' ? '3 m' : null,
      attachments: points.map(([x, y], i) => ({ id: `S${i}`, x, y })),
      ...more,
    },
  },
});
const uneven = { panels: { B1: null, B3: null } };
const half = { grid: { mainTubes: { flooding: 'sealed', vent: null, drain: null } } };
const cross = (a: number[], b: number[]) => [
  a[1]! * b[2]! - a[2]! * b[1]!,
  a[2]! * b[0]! - a[0]! * b[2]!,
  a[0]! * b[1]! - a[1]! * b[0]!,
];

describe('a hanging plate', () => {
  it('is in equilibrium in air and in water: no moment about the point of hang', () => {
    for (const change of [
      hung('line', [['1.7 m', '1.3 m']]),
      hung('bridle', [
        ['0 m', '0 m'],
        ['1.1 m', '1.3 m'],
        ['3.3 m', '2.6 m'],
      ]),
    ]) {
      const r = report(
        uneven,
        half,
        { mass: { extras: [{ name: 'Box', mass: '60 kg', volume: '50 L', x: '3 m', y: '0.4 m', z: '0.2 m' }] } },
        change,
      );
      const { hanging, centre, centreOfBuoyancy: B, displaced } = r;
      const H = [hanging.hangX, hanging.hangY, hanging.hangZ];
      const arm = (p: readonly number[]) => p.map((v, k) => v - H[k]!);
      // the vertical, downwards, as the tilted plate sees it
      const down = ([x, y]: readonly [number, number]) => [Math.tan(y), -Math.tan(x), -1];
      const inAir = cross(
        arm(centre).map((v) => v * r.total),
        down(hanging.tilt.air),
      );
      const pull = arm(centre).map((v, k) => v * r.total - 1026 * displaced.asBuilt * arm(B)[k]!);
      const inWater = cross(pull, down(hanging.tilt.water!));
      for (const moment of [...inAir, ...inWater]) expect(Math.abs(moment)).toBeLessThan(1e-9 * r.total);
      expect(Math.hypot(...hanging.tilt.air)).toBeGreaterThan(0.01);
    }
  });

  it('turns its heavy side down', () => {
    // panels on the low y only: +y goes up, which is a right-handed turn about +x
    expect(report(uneven).hanging.tilt.air[0]).toBeGreaterThan(0);
    expect(report({ panels: { A1: null, B1: null } }).hanging.tilt.air[1]).toBeGreaterThan(0);
  });

  it('hangs level when it is even, without findings', () => {
    const { hanging, findings } = report();
    expect(Math.hypot(...hanging.tilt.air, ...hanging.tilt.water!)).toBeLessThan(1e-3);
    expect(findings).toEqual([]);
    expect(hanging.hangZ).toBeCloseTo(0.09 + 4, 12);
  });

  it('names the panel whose loss tilts it most, and by how much', () => {
    // studs leave no holes in the tubes, so a panel lost and a panel never there are the same plate
    const studs = { designs: { deck: { fixing: { into: 'welded stud' } } } };
    const { hanging } = report(studs);
    const without = ['A1', 'A3', 'B1', 'B3'].map((id) => ({
      id,
      tilt: report(studs, { panels: { [id]: null } }).hanging.tilt.water!,
    }));
    const tilts = without.map(({ tilt: [x, y] }) => Math.atan(Math.hypot(Math.tan(x), Math.tan(y))));
    expect(hanging.worstOpenBay!.tilt).toBeCloseTo(Math.max(...tilts), 9);
    expect(['A1', 'A3', 'B1', 'B3']).toContain(hanging.worstOpenBay!.bay);
    expect(report({ panels: { A1: null, A3: null, B1: null, B3: null } }).hanging.worstOpenBay).toBe(null);
  });

  it('is held by struts side by side: two leave it a line to turn about, three hold it', () => {
    const two = report(
      uneven,
      hung('strut', [
        ['0 m', '1.3 m'],
        ['3.3 m', '1.3 m'],
      ]),
    );
    expect(two.hanging.free).toBe('about a line');
    expect(two.hanging.tilt.air[0]).toBeGreaterThan(0.1);
    expect(two.hanging.tilt.air[1]).toBeCloseTo(0, 12);
    const three = report(
      uneven,
      hung('strut', [
        ['0 m', '0 m'],
        ['3.3 m', '0 m'],
        ['1.65 m', '2.6 m'],
      ]),
    );
    expect(three.hanging.free).toBe('nothing');
    expect(three.hanging.tilt).toEqual({ air: [0, 0], water: [0, 0] });
    expect(three.findings).toEqual([]);
  });

  it('needs an apex for a bridle', () => {
    const { grid, ...rest } = demoDocument();
    const { apex: _, ...suspension } = grid.suspension;
    const document = { ...rest, grid: { ...grid, suspension } };
    expect(() => massReport(document, geometryOf(document, catalogue), catalogue)).toThrow(/bridle has no apex/);
  });
});

describe('findings on hanging', () => {
  const ids = (...changes: unknown[]) => report(...changes).findings.map((f) => f.id);
  const weight = (z: string) => ({
    mass: { extras: [{ name: 'Mast', mass: '2 t', volume: '0 L', x: '1.65 m', y: '1.3 m', z }] },
  });

  it('say what is wrong', () => {
    expect(
      ids({ mass: { extras: [{ name: 'Float', mass: '10 kg', volume: '3 m^3', x: '1.65 m', y: '1.3 m', z: '0 m' }] } }),
    ).toEqual(['plate-floats']);
    expect(ids(hung('line', [['1.65 m', '1.3 m']]), weight('2 m'))).toEqual(['hangs-unstable']);
    expect(ids(uneven, hung('line', [['1.65 m', '1.3 m']]))).toEqual(['hangs-tilted']);
    expect(ids(hung('line', [['1.65 m', '1.3 m']]))).toEqual(['hangs-tilted-with-open-bay']);
    expect(
      ids(
        hung('strut', [
          ['0 m', '0 m'],
          ['0.5 m', '0 m'],
          ['0 m', '1.3 m'],
        ]),
      ),
    ).toEqual(['line-goes-slack', 'line-goes-slack']);
  });

  it('give no number for the tilt of a plate that floats', () => {
    const { hanging, submergedWeight } = report({
      mass: { extras: [{ name: 'Float', mass: '10 kg', volume: '3 m^3', x: '1 m', y: '1 m', z: '0 m' }] },
    });
    expect(hanging.tilt.water).toBe(null);
    expect(hanging.worstOpenBay).toBe(null);
    expect(submergedWeight.asBuilt).toBeLessThan(0);
  });
});
