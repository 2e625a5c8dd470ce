import { significant } from '../quantity/format-quantity.ts';
import type { Figure, Pen, Shape } from './note.ts';

/** A curve of a plot, in the units of its axes. */
export interface PlotCurve {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly pen: Pen;
  /** Stands at the curve's end. */
  readonly name?: string;
}

/** A point, with the bar of its interval where it has one. */
export interface PlotPoint {
  readonly x: number;
  readonly y: number;
  readonly low?: number;
  readonly high?: number;
  readonly fill?: 'accent' | 'paper';
}

export interface Plot {
  readonly caption: string;
  readonly alt: string;
  /** What each axis counts, with its unit. */
  readonly axes: readonly [x: string, y: string];
  readonly curves?: readonly PlotCurve[];
  readonly points?: readonly PlotPoint[];
  /** Height over width of the frame. */
  readonly shape?: number;
  /** The vertical axis begins at zero. */
  readonly fromZero?: boolean;
  /** The horizontal axis counts whole things: no step under one. */
  readonly countsAcross?: boolean;
}

/** Width of a frame in its own units; texts are set in points and keep their size. */
const W = 100;

/** Curves and points over two axes with even steps, as a vector figure. Refuses nothing: without a point it is an empty frame. */
export function linePlot({
  caption,
  alt,
  axes,
  curves = [],
  points = [],
  shape = 0.42,
  fromZero = false,
  countsAcross = false,
}: Plot): Figure {
  const xs = [...curves.map(({ x }) => x), points.map(({ x }) => x)];
  const ys = [...curves.map(({ y }) => y), points.flatMap(({ y, low = y, high = y }) => [y, low, high])];
  const across = scaleOf(xs, false, countsAcross ? 1 : 0);
  const up = scaleOf(fromZero ? [...ys, [0]] : ys, true);
  const H = W * shape;
  const at = (x: number, y: number): readonly [number, number] => [
    (W * (x - across.from)) / (across.to - across.from),
    (H * (y - up.from)) / (up.to - up.from),
  ];
  const line = (pen: Pen, ...ring: (readonly [number, number])[]): Shape => ({ kind: 'path', rings: [ring], closed: false, pen }); // prettier-ignore
  const shapes: Shape[] = [
    ...up.ticks.map((y) => line('hidden', [0, at(0, y)[1]], [W, at(0, y)[1]])),
    line('thin', [0, 0], [W, 0]),
    line('thin', [0, 0], [0, H]),
    ...across.ticks.map((x): Shape => ({ kind: 'label', at: [at(x, 0)[0], -4.5], text: tick(x, across.step), size: 7, anchor: 'middle' })), // prettier-ignore
    ...up.ticks.map((y): Shape => ({ kind: 'label', at: [-1.5, at(0, y)[1] - 1], text: tick(y, up.step), size: 7, anchor: 'end' })), // prettier-ignore
    { kind: 'label', at: [W / 2, -9], text: axes[0], size: 7, anchor: 'middle' },
    { kind: 'label', at: [0, H + 2.5], text: axes[1], size: 7, anchor: 'start' },
    ...curves.flatMap(({ x, y, pen, name }): Shape[] => [
      line(pen, ...x.map((one, i) => at(one, y[i]!))),
      ...(name === undefined || x.length === 0
        ? []
        : [{ kind: 'label', at: [W + 1.5, at(0, y.at(-1)!)[1] - 1], text: name, size: 7, anchor: 'start' } as const]),
    ]),
    ...points.flatMap(({ x, y, low, high, fill = 'accent' }): Shape[] => [
      ...(low === undefined || high === undefined ? [] : [line('accent', at(x, low), at(x, high))]),
      { kind: 'circle', at: at(x, y), radius: 0.8, pen: 'accent', fill },
    ]),
  ];
  const right = curves.some(({ name }) => name !== undefined) ? 24 : 4;
  return {
    kind: 'figure',
    ...{ caption, alt, shapes },
    box: { x: -14, y: -11, width: W + 14 + right, height: H + 17 },
    widthShare: 1,
  };
}

/** An axis with even steps. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly ticks: readonly number[];
}

/** An axis over all values, in steps of 1, 2 or 5, none under `leastStep`; `whole`: it ends at whole steps. */
export function scaleOf(values: readonly (readonly number[])[], whole: boolean, leastStep = 0): Scale {
  let [low, high] = [Infinity, -Infinity];
  for (const list of values)
    for (const value of list) {
      if (value < low) low = value;
      if (value > high) high = value;
    }
  if (low > high) [low, high] = [0, 1];
  if (low === high) [low, high] = [low - (Math.abs(low) || 1) / 2, high + (Math.abs(high) || 1) / 2];
  const rough = (high - low) / 6;
  const ten = 10 ** Math.floor(Math.log10(rough));
  const step = Math.max(leastStep, ([1, 2, 5, 10].find((part) => part * ten >= rough) ?? 10) * ten);
  const [from, to] = whole ? [Math.floor(low / step) * step, Math.ceil(high / step) * step] : [low, high];
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first + 1;
  return { from, to, step, ticks: Array.from({ length: count }, (_, i) => (first + i) * step) };
}

/** As many decimals as the step asks for. */
export function tick(value: number, step: number): string {
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  if (decimals > 6 || Math.abs(value) >= 1e7) return significant(value, 3);
  return value
    .toFixed(decimals)
    .replace('-', '−')
    .replace(/^−(0(\.0*)?)$/, '$1');
}
