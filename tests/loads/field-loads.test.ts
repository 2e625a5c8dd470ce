import { expect, it } from 'vitest';
import { fieldLoads } from '../../core/loads/field-loads.ts';
import { addPattern, type Loaded } from '../../core/loads/loaded.ts';
import { plateLoads, type PlateLoads } from '../../core/loads/plate-loads.ts';
import { Pressures } from '../../core/loads/pressures.ts';
import { loadedPlate } from './loaded-plate.ts';
import { plates } from './plates.ts';

const even = ({ x0, x1, y0, y1 }: { x0: number; x1: number; y0: number; y1: number }) => (x1 - x0) * (y1 - y0);

/** Field by field, as a person would add them up: the second method. */
function oneByOne({ fields, rising }: PlateLoads, net: Float64Array): Loaded {
  const sum = { load: new Float64Array(rising.load.length), motion: new Float64Array(rising.motion.length) };
  fields.forEach(({ panel, pressed, pulled }, i) =>
    addPattern(sum, net[i]! > 0 === (panel.pressedBy === 'up') ? pressed : pulled, net[i]!),
  );
  return sum;
}

const panelled = Object.entries(plates).filter(([name]) => name !== 'no panels yet');
it.each(panelled)('gives the sum over the fields, one of them lost, senses changing: %s', (_, document) => {
  const { geometry, mass } = loadedPlate(document);
  const plate = plateLoads(geometry, mass, even, []);
  const onFields = fieldLoads(plate);
  const n = plate.fields.length;
  const [rising, tilting] = [new Float64Array(n).fill(900), Float64Array.from({ length: n }, (_, i) => 400 * i - 700)];
  for (const [a, b] of [[1, 0.1], [-1.3, 0.1], [0.2, 1], [1, -2]] as const)
    for (const without of [[], [0], [n - 1]]) {
      const pressures = new Pressures([[rising, a], [tilting, b]], without);
      const sum = { load: new Float64Array(plate.rising.load.length), motion: new Float64Array(plate.rising.motion.length) };
      onFields.add(sum, pressures);
      // a plate of one panel that is lost has nothing left: round-off is measured by the plate with it
      const [expected, unbroken] = [oneByOne(plate, pressures.net), oneByOne(plate, pressures.whole)];
      for (const of of ['load', 'motion'] as const) {
        const size = Math.max(...unbroken[of].map(Math.abs));
        sum[of].forEach((value, i) => expect(Math.abs(value - expected[of][i]!)).toBeLessThanOrEqual(1e-11 * size));
      }
    } // prettier-ignore
});
