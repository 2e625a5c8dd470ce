import { describe, expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { boltEdgeDistanceLargest } from '../../core/checks/bolt-edge-distance-largest.ts';
import { boltGroupInPlane } from '../../core/checks/bolt-group-in-plane.ts';
import { boltPitchLargest } from '../../core/checks/bolt-pitch-largest.ts';
import { boltTension } from '../../core/checks/bolt-tension.ts';
import { byPlaces } from '../../core/checks/by-places.ts';
import { checks } from '../../core/checks/index.ts';
import { traceCheck } from '../../core/checks/trace-check.ts';
import type { Model } from '../../core/model.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { missingFrom, reads, situationOf } from './model-of.ts';

type Changes = Readonly<Record<string, unknown>>;

/** The places of a panel's bolts in lines, as somebody would list them: from the panel's low corner. */
const listedAs = (model: Model, panelId: string): Changes[] => {
  const { bolts, outline } = model.panels.get(panelId)!;
  return bolts.map(({ x, y }) => ({ x: `${1000 * (x - outline.x0)} mm`, y: `${1000 * (y - outline.y0)} mm` }));
};

const design = (changes: Changes): Changes => ({ designs: { deck: changes } });
const listing = (places: readonly Changes[], more: Changes = {}): Changes =>
  design({ fixing: { places, pitch: null, edgeDistance: null, ...more } });

const bolted = checks.filter(({ id }) => /bolt|^panel-|^fatigue-|^tube-|spanner/.test(id));

/** A reason without the places of the points that it is about: which of two equal rows is told first is left open. */
const said = (reason: string): string => reason.replace(/: from x = .* m\. /, ': ');

/** Every row of the checks that bolts enter, without what only names it. */
const rowsOf = (model: Model) =>
  bolted.flatMap((check) =>
    checkRows(check, model).rows.map(({ id, place, situation, verdict, demand, capacity, utilisation, reason }) => ({ id, place, situation, verdict, demand, capacity, utilisation, reason })),
  ); // prettier-ignore

it.each<[string, readonly Changes[], string]>([
  ['one bay, four sides', [], 'A1'],
  ['one bay, pulled off from below', [design({ side: 'underside' })], 'A1'],
  ['corner bolts only', [design({ fixing: { pitch: '1.3 m' } })], 'A1'],
  ['on main tubes alone', [design({ support: 'main tubes' })], 'A1'],
  ['on cross tubes alone', [design({ support: 'cross tubes', overlap: { onMain: '0 mm', onCross: '60 mm' } })], 'A1'],
  ['two bays by two', [{ panels: { A1: null, A3: null, B1: null, B3: null, 'A1:B2': 'deck' } }], 'A1:B2'],
  ['a column of bays', [{ panels: { A1: null, A3: null, B1: null, B3: null, 'A1:B1': 'deck' } }], 'A1:B1'],
  ['slots along the edge', [design({ fixing: { hole: 'short slot', shear: 'slip-resistant', slipFactor: { value: 0.3, source: 'tested' }, preload: { ofStrength: 0.7, source: 'stated' } } })], 'A1'],
  ['slots across the edge', [design({ fixing: { hole: 'short slot', slot: 'across the edge', edgeDistance: '36 mm' }, overlap: { onMain: '70 mm', onCross: '70 mm' } })], 'A1'],
  ['through-bolts with sleeves', [design({ fixing: { into: 'through-bolt with sleeve', sleeve: { bore: '14 mm', outer: '22 mm' } } })], 'A1'],
  ['tapped pads, allowable stress', [{ basis: { table: 'AISC 360 ASD' } }, design({ fixing: { bolt: 'M16', pitch: '150 mm', into: 'tapped pad', pad: { material: 'S355 plate', thickness: '20 mm', width: '60 mm', throat: '5 mm' } } })], 'A1'],
])('gives the same in every check as bolts in lines where the list is those lines: %s', (_, changes, panel) => {
  const lines = modelOf(demoDocument(...changes));
  const listed = modelOf(demoDocument(...changes, listing(listedAs(lines, panel))));
  expect(listed.panels.get(panel)!.bolts.length).toBe(lines.panels.get(panel)!.bolts.length);
  const [want, got] = [rowsOf(lines), rowsOf(listed)];
  expect(got.length).toBe(want.length);
  const off = want.flatMap((row, i) => {
    const other = got[i]!;
    const near = (a: number | null, b: number | null): boolean => (a === null || b === null ? a === b : Math.abs(a - b) <= 1e-6 * Math.abs(a));
    const same = row.verdict === other.verdict && said(row.reason) === said(other.reason) && near(row.demand, other.demand) && near(row.capacity, other.capacity); // prettier-ignore
    return same ? [] : [{ row, other }];
  });
  expect(off.slice(0, 4)).toEqual([]);
  expect(want.filter(({ id, utilisation }) => id.startsWith('bolt-') && utilisation !== null).length).toBeGreaterThan(20);
}); // prettier-ignore

it('takes notched corners by the bolts that are there: distances as for lines, forces never above those of a ring with corner bolts', () => {
  const notched = design({ cornerNotch: '45 mm', overlap: { onMain: '65 mm', onCross: '65 mm' } });
  const lines = modelOf(demoDocument(notched));
  const listed = modelOf(demoDocument(notched, listing(listedAs(lines, 'A1'))));
  const detailing = (model: Model) =>
    rowsOf(model).filter(({ id }) => /edge-distance|bolt-pitch-largest|access/.test(id));
  expect(detailing(listed).map(({ capacity }) => capacity)).toEqual(detailing(lines).map(({ capacity }) => capacity === null ? null : expect.closeTo(capacity, 12))); // prettier-ignore
  const tension = (model: Model) => checkRows(boltTension, model).rows.map(({ utilisation }) => utilisation);
  const [ring, real] = [tension(lines), tension(listed)];
  real.forEach((use, i) => expect(use ?? 0).toBeLessThanOrEqual(ring[i] ?? 0));
  // Rows along x run between the bolts that a notch lets stand last, in five steps; a ring counts them from corner to corner.
  // The nearest two stand on either hand of a notch, each 45 mm past the other's line.
  expect(
    1000 *
      reads(
        checks.find(({ id }) => id === 'bolt-pitch')!,
        'p_1',
        listed,
        'A1',
      ),
  ).toBeCloseTo(Math.SQRT2 * 45, 6);
  expect(1000 * reads(byPlaces(boltTension), 's_x', listed, 'A1')).toBeCloseTo((1080 - 2 * 74.93) / 5, 1);
});

/** Corners, and what is added: a panel of 1070 × 1270 mm. */
const corners = ['low x, low y', 'high x, low y', 'high x, high y', 'low x, high y'].map((from) => ({ x: '30 mm', y: '30 mm', from })); // prettier-ignore
const sides = [
  { x: '235 mm', y: '30 mm' },
  { x: '535 mm', y: '24 mm' },
  { x: '835 mm', y: '30 mm' },
  { x: '0 mm', y: '605 mm', from: 'centre' },
  { x: '30 mm', y: '435 mm' },
  { x: '30 mm', y: '835 mm' },
  { x: '30 mm', y: '535 mm', from: 'high x, low y' },
];
const odd = (more: readonly Changes[] = []): Model => modelOf(demoDocument(listing([...corners, ...sides, ...more])));
const pulled = (model: Model) => situationOf(model, 'service-up');

describe('bolts of no pattern', () => {
  const model = odd();
  const form = byPlaces(boltTension);
  const read = (symbol: string, of = model): number => 1000 * reads(form, symbol, of, 'A1', pulled(of));

  it('stand where the list has them, measured from the edge that each names, and are numbered as listed', () => {
    const { bolts, outline } = model.panels.get('A1')!;
    const at = (id: string) => bolts.filter((b) => b.id === id).map(({ x, y }) => [1000 * (x - outline.x0), 1000 * (y - outline.y0)].map((mm) => Math.round(1e6 * mm) / 1e6))[0]; // prettier-ignore
    expect(at('A1-03')).toEqual([1040, 1240]);
    expect(at('A1-06')).toEqual([535, 24]);
    expect(at('A1-08')).toEqual([535, 1240]);
    expect(at('A1-11')).toEqual([1040, 535]);
    expect(bolts.map(({ tube }) => tube).join(' ')).toBe('A A B B A A A B 1 1 2');
  });

  it('hang on their own widest steps, by hand: rows along x 30-235-535-835-1040 and 30-535-1040, along y 30-435-835-1240 and 30-535-1240', () => {
    expect(read('s_x')).toBeCloseTo(505, 9);
    expect(read('s_y')).toBeCloseTo(705, 9);
    const block = byPlaces(checks.find(({ id }) => id === 'bolt-block-tear')!);
    expect(1000 * reads(block, 's_nx', model, 'A1', pulled(model))).toBeCloseTo(205, 9);
    expect(1000 * reads(block, 's_ny', model, 'A1', pulled(model))).toBeCloseTo(400, 9);
    expect([reads(block, 'n_x', model, 'A1', pulled(model)), reads(block, 'n_mx', model, 'A1', pulled(model))]).toEqual(
      [3, 5],
    );
    expect(reads(block, 'n_my', model, 'A1', pulled(model))).toBe(4);
  });

  it('have the lever of the bolt that has least: 24 mm to the edge pulled, 60 − 30 − 12 mm behind the flat pressed', () => {
    expect(read('l_y')).toBeCloseTo(24, 9);
    expect(read('l_x')).toBeCloseTo(30, 9);
    expect(1000 * reads(form, 'l_y', model, 'A1', situationOf(model, 'service-down'))).toBeCloseTo(18, 9);
  });

  it('are judged by real nearest and farthest distances: pitch 200.1 to 705 mm, edge 24 mm to the nearest', () => {
    const pitch = checks.find(({ id }) => id === 'bolt-pitch')!;
    expect(1000 * reads(pitch, 'p_1', model, 'A1')).toBeCloseTo(205, 6);
    expect(1000 * reads(boltPitchLargest, 'p_far', model, 'A1')).toBeCloseTo(705, 6);
    expect(
      1000 *
        reads(
          checks.find(({ id }) => id === 'bolt-edge-distance')!,
          'e_1',
          model,
          'A1',
        ),
    ).toBeCloseTo(24, 6);
    expect(1000 * reads(boltEdgeDistanceLargest, 'e_far', model, 'A1')).toBeCloseTo(30, 6);
    // Without its first corner the rows end 235 mm and 435 mm from there.
    const open = modelOf(demoDocument(listing([...corners.slice(1), ...sides])));
    expect(1000 * reads(boltEdgeDistanceLargest, 'e_far', open, 'A1')).toBeCloseTo(435, 6);
    expect(read('s_y', open)).toBeCloseTo(2 * (435 - 24), 6);
  });

  it('print what is computed: every check of theirs traces, and the group shows its sums', () => {
    let traced = 0;
    for (const check of bolted)
      for (const { place, situation, utilisation } of checkRows(check, model).rows) {
        if (utilisation === null) continue;
        const trace = traceCheck(check, model, place, situationOf(model, situation ?? undefined));
        expect('missing' in trace ? `${check.id}: ${trace.missing}` : '').toBe('');
        traced++;
      }
    expect(traced).toBeGreaterThan(100);
    const group = traceCheck(boltGroupInPlane, model, 'A1', pulled(model));
    if ('missing' in group) throw new Error(group.missing);
    expect(group.inputs.map(({ meaning }) => meaning).join('; ')).toMatch(/Σ r² of those bolts about their centroid/);
  });

  it('raise no second opinion on what their pattern decides', () => {
    const found = bolted.flatMap((check) => checkRows(check, model).findings.map(({ text }) => text));
    expect(found).toEqual([]);
  });
});

it('is not judged where a rule needs bolts along a side and the list has none, or a row and it has none', () => {
  const bare = modelOf(demoDocument(listing(corners.slice(0, 2))));
  const of = (id: string, model: Model) => checkRows(checks.find((check) => check.id === id)!, model).rows.find(({ place, situation }) => place === 'A1' && (situation === 'service-up' || situation === null))!; // prettier-ignore
  expect(of('bolt-tension', bare)).toMatchObject({
    verdict: 'cannot be judged',
    reason: expect.stringMatching(/a bolt along each side that holds the panel over A1: the list has none on the main tube of higher y/) as string, // prettier-ignore
  });
  const abreast = odd([{ x: '235 mm', y: '8 mm' }]);
  expect(missingFrom(byPlaces(checks.find(({ id }) => id === 'bolt-block-tear')!), 's_nx', abreast, 'A1')).toMatch(
    /bolts abreast/,
  );
  expect(of('bolt-block-tear', abreast).verdict).toBe('cannot be judged');
  expect(of('bolt-shear', abreast).utilisation).not.toBeNull();
  const outside = odd([{ x: '535 mm', y: '-4 mm' }]);
  expect(of('bolt-tension', outside).reason).toMatch(/does not lie inside the panel's edge/);
});

it.each<[string, Changes, RegExp]>([
  ['both', { places: corners }, /stand on listed places, and a pitch is given as well/],
  ['neither', { pitch: null }, /Bolts in lines need a pitch/],
  ['an empty list', { places: [], pitch: null, edgeDistance: null }, /too small|at least|>=1/i],
  ['a place of no length', { places: [{ x: '3 kg', y: '1 mm' }], pitch: null, edgeDistance: null }, /mass|length/],
  ['a datum that is none', { places: [{ x: '3 mm', y: '1 mm', from: 'left' }], pitch: null, edgeDistance: null }, /low x, low y/],
])('refuses a list that says %s', (_, fixing, text) => {
  expect(() => demoDocument(design({ fixing }))).toThrow(text);
}); // prettier-ignore
