import type { PlateDocument } from '../document/schema.ts';
import type { Geometry } from '../geometry/geometry.ts';
import { barInertia, scaled, type Body } from './body.ts';
import { pieceCentre } from './tube-bodies.ts';

/** Dry coating on the outside of tubes and on all faces of panels, cut edges too; plastics and laminates stay bare.
 *  Area × thickness × density; faces that touch are coated (coated before assembly), bores are not. */
export function coatingBodies(
  document: PlateDocument,
  { mainTubes, crossTubes, panels }: Geometry,
  panelBodies: readonly Body[],
): Body[] {
  const { coating } = document.protection;
  if (!coating) return [];
  const film = coating.thickness.si;
  const density = coating.dryDensity.si;
  const as = { name: 'Coating', kind: 'coating', allowance: true } as const;
  const onTubes = [...mainTubes, ...crossTubes].flatMap((tube) =>
    tube.pieces.map(([from, to]): Body => {
      const { section, set } = tube;
      const volume = section.outerPerimeter * (to - from) * film;
      const mass = density * volume;
      // Section inertia of the wall stands for that of the film just outside it.
      const inertia = barInertia(
        set === 'main' ? 'x' : 'y',
        mass,
        to - from,
        section.inertiaY / section.area,
        section.inertiaZ / section.area,
      );
      return { ...as, mass, volume, centre: pieceCentre(tube, from, to), inertia };
    }),
  );
  const byId = new Map(panels.map((panel) => [panel.id, panel]));
  const bare = (family: string): boolean => family === 'thermoplastic' || family === 'laminate';
  const onPanels = panelBodies.flatMap((body) => {
    const panel = byId.get(body.panel!)!;
    if (bare(panel.material.family)) return [];
    const volume = (2 * panel.area + panel.cutLength * panel.thickness) * film;
    return [{ ...scaled(body, (density * volume) / body.mass, as), volume }];
  });
  return [...onTubes, ...onPanels];
}
