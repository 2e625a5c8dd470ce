import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { readDocument } from '../../core/document/read-document.ts';
import { startingDocument } from '../../core/document/starting-document.ts';
import { stockFindings } from '../../core/document/stock-findings.ts';
import { userRows } from '../../core/document/user-rows.ts';
import { middle, type Json } from './middle.ts';

const found = (change: (d: Json) => void) => {
  const document = readDocument(middle(change));
  return stockFindings(document, catalogueWith(userRows(document)));
};
const thickness = (typed: string, change: (d: Json) => void = () => {}) =>
  found((d) => ((d.designs['underside'].thickness = typed), (d.panels.A1 = 'underside'), change(d)));

describe('a plate thickness that is off stock', () => {
  it('is a finding with a place and what is kept', () =>
    expect(thickness('6.2 mm')).toEqual([
      {
        id: 'thickness-off-stock',
        place: 'designs.underside.thickness',
        text: '6.2 mm is no stock thickness: 6 mm or 8 mm',
        mend: 'Take a thickness that merchants keep, or add the plate that you can get to the document’s own rows ("stockPlates" of its catalogue).',
      },
    ]));

  it('is told with the neighbours of the document’s own system, and at the ends of the list', () => {
    const inch = (d: Json) => void (d.units = 'inch');
    const texts = (typed: string, change?: (d: Json) => void) => thickness(typed, change).map(({ text }) => text);
    expect(texts('0.3 in', inch)).toEqual(['0.3 in is no stock thickness: 1/4 in or 5/16 in']);
    expect(texts('45 mm')).toEqual(['45 mm is no stock thickness: the thickest is 30 mm']);
    expect(texts('1.2 mm')).toEqual(['1.2 mm is no stock thickness: the thinnest is 1.5 mm']);
  });

  it('a plate of the other system is stock, an inch size in mm to two places too', () => {
    for (const typed of ['6 mm', '3/8 in', '4.76 mm', '9.525 mm', '0.006 m']) expect(thickness(typed)).toEqual([]);
    expect(thickness('4.8 mm')).toHaveLength(1);
  });

  it('the document’s own stock counts, to be taken and to be told', () => {
    const own = (d: Json) =>
      void (d.catalogue = {
        stockPlates: [{ id: '7 mm', title: 'Plate of the yard', thickness: '7 mm', series: 'metric', source: null }],
      });
    expect(thickness('7 mm', own)).toEqual([]);
    expect(thickness('6.2 mm', own)[0]!.text).toBe('6.2 mm is no stock thickness: 6 mm or 7 mm');
  });

  it('is told once for a design, of eyes too, and not of a design that no panel is of or of plastic', () => {
    expect(thickness('6.2 mm', (d) => void ([d.panels.A2, d.panels.A3] = ['underside', 'underside']))).toHaveLength(1);
    expect(
      found((d) => ((d.grid.suspension.eye.thickness = '21 mm'), (d.grid.padEyes.eye.thickness = '22 mm'))).map(
        ({ place }) => place,
      ),
    ).toEqual(['grid.suspension.eye.thickness', 'grid.padEyes.eye.thickness']);
    expect(found((d) => void (d.designs['unused'] = { ...d.designs['underside'], thickness: '6.2 mm' }))).toEqual([]);
    expect(thickness('6.2 mm', (d) => (d.designs['underside'].material = 'HDPE PE100 sheet'))).toEqual([]);
  });

  it('stands among the findings of an appraisal, under the option that takes it', () => {
    const raw = { ...startingDocument('metric') } as Json;
    raw['options'] = [
      { id: 'odd', title: 'Odd', base: null, changes: { designs: { bolted: { thickness: '6.2 mm' } } } },
    ];
    const places = (option: string | null) =>
      appraise(raw, readDocument(raw), option)
        .findings.filter(({ id }) => id === 'thickness-off-stock')
        .map(({ place }) => place);
    expect(places(null)).toEqual([]);
    expect(places('odd')).toEqual(['designs.bolted.thickness']);
  });
});
