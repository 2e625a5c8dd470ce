import type { Box, Scene, SceneBolts, ScenePart, Vector } from './scene.ts';

/** A line of sight: a point, and a direction of any length. */
export interface Ray {
  readonly origin: Vector;
  readonly direction: Vector;
}

/** A section: what lies above (or below) a plane square to an axis is taken away. m */
export interface Cut {
  readonly axis: 'x' | 'y' | 'z';
  readonly at: number;
  readonly away: 'above' | 'below';
}

export interface Hit {
  /** Number of the part. */
  readonly part: number;
  readonly point: Vector;
  /** Corners of the triangle that was met, where they are drawn. */
  readonly corners: readonly [Vector, Vector, Vector];
}

type Triple = [number, number, number];

/**
 * The first part that a ray meets, seen from either side; null for none. `apart`: how far panels are pulled off, m a
 * unit of lift; what a cut takes away is not met. Boxes first, nearest first, then the triangles of those alone.
 */
export function partAt(scene: Scene, ray: Ray, apart: number, cut: Cut | null): Hit | null {
  const candidates = scene.parts
    .flatMap((part, number) => {
      const enters = entry(part.box, lowered(ray, part.lift * apart));
      return enters === null ? [] : [{ part, number, enters }];
    })
    .sort((a, b) => a.enters - b.enters);
  let best: { distance: number; hit: Hit } | null = null;
  for (const { part, number, enters } of candidates) {
    if (best && enters > best.distance) break;
    const met = firstTriangle(scene, part, lowered(ray, part.lift * apart), part.lift * apart, cut);
    if (met && (!best || met.distance < best.distance))
      best = { distance: met.distance, hit: { part: number, point: met.point, corners: met.corners } };
  }
  return best?.hit ?? null;
}

/** True where a cut takes a point away. */
export const isCutAway = (point: Vector, cut: Cut | null): boolean => {
  if (!cut) return false;
  const off = point[cut.axis === 'x' ? 0 : cut.axis === 'y' ? 1 : 2] - cut.at;
  return cut.away === 'above' ? off > 0 : off < 0;
};

const lowered = ({ origin, direction }: Ray, by: number): Ray => ({
  origin: [origin[0], origin[1], origin[2] - by],
  direction,
});

/** How far along a ray it enters a box; null where it misses. */
function entry({ low, high }: Box, { origin, direction }: Ray): number | null {
  let [near, far] = [-Infinity, Infinity];
  for (const axis of [0, 1, 2] as const) {
    const [o, d] = [origin[axis], direction[axis]];
    if (d === 0) {
      if (o < low[axis] || o > high[axis]) return null;
      continue;
    }
    const [a, b] = [(low[axis] - o) / d, (high[axis] - o) / d];
    near = Math.max(near, Math.min(a, b));
    far = Math.min(far, Math.max(a, b));
  }
  return near > far ? null : near;
}

interface Met {
  readonly distance: number;
  readonly point: Vector;
  readonly corners: readonly [Vector, Vector, Vector];
}

function firstTriangle(scene: Scene, part: ScenePart, ray: Ray, raised: number, cut: Cut | null): Met | null {
  const set = part.kind === 'bolt' ? scene.bolts[part.mesh]! : null;
  const { positions, indices } = set ?? scene.meshes[part.mesh]!;
  const [from, count] = set ? [0, indices.length] : [part.from, part.count];
  const stand = set ? placed(set, part.from) : null;
  const local = stand ? stand.inside(ray) : ray;
  const shown = (p: Vector): Vector => {
    const [x, y, z] = stand ? stand.outside(p) : p;
    return [x, y, z + raised];
  };
  const corner = (i: number): Triple => {
    const k = 3 * indices[i]!;
    return [positions[k]!, positions[k + 1]!, positions[k + 2]!];
  };
  let best: Met | null = null;
  for (let i = from; i < from + count; i += 3) {
    const [a, b, c] = [corner(i), corner(i + 1), corner(i + 2)];
    const distance = meets(local, a, b, c);
    if (distance === null || (best && distance >= best.distance)) continue;
    const point = shown(along(local, distance));
    if (!isCutAway(point, cut)) best = { distance, point, corners: [shown(a), shown(b), shown(c)] };
  }
  return best;
}

const along = ({ origin: o, direction: d }: Ray, s: number): Vector => [
  o[0] + s * d[0],
  o[1] + s * d[1],
  o[2] + s * d[2],
];

/** Into and out of the axes of a bolt: moved, and for one that points down turned half round x. */
function placed({ placements }: SceneBolts, i: number) {
  const at = [0, 1, 2].map((axis) => placements[4 * i + axis]!) as Triple;
  const up = placements[4 * i + 3]!;
  const outside = ([x, y, z]: Vector): Vector => [at[0] + x, at[1] + up * y, at[2] + up * z];
  const inside = ({ origin: o, direction: d }: Ray): Ray => ({
    origin: [o[0] - at[0], up * (o[1] - at[1]), up * (o[2] - at[2])],
    direction: [d[0], up * d[1], up * d[2]],
  });
  return { inside, outside };
}

/** How far along a ray it meets a triangle: o + s d = a + p (b − a) + q (c − a), by Cramer's rule. */
function meets({ origin, direction: d }: Ray, a: Triple, b: Triple, c: Triple): number | null {
  const e: Triple = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const f: Triple = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  const n = cross(d, f);
  const volume = dot(e, n);
  if (volume === 0) return null;
  const t: Triple = [origin[0] - a[0], origin[1] - a[1], origin[2] - a[2]];
  const p = dot(t, n) / volume;
  if (p < 0 || p > 1) return null;
  const m = cross(t, e);
  const q = dot(d, m) / volume;
  return q < 0 || p + q > 1 ? null : dot(f, m) / volume;
}

const cross = (a: Vector, b: Vector): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
