import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { appraise } from '../core/appraise.ts';
import { readDocument, readDocumentText } from '../core/document/read-document.ts';
import { unitReading, sameDimension } from '../core/quantity/units.ts';

const raw = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));

describe('quantities', () => {
  it('give the weld as a stress on its throat, not as a ratio', () => {
    const { quantities, rows } = appraise(raw, readDocument(raw), 'welded');
    const weld = rows.filter(({ id, place }) => id === 'weld-directional' && place === 'A2');
    const use = Math.max(...weld.map(({ utilisation }) => utilisation ?? 0));
    const stress = quantities['weld.A2.stress']!.value;
    // EN 1993-1-8:2005, 4.5.3.2: f_u / (beta_w gamma_M2) = 470 / (0.9 × 1.25) MPa bounds the equivalent stress.
    expect(stress).toBeLessThanOrEqual(use * (470e6 / (0.9 * 1.25)) * (1 + 1e-9));
    expect(stress).toBeGreaterThan(use * (470e6 / (0.9 * 1.25)) * 0.5);
  });

  it('that are largest demands of checks have the dimension of those checks', () => {
    for (const option of [null, 'welded']) {
      const { quantities, rows } = appraise(raw, readDocument(raw), option);
      const fromChecks = Object.values(quantities).flatMap(({ unit, source, title }) => {
        const id = /^check: ([\w-]+)/.exec(source)?.[1];
        return id === undefined || title.includes('throat') ? [] : [{ unit, row: rows.find((r) => r.id === id)! }];
      });
      expect(fromChecks.length).toBeGreaterThan(3);
      for (const { unit, row } of fromChecks)
        expect(sameDimension(unitReading(unit).dimensions, unitReading(row.unit).dimensions), row.id).toBe(true);
    }
  });
});
