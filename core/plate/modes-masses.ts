import type { Model } from '../model.ts';
import { lumpedMasses, type PointMass } from '../solve/structure/lumped-mass.ts';
import type { Structure } from '../solve/structure/structure.ts';

/** What of the plate has inertia every way, kg at points: panels' plates where they are; steel of tubes with all else that
 *  the plate has (fasteners, welds, coating, extras) spread along it; in water also what fills the flooded tubes, where it
 *  is. Sums to the masses that the loads move. */
export function plateMassesIn(
  { geometry, mass, loads }: Model,
  structure: Structure,
  medium: 'air' | 'water',
): PointMass[] {
  const tubes = [...geometry.mainTubes, ...geometry.crossTubes];
  const panels = new Map(geometry.panels.map((panel) => [panel.id, panel]));
  const none = tubes.map(() => 0);
  const plates = lumpedMasses(
    { ...structure, beams: [] },
    none,
    structure.panels.map(({ id }) => panels.get(id)!.material.density * panels.get(id)!.thickness),
  );
  const along = (perLength: readonly number[], total: number): PointMass[] => {
    const points = lumpedMasses({ ...structure, shells: [] }, perLength, []);
    const sum = totalOf(points);
    return sum > 0 ? points.map((point) => ({ ...point, mass: (point.mass * total) / sum })) : [];
  };
  const { mass: dry, movingMass } = loads.plate;
  const steel = along(
    tubes.map(({ section, material }) => material.density * section.nominalArea),
    dry - totalOf(plates),
  );
  if (medium === 'air') return [...plates, ...steel];
  const inside = along(
    tubes.map(({ section, flooded }) => (flooded ? mass.waterDensity * section.innerArea : 0)),
    movingMass - dry,
  );
  return [...plates, ...steel, ...inside];
}

const totalOf = (points: readonly PointMass[]): number => points.reduce((sum, { mass }) => sum + mass, 0);
