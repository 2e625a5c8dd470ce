import { describe, expect, it } from 'vitest';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { boltTension } from '../../core/checks/bolt-tension.ts';
import { tubeWallLine } from '../../core/checks/tube-wall-line.ts';
import { weldDirectional } from '../../core/checks/weld-directional.ts';
import { geometryOf } from '../../core/geometry/geometry-of.ts';
import type { Panel } from '../../core/geometry/geometry.ts';
import { demoModel, reads, situationOf } from '../checks/model-of.ts';
import { demoDocument } from './demo-document.ts';

const catalogue = catalogueWith();
const geometry = (...changes: unknown[]) => geometryOf(demoDocument(...changes), catalogue);
const panel = (...changes: unknown[]): Panel => geometry(...changes).panels.find(({ id }) => id === 'A1')!;
const deck = (change: unknown) => ({ designs: { deck: change } });
const sides = (laps: Record<string, string>) => deck({ overlap: { sides: laps } });
const fixing = { kind: 'welded', throat: '5 mm', pattern: 'all round', bolt: null, class: null, pitch: null, edgeDistance: null, shear: null, into: null }; // prettier-ignore
const welded = deck({ fixing });
const rounded = (...values: number[]) => values.map((value) => Number(value.toFixed(9)));
const uneven = sides({ mainLow: '45 mm', crossHigh: '70 mm' });

describe('an overlap stated for one side', () => {
  it('is the pair’s own words when every side says the same', () => {
    const { panels, areas } = geometry();
    const said = geometry(sides({ mainLow: '60 mm', mainHigh: '60 mm', crossLow: '60 mm', crossHigh: '60 mm' }));
    expect(said.areas).toEqual(areas);
    expect(said.panels.map(({ design: _, ...rest }) => rest)).toEqual(panels.map(({ design: _, ...rest }) => rest));
  });

  it('sets the outline of that side, the others keep the pair’s', () => {
    // tubes of 150 mm at 0 and 1100 mm along x, 0 and 1300 mm along y
    const { outline, bearings } = panel(uneven);
    expect(rounded(outline.x0, outline.y0, outline.x1, outline.y1)).toEqual([0.015, 0.03, 1.095, 1.285]);
    expect(bearings.map(({ lap, flatLap }) => rounded(lap, flatLap))).toEqual([
      [0.045, 0.033],
      [0.06, 0.048],
      [0.06, 0.048],
      [0.07, 0.058],
    ]);
  });

  it('moves bolts, spans and welds of that side alone', () => {
    const { bolts, fields } = panel(uneven);
    const at = (side: string, of: 'x' | 'y') => rounded(...new Set(bolts.filter((b) => b.side === side).map((b) => b[of]))); // prettier-ignore
    expect([at('mainLow', 'y'), at('mainHigh', 'y')]).toEqual([[0.06], [1.255]]);
    expect(at('crossHigh', 'x')).toEqual([1.065]);
    const { pressed, pulled } = fields[0]!;
    // pressed, the flats of the tubes hold it, wherever the panel ends on them
    expect(rounded(pressed.a, pressed.b)).toEqual([0.974, 1.174]);
    expect(rounded(pulled.a, pulled.b)).toEqual([1.02, 1.195]);
    const { weldRuns, fields: hung, area } = panel(uneven, welded);
    expect(weldRuns.map(({ length }) => rounded(length)[0])).toEqual([1.08, 1.08, 1.255, 1.255]);
    expect(rounded(hung[0]!.pulled.a, hung[0]!.pulled.b)).toEqual([1.08, 1.255]);
    expect(area).toBeCloseTo(1.08 * 1.255 - (Math.PI / 4) * 0.05 ** 2, 12);
  });

  it('is mirrored with the sides: areas and masses of panels stay', () => {
    const low = demoModel(sides({ mainLow: '40 mm', crossLow: '70 mm' }));
    const high = demoModel(sides({ mainHigh: '40 mm', crossHigh: '70 mm' }));
    expect(high.geometry.areas.solid).toBeCloseTo(low.geometry.areas.solid, 9);
    expect(high.mass.total).toBeCloseTo(low.mass.total, 9);
    // all four panels move along by half the difference, x by +30 mm and y by -20 mm from low to high
    const centre = (model: typeof low) => model.mass.parts.find(({ name }) => name.startsWith('Panels'))!.centre;
    expect(rounded(centre(high)[0]! - centre(low)[0]!, centre(high)[1]! - centre(low)[1]!)).toEqual([0.01, -0.02]);
  });

  it('is judged at the less favourable of two opposite sides', () => {
    const one = demoModel(sides({ crossHigh: '50 mm', mainLow: '55 mm' }));
    const both = demoModel(deck({ overlap: { onCross: '50 mm', onMain: '55 mm' } }));
    const down = (model: typeof one) => situationOf(model, 'service-down');
    for (const symbol of ['l_x', 'l_y'])
      expect(reads(boltTension, symbol, one, 'A1', down(one))).toBeCloseTo(
        reads(boltTension, symbol, both, 'A1', down(both)),
        12,
      );
    // least flat lap of a weld: 50 − 12 mm of corner radius
    expect(reads(weldDirectional, 'l_f', demoModel(sides({ crossHigh: '50 mm' }), welded), 'A1')).toBeCloseTo(0.038, 12); // prettier-ignore
    // the line on a tube's wall lies nearer its middle with the larger lap: tube 2 under the high edge of A1, tube 1 under its low edge
    const wide = demoModel(sides({ crossHigh: '70 mm' }));
    expect([reads(tubeWallLine, 'l_1', wide, '2'), reads(tubeWallLine, 'l_1', wide, '1')]).toEqual([0.07, 0.06]);
  });

  it('is found past its tube, short of the flat, or missing, and named with its tube', () => {
    const found = (laps: Record<string, string>, ...more: unknown[]) =>
      geometry(sides(laps), ...more).findings.filter(({ place }) => place === 'A1');
    expect(found({ mainHigh: '160 mm' }).find(({ id }) => id === 'overlap-past-tube')!.text).toMatch(
      /past tube B: 160\.0 mm/,
    );
    const short = found({ crossLow: '9 mm' }, welded).find(({ id }) => id === 'panel-does-not-bear')!.text;
    expect(short).toMatch(/on tube 1 its overlap of 9\.000 mm ends 3\.000 mm before the flat/);
    expect(found({ mainHigh: '0 mm' }).find(({ id }) => id === 'panel-does-not-bear')!.text).toMatch(
      /has no overlap on tube B\.$/,
    );
    // a pair of which one side is bare holds nothing as a pair
    expect(panel(sides({ mainHigh: '0 mm' })).fields[0]!.pressed.supports).toBe('cross tubes');
    expect(() => panel(sides({ mainHigh: '0 mm', crossLow: '0 mm' }))).toThrow(/60\.00 mm on A, 0 mm on B, 0 mm on 1/);
  });

  it('is refused with its field when negative', () =>
    expect(() => demoDocument(sides({ crossLow: '-5 mm' }))).toThrow(/must not be negative/));
});
