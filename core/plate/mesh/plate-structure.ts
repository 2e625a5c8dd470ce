import type { Crossing, Panel, Point, Tube } from '../../geometry/geometry.ts';
import type { Model } from '../../model.ts';
import type {
  BeamPart,
  BeamSection,
  ContactPart,
  JointPart,
  PanelMesh,
  ShellPart,
  Structure,
  TiePart,
  TubeMesh,
} from '../../solve/structure/structure.ts';
import type { Vector } from '../../solve/vector.ts';
import { nearestLine, touch } from '../../solve/lattice-lines.ts';
import { boltPreload, clampedStiffness } from './bolt-preload.ts';
import { jointStiffness, type JointEnd, type JointStiffness } from './joint-stiffness.ts';
import { boltSeat, panelLattice, type Lattice } from './panel-lattice.ts';
import { boltTieStiffness, contactStiffness, weldTieStiffness, type Clamped } from './tie-stiffness.ts';
import { tubeStations } from './tube-stations.ts';

export interface MeshSettings {
  /** Largest side of a panel's cell and length of a beam, m. */
  readonly size: number;
  /** `as built`: tubes, panels and faces at their levels. `level`: all in one plane, as in a plane grid (to compare with one). */
  readonly levels: 'as built' | 'level';
  /** Panels, bolts, rows of weld (“A1 mainLow”) and joints of crossings (“A/3”) left out, by id. */
  readonly without?: ReadonlySet<string>;
  /** Which end of the range of the joints’ stiffness; the stated value where it is left out. */
  readonly joints?: JointEnd;
}

/** Panels' places along a tube that are closer than this, m, share a node of the tube. */
const shared = 0.004;

/**
 * The plate of a document as nodes and parts: tubes as beams on their axes, rigid at the crossings over the distance of
 * the axes, or on springs where the document lets the joints give way; panels as shells on their mid-planes; bolts and welds where they are, between the panel and the tube's wall;
 * contact at every point of a panel that lies on a tube's flat. Tubes keep their sections' shape (walls do not dent:
 * the checks of walls see to that), and vent holes are left out.
 */
export function plateStructure(model: Model, settings: MeshSettings): Structure {
  const { geometry } = model;
  const tubes = [...geometry.mainTubes, ...geometry.crossTubes];
  const panels = geometry.panels.filter(({ id }) => !settings.without?.has(id));
  const nodes: number[] = [];
  const addNode = (x: number, y: number, z: number): number => nodes.push(x, y, z) / 3 - 1;

  const lattices = panels.map((panel) => latticeOf(panel, model, settings));
  const grid = tubeMeshes(model, tubes, panels, lattices, settings, addNode);
  const panelParts = panels.map((panel, index) => panelNodes(panel, lattices[index]!, settings, addNode));

  const shells: ShellPart[] = [];
  const ties: TiePart[] = [];
  const contacts: ContactPart[] = [];
  const meshes = panels.map((panel, index): PanelMesh => {
    const lattice = lattices[index]!;
    const { z, at } = panelParts[index]!;
    const first = [shells.length, ties.length, contacts.length] as const;
    shells.push(...shellsOf(panel, index, lattice, at, model));
    const meet = meetings(panel, index, lattice, at, model, tubes, grid, settings);
    ties.push(...meet.ties);
    contacts.push(...meet.contacts);
    return {
      id: panel.id,
      z,
      xs: lattice.xs,
      ys: lattice.ys,
      nodes: at,
      shells: [first[0], shells.length],
      ties: [first[1], ties.length],
      contacts: [first[2], contacts.length],
    };
  });
  return {
    coordinates: Float64Array.from(nodes),
    beams: grid.beams,
    shells,
    ties,
    contacts,
    joints: grid.joints,
    panels: meshes,
    tubes: grid.meshes,
  };
}

/** Level of a tube's axis, m. */
const axisOf = ({ top, section }: Tube, { levels }: MeshSettings): number =>
  levels === 'level' ? 0 : top - section.height / 2;

function latticeOf(panel: Panel, model: Model, { size }: MeshSettings): Lattice {
  const notch = panel.design.cornerNotch?.si ?? 0;
  return panelLattice(panel, { outline: panel.outline, cornerNotch: notch }, model.geometry, size);
}

interface TubeGrid {
  readonly meshes: readonly TubeMesh[];
  readonly beams: readonly BeamPart[];
  readonly joints: readonly JointPart[];
  /** Node of a tube nearest to a place along it, and the offset from that node to the tube's axis at the place. */
  readonly at: (tube: number, along: number) => { readonly node: number; readonly offset: Vector };
}

/** Nodes of all tubes and the beams between them. A rigid crossing has one node, the main tube's; the cross tube hangs on it
 *  by its offset. Where the joint gives way the cross tube has nodes of its own, at the faces that are welded. A cross tube
 *  that is let in begins at the main tube's face. */
function tubeMeshes(
  model: Model,
  tubes: readonly Tube[],
  panels: readonly Panel[],
  lattices: readonly Lattice[],
  settings: MeshSettings,
  addNode: (x: number, y: number, z: number) => number,
): TubeGrid {
  const { geometry, loads } = model;
  const index = new Map(tubes.map(({ id }, i) => [id, i]));
  const crossings = tubes.map((tube) => geometry.crossings.filter((c) => c[tube.set] === tube.id));
  const lost = ({ id }: Crossing): boolean => settings.without?.has(id) ?? false;
  /** Half length of a cross tube's rigid part at a crossing, m: to the main tube's face where it is let in. */
  const jointOf = ({ set }: Tube, { main }: Crossing): number =>
    set === 'main' || geometry.arrangement === 'stacked' || settings.levels === 'level'
      ? 0
      : tubes[index.get(main)!]!.section.width / 2;
  const springs = new Map<string, JointStiffness>();
  if (settings.levels === 'as built')
    for (const { id, main, cross } of geometry.crossings) {
      const stiffness = jointStiffness(model, tubes[index.get(main)!]!, tubes[index.get(cross)!]!, settings.joints ?? 'stated'); // prettier-ignore
      if (stiffness) springs.set(id, stiffness);
    }
  /** The joint holds its tubes as one body no more: it is lost, or on springs. */
  const loose = (crossing: Crossing): boolean => lost(crossing) || springs.has(crossing.id);
  const held = loads.plate.points.map(({ node }) => loads.plate.frame.nodes[node]!);
  const stations = tubes.map((tube, i) => {
    const along = (p: { readonly x: number; readonly y: number }): number => (tube.set === 'main' ? p.x : p.y);
    const across = (p: { readonly x: number; readonly y: number }): number => (tube.set === 'main' ? p.y : p.x);
    // a cross tube that is let in begins at the main tube's faces, whether its joint holds or is lost
    const own = crossings[i]!.flatMap((c) => {
      const half = jointOf(tube, c);
      const faces = half > 0 ? [along(c) - half, along(c) + half].filter((at) => at > tube.from - touch && at < tube.to + touch) : []; // prettier-ignore
      return lost(c) && half > 0 ? faces : [along(c), ...faces];
    });
    const ends = [Math.min(tube.from, ...own), Math.max(tube.to, ...own)];
    const onIt = held.filter((p) => Math.abs(across(p) - tube.at) < touch).map(along);
    const wanted = panels.flatMap((panel, k) => {
      const { outline } = panel;
      const [low, high] = tube.set === 'main' ? [outline.y0, outline.y1] : [outline.x0, outline.x1];
      if (tube.at + tube.section.width / 2 < low || tube.at - tube.section.width / 2 > high) return [];
      // a cross tube that is let in has no steel in the joint: what lies there is the main tube's
      return [...(tube.set === 'main' ? lattices[k]!.xs : lattices[k]!.ys)].filter((place) =>
        tube.pieces.some(([from, to]) => place > from + touch && place < to - touch),
      );
    });
    return tubeStations([...own, ...ends, ...onIt.filter((s) => s > ends[0]! && s < ends[1]!)], wanted, {
      size: settings.size,
      least: shared,
    });
  });

  const crossingNode = new Map<string, number>();
  /** The middle of a sprung joint of a cross tube that is let in: there is only the main tube. */
  const inside = (tube: Tube, c: Crossing, place: number): boolean =>
    !lost(c) && Math.abs(c.y - place) < jointOf(tube, c) - touch;
  const jointOn = ({ id, main, y }: Crossing, cross: Tube, node: number, place: number): JointPart => {
    const on = tubes[index.get(main)!]!;
    const [under, over] = [axisOf(on, settings), axisOf(cross, settings)];
    // where the faces meet: on top of the main tube, or at its side
    const meet = geometry.arrangement === 'stacked' ? on.top : over;
    return {
      id,
      nodes: [crossingNode.get(id)!, node],
      offsets: [
        [0, place - y, meet - under],
        [0, 0, meet - over],
      ],
      stiffness: springs.get(id)!,
    };
  };
  const meshes: TubeMesh[] = [];
  const beams: BeamPart[] = [];
  const joints: JointPart[] = [];
  const sections = new Map<string, BeamSection>();
  tubes.forEach((tube, i) => {
    const main = tube.set === 'main';
    const z = axisOf(tube, settings);
    const offsets: Vector[] = [];
    const own = stations[i]!;
    const nodes = Int32Array.from(own, (place) => {
      // all of a joint that holds moves with its node
      const crossing = crossings[i]!.find(
        (c) =>
          Math.abs((main ? c.x : c.y) - place) < jointOf(tube, c) + touch &&
          !(!main && loose(c) && !inside(tube, c, place)),
      );
      const known = crossing && crossingNode.get(crossing.id);
      if (known !== undefined) {
        const along = main ? 0 : place - crossing!.y;
        offsets.push([0, along, z - axisOf(tubes[index.get(crossing!.main)!]!, settings)]);
        return known;
      }
      offsets.push([0, 0, 0]);
      const node = main ? addNode(place, tube.at, z) : addNode(tube.at, place, z);
      if (crossing) crossingNode.set(crossing.id, node);
      const sprung = main ? undefined : crossings[i]!.find((c) => springs.has(c.id) && !lost(c) && Math.abs(c.y - place) < jointOf(tube, c) + touch); // prettier-ignore
      if (sprung) joints.push(jointOn(sprung, tube, node, place));
      return node;
    });
    const first = beams.length;
    const kind = `${tube.section.id} ${tube.material.id}`;
    const section = sections.get(kind) ?? sectionOf(tube);
    sections.set(kind, section);
    for (let k = 1; k < own.length; k++) {
      const [from, to] = [own[k - 1]!, own[k]!];
      if (nodes[k - 1] === nodes[k]) continue; // inside a joint: rigid
      const middle = (from + to) / 2;
      if (!main && crossings[i]!.some((c) => loose(c) && Math.abs(c.y - middle) < jointOf(tube, c))) continue; // parted, or the main tube's steel
      beams.push({ tube: i, nodes: [nodes[k - 1]!, nodes[k]!], offsets: [offsets[k - 1]!, offsets[k]!], from, to, section }); // prettier-ignore
    }
    meshes.push({ id: tube.id, set: tube.set, stations: own, nodes, offsets, beams: [first, beams.length] });
  });
  const at = (tube: number, along: number) => {
    const mesh = meshes[tube]!;
    const k = nearestLine(mesh.stations, along);
    const [x, y, z] = mesh.offsets[k]!;
    const by = along - mesh.stations[k]!;
    const offset: Vector = mesh.set === 'main' ? [x + by, y, z] : [x, y + by, z];
    return { node: mesh.nodes[k]!, offset };
  };
  return { meshes, beams, joints, at };
}

const sectionOf = ({ section, material }: Tube): BeamSection => {
  const E = material.youngModulus;
  return {
    E,
    G: E / (2 * (1 + material.poisson)),
    A: section.area,
    Iy: section.inertiaY,
    Iz: section.inertiaZ,
    J: section.torsion,
    Ay: section.shearAreaY,
    Az: section.shearAreaZ,
  };
};

function panelNodes(
  panel: Panel,
  { xs, ys, cells }: Lattice,
  { levels }: MeshSettings,
  addNode: (x: number, y: number, z: number) => number,
): { z: number; at: Int32Array } {
  const z = levels === 'level' ? 0 : (panel.bottom + panel.top) / 2;
  const at = new Int32Array(xs.length * ys.length).fill(-1);
  const [nx, ny] = [xs.length - 1, ys.length - 1];
  const there = (i: number, j: number): boolean => i >= 0 && j >= 0 && i < nx && j < ny && cells[j * nx + i] === 1;
  for (let j = 0; j <= ny; j++)
    for (let i = 0; i <= nx; i++)
      if (there(i, j) || there(i - 1, j) || there(i, j - 1) || there(i - 1, j - 1))
        at[j * (nx + 1) + i] = addNode(xs[i]!, ys[j]!, z);
  return { z, at };
}

function shellsOf(panel: Panel, index: number, { xs, ys, cells }: Lattice, at: Int32Array, model: Model): ShellPart[] {
  const { fields } = model.loads.plate;
  const own = fields.flatMap((field, i) => (field.panel === panel ? [{ i, outline: field.outline }] : []));
  const [nx, ny] = [xs.length - 1, ys.length - 1];
  const shells: ShellPart[] = [];
  for (let j = 0; j < ny; j++)
    for (let i = 0; i < nx; i++) {
      if (cells[j * nx + i] === 0) continue;
      const [x, y] = [(xs[i]! + xs[i + 1]!) / 2, (ys[j]! + ys[j + 1]!) / 2];
      const field = own.find(({ outline: o }) => x >= o.x0 && x <= o.x1 && y >= o.y0 && y <= o.y1);
      const low = j * (nx + 1) + i;
      shells.push({
        panel: index,
        nodes: [at[low]!, at[low + 1]!, at[low + nx + 2]!, at[low + nx + 1]!],
        thickness: panel.thickness,
        E: panel.material.youngModulus,
        nu: panel.material.poisson,
        a: xs[i + 1]! - xs[i]!,
        b: ys[j + 1]! - ys[j]!,
        field: field?.i ?? -1,
      });
    }
  return shells;
}

/** Where a panel meets tubes: its bolts, its welds, and the points at which it lies on their flats. */
function meetings(
  panel: Panel,
  index: number,
  lattice: Lattice,
  at: Int32Array,
  { catalogue }: Model,
  tubes: readonly Tube[],
  grid: TubeGrid,
  settings: MeshSettings,
): { ties: TiePart[]; contacts: ContactPart[] } {
  const { xs, ys } = lattice;
  const nodeAt = (i: number, j: number): number => at[j * xs.length + i]!;
  const toFace = panel.pressedBy === 'down' ? -1 : 1; // from the mid-plane to the face that lies on the tubes
  const panelOffset: Vector = [0, 0, settings.levels === 'level' ? 0 : (toFace * panel.thickness) / 2];
  /** From a tube's node to a point of the wall that the panel lies on. */
  const onWall = (tube: number, [x, y]: Point): { node: number; offset: Vector } => {
    const { set, at: line, section } = tubes[tube]!;
    const { node, offset } = grid.at(tube, set === 'main' ? x : y);
    const up = settings.levels === 'level' ? 0 : (-toFace * section.height) / 2;
    return {
      node,
      offset: set === 'main' ? [offset[0], offset[1] + y - line, offset[2] + up] : [offset[0] + x - line, offset[1], offset[2] + up], // prettier-ignore
    };
  };
  const byId = new Map(tubes.map(({ id }, i) => [id, i]));
  const clamped = (tube: Tube): Omit<Clamped, 'grip'> => ({
    panelThickness: panel.thickness,
    panelModulus: panel.material.youngModulus,
    wall: tube.section.wall,
    tubeModulus: tube.material.youngModulus,
  });

  const ties: TiePart[] = [];
  const clamps: ContactPart[] = [];
  const { fixing } = panel.design;
  if (fixing.kind === 'bolted') {
    const row = catalogue.bolt(fixing.bolt);
    const preload = boltPreload(fixing, row, catalogue.boltClass(fixing.class));
    for (const { id, x, y, tube: on } of panel.bolts) {
      if (settings.without?.has(id)) continue;
      const tube = byId.get(on)!;
      const { section } = tubes[tube]!;
      const through = fixing.into === 'through-bolt with sleeve';
      const grip = panel.thickness + (through ? section.height : section.wall);
      const seat = boltSeat(lattice, { x, y });
      const { node, offset } = onWall(tube, seat.at);
      const nodes = [nodeAt(seat.i, seat.j), node] as const;
      ties.push({
        kind: 'bolt',
        id,
        panel: index,
        tube,
        nodes,
        offsets: [panelOffset, offset],
        stiffness: boltTieStiffness(row, { ...clamped(tubes[tube]!), grip }, fixing.shear),
        length: 0,
        ...(preload > 0 ? { preload: toFace * preload } : {}),
      });
      if (preload > 0) {
        const { panelThickness: t1, panelModulus: E1, tubeModulus: E2 } = clamped(tubes[tube]!);
        const stiffness = clampedStiffness(grip, row.diameter, grip / (t1 / E1 + (grip - t1) / E2));
        clamps.push({ panel: index, tube, nodes, offset, side: toFace < 0 ? 1 : -1, stiffness, gap: -preload / stiffness, area: row.holeNormal ** 2 }); // prettier-ignore
      }
    }
  } else {
    for (const { side, tube: on, from, to } of panel.weldRuns) {
      if (settings.without?.has(`${panel.id} ${side}`)) continue;
      const tube = byId.get(on)!;
      const alongX = from[1] === to[1];
      const lines = alongX ? xs : ys;
      const [low, high] = alongX
        ? [Math.min(from[0], to[0]), Math.max(from[0], to[0])]
        : [Math.min(from[1], to[1]), Math.max(from[1], to[1])];
      const across = alongX ? nearestLine(ys, from[1]) : nearestLine(xs, from[0]);
      lines.forEach((place, k) => {
        const length = covered(lines, k, low, high);
        if (length <= touch) return;
        const node = alongX ? nodeAt(k, across) : nodeAt(across, k);
        const point: Point = alongX ? [place, from[1]] : [from[0], place];
        const wall = onWall(tube, point);
        ties.push({
          kind: 'weld',
          id: `${panel.id} ${side}`,
          panel: index,
          tube,
          nodes: [node, wall.node],
          offsets: [panelOffset, wall.offset],
          stiffness: weldTieStiffness(length, fixing.throat.si, panel.material),
          length,
        });
      });
    }
  }

  const contacts: ContactPart[] = [];
  const welds = new Set(panel.weldRuns.map(({ tube }) => tube));
  tubes.forEach((tube, t) => {
    const level = toFace < 0 ? tube.top - panel.bottom : panel.top - tube.bottom;
    if (Math.abs(level) > 1e-6) return;
    const main = tube.set === 'main';
    const [along, across] = main ? [xs, ys] : [ys, xs];
    const half = reachOf(tube, across, welds.has(tube.id));
    across.forEach((place, n) => {
      if (Math.abs(place - tube.at) > half + touch) return;
      // a line at the very edge stands for a strip at least as wide as the wall is thick
      const wide = Math.max(covered(across, n, tube.at - half, tube.at + half), tube.section.wall);
      along.forEach((station, m) => {
        const long = tube.pieces.reduce((sum, [from, to]) => sum + covered(along, m, from, to), 0);
        const node = main ? nodeAt(m, n) : nodeAt(n, m);
        if (node < 0 || long <= touch || !tube.pieces.some(([from, to]) => station >= from - touch && station <= to + touch)) return; // prettier-ignore
        const wall = onWall(t, main ? [station, place] : [place, station]);
        if (clamps.some((clamp) => clamp.nodes[0] === node && clamp.tube === t)) return;
        contacts.push({
          panel: index,
          tube: t,
          nodes: [node, wall.node],
          offset: wall.offset,
          side: toFace < 0 ? 1 : -1,
          stiffness: contactStiffness(wide * long, clamped(tube)),
          gap: 0,
          area: wide * long,
        });
      });
    });
  });
  return { ties, contacts: [...contacts, ...clamps] };
}

/** How far from a tube's centre line a panel bears on it, m: to the edge of the flat (nothing, on a round tube), or to the
 *  panel's own edge where that ends on the corner's rounding, unless a weld there holds it off the tube. */
function reachOf({ at, section }: Tube, across: Float64Array, welded: boolean): number {
  const flat = section.width / 2 - section.outerRadius;
  const edges = [across[0]!, across.at(-1)!].map((edge) => Math.abs(edge - at));
  const inside = across[0]! < at && across.at(-1)! > at;
  const onRounding = inside || welded ? [] : edges.filter((edge) => edge > flat && edge <= section.width / 2 + touch);
  return Math.max(flat, ...onRounding, 0);
}

/** Length of a line's own stretch (to the middle of its gaps) that lies within [low, high], m. */
function covered(lines: Float64Array, k: number, low: number, high: number): number {
  const from = k === 0 ? lines[0]! : (lines[k - 1]! + lines[k]!) / 2;
  const to = k === lines.length - 1 ? lines[k]! : (lines[k]! + lines[k + 1]!) / 2;
  return Math.max(0, Math.min(to, high) - Math.max(from, low));
}
