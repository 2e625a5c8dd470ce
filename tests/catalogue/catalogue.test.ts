import { describe, expect, it } from 'vitest';
import type { RowKind } from '../../core/catalogue/catalogue.ts';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { comparedWithNearest } from '../../core/catalogue/compared-with-nearest.ts';
import type { Material } from '../../core/catalogue/rows.ts';
import { spelling } from '../../core/catalogue/spelling.ts';
import { ultimateOf, yieldOf } from '../../core/catalogue/strength-at-thickness.ts';
import { Refusal } from '../../core/refusal.ts';

const catalogue = catalogueWith();
const kinds: readonly RowKind[] = ['material', 'section', 'bolt', 'boltClass', 'weldMetal', 'stockPlate', 'substance'];
const MPa = 1e6;

function refusalOf(run: () => unknown): Refusal {
  try {
    run();
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('every row', () => {
  it('names its source, and has numbers that are finite and positive', () => {
    for (const kind of kinds)
      for (const row of catalogue.list(kind)) {
        expect(row.source?.document, row.id).toBeTruthy();
        expect(row.title, row.id).toBeTruthy();
        for (const [key, value] of Object.entries(row))
          if (typeof value === 'number') expect(value > 0 && Number.isFinite(value), `${row.id} ${key}`).toBe(true);
      }
  });

  it('a row without the word "copy" or a formula in its source says that it is from memory', () => {
    for (const kind of kinds)
      for (const { id, source } of catalogue.list(kind))
        if (!/public cop/.test(source?.clause ?? '')) expect(source?.memory, id).toBe(true);
  });

  it('can be told from every other of its kind by spelling', () => {
    for (const kind of kinds) {
      const keys = catalogue
        .list(kind)
        .flatMap((row) => [row.id, ...(row.also ?? [])].map((id) => spelling(id).join(' ')));
      expect(new Set(keys).size, kind).toBe(keys.length);
    }
  });
});

describe('strengths', () => {
  it('fall or stay with thickness, yield below ultimate, thinnest step first', () => {
    // 6082-T6 extruded is the exception of EN 1999-1-1 Table 3.2b: thin walls have the lower values
    for (const m of catalogue.list('material').filter(({ id }) => id !== '6082-T6 extruded'))
      for (const steps of [m.yieldStrength, m.ultimateStrength])
        for (let i = 1; i < steps.length; i++) {
          expect(steps[i]!.upTo, m.id).toBeGreaterThan(steps[i - 1]!.upTo);
          expect(steps[i]!.value, m.id).toBeLessThanOrEqual(steps[i - 1]!.value);
        }
    for (const m of catalogue.list('material'))
      for (const { upTo, value } of m.yieldStrength) expect(value, m.id).toBeLessThanOrEqual(ultimateOf(m, upTo));
  });

  // thickness mm, S235, S275, S355
  it.each([
    [3, 235, 275, 355],
    [16, 235, 275, 355],
    [16.1, 225, 265, 345],
    [40, 225, 265, 345],
    [63, 215, 255, 335],
    [80, 215, 245, 325],
    [100, 215, 235, 315],
    [150, 195, 225, 295],
  ])('EN 10025-2:2004 Table 7 (public copy): %f mm', (t, ...printed) => {
    const found = ['S235', 'S275', 'S355'].map(
      (grade) => yieldOf(catalogue.material(`${grade} plate`), t / 1000) / MPa,
    );
    expect(found).toEqual(printed);
  });

  it('a thickness that comes out of a conversion stays in its step', () => {
    expect(yieldOf(catalogue.material('S355 plate'), 0.016 * (1 + 1e-12))).toBe(355 * MPa);
  });

  it('refuses a thickness beyond the table, and a yield strength where nothing yields', () => {
    const thick = refusalOf(() => yieldOf(catalogue.material('S355H cold formed'), 0.05));
    expect(thick.what).toContain('known up to 40 mm, this part is 50 mm');
    expect(thick.where).toEqual({ material: 'S355H cold formed' });
    expect(refusalOf(() => yieldOf(catalogue.material('GRP mat laminate'), 0.01)).what).toContain('no yield strength');
    expect(() => ultimateOf(catalogue.material('S355 plate'), 0)).toThrow(/thickness must be positive/);
  });

  it('correlation factors of EN 1993-1-8 Table 4.1 (from memory), none for what it does not list', () => {
    const beta = (id: string): number | null => catalogue.material(id).correlationFactor;
    expect(['S235 plate', 'S275 plate', 'S355 plate', 'S460NH hot finished'].map(beta)).toEqual([0.8, 0.85, 0.9, 1]);
    expect(['ASTM A36', '5083-H116', 'HDPE PE100 sheet'].map(beta)).toEqual([null, null, null]);
  });

  it('plastics and laminates ask for the modulus under long load and are judged by no published rule', () => {
    for (const m of catalogue.list('material')) {
      const soft = m.family === 'thermoplastic' || m.family === 'laminate';
      expect(m.judged === 'no published rule', m.id).toBe(soft);
      expect(m.longTermModulus === null, m.id).toBe(soft);
    }
  });

  it('a heat-affected zone is no stronger than the parent (EN 1999-1-1)', () => {
    for (const m of catalogue.list('material').filter(({ family }) => family === 'aluminium')) {
      expect(m.heatAffected!.yield, m.id).toBeLessThanOrEqual(m.yieldStrength.at(-1)!.value);
      expect(m.heatAffected!.ultimate, m.id).toBeLessThanOrEqual(m.ultimateStrength.at(-1)!.value);
    }
  });
});

describe('looking up', () => {
  it.each([
    ['section', 'shs 100 × 100 × 5,0 HOT', 'SHS 100x100x5 hot'],
    ['section', 'RHS150x100x6.3cold', 'RHS 150x100x6.3 cold'],
    ['section', 'HSS 2.5 x 2.5 x 0.25', 'HSS 2-1/2x2-1/2x1/4'],
    ['section', 'CHS 114.3 mm x 5 mm hot', 'CHS 114.3x5 hot'],
    ['bolt', 'm 12', 'M12'],
    ['bolt', '1/2"', '1/2 in'],
    ['bolt', '0.5 inch', '1/2 in'],
    ['boltClass', 'a4 70', 'A4-70'],
    ['boltClass', 'A325', 'ASTM A325 (F3125)'],
    ['weldMetal', 'e70xx', 'E70XX'],
    ['material', 's355  PLATE', 'S355 plate'],
  ] as const)('%s “%s” is %s', (kind, typed, id) => expect(catalogue[kind](typed).id).toBe(id));

  it('does not guess: refuses with the three nearest', () => {
    const short = refusalOf(() => catalogue.section('SHS 100x5 hot'));
    expect(short.what).toBe('the catalogue has no hollow section “SHS 100x5 hot”');
    expect(short.mend).toMatch(/^Nearest are: SHS 100x100x5 hot; .+; .+\. Or add/);
    expect(refusalOf(() => catalogue.material('S355')).mend).toContain('S355 plate');
    expect(refusalOf(() => catalogue.bolt('M18')).mend).toMatch(/M20; M16/);
    expect(refusalOf(() => catalogue.boltClass('')).mend.split(';')).toHaveLength(3);
  });

  it('has the sizes that a grid of tubes is made of', () => {
    for (const id of [
      'SHS 40x40x3 cold',
      'SHS 400x400x16 hot',
      'RHS 50x30x3 cold',
      'RHS 500x300x16 hot',
      'CHS 33.7x3.2 hot',
      'CHS 508x16 hot',
      'HSS 2x2x1/4',
      'HSS 12x12x1/2',
      'HSS 3x2x1/4',
      'HSS 12x8x1/2',
    ])
      expect(catalogue.section(id).id).toBe(id);
    expect(catalogue.stockPlates.map(({ id }) => id)).toEqual(expect.arrayContaining(['10 mm', '3/8 in']));
  });
});

const own: Material = {
  ...catalogue.material('S355 plate'),
  id: 'S690 plate',
  title: 'Quenched and tempered plate',
  source: null,
};

describe('rows of the user', () => {
  it('join the catalogue, keep that they have no source, and are known as the user’s own', () => {
    const wider = catalogueWith({
      material: [own],
      bolt: [{ ...catalogue.bolt('M16'), id: 'M16 long nut', source: null }],
    });
    expect(wider.material('s690 PLATE')).toBe(own);
    expect(wider.material('S690 plate').source).toBeNull();
    expect([...wider.own]).toEqual(['S690 plate', 'M16 long nut']);
    expect(wider.list('material')).toHaveLength(catalogue.list('material').length + 1);
    expect(() => catalogue.material('S690 plate')).toThrow(Refusal);
  });

  it('may not take a built-in id in any spelling, stand twice, or hold a number that is none: all is said at once', () => {
    const refused = refusalOf(() =>
      catalogueWith({
        material: [{ ...own, id: 's355 PLATE' }, own, own],
        bolt: [{ ...catalogue.bolt('M16'), id: 'M16 special', tensileArea: Number.NaN }],
      }),
    );
    expect(refused.all.map(({ what }) => what)).toEqual([
      '“s355 PLATE” is the id of a built-in material',
      '“S690 plate” stands twice among your own rows',
      'tensileArea of “M16 special” must be positive, it is NaN',
    ]);
  });
});

describe('a user’s row beside the nearest of the catalogue', () => {
  it('says nothing of a row that is like the catalogue', () => {
    expect(comparedWithNearest({ kind: 'material', row: own })).toEqual([]);
    for (const row of catalogue.list('material')) expect(comparedWithNearest({ kind: 'material', row })).toEqual([]);
    for (const row of catalogue.list('bolt')) expect(comparedWithNearest({ kind: 'bolt', row })).toEqual([]);
    for (const row of catalogue.list('section')) expect(comparedWithNearest({ kind: 'section', row })).toEqual([]);
  });

  it('finds a modulus in the wrong unit, a density or a strength off by more than 15 %', () => {
    const row: Material = {
      ...own,
      youngModulus: 29e9,
      density: 7.85,
      yieldStrength: [{ upTo: 0.05, value: 690 * MPa }],
      ultimateStrength: [{ upTo: 0.05, value: 770 * MPa }],
    };
    const found = comparedWithNearest({ kind: 'material', row });
    expect(found).toHaveLength(4);
    expect(found[0]).toMatch(
      /^“S690 plate”: Young’s modulus 29 GPa is 86 % below that of .+, the nearest carbon steel of the catalogue \((200|210) GPa\)/,
    );
    expect(found[1]).toContain('density 7.85 kg/m³');
  });

  it('stays silent just inside the limits and speaks just outside', () => {
    const near = (factor: number): number =>
      comparedWithNearest({ kind: 'material', row: { ...own, density: 7850 * factor } }).length;
    expect([near(1.149), near(0.851), near(1.151), near(0.849)]).toEqual([0, 0, 1, 1]);
  });

  it('finds a section whose inertia does not follow from its dimensions, and a bolt whose area does not', () => {
    const tube = catalogue.section('SHS 100x100x5 hot');
    const [finding, ...more] = comparedWithNearest({
      kind: 'section',
      row: { ...tube, id: 'my tube', inertiaY: 1.03 * tube.inertiaY },
    });
    expect(more).toEqual([]);
    expect(finding).toBe(
      '“my tube”: second moment of area about y 287.8 cm⁴ is 3 % above what its own dimensions give (279.4 cm⁴)',
    );
    const m16 = catalogue.bolt('M16');
    expect(comparedWithNearest({ kind: 'bolt', row: { ...m16, tensileArea: m16.shankArea } })[0]).toContain(
      '28 % above the formula of ISO 898-1',
    );
  });
});
