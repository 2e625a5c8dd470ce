import { crossProduct, minus, plus, times, type Vector } from '../vector.ts';
import { aboutEnd, type EndLoad } from './crossing-cases.ts';
import type { CrossingWalls } from './crossing-walls.ts';
import type { WallMesh } from './wall-mesh.ts';

/** An edge of the wall at an arm's end: its nodes' places and the axis along which it runs. */
interface Edge {
  readonly a: Vector;
  readonly b: Vector;
  readonly axis: 0 | 1 | 2;
}

/**
 * Adds a load to the nodal forces f (6 a node), spread over an arm's end as beams spread it: a pull evenly, bending linearly, shear
 * over the walls along it, torque as an even flow round the tube. All of it is in balance with the load, whatever the mesh.
 */
export function addEnd(mesh: WallMesh, walls: CrossingWalls, load: EndLoad, f: Float64Array): void {
  const along = load.of === 'main' ? 0 : 1;
  const across = 1 - along;
  const middle: Vector = along === 0 ? [load.way * walls.reach[0], 0, walls.axis[0]] : [0, load.way * walls.reach[1], walls.axis[1]]; // prettier-ignore
  const edges = edgesOf(mesh, load, middle[along]!);
  const halves = edges.flatMap(({ a, b, axis }) =>
    [a, b].map((place) => ({ place, axis, from: minus(place, middle), length: Math.hypot(...minus(b, a)) / 2 })),
  );
  const sum = (of: (half: (typeof halves)[number]) => number): number => halves.reduce((s, half) => s + of(half), 0);
  const add = (place: Vector, axis: number, force: number): void => {
    f[6 * mesh.nodeAt(place) + axis]! += force;
  };

  const { force } = load;
  const moment = aboutEnd(load, walls);
  const area = sum(({ length }) => length);
  const upright = sum(({ length, from }) => length * from[2] ** 2);
  const level = sum(({ length, from }) => length * from[across]! ** 2);
  const hand = along === 0 ? 1 : -1; // across × up = ± along
  for (const { place, from, length } of halves)
    add(place, along, length * (force[along]! / area + hand * ((moment[across]! * from[2]) / upright - (moment[2] * from[across]!) / level))); // prettier-ignore
  for (const k of [across, 2]) {
    const sides = halves.filter(({ axis }) => axis === k);
    const all = sides.reduce((s, { length }) => s + length, 0);
    for (const { place, length } of sides) add(place, k, (force[k]! * length) / all);
  }
  // flow q = T/2A along each edge, turning with T
  const turns = edges.map(({ a, b }) => crossProduct(minus(times(plus(a, b), 1 / 2), middle), minus(b, a))[along]!);
  const flow = moment[along]! / turns.reduce((s, turn) => s + Math.abs(turn), 0);
  edges.forEach(({ a, b }, e) => {
    for (const place of [a, b])
      for (const k of [across, 2]) add(place, k, (flow * Math.sign(turns[e]!) * (b[k]! - a[k]!)) / 2);
  });
}

function edgesOf({ patches, nodeAt }: WallMesh, { of }: EndLoad, end: number): readonly Edge[] {
  const along = of === 'main' ? 0 : 1;
  return patches.flatMap(({ patch }) => {
    if (patch.of !== of) return [];
    const [axis, lines] = patch.lines.find(([k]) => k !== along)!;
    const places = Array.from(lines, (v): Vector => {
      const place: [number, number, number] = [0, 0, 0];
      [place[along], place[patch.normal], place[axis]] = [end, patch.at, v];
      return place;
    });
    return places.slice(1).flatMap((b, k) => {
      const a = places[k]!;
      return nodeAt(a) < 0 || nodeAt(b) < 0 ? [] : [{ a, b, axis }];
    });
  });
}
