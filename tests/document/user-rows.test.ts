import { describe, expect, it } from 'vitest';
import { readDocument } from '../../core/document/read-document.ts';
import { userRowFindings, userRows } from '../../core/document/user-rows.ts';
import { middle } from './middle.ts';

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
