import { describe, expect, it } from 'vitest';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { readDocument } from '../../core/document/read-document.ts';
import { listOfKind, rowLike } from '../../core/document/row-like.ts';
import { userRows, type UserRowKind } from '../../core/document/user-rows.ts';
import { middle } from './middle.ts';

/** A document's own row made from one of the catalogue, read back. */
const readBack = <K extends UserRowKind>(kind: K, rows: readonly object[]) =>
  userRows(readDocument(middle((d) => void (d.catalogue = { [listOfKind[kind]]: rows } as never))))[kind];

/** What a row of one's own does not carry over: words, and what the catalogue says of its own rows alone. */
const words = ['id', 'title', 'source', 'also', 'cautions', 'judged', 'forms'];

/** Every number of a row by its path, with the texts of its kind. */
function valuesOf(row: object, path = ''): [string, unknown][] {
  return Object.entries(row).flatMap(([key, value]): [string, unknown][] => {
    if (path === '' && words.includes(key)) return [];
    const at = path ? `${path}.${key}` : key;
    return typeof value === 'object' && value !== null ? valuesOf(value as object, at) : [[at, value]];
  });
}

describe.each(['metric', 'inch'] as const)('every row of the catalogue as the document’s own, in %s units', (units) => {
  it.each(['section', 'bolt', 'boltClass', 'weldMetal', 'stockPlate'] as const)(
    '%s: the same numbers come back',
    (kind) => {
      const all = catalogueWith().list(kind);
      for (let from = 0; from < all.length; from += 400) {
        const some = all.slice(from, from + 400);
        const back = readBack(
          kind,
          some.map(({ id }, n) => rowLike(kind, id, { as: `own ${from + n}`, units })),
        );
        some.forEach((row, n) => {
          const own = new Map(valuesOf(back[n]!));
          for (const [path, value] of valuesOf(row))
            if (typeof value === 'number')
              expect(Math.abs((own.get(path) as number) - value), `${row.id} ${path}`).toBeLessThanOrEqual(1e-9 * Math.abs(value)); // prettier-ignore
            else expect(own.get(path), `${row.id} ${path}`).toBe(value);
        });
      }
    },
  );

  it('material: those of its thinnest step; what breaks without yielding yields where it breaks', () => {
    const all = catalogueWith().list('material');
    const back = readBack('material', all.map(({ id }, n) => rowLike('material', id, { as: `own ${n}`, units }))); // prettier-ignore
    all.forEach((row, n) => {
      const own = back[n]!;
      const thin = row.ultimateStrength[0]!;
      expect(own.yieldStrength[0]!.value).toBeCloseTo((row.yieldStrength[0] ?? thin).value, 2);
      expect(own.ultimateStrength).toHaveLength(1);
      expect(own.ultimateStrength[0]!.value).toBeCloseTo(thin.value, 2);
      expect(own.ultimateStrength[0]!.upTo).toBeLessThanOrEqual(thin.upTo * (1 + 1e-9));
      expect(own.youngModulus / row.youngModulus).toBeCloseTo(1, 9);
      expect([own.family, own.poisson, own.correlationFactor]).toEqual([
        row.family,
        row.poisson,
        row.correlationFactor,
      ]);
      expect(own.density / row.density).toBeCloseTo(1, 9);
    });
  });
});

it('has no source, types round numbers, and refuses what the catalogue lacks', () => {
  expect(rowLike('section', 'SHS 100x100x5 hot', { as: 'yard tube', units: 'metric' })).toMatchObject({
    id: 'yard tube',
    source: null,
    height: '100 mm',
    wall: '5 mm',
  });
  expect(rowLike('bolt', '1/2 in', { as: 'yard', units: 'metric' })).toMatchObject({ diameter: '0.5 in' });
  expect(() => rowLike('bolt', 'M13', { as: 'yard bolt', units: 'metric' })).toThrow(/no row “M13”/);
});
