import type { Vector } from './body.ts';

/** A sum of weights and its centre. */
export interface Centred {
  readonly sum: number;
  readonly centre: Vector;
}

/** Sum and centre of weights (masses or volumes) at points. The sum must not be zero. */
export function centreOf(weights: readonly { readonly weight: number; readonly at: Vector }[]): Centred {
  let [sum, x, y, z] = [0, 0, 0, 0];
  for (const { weight, at } of weights) {
    sum += weight;
    x += weight * at[0];
    y += weight * at[1];
    z += weight * at[2];
  }
  return { sum, centre: [x / sum, y / sum, z / sum] };
}
