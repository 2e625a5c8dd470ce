import type { Figure, Fill, Pen, Shape } from '../../../core/note/note.ts';
import { refusal } from '../../../core/refusal.ts';
import { lazily, type Desk } from './desk.ts';
import { house } from './house.ts';
import type { Ink } from './ink.ts';
import type { Piece } from './pages.ts';
import { setCaption } from './set-caption.ts';

type Point = readonly [number, number];
type Dimension = Extract<Shape, { kind: 'dimension' }>;
type Label = Extract<Shape, { kind: 'label' }>;

const pens: Readonly<Record<Exclude<Pen, 'none'>, { width: number; dash?: readonly number[]; colour: string }>> = {
  outline: { width: 0.8, colour: house.ink },
  thin: { width: 0.35, colour: house.ink },
  hidden: { width: 0.45, dash: [3, 1.8], colour: house.ink },
  centre: { width: 0.35, dash: [8, 1.8, 1.4, 1.8], colour: house.ink },
  accent: { width: 1.5, colour: house.accent },
};
const fills: Readonly<Record<Exclude<Fill, 'none' | 'section'>, string>> = {
  panel: '#eeeeee',
  tube: '#d0d0d0',
  paper: '#ffffff',
  accent: house.accentTint,
};
const dimensionSize = 7.6;
/** Tick of a dimension line, reach of its extension lines past it, and how clear they start of the body. */
const tick = 2.3;
const past = 2.6;
const clear = 2.2;

/** From the figure's own coordinates (y up) to the page (y down), at a scale in points a unit. */
interface View {
  readonly scale: number;
  at(point: Point): Point;
}

/**
 * A figure in ink, fitted with its labels and dimension lines into its share of the width and half a page of height,
 * its caption below. Refuses a box without width or height, and a coordinate that is no number.
 */
export function setFigure(desk: Desk, figure: Figure): Piece[] {
  const { ink, column } = desk;
  requireDrawable(figure);
  const most = { width: column.width * Math.min(figure.widthShare ?? 1, 1), height: column.height * 0.52 };
  const { view, width, height } = fit(ink, figure, most);
  const node = lazily(() => desk.under().branch('Div'));
  const left = column.left + (column.width - width) / 2;
  const name = `Figure ${desk.number('Figure')}`;
  const captions = setCaption(desk, name, figure.caption, node);
  return [
    {
      height: height + 8,
      before: 13,
      keep: true,
      put(y) {
        const bbox: [number, number, number, number] = [left, y, left + width, y + height];
        node().branch('Figure', { alt: figure.alt, bbox }).mark(() => draw(ink, figure, view(left, y))); // prettier-ignore
      },
    },
    ...captions.map((piece, i) => ({ ...piece, keep: i < captions.length - 1 })),
  ];
}

function requireDrawable({ caption, box, shapes }: Figure): void {
  if (!(box.width > 0 && box.height > 0))
    throw refusal({
      what: `The figure “${caption}” has no extent`,
      where: { figure: caption },
      mend: 'Give its box a width and a height above zero',
    });
  const numbers = [box.x, box.y, box.width, box.height, ...shapes.flatMap(pointsOf).flat()];
  if (!numbers.every(Number.isFinite))
    throw refusal({
      what: `The figure “${caption}” has a coordinate that is no number`,
      where: { figure: caption },
      mend: 'Draw only what has been computed',
    });
}

function pointsOf(shape: Shape): readonly Point[] {
  switch (shape.kind) {
    case 'path':
      return shape.rings.flat();
    case 'circle':
      return [[shape.at[0] - shape.radius, shape.at[1] - shape.radius], [shape.at[0] + shape.radius, shape.at[1] + shape.radius]]; // prettier-ignore
    case 'label':
      return [shape.at];
    case 'dimension':
    case 'arrow':
      return [shape.from, shape.to];
  }
}

/**
 * The scale at which the box and all that stands out of it fit. Letters keep their size on paper, so what stands out
 * depends on the scale: a few rounds settle it.
 */
function fit(ink: Ink, figure: Figure, most: { width: number; height: number }) {
  const { box } = figure;
  let scale = Math.min(most.width / box.width, most.height / box.height);
  const floor = scale * 0.2;
  let out = overhang(ink, figure, scale);
  for (let round = 0; round < 6; round++) {
    const room = { width: most.width - out.left - out.right, height: most.height - out.top - out.bottom };
    scale = Math.max(Math.min(room.width / box.width, room.height / box.height), floor);
    out = overhang(ink, figure, scale);
  }
  return {
    width: box.width * scale + out.left + out.right,
    height: box.height * scale + out.top + out.bottom,
    view: (left: number, top: number): View => viewAt(figure, scale, left + out.left, top + out.top),
  };
}

function viewAt({ box }: Figure, scale: number, left: number, top: number): View {
  return { scale, at: ([x, y]) => [left + (x - box.x) * scale, top + (box.y + box.height - y) * scale] };
}

/** How far labels, dimension lines and pens stand out of the box, in points. */
function overhang(ink: Ink, figure: Figure, scale: number) {
  const view = viewAt(figure, scale, 0, 0);
  const out = { left: 1, right: 1, top: 1, bottom: 1 };
  const reach = ([x, y]: Point, around = 0): void => {
    out.left = Math.max(out.left, around - x);
    out.top = Math.max(out.top, around - y);
    out.right = Math.max(out.right, x + around - figure.box.width * scale);
    out.bottom = Math.max(out.bottom, y + around - figure.box.height * scale);
  };
  for (const shape of figure.shapes) {
    if (shape.kind === 'label') for (const corner of labelCorners(ink, shape, view)) reach(corner);
    else if (shape.kind === 'dimension') {
      const { ends, text } = dimensionLine(ink, figure, shape, view);
      for (const end of ends) reach(end, tick + 1);
      for (const corner of text.corners) reach(corner);
    } else for (const point of pointsOf(shape)) reach(view.at(point), 1);
  }
  return out;
}

function labelCorners(ink: Ink, label: Label, view: View): Point[] {
  const width = ink.width(label.text, 'text', label.size);
  const start = label.anchor === 'start' ? 0 : label.anchor === 'middle' ? -width / 2 : -width;
  return corners(view.at(label.at), label.turn ?? 0, start, start + width, label.size);
}

/** Corners of a line of text about a point, turned counter-clockwise by degrees; page coordinates. */
function corners([x, y]: Point, turn: number, start: number, end: number, size: number): Point[] {
  const c = Math.cos((turn * Math.PI) / 180);
  const s = Math.sin((turn * Math.PI) / 180);
  return [start, end].flatMap((u) =>
    [-0.25 * size, 0.75 * size].map((v): Point => [x + u * c - v * s, y - u * s - v * c]),
  );
}

function draw(ink: Ink, figure: Figure, view: View): void {
  const { pdf } = ink;
  pdf.save();
  pdf.lineJoin('round').lineCap('butt');
  for (const shape of figure.shapes) {
    switch (shape.kind) {
      case 'path':
        if (shape.rings.some((ring) => ring.length > 1)) paint(ink, shape, view, () => tracePath(pdf, shape, view));
        break;
      case 'circle':
        paint(ink, shape, view, () => pdf.circle(...view.at(shape.at), shape.radius * view.scale));
        break;
      case 'label':
        turnedText(ink, shape.text, shape.size, view.at(shape.at), shape.turn ?? 0, shape.anchor);
        break;
      case 'dimension':
        drawDimension(ink, figure, shape, view);
        break;
      case 'arrow':
        drawArrow(ink, view.at(shape.from), view.at(shape.to), shape.pen);
    }
  }
  pdf.restore();
  ink.forget();
}

function tracePath(pdf: PDFKit.PDFDocument, { rings, closed }: Extract<Shape, { kind: 'path' }>, view: View): void {
  for (const ring of rings) {
    ring.forEach((point, i) => (i === 0 ? pdf.moveTo(...view.at(point)) : pdf.lineTo(...view.at(point))));
    if (closed && ring.length > 1) pdf.closePath();
  }
}

function paint(ink: Ink, shape: Extract<Shape, { kind: 'path' | 'circle' }>, view: View, trace: () => void): void {
  const { pdf } = ink;
  const { pen, fill = 'none' } = shape;
  if (fill === 'section') hatch(ink, pointsOf(shape).map(view.at), trace);
  else if (fill !== 'none') {
    trace();
    pdf.fill(fills[fill], 'even-odd');
    ink.forget();
  }
  if (pen !== 'none') {
    trace();
    stroke(pdf, pen);
  }
}

function stroke(pdf: PDFKit.PDFDocument, pen: Exclude<Pen, 'none'>): void {
  const { width, dash, colour } = pens[pen];
  pdf.lineWidth(width);
  if (dash) pdf.dash(dash as unknown as number, {});
  pdf.stroke(colour);
  if (dash) pdf.undash();
}

/** Thin lines at 45 degrees, on one grid for the page, clipped to the cut face. */
function hatch({ pdf }: Ink, points: readonly Point[], trace: () => void): void {
  const step = 4.2;
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [x1, x2, y1, y2] = [least(xs), -least(xs.map((x) => -x)), least(ys), -least(ys.map((y) => -y))];
  pdf.save();
  trace();
  pdf.clip('even-odd');
  // Each line is x + y = c.
  for (let c = Math.ceil((x1 + y1) / step) * step; c < x2 + y2; c += step) pdf.moveTo(c - y1, y1).lineTo(c - y2, y2);
  pdf.lineWidth(0.3).stroke(house.ink);
  pdf.restore();
}

/** Spread into Math.min, a long outline would overflow the stack. */
const least = (values: readonly number[]): number => values.reduce((low, value) => Math.min(low, value), Infinity);

function turnedText(ink: Ink, text: string, size: number, at: Point, turn: number, anchor: Label['anchor']): void {
  ink.pdf.save();
  if (turn !== 0) ink.pdf.rotate(-turn, { origin: [at[0], at[1]] });
  ink.forget();
  ink.colour(house.ink);
  ink.text(text, 'text', size, at[0], at[1], anchor);
  ink.pdf.restore();
  ink.forget();
}

function drawArrow(ink: Ink, from: Point, to: Point, pen: Pen): void {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (pen === 'none' || length === 0) return;
  const { pdf } = ink;
  const [u, v] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const head = Math.min(pen === 'accent' ? 8 : 6.4, length);
  const half = head * 0.27;
  const neck: Point = [to[0] - u * head, to[1] - v * head];
  pdf.moveTo(...from).lineTo(neck[0] + u * 0.5, neck[1] + v * 0.5);
  stroke(pdf, pen);
  pdf.moveTo(...to).lineTo(neck[0] - v * half, neck[1] + u * half).lineTo(neck[0] + v * half, neck[1] - u * half).closePath(); // prettier-ignore
  pdf.fill(pens[pen].colour);
  ink.forget();
}

interface DimensionLine {
  readonly feet: readonly [Point, Point];
  readonly ends: readonly [Point, Point];
  /** Unit vector along the line, and outwards from it. */
  readonly along: Point;
  readonly out: Point;
  readonly text: {
    readonly at: Point;
    readonly turn: number;
    readonly anchor: Label['anchor'];
    readonly corners: readonly Point[];
  };
  /** The line goes on under a text that has no room between its ends. */
  readonly runOn: number;
}

function dimensionLine(ink: Ink, { box }: Figure, { from, to, offset, text }: Dimension, view: View): DimensionLine {
  const feet: [Point, Point] = [view.at(from), view.at(to)];
  const [[x1, y1], [x2, y2]] = feet;
  const length = Math.hypot(x2 - x1, y2 - y1);
  const along: Point = length > 0 ? [(x2 - x1) / length, (y2 - y1) / length] : [1, 0];
  // Left of from → to as seen on the page; the other way when that leads towards the middle of the figure.
  const middle = view.at([box.x + box.width / 2, box.y + box.height / 2]);
  const left: Point = [along[1], -along[0]];
  const side = left[0] * ((x1 + x2) / 2 - middle[0]) + left[1] * ((y1 + y2) / 2 - middle[1]) < -0.01 ? -1 : 1;
  const out: Point = [left[0] * side, left[1] * side];
  const shift = ([x, y]: Point, by: number): Point => [x + out[0] * by, y + out[1] * by];
  const ends: [Point, Point] = [shift(feet[0], offset), shift(feet[1], offset)];

  // Read from below or from the right, whichever way the line was given.
  let turn = (Math.atan2(-along[1], along[0]) * 180) / Math.PI;
  const turned = turn > 90.01 || turn <= -89.99;
  if (turned) turn += turn > 0 ? -180 : 180;
  const width = ink.width(text, 'text', dimensionSize);
  const fits = width + 5 <= length;
  const away = 2.1;
  const radians = (turn * Math.PI) / 180;
  const up: Point = [-Math.sin(radians), -Math.cos(radians)];
  const anchor: Label['anchor'] = fits ? 'middle' : turned ? 'end' : 'start';
  const base: Point = fits
    ? [(ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2]
    : [ends[1][0] + along[0] * 5, ends[1][1] + along[1] * 5];
  const at: Point = [base[0] + up[0] * away, base[1] + up[1] * away];
  const start = anchor === 'middle' ? -width / 2 : anchor === 'end' ? -width : 0;
  const textCorners = corners(at, turn, start, start + width, dimensionSize);
  return { feet, ends, along, out, text: { at, turn, anchor, corners: textCorners }, runOn: fits ? 0 : width + 6 };
}

function drawDimension(ink: Ink, figure: Figure, dimension: Dimension, view: View): void {
  const { pdf } = ink;
  const { feet, ends, along, out, text, runOn } = dimensionLine(ink, figure, dimension, view);
  const far = Math.sign(dimension.offset) || 1;
  feet.forEach((foot, i) => {
    const end = ends[i]!;
    if (Math.abs(dimension.offset) > clear)
      pdf.moveTo(foot[0] + out[0] * clear * far, foot[1] + out[1] * clear * far).lineTo(end[0] + out[0] * past * far, end[1] + out[1] * past * far); // prettier-ignore
  });
  const [a, b] = ends;
  pdf.moveTo(a[0] - along[0] * past, a[1] - along[1] * past);
  pdf.lineTo(b[0] + along[0] * (runOn || past), b[1] + along[1] * (runOn || past));
  pdf.lineWidth(0.3).stroke(house.ink);
  // Ticks rise to the right of the reader, as on a drawing board.
  const slope: Point = [along[0] - along[1], along[1] + along[0]];
  for (const [x, y] of ends) pdf.moveTo(x - slope[1] * tick * 0.7, y - -slope[0] * tick * 0.7).lineTo(x + slope[1] * tick * 0.7, y + -slope[0] * tick * 0.7); // prettier-ignore
  pdf.lineWidth(0.9).stroke(house.ink);
  turnedText(ink, dimension.text, dimensionSize, text.at, text.turn, text.anchor);
}
