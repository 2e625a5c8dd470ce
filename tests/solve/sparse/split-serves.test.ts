import { expect, it } from 'vitest';
import { partSplit } from '../../../core/solve/sparse/part-split.ts';
import { splitServes, type Joined } from '../../../core/solve/sparse/split-serves.ts';
import type { StiffnessSystem } from '../../../core/solve/sparse/stiffness-system.ts';
import { firstContactStep, type SystemInParts } from '../../plate/first-contact-step.ts';
import { ready, sampleModel } from '../../plate/results/support/solved-sample.ts';

/** The small sample with something of its bolted panels changed. */
const withDesign = (change: object): SystemInParts => {
  const model = sampleModel('small', (raw) => Object.assign((raw as unknown as { designs: Record<string, object> }).designs['bolted-5']!, change)); // prettier-ignore
  return firstContactStep(ready(model, 0.3), model.loads.situations[0]!);
};
const joined = ({ coordinates, elements }: StiffnessSystem): Joined => ({ coordinates, nodes: elements.map(({ nodes }) => nodes) }); // prettier-ignore

it('a split serves a plate of another thickness, to every number and bit, and not one whose nodes stand elsewhere', () => {
  const [thin, thick, wide] = [{ thickness: '5 mm' }, { thickness: '7.3 mm' }, { overlap: { onMain: '46 mm', onCross: '40 mm' } }].map(withDesign) as [SystemInParts, SystemInParts, SystemInParts]; // prettier-ignore
  expect(thin.system.coordinates).not.toEqual(thick.system.coordinates);
  expect(splitServes(joined(thin.system), joined(thick.system))).toBe(true);
  expect(partSplit(thin.system, thin.parts)).toEqual(partSplit(thick.system, thick.parts));
  expect(splitServes(joined(thin.system), joined(wide.system))).toBe(false);
});

it('nor one whose levels stand in another order, come together, or whose elements join other nodes', () => {
  const own: Joined = { coordinates: Float64Array.of(0, 0, 0, 1, 0, 0.1, 1, 1, 0.1), nodes: [[0, 1], [1, 2]] }; // prettier-ignore
  const at = (...heights: number[]): Joined => ({ ...own, coordinates: own.coordinates.map((value, i) => (i % 3 === 2 ? heights[(i - 2) / 3]! : value)) }); // prettier-ignore
  expect(splitServes(own, at(0, 0.3, 0.3))).toBe(true);
  expect(splitServes(own, at(0, -0.3, -0.3))).toBe(false);
  expect(splitServes(own, at(0, 1e-9, 1e-9))).toBe(false);
  expect(splitServes(own, at(0, 0.3, 0.2))).toBe(false);
  expect(splitServes(own, { coordinates: own.coordinates.slice(), nodes: [[0, 1], [0, 2]] })).toBe(false); // prettier-ignore
});
