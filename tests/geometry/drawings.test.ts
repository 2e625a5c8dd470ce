import { describe, expect, it } from 'vitest';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { drawnLength } from '../../core/geometry/drawn-length.ts';
import { equalSteps } from '../../core/geometry/equal-steps.ts';
import { geometryOf } from '../../core/geometry/geometry-of.ts';
import type { Point } from '../../core/geometry/geometry.ts';
import { panelDrawing } from '../../core/geometry/panel-drawing.ts';
import { planDrawing } from '../../core/geometry/plan-drawing.ts';
import { sectionThroughFixing } from '../../core/geometry/section-through-fixing.ts';
import { demoDocument } from './demo-document.ts';

const catalogue = catalogueWith();
const text = drawnLength('metric');
const geometry = (...changes: unknown[]) => geometryOf(demoDocument(...changes), catalogue);
const section = (...changes: unknown[]) => sectionThroughFixing(geometry(...changes), 'A1', catalogue, text);
const area = (ring: readonly Point[]) =>
  ring.reduce((s, [x, y], i) => s + (x * ring[(i + 1) % ring.length]![1] - ring[(i + 1) % ring.length]![0] * y) / 2, 0);
const box = (rings: readonly (readonly Point[])[]) => {
  const all = rings.flat();
  const of = (k: 0 | 1) =>
    [Math.min(...all.map((p) => p[k])), Math.max(...all.map((p) => p[k]))].map((v) => Number(v.toFixed(6)));
  return [...of(0), ...of(1)];
};
const into = (kind: string) => ({ designs: { deck: { fixing: { into: kind } } } });

describe('the section through a fixing', () => {
  it('cuts the tube with the area of its section', () => {
    const { shapes, tube } = section();
    const rings = shapes.find((s) => s.role === 'tube')!.rings;
    // SHS 150 × 150 × 8 hot finished, EN 10210-2: 44.8 cm²; twelve chords for a quarter arc lose 0.29 % of its disc: 0.007 cm²
    expect(tube).toBe('A');
    expect(Math.abs((Math.abs(area(rings[0]!)) - Math.abs(area(rings[1]!))) / 100 - 44.8)).toBeLessThan(0.05 + 0.007);
    expect(box(rings)).toEqual([-75, 75, -150, 0]);
  });

  it('sets panel and bolt where they are', () => {
    const { shapes, dimensions } = section();
    const role = (name: string) => shapes.filter((s) => s.role === name).map((s) => box(s.rings));
    expect(role('panel')).toEqual([[15, 187.5, 0, 10]]);
    // axis 30 mm inside the edge; washer of M12 2.5 mm thick, 24 mm across (ISO 7089)
    expect(role('washer')).toEqual([[33, 57, 10, 12.5]]);
    expect(role('bolt')[0]!.slice(0, 2)).toEqual([39, 51]);
    // across the tube; then from the panel's edge: bolt, end of the flat, face; the panel; the tube's height
    expect(dimensions.map((d) => d.text)).toEqual(['150', '30', '48', '60', '10', '150']);
  });

  it('draws each way into the tube, and the weld', () => {
    const roles = (...changes: unknown[]) => section(...changes).shapes.map((s) => s.role);
    expect(roles(into('through-bolt with sleeve'))).toEqual([
      'tube',
      'panel',
      'sleeve',
      'sleeve',
      'bolt',
      'washer',
      'bolt',
      'washer',
      'nut',
    ]);
    expect(roles(into('welded stud'))).toEqual(['tube', 'panel', 'bolt', 'washer', 'nut']);
    expect(roles(into('tapped pad'))).toEqual(['tube', 'panel', 'pad', 'bolt', 'washer', 'bolt']);
    // A bar round the tube: two legs, the bar under it, and nut and washer on each.
    expect(roles(into('clamp'))).toEqual([
      'tube',
      'panel',
      'pad',
      'bolt',
      'bolt',
      'bolt',
      'washer',
      'nut',
      'washer',
      'nut',
    ]);
    const welded = section({
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
    });
    const weld = welded.shapes.find((s) => s.role === 'weld')!;
    expect(Math.abs(area(weld.rings[0]!))).toBeCloseTo(25, 9); // throat² of an equal fillet
    // a leg of √2 throats, measured from the panel's edge away from it
    const leg = welded.dimensions.find((d) => d.text.startsWith('a'))!;
    expect([leg.text, leg.from[0] - leg.to[0]]).toEqual(['a 5, z 7.1', expect.closeTo(Math.SQRT2 * 5, 9)]);
  });

  it('is upside down for an underside panel', () => {
    const { shapes } = section({ designs: { deck: { side: 'underside' } } });
    expect(box(shapes.find((s) => s.role === 'panel')!.rings)).toEqual([15, 187.5, -160, -150]);
  });

  it('refuses a panel that is not there', () =>
    expect(() => sectionThroughFixing(geometry(), 'Z1', catalogue, text)).toThrow(
      /no panel “Z1” to draw. Name one of: A1, A3, B1, B3/,
    ));
});

describe('the plan', () => {
  it('hides main tubes under stacked cross tubes, and nothing else without panels', () => {
    const { lines } = planDrawing(
      geometry({ grid: { arrangement: 'stacked' }, panels: { A1: null, A3: null, B1: null, B3: null } }),
      text,
    );
    const hidden = lines.filter((l) => l.hidden);
    expect(new Set(hidden.map((l) => l.id))).toEqual(new Set(['A', 'B', 'C']));
    // two edges of three tubes under four tubes 150 wide; cross tubes end flush with the outer main tubes, whose edges stay seen
    const under = hidden.reduce((s, l) => s + Math.hypot(l.to[0] - l.from[0], l.to[1] - l.from[1]), 0);
    expect(under).toBeCloseTo(4 * 4 * 150, 6);
  });

  it('keeps the length of every edge, hidden and seen together', () => {
    const g = geometry();
    const { lines } = planDrawing(g, text);
    const length = (id: string, role: string) =>
      lines
        .filter((l) => l.id === id && l.role === role)
        .reduce((s, l) => s + Math.hypot(l.to[0] - l.from[0], l.to[1] - l.from[1]), 0);
    expect(length('A1', 'panel')).toBeCloseTo(2 * (1070 + 1270), 6);
    expect(length('A', 'tube')).toBeCloseTo(2 * (3450 + 150), 6);
    expect(length('1', 'tube')).toBeCloseTo(2 * 2 * (1150 + 150), 6);
  });

  it('names tubes and bays and measures the whole', () => {
    const { labels, dimensions, circles, extents } = planDrawing(geometry(), text);
    expect(labels.map((l) => l.text)).toEqual(['A', 'B', 'C', '1', '2', '3', '4', 'A1', 'A2', 'A3', 'B1', 'B2', 'B3']);
    expect(dimensions.map((d) => d.text)).toEqual(['3450', '2750', '2 × 1300', '3 × 1100']);
    expect(circles.filter((c) => c.role === 'bolt').length).toBe(4 * 26);
    expect(circles.filter((c) => c.role === 'hole').length).toBe(4);
    expect(Object.values(extents).map((v) => Number(v.toFixed(6)))).toEqual([-75, -75, 3375, 2675]);
  });
});

describe('a panel by itself', () => {
  const drawing = (id: string, ...changes: unknown[]) => {
    const of = geometry(...changes);
    return panelDrawing(
      of,
      of.panels.find((panel) => panel.id === id)!,
      text,
    );
  };
  /** Texts of the dimensions that lie along one edge of the panel, row by row. */
  const along = ({ dimensions, extents }: ReturnType<typeof drawing>, edge: 'x0' | 'x1' | 'y0' | 'y1') => {
    const k = edge.startsWith('x') ? 0 : 1;
    return dimensions
      .filter(({ from, to }) => from[k] === to[k] && Math.abs(from[k] - extents[edge]) < 1e-9)
      .map((d) => `${d.row}: ${d.text}`);
  };

  it('has its size, overlaps and opening on the low sides, edge distances and pitches on the high sides', () => {
    const one = drawing('A1');
    // opening 950 × 1150, overlaps of 60, edge distance 30; 1010 and 1210 mm at pitches of at most 200 mm
    expect(along(one, 'y0')).toEqual(['0: 60', '0: 60', '0: 950', '1: 1070']);
    expect(along(one, 'x0')).toEqual(['0: 60', '0: 60', '0: 1150', '1: 1270']);
    expect(along(one, 'y1')).toEqual(['0: 30', '0: 30', '0: 6 × 168.3']);
    expect(along(one, 'x1')).toEqual(['0: 30', '0: 30', '0: 7 × 172.9']);
    expect(one.circles.filter(({ role }) => role === 'bolt').length).toBe(26);
    expect(one.labels.map((label) => label.text)).toEqual(['A', 'B', '1', '2']);
  });

  it('shows each side’s own overlap, and the faces of a tube between its bays', () => {
    const apart = drawing('A1', {
      designs: { deck: { overlap: { sides: { crossHigh: '70 mm', mainLow: '45 mm' } } } },
    });
    expect(along(apart, 'y0')).toEqual(['0: 60', '0: 70', '0: 950', '1: 1080']);
    expect(along(apart, 'x0')).toEqual(['0: 45', '0: 60', '0: 1150', '1: 1255']);
    const two = drawing('A1:A2', { panels: { A1: null, 'A1:A2': 'deck' } });
    expect(two.lines.filter(({ id }) => id === '2').map(({ from }) => Math.round(from[0]))).toEqual([1025, 1175]);
    // from bolt to tube 2: 1100 − 15 − 30 = 1055 mm, 6 pitches on either hand
    expect(along(two, 'y1').at(-1)).toBe('0: 12 × 175.8');
  });
});

describe('the text of a dimension', () => {
  it('has no unit and no idle zeros: tenths of a millimetre, thousandths of an inch', () => {
    const inch = drawnLength('inch');
    expect([0, 0.046, 0.03655, 0.0004, 1.27, 12.5, -0.16, 0.00996].map(text)).toEqual(['0', '46', '36.5', '0.4', '1270', '12\u202f500', '−160', '10']); // prettier-ignore
    expect([0.0254, 0.05239375, 0.3048, 0.01905, 2.54].map(inch)).toEqual(['1', '2.063', '12', '0.75', '100']);
  });

  it('takes equal steps together', () =>
    expect(equalSteps([0, 65, 130, 160, 190, 255])).toEqual([
      { from: 0, to: 130, count: 2 },
      { from: 130, to: 190, count: 2 },
      { from: 190, to: 255, count: 1 },
    ]));
});
