import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { documentOfOption, lineage } from '../../core/document/option.ts';
import { readDocument } from '../../core/document/read-document.ts';
import type { PlateDocument, PlateOption } from '../../core/document/schema.ts';
import { middle } from './middle.ts';

const bays = () => new Set(['A', 'B'].flatMap((row) => [1, 2, 3, 4, 5, 6].map((column) => `${row}${column}`)));
const resolve = (raw: Record<string, unknown>, id: string | null) => documentOfOption(raw, readDocument(raw), id, bays);
const option = (id: string, base: string | null): PlateOption => ({ id, title: id, base, changes: {} });

describe('an option', () => {
  it('changes what it names and nothing else', () => {
    const raw = middle();
    const before = JSON.stringify(raw);
    const { document, findings } = resolve(raw, 'under-8');
    const plain = readDocument(raw);
    expect(document.designs['under-6']!.thickness).toEqual({ si: 0.008, typed: '8 mm' });
    expect({ ...document, designs: plain.designs }).toEqual(plain);
    expect(findings).toEqual([]);
    expect(JSON.stringify(raw)).toBe(before);
  });

  it('null takes away: a slip factor, a panel', () => {
    const fixing = resolve(middle(), 'under-6-clearance').document.designs['under-6']!.fixing;
    expect(fixing).toMatchObject({ kind: 'bolted', shear: 'clearance' });
    expect(fixing).not.toHaveProperty('slipFactor');
    expect(Object.keys(resolve(middle(), 'ends-open').document.panels).sort()).toEqual([
      'A2',
      'A3',
      'A4',
      'A5',
      'B2',
      'B3',
      'B4',
      'B5',
    ]);
  });

  it('null is the document as it stands', () =>
    expect(resolve(middle(), null).document).toEqual(readDocument(middle())));

  it('lays its bases first, the most basic first', () => {
    const raw = middle((d) => {
      d.options.push({
        id: 'both',
        title: 'Both',
        base: 'under-8',
        changes: { designs: { 'under-6': { pitch: null, fixing: { pitch: '120 mm' } } } },
      });
      d.options.push({
        id: 'over',
        title: 'Over',
        base: 'both',
        changes: { designs: { 'under-6': { thickness: '10 mm' } } },
      });
    });
    const design = resolve(raw, 'over').document.designs['under-6']!;
    expect(design.thickness.typed).toBe('10 mm');
    expect(design.fixing).toMatchObject({ pitch: { typed: '120 mm' } });
    expect(lineage(readDocument(raw).options, 'over').map(({ id }) => id)).toEqual(['under-8', 'both', 'over']);
  });

  it('refuses differences that make a wrong document, naming the option and the field', () => {
    const raw = middle(
      (d) =>
        void (d.options[1].changes = {
          designs: { 'under-6': { thickness: '8 kg', colour: 'red' } },
          water: { salinity: null },
        }),
    );
    expect(() => resolve(raw, 'under-8')).toThrow(
      /^options\.under-8\.designs\.under-6\.thickness: “8 kg” is a mass, the field needs a length/m,
    );
    expect(() => resolve(raw, 'under-8')).toThrow(
      /^options\.under-8\.designs\.under-6\.colour: This field is not known here/m,
    );
    const other = middle((d) => void (d.options[1].changes = { water: { salinity: null } }));
    expect(() => resolve(other, 'under-8')).toThrow(/^options\.under-8\.water: The water has neither/);
  });

  it('a panel for a bay that is gone is left out and found', () => {
    const raw = middle(
      (d) => void (d.options[1].changes = { panels: { A7: 'top-4', 'A6:B7': 'top-4', A1: 'top-4', Z9: null } }),
    );
    const { document, findings } = resolve(raw, 'under-8');
    expect(document.panels).toMatchObject({ A1: 'top-4' });
    expect(document.panels).not.toHaveProperty('A7');
    expect(findings.map(({ id, place }) => [id, place])).toEqual([
      ['difference-names-lost-bay', 'A7'],
      ['difference-names-lost-bay', 'A6:B7'],
      ['difference-names-lost-bay', 'Z9'],
    ]);
    expect(findings[2]!.text).toMatch(/takes the panel of “Z9” away, but the grid has no such bay/);
  });

  it('a panel of the document round which the option takes tubes away is left out and found; one taken away by null is not', () => {
    const raw = middle(
      (d) => void Object.assign(d.options[1].changes, { water: { depth: '41 m' }, panels: { A6: null } }),
    );
    // The option's grid, known by the depth it changes, ends one bay earlier.
    const fewer = (document: PlateDocument) =>
      new Set([...bays()].filter((bay) => document.water.depth.typed !== '41 m' || !bay.endsWith('6')));
    const plain = readDocument(raw);
    expect(Object.keys(plain.panels)).toEqual(expect.arrayContaining(['A6', 'B6']));
    const { document, findings } = documentOfOption(raw, plain, 'under-8', fewer);
    expect(Object.keys(document.panels)).toEqual(Object.keys(plain.panels).filter((key) => !key.endsWith('6')));
    expect(findings.map(({ id, place }) => [id, place])).toEqual([['difference-names-lost-bay', 'B6']]);
    expect(findings[0]!.text).toMatch(/takes away tubes round “B6”/);
  });

  it('a panel on no bay of the document itself stays for the refusal', () => {
    const raw = middle((d) => void (d.panels.C1 = 'top-4'));
    const { document, findings } = resolve(raw, 'under-8');
    expect(document.panels).toHaveProperty('C1');
    expect(findings).toEqual([]);
    expect(() => appraise(raw, readDocument(raw), 'under-8')).toThrow(/there is no bay “C1”/);
  });

  it('refuses an unknown option, an unknown base and a circle', () => {
    expect(() => resolve(middle(), 'nix')).toThrow(/There is no option “nix”\. Name one of: top-4-welded, under-8/);
    expect(() => lineage([option('a', 'b')], 'a')).toThrow(/There is no option “b”/);
    expect(() => lineage([option('a', 'b'), option('b', 'c'), option('c', 'b')], 'a')).toThrow(
      /go in a circle: a → b → c → b/,
    );
  });
});
