import { isClosed } from '../geometry/bay-openings.ts';
import { closingGains, type ClosingGains } from '../hydrodynamics/closing-gains.ts';
import type { Model } from '../model.ts';
import type { Print } from '../print-in.ts';
import { inUnit, printedUnit, unitText } from '../quantity/format-quantity.ts';
import { depthAgainstArea } from './depth-against-area.ts';
import { linePlot, type PlotPoint } from './line-plot.ts';
import type { Block, Figure, Section, Shape } from './note.ts';

/** What closing one bay after the other gives, in which order, and depth against area. Null where no motion is stated. */
export function closingSection(model: Model, print: Print): Section | null {
  const { hydrodynamics } = model.document;
  if (!hydrodynamics?.motion) return null;
  const gains = closingGains(model);
  const outline = model.geometry.areas.outline;
  const order = gains.steps.at(-1)!.closed;
  const shut = closedBays(model);
  return {
    title: 'Closing the bays one after the other',
    blocks: [
      {
        kind: 'paragraph',
        text: `From the grid without panels, each next bay is the one that adds most at zero amplitude: ${order.join(', ')}. ${gains.exact ? exactWords(gains) : 'The best set of each size may differ: on grids of six bays and fewer all sets are tried.'} Bays are closed whole, without vents, on a coarse lattice: steps compare with each other; absolute numbers stand in the tables before.`, // prettier-ignore
      },
      orderFigure(model, order),
      ...plots(gains, model, shut.length, outline, print),
      stepTable(gains, outline, print),
      ...depthAgainstArea(model, gains, shut, print),
    ],
  };
}

function closedBays({ geometry }: Model): readonly string[] {
  return geometry.bays.filter(isClosed).map(({ id }) => id);
}

function exactWords({ steps, exact }: ClosingGains): string {
  const same = (a: readonly string[], b: readonly string[]) => a.length === b.length && a.every((id) => b.includes(id));
  const better = exact!.filter(({ closed }, k) => !same(closed, steps[k]!.closed));
  return better.length === 0
    ? 'All sets of bays were tried: the order is the best at every size.'
    : `All sets of bays were tried; better than this order are: ${better.map(({ closed }) => closed.join(' with ')).join('; ')}.`; // prettier-ignore
}

function orderFigure({ geometry }: Model, order: readonly string[]): Figure {
  const shapes = geometry.bays.flatMap(({ id, opening: { x0, y0, x1, y1 } }): Shape[] => [
    { kind: 'path', rings: [[[x0, y0], [x1, y0], [x1, y1], [x0, y1]]], closed: true, pen: 'outline' },
    { kind: 'label', at: [(x0 + x1) / 2, (y0 + y1) / 2], text: `${order.indexOf(id) + 1}`, size: 8, anchor: 'middle' },
  ]); // prettier-ignore
  const xs = geometry.bays.flatMap(({ opening }) => [opening.x0, opening.x1]);
  const ys = geometry.bays.flatMap(({ opening }) => [opening.y0, opening.y1]);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - x, Math.max(...ys) - y];
  const rim = 0.02 * Math.max(width, height);
  return {
    kind: 'figure',
    caption: 'The order in which closing bays gains most added mass',
    alt: `Plan of the bays, numbered in the order ${order.join(', ')}`,
    box: { x: x - rim, y: y - rim, width: width + 2 * rim, height: height + 2 * rim },
    widthShare: 0.5,
    shapes,
  };
}

function plots({ steps }: ClosingGains, { document }: Model, now: number, outline: number, print: Print): Figure[] {
  const printed = (si: number, unit: string): number => inUnit(si, printedUnit(unit, document.units));
  const moved = steps.flatMap(({ closed, moved: at }) => (at ? [{ n: closed.length, ...at }] : []));
  const here = (points: readonly { readonly n: number; readonly y: number }[]): PlotPoint[] => points.filter(({ n }) => n === now).map(({ n, y }) => ({ x: n, y })); // prettier-ignore
  const masses = moved.map(({ n, addedMass }) => ({ n, y: printed(addedMass, 'kg') }));
  const drags = moved.flatMap(({ n, drag }) => (drag === null ? [] : [{ n, y: printed(drag * outline, 'm^2') }]));
  const xy = (points: readonly { readonly n: number; readonly y: number }[]) => ({ x: points.map(({ n }) => n), y: points.map(({ y }) => y) }); // prettier-ignore
  return [
    linePlot({
      caption: 'Added mass against the number of closed bays, in the order above: dark at the stated motion, dashed at zero amplitude. The dot is as many as this option closes', // prettier-ignore
      alt: 'Curves of added mass against closed bays',
      countsAcross: true,
      axes: ['Closed bays', `Added mass, ${print.unit('kg')}`],
      curves: [
        { ...xy(masses), pen: 'outline', name: 'stated motion' },
        {
          x: steps.map(({ closed }) => closed.length),
          y: steps.map(({ still }) => printed(still, 'kg')),
          pen: 'hidden',
        },
      ],
      points: here(masses),
      fromZero: true,
      shape: 0.36,
    }),
    ...(drags.length > 1
      ? [
          linePlot({
            caption: 'Drag coefficient times area at the stated motion, gaps and edges together, against the number of closed bays', // prettier-ignore
            alt: 'Curve of drag area against closed bays',
            countsAcross: true,
            axes: ['Closed bays', `Drag area, ${unitText(printedUnit('m^2', document.units))}`],
            curves: [{ ...xy(drags), pen: 'accent' }],
            points: here(drags),
            fromZero: true,
            shape: 0.36,
          }),
        ]
      : []),
  ];
}

function stepTable({ steps }: ClosingGains, outline: number, print: Print): Block {
  return {
    kind: 'table',
    caption: 'Each bay closed, and what it adds',
    columns: [
      { title: 'Closed', width: 0.12, align: 'right' },
      { title: 'Bay', width: 0.16 },
      { title: 'Added mass, zero amplitude', width: 0.24, align: 'right' },
      { title: 'Stated motion', width: 0.24, align: 'right' },
      { title: 'Drag area', width: 0.24, align: 'right' },
    ],
    rows: steps.map(({ closed, still, moved }) => [
      String(closed.length),
      closed.at(-1) ?? 'none',
      print.quantity(still, 'kg', 3),
      moved ? print.quantity(moved.addedMass, 'kg', 3) : '–',
      moved === null || moved.drag === null ? '–' : print.quantity(moved.drag * outline, 'm^2', 3),
    ]),
  };
}
