import type { Bay, Field, Geometry, Panel, Rectangle, Tube } from '../geometry/geometry.ts';

/** How the water's force is spread: by plan area, or by area and a pressure that is larger in the middle. */
export type Spread = 'area' | 'shape';
export const spreads: readonly Spread[] = ['area', 'shape'];
export const spreadWords: Readonly<Record<Spread, string>> = {
  area: 'pressure by plan area',
  shape: 'pressure larger in the middle',
};

/** How the flow spreads it: inertia by the jump of potential, drag towards the edges that shed it. */
export type FlowSpread = 'inertia' | 'edges';
export const flowSpreads: readonly FlowSpread[] = ['inertia', 'edges'];

/** Integral of each over a rectangle that is solid, in any unit. */
export type FlowOver = Readonly<Record<FlowSpread, (over: Rectangle) => number>>;

/** A bay's panel with its part of the force. Parts are of the whole force: all of them sum to one. */
export interface FieldShare {
  readonly bay: string;
  readonly field: Field;
  readonly panel: Panel;
  /** The field's part of the panel's outline: between the centre lines of inner tubes, to the outline elsewhere. */
  readonly outline: Rectangle;
  /** Plan area on which the water presses, m²: the field less its holes and notches that open into the bay. */
  readonly area: number;
  readonly part: Readonly<Record<Spread, number>>;
  /** By each flow that is asked for. */
  readonly flow: readonly Readonly<Record<FlowSpread, number>>[];
}

/** What of a tube no panel covers, cut into lengths over which its width stays the same. */
export interface TubeStrip {
  /** Index into main tubes, then cross tubes. */
  readonly tube: number;
  readonly from: number;
  readonly to: number;
  readonly part: Readonly<Record<Spread, number>>;
  readonly flow: readonly Readonly<Record<FlowSpread, number>>[];
}

export interface PlanShares {
  /** Main tubes, then cross tubes. */
  readonly tubes: readonly Tube[];
  readonly fields: readonly FieldShare[];
  /** Fields of bays that a panel on the other side covers too: they get that bay's pressure, and add no area. */
  readonly doubled: readonly FieldShare[];
  readonly strips: readonly TubeStrip[];
  readonly tubePart: Readonly<Record<Spread, number>>;
  /** Solid plan area that the shares are of, m². */
  readonly solid: number;
}

/** Parts of the water's force by plan area (solid area of the field over that of the plate) and by a pressure shape, whose
 *  integral over a rectangle is given in m². Both sum to one over fields and tubes. Where tubes cross, the area is the
 *  main tube's. An opening into a bay carries no pressure; one that lies on a tube hands it to the tube, and stays in the
 *  field. A bay with a panel on either side counts as closed. `flows`: spread by each flow beside them, all summing to one too. */
export function planShares(
  geometry: Geometry,
  shape: (over: Rectangle) => number,
  flows: readonly FlowOver[] = [],
): PlanShares {
  // prettier-ignore
  const tubes = [...geometry.mainTubes, ...geometry.crossTubes];
  const bays = new Map(geometry.bays.map((bay) => [bay.id, bay]));
  const at = new Map(tubes.map((tube) => [tube.id, tube.at]));
  const fields: FieldShare[] = [];
  const doubled: FieldShare[] = [];
  const covered = new Set<string>();
  const closers = new Map<string, number>();
  for (const { bays: own } of geometry.panels) for (const id of own) closers.set(id, (closers.get(id) ?? 0) + 1);
  for (const panel of geometry.panels) {
    const own = panel.bays.map((id) => bays.get(id)!);
    const least = (ids: readonly string[]): number => Math.min(...ids.map((id) => at.get(id)!));
    const most = (ids: readonly string[]): number => Math.max(...ids.map((id) => at.get(id)!));
    const [left, right] = [least(own.map((b) => b.cross[0])), most(own.map((b) => b.cross[1]))];
    const [low, high] = [least(own.map((b) => b.main[0])), most(own.map((b) => b.main[1]))];
    for (const field of panel.fields) {
      const bay = bays.get(field.bay)!;
      const { main, cross } = bay;
      const [x0, x1, y0, y1] = [at.get(cross[0])!, at.get(cross[1])!, at.get(main[0])!, at.get(main[1])!];
      const outline: Rectangle = {
        x0: x0 === left ? panel.outline.x0 : x0,
        x1: x1 === right ? panel.outline.x1 : x1,
        y0: y0 === low ? panel.outline.y0 : y0,
        y1: y1 === high ? panel.outline.y1 : y1,
      };
      const area = field.area - (closers.get(field.bay) === 1 ? openInside(bay, panel.outline) : 0);
      // a field may have less area than its rectangle; the shape keeps its mean over the rectangle
      const part = { area, shape: (shape(outline) * area) / areaOf(outline) };
      const solid = area / areaOf(outline);
      const flow = flows.map(({ inertia, edges }) => ({ inertia: solid * inertia(outline), edges: solid * edges(outline) })); // prettier-ignore
      (covered.has(field.bay) ? doubled : fields).push({
        bay: field.bay,
        field,
        panel,
        outline,
        area,
        part,
        flow,
      });
      covered.add(field.bay);
    }
  }
  const strips = uncovered(geometry, tubes, shape, flows);

  const sum = (of: Spread): number => total(fields, of) + total(strips, of);
  const whole = { area: sum('area'), shape: sum('shape') };
  const wholeFlow = (k: number, of: FlowSpread): number =>
    [...fields, ...strips].reduce((all, { flow }) => all + flow[k]![of], 0);
  const wholes = flows.map((_, k) => ({ inertia: wholeFlow(k, 'inertia'), edges: wholeFlow(k, 'edges') }));
  const scaled = <T extends Pick<FieldShare, 'part' | 'flow'>>(item: T): T => ({
    ...item,
    part: { area: item.part.area / whole.area, shape: item.part.shape / whole.shape },
    flow: item.flow.map((own, k) => ({ inertia: own.inertia / wholes[k]!.inertia, edges: own.edges / wholes[k]!.edges })), // prettier-ignore
  });
  const scaledStrips = strips.map(scaled);
  return {
    tubes,
    fields: fields.map(scaled),
    doubled: doubled.map(scaled),
    strips: scaledStrips,
    tubePart: { area: total(scaledStrips, 'area'), shape: total(scaledStrips, 'shape') },
    solid: whole.area,
  };
}

/** Open area of a bay inside its panel's outline, m²: less what is open beside a panel that ends before the tube. */
function openInside({ opening: o, openArea }: Bay, { x0, x1, y0, y1 }: Rectangle): number {
  const covered = (Math.min(o.x1, x1) - Math.max(o.x0, x0)) * (Math.min(o.y1, y1) - Math.max(o.y0, y0));
  return openArea - (areaOf(o) - covered);
}

export const areaOf = ({ x0, x1, y0, y1 }: Rectangle): number => (x1 - x0) * (y1 - y0);

const total = (items: readonly { readonly part: Readonly<Record<Spread, number>> }[], of: Spread): number =>
  items.reduce((sum, { part }) => sum + part[of], 0);

/** The plan cut along every edge of a tube or panel: each cell then belongs to one tube, to a panel, or is open. */
function uncovered(
  geometry: Geometry,
  tubes: readonly Tube[],
  shape: (over: Rectangle) => number,
  flows: readonly FlowOver[],
): TubeStrip[] {
  // prettier-ignore
  const pieces = tubes.flatMap((tube, index) =>
    tube.pieces.map(([from, to]) => ({ index, over: footprint(tube, from, to) })),
  );
  const panels = geometry.panels.map((panel) => panel.outline);
  const all = [...pieces.map(({ over }) => over), ...panels];
  const xs = edges(all.flatMap(({ x0, x1 }) => [x0, x1]));
  const ys = edges(all.flatMap(({ y0, y1 }) => [y0, y1]));
  const columns = xs.length - 1;
  const open = -1;
  const panelled = -2;
  const owner = new Int32Array(columns * (ys.length - 1)).fill(open);
  const paint = ({ x0, x1, y0, y1 }: Rectangle, by: number): void => {
    for (let j = place(ys, y0); j < place(ys, y1); j++)
      owner.fill(by, j * columns + place(xs, x0), j * columns + place(xs, x1));
  };
  // painted last, what counts: panels before main tubes before cross tubes
  const mains = geometry.mainTubes.length;
  for (const { index, over } of pieces) if (index >= mains) paint(over, index);
  for (const { index, over } of pieces) if (index < mains) paint(over, index);
  for (const outline of panels) paint(outline, panelled);

  const strips = new Map<string, { tube: number; from: number; to: number; part: Record<Spread, number>; flow: Record<FlowSpread, number>[] }>(); // prettier-ignore
  for (let j = 0; j < ys.length - 1; j++)
    for (let i = 0; i < columns; i++) {
      const tube = owner[j * columns + i]!;
      if (tube < 0) continue;
      const cell = { x0: xs[i]!, x1: xs[i + 1]!, y0: ys[j]!, y1: ys[j + 1]! };
      const isMain = tube < mains;
      const key = `${tube} ${isMain ? i : j}`;
      const strip = strips.get(key) ?? {
        tube,
        from: isMain ? cell.x0 : cell.y0,
        to: isMain ? cell.x1 : cell.y1,
        part: { area: 0, shape: 0 },
        flow: flows.map(() => ({ inertia: 0, edges: 0 })),
      };
      strip.part.area += areaOf(cell);
      strip.part.shape += shape(cell);
      flows.forEach((flow, k) => {
        strip.flow[k]!.inertia += flow.inertia(cell);
        strip.flow[k]!.edges += flow.edges(cell);
      });
      strips.set(key, strip);
    }
  return [...strips.values()];
}

function footprint(tube: Tube, from: number, to: number): Rectangle {
  const half = tube.section.width / 2;
  const [low, high] = [tube.at - half, tube.at + half];
  return tube.set === 'main' ? { x0: from, x1: to, y0: low, y1: high } : { x0: low, x1: high, y0: from, y1: to };
}

/** Edges closer than this are one: a micrometre is below any tolerance of steel. */
const same = 1e-6;

function edges(values: number[]): number[] {
  values.sort((a, b) => a - b);
  return values.filter((value, i) => i === 0 || value - values[i - 1]! > same);
}

/** Index of the edge at `value`, which is among the sorted edges within `same`. */
function place(sorted: readonly number[], value: number): number {
  let [low, high] = [0, sorted.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < value - same) low = middle + 1;
    else high = middle;
  }
  return low;
}
