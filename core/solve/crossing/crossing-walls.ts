import { spreadLines } from './spread-lines.ts';

/** A rectangular tube by its middle surface: width and height between middles of walls, m. */
export interface WallBox {
  readonly width: number;
  readonly height: number;
  readonly wall: number;
}

/**
 * Two rectangular tubes where they cross, corners sharp at the walls' middle. `flush`: the cross tube ends on the sides of
 * the main tube, tops level, on one side of it or both. `stacked`: it runs over the main tube, joined to its top by two welds
 * along its flanks, over the flat width `weldLength`.
 */
export interface CrossingShape {
  readonly arrangement: 'flush' | 'stacked';
  readonly main: WallBox;
  readonly cross: WallBox;
  /** Of a flush crossing: how far the cross tube's top lies under the main tube's, middles of walls, m. */
  readonly drop: number;
  /** Arms of the cross tube: 1 or 2. A stacked one has 2. */
  readonly arms: 1 | 2;
  /** Throat, m, and length of each flank's weld: of a stacked crossing alone. */
  readonly throat: number;
  readonly weldLength: number;
  readonly E: number;
  readonly nu: number;
}

type PatchLines = readonly [axis: 0 | 1 | 2, at: Float64Array];

/** A flat part of a wall as a lattice: axis `normal` is constant there, the other two run along `lines`. */
export interface WallPatch {
  readonly of: 'main' | 'cross' | 'weld';
  readonly thickness: number;
  readonly normal: 0 | 1 | 2;
  readonly at: number;
  readonly lines: readonly [PatchLines, PatchLines];
  /** Which way along the normal is out of the tube. */
  readonly out: 1 | -1;
}

/** Where a wall's stress is read: cells of a patch from the line `from` of one axis on, in the direction `heading`, for all
 *  cells between `range` of the other axis. */
export interface ToeLine {
  readonly patch: number;
  readonly axis: 0 | 1 | 2;
  readonly from: number;
  readonly heading: 1 | -1;
  readonly range: readonly [number, number];
}

export interface CrossingWalls {
  readonly patches: readonly WallPatch[];
  readonly toes: readonly ToeLine[];
  /** Half the length of the tubes' arms, from the crossing to their ends: main along x, cross along y. m. */
  readonly reach: readonly [main: number, cross: number];
  /** Height of the tubes' axes, m. */
  readonly axis: readonly [main: number, cross: number];
}

/** Arms this many times the tube's larger side: what the ends do not know of the joint has died out, but for distortion,
 *  which their free ends make larger. */
const reachInSides = 2.5;

/** Middle surfaces of a crossing as patches whose lines agree where they meet. `fine`: cells a wall thickness at a toe. */
export function crossingWalls(shape: CrossingShape, fine: number): CrossingWalls {
  return shape.arrangement === 'flush' ? flush(shape, fine) : stacked(shape, fine);
}

/** Lines of both halves about zero, and lines of several parts in order; parts that meet share a line. */
const mirrored = (...parts: readonly (readonly number[])[]): Float64Array => {
  const half = [...joined(...parts)].filter((v) => v > 1e-9);
  const middle = parts.flat().some((v) => Math.abs(v) <= 1e-9) ? [0] : [];
  return Float64Array.from([...half.map((v) => -v).reverse(), ...middle, ...half]);
};
const joined = (...parts: readonly (readonly number[])[]): Float64Array =>
  Float64Array.from(parts.flat().sort((a, b) => a - b).filter((v, i, all) => i === 0 || v - all[i - 1]! > 1e-9)); // prettier-ignore
const between = (lines: Float64Array, low: number, high: number): Float64Array =>
  lines.filter((v) => v >= low - 1e-12 && v <= high + 1e-12);

function flush({ main, cross, arms, drop }: CrossingShape, fine: number): CrossingWalls {
  const [h0, h1] = [main.wall / fine, cross.wall / fine];
  const [bx, by] = [cross.width / 2, main.width / 2];
  const [top, bottom] = [0, -main.height];
  const reach = [bx + reachInSides * Math.max(main.width, main.height), by + reachInSides * Math.max(cross.width, cross.height)] as const; // prettier-ignore
  // a wall of the cross tube that lies nearer to a corner of the main tube than its wall is thick ends on it
  const high = drop < main.wall ? top : -drop;
  const low = -drop - cross.height - main.wall < bottom ? bottom : -drop - cross.height;
  const weld = Math.max(h0, h1);
  const X = mirrored(spreadLines(bx, 0, weld, null, 2 * fine), spreadLines(bx, reach[0], h0, null, 2 * fine));
  const zs = joined(
    spreadLines(low, high, weld, weld, 2 * fine),
    low > bottom ? spreadLines(low, bottom, h0, null, 2 * fine) : [],
    high < top ? spreadLines(high, top, h0, null, 2 * fine) : [],
  );
  const Y0 = mirrored(spreadLines(by, 0, h0, null, 2 * fine));
  const out = spreadLines(by, reach[1], h1, null, 2 * fine);
  const [Xi, Zi] = [between(X, -bx, bx), between(zs, low, high)];
  const patches: WallPatch[] = [
    { of: 'main', thickness: main.wall, normal: 2, at: top, out: 1, lines: [[0, X], [1, Y0]] },
    { of: 'main', thickness: main.wall, normal: 2, at: bottom, out: -1, lines: [[0, X], [1, Y0]] },
  ]; // prettier-ignore
  const toes: ToeLine[] = [];
  for (const side of [1, -1] as const) {
    const face = patches.length;
    const y = side * by;
    patches.push({ of: 'main', thickness: main.wall, normal: 1, at: y, out: side, lines: [[0, X], [2, zs]] }); // prettier-ignore
    if (side < 0 && arms === 1) continue;
    const ys = Float64Array.from(side > 0 ? out : out.map((v) => -v).reverse());
    const arm = { of: 'cross', thickness: cross.wall } as const;
    patches.push(
      { ...arm, normal: 2, at: high, out: 1, lines: [[0, Xi], [1, ys]] },
      { ...arm, normal: 2, at: low, out: -1, lines: [[0, Xi], [1, ys]] },
      { ...arm, normal: 0, at: bx, out: 1, lines: [[1, ys], [2, Zi]] },
      { ...arm, normal: 0, at: -bx, out: -1, lines: [[1, ys], [2, Zi]] },
    ); // prettier-ignore
    const inward = -side as 1 | -1;
    // on the cross tube's own walls nothing is read within its corners: they are round, and the sharp fold here is not there
    const [flat, upright] = [
      [-bx + cross.wall, bx - cross.wall],
      [low + cross.wall, high - cross.wall],
    ] as const;
    toes.push(
      { patch: face, axis: 0, from: bx, heading: 1, range: [low, high] },
      { patch: face, axis: 0, from: -bx, heading: -1, range: [low, high] },
      high < top
        ? { patch: face, axis: 2, from: high, heading: 1, range: [-bx, bx] }
        : { patch: 0, axis: 1, from: y, heading: inward, range: [-bx, bx] },
      low > bottom
        ? { patch: face, axis: 2, from: low, heading: -1, range: [-bx, bx] }
        : { patch: 1, axis: 1, from: y, heading: inward, range: [-bx, bx] },
      { patch: face + 1, axis: 1, from: y, heading: side, range: flat },
      { patch: face + 2, axis: 1, from: y, heading: side, range: flat },
      { patch: face + 3, axis: 1, from: y, heading: side, range: upright },
      { patch: face + 4, axis: 1, from: y, heading: side, range: upright },
    ); // prettier-ignore
  }
  return { patches, toes, reach, axis: [bottom / 2, (high + low) / 2] };
}

function stacked({ main, cross, throat, weldLength }: CrossingShape, fine: number): CrossingWalls {
  const [h0, h1] = [main.wall / fine, cross.wall / fine];
  const [bx, by, end] = [cross.width / 2, main.width / 2, weldLength / 2];
  const reach = [bx + reachInSides * Math.max(main.width, main.height), by + reachInSides * Math.max(cross.width, cross.height)] as const; // prettier-ignore
  const [top, bottom] = [-main.wall / 2, -main.wall / 2 - main.height];
  const [low, high] = [cross.wall / 2, cross.wall / 2 + cross.height];
  const weld = Math.max(h0, h1);
  const X = mirrored(spreadLines(0, bx, 2 * weld, weld, fine), spreadLines(bx, reach[0], h0, null, 2 * fine));
  const onMain = [...spreadLines(0, end, 2 * weld, h1, fine), ...spreadLines(end, by, h1, null, 2 * fine)];
  const Y0 = mirrored(onMain);
  // the cross tube's lines are those of the main tube over its width, and go on beyond
  const step = onMain.at(-1)! - onMain.at(-2)!;
  const Y1 = mirrored(onMain, spreadLines(by, reach[1], step, null, 1));
  const Xi = between(X, -bx, bx);
  const Z0 = Float64Array.from(spreadLines(top, bottom, h0, null, 2 * fine)).sort();
  const Z1 = Float64Array.from(spreadLines(low, high, h1, null, 2 * fine));
  const Zw = Float64Array.of(top, low);
  const [m, c] = [
    { of: 'main', thickness: main.wall },
    { of: 'cross', thickness: cross.wall },
  ] as const;
  const patches: WallPatch[] = [
    { ...m, normal: 2, at: top, out: 1, lines: [[0, X], [1, Y0]] },
    { ...m, normal: 2, at: bottom, out: -1, lines: [[0, X], [1, Y0]] },
    { ...m, normal: 1, at: by, out: 1, lines: [[0, X], [2, Z0]] },
    { ...m, normal: 1, at: -by, out: -1, lines: [[0, X], [2, Z0]] },
    { ...c, normal: 2, at: low, out: -1, lines: [[0, Xi], [1, Y1]] },
    { ...c, normal: 2, at: high, out: 1, lines: [[0, Xi], [1, Y1]] },
    { ...c, normal: 0, at: bx, out: 1, lines: [[1, Y1], [2, Z1]] },
    { ...c, normal: 0, at: -bx, out: -1, lines: [[1, Y1], [2, Z1]] },
    { of: 'weld', thickness: throat, normal: 0, at: bx, out: 1, lines: [[1, between(Y0, -end, end)], [2, Zw]] },
    { of: 'weld', thickness: throat, normal: 0, at: -bx, out: -1, lines: [[1, between(Y0, -end, end)], [2, Zw]] },
  ]; // prettier-ignore
  const toes: ToeLine[] = [];
  for (const side of [1, -1] as const) {
    const x = side * bx;
    const flank = side > 0 ? 6 : 7;
    toes.push(
      { patch: 0, axis: 0, from: x, heading: side, range: [-end, end] },
      { patch: flank, axis: 2, from: low, heading: 1, range: [-end, end] },
    );
    // where the welds end: along the corner of the cross tube, and in the main tube's top beyond the end
    const inside = [Math.min(x, x - side * h0), Math.max(x, x - side * h0)] as const;
    const outside = [Math.min(x, x + side * h0), Math.max(x, x + side * h0)] as const;
    for (const way of [1, -1] as const)
      toes.push(
        { patch: flank, axis: 1, from: way * end, heading: way, range: [low, low + h1] },
        { patch: 4, axis: 1, from: way * end, heading: way, range: inside },
        { patch: 0, axis: 1, from: way * end, heading: way, range: outside },
        { patch: 0, axis: 1, from: way * end, heading: way, range: inside },
      );
  }
  return { patches, toes, reach, axis: [(top + bottom) / 2, (low + high) / 2] };
}
