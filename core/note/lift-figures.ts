import { allowedByPeriod } from '../recovery/recovery-report.ts';
import type { Lift } from '../recovery/lift-stages.ts';
import type { Print } from '../print-in.ts';
import type { Figure, Shape } from './note.ts';

const label = (x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end' = 'middle'): Shape => ({ kind: 'label', at: [x, y], text, size: 7, anchor }); // prettier-ignore
const line = (points: readonly (readonly [number, number])[], pen: 'outline' | 'thin' | 'hidden' | 'accent'): Shape => ({ kind: 'path', rings: [points], closed: false, pen }); // prettier-ignore

/** A step of an axis that gives three to six lines up to the largest value. */
function stepTo(largest: number): number {
  const power = 10 ** Math.floor(Math.log10(largest));
  return [0.1, 0.2, 0.5, 1].map((part) => part * power * 2).find((step) => largest / step <= 6)!;
}

/** Load on the hook at each stage as a bar, that of the open grid as a mark in it, under the least of what frame, winch and line may carry. */
export function hookLoadFigure(lift: Lift, open: Lift, print: Print): Figure {
  const stages = lift.stages.flatMap((stage) => {
    const bare = open.stages.find(({ id }) => id === stage.id);
    return stage.hook > 0 && bare ? [{ ...stage, bare: bare.hook }] : [];
  });
  const [left, right, row] = [44, 100, 4];
  const largest = Math.max(lift.capacity, ...stages.map(({ hook }) => hook));
  const at = (force: number): number => left + ((right - left) * force) / largest;
  const height = row * stages.length;
  const step = stepTo(largest);
  const shapes: Shape[] = [];
  for (let force = 0; force <= largest; force += step)
    shapes.push(line([[at(force), 0], [at(force), height]], 'hidden'), label(at(force), -3, print.quantity(force, 'kN', 3))); // prettier-ignore
  stages.forEach(({ title, hook, bare, snaps }, i) => {
    const y = height - row * (i + 1);
    shapes.push(
      label(left - 1, y + 1.1, snaps ? `${title}: snaps` : title, 'end'),
      { kind: 'path', rings: [[[left, y + 0.6], [at(hook), y + 0.6], [at(hook), y + 3.2], [left, y + 3.2]]], closed: true, pen: 'thin', fill: hook > lift.capacity ? 'accent' : 'panel' },
      line([[at(bare), y + 0.2], [at(bare), y + 3.6]], 'outline'),
    ); // prettier-ignore
  });
  shapes.push(line([[at(lift.capacity), 0], [at(lift.capacity), height + 1]], 'accent'), label(at(lift.capacity), height + 1.8, 'may carry', 'end')); // prettier-ignore
  return {
    kind: 'figure',
    caption: `Load on the hook at each stage, in a sea of ${print.quantity(lift.sea.Hs, 'm', 3)} significant height. Bar: with panels. Stroke: the open grid. Line: least of what frame, winch and hoist line may carry`,
    alt: 'Bars of the load on the hook for each stage of the lift, against what may be carried',
    box: { x: 0, y: -5, width: 104, height: height + 10 },
    widthShare: 0.9,
    shapes,
  };
}

/** Significant height up to which every stage keeps within the capacity and taut, by the mean period; the open grid beside it. */
export function allowedSeaFigure(lift: Lift, open: Lift, print: Print): Figure {
  const closed = allowedByPeriod(lift).map(({ period, splash, deep }) => ({ period, height: Math.min(splash, deep) }));
  const bare = allowedByPeriod(open).map(({ period, splash, deep }) => ({ period, height: Math.min(splash, deep) }));
  const largest = Math.max(...closed.map(({ height }) => height), ...bare.map(({ height }) => height), lift.sea.Hs);
  const longest = closed.at(-1)!.period;
  const [width, tall] = [60, 30];
  const at = (period: number, height: number): readonly [number, number] => [(width * period) / longest, (tall * height) / largest];
  const step = stepTo(largest);
  const shapes: Shape[] = [line([[0, tall], [0, 0], [width, 0]], 'thin')]; // prettier-ignore
  for (let height = 0; height <= largest; height += step)
    shapes.push(line([at(0, height), at(longest, height)], 'hidden'), label(-1, at(0, height)[1] - 0.6, print.quantity(height, 'm', 2), 'end')); // prettier-ignore
  for (const { period } of closed) shapes.push(label(at(period, 0)[0], -2.6, String(period)));
  const end = closed.at(-1)!.height;
  shapes.push(
    label(width / 2, -5.4, 'mean zero-crossing period, s'),
    line(closed.map(({ period, height }) => at(period, height)), 'outline'),
    line(bare.map(({ period, height }) => at(period, height)), 'thin'),
    label(width + 1, at(0, end)[1] - 0.6, 'with panels', 'start'),
    label(width + 1, at(0, bare.at(-1)!.height)[1] - 0.6, 'open grid', 'start'),
    { kind: 'circle', at: at(Math.min(lift.sea.Tz, longest), lift.sea.Hs), radius: 0.7, pen: 'accent', fill: 'accent' },
  ); // prettier-ignore
  return {
    kind: 'figure',
    caption: 'Largest significant height in which every stage keeps within what may be carried and no line goes slack. Dot: the sea stated',
    alt: 'Allowed significant wave height against mean period, with panels and for the open grid',
    box: { x: -10, y: -7, width: width + 24, height: tall + 10 },
    widthShare: 0.7,
    shapes,
  };
}
