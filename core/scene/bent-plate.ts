import type { Field } from './field.ts';
import type { PlateShape, ShapePanel, ShapeTube } from './plate-shape.ts';

/** Surfaces of the moved plate: panels with both faces and edges, tubes swept along their axes with open ends. Where a vertex
 *  stands at scale s: position + s · move; its normal: normal + s · turn × normal, made a unit. SI. */
export interface BentPlate {
  /** 3 a vertex. */
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly moves: Float32Array;
  readonly turns: Float32Array;
  /** Of each vertex the lift of its part when panels are pulled off, and its place in the list of all panels' nodes followed
   *  by all tubes' stations. */
  readonly lifts: Float32Array;
  readonly sources: Uint32Array;
  /** First source that is a tube's. */
  readonly firstOfTubes: number;
  /** 3 a triangle, anticlockwise from outside. */
  readonly triangles: Uint32Array;
  /** 2 a line: rims of panels, ends and corners of tubes. */
  readonly lines: Uint32Array;
}

class Growing {
  readonly positions: number[] = [];
  readonly normals: number[] = [];
  readonly moves: number[] = [];
  readonly turns: number[] = [];
  readonly lifts: number[] = [];
  readonly sources: number[] = [];
  readonly triangles: number[] = [];
  readonly lines: number[] = [];

  /** A point off node k of a part by a rigid arm. */
  put(of: ShapePanel | ShapeTube, k: number, arm: Vector, normal: Vector, lift: number, source: number): number {
    const { places, moves, turns } = of;
    const [x, y, z] = [turns[3 * k]!, turns[3 * k + 1]!, turns[3 * k + 2]!];
    const [a, b, c] = arm;
    this.positions.push(places[3 * k]! + a, places[3 * k + 1]! + b, places[3 * k + 2]! + c);
    this.moves.push(
      moves[3 * k]! + y * c - z * b,
      moves[3 * k + 1]! + z * a - x * c,
      moves[3 * k + 2]! + x * b - y * a,
    );
    this.turns.push(x, y, z);
    this.normals.push(...normal);
    this.lifts.push(lift);
    this.sources.push(source);
    return this.sources.length - 1;
  }

  quad(a: number, b: number, c: number, d: number): void {
    this.triangles.push(a, b, c, a, c, d);
  }
}

type Vector = readonly [number, number, number];

export function bentPlate({ panels, tubes }: PlateShape): BentPlate {
  const into = new Growing();
  let source = 0;
  for (const panel of panels) {
    addPanel(into, panel, source);
    source += panel.places.length / 3;
  }
  const firstOfTubes = source;
  for (const tube of tubes) {
    addTube(into, tube, source);
    source += tube.at.length;
  }
  return {
    positions: Float32Array.from(into.positions),
    normals: Float32Array.from(into.normals),
    moves: Float32Array.from(into.moves),
    turns: Float32Array.from(into.turns),
    lifts: Float32Array.from(into.lifts),
    sources: Uint32Array.from(into.sources),
    firstOfTubes,
    triangles: Uint32Array.from(into.triangles),
    lines: Uint32Array.from(into.lines),
  };
}

function addPanel(into: Growing, panel: ShapePanel, source: number): void {
  const { places, cells, thickness, lift } = panel;
  const face = (h: number): number[] =>
    Array.from({ length: places.length / 3 }, (_, k) =>
      into.put(panel, k, [0, 0, h], [0, 0, Math.sign(h)], lift, source + k),
    );
  const [top, bottom] = [face(thickness / 2), face(-thickness / 2)];
  /** Ways along cells' sides by both ends; a side that only one cell has is the panel's rim. */
  const ways = new Map<string, readonly [number, number]>();
  for (let p = 0; p < cells.length; p += 4) {
    const [a, b, c, d] = [cells[p]!, cells[p + 1]!, cells[p + 2]!, cells[p + 3]!];
    into.quad(top[a]!, top[b]!, top[c]!, top[d]!);
    into.quad(bottom[d]!, bottom[c]!, bottom[b]!, bottom[a]!);
    for (const [from, to] of [
      [a, b],
      [b, c],
      [c, d],
      [d, a],
    ] as const)
      // prettier-ignore
      if (!ways.delete(`${to} ${from}`)) ways.set(`${from} ${to}`, [from, to]);
  }
  for (const [from, to] of ways.values()) {
    const [dx, dy] = [places[3 * to]! - places[3 * from]!, places[3 * to + 1]! - places[3 * from + 1]!];
    const length = Math.hypot(dx, dy);
    const out: Vector = [dy / length, -dx / length, 0];
    const corner = (k: number, h: number): number => into.put(panel, k, [0, 0, h], out, lift, source + k);
    const h = thickness / 2;
    const [a, b, c, d] = [corner(from, -h), corner(to, -h), corner(to, h), corner(from, h)];
    into.quad(a, b, c, d);
    into.lines.push(a, b, c, d);
  }
}

function addTube(into: Growing, tube: ShapeTube, source: number): void {
  const { at, outline, wall, along: [x, y] } = tube; // prettier-ignore
  const corners = outline.length / 4;
  /** A point of the section at a station: so far inside its outline. */
  const point = (k: number, i: number, inside: number, normal?: Vector): number => {
    const [u, v, n, m] = [outline[4 * i]!, outline[4 * i + 1]!, outline[4 * i + 2]!, outline[4 * i + 3]!];
    const across = u - inside * n;
    return into.put(tube, k, [-y * across, x * across, v - inside * m], normal ?? [-y * n, x * n, m], 0, source + k);
  };
  const isEdge = Array.from({ length: corners }, (_, i) => isCorner(outline, i));
  let before: number[] | null = null;
  for (let k = 0; k < at.length; k++) {
    const ring = Array.from({ length: corners }, (_, i) => point(k, i, 0));
    // two sections at one place, where something jumps, have no skin between them
    if (before && at[k]! > at[k - 1]!)
      for (let i = 0; i < corners; i++) {
        const j = (i + 1) % corners;
        into.quad(before[i]!, before[j]!, ring[j]!, ring[i]!);
        if (isEdge[i]) into.lines.push(before[i]!, ring[i]!);
      }
    before = ring;
  }
  for (const [k, way] of [
    [0, -1],
    [at.length - 1, 1],
  ] as const) {
    // prettier-ignore
    const normal: Vector = [way * x, way * y, 0];
    const rim = (inside: number): number[] => Array.from({ length: corners }, (_, i) => point(k, i, inside, normal));
    const [outer, inner] = [rim(0), rim(wall)];
    for (let i = 0; i < corners; i++) {
      const j = (i + 1) % corners;
      if (way > 0) into.quad(outer[i]!, outer[j]!, inner[j]!, inner[i]!);
      else into.quad(outer[j]!, outer[i]!, inner[i]!, inner[j]!);
      into.lines.push(outer[i]!, outer[j]!);
    }
  }
}

/** The middle of a rounded corner, or a sharp one; a round tube has none. */
function isCorner(outline: Float32Array, i: number): boolean {
  const j = (4 * i + 4) % outline.length;
  const isSharp = outline[4 * i] === outline[j] && outline[4 * i + 1] === outline[j + 1];
  const isDiagonal = Math.abs(Math.abs(outline[4 * i + 2]!) - Math.abs(outline[4 * i + 3]!)) < 1e-3;
  return isSharp || (isDiagonal && outline.length <= 4 * 12);
}

/** What a vertex shows under a field, 2 numbers each: its value, and 0 where it has none, 1 where it has, 2 where it is hot. */
export function fieldOnVertices({ sources, firstOfTubes }: BentPlate, { panels, tubes, hot, on }: Field): Float32Array {
  const nodes = panels ? panels.flatMap((list) => [...list]) : null;
  const stations = tubes ? tubes.flatMap((list) => [...list]) : null;
  const isHot = on === 'panels' ? hot.flatMap((list) => [...list]) : null;
  const out = new Float32Array(2 * sources.length);
  sources.forEach((source, v) => {
    const value = source < firstOfTubes ? nodes?.[source] : stations?.[source - firstOfTubes];
    if (value === undefined) return;
    out[2 * v] = value;
    out[2 * v + 1] = source < firstOfTubes && isHot?.[source] ? 2 : 1;
  });
  return out;
}
