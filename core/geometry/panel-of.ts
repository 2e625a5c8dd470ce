import type { Catalogue } from '../catalogue/catalogue.ts';
import type { BoltedFixing, PlateDocument } from '../document/schema.ts';
import { refusal } from '../refusal.ts';
import { boltPattern } from '../document/bolt-pattern.ts';
import { boltsOf, type BoltedEdge } from './bolts-of.ts';
import { contourOf } from './contour-of.ts';
import { fieldsOf } from './fields-of.ts';
import type { Bearing, Bolt, Cutout, Panel, Point, Rectangle, Side, Tube } from './geometry.ts';
import type { LengthText } from './length-text.ts';
import { listedBolts } from './listed-bolts.ts';
import type { PlacedPanel } from './placed-panels.ts';
import { plugsOf } from './plugs-of.ts';
import { gridLines } from './grid-lines.ts';
import { lapsOf } from './laps-of.ts';
import { holeArea, holePerimeter, slotReach } from './slot.ts';
import { weldReturnsOf } from './weld-returns-of.ts';
import { weldRunsOf } from './weld-runs-of.ts';

/**
 * A panel with all its dimensions, m. It lies on the highest (topside) or lowest (underside) face of the tubes that it
 * touches; on a side whose tube is not at that level its overlap only sets the outline.
 * Refuses a panel that no pair of opposite tubes holds, a corrosion loss that leaves nothing, notches that meet, and a
 * bolt that has no hole of the chosen kind.
 */
export function panelOf(
  placed: PlacedPanel,
  tubes: ReadonlyMap<string, Tube>,
  document: PlateDocument,
  catalogue: Catalogue,
  text: LengthText,
): Panel {
  const { id, designName, design, bays } = placed;
  const where = { path: `designs.${designName}`, panel: id };
  const thickness = design.thickness.si;
  const thicknessEnd = thickness - 2 * document.protection.lossPerFace.panel.si;
  if (!(thicknessEnd > 0))
    throw refusal({
      what: `Panel ${id} is ${text(thickness)} thick and loses ${text(document.protection.lossPerFace.panel.si)} from each face: nothing is left at the end of life`,
      where: { path: 'protection.lossPerFace.panel', panel: id },
      mend: 'Take a thicker panel, protect it better, or take a shorter life.',
    });

  const lines = gridLines(placed, tubes);
  const touched = [...lines.main, ...lines.cross].map(({ tube }) => tube);
  const topside = design.side === 'topside';
  const face = topside ? Math.max(...touched.map((t) => t.top)) : Math.min(...touched.map((t) => t.bottom));
  const isLevel = (tube: Tube): boolean => Math.abs((topside ? tube.top : tube.bottom) - face) < 1e-6;

  const tube = (side: Side): Tube => tubes.get(placed.tubes[side])!;
  const laps = lapsOf(design);
  const outline: Rectangle = {
    x0: tube('crossLow').at + tube('crossLow').section.width / 2 - laps.crossLow,
    y0: tube('mainLow').at + tube('mainLow').section.width / 2 - laps.mainLow,
    x1: tube('crossHigh').at - tube('crossHigh').section.width / 2 + laps.crossHigh,
    y1: tube('mainHigh').at - tube('mainHigh').section.width / 2 + laps.mainHigh,
  };

  const bearing = (side: Side): Bearing => {
    const lap = laps[side];
    const level = isLevel(tube(side));
    const relied =
      design.support === 'four sides' || design.support === (side.startsWith('main') ? 'main tubes' : 'cross tubes');
    return {
      side,
      tube: placed.tubes[side],
      lap,
      flatLap: lap - tube(side).section.outerRadius,
      level,
      fixed: level && relied && lap > 0,
    };
  };
  const bearings = (['mainLow', 'mainHigh', 'crossLow', 'crossHigh'] as const).map(bearing);
  const holds = { main: bearings[0]!.fixed && bearings[1]!.fixed, cross: bearings[2]!.fixed && bearings[3]!.fixed };
  if (!holds.main && !holds.cross) {
    const on = bearings.filter((b) => b.level).map((b) => b.tube);
    throw refusal({
      what: `Panel ${id} hangs in the air: no two opposite tubes hold it (support “${design.support}”, overlap ${bearings.map((b) => `${text(b.lap)} on ${b.tube}`).join(', ')}; at its level: ${on.join(', ')})`,
      where,
      mend: 'Rely on tubes at the panel’s level (a stacked grid has cross tubes on top, main tubes below), and give it an overlap there.',
    });
  }

  const notch = design.cornerNotch?.si ?? 0;
  if (2 * notch >= Math.min(outline.x1 - outline.x0, outline.y1 - outline.y0))
    throw refusal({
      what: `The corner notches of panel ${id}, ${text(notch)} each, leave nothing of its edge`,
      where: { ...where, field: 'cornerNotch' },
      mend: 'Make the notches smaller.',
    });
  const contour = contourOf(outline, notch);

  const bolts =
    design.fixing.kind === 'bolted'
      ? boltsIn(design.fixing, {
          id,
          hole: holeOf(design.fixing, catalogue),
          slotLength: slotLengthOf(design.fixing, catalogue),
          outline,
          notch,
          bearings,
          lines,
          isLevel,
        })
      : [];
  const weldedEdge = design.fixing.kind === 'welded' ? { id, fixing: design.fixing, outline, notch, bearings } : null;
  const weldRuns = weldedEdge ? weldRunsOf(weldedEdge) : [];
  const plugs = weldedEdge ? plugsOf(weldedEdge, { lines, isLevel }) : [];
  const centre: Point = [(outline.x0 + outline.x1) / 2, (outline.y0 + outline.y1) / 2];
  const cutouts: Cutout[] = [
    ...bolts.map(({ x, y, hole, slot }) => ({ x, y, diameter: hole, purpose: 'bolt' as const, ...(slot && { slot }) })),
    ...plugs.map(({ x, y, diameter }) => ({ x, y, diameter, purpose: 'plug' as const })),
    ...design.holes.map((hole) => ({
      x: centre[0] + hole.x.si,
      y: centre[1] + hole.y.si,
      diameter: hole.diameter.si,
      purpose: hole.purpose,
    })),
  ];
  const { x0, y0, x1, y1 } = outline;
  const holesInside = cutouts.filter((c) => isInside(c, outline, notch));
  return {
    id,
    designName,
    design,
    material: catalogue.material(design.material),
    bays: bays.map((b) => b.id),
    pressedBy: topside ? 'down' : 'up',
    outline,
    thickness,
    thicknessEnd,
    bottom: topside ? face : face - thickness,
    top: topside ? face + thickness : face,
    contour,
    cutouts,
    area: (x1 - x0) * (y1 - y0) - 4 * notch ** 2 - holesInside.reduce((sum, c) => sum + holeArea(c), 0),
    bearings,
    bolts,
    weldRuns,
    plugs,
    weldReturns: weldedEdge ? weldReturnsOf(weldedEdge, weldRuns) : [],
    cutLength: 2 * (x1 - x0 + y1 - y0) + cutouts.reduce((sum, c) => sum + holePerimeter(c), 0),
    fields: fieldsOf({
      id,
      outline,
      notch,
      bearings,
      lines,
      isLevel,
      bays,
      pattern: design.fixing.kind === 'bolted' ? boltPattern(design.fixing) : null,
      bolts,
      weldRuns,
    }),
  };
}

/** In lines, or on the places that are listed. */
function boltsIn(fixing: BoltedFixing, edge: Omit<BoltedEdge, 'fixing'>): Bolt[] {
  const pattern = boltPattern(fixing);
  return pattern.kind === 'listed'
    ? listedBolts({ ...edge, fixing }, pattern.places)
    : boltsOf({ ...edge, fixing: { ...pattern, slot: fixing.slot } });
}

/**
 * Diameter of the bolt hole, m. A fitted bolt fills its hole: nominal hole = shank (EN 1090-2, from memory), a shank of the
 * bolt's own size. A hole called oversize, or a slot, stays so, and the check of slip says that nothing fits there. A slot is
 * as wide as the normal hole.
 */
function holeOf(fixing: BoltedFixing, catalogue: Catalogue): number {
  const bolt = catalogue.bolt(fixing.bolt);
  if (fixing.shear === 'fitted' && !isLoose(fixing)) return bolt.diameter;
  const diameter = {
    fine: bolt.holeFine,
    medium: bolt.holeMedium,
    normal: bolt.holeNormal,
    oversize: bolt.holeOversize,
    'short slot': bolt.holeNormal,
    'long slot': bolt.holeNormal,
  }[fixing.hole];
  return inCatalogue(diameter, fixing, bolt.id);
}

/** Whole length of the slots in the panel, m; null where its holes are round. */
function slotLengthOf(fixing: BoltedFixing, catalogue: Catalogue): number | null {
  if (fixing.hole !== 'short slot' && fixing.hole !== 'long slot') return null;
  const bolt = catalogue.bolt(fixing.bolt);
  return inCatalogue(fixing.hole === 'short slot' ? bolt.shortSlotLength : bolt.longSlotLength, fixing, bolt.id);
}

/** True where no bolt can fill the hole: oversize, or a slot. */
export const isLoose = ({ hole }: BoltedFixing): boolean =>
  hole === 'oversize' || hole === 'short slot' || hole === 'long slot';

function inCatalogue(size: number | null, { hole }: BoltedFixing, bolt: string): number {
  if (size !== null) return size;
  throw refusal({
    what: `The catalogue has no ${hole === 'oversize' ? 'oversize hole' : hole} for the bolt ${bolt}`,
    where: { bolt },
    mend: 'Choose a normal, medium or fine hole.',
  });
}

/** True where a hole lies wholly inside the panel, clear of edges and notches. */
export function isInside(hole: Cutout, { x0, y0, x1, y1 }: Rectangle, notch: number): boolean {
  const { x, y, diameter } = hole;
  const r = diameter / 2;
  const [dx, dy] = [Math.min(x - x0, x1 - x) - slotReach(hole, 'x'), Math.min(y - y0, y1 - y) - slotReach(hole, 'y')];
  if (dx < r || dy < r) return false;
  return notch === 0 || Math.hypot(Math.max(dx - notch, 0), Math.max(dy - notch, 0)) >= r;
}
