import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { documentOfOption, lineage } from '../../core/document/option.ts';
import { readDocument } from '../../core/document/read-document.ts';
import type { PlateDocument, PlateOption } from '../../core/document/schema.ts';
import { bayPlan } from '../../core/geometry/bay-plan.ts';
import { baysBetween } from '../../core/geometry/bays-between.ts';
import { layTubes } from '../../core/geometry/lay-tubes.ts';
import { lengthText } from '../../core/geometry/length-text.ts';
import { middle, type Json } from './middle.ts';

/** The bays of a document's own grid; the tests' document has A1 to A6 and B1 to B6. */
function planOf(document: PlateDocument) {
  const text = lengthText(document.units);
  const { mainTubes, crossTubes, crossings } = layTubes(document, catalogueWith(), text);
  return bayPlan(baysBetween(mainTubes, crossTubes, crossings));
}
const resolve = (raw: Record<string, unknown>, id: string | null) =>
  documentOfOption(raw, readDocument(raw), id, planOf);
const option = (id: string, base: string | null): PlateOption => ({ id, title: id, base, changes: {} });

describe('an option', () => {
  it('changes what it names and nothing else', () => {
    const raw = middle();
    const before = JSON.stringify(raw);
    const { document, findings } = resolve(raw, 'under-8');
    const plain = readDocument(raw);
    expect(document.designs['underside']!.thickness).toEqual({ si: 0.008, typed: '8 mm' });
    expect({ ...document, designs: plain.designs }).toEqual(plain);
    expect(findings).toEqual([]);
    expect(JSON.stringify(raw)).toBe(before);
  });

  it('null takes away: a slip factor, a panel', () => {
    const fixing = resolve(middle(), 'under-6-clearance').document.designs['underside']!.fixing;
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
        changes: { designs: { underside: { pitch: null, fixing: { pitch: '120 mm' } } } },
      });
      d.options.push({
        id: 'over',
        title: 'Over',
        base: 'both',
        changes: { designs: { underside: { thickness: '10 mm' } } },
      });
    });
    const design = resolve(raw, 'over').document.designs['underside']!;
    expect(design.thickness.typed).toBe('10 mm');
    expect(design.fixing).toMatchObject({ pitch: { typed: '120 mm' } });
    expect(lineage(readDocument(raw).options, 'over').map(({ id }) => id)).toEqual(['under-8', 'both', 'over']);
  });

  it('refuses differences that make a wrong document, naming the option and the field', () => {
    const raw = middle(
      (d) =>
        void (d.options[1].changes = {
          designs: { underside: { thickness: '8 kg', colour: 'red' } },
          water: { salinity: null },
        }),
    );
    expect(() => resolve(raw, 'under-8')).toThrow(
      /^options\.under-8\.designs\.underside\.thickness: “8 kg” is a mass, the field needs a length/m,
    );
    expect(() => resolve(raw, 'under-8')).toThrow(
      /^options\.under-8\.designs\.underside\.colour: This field is not known here/m,
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
      (d) => void Object.assign(d.options[1].changes, { grid: { crossTubes: { count: 6 } }, panels: { A6: null } }),
    );
    const plain = readDocument(raw);
    expect(Object.keys(plain.panels)).toEqual(expect.arrayContaining(['A6', 'B6']));
    const { document, findings } = resolve(raw, 'under-8');
    expect(Object.keys(document.panels)).toEqual(Object.keys(plain.panels).filter((key) => !key.endsWith('6')));
    expect(findings.map(({ id, place }) => [id, place])).toEqual([['difference-names-lost-bay', 'B6']]);
    expect(findings[0]!.text).toMatch(/takes away bay B6 of the panel “B6”: the panel is left out/);
  });

  describe('a rectangle of bays that the option’s grid has not all', () => {
    /** One panel over all twelve bays, and an option with another grid and panels. */
    const whole = (grid: Json, panels: Json = {}) =>
      middle((d) => {
        d.panels = { 'A1:B6': 'top-4' };
        // A shorter plate is not hung or stowed by points that lie beside it.
        delete d.grid.padEyes;
        delete d.loads.deck;
        d.options = [{ id: 'other', title: 'Other grid', base: null, changes: { grid, panels } }];
      });
    /** Cross tubes each by itself, the third only over the first row of bays. */
    const tubes = [1, 2, 3, 4, 5, 6, 7].map((i) => ({
      at: `${(i - 1) * 830} mm`,
      ...(i === 3 ? { from: '-80 mm', to: '1500 mm' } : {}),
    }));
    const hole = { crossTubes: { count: null, spacing: null, tubes } };

    it('stays on the bays that are left where they make a full rectangle, as a finding that names option, bays and mend', () => {
      const raw = whole({ crossTubes: { count: 5 } });
      const { document, findings } = resolve(raw, 'other');
      expect(document.panels).toEqual({ 'A1:B4': 'top-4' });
      expect(findings).toEqual([
        {
          id: 'difference-names-lost-bay',
          place: 'A1:B6',
          text: 'Option “other” takes away bays A5, A6, B5 and B6 of the panel “A1:B6”: the panel stays on A1:B4, the bays that are left',
          mend: 'Say in the option which panel goes where: null for “A1:B6”, and a panel of its own for A1:B4.',
        },
      ]);
      const appraisal = appraise(raw, readDocument(raw), 'other');
      expect(appraisal.model.geometry.panels.map(({ id, bays }) => [id, bays.length])).toEqual([['A1:B4', 8]]);
      expect(appraisal.findings).toEqual(expect.arrayContaining([...findings]));
    });

    it('is left out where they make none', () => {
      const { document, findings } = resolve(whole(hole), 'other');
      expect(planOf(document).ids).not.toContain('B2');
      expect(document.panels).toEqual({});
      expect(findings.map(({ text }) => text)).toEqual([
        expect.stringMatching(/takes away bays B2 and B3 of the panel “A1:B6”: the panel is left out$/),
      ]);
    });

    it('is left out where the option gives a panel to a bay that is left', () => {
      const { document, findings } = resolve(whole({ crossTubes: { count: 5 } }, { A1: 'underside' }), 'other');
      expect(document.panels).toEqual({ A1: 'underside' });
      expect(findings.map(({ text }) => text)).toEqual([expect.stringMatching(/the panel is left out$/)]);
    });

    it('is right where the option takes it away or gives every bay a panel', () => {
      const { document, findings } = resolve(whole(hole, { 'A1:B6': null, 'A1:A6': 'top-4' }), 'other');
      expect(findings).toEqual([]);
      expect(document.panels).toEqual({ 'A1:A6': 'top-4' });
    });

    it('and a key that names no bays at all stays a refusal', () => {
      const raw = whole({}, { 'A1:B6': null, 'A1:': 'top-4' });
      expect(resolve(raw, 'other').findings).toEqual([]);
      expect(() => appraise(raw, readDocument(raw), 'other')).toThrow(/“A1:” names no bay/);
    });
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
