import type { Ray } from '../../core/scene/part-at.ts';
import type { Box, Vector } from '../../core/scene/scene.ts';

/**
 * How the plate is looked at: without perspective, so that lengths can be compared and dimension lines hold.
 * Angles in rad: azimuth of the eye in plan (0 on the x axis, −π/2 in front of the main tubes), elevation above level.
 */
export interface View {
  readonly target: Vector;
  readonly azimuth: number;
  readonly elevation: number;
  /** Pixels a metre. */
  readonly scale: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

export const viewNames = ['plan', 'side', 'end', 'oblique'] as const;
export type ViewName = (typeof viewNames)[number];

const { PI: π, cos, sin, max, min } = Math;

/** Where the eye stands for each named view. Side: across the main tubes; end: along them. */
export const directions: Readonly<Record<ViewName, Pick<View, 'azimuth' | 'elevation'>>> = {
  plan: { azimuth: -π / 2, elevation: π / 2 },
  side: { azimuth: -π / 2, elevation: 0 },
  end: { azimuth: 0, elevation: 0 },
  oblique: { azimuth: (-62 * π) / 180, elevation: (32 * π) / 180 },
};

/** Unit vectors of a view: to the right and up on the screen, and from the plate to the eye. */
export interface Axes {
  readonly right: Vector;
  readonly up: Vector;
  readonly eye: Vector;
}

export function axesOf({ azimuth: a, elevation: e }: Pick<View, 'azimuth' | 'elevation'>): Axes {
  return {
    right: [-sin(a), cos(a), 0],
    up: [-sin(e) * cos(a), -sin(e) * sin(a), cos(e)],
    eye: [cos(e) * cos(a), cos(e) * sin(a), sin(e)],
  };
}

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const plus = (a: Vector, s: number, b: Vector): Vector => [a[0] + s * b[0], a[1] + s * b[1], a[2] + s * b[2]];

/** Place of a point on the screen, px from the left and from the top. */
export function projected(point: Vector, view: View, { width, height }: Size): readonly [number, number] {
  const { right, up } = axesOf(view);
  const from = minus(point, view.target);
  return [width / 2 + view.scale * dot(from, right), height / 2 - view.scale * dot(from, up)];
}

/** Line of sight through a place on the screen, from far before the plate. */
export function rayThrough(x: number, y: number, view: View, { width, height }: Size): Ray {
  const { right, up, eye } = axesOf(view);
  const across = plus(view.target, (x - width / 2) / view.scale, right);
  const origin = plus(plus(across, (height / 2 - y) / view.scale, up), far, eye);
  return { origin, direction: [-eye[0], -eye[1], -eye[2]] };
}

/** Distance of the eye from the target, m: beyond any plate and its water. */
export const far = 1000;

/** The eight corners of a box. */
export const cornersOf = ({ low, high }: Box): Vector[] =>
  [0, 1, 2, 3, 4, 5, 6, 7].map((i) => [i & 1 ? high[0] : low[0], i & 2 ? high[1] : low[1], i & 4 ? high[2] : low[2]]);

/** The same direction, moved and scaled so that a box fills the screen but for a margin, px. */
export function fitted(
  direction: Pick<View, 'azimuth' | 'elevation'>,
  box: Box,
  { width, height }: Size,
  margin = 0,
): View {
  const { right, up, eye } = axesOf(direction);
  const corners = cornersOf(box);
  const span = (axis: Vector) => {
    const along = corners.map((corner) => dot(corner, axis));
    return { middle: (min(...along) + max(...along)) / 2, length: max(...along) - min(...along) };
  };
  const [u, v, w] = [span(right), span(up), span(eye)];
  const room = (length: number): number => max(length - 2 * margin, length / 4);
  const scale = min(room(width) / u.length, room(height) / v.length);
  const target = plus(plus(plus([0, 0, 0], u.middle, right), v.middle, up), w.middle, eye);
  return { ...direction, target, scale };
}

/** Turned by a drag of so many pixels; half a turn across 600 px. */
export const orbited = (view: View, dx: number, dy: number): View => ({
  ...view,
  azimuth: view.azimuth - (dx * π) / 600,
  elevation: max(-π / 2, min(π / 2, view.elevation + (dy * π) / 600)),
});

/** Moved so that the plate follows the pointer. */
export function panned(view: View, dx: number, dy: number): View {
  const { right, up } = axesOf(view);
  return { ...view, target: plus(plus(view.target, -dx / view.scale, right), dy / view.scale, up) };
}

/** Enlarged about a place on the screen, which stays where it is. */
export function zoomed(view: View, factor: number, x: number, y: number, { width, height }: Size): View {
  const scale = max(2, min(20_000, view.scale * factor));
  const { right, up } = axesOf(view);
  const moved = 1 / view.scale - 1 / scale;
  const target = plus(plus(view.target, (x - width / 2) * moved, right), (height / 2 - y) * moved, up);
  return { ...view, scale, target };
}

/** Part of the way from one view to another, the short way round. */
export function between(from: View, to: View, part: number): View {
  const s = part * part * (3 - 2 * part);
  const turn = ((((to.azimuth - from.azimuth + π) % (2 * π)) + 2 * π) % (2 * π)) - π;
  return {
    target: plus(from.target, s, minus(to.target, from.target)),
    azimuth: from.azimuth + s * turn,
    elevation: from.elevation + s * (to.elevation - from.elevation),
    scale: from.scale * (to.scale / from.scale) ** s,
  };
}

/** True where dimension lines in plan hold: seen from above, x to the right. */
export const isPlan = ({ azimuth, elevation }: View): boolean =>
  elevation > π / 2 - 0.01 && Math.abs(sin(azimuth) + 1) < 1e-3;
