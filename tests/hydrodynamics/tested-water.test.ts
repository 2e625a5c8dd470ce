import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { readDocument, type RawDocument } from '../../core/document/read-document.ts';
import { testsField } from '../../core/document/tests-field.ts';
import { testedWater } from '../../core/hydrodynamics/tested-water.ts';
import { testsSection } from '../../core/note/tests-section.ts';
import { readyPlate } from '../../core/plate/solve-plate.ts';
import { addedWater } from '../../core/plate/added-water.ts';
import { firstSize } from '../../core/plate/mesh-study.ts';
import { printIn } from '../../core/print-in.ts';
import { readTable } from '../../core/record/read-table.ts';
import { acceptedResult } from '../../core/tank/accepted-result.ts';
import { reducedTest } from '../../core/tank/reduced-test.ts';
import { amplitudeOfForce } from '../../core/water/amplitude-of-force.ts';
import { forceOfMotion } from '../../core/water/motion-force.ts';

const base = JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as RawDocument;
const { mass: own } = appraise(base, readDocument(base), null).model;

/** The small sample with a test of the record “closed”, accepted unless `old`, and used. */
function documentWith(setup: object = {}, old = false): RawDocument {
  const test = {
    ...{ id: 'T1', title: 'Closed grid', record: { name: 'tank-closed.csv', hash: 'c'.repeat(64), bytes: 1 } },
    setup: { mass: '1460 kg', volume: '0.186 m^3', area: '8.4 m^2', density: '1024 kg/m^3', ...setup },
  };
  const [read] = testsField.parse({ tank: [test] }).tank;
  const result = acceptedResult(read!, reducedTest(readTable(readFileSync('samples/tank-closed.csv', 'utf8')), read!), '0.0.0'); // prettier-ignore
  const kept = { ...test, ...(old ? { setup: { ...test.setup, rigMass: '5 kg' } } : {}), result };
  return { ...base, tests: { tank: [kept] }, testUsed: { test: 'T1', reason: 'same grid, tested in spring' } } as unknown as RawDocument; // prettier-ignore
}
const appraised = (raw: RawDocument) => appraise(raw, readDocument(raw), null);

describe('an accepted test in the design', () => {
  const used = appraised(documentWith());

  it('gives its numbers in the water of the document, among the quantities, with its findings', () => {
    const water = testedWater(used.model);
    if (!water || 'missing' in water) throw new Error('the test is not used');
    const tested = water.test.result!.addedMass.value.si;
    expect(water.addedMass.value).toBeCloseTo((tested * own.waterDensity) / 1024, 6);
    expect(used.quantities['tested.addedMass']!.value).toBe(water.addedMass.value);
    expect(used.findings.map(({ id }) => id)).toContain('tested-other-plate');
  });

  it('of a model is brought to full scale by Froude’s law, with a finding on drag', () => {
    const model = appraised(documentWith({ scale: 2 }));
    const water = testedWater(model.model);
    if (!water || 'missing' in water) throw new Error('the test is not used');
    expect(water.addedMass.value / used.quantities['tested.addedMass']!.value).toBeCloseTo(8, 6);
    expect(water.area).toBeCloseTo(4 * 8.4, 9);
    expect(model.findings.map(({ id }) => id)).toContain('tested-at-scale');
  });

  it('is not used once settings differ from those it was accepted with, aloud', () => {
    const old = appraised(documentWith({}, true));
    expect(old.quantities['tested.addedMass']).toBeUndefined();
    expect(old.findings.map(({ id }) => id)).toContain('tested-result-old');
    expect(JSON.stringify(testsSection(old.model, printIn('metric')))).toMatch(
      /changed after this result was accepted/,
    );
  });

  it('lays out as much water over the plate as was tested', () => {
    const { structure } = readyPlate(used.model, { size: firstSize(used.model) });
    const water = addedWater(used.model, structure);
    const heave = Float64Array.from({ length: 2 * structure.coordinates.length }, (_, i) => (i % 6 === 2 ? 1 : 0));
    const force = new Float64Array(heave.length);
    water.inertia(heave, force);
    const tested = used.quantities['tested.addedMass']!.value;
    expect(force.reduce((sum, value, i) => sum + value * heave[i]!, 0) / tested).toBeCloseTo(1, 9);
    expect(water.total).toBe(tested);
    expect(water.test).toBe('Closed grid');
    expect(water.said).toMatch(/as the tank test “Closed grid” found it/);
  });

  it('is printed with hash, intervals, each run and its cautions', () => {
    const text = JSON.stringify(testsSection(used.model, printIn('metric')));
    for (const words of ['c'.repeat(64), 'same grid, tested in spring', '95 % intervals', 'suspended load'])
      expect(text).toContain(words);
  });

  it('is refused where the document names a test that it has not, or that has no result', () => {
    const none = { ...documentWith(), testUsed: { test: 'T2', reason: 'x' } } as RawDocument;
    expect(() => readDocument(none)).toThrow(/There is no test “T2”/);
    const raw = documentWith() as unknown as { tests: { tank: Record<string, unknown>[] } };
    delete raw.tests.tank[0]!['result'];
    expect(() => readDocument(raw as unknown as RawDocument)).toThrow(/no accepted result/);
  });
});

it('finds the amplitude whose force is the stated one, with inertia or with drag in the lead', () => {
  for (const [A, CdS] of [
    [20_000, 5],
    [500, 60],
  ] as const) {
    // prettier-ignore
    const a = amplitudeOfForce(9000, A, CdS, 1025, 7);
    expect(forceOfMotion(A, CdS, 1025, a, 7).peak / 9000).toBeCloseTo(1, 12);
  }
});
