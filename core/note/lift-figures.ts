import { allowedByPeriod } from '../recovery/recovery-report.ts';
import type { Point } from '../geometry/geometry.ts';
import { liftPeriods, seaExists, type Lift } from '../recovery/lift-stages.ts';
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
  const heights = (of: Lift): readonly Point[] =>
    allowedByPeriod(of).map(({ period, splash, deep }) => [period, Math.min(splash, deep)]);
  const { axes, at, box } = byPeriod(heights(lift), heights(open), lift.sea.Hs, (height) => print.quantity(height, 'm', 2)); // prettier-ignore
  return {
    kind: 'figure',
    caption:
      'Largest significant height in which every stage keeps within what may be carried and no line goes slack. Dot: the sea stated',
    alt: 'Allowed significant wave height against mean period, with panels and for the open grid',
    box,
    widthShare: 0.7,
    shapes: [...axes, { kind: 'circle', at: at(lift.sea.Tz, lift.sea.Hs), radius: 0.7, pen: 'accent', fill: 'accent' }],
  };
}

/** Largest load on the hook of all stages by the mean period, at the stated height where such a sea exists; the open grid beside it. */
export function hookByPeriodFigure(lift: Lift, open: Lift, print: Print): Figure | null {
  const { Hs } = lift.sea;
  const loads = (of: Lift): readonly Point[] =>
    liftPeriods.flatMap((Tz): Point[] => seaExists({ Hs, Tz }) ? [[Tz, Math.max(...of.at({ Hs, Tz }).map(({ hook }) => hook))]] : []); // prettier-ignore
  const closed = loads(lift);
  if (closed.length < 2) return null;
  const { axes, at, box } = byPeriod(closed, loads(open), lift.capacity, (force) => print.quantity(force, 'kN', 2)); // prettier-ignore
  const [left, top] = at(0, lift.capacity);
  return {
    kind: 'figure',
    caption: `Largest load on the hook of all stages, in seas of ${print.quantity(Hs, 'm', 3)} significant height. Line: what may be carried`,
    alt: 'Hook load against mean period, with panels and for the open grid',
    box,
    widthShare: 0.7,
    shapes: [...axes, line([[left, top], at(liftPeriods.at(-1)!, lift.capacity)], 'accent')],
  };
}

/** Two curves over the mean period with their axes, from nothing up to the largest of them and of a mark. */
function byPeriod(closed: readonly Point[], bare: readonly Point[], mark: number, words: (value: number) => string) {
  const largest = Math.max(mark, ...closed.map(([, value]) => value), ...bare.map(([, value]) => value));
  const longest = liftPeriods.at(-1)!;
  const [width, tall] = [60, 30];
  const at = (period: number, value: number): Point => [(width * Math.min(period, longest)) / longest, (tall * value) / largest]; // prettier-ignore
  const axes: Shape[] = [line([[0, tall], [0, 0], [width, 0]], 'thin')]; // prettier-ignore
  const step = stepTo(largest);
  for (let value = 0; value <= largest; value += step)
    axes.push(line([at(0, value), at(longest, value)], 'hidden'), label(-1, at(0, value)[1] - 0.6, words(value), 'end')); // prettier-ignore
  for (const period of liftPeriods) axes.push(label(at(period, 0)[0], -2.6, String(period)));
  // Names stand apart where the curves end close together.
  const [end, other] = [at(0, closed.at(-1)![1])[1], at(0, bare.at(-1)![1])[1]];
  const apart = Math.max(0, 2.6 - Math.abs(end - other)) / 2;
  const up = end >= other ? 1 : -1;
  axes.push(
    label(width / 2, -5.4, 'mean zero-crossing period, s'),
    line(closed.map(([period, value]) => at(period, value)), 'outline'),
    line(bare.map(([period, value]) => at(period, value)), 'thin'),
    label(width + 1, end - 0.6 + up * apart, 'with panels', 'start'),
    label(width + 1, other - 0.6 - up * apart, 'open grid', 'start'),
  ); // prettier-ignore
  return { axes, at, box: { x: -10, y: -7, width: width + 24, height: tall + 10 } };
}
