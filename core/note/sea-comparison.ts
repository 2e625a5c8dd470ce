import type { KeptSeaResult } from '../document/sea-tests-field.ts';
import { compareDeployments } from '../motion/compare-deployments.ts';
import { windowLength } from '../motion/sea-windows.ts';
import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import { linePlot } from './line-plot.ts';
import type { Section } from './note.ts';

interface Named {
  readonly title: string;
  readonly result: Pick<KeptSeaResult, 'windows'>;
}

/** Two deployments at like seas: who moved less, and how sure that is. */
export function seaComparison(a: Named, b: Named, print: Print): Section {
  const like = compareDeployments(a.result.windows, b.result.windows);
  const m = (si: number): string => print.quantity(si, 'm', 3);
  const told = ({ ratio, error, windows }: (typeof like)[number]['a']): string => `${significant(100 * ratio, 3)} ± ${significant(196 * error, 2)} % (${windows})`; // prettier-ignore
  return {
    title: `${a.title} against ${b.title}`,
    blocks: [
      like.length === 0
        ? { kind: 'paragraph', tone: 'loud', text: `The two were never in like seas: no height and period of the float is common to three windows of ${windowLength} s of each.` } // prettier-ignore
        : {
            kind: 'table',
            caption: `Motion of the plate over that of the float at like seas, in windows of ${windowLength} s, with 95 % of their mean and their number. What clocks and scales leave open is common to all windows of a deployment and not in it`,
            columns: [
              { title: 'Float, significant', width: 0.18, align: 'right' },
              { title: 'Period', width: 0.12, align: 'right' },
              { title: a.title, width: 0.25, align: 'right' },
              { title: b.title, width: 0.25, align: 'right' },
              { title: `Moves more in ${a.title}, probability`, width: 0.2, align: 'right' },
            ],
            rows: like.map((one) => [m(one.float), print.quantity(one.period, 's', 3), told(one.a), told(one.b), chance(one.larger)]), // prettier-ignore
          },
      linePlot({
        caption: `Each window of ${a.title} (shaded; line: its mean ratio) and of ${b.title} (open; broken line)`,
        alt: `Motion of the plate against that of the float, ${a.title} and ${b.title}`,
        axes: ['float, significant double amplitude, m', 'plate, significant double amplitude, m'],
        curves: ([[a, 'outline'], [b, 'hidden']] as const).map(([{ result: { windows } }, pen]) => through(windows, pen)), // prettier-ignore
        points: [
          ...a.result.windows.map(({ float, plate }) => ({ x: float, y: plate, fill: 'accent' as const })),
          ...b.result.windows.map(({ float, plate }) => ({ x: float, y: plate, fill: 'paper' as const })),
        ],
        shape: 0.34,
        fromZero: true,
      }),
    ],
  };
}

/** From the origin, with the mean ratio of all windows, over as far as they reach. */
function through(windows: KeptSeaResult['windows'], pen: 'outline' | 'hidden') {
  const ratio = windows.reduce((sum, { plate, float }) => sum + plate / float, 0) / windows.length;
  const ends = [Math.min(...windows.map(({ float }) => float)), Math.max(...windows.map(({ float }) => float))];
  return windows.length === 0 ? { x: [], y: [], pen } : { x: ends, y: ends.map((float) => ratio * float), pen };
}

/** A probability in words that do not claim more than three digits. */
const chance = (p: number): string => (p > 0.9995 ? 'above 0.999' : p < 0.0005 ? 'below 0.001' : p.toFixed(3));
