import type { PlateShape } from './plate-shape.ts';
import { plateRigidity, type UniformPlate } from './uniform-plate.ts';

/** What a plate kernel answers, in SI. Deflections in m, moments per unit width in N·m/m, positive where the far face
 *  (away from the pressure) is in tension; magnitudes where it says "largest". */
export interface PlateAnswer {
  readonly deflectionCentre: number;
  /** Largest magnitude anywhere, read on a grid. */
  readonly deflectionLargest: number;
  /** Moment that bends strips along x, and along y, at the centre. */
  readonly momentXCentre: number;
  readonly momentYCentre: number;
  /** Largest magnitude of a principal moment anywhere, edges included, excluded discs left out. */
  readonly momentLargest: number;
  /** Moment across the middle of the held edges x = 0, a (Mx) and y = 0, b (My); 0 where the edge is not held. */
  readonly momentEdgeX: number;
  readonly momentEdgeY: number;
  /** 6 √(Mx² - Mx My + My² + 3 Mxy²) / t²: von Mises stress of bending and twisting at the worst point, Pa. On a hinged
   *  plate that can be the corner, where the twist is largest. */
  readonly stressLargest: number;
  /** Where stressLargest is: [x, y] in m from the corner. Of equal points, the first by x, then y. */
  readonly largestAt: readonly [number, number];
  /** Largest supporting force per length of supported edge, N/m, as a magnitude, its middle nine tenths; 0 without. */
  readonly edgeReactionLargest: number;
  /** Force that holds a corner down, N, from 2 |Mxy| there; 0 where no supported edges meet a twist. */
  readonly cornerForce: number;
  /** Estimate of the relative error of the series or polynomials (not of thin plate theory itself). */
  readonly error: number;
  /** The same in units a = D = q = 1, with its map; shared between calls, not to be changed. */
  readonly shape: PlateShape;
}

/** Brings a shape to SI: w by q a⁴/D, moments by q a², reactions by q a, corner force by q a². */
export function plateAnswer(plate: UniformPlate, shape: PlateShape): PlateAnswer {
  const { a, t, q } = plate;
  const w = (q * a ** 4) / plateRigidity(plate);
  const M = q * a ** 2;
  return {
    deflectionCentre: w * shape.deflectionCentre,
    deflectionLargest: Math.abs(w) * shape.deflectionLargest,
    momentXCentre: M * shape.momentXCentre,
    momentYCentre: M * shape.momentYCentre,
    momentLargest: Math.abs(M) * shape.momentLargest,
    momentEdgeX: M * shape.momentEdgeX,
    momentEdgeY: M * shape.momentEdgeY,
    stressLargest: (6 * Math.abs(M) * shape.momentVonMises) / t ** 2,
    largestAt: [a * shape.largestAt[0], a * shape.largestAt[1]],
    edgeReactionLargest: Math.abs(q) * a * shape.edgeReactionLargest,
    cornerForce: M * shape.cornerForce,
    error: shape.error,
    shape,
  };
}
