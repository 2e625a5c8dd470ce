import type { TankTest } from '../document/tests-field.ts';
import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import { probabilityLarger } from '../tank/compare-tests.ts';
import type { Estimate } from '../tank/estimate.ts';
import type { TankResult } from '../tank/identify.ts';
import type { Section } from './note.ts';

type Side = readonly [test: TankTest, result: TankResult];

/** Two tests side by side, with the probability that their numbers differ. */
export function tankComparison([a, first]: Side, [b, second]: Side, print: Print): Section {
  const row = (title: string, unit: string, of: (result: TankResult) => Estimate) => {
    const [one, other] = [of(first), of(second)];
    const range = ({ value, low, high }: Estimate): string => `${print.quantity(value, unit)} (${print.quantity(low, unit)} to ${print.quantity(high, unit)})`; // prettier-ignore
    return [title, range(one), range(other), other.value === 0 ? '' : significant(one.value / other.value, 3), chance(probabilityLarger(one, other))]; // prettier-ignore
  };
  return {
    title: `${a.title} against ${b.title}`,
    blocks: [
      {
        kind: 'table',
        caption:
          'Each with its 95 % interval. The probability is that of independent tests with normal errors; a stated bound on delay counts as noise',
        columns: [
          { title: 'Number', width: 0.18 },
          { title: a.title, width: 0.27 },
          { title: b.title, width: 0.27 },
          { title: 'Ratio', width: 0.1, align: 'right' },
          { title: `Larger in ${a.title}, probability`, width: 0.18, align: 'right' },
        ],
        rows: [
          row('Added mass', 'kg', ({ addedMass }) => addedMass),
          row('Drag coefficient', '1', ({ dragCoefficient }) => dragCoefficient),
        ],
      },
      ...(a.setup.area.si === b.setup.area.si
        ? []
        : [{ kind: 'paragraph', tone: 'loud', text: `The drag coefficients refer to different areas, ${a.setup.area.typed} and ${b.setup.area.typed}: compare their products with the area.` } as const]), // prettier-ignore
    ],
  };
}

/** A probability in words that do not claim more than three digits. */
const chance = (p: number): string => (p > 0.9995 ? 'above 0.999' : p < 0.0005 ? 'below 0.001' : p.toFixed(3));
