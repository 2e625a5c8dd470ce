import type { TankTest } from '../document/tests-field.ts';
import type { Finding } from '../finding.ts';
import type { Model } from '../model.ts';
import { significant } from '../quantity/format-quantity.ts';
import { testKey } from '../tank/test-key.ts';

/** A value with its 95 % interval. SI. */
export interface Bounded {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Added mass and drag of an accepted test, at full scale and in the document's water. */
export interface TestedWater {
  readonly test: TankTest;
  readonly reason: string;
  readonly addedMass: Bounded;
  readonly dragCoefficient: Bounded;
  /** That the drag coefficient refers to, m². */
  readonly area: number;
}

/**
 * The water of the test that the design uses; why it cannot be had; null where computed values are used. By Froude's law
 * added mass grows with the cube of the scale and the density, the area with its square; the drag coefficient is taken as
 * it was tested.
 */
export function testedWater({
  document,
  mass,
}: Pick<Model, 'document' | 'mass'>): TestedWater | { readonly missing: string } | null {
  const { tests, testUsed } = document;
  const test = testUsed && tests?.tank.find(({ id }) => id === testUsed.test);
  if (!testUsed || !test?.result) return null;
  if (test.result.key !== testKey(test))
    return { missing: `the accepted result of the test “${test.title}” is of other settings or of another record` };
  const { addedMass, dragCoefficient } = test.result;
  const { scale, density, area } = test.setup;
  const grown = (scale ** 3 * mass.waterDensity) / density.si;
  return {
    test,
    reason: testUsed.reason,
    addedMass: { value: grown * addedMass.value.si, low: grown * addedMass.low.si, high: grown * addedMass.high.si },
    dragCoefficient,
    area: scale ** 2 * area.si,
  };
}

/** Parts by which mass and area of the tested plate may differ from the one designed before it counts as another. */
const sameWithin = 0.02;

/** What is to be said of a test that the design uses. */
export function testedFindings(model: Model): Finding[] {
  const water = testedWater(model);
  if (water === null) return [];
  const place = 'tests';
  if ('missing' in water)
    return [{ id: 'tested-result-old', place, text: `Computed added mass and drag are used, for ${water.missing}.`, mend: 'Accept the result anew on the sheet Tank test.' }]; // prettier-ignore
  const { test, area } = water;
  const findings: Finding[] = [];
  const { mass, loads } = model;
  const off = (tested: number, here: number): boolean => Math.abs(tested / here - 1) > sameWithin;
  const grown = test.setup.scale ** 3 * test.setup.mass.si;
  if (off(area, loads.plate.shares.solid) || (test.setup.scale === 1 && off(grown, mass.total)))
    findings.push({ id: 'tested-other-plate', place, text: `The test “${test.title}” is of a plate of ${significant(grown, 4)} kg and ${significant(area, 4)} m² (at full scale); this one has ${significant(mass.total, 4)} kg and ${significant(loads.plate.shares.solid, 4)} m².`, mend: 'Use a test of this plate, or say why the other stands for it.' }); // prettier-ignore
  if (test.setup.scale > 1)
    findings.push({ id: 'tested-at-scale', place, text: `The drag coefficient is from a model at 1:${significant(test.setup.scale, 3)}: the water’s viscosity did not scale with it, and round edges may lose less at full scale.`, mend: 'Keep a margin on drag, or test at full scale.' }); // prettier-ignore
  const found = test.result!.findings.length;
  if (found > 0)
    findings.push({ id: 'tested-with-findings', place, text: `The test “${test.title}” was accepted with ${found === 1 ? 'a finding' : `${found} findings`}: ${test.result!.findings[0]}`, mend: 'They are printed in the note.' }); // prettier-ignore
  return findings;
}
