import type { PlateDocument } from '../document/schema.ts';
import { innerPerimeter } from '../catalogue/inner-perimeter.ts';
import type { Geometry, Tube } from '../geometry/geometry.ts';
import { pieceCentre } from './tube-bodies.ts';
import type { Body } from './body.ts';

/** Metal that tubes and panels lose by the end of life: face × loss, as the checks take it off their strength. A sealed
 *  tube loses nothing inside. Cut edges, bolts, welds and eyes are left whole: their loss weighs little. */
export function corrodedBodies(
  { protection: { lossPerFace } }: PlateDocument,
  { mainTubes, crossTubes, panels }: Geometry,
  panelBodies: readonly Body[],
): Pick<Body, 'mass' | 'volume' | 'centre'>[] {
  const perLength = ({ section, flooded }: Tube): number =>
    section.outerPerimeter * lossPerFace.tubeOutside.si +
    (flooded ? innerPerimeter(section) * lossPerFace.tubeInside.si : 0);
  const tubes = [...mainTubes, ...crossTubes].flatMap((tube) =>
    tube.pieces.map(([from, to]) => {
      const volume = perLength(tube) * (to - from);
      return { volume, mass: tube.material.density * volume, centre: pieceCentre(tube, from, to) };
    }),
  );
  const lost = new Map(panels.map(({ id, thickness, thicknessEnd }) => [id, 1 - thicknessEnd / thickness]));
  return [
    ...tubes,
    ...panelBodies.map(({ mass, volume, centre, panel }) => {
      const part = lost.get(panel!)!;
      return { mass: part * mass, volume: part * volume, centre };
    }),
  ];
}
