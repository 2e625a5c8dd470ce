import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { appraise, type Appraisal } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { recordsIn } from '../../core/document/records-in.ts';
import { keptSeaResult } from '../../core/motion/kept-sea-result.ts';
import { reducedDeployment } from '../../core/motion/reduced-deployment.ts';
import { deploymentsSection } from '../../core/note/deployments-section.ts';
import type { Section } from '../../core/note/note.ts';
import { testsSection } from '../../core/note/tests-section.ts';
import { printIn } from '../../core/print-in.ts';
import { readTable } from '../../core/record/read-table.ts';
import { programVersion } from '../../core/result.ts';
import { acceptedResult } from '../../core/tank/accepted-result.ts';
import { reducedTest } from '../../core/tank/reduced-test.ts';

const text = readFileSync('samples/tested.stillplate.json', 'utf8');
const raw = readDocumentText(text);
const { tank, sea } = readDocument(raw).tests!;
const table = (name: string) => readTable(readFileSync(`samples/${name}`, 'utf8'));
const kept = raw['tests'] as { readonly tank: readonly { result: object }[]; readonly sea: readonly { result: object }[] }; // prettier-ignore
const words = (sections: readonly Section[]): string => JSON.stringify(sections);

describe('the sample “tested”', () => {
  let appraisal: Appraisal;
  beforeAll(() => {
    appraisal = appraise(raw, readDocument(raw), null);
  });

  it('holds what its records give when they are reduced again (build/make-tested-sample.mjs)', () => {
    const [test] = tank;
    expect(acceptedResult(test!, reducedTest(table(test!.record.name), test!), programVersion)).toEqual(kept.tank[0]!.result); // prettier-ignore
    sea.forEach((one, i) => {
      const made = reducedDeployment(table(one.record.name), table(one.second!.record.name), one);
      expect(keptSeaResult(one, made, programVersion)).toEqual(kept.sea[i]!.result);
    });
    expect(recordsIn(text)).toEqual(['tank-model.csv', 'sea-closed.csv', 'sea-closed-plate.csv', 'sea-open.csv', 'sea-open-plate.csv']); // prettier-ignore
  });

  it('is designed with the added mass and drag of its model, within the intervals of what the record was made from', () => {
    const truth = (JSON.parse(readFileSync('samples/tank.truth.json', 'utf8')) as { records: { model: { addedMass: number; dragCoefficient: number } } }).records.model; // prettier-ignore
    const { addedMass, dragCoefficient } = tank[0]!.result!;
    expect(addedMass.low.si).toBeLessThan(truth.addedMass);
    expect(addedMass.high.si).toBeGreaterThan(truth.addedMass);
    expect(dragCoefficient.low).toBeLessThan(truth.dragCoefficient);
    expect(dragCoefficient.high).toBeGreaterThan(truth.dragCoefficient);
    const full = appraisal.quantities['tested.addedMass']!.value;
    // Froude: the cube of the scale, and the sea's density over the tank's
    expect(full / (4 ** 3 * addedMass.value.si)).toBeCloseTo(1027 / 999, 3);
  });

  it('tells in its note the test, theory on the same pictures, both deployments and which moves less', () => {
    const print = printIn('metric');
    const tests = testsSection(appraisal.model, print);
    expect(words(tests)).toMatch(new RegExp(tank[0]!.record.hash));
    expect(words(tests)).toMatch(/beside theory/);
    expect(words(tests)).not.toMatch(/changed after this result/);
    const [section] = deploymentsSection(appraisal.model, print);
    expect(section!.sections!.map(({ title }) => title)).toEqual(['Closed, October', 'Open, May', 'Closed, October against Open, May']); // prettier-ignore
    expect(words([section!])).not.toMatch(/changed after this result/);
    expect(words([section!])).toMatch(/below 0.001/);
  });
});
