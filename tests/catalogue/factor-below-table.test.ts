import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { overrideFindings } from '../../core/catalogue/design-basis.ts';
import { readDocument } from '../../core/document/read-document.ts';
import { middle } from '../document/middle.ts';

const found = (factor: string, value: number, table = 'EN 1993') =>
  overrideFindings(
    readDocument(
      middle((d) => void Object.assign(d.basis, { table, overrides: [{ factor, value, reason: 'client' }] })),
    ),
  );

describe('an override of a factor', () => {
  it('below the table is found, with both values and the reason', () => {
    // EN 1993-1-8, Table 2.1: γ_M2 = 1.25. AISC 360-16, J3: Ω = 2.00 (from memory).
    expect(found('gamma_M2', 1.1)).toMatchObject([
      { id: 'factor-below-table', place: 'basis', text: expect.stringMatching(/gamma_M2.* 1\.1, .*1\.25.*“client”/) },
    ]);
    expect(found('Omega_J', 1.67, 'AISC 360 ASD')[0]?.text).toMatch(/Omega_J.* 1\.67, below the 2 of AISC 360 ASD/);
  });

  it('at or above the table is not', () => {
    expect(found('gamma_M2', 1.25)).toEqual([]);
    expect(found('gamma_M2', 1.3)).toEqual([]);
    expect(overrideFindings(readDocument(middle()))).toEqual([]);
  });

  it('reaches the appraisal', () => {
    const raw = middle((d) => void (d.basis.overrides = [{ factor: 'gamma_M0', value: 0.9, reason: 'none' }]));
    expect(appraise(raw, readDocument(raw), null).findings.map(({ id }) => id)).toContain('factor-below-table');
  });
});
