import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { Plan } from '../water/lattice/plan.ts';
import { waterReport } from '../water/water-report.ts';
import { linePlot } from './line-plot.ts';
import type { Section } from './note.ts';

/** Amplitudes at which theory is asked, at most: each takes seconds. */
const mostAsked = 3;
/** Cells along the longer side: within about a percent, and quick. */
const cells = 60;

/** What theory is laid beside: each run by itself, and all together. SI. */
export interface TestedRuns {
  readonly runs: readonly {
    readonly amplitude: number;
    readonly addedMass: number;
    readonly dragCoefficient: number;
  }[];
  readonly addedMass: { readonly value: number };
  readonly dragCoefficient: { readonly value: number };
}

/** Theory for a plate's own plan beside a test of it or of its model (`scale`: length of the plan over length tested), at the
 *  amplitudes tested, brought to the tank's size and density. */
export function tankTheory(
  { runs, addedMass, dragCoefficient }: TestedRuns,
  { area, density }: { readonly area: number; readonly density: number },
  plan: Plan,
  scale: number,
  print: Print,
): Section {
  const amplitudes = [...new Set(runs.map(({ amplitude }) => amplitude))].sort((a, b) => a - b);
  const every = Math.max(1, (amplitudes.length - 1) / (mostAsked - 1));
  const asked = [...new Set(Array.from({ length: Math.min(mostAsked, amplitudes.length) }, (_, i) => amplitudes[Math.round(i * every)]!))]; // prettier-ignore
  const found = asked.map((amplitude) => {
    const { quantities } = waterReport(plan, {
      density,
      amplitude: scale * amplitude,
      period: null,
      depth: null,
      aboveBed: null,
      cells,
    });
    const mass = quantities['addedMass.heave']!;
    const drag = quantities['drag.area']!;
    const S = scale ** 2 * area;
    return { amplitude, mass: mass.value / scale ** 3, drag: drag.value / S, low: drag.low! / S, high: drag.high! / S };
  });
  const picture = (
    what: string,
    axis: string,
    tested: (run: (typeof runs)[number]) => number,
    curves: readonly { readonly of: (one: (typeof found)[number]) => number; readonly pen: 'outline' | 'hidden' }[],
  ) =>
    linePlot({
      caption: `${what}: runs of the test (points) and computed for this plate (line${curves.length > 1 ? ', its spread dashed' : ''})`,
      alt: `${what} tested and computed, against amplitude`,
      axes: ['amplitude, m', axis],
      points: runs.slice(0, 200).map((run) => ({ x: run.amplitude, y: tested(run) })),
      curves: curves.map(({ of, pen }) => ({ x: asked, y: found.map(of), pen })),
      shape: 0.32,
    });
  return {
    title: 'Beside theory',
    blocks: [
      {
        kind: 'table',
        caption: `Computed by the lattice of ${cells} cells for the plate of this document, in water of the test’s density; drag refers to the test’s area`,
        columns: [
          { title: 'Amplitude', width: 0.25, align: 'right' },
          { title: 'Added mass', width: 0.25, align: 'right' },
          { title: 'Drag coefficient', width: 0.25, align: 'right' },
          { title: 'Its spread', width: 0.25 },
        ],
        rows: found.map(({ amplitude, mass, drag, low, high }) => [
          print.quantity(amplitude, 'm', 3),
          print.quantity(mass, 'kg'),
          significant(drag, 3),
          `${significant(low, 3)} to ${significant(high, 3)}`,
        ]),
      },
      {
        kind: 'paragraph',
        text: `Tested, all runs together: added mass ${print.quantity(addedMass.value, 'kg')}, drag coefficient ${significant(dragCoefficient.value, 4)}. Where the two part by more than their spreads, look first at the record’s findings, at the walls of the tank and at whether this document is of the plate that was tested.`,
      },
      picture('Added mass', 'added mass, kg', ({ addedMass: own }) => own, [
        { of: ({ mass }) => mass, pen: 'outline' },
      ]),
      picture('Drag coefficient', 'drag coefficient', ({ dragCoefficient: own }) => own, [
        { of: ({ drag }) => drag, pen: 'outline' },
        { of: ({ low }) => low, pen: 'hidden' },
        { of: ({ high }) => high, pen: 'hidden' },
      ]),
    ],
  };
}
