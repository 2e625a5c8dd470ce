import type { Geometry, Panel, Rectangle } from '../geometry/geometry.ts';
import type { GrowthMass } from '../mass/growth-on.ts';
import type { MassReport } from '../mass/mass-report.ts';
import { once } from '../once.ts';
import { g } from '../water/sea-water.ts';
import { edgeLines } from './edge-lines.ts';
import { MomentBound } from './moment-bound.ts';
import {
  planShares,
  type FieldShare,
  type FlowOver,
  type FlowSpread,
  type PlanShares,
  type Spread,
  type TubeStrip,
} from './plan-shares.ts';
import { TubeFrame, type FrameNode, type FramePoint, type NodeOnTube } from './tube-frame.ts';
import { loaded, type Loaded, type Pattern, type Spread as InertiaSpread } from './loaded.ts';
import {
  addLoad,
  layLoads,
  massLoads,
  resultant,
  sparse,
  tubeLines,
  type LineLoad,
  type Resultant,
  type TubeLines,
} from './tube-lines.ts';

/** A point on a tube at which something holds the plate. */
export interface Place {
  readonly tube: number;
  /** Along the tube, m. */
  readonly at: number;
  readonly crossing: string | null;
  /** Point through which the force acts. */
  readonly x: number;
  readonly y: number;
}

/** What a field loads its tubes with for a pressure of 1 Pa up, when it is pressed on them and when it is pulled off. */
export interface FieldLoad extends FieldShare {
  readonly pressed: Pattern;
  readonly pulled: Pattern;
  /** Largest force per length on each tube that the field touches, N/m for 1 Pa. */
  readonly wall: readonly (readonly [tube: number, line: number])[];
  /** Of the panel's own plate, for its area: mass, weight in air and in water (down is positive), kg/m² and Pa; and the
   *  weight where it helps, at the end of life. */
  readonly mass: number;
  readonly weight: Readonly<Record<Medium, number>>;
  readonly least: Readonly<Record<Medium, number>>;
}

export type Medium = 'air' | 'water';

/** Growth as a load: N/m up on the tubes, Pa down on each field, N down in all. */
export interface GrowthLoad {
  readonly onTubes: Loaded;
  readonly onFields: number;
  readonly weight: number;
}

/** The plate as tubes that carry, and everything that may load it, ready to be scaled and added. */
export interface PlateLoads {
  readonly shares: PlanShares;
  readonly lines: TubeLines;
  readonly frame: TubeFrame;
  readonly fields: readonly FieldLoad[];
  readonly momentBound: MomentBound;
  /** The water's force on the tubes' own area: N/m for a whole force of 1 N up on the plate. */
  readonly onTubes: Readonly<Record<Spread, Loaded>>;
  /** The same spread by each flow that is asked for. */
  readonly flowOnTubes: readonly Readonly<Record<FlowSpread, Loaded>>[];
  /** Weight of everything but the panels' plates, N/m up (so negative), by medium. */
  readonly weightOfRest: Readonly<Record<Medium, Loaded>>;
  /** Weight of the whole, N down. */
  readonly weight: Readonly<Record<Medium, number>>;
  /** Weight of marine growth in water and in air, and its mass, kg; null where none has grown. */
  readonly growth: { readonly water: GrowthLoad; readonly air: GrowthLoad; readonly mass: number } | null;
  /** Both again where weight helps (`leastWeight`). */
  readonly leastOfRest: Readonly<Record<Medium, Loaded>>;
  readonly least: Readonly<Record<Medium, number>>;
  /** Inertia of everything but the panels' plates: a force of 1 N as all of it rises alike, and units of force and first moments as it rises and turns. */
  readonly rising: Loaded;
  readonly spread: InertiaSpread;
  /** Mass of the whole, and with the water in its flooded tubes, kg. */
  readonly mass: number;
  readonly movingMass: number;
  /** Water that stays in flooded tubes, N/m up; all of them, and those without a drain. */
  readonly heldWater: { readonly all: Loaded; readonly undrained: Loaded };
  readonly points: readonly FramePoint[];
}

/** Lays out tubes, fields and weights of a plate that is held at the given places. */
export function plateLoads(
  geometry: Geometry,
  mass: MassReport,
  shape: (over: Rectangle) => number,
  places: readonly Place[],
  flows: readonly FlowOver[] = [],
): PlateLoads {
  const shares = planShares(geometry, shape, flows);
  const { tubes } = shares;
  const mains = geometry.mainTubes.length;
  const bays = new Map(geometry.bays.map((bay) => [bay.id, bay]));
  const edges = shares.fields.map((share) => edgeLines(share, tubes, bays.get(share.bay)!));
  const strips = (of: (strip: TubeStrip) => number): LineLoad[] =>
    shares.strips.map((strip) => {
      const { tube, from, to } = strip;
      const line = of(strip) / (to - from);
      return { tube, from, to, first: line, last: line, offset: 0 };
    });
  const [evenStrips, shapedStrips] = [strips(({ part }) => part.area), strips(({ part }) => part.shape)];
  const flowStrips = (k: number, of: FlowSpread): Loaded => solved(layLoads(lines, strips(({ flow }) => flow[k]![of]), empty())); // prettier-ignore

  const { nodes, nodesOf, nodeOf } = frameNodes(geometry, places, [
    ...evenStrips,
    ...edges.flatMap((e) => [...e.pressed, ...e.pulled]),
  ]);
  const along = (set: 'main' | 'cross'): number[] => {
    const on = nodesOf.filter((_, tube) => tubes[tube]!.set === set).flatMap((list) => list.map(({ at }) => at));
    return [...new Set(on)].sort((a, b) => a - b);
  };
  const cuts = { main: along('main'), cross: along('cross') };
  const cellEnds = tubes.map((_, tube): number[] => {
    const own = nodesOf[tube]!.map(({ at }) => at);
    const [low, high] = [own[0]!, own.at(-1)!];
    return [...own, ...cuts[tubes[tube]!.set].filter((at) => at > low && at < high)];
  });
  for (const { tube, from, to } of [...evenStrips, ...edges.flatMap((e) => [...e.pressed, ...e.pulled])])
    cellEnds[tube]!.push(from, to);
  const lines = tubeLines(tubes, mains, cellEnds);
  const empty = (): Float64Array => new Float64Array(4 * lines.from.length);

  const rho = mass.waterDensity;
  const steel = tubes.map(({ section, material }) => material.density * section.nominalArea);
  const waterInside = tubes.map(({ section, flooded }) => (flooded ? rho * section.innerArea : 0));
  const moving = steel.map((kg, i) => kg + waterInside[i]!);
  const frame = new TubeFrame(lines, nodes, nodesOf, moving);

  const solved = (load: Float64Array): Loaded => loaded(frame, load);
  const patternOf = (edge: readonly LineLoad[]): Pattern => {
    const load = layLoads(lines, edge, empty());
    return { load: sparse(load), motion: once(() => frame.motion(load)) };
  };
  const pressedArea = new Map<Panel, number>();
  for (const { panel, area } of [...shares.fields, ...shares.doubled])
    pressedArea.set(panel, (pressedArea.get(panel) ?? 0) + area);
  const fields = shares.fields.map((share, i): FieldLoad => {
    const { panel } = share;
    const covered = pressedArea.get(panel)!;
    const perArea = (panel.material.density * panel.thickness * panel.area) / covered;
    const displaced = (panel.thickness * panel.area) / covered;
    const widest = new Map<number, number>();
    for (const line of [...edges[i]!.pressed, ...edges[i]!.pulled])
      widest.set(line.tube, Math.max(widest.get(line.tube) ?? 0, line.first, line.last));
    const weight = { air: g * perArea, water: g * (perArea - rho * displaced) };
    const atEnd = panel.thicknessEnd / panel.thickness;
    return {
      ...share,
      pressed: patternOf(edges[i]!.pressed),
      pulled: patternOf(edges[i]!.pulled),
      wall: [...widest],
      mass: perArea,
      weight,
      least: { air: weight.air * atEnd, water: weight.water > 0 ? weight.water * atEnd : weight.water },
    };
  });

  const [up, turnX, turnY] = massLoads(lines, moving);
  const steelLoads = massLoads(lines, steel);
  const evenly = (perLength: readonly number[]): Float64Array => {
    const load = empty();
    for (let e = 0; e < lines.from.length; e++) load[4 * e] = load[4 * e + 1] = perLength[lines.tubeOf[e]!]!;
    return load;
  };
  const centreOfPanels = (which: 'weight' | 'least', of: Medium): Resultant =>
    fields.reduce<Resultant>(
      ([F, X, Y], { area, outline, [which]: own }) => {
        const force = -own[of] * area;
        return [F + force, X + (force * (outline.x0 + outline.x1)) / 2, Y + (force * (outline.y0 + outline.y1)) / 2];
      },
      [0, 0, 0],
    );
  /** Tubes by their own weight; what else there is (fasteners, welds, coating, extras; less what may be missing) with its
   *  sum and centre, over all tubes. */
  const restOf = (which: 'weight' | 'least', of: Medium, whole: Resultant): Loaded => {
    const load = evenly(tubes.map(({ section, flooded, material }) => {
      const buoyant = of === 'water' ? rho * (section.nominalArea + (flooded ? 0 : section.innerArea)) : 0;
      return -g * (material.density * section.nominalArea - buoyant);
    })); // prettier-ignore
    const [own, panels] = [resultant(lines, load), centreOfPanels(which, of)];
    steelLoads.forEach((unit, i) => addLoad(load, unit, whole[i]! - own[i]! - panels[i]!));
    return solved(load);
  };
  const growthLoad = ({ thickness, density, onTubes }: GrowthMass, around: number): GrowthLoad => {
    const load = empty();
    const force = -g * onTubes.mass * (1 - around / density);
    [force, force * onTubes.centre[0], force * onTubes.centre[1]].forEach((part, i) =>
      addLoad(load, steelLoads[i]!, part),
    );
    const onFields = 2 * thickness * g * (density - around);
    const weight = -force + onFields * fields.reduce((sum, { area }) => sum + area, 0);
    return { onTubes: solved(load), onFields, weight };
  };
  const inAir: Resultant = [-g * mass.total, -g * mass.total * mass.centre[0], -g * mass.total * mass.centre[1]];
  const buoyancy = g * rho * mass.displaced.asBuilt;
  const inWater: Resultant = [
    -mass.submergedWeight.asBuilt,
    inAir[1] + buoyancy * mass.centreOfBuoyancy[0],
    inAir[2] + buoyancy * mass.centreOfBuoyancy[1],
  ];
  const leastIn = (of: Medium): Resultant => {
    const { weight, momentX, momentY } = mass.least[of];
    return [-weight, -momentX, -momentY];
  };
  // the mass report knows the bores best (pieces, what stands in them): its sum, laid on the tubes by their bores
  const inside = resultant(lines, evenly(waterInside))[0];
  const held = (of: (tube: number) => boolean): Loaded =>
    solved(evenly(waterInside.map((kg, i) => (of(i) && inside > 0 ? (-g * kg * mass.entrainedWater) / inside : 0))));
  const even = evenly(moving);
  const whole = resultant(lines, even)[0];

  return {
    shares,
    lines,
    frame,
    fields,
    momentBound: new MomentBound(lines, cuts),
    onTubes: {
      area: solved(layLoads(lines, evenStrips, empty())),
      shape: solved(layLoads(lines, shapedStrips, empty())),
    },
    flowOnTubes: flows.map((_, k) => ({ inertia: flowStrips(k, 'inertia'), edges: flowStrips(k, 'edges') })),
    weightOfRest: { air: restOf('weight', 'air', inAir), water: restOf('weight', 'water', inWater) },
    weight: { air: -inAir[0], water: -inWater[0] },
    growth: mass.growth && { water: growthLoad(mass.growth, rho), air: growthLoad(mass.growth, 0), mass: mass.growth.mass }, // prettier-ignore
    leastOfRest: { air: restOf('least', 'air', leastIn('air')), water: restOf('least', 'water', leastIn('water')) },
    least: { air: mass.least.air.weight, water: mass.least.water.weight },
    rising: solved(even.map((kg) => kg / whole)),
    spread: [solved(up), solved(turnX), solved(turnY)],
    mass: mass.total,
    movingMass: mass.total + mass.entrainedWater,
    heldWater: { all: held(() => true), undrained: held((tube) => tubes[tube]!.drain === null) },
    points: places.map((place, i) => ({ node: nodeOf[i]!, x: place.x, y: place.y })),
  };
}

/** A free end beyond the last crossing is at least this long, m, so that no member is needle-short. */
const leastStub = 0.01;

/** Nodes at crossings, at tubes' ends (and where a panel laps past them) and at the places that hold the plate. */
function frameNodes(
  geometry: Geometry,
  places: readonly Place[],
  loads: readonly LineLoad[],
): { nodes: FrameNode[]; nodesOf: NodeOnTube[][]; nodeOf: number[] } {
  const tubes = [...geometry.mainTubes, ...geometry.crossTubes];
  const index = new Map(tubes.map(({ id }, i) => [id, i]));
  const nodes: FrameNode[] = geometry.crossings.map(({ id, x, y }) => ({ x, y, name: `crossing ${id}` }));
  const nodesOf: NodeOnTube[][] = tubes.map(() => []);
  geometry.crossings.forEach(({ main, cross, x, y }, node) => {
    nodesOf[index.get(main)!]!.push({ at: x, node });
    nodesOf[index.get(cross)!]!.push({ at: y, node });
  });
  const add = (tube: number, at: number, name: string): number => {
    const line = tubes[tube]!.at;
    const node = nodes.length;
    nodes.push(tubes[tube]!.set === 'main' ? { x: at, y: line, name } : { x: line, y: at, name });
    nodesOf[tube]!.push({ at, node });
    return node;
  };
  const crossingNode = new Map(geometry.crossings.map(({ id }, node) => [id, node]));
  const nodeOf = places.map(({ tube, at, crossing }) => {
    if (crossing !== null) return crossingNode.get(crossing)!;
    const near = nodesOf[tube]!.find((n) => Math.abs(n.at - at) < leastStub);
    return near ? near.node : add(tube, at, `tube ${tubes[tube]!.id} at ${at.toFixed(3)} m`);
  });
  const reach = tubes.map(({ from, to }) => [from, to] as [number, number]);
  for (const { tube, from, to } of loads)
    reach[tube] = [Math.min(reach[tube]![0], from), Math.max(reach[tube]![1], to)];
  tubes.forEach(({ id }, tube) => {
    const own = nodesOf[tube]!;
    const [low, high] = [Math.min(...own.map((n) => n.at)), Math.max(...own.map((n) => n.at))];
    const [from, to] = reach[tube]!;
    if (from < low) add(tube, Math.min(from, low - leastStub), `low end of tube ${id}`);
    if (to > high) add(tube, Math.max(to, high + leastStub), `high end of tube ${id}`);
    own.sort((a, b) => a.at - b.at);
  });
  return { nodes, nodesOf, nodeOf };
}
