import type { PlateDocument } from '../document/schema.ts';
import type { Geometry } from '../geometry/geometry.ts';
import { growthOf, growthOnTube } from '../water/marine-growth.ts';
import type { Vector } from './body.ts';
import { centreOf } from './centre-of.ts';
import { pieceCentre } from './tube-bodies.ts';

/** Marine growth on the plate after the stated years. SI. */
export interface GrowthMass {
  readonly thickness: number;
  readonly density: number;
  readonly mass: number;
  readonly volume: number;
  /** Of the tubes' part. */
  readonly onTubes: { readonly mass: number; readonly centre: Vector };
}

/**
 * Growth on all four faces of the tubes out to square corners, and on both faces of the panels; where panels lie on tubes or
 * tubes cross it is counted on both, which makes it no lighter. Null where none is stated or grown.
 */
export function growthOn(document: PlateDocument, { mainTubes, crossTubes, panels }: Geometry): GrowthMass | null {
  const growth = growthOf(document);
  if (!growth) return null;
  const { thickness, density } = growth;
  const { sum, centre } = centreOf(
    [...mainTubes, ...crossTubes].flatMap(
      (tube) =>
      tube.pieces.map(([from, to]) => ({ weight: growthOnTube(tube.section.width, tube.section.height, growth) * (to - from), at: pieceCentre(tube, from, to) })), // prettier-ignore
    ),
  );
  const mass = sum + panels.reduce((all, { area }) => all + 2 * thickness * density * area, 0);
  return { thickness, density, mass, volume: mass / density, onTubes: { mass: sum, centre } };
}
