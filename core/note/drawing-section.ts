import { leastRoom } from '../checks/bolt-access.ts';
import type { DrawnDimension, DrawnShape } from '../geometry/drawing.ts';
import type { Bolt, Panel, Point } from '../geometry/geometry.ts';
import type { PanelDesign } from '../document/schema.ts';
import { drawnLength, drawnUnit } from '../geometry/drawn-length.ts';
import type { LengthText } from '../geometry/length-text.ts';
import { panelDrawing } from '../geometry/panel-drawing.ts';
import { planDrawing } from '../geometry/plan-drawing.ts';
import { socketDiameter } from '../geometry/spanner-room.ts';
import { sectionThroughFixing } from '../geometry/section-through-fixing.ts';
import type { Model } from '../model.ts';
import type { Figure, Fill, Pen, Section, Shape } from './note.ts';

/** Plan of the plate; one panel of each design with its dimensions, and a section through its fixing at each overlap, drawn from the geometry. */
export function drawingSection(model: Model): Section {
  return {
    title: 'Drawings',
    blocks: [
      planFigure(model),
      ...firstOfEachDesign(model.geometry.panels).flatMap((panel) => [
        panelFigure(model, panel),
        ...fixingFigures(model, panel),
      ]),
    ],
  };
}

export const firstOfEachDesign = (panels: readonly Panel[]): Panel[] =>
  panels.filter((panel, i) => panels.findIndex(({ designName }) => designName === panel.designName) === i);

/** The plan as a figure; the window shows the same. */
export function planFigure({ geometry, document }: Model): Figure {
  const { shapes, lines, circles, slots, labels, dimensions, extents } = planDrawing(
    geometry,
    drawnLength(document.units),
  );
  const points = [...document.grid.suspension.attachments, ...(document.grid.padEyes?.points ?? [])];
  const size = Math.max(extents.x1 - extents.x0, extents.y1 - extents.y0);
  return {
    kind: 'figure',
    caption: `Plan seen from above. Main tubes are lettered, cross tubes numbered, bays named after the tubes at their lower left corner. Hidden edges are dashed. ${points.map(({ id }) => id).join(', ')}: attachments and pad eyes. Dimensions in ${drawnUnit(document.units)}`,
    alt: `Plan of the plate: ${geometry.mainTubes.length} main tubes, ${geometry.crossTubes.length} cross tubes, ${geometry.bays.length} bays of which ${geometry.panels.flatMap((panel) => panel.bays).length} are closed by panels`,
    box: padded(extents, 0.04 * size),
    widthShare: 1,
    shapes: [
      ...shapes.map(({ role, rings }): Shape => ({ kind: 'path', rings, closed: true, pen: 'none', fill: role })),
      ...lines.map(({ role, hidden, from, to }): Shape => ({
        kind: 'path',
        rings: [[from, to]],
        closed: false,
        pen: hidden ? 'hidden' : role === 'tube' ? 'outline' : 'thin',
      })),
      ...slots.map(({ rings }): Shape => ({ kind: 'path', rings, closed: true, pen: 'thin', fill: 'paper' })),
      ...circles.map(({ at, diameter }): Shape => ({
        kind: 'circle',
        at,
        radius: diameter / 2,
        pen: 'thin',
        fill: 'paper',
      })),
      ...points.flatMap(({ id, x, y }): Shape[] => {
        const at = [1000 * x.si, 1000 * y.si] as const;
        // The name stands on the outer half of an outer tube, where no panel's edge runs.
        const off = at[1] - middle(extents)[1];
        const half = (extents.y1 - extents.y0) / 4;
        const down = off > half ? 0.01 * size : off < -half ? -0.021 * size : -0.0055 * size;
        return [
          { kind: 'circle', at, radius: 0.006 * size, pen: 'accent', fill: 'accent' },
          { kind: 'label', at: [at[0] + 0.012 * size, at[1] + down], text: id, size: 7, anchor: 'start' },
        ];
      }),
      ...labels.map(({ role, at, text }): Shape => {
        if (role === 'bay')
          return { kind: 'label', at: [at[0], at[1] - 0.006 * size], text, size: 8, anchor: 'middle' };
        const isMain = at[0] <= extents.x0 + 1;
        return {
          kind: 'label',
          at: isMain ? [at[0] - 0.006 * size, at[1] - 0.006 * size] : [at[0], extents.y0 - 0.02 * size],
          text,
          size: 8,
          anchor: isMain ? 'end' : 'middle',
        };
      }),
      ...dimensionLines(dimensions, middle(extents), 26),
    ],
  };
}

const fills: Readonly<Record<string, Fill>> = {
  tube: 'section',
  panel: 'panel',
  weld: 'accent',
  sleeve: 'tube',
  pad: 'tube',
  bolt: 'tube',
  washer: 'paper',
  nut: 'tube',
};
const pens: Readonly<Record<string, Pen>> = { tube: 'outline', panel: 'outline' };

/** Rows of dimension lines along x stand further out, so that their ends clear the texts that those along y carry past the corners. */
function panelFigure(model: Model, panel: Panel): Figure {
  const { geometry, document, catalogue } = model;
  const { shapes, lines, circles, slots, labels, numbers, dimensions, extents } = panelDrawing(
    geometry,
    panel,
    drawnLength(document.units),
  );
  const size = Math.max(extents.x1 - extents.x0, extents.y1 - extents.y0);
  const { design, bolts } = panel;
  const length = drawnLength(document.units);
  const { fixing, cornerNotch, holes } = design;
  // The bolt with the least room stands for all: sockets over every bolt hide the holes.
  const tightest = fixing.kind === 'bolted' ? leastRoom(model, panel.bays[0]!) : undefined;
  const tools = bolts.filter(({ id }) => id === tightest?.bolt);
  const toolOver = fixing.kind === 'bolted' ? socketDiameter(catalogue.bolt(fixing.bolt).headAcrossFlats) : 0;
  const said = [
    fixing.kind === 'bolted'
      ? `${bolts.length} × ${catalogue.bolt(fixing.bolt).id} bolts${numbers.length > 0 ? ' by number, places in the table of inputs' : ''}${bolts[0] ? `, ${boltHoleWords(bolts[0], fixing.slot, length)}` : ''}`
      : `fillet weld (thick line), throat ${length(fixing.throat.si)}${fixing.run && fixing.gap ? `, runs of ${length(fixing.run.si)} with gaps of ${length(fixing.gap.si)} at most` : ''}`,
    ...(panel.plugs[0] ? [`${panel.plugs.length} plug welds ⌀ ${length(panel.plugs[0].diameter)}`] : []),
    ...(cornerNotch ? [`corner notches of ${length(cornerNotch.si)}`] : []),
    ...holeWords(holes, length),
  ];
  return {
    kind: 'figure',
    caption: `Design ${panel.designName}: panel ${panel.id} seen from above, ${length(panel.thickness)} thick, ${said.join('; ')}. Dashed: near faces of the tubes, to which the overlaps are measured${tools.length > 0 ? `, and the room that a socket of ⌀ ${length(toolOver)} takes over bolt ${tightest!.bolt}, which has the least: ${length(tightest!.room)} from its axis to ${tightest!.beside}` : ''}. Dimensions in ${drawnUnit(document.units)}`,
    alt: `Panel ${panel.id} of design ${panel.designName} with its size, overlaps${bolts.length === 0 ? '' : numbers.length > 0 ? ', bolts by number' : ', bolt pitches and edge distances'}`,
    box: padded(extents, 0.004 * size),
    // A tall panel takes less of the width, so that it stands on one page with the plan.
    widthShare: Math.min(0.62, 0.15 + (0.32 * (extents.x1 - extents.x0)) / (extents.y1 - extents.y0)),
    shapes: [
      ...shapes.map(({ rings }): Shape => ({ kind: 'path', rings, closed: true, pen: 'outline', fill: 'panel' })),
      ...lines.map(({ role, from, to }): Shape => ({
        kind: 'path',
        rings: [[from, to]],
        closed: false,
        pen: role === 'weld' ? 'accent' : 'hidden',
      })),
      ...slots.map(({ rings }): Shape => ({ kind: 'path', rings, closed: true, pen: 'thin', fill: 'paper' })),
      ...tools.map(({ x, y }): Shape => ({ kind: 'circle', at: [1000 * x, 1000 * y], radius: 500 * toolOver, pen: 'hidden', fill: 'none' })), // prettier-ignore
      ...circles.map(({ at, diameter }): Shape => ({
        kind: 'circle',
        at,
        radius: diameter / 2,
        pen: 'thin',
        fill: 'paper',
      })),
      ...labels.map(({ side, at: [x, y], text }): Shape => {
        const off = 0.055 * size;
        const at = {
          mainLow: [x, y + 0.4 * off],
          mainHigh: [x, y - off],
          crossLow: [x + off, y],
          crossHigh: [x - 0.4 * off, y],
        }[side] as [number, number];
        const turn = side.startsWith('cross') ? { turn: 90 } : {};
        return { kind: 'label', at, text: `tube ${text}`, size: 7, anchor: 'middle', ...turn };
      }),
      // Outside the panel, clear of holes and faces; towards the first row of dimensions.
      ...numbers.map(({ at: [x, y], side, text }): Shape => {
        const off = 0.012 * size;
        const placed = {
          mainLow: { at: [x, y - 2.4 * off], anchor: 'middle' },
          mainHigh: { at: [x, y + off], anchor: 'middle' },
          crossLow: { at: [x - off, y - 0.7 * off], anchor: 'end' },
          crossHigh: { at: [x + off, y - 0.7 * off], anchor: 'start' },
          none: { at: [x, y + off], anchor: 'middle' },
        }[side ?? 'none'] as { at: [number, number]; anchor: 'start' | 'middle' | 'end' };
        return { kind: 'label', ...placed, text, size: 6 };
      }),
      ...dimensions.map(({ from, to, text, row = 0 }): Shape => {
        const first = from[1] === to[1] ? 34 : 14;
        return { kind: 'dimension', from, to, offset: first + 15 * row, text };
      }),
    ],
  };
}

/** "slots 13 × 30 along the edge, round holes ⌀ 13 in the tube" */
const boltHoleWords = ({ hole, slot }: Bolt, way: string, length: LengthText): string =>
  slot
    ? `slots ${length(hole)} × ${length(slot.length)} ${way}, round holes ⌀ ${length(hole)} in the tube`
    : `holes ⌀ ${length(hole)}`;

/** "2 vent holes ⌀ 25 at (−160, 0), (160, 0) from the centre" for each purpose and diameter. */
function holeWords(holes: PanelDesign['holes'], length: LengthText): string[] {
  const alike = new Map<string, string[]>();
  for (const { purpose, diameter, x, y } of holes) {
    const kind = `${purpose === 'other' ? '' : `${purpose} `}hole|⌀ ${length(diameter.si)}`;
    alike.set(kind, [...(alike.get(kind) ?? []), `(${length(x.si)}, ${length(y.si)})`]);
  }
  return [...alike].map(([kind, at]) => {
    const [name, size] = kind.split('|');
    return `${at.length > 1 ? `${at.length} ${name}s` : name} ${size} at ${at.join(', ')} from the centre`;
  });
}

/** A section for each overlap and tube section that the panel has, the first side of each. */
function fixingFigures({ geometry, document, catalogue }: Model, { id, bearings, bolts, designName }: Panel): Figure[] {
  const tubes = new Map([...geometry.mainTubes, ...geometry.crossTubes].map((tube) => [tube.id, tube]));
  const alike = new Map<string, (typeof bearings)[number][]>();
  for (const bearing of bearings.filter(({ fixed }) => fixed)) {
    // Listed bolts may stand otherwise on each side: the one that is drawn, nearest the edge, tells sides apart.
    const listed = bolts.filter((bolt) => bolt.listed && bolt.side === bearing.side && !bolt.inner);
    const off = listed.length > 0 ? Math.max(...listed.map(({ fromFace }) => Math.round(1e6 * fromFace))) : '';
    const key = `${Math.round(1e6 * bearing.lap)} ${off} ${tubes.get(bearing.tube)!.section.id}`;
    alike.set(key, [...(alike.get(key) ?? []), bearing]);
  }
  return [...alike.values()].map((of) => {
    const { side } = of[0]!;
    const { tube, shapes, dimensions } = sectionThroughFixing(
      geometry,
      id,
      catalogue,
      drawnLength(document.units),
      side,
    );
    const extents = around(shapes);
    const others = of.slice(1).map((bearing) => bearing.tube);
    return {
      kind: 'figure',
      caption: `Design ${designName}: section through a fixing of panel ${id} on tube ${tube}${others.length > 0 ? `, the same on ${others.join(', ')}` : ''}. Dimensions in ${drawnUnit(document.units)}`,
      alt: `Section through the fixing of panel ${id}: ${[...new Set(shapes.map(({ role }) => role))].join(', ')}`,
      box: padded(extents, 0.02 * (extents.x1 - extents.x0)),
      widthShare: 0.4,
      shapes: [...fixingShapes(shapes), ...dimensionLines(dimensions, middle(extents), 12, extents)],
    };
  });
}

/** The parts of a fixing's section in ink: what is cut is hatched, the weld stands out. */
export const fixingShapes = (shapes: readonly DrawnShape<string>[]): Shape[] =>
  shapes.map(({ role, rings }) => ({
    kind: 'path',
    rings,
    closed: true,
    pen: pens[role] ?? 'thin',
    fill: fills[role] ?? 'none',
  }));

/**
 * Dimension lines that measure the same side of the drawing are set one outside the other, the `first` so many points off. With `clearOf`, they start
 * outside those extents, with thin lines from the features they measure.
 */
function dimensionLines(
  dimensions: readonly DrawnDimension[],
  centre: readonly [number, number],
  first: number,
  clearOf?: Extents,
): Shape[] {
  const taken = new Map<string, number>();
  return dimensions.flatMap(({ from, to, text, row }): Shape[] => {
    const alongX = Math.abs(to[0] - from[0]) > Math.abs(to[1] - from[1]);
    const side = alongX ? `y${from[1] > centre[1] ? '+' : '-'}` : `x${from[0] > centre[0] ? '+' : '-'}`;
    const nth = row ?? taken.get(side) ?? 0;
    taken.set(side, Math.max(taken.get(side) ?? 0, nth + 1));
    const outside = (point: Point): Point => {
      if (!clearOf) return point;
      if (alongX) return [point[0], side === 'y+' ? clearOf.y1 : clearOf.y0];
      return [side === 'x+' ? clearOf.x1 : clearOf.x0, point[1]];
    };
    const leads = [from, to]
      .filter((point) => outside(point) !== point)
      .map((point): Shape => ({ kind: 'path', rings: [[point, outside(point)]], closed: false, pen: 'thin' }));
    return [...leads, { kind: 'dimension', from: outside(from), to: outside(to), offset: first + 15 * nth, text }];
  });
}

interface Extents {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

const middle = ({ x0, y0, x1, y1 }: Extents) => [(x0 + x1) / 2, (y0 + y1) / 2] as const;
export const padded = ({ x0, y0, x1, y1 }: Extents, by: number) => ({
  x: x0 - by,
  y: y0 - by,
  width: x1 - x0 + 2 * by,
  height: y1 - y0 + 2 * by,
});

export function around(shapes: readonly DrawnShape<string>[]): Extents {
  const points = shapes.flatMap(({ rings }) => rings.flat());
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
}
