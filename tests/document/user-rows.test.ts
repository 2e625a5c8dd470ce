import { describe, expect, it } from 'vitest';
import { appraise, modelOf } from '../../core/appraise.ts';
import { boltClasses } from '../../core/catalogue/bolt-classes.ts';
import { bolts } from '../../core/catalogue/bolts.ts';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { ownRowTable } from '../../core/note/own-row-table.ts';
import { readDocument } from '../../core/document/read-document.ts';
import { userRowFindings, userRows } from '../../core/document/user-rows.ts';
import { middle, type Json } from './middle.ts';
import { ownRows } from './own-rows.ts';
import { refused } from './refused.ts';

const row = {
  id: 'own steel',
  title: 'Steel of the yard',
  family: 'carbon steel',
  density: '7850 kg/m^3',
  youngModulus: '210 GPa',
  poisson: 0.3,
  yieldStrength: '355 MPa',
  ultimateStrength: '490 MPa',
  upToThickness: '16 mm',
  source: { document: 'certificate' },
};
const withRow = (changed: Partial<Record<keyof typeof row, string>>) =>
  readDocument(middle((d) => void (d.catalogue = { materials: [{ ...row, ...changed }] })));
const found = (changed: Partial<Record<keyof typeof row, string>>) =>
  userRowFindings(withRow(changed)).map(({ id, text }) => `${id}: ${text}`);

describe('a material row of the document', () => {
  it('is refused when a metal yields at or above its ultimate strength', () => {
    for (const yieldStrength of ['490 MPa', '500 MPa'])
      expect(() => userRows(withRow({ yieldStrength }))).toThrow(
        /^catalogue\.materials\.0\.yieldStrength: Material “own steel” yields at .* MPa, not below the 490 MPa/,
      );
    expect(() => userRows(withRow({ yieldStrength: '489 MPa' }))).not.toThrow();
    // A plastic may break where it yields.
    const plastic = { family: 'thermoplastic', yieldStrength: '22 MPa', ultimateStrength: '22 MPa' };
    expect(() => userRows(withRow(plastic))).not.toThrow();
    expect(() => userRows(withRow({ ...plastic, yieldStrength: '23 MPa' }))).toThrow(/above the 22 MPa/);
  });

  it('says nothing of a row like the catalogue', () => {
    expect(found({})).toEqual([]);
    expect(found({ title: 'Mill plate S355, 355/490 MPa' })).toEqual([]);
  });

  it('finds 400 MPa typed for 40 ksi (276 MPa) by the title, though S420 is near', () => {
    const [first, ...more] = found({
      title: 'Mill plate 40 ksi',
      yieldStrength: '400 MPa',
      ultimateStrength: '530 MPa',
    });
    expect(first).toMatch(
      /row-far-from-catalogue: .*yield strength 400 MPa is 45 % above the 40 ksi of its name \(275\.8 MPa\)/,
    );
    expect(more).toEqual([]);
    expect(found({ title: 'Mill plate 40 ksi', yieldStrength: '40 ksi', ultimateStrength: '60 ksi' })).toEqual([]);
  });

  // Yield strengths: ASTM A36, 36 ksi = 250 MPa; EN 10025-2, S275, 275 MPa; ASTM A240 316L, 170 MPa.
  it.each([
    ['Plate A36', 'carbon steel', '36 MPa', '400 MPa', /below that of ASTM A36, the grade that its name gives/],
    ['Plate A36', 'carbon steel', '345 MPa', '400 MPa', /above that of ASTM A36, the grade/],
    ['Plate S275JR', 'carbon steel', '355 MPa', '430 MPa', /above that of S275.*, the grade/],
    ['Sheet 316L', 'stainless steel', '460 MPa', '520 MPa', /yield strength 460 MPa .*the grade/],
    ['Plate of the yard', 'carbon steel', '600 MPa', '700 MPa', /above that of .*, the nearest carbon steel/],
  ])('%s, %s with %s is far from its grade', (title, family, yieldStrength, ultimateStrength, says) => {
    expect(found({ title, family, yieldStrength, ultimateStrength }).join('\n')).toMatch(says);
  });

  it('does not hold a row against a grade that its name does not give', () =>
    expect(
      found({
        title: 'Duplex plate to A240',
        family: 'stainless steel',
        yieldStrength: '450 MPa',
        ultimateStrength: '620 MPa',
      }).join(),
    ).not.toMatch(/grade that its name/));
});

/** The tests' document with own rows of every kind, changed by the caller. */
const withOwn = (change: (rows: Json) => void = () => {}, document: (d: Json) => void = () => {}) =>
  middle((d) => {
    d.catalogue = ownRows();
    change(d.catalogue);
    document(d);
  });
const says = (change: (rows: Json) => void) =>
  userRowFindings(readDocument(withOwn(change))).map(({ id, place, text }) => `${id} at ${place}: ${text}`);

describe('rows of every kind', () => {
  it('are read in SI, with their own source, and found in the catalogue', () => {
    const own = userRows(readDocument(withOwn()));
    const catalogue = catalogueWith(own);
    expect(catalogue.bolt('m18')).toMatchObject({ holeOversize: null, longSlotLength: null });
    expect(catalogue.bolt('M18').diameter).toBeCloseTo(0.018, 12);
    expect(catalogue.bolt('M18').tensileArea).toBeCloseTo(192e-6, 12);
    // π/4 · 18² mm²
    expect(catalogue.bolt('M18').shankArea).toBeCloseTo(254.469e-6, 9);
    expect(catalogue.boltClass('9.8')).toMatchObject({
      yield: 720e6,
      ultimate: 900e6,
      nominal: null,
      hardnessMax: 360,
    });
    expect(catalogue.weldMetal('yard wire')).toMatchObject({ ultimate: 510e6, source: { document: 'data sheet' } });
    expect(catalogue.stockPlates.at(-1)).toMatchObject({ thickness: 0.007, sheets: [{ width: 1.5, length: 3 }] });
    expect(catalogue.material('yard aluminium').heatAffected).toEqual({ yield: 115e6, ultimate: 270e6 });
    // EN 10210-2, Annex B: outer radius 1.5 t for hot finished.
    expect(catalogue.section('yard tube')).toMatchObject({ shape: 'square', outerRadius: expect.closeTo(0.0105, 12) });
    // A ring: π/4 (168.3² − 150.3²) mm².
    expect(catalogue.section('yard pipe').area).toBeCloseTo(4504.1e-6, 8);
    expect(says(() => {})).toEqual([]);
  });

  it('the built-in bolts and classes, entered as rows of a document, are far from nothing', () => {
    const mm = (value: number | null) => (value === null ? undefined : `${value * 1e3} mm`);
    const MPa = (value: number | null | undefined) => (value == null ? undefined : `${value / 1e6} MPa`);
    const rows = (r: Json) => {
      r.bolts = bolts.map(({ id, title, series, source: _, shankArea: __, tensileArea, also: ___, cautions: ____, ...sizes }) => ({
        ...Object.fromEntries(Object.entries(sizes).map(([key, value]) => [key, mm(value)])),
        id: `own ${id}`, title, series, tensileArea: `${tensileArea * 1e6} mm^2`, source: { document: 'x' },
      })); // prettier-ignore
      r.boltClasses = boltClasses.map(({ id, title, family, nominal, ...row }) => ({
        id: `own ${id}`, title, family, yield: MPa(row.yield), ultimate: MPa(row.ultimate),
        alphaV: row.alphaV ?? undefined, alphaVShank: row.alphaVShank ?? undefined, hardnessMax: row.hardnessMax ?? undefined,
        nominal: nominal ? { tension: MPa(nominal.tension), shearThreads: MPa(nominal.shearThreads), shearShank: MPa(nominal.shearShank) } : undefined,
        source: { document: 'x' },
      })); // prettier-ignore
    };
    expect(says(rows)).toEqual([]);
    expect(userRows(readDocument(withOwn(rows))).bolt).toHaveLength(bolts.length);
  });

  it('without a source are found, each by its id', () =>
    expect(
      says((rows) => {
        for (const list of Object.values(rows) as Json[][]) for (const row of list) row['source'] = null;
      }),
    ).toEqual(
      ['yard aluminium', 'yard tube', 'yard pipe', 'M18', '9.8', 'yard wire', '7 mm'].map(
        (id) => `row-without-source at ${id}: The catalogue row “${id}” of this document has no source`,
      ),
    ));

  it.each([
    ['bolts', 'tensileArea', '254 mm^2', /M18: “M18”: tensile area 254 mm² is 32 % above the formula of ISO 898-1/],
    ['bolts', 'headAcrossFlats', '17 mm', /width across flats 17 mm is 37 % below that of M20.*in proportion/],
    ['bolts', 'nutHeight', '1.58 cm', null],
    ['bolts', 'holeNormal', '25 mm', /normal hole 25 mm is 26 % above/],
    ['boltClasses', 'ultimate', '1100 MPa', /“9.8”: yield strength 720 MPa is 20 % below that of 10.9/],
    ['boltClasses', 'ultimate', '1300 MPa', /“9.8”: ultimate strength 1300 MPa is 30 % above that of 10.9/],
    ['boltClasses', 'yield', '400 MPa', /yield strength 400 MPa is .* below/],
    ['boltClasses', 'hardnessMax', 36, /largest hardness 36 HV is .* below/],
    ['boltClasses', 'alphaV', 0.9, /alpha_v 0.9 is .* above/],
    ['weldMetals', 'ultimate', '51 MPa', /tensile strength 51 MPa is 88 % below that of E60XX/],
    ['stockPlates', 'thickness', '0.7 mm', /thickness 0.7 mm is 90 % below the 7 mm of its name/],
    ['stockPlates', 'sheets', [{ width: '15 m', length: '30 m' }], /width of a sheet 15 m is .* above/],
    ['sections', 'wall', '0.7 mm', /wall 0.7 mm is .* below that of/],
    ['sections', 'outerRadius', '30 mm', /outer radius 30 mm is .* above the usual one of a hot finished section/],
    ['materials', 'heatAffected', { yield: '60 MPa', ultimate: '270 MPa' }, /yield strength beside a weld 60 MPa is 48 % below that of 5083/],
  ] as const)('%s: %s of %j lies far from the catalogue, or does not', (list, field, value, text) => {
    const found = says((rows) => void (rows[list][0][field] = value));
    if (text === null) expect(found).toEqual([]);
    else expect(found.join('\n')).toMatch(text);
    expect(found.every((line) => line.startsWith('row-far-from-catalogue at '))).toBe(true);
  }); // prettier-ignore

  it.each([
    ['bolts', 'holeNormal', '17 mm', 'bolts.0.holeNormal', /does not go through its hole: 17 mm beside 18 mm/],
    ['bolts', 'washerInner', '17 mm', 'bolts.0.washerInner', /does not go over the bolt/],
    ['bolts', 'washerOuter', '18.5 mm', 'bolts.0.washerOuter', /smaller than its bore/],
    ['bolts', 'headAcrossCorners', '26 mm', 'bolts.0.headAcrossCorners', /across corners than across flats/],
    ['bolts', 'pitch', '20 mm', 'bolts.0.diameter', /pitch is larger than the bolt/],
    ['bolts', 'id', 'm16', 'bolts.0.id', /“m16” is the id of a built-in bolt/],
    ['bolts', 'id', '…', 'bolts.0.id', /no usable id/],
    ['boltClasses', 'yield', '900 MPa', 'boltClasses.0.yield', /not below the 900 MPa at which it breaks/],
    ['boltClasses', 'id', '8.8', 'boltClasses.0.id', /built-in bolt class/],
    ['weldMetals', 'ultimate', '510', 'weldMetals.0.ultimate', /no unit/],
    ['stockPlates', 'thickness', '0 mm', 'stockPlates.0.thickness', /more than zero/],
    ['stockPlates', 'id', '6 mm', 'stockPlates.0.id', /built-in stock plate/],
    ['sections', 'wall', '80 mm', 'sections.0.wall', /leaves no bore/],
    ['materials', 'poisson', 0, 'materials.0.poisson', /too small/],
    ['materials', 'across', { youngModulus: '1 GPa', ultimate: '1 MPa' }, 'materials.0.across', /for a laminate, this is aluminium/],
    ['materials', 'heatAffected', { yield: '115 MPa', ultimate: '300 MPa' }, 'materials.0.heatAffected', /stronger .* than away from it/],
    ['materials', 'heatAffected', { yield: '120 MPa', ultimate: '110 MPa' }, 'materials.0.heatAffected.yield', /not below the 110 MPa/],
    ['materials', 'family', 'carbon steel', 'materials.0.heatAffected', /A weld does not soften carbon steel/],
  ] as const)('%s: %s of %j is refused when the document is read', (list, field, value, path, what) => {
    const { all } = refused(withOwn((rows) => void (rows[list][0][field] = value)));
    expect(all.map(({ where }) => where!['path'])).toEqual([`catalogue.${path}`]);
    expect(all[0]!.what).toMatch(what);
    expect(all[0]!.mend.length).toBeGreaterThan(10);
  }); // prettier-ignore

  it('an id that stands twice is refused at the second, beside what is wrong in other rows', () =>
    expect(
      refused(
        withOwn((rows) => {
          rows.weldMetals.push({ ...rows.weldMetals[0], id: 'YARD wire' });
          rows.bolts[0].pitch = '2.5 kg';
          rows.boltClasses[0].yield = '950 MPa';
        }),
      ).all.map(({ where }) => where!['path']).sort(),
    ).toEqual(['catalogue.boltClasses.0.yield', 'catalogue.bolts.0.pitch', 'catalogue.weldMetals.1.id'])); // prettier-ignore

  it('aluminium that is welded must say its strength beside the weld; bolted it need not', () => {
    const bare = (kind: 'top-4' | 'underside') =>
      withOwn(
        (rows) => delete rows.materials[0].heatAffected,
        (d) => void (d.designs[kind].material = 'Yard aluminium'),
      );
    const welded = refused(bare('top-4'));
    expect(welded.where['path']).toBe('catalogue.materials.0.heatAffected');
    expect(welded.what).toMatch(/“top-4” welds “yard aluminium”/);
    expect(() => readDocument(bare('underside'))).not.toThrow();
  });

  it('are judged with and printed: bolt and class enter a check, every row and its source stand in the note', () => {
    const raw = withOwn(
      () => {},
      (d) => {
        d.panels = { A2: 'underside' };
        Object.assign(d.designs['underside'].fixing, { bolt: 'M18', class: '9.8', edgeDistance: '30 mm' });
      },
    );
    const appraisal = appraise(raw, readDocument(raw), null);
    const { capacity } = appraisal.rows.find(({ id, capacity }) => id === 'bolt-tension' && capacity !== null)!;
    // EN 1993-1-8:2005, Table 3.4: F_t,Rd = k2 f_ub A_s / γ_M2 = 0.9 · 900 MPa · 192 mm² / 1.25 = 124.4 kN, less the corrosion of the shank if any.
    expect(capacity! / 124_416).toBeCloseTo(1, 2);
    const [table] = ownRowTable(appraisal.model);
    expect(table!.rows.map(([, row]) => row)).toEqual(['yard aluminium: Plate of the yard, 5083 H111', 'yard tube: Tube of the yard 150 × 150 × 7', 'yard pipe: Pipe of the yard', 'M18: Hexagon bolt M18', '9.8: Property class 9.8', 'yard wire: Wire of the yard', '7 mm: Plate of the yard']); // prettier-ignore
    expect(table!.rows[0]).toEqual([
      'materials',
      'yard aluminium: Plate of the yard, 5083 H111',
      'family aluminium, density 2660 kg/m^3, modulus 70 GPa, poisson 0.3, yield strength 125 MPa, ultimate strength 275 MPa, up to a thickness of 50 mm, beside a weld (yield 115 MPa, ultimate 270 MPa)',
      'certificate 3.1, heat 77',
    ]);
    expect(table!.rows.at(-1)![2]).toBe('thickness 7 mm, series metric, sheets (width 1500 mm, length 3 m)');
    expect(ownRowTable(modelOf(readDocument(middle())))).toEqual([]);
  });
});
