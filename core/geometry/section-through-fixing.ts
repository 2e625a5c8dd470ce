import type { Catalogue } from '../catalogue/catalogue.ts';
import { boltPattern } from '../document/bolt-pattern.ts';
import type { BoltedFixing } from '../document/schema.ts';
import { refusal } from '../refusal.ts';
import type { DrawnDimension, DrawnShape } from './drawing.ts';
import type { Bearing, Geometry, Panel, Point, Side, Tube } from './geometry.ts';
import { sleeveOf } from './sleeve-of.ts';
import type { LengthText } from './length-text.ts';

export interface FixingSection {
  /** Id of the tube that is cut, and of the side of the panel that it is under. */
  readonly tube: string;
  readonly side: Bearing['side'];
  /** In the order of painting. */
  readonly shapes: readonly DrawnShape<'tube' | 'panel' | 'sleeve' | 'pad' | 'bolt' | 'washer' | 'nut' | 'weld'>[];
  readonly dimensions: readonly DrawnDimension[];
}

type Shape = FixingSection['shapes'][number];

/**
 * Vertical section square to a tube through a bolt, or the weld, of a panel: on the stated side, or its first fixed one
 * (main low, main high, cross low, cross high). mm; x from the tube's centre line towards the panel, y is z of the plate. The panel is broken
 * off beyond the tube. Refuses a panel that is not in the geometry.
 */
export function sectionThroughFixing(
  geometry: Geometry,
  panelId: string,
  catalogue: Catalogue,
  text: LengthText,
  side?: Side,
): FixingSection {
  const panel = geometry.panels.find(({ id }) => id === panelId);
  if (!panel)
    throw refusal({
      what: `There is no panel “${panelId}” to draw`,
      where: { panel: panelId },
      mend: `Name one of: ${geometry.panels.map(({ id }) => id).join(', ') || 'none yet'}.`,
    });
  const fixed = panel.bearings.filter((b) => b.fixed && (side === undefined || b.side === side));
  // Listed bolts may leave a side without one: the first side that has some is drawn.
  const bearing = fixed.find((b) => panel.bolts.some((bolt) => bolt.side === b.side && !bolt.inner)) ?? fixed[0]!;
  const tube = [...geometry.mainTubes, ...geometry.crossTubes].find(({ id }) => id === bearing.tube)!;
  const { section } = tube;
  const up = panel.pressedBy === 'down' ? 1 : -1;
  const face = up > 0 ? tube.top : tube.bottom;
  const t = panel.thickness;
  /** Across the tube and outward from its face, in m, to the drawing. */
  const at = (x: number, h: number): Point => [1000 * x, 1000 * (face + up * h)];
  const box = (role: Shape['role'], x0: number, x1: number, h0: number, h1: number): Shape => ({
    role,
    rings: [[at(x0, h0), at(x1, h0), at(x1, h1), at(x0, h1)]],
  });

  const half = section.width / 2;
  const edge = half - bearing.lap;
  const end = half + 0.75 * section.width;
  const shapes: Shape[] = [
    { role: 'tube', id: tube.id, rings: tubeRings(tube) },
    { ...box('panel', edge, end, 0, t), id: panel.id },
  ];
  const dimension = (from: Point, to: Point, length: number): DrawnDimension => ({ from, to, text: text(length) });
  const across = dimension(at(-half, -section.height), at(half, -section.height), section.width);
  // From the plate outwards, the shortest first, and towards the panel's edge, past which a text without room stands:
  // no line crosses a text.
  const along = [dimension(at(half, t), at(edge, t), bearing.lap)];
  if (bearing.flatLap > 0 && section.outerRadius > 0)
    along.unshift(dimension(at(half - section.outerRadius, t), at(edge, t), bearing.flatLap));
  const upright = [
    dimension(at(end, 0), at(end, t), t),
    dimension(at(-half, 0), at(-half, -section.height), section.height),
  ];

  const { fixing } = panel.design;
  if (fixing.kind === 'welded') {
    const a = fixing.throat.si;
    const leg = Math.SQRT2 * a;
    shapes.push({ role: 'weld', rings: [[at(edge, 0), at(edge - leg, 0), at(edge, leg)]] });
    // The line measures the leg z; the throat a is what the document states.
    along.push({ from: at(edge, t), to: at(edge - leg, t), text: `a ${text(a)}, z ${text(leg)}` });
  } else {
    const pattern = boltPattern(fixing);
    // Of listed bolts the one nearest the panel's edge, or none where the side has none.
    const own = panel.bolts.filter((bolt) => bolt.side === bearing.side && !bolt.inner);
    const e =
      pattern.kind === 'lines'
        ? pattern.edgeDistance.si
        : Math.min(...own.map(({ fromFace }) => bearing.lap - fromFace));
    if (Number.isFinite(e)) {
      shapes.push(
        ...boltShapes({ panel, tube, fixing, catalogue, axis: edge + e, edge }, (role, x0, x1, h0, h1) =>
          box(role, edge + e + x0, edge + e + x1, h0, h1),
        ),
      );
      along.push(dimension(at(edge + e, t), at(edge, t), e));
    }
    along.sort((p, q) => Math.abs(p.to[0] - p.from[0]) - Math.abs(q.to[0] - q.from[0]));
  }
  const dimensions = [across, ...along, ...upright];
  return { tube: tube.id, side: bearing.side, shapes, dimensions };
}

/** A bolt's surroundings: `axis` and the panel's `edge` from the tube's centre line, m. */
interface Seat {
  readonly panel: Panel;
  readonly tube: Tube;
  readonly fixing: BoltedFixing;
  readonly catalogue: Catalogue;
  readonly axis: number;
  readonly edge: number;
}

type Box = (role: Shape['role'], x0: number, x1: number, h0: number, h1: number) => Shape;

/** Bolt, washers, nut, sleeve or pad; heights outward from the tube's face, widths about the bolt's axis. */
function boltShapes({ panel, tube: { section }, fixing, catalogue, axis, edge }: Seat, box: Box): Shape[] {
  const { thickness: t, bolts } = panel;
  const row = catalogue.bolt(fixing.bolt);
  const d = row.diameter;
  const [wall, H, past, ws] = [section.nominalWall, section.height, 2 * row.pitch, row.washerThickness];
  const shank = (h0: number, h1: number): Shape => box('bolt', -d / 2, d / 2, h0, h1);
  const washer = (h0: number): Shape => box('washer', -row.washerOuter / 2, row.washerOuter / 2, h0, h0 + ws);
  const hexagon = (role: 'bolt' | 'nut', h0: number, h1: number): Shape =>
    box(role, -row.headAcrossCorners / 2, row.headAcrossCorners / 2, h0, h1);
  const { plateWasher } = fixing;
  const under = plateWasher
    ? box('washer', -plateWasher.width.si / 2, plateWasher.width.si / 2, t, t + plateWasher.thickness.si)
    : washer(t);
  const seat = t + (plateWasher?.thickness.si ?? ws);
  const head = [under, hexagon('bolt', seat, seat + row.headHeight)];
  switch (fixing.into) {
    case 'through-bolt with sleeve': {
      const hole = bolts[0]?.hole ?? row.holeNormal;
      const { bore, outer } = sleeveOf(fixing, hole, d);
      const sleeve = ([-1, 1] as const).map((s) => box('sleeve', s * (bore / 2), s * (outer / 2), -wall, -(H - wall)));
      return [
        ...sleeve,
        shank(-H - ws - row.nutHeight - past, t + ws),
        ...head,
        washer(-H - ws),
        hexagon('nut', -H - ws - row.nutHeight, -H - ws),
      ];
    }
    case 'one-sided':
      return [shank(-wall - row.nutHeight - past, t + ws), ...head, hexagon('nut', -wall - row.nutHeight, -wall)];
    case 'welded stud':
      return [shank(0, t + ws + row.nutHeight + past), washer(t), hexagon('nut', t + ws, t + ws + row.nutHeight)];
    case 'tapped pad':
      return [box('pad', -1.5 * d, 1.5 * d, -wall - d, -wall), shank(-wall - d, t + ws), ...head];
    // A bar bent round the tube; its far leg passes a strip of the panel's thickness that leans on the tube.
    case 'clamp': {
      const nutOn = (x: number): Shape[] => [
        box('washer', x - row.washerOuter / 2, x + row.washerOuter / 2, t, t + ws),
        box('nut', x - row.headAcrossCorners / 2, x + row.headAcrossCorners / 2, t + ws, t + ws + row.nutHeight),
      ];
      const far = -2 * axis;
      const top = t + ws + row.nutHeight + past;
      return [
        box('pad', far - 1.5 * d, edge - axis, 0, t),
        shank(-H - d, top),
        box('bolt', far - d / 2, far + d / 2, -H - d, top),
        box('bolt', far + d / 2, -d / 2, -H - d, -H),
        ...nutOn(0),
        ...nutOn(far),
      ];
    }
  }
}

/** Outer and inner contour of a tube in section, corners as twelve chords each. */
function tubeRings({ section, bottom, top }: Tube): Point[][] {
  const { width, height, nominalWall: wall, outerRadius, innerRadius } = section;
  const middle = (bottom + top) / 2;
  const ring = (w: number, h: number, r: number): Point[] => {
    if (r === 0)
      return [
        [-w / 2, -h / 2],
        [w / 2, -h / 2],
        [w / 2, h / 2],
        [-w / 2, h / 2],
      ].map(([x, y]): Point => [1000 * x!, 1000 * (middle + y!)]);
    const centres = [
      [w / 2 - r, h / 2 - r],
      [r - w / 2, h / 2 - r],
      [r - w / 2, r - h / 2],
      [w / 2 - r, r - h / 2],
    ] as const;
    return centres.flatMap(([cx, cy], quarter) =>
      Array.from({ length: chords + 1 }, (_, k): Point => {
        const angle = ((quarter + k / chords) * Math.PI) / 2;
        return [1000 * (cx + r * Math.cos(angle)), 1000 * (middle + cy + r * Math.sin(angle))];
      }),
    );
  };
  return [
    ring(width, height, outerRadius),
    ring(width - 2 * wall, height - 2 * wall, Math.min(innerRadius, width / 2 - wall)),
  ];
}

const chords = 12;
