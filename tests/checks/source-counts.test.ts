import { expect, it } from 'vitest';
import { boltClasses } from '../../core/catalogue/bolt-classes.ts';
import { boltSlip } from '../../core/checks/bolt-slip.ts';
import { utilisationText } from '../../core/quantity/utilisation-text.ts';
import { sourceText } from '../../core/result.ts';
import { countsFor } from '../../core/checks/source-counts.ts';
import { demoModel } from './model-of.ts';

it('names EN 1999-1-1 among the sources of slip where a panel or tube is of aluminium, and there alone', () => {
  const named = (change: object) =>
    boltSlip.source.filter(countsFor(demoModel(change))).map(({ document }) => document);
  expect(named({})).not.toContain('EN 1999-1-1');
  expect(named({})).toContain('EN 1993-1-8');
  expect(named({ designs: { deck: { material: '5083-H111' } } })).toContain('EN 1999-1-1');
  const tube = { material: '6082-T6 extruded' };
  expect(named({ grid: { mainTubes: tube, crossTubes: tube } })).toContain('EN 1999-1-1');
});

it('says “from memory” once', () => {
  for (const { source } of boltClasses) {
    const text = sourceText(source!);
    expect(text.split('from memory').length - 1, text).toBeLessThanOrEqual(1);
  }
  expect(sourceText({ document: 'EN 1990', clause: 'A1.3', memory: true })).toBe('EN 1990, A1.3 (from memory)');
});

it('prints no utilisation of a fatigue check as nothing', () => {
  expect([0, 1e-6, 0.0049, 0.005, 0.987, 1.2].map(utilisationText)).toEqual([
    '0.00',
    '<0.01',
    '<0.01',
    '0.01',
    '0.99',
    '1.20',
  ]);
});
