import type { DrawnCircle, DrawnDimension, DrawnLabel, DrawnLine, DrawnShape } from './drawing.ts';
import { equalSteps } from './equal-steps.ts';
import type { Bolt, Geometry, Panel, Point, Rectangle, Side, Tube } from './geometry.ts';
import { drawnSlots } from './drawn-slots.ts';
import type { LengthText } from './length-text.ts';

export interface PanelDrawing {
  readonly shapes: readonly DrawnShape<'panel'>[];
  /** Faces of the tubes on it or under it: of the four along its edges the near face, of one between its bays both. */
  readonly lines: readonly DrawnLine<'tube' | 'weld'>[];
  readonly circles: readonly DrawnCircle<'bolt' | 'hole'>[];
  readonly slots: readonly DrawnShape<'bolt'>[];
  /** Name of the tube along each side. */
  readonly labels: readonly (DrawnLabel & { readonly side: Side })[];
  /** Number of each listed bolt, at the panel's edge beside it; of one between two bays (no side) at its hole. */
  readonly numbers: readonly { readonly at: Point; readonly side: Side | null; readonly text: string }[];
  /** Row 0 nearest the panel. Low sides: overlaps and the opening between, then the whole. High sides: edge distances and pitches. */
  readonly dimensions: readonly DrawnDimension[];
  readonly extents: Rectangle;
}

/** One panel seen from above with the dimensions that a shop needs: size, overlap on each side, bolt lines, edge distances. mm. */
export function panelDrawing({ mainTubes, crossTubes, bays }: Geometry, panel: Panel, text: LengthText): PanelDrawing {
  const { outline, contour, bolts, bearings, cutouts, weldRuns, weldReturns } = panel;
  const { x0, y0, x1, y1 } = outline;
  const under = new Set(bays.filter(({ id }) => panel.bays.includes(id)).flatMap(({ main, cross }) => [...main, ...cross])); // prettier-ignore
  const tubes = [...mainTubes, ...crossTubes].filter(({ id }) => under.has(id));
  const face = (side: Side): number => {
    const { lap } = bearings.find((b) => b.side === side)!;
    return { mainLow: y0 + lap, mainHigh: y1 - lap, crossLow: x0 + lap, crossHigh: x1 - lap }[side];
  };
  const outer = new Set(bearings.map(({ tube }) => tube));
  const innerFaces = ({ at, section }: Tube): number[] => [at - section.width / 2, at + section.width / 2];
  const across = (at: number): [Point, Point] => [[x0, at], [x1, at]]; // prettier-ignore
  const upright = (at: number): [Point, Point] => [[at, y0], [at, y1]]; // prettier-ignore
  const line = (id: string, [from, to]: readonly [Point, Point]): DrawnLine<'tube'> => ({ role: 'tube', id, hidden: true, from: mm(from), to: mm(to) }); // prettier-ignore
  const faces = [
    ...bearings
      .filter(({ lap }) => lap > 0)
      .map(({ side, tube }) => line(tube, side.startsWith('main') ? across(face(side)) : upright(face(side)))),
    ...tubes
      .filter(({ id }) => !outer.has(id))
      .flatMap((tube) => innerFaces(tube).map((at) => line(tube.id, tube.set === 'main' ? across(at) : upright(at)))),
  ];
  const welds = [...weldRuns, ...weldReturns].map(({ tube, from, to }) => ({ role: 'weld' as const, id: tube, hidden: false, from: mm(from), to: mm(to) })); // prettier-ignore

  // Along x at y0 or y1, along y at x0 or x1.
  const alongX = (from: number, to: number, y: number, row: number, said = text(to - from)): DrawnDimension => ({ from: mm([from, y]), to: mm([to, y]), text: said, row }); // prettier-ignore
  const alongY = (from: number, to: number, x: number, row: number, said = text(to - from)): DrawnDimension => ({ from: mm([x, from]), to: mm([x, to]), text: said, row }); // prettier-ignore
  /** Ends outward, so that a text that has no room between them stands outside the panel. */
  const chain = (
    along: typeof alongX,
    [low, high]: readonly [number, number],
    between: readonly number[],
    at: number,
  ): DrawnDimension[] => {
    const [first, last] = [between[0]!, between.at(-1)!];
    const ends = [
      ...(first - low > 1e-6 ? [along(first, low, at, 0, text(first - low))] : []),
      ...(high - last > 1e-6 ? [along(last, high, at, 0, text(high - last))] : []),
    ];
    const steps = equalSteps(between).map(({ from, to, count }) => {
      const step = text((to - from) / count);
      return along(from, to, at, 0, count > 1 ? `${count} × ${step}` : step);
    });
    return [...ends, ...steps];
  };
  /** The whole outside the chain, alone where no overlap parts it from the opening. */
  const withWhole = (of: DrawnDimension[], whole: (row: number) => DrawnDimension): DrawnDimension[] =>
    of.length > 1 ? [...of, whole(1)] : [whole(0)];
  const rowOf = (isOn: (x: number, y: number) => boolean, of: 'x' | 'y'): number[] =>
    bolts.filter(({ x, y }) => isOn(x, y)).map((bolt) => bolt[of]).sort((a, b) => a - b); // prettier-ignore
  const [topMost, rightMost] = [Math.max(...bolts.map(({ y }) => y)), Math.max(...bolts.map(({ x }) => x))];
  const isListed = bolts.some(({ listed }) => listed !== undefined);
  const top = rowOf((_, y) => Math.abs(y - topMost) < 1e-6, 'x');
  const right = rowOf((x) => Math.abs(x - rightMost) < 1e-6, 'y');
  const dimensions = [
    ...withWhole(chain(alongX, [x0, x1], [face('crossLow'), face('crossHigh')], y0), (row) => alongX(x0, x1, y0, row)),
    ...withWhole(chain(alongY, [y0, y1], [face('mainLow'), face('mainHigh')], x0), (row) => alongY(y0, y1, x0, row)),
    // Listed bolts have their places in a table: no chain tells where all of them stand.
    ...(top.length > 0 && !isListed ? chain(alongX, [x0, x1], top, y1) : []),
    ...(right.length > 0 && !isListed ? chain(alongY, [y0, y1], right, x1) : []),
  ];
  const [xm, ym] = [(x0 + x1) / 2, (y0 + y1) / 2];
  const beside: Readonly<Record<Side, Point>> = {
    mainLow: [xm, face('mainLow')],
    mainHigh: [xm, face('mainHigh')],
    crossLow: [face('crossLow'), ym],
    crossHigh: [face('crossHigh'), ym],
  };
  return {
    shapes: [{ role: 'panel', id: panel.id, rings: [contour.map(mm)] }],
    lines: [...faces, ...welds],
    slots: drawnSlots(cutouts),
    circles: cutouts.filter(({ slot }) => !slot).map(({ x, y, diameter, purpose }) => ({ role: purpose === 'bolt' ? 'bolt' : 'hole', at: mm([x, y]), diameter: 1000 * diameter })), // prettier-ignore
    labels: bearings.map(({ side, tube }) => ({ role: 'tube', side, at: mm(beside[side]), text: tube })),
    numbers: isListed ? bolts.map((bolt) => ({ at: mm(atEdge(bolt, outline)), side: bolt.inner ? null : bolt.side, text: bolt.id.slice(panel.id.length + 1) })) : [], // prettier-ignore
    dimensions,
    extents: { x0: 1000 * x0, y0: 1000 * y0, x1: 1000 * x1, y1: 1000 * y1 },
  };
}

function atEdge({ x, y, side, inner }: Bolt, { x0, y0, x1, y1 }: Rectangle): Point {
  if (inner) return [x, y];
  return ({ mainLow: [x, y0], mainHigh: [x, y1], crossLow: [x0, y], crossHigh: [x1, y] } as const)[side];
}

const mm = ([x, y]: Point): Point => [1000 * x, 1000 * y];
