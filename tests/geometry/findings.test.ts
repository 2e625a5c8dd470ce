import { describe, expect, it } from 'vitest';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { geometryOf } from '../../core/geometry/geometry-of.ts';
import { demoDocument } from './demo-document.ts';

const catalogue = catalogueWith();
const findings = (...changes: unknown[]) => geometryOf(demoDocument(...changes), catalogue).findings;
const deck = (change: unknown) => ({ designs: { deck: change } });
const fixing = (change: unknown) => deck({ fixing: change });
const welded = (change: object) =>
  fixing({
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
  });
const stacked = { grid: { arrangement: 'stacked' } };
const hole = (x: string, y: string, purpose = 'vent', diameter = '50 mm') => ({ x, y, diameter, purpose });
const vent = hole('0 mm', '0 mm');
const underside = deck({ side: 'underside', holes: [hole('0 mm', '0 mm', 'drain')] });

describe('a clean document', () => {
  it.each([
    ['flush, bolted, topside', []],
    ['flush, bolted, underside', [underside]],
    ['flush, welded', [welded({})]],
    ['corner bolts only', [fixing({ pitch: '1.3 m' })]],
    ['corner bolts, listed', [listing([])]],
    ['stacked, topside on cross tubes', [stacked, deck({ support: 'cross tubes' })]],
    ['stacked, underside on main tubes', [stacked, underside, deck({ support: 'main tubes' })]],
    ['sealed tubes without holes', [{ grid: { mainTubes: { flooding: 'sealed', vent: null, drain: null } } }]],
  ])('has no findings: %s', (_, changes) => expect(findings(...changes)).toEqual([]));
});

/** Kind of finding, the change that provokes it, where, and a figure worked by hand that its text must hold. */
const provoked: readonly [id: string, changes: unknown[], place: string, text: RegExp][] = [
  ['panel-does-not-bear', [stacked], 'A1', /tube A lies at another level; tube B/],
  // corner radius of the hot finished section: 1.5 × 8 = 12 mm
  [
    'panel-does-not-bear',
    [deck({ overlap: { onMain: '9 mm' }, support: 'four sides' })],
    'A1',
    /on tube A its overlap of 9\.000 mm ends 3\.000 mm before the flat/,
  ],
  [
    'overlap-past-tube',
    [deck({ overlap: { onCross: '160 mm' } })],
    'A1',
    /tube 1: 160\.0 mm onto a width of 150\.0 mm/,
  ],
  // row 60 − 45 = 15 mm from the tube's face, 9 mm of plug: 6 mm, and the corner's radius is 12 mm
  [
    'plug-off-flat',
    [welded({ plugs: { diameter: '18 mm', pitch: '100 mm', edgeDistance: '45 mm' } })],
    'A1',
    /⌀ 18\.00 mm, reach past the flat of tube A/,
  ],
  // two laps of 80 mm on a tube 150 mm wide
  ['panels-collide', [deck({ overlap: { onMain: '80 mm' } })], 'A1', /A1 and B1 .* 10\.00 mm along y/],
  ['weld-not-all-round', [stacked, welded({}), deck({ support: 'cross tubes' })], 'A1', /no tube along A, B: 2 sides/],
  ['intermittent-weld-in-water', [welded({ pattern: 'intermittent', run: '100 mm', gap: '100 mm' })], 'A1', /4\.3\.2/],
  // an edge distance of 65 mm on a lap of 60 mm: the leg stands 5 mm beside the tube, less than half its hole
  ['clamp-on-tube', [fixing({ into: 'clamp', edgeDistance: '65 mm' })], 'A1', /lies 5\.000 mm beside tube/],
  ['bolt-off-tube', [fixing({ edgeDistance: '65 mm' })], 'A1', /5\.000 mm beside tube/],
  // 60 − 45 = 15 mm from the face, hole radius 6.5 mm, so 8.5 mm < 12 mm
  [
    'bolt-in-corner-radius',
    [fixing({ edgeDistance: '45 mm' })],
    'A1',
    /13\.00 mm, 15\.00 mm from the face of tube ., cuts its corner radius of 12\.00 mm/,
  ],
  // 60 − 35 − 12 = 13 mm from the end of the flat, 1.2 × 13 = 15.6 mm
  [
    'edge-distance-on-tube',
    [fixing({ edgeDistance: '35 mm' })],
    'A1',
    /13\.00 mm from the end of the flat of tube ., 1\.2 d0 is 15\.60 mm/,
  ],
  [
    'edge-distance-too-small',
    [fixing({ edgeDistance: '15 mm' })],
    'A1',
    /15\.00 mm from the panel's edge, 1\.2 d0 is 15\.60 mm/,
  ],
  ['edge-distance-cannot-be-met', [deck({ cornerNotch: '515 mm' })], 'A1', /no bolts along A, B/],
  ['pitch-too-small', [fixing({ pitch: '25 mm' })], 'A1', /2\.2 d0 is 28\.60 mm/],
  // a long slot of M12 is 2.5 d = 30 mm, its washer 24 mm
  [
    'slot-not-covered',
    [fixing({ hole: 'long slot', edgeDistance: '30 mm' })],
    'A1',
    /slot of 30\.00 mm is longer than its washer of 24\.00 mm/,
  ],
  // the first bolts along the cross tubes after the corners stand 30 + 7 × … from it: a pitch near 40 mm sets one on the weld
  ['bolt-at-crossing-weld', [fixing({ pitch: '40 mm' })], 'A1', /on tube \d meets a weld/],
  [
    'bolt-at-crossing-weld',
    [stacked, deck({ support: 'cross tubes', fixing: { into: 'through-bolt with sleeve' } })],
    'A1',
    /on tube \d meets a weld/,
  ],
  // centre lines of the bolts 30 mm inside panels whose edges are 10 mm apart would be 70 mm; with laps of 74 mm and e = 16 mm they are 34 mm
  [
    'bolts-too-close',
    [deck({ overlap: { onMain: '74 mm', onCross: '70 mm' } }), fixing({ edgeDistance: '16 mm', bolt: 'M16' })],
    'A1',
    /34\.00 mm apart on tube B, 2\.2 d0 is 39\.60 mm/,
  ],
  [
    'hole-outside-panel',
    [deck({ holes: [vent, hole('0 mm', '640 mm', 'other')] })],
    'A1',
    /does not lie inside the panel: its centre is 5\.000 mm outside/,
  ],
  // panel 1270 mm deep: edge at 635 mm
  [
    'hole-too-close-to-edge',
    [deck({ holes: [vent, hole('90 mm', '600 mm', 'other', '30 mm')] })],
    'A1',
    /35\.00 mm from the edge, 1\.2 d0 is 36\.00 mm/,
  ],
  ['hole-over-tube', [deck({ holes: [hole('0 mm', '560 mm')] })], 'A1', /lies over tube B/],
  ['holes-overlap', [deck({ holes: [vent, hole('40 mm', '0 mm')] })], 'A1', /40\.00 mm apart/],
  ['no-vent', [deck({ holes: [] })], 'A1', /950\.0 mm × 1150 mm × 150\.0 mm/],
  ['no-drain', [underside, deck({ holes: [] })], 'A1', /950\.0 mm × 1150 mm × 150\.0 mm/],
  [
    'tube-without-vent',
    [{ grid: { crossTubes: { vent: null } } }],
    'grid.crossTubes.vent',
    /cross tubes 1, 2, 3, 4 have no vent/,
  ],
  [
    'tube-without-drain',
    [{ grid: { mainTubes: { drain: null } } }],
    'grid.mainTubes.drain',
    /main tubes A, B, C have no drain/,
  ],
  [
    'tube-ends-in-crossing',
    [{ grid: { mainTubes: { overhang: '40 mm' } } }],
    'B',
    /ends 35\.00 mm before the far face of tube [14]:/,
  ],
  [
    'attachment-off-tube',
    [{ grid: { suspension: { attachments: [{ id: 'S9', x: '0.6 m', y: '0.6 m' }] } } }],
    'S9',
    /600\.0 mm, y 600\.0 mm stands on no tube/,
  ],
  [
    'attachment-under-panel',
    [{ grid: { suspension: { attachments: [{ id: 'S9', x: '0.6 m', y: '0 m' }] } } }],
    'S9',
    /on tube A where panel A1 lies/,
  ],
  // the panel is 1070 mm along x: 535 mm is its middle, 505 mm inside the low face of no tube that holds it
  ['bolt-off-tube', [listing(at('535 mm', '90 mm'))], 'A1', /A1-05: the place lies 30\.00 mm beside .*, A\.$/],
  ['bolt-in-corner-radius', [listing(at('535 mm', '45 mm'))], 'A1', /A1-05: .*15\.00 mm from the face of tube A, cuts/],
  [
    'place-outside-panel',
    [listing(at('535 mm', '-5 mm'))],
    'A1',
    /5\.000 mm outside panel A1, of 1070 mm by 1270 mm\.$/,
  ],
  [
    'place-outside-panel',
    [deck({ cornerNotch: '40 mm' }), listing([])],
    'A1',
    /A1-01, .*outside panel A1, .* with notched corners\.$/,
  ],
  [
    'bolts-overlap',
    [listing([...at('535 mm', '30 mm'), ...at('545 mm', '30 mm')])],
    'A1',
    /A1-05, A1-06: .* 10\.00 mm from middle to middle, the hole is 13\.00 mm wide/,
  ],
  [
    'pitch-too-small',
    [listing([...at('535 mm', '30 mm'), ...at('560 mm', '30 mm')])],
    'A1',
    /A1-05, A1-06: nearest bolt 25\.00 mm away, 2\.2 d0 is 28\.60 mm/,
  ],
  [
    'edge-distance-too-small',
    [listing(at('535 mm', '12 mm'))],
    'A1',
    /A1-05: 12\.00 mm from the panel's edge, 1\.2 d0 is 15\.60 mm/,
  ],
  [
    'side-without-bolts',
    [{ designs: { deck: { fixing: { pitch: null, edgeDistance: null, places: at('30 mm', '30 mm') } } } }],
    'A1',
    /stands on tube B, nor on tube 2: nothing holds/,
  ],
];

/** Four bolts in the corners, and more. */
function at(x: string, y: string, from = 'low x, low y') {
  return [{ x, y, from }];
}
function listing(more: readonly object[]) {
  const corners = ['low x, low y', 'high x, low y', 'high x, high y', 'low x, high y'].flatMap((from) =>
    at('30 mm', '30 mm', from),
  );
  return { designs: { deck: { fixing: { pitch: null, edgeDistance: null, places: [...corners, ...more] } } } };
}

describe('findings', () => {
  it.each(provoked)('%s', (id, changes, place, text) => {
    const found = findings(...changes).filter((f) => f.id === id);
    expect(found.map((f) => f.place)).toContain(place);
    expect(found[0]!.text).toMatch(text);
    expect(found[0]!.mend).not.toBe('');
  });

  it('are all provoked here: none in the code is missing from the table', async () => {
    const { readdirSync, readFileSync } = await import('node:fs');
    const folder = new URL('../../core/geometry/', import.meta.url);
    const source = readdirSync(folder)
      .filter((name) => name.endsWith('findings.ts'))
      .map((name) => readFileSync(new URL(name, folder), 'utf8'))
      .join('\n');
    const ids = [...source.matchAll(/(?:id: |say\(\s*)'([a-z-]+)'/g)].map(([, id]) => id);
    expect(ids.length).toBeGreaterThan(15);
    expect(ids.filter((id) => !provoked.some(([known]) => known === id))).toEqual([]);
  });
});
