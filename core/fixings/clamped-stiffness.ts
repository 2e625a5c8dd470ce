import { requirePositive } from '../refusal.ts';

const { log, PI: π, tan } = Math;

/** One layer between head and nut: thickness l in m, modulus E in Pa. */
export interface ClampedLayer {
  readonly l: number;
  readonly E: number;
}

/** Angle of the frustum of pressed material, from the bolt's axis: 30° (Shigley). */
const frustum = π / 6;

/** Stiffness of a frustum of one layer round a bolt of diameter d, that begins with diameter D, N/m:
 *    k = π E d tan α / ln[ (2 l tan α + D - d)(D + d) / ((2 l tan α + D + d)(D - d)) ],   α = 30°
 *  Refuses what is not positive, and D not above d.
 *  Source: Shigley, Mechanical Engineering Design, joints: member stiffness (from memory; its example is a test). */
export function frustumStiffness({ l, E, D, d }: ClampedLayer & { readonly D: number; readonly d: number }): number {
  requirePositive({ l, E, d, 'D - d': D - d });
  const wider = 2 * l * tan(frustum);
  return (π * E * d * tan(frustum)) / log(((wider + D - d) * (D + d)) / ((wider + D + d) * (D - d)));
}

/** Stiffness of clamped layers, from the head to the nut, N/m: two frusta that meet at the middle of the grip, each
 *  layer's parts in series. D: diameter of the washer's or head's face at both ends, d of the bolt, m.
 *  Error: the wall of a tube is taken as if it were backed; a wide plate as if no free edge were within the frustum. */
export function clampedStiffness(
  layers: readonly ClampedLayer[],
  { D, d }: { readonly D: number; readonly d: number },
): number {
  const grip = layers.reduce((sum, { l }) => sum + l, 0);
  let flexibility = 0;
  let at = 0;
  for (const { l, E } of layers) {
    for (const [from, to] of split(at, at + l, grip / 2)) {
      // Measured from the nearer end, where the frustum is narrow.
      const depth = from < grip / 2 ? from : grip - to;
      flexibility += 1 / frustumStiffness({ l: to - from, E, D: D + 2 * depth * tan(frustum), d });
    }
    at += l;
  }
  return 1 / flexibility;
}

const split = (from: number, to: number, middle: number): readonly (readonly [number, number])[] =>
  from < middle && middle < to ? [[from, middle], [middle, to]] : [[from, to]]; // prettier-ignore

/** Stiffness of a bolt whose shank of area A_d and length l_d and thread of stress area A_t and length l_t lie in the grip,
 *  N/m: A_d A_t E / (A_d l_t + A_t l_d). Source: Shigley, the same article (from memory). */
export function boltStiffness({
  A_d,
  A_t,
  l_d,
  l_t,
  E,
}: Readonly<Record<'A_d' | 'A_t' | 'l_d' | 'l_t' | 'E', number>>): number {
  requirePositive({ A_d, A_t, E, grip: l_d + l_t });
  return (A_d * A_t * E) / (A_d * l_t + A_t * l_d);
}
