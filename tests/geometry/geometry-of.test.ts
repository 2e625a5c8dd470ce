import { describe, expect, it } from 'vitest';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { geometryOf } from '../../core/geometry/geometry-of.ts';
import type { Geometry, Panel } from '../../core/geometry/geometry.ts';
import { demoDocument } from './demo-document.ts';

const catalogue = catalogueWith();
const geometry = (...changes: unknown[]): Geometry => geometryOf(demoDocument(...changes), catalogue);
const panel = (id: string, ...changes: unknown[]): Panel => geometry(...changes).panels.find((p) => p.id === id)!;
const stacked = { grid: { arrangement: 'stacked' } };
const deck = (change: unknown) => ({ designs: { deck: change } });
const welded = (change: object) =>
  deck({
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
      ...change,
    },
  });

describe('tubes', () => {
  it('are cut between the main tubes’ faces when flush, with stubs where the overhang passes half the width', () => {
    // spacing 1.3 m, tubes 150 mm wide: pieces of 1.15 m; overhang 200 mm leaves stubs of 125 mm
    const lengths = (overhang: string) =>
      geometry({ grid: { crossTubes: { overhang } } }).crossTubes[0]!.pieces.map(([from, to]) =>
        Number((to - from).toFixed(9)),
      );
    expect(lengths('75 mm')).toEqual([1.15, 1.15]);
    expect(lengths('0 mm')).toEqual([1.15, 1.15]);
    expect(lengths('200 mm')).toEqual([0.125, 1.15, 1.15, 0.125]);
  });

  it('lie on each other when stacked, tops level when flush', () => {
    const levels = ({ mainTubes, crossTubes }: Geometry) =>
      [mainTubes[0]!, crossTubes[0]!].map((t) => [t.bottom, t.top]);
    expect(levels(geometry(stacked, deck({ support: 'cross tubes' })))).toEqual([
      [-0.15, 0],
      [0, 0.15],
    ]);
    expect(levels(geometry({ grid: { crossTubes: { section: 'RHS 200x150x8 hot' } } }))).toEqual([
      [-0.15, 0],
      [-0.2, 0],
    ]);
  });

  it('are lettered past Z, and take ids that are free', () => {
    const at = (n: number) => Array.from({ length: n }, (_, i) => ({ at: `${0.4 * i} m` }));
    const ids = (tubes: unknown[]) =>
      geometry({
        grid: { mainTubes: { count: null, spacing: null, tubes } },
        panels: { A1: null, A3: null, B1: null, B3: null },
      }).mainTubes.map((t) => t.id);
    expect(ids(at(28)).slice(25)).toEqual(['Z', 'AA', 'AB']);
    expect(ids([{ at: '0 m' }, { at: '1 m', id: 'B' }, { at: '2 m' }])).toEqual(['A', 'B', 'C']);
  });

  it('keep their bays’ ids when a tube is put between, with an id of its own or at the end of the list', () => {
    const three = [{ at: '0 m' }, { at: '1.3 m' }, { at: '2.6 m' }];
    const bays = (tubes: unknown[]) =>
      new Map(
        geometry({ grid: { mainTubes: { count: null, spacing: null, tubes } } }).bays.map((b) => [b.id, b.opening.y0]),
      );
    const before = bays(three);
    for (const after of [
      bays([three[0], { at: '1.9 m', id: 'N' }, three[1], three[2]]),
      bays([...three, { at: '1.9 m' }]),
    ]) {
      for (const [id, y0] of before) expect(after.get(id)).toBe(y0);
      expect(after.size).toBe(before.size + 3);
    }
  });

  it('leave no bay where a short tube does not reach, and close the bay behind it', () => {
    const tubes = [{ at: '0 m' }, { at: '0.6 m', to: '1.1 m' }, { at: '1.3 m' }];
    const { bays } = geometry({
      grid: { mainTubes: { count: null, spacing: null, tubes } },
      panels: { A1: null, A3: null, B1: null, B3: null },
    });
    // tube B crosses 1 and 2 only: A1 and B1 on its sides, none where it ends, from 3 on the bay reaches from A to C
    expect(bays.map((b) => [b.id, ...b.main])).toEqual([
      ['A1', 'A', 'B'],
      ['A3', 'A', 'C'],
      ['B1', 'B', 'C'],
    ]);
  });

  it.each([
    ['given twice', { mainTubes: { tubes: [{ at: '0 m' }, { at: '1 m' }] } }, /The tubes are given twice/],
    ['not placed', { mainTubes: { count: null } }, /count.* is missing/],
    [
      'doubled ids',
      {
        mainTubes: { count: null, spacing: null, tubes: [{ at: '0 m', id: 'X' }, { at: '1 m' }] },
        crossTubes: { count: null, spacing: null, tubes: [{ at: '0 m', id: 'X' }, { at: '1 m' }] },
      },
      /Two tubes have the id “X”: the main tube at 0 m and the cross tube at 0 m/,
    ],
    [
      'overlapping',
      { mainTubes: { spacing: '140 mm' } },
      /Tubes A and B overlap: their centre lines are 140.0 mm apart, their widths need 150.0 mm/,
    ],
    [
      'crossing nothing',
      {
        mainTubes: {
          count: null,
          spacing: null,
          tubes: [{ at: '0 m' }, { at: '1 m' }, { at: '2 m', from: '0.3 m', to: '0.6 m' }],
        },
      },
      /Tube C crosses no cross tube/,
    ],
    [
      'ending before they begin',
      { mainTubes: { count: null, spacing: null, tubes: [{ at: '0 m' }, { at: '1 m', from: '2 m', to: '1 m' }] } },
      /Tube B ends at 1 m, before it begins at 2 m/,
    ],
    [
      'too many',
      { mainTubes: { count: 60, spacing: '0.5 m' }, crossTubes: { count: 60, spacing: '0.5 m' } },
      /3481 bays, more than the 2500/,
    ],
  ])('are refused when %s', (_, grid, message) => expect(() => geometry({ grid })).toThrow(message));
});

describe('panels', () => {
  it.each([
    ['a bay that is not there', { Z9: 'deck' }, /there is no bay “Z9”.*The bays are: A1, A2, A3, B1, B2, B3\./],
    ['an unknown design', { A1: 'lid' }, /of the design “lid”, which does not exist.*Name one of: deck/],
    ['a malformed key', { 'A1:B2:C3': 'deck' }, /“A1:B2:C3” names no bay and no rectangle/],
    ['a bay covered twice', { 'A1:A2': 'deck' }, /Bay A1 is covered twice: by the panels “A1” and “A1:A2”/],
  ])('are refused for %s', (_, panels, message) => expect(() => geometry({ panels })).toThrow(message));

  it('are refused where no pair of tubes holds them, and where corrosion leaves nothing', () => {
    expect(() => geometry(stacked, deck({ support: 'main tubes' }))).toThrow(/hangs in the air/);
    expect(() => geometry({ protection: { lossPerFace: { panel: '5 mm' } } })).toThrow(/nothing is left/);
    expect(() => geometry(deck({ cornerNotch: '540 mm' }))).toThrow(/leave nothing of its edge/);
    expect(() => geometry(welded({ pattern: 'intermittent', run: '50 mm' }))).toThrow(
      /need the length of each run and of the gap/,
    );
  });

  it('are refused on both sides of one bay: a bay has one panel', () => {
    const both = {
      designs: { floor: { ...demoRaw.deck, side: 'underside' } },
      panels: { A1: 'deck', 'A1:A1': 'floor' },
    };
    expect(() => geometry(both)).toThrow(/Bay A1 is covered twice: by the panels “A1” and “A1:A1”/);
  });

  it('have areas and cut lengths as worked by hand', () => {
    // opening 950 × 1150, laps of 60: 1070 × 1270; pitches between bolt lines of 1010 and 1210: 6 and 7, so 26 bolts in 13 mm holes
    const { area, cutLength, bolts, outline } = panel('A1');
    expect(bolts.length).toBe(26);
    expect(outline.x1 - outline.x0).toBeCloseTo(1.07, 12);
    expect(area).toBeCloseTo(1.07 * 1.27 - (Math.PI / 4) * (0.05 ** 2 + 26 * 0.013 ** 2), 12);
    expect(cutLength).toBeCloseTo(2 * (1.07 + 1.27) + Math.PI * (0.05 + 26 * 0.013), 12);
    const notched = panel('A1', deck({ cornerNotch: '100 mm' }));
    expect(notched.area + notched.cutouts.reduce((s, c) => s + (Math.PI / 4) * c.diameter ** 2, 0)).toBeCloseTo(
      1.07 * 1.27 - 0.04,
      12,
    );
    expect(notched.contour.length).toBe(12);
  });

  it('number bolts clockwise from the low corner, at equal pitch', () => {
    const { bolts, outline } = panel('A1');
    const [first, second] = bolts;
    expect(
      [first!.id, first!.x - outline.x0, first!.y - outline.y0, first!.side].map((v) =>
        typeof v === 'number' ? Number(v.toFixed(9)) : v,
      ),
    ).toEqual(['A1-01', 0.03, 0.03, 'mainLow']);
    expect(second!.side).toBe('crossLow');
    expect(second!.pitch).toBeCloseTo(1.21 / 7, 12);
    // clockwise seen from above: the signed area of the ring of bolts is negative
    const turn =
      bolts.reduce(
        (s, b, i) => s + b.x * bolts[(i + 1) % bolts.length]!.y - bolts[(i + 1) % bolts.length]!.x * b.y,
        0,
      ) / 2;
    expect(turn).toBeCloseTo(-1.01 * 1.21, 12);
    for (const bolt of bolts)
      expect([bolt.edge2, bolt.fromFace].map((v) => Number(v.toFixed(9)))).toEqual([0.03, 0.03]);
  });

  it('keep the edge distance at notches, and lose their corner bolts to them', () => {
    for (const notch of [5, 20, 60, 100]) {
      const { bolts, outline } = panel('A1', deck({ cornerNotch: `${notch} mm` }));
      const s = notch / 1000;
      const clear = bolts.map(({ x, y }) => {
        const [dx, dy] = [Math.min(x - outline.x0, outline.x1 - x), Math.min(y - outline.y0, outline.y1 - y)];
        return Math.min(dx, dy, Math.hypot(Math.max(dx - s, 0), Math.max(dy - s, 0)));
      });
      expect(Math.min(...clear)).toBeCloseTo(0.03, 9);
      const corners = bolts.filter(
        ({ x, y }) => Math.abs(x - outline.x0 - 0.03) < 1e-9 && Math.abs(y - outline.y0 - 0.03) < 1e-9,
      );
      // the corner bolt stands 30 √2 = 42.4 mm from the corner: it stays while a notch leaves 30 mm of that, up to 8.8 mm
      expect(corners.length).toBe(notch < 8.8 ? 1 : 0);
    }
  });

  it('put bolts over the tubes between their bays', () => {
    const two = panel('A1:A2', { panels: { A1: null, A3: null, B1: null, B3: null, 'A1:A2': 'deck' } });
    const inner = two.bolts.filter((b) => b.inner);
    expect(new Set(inner.map((b) => b.tube))).toEqual(new Set(['2']));
    expect(inner.every((b) => Math.abs(b.x - 1.1) < 1e-12 && b.fromFace === 0.075)).toBe(true);
    // 7 pitches of the line, ends shared with the lines on the main tubes
    expect(inner.length).toBe(6);
    expect(two.bolts.filter((b) => Math.abs(b.x - 1.1) < 1e-9).length).toBe(8);
  });

  it('are bolted and welded only on sides at their level', () => {
    const top = panel('A1', stacked, deck({ support: 'cross tubes' }));
    expect(top.bearings.map((b) => [b.side, b.level, b.fixed])).toEqual([
      ['mainLow', false, false],
      ['mainHigh', false, false],
      ['crossLow', true, true],
      ['crossHigh', true, true],
    ]);
    expect(new Set(top.bolts.map((b) => b.tube))).toEqual(new Set(['1', '2']));
    expect([top.bottom, top.top]).toEqual([0.15, 0.16]);
    const below = panel('A1', stacked, deck({ side: 'underside', support: 'main tubes' }));
    expect(new Set(below.bolts.map((b) => b.tube))).toEqual(new Set(['A', 'B']));
    expect([below.bottom, below.top]).toEqual([-0.16, -0.15]);
    expect(new Set(panel('A1', welded({ pattern: 'two sides' })).weldRuns.map((r) => r.side))).toEqual(
      new Set(['crossLow', 'crossHigh']),
    );
  });

  it('have intermittent welds that begin and end with a run and keep to the stated gap', () => {
    const { weldRuns } = panel('A1', welded({ pattern: 'intermittent', run: '100 mm', gap: '150 mm' }));
    const low = weldRuns.filter((r) => r.side === 'mainLow');
    // 1070 mm: n ≥ (1070 + 150) / 250 = 4.88, so 5 runs, gaps (1070 − 500) / 4 = 142.5 mm
    expect(low.length).toBe(5);
    expect(low[1]!.from[0] - low[0]!.to[0]).toBeCloseTo(0.1425, 12);
    expect(low[4]!.to[0] - low[0]!.from[0]).toBeCloseTo(1.07, 12);
  });
});

describe('fields', () => {
  const spans = ({ a, b, supports }: { a: number; b: number; supports: string }) => [
    Number(a.toFixed(9)),
    Number(b.toFixed(9)),
    supports,
  ];

  it('span between the ends of the corner radii when pressed, between bolt lines when pulled', () => {
    const [field] = panel('A1').fields;
    // opening 950 × 1150 and twice the radius of 12 mm; bolt lines 1070 − 60 and 1270 − 60
    expect(spans(field!.pressed)).toEqual([0.974, 1.174, 'four sides']);
    expect(spans(field!.pulled)).toEqual([1.01, 1.21, 'bolts']);
    expect(
      [field!.pulled.boltsAlongX, field!.pulled.boltsAlongY, field!.pulled.insetX].map((v) => Number(v.toFixed(9))),
    ).toEqual([7, 8, 0.03]);
    expect(field!.area).toBeCloseTo(1.07 * 1.27, 12);
  });

  it('end at the panel’s edge where the lap ends before the flat', () => {
    const [field] = panel('A1', deck({ overlap: { onMain: '8 mm', onCross: '60 mm' } }), welded({})).fields;
    expect(spans(field!.pressed)).toEqual([0.974, 1.166, 'four sides']);
    expect(spans(field!.pulled)).toEqual([1.07, 1.166, 'four sides']);
  });

  it('hang on two lines in a stacked grid', () => {
    const [field] = panel('A1', stacked, deck({ support: 'cross tubes' })).fields;
    expect(spans(field!.pressed)).toEqual([0.974, 1.27, 'cross tubes']);
    expect(spans(field!.pulled)).toEqual([1.01, 1.21, 'bolts']);
    expect([field!.pulled.boltsAlongX, field!.pulled.boltsAlongY]).toEqual([2, 8]);
  });

  it('of several bays meet at the tube between, and share the panel’s outline', () => {
    const cover = { panels: { A1: null, A3: null, B1: null, B3: null, 'A1:B2': 'deck' } };
    const { fields, outline } = panel('A1:B2', cover);
    expect(fields.map((f) => f.bay)).toEqual(['A1', 'A2', 'B1', 'B2']);
    for (const field of fields) {
      expect(spans(field.pressed)).toEqual([0.974, 1.174, 'four sides']);
      // opening and lap less the edge distance, and half the tube between: 950 + 60 − 30 + 75
      expect(spans(field.pulled)).toEqual([1.055, 1.255, 'bolts']);
    }
    expect(fields.reduce((s, f) => s + f.area, 0)).toBeCloseTo(
      (outline.x1 - outline.x0) * (outline.y1 - outline.y0),
      12,
    );
    // welded along its edge only, nothing holds it to the tubes between when pulled
    expect(spans(panel('A1:B2', cover, welded({})).fields[0]!.pulled)).toEqual([2.17, 2.57, 'four sides']);
  });
});

const demoRaw = {
  deck: {
    thickness: '10 mm',
    material: 'S355 plate',
    overlap: { onMain: '60 mm', onCross: '60 mm' },
    support: 'four sides',
    holes: [],
    fixing: { kind: 'welded', throat: '5 mm', pattern: 'all round' },
  },
};
