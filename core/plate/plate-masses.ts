import type { Tube } from '../geometry/geometry.ts';
import type { Model } from '../model.ts';
import { lumpedMasses, type PointMass } from '../solve/structure/lumped-mass.ts';
import type { Structure } from '../solve/structure/structure.ts';

/** What of the plate has inertia every way, kg at points: panels' plates where they are; steel of tubes with all else that
 *  the plate has (fasteners, welds, coating, extras) spread along it; in water also what fills the flooded tubes, where it
 *  is. Sums to the masses that the loads move. */
export function plateMassesIn(model: Model, structure: Structure, medium: 'air' | 'water'): PointMass[] {
  const { mass: dry, movingMass } = model.loads.plate;
  const plates = plateMasses(model, structure);
  const steel = spread(structure, steelOf(model), dry - totalOf(plates));
  if (medium === 'air') return [...plates, ...steel];
  return [...plates, ...steel, ...spread(structure, waterIn(model), movingMass - dry)];
}

/** The same in water with all that is on the tubes spread along steel and water together: as the loads by hand spread it. */
export function movingMasses(model: Model, structure: Structure): PointMass[] {
  const plates = plateMasses(model, structure);
  const water = waterIn(model);
  const both = steelOf(model).map((kg, i) => kg + water[i]!);
  return [...plates, ...spread(structure, both, model.loads.plate.movingMass - totalOf(plates))];
}

function plateMasses({ geometry }: Model, structure: Structure): PointMass[] {
  const panels = new Map(geometry.panels.map((panel) => [panel.id, panel]));
  const perArea = structure.panels.map(({ id }) => {
    const { material, thickness } = panels.get(id)!;
    return material.density * thickness;
  });
  return lumpedMasses({ ...structure, beams: [] }, [], perArea);
}

/** A total spread along the tubes in proportion to what each has for its length. */
function spread(structure: Structure, perLength: readonly number[], total: number): PointMass[] {
  const points = lumpedMasses({ ...structure, shells: [] }, perLength, []);
  const sum = totalOf(points);
  return sum > 0 ? points.map((point) => ({ ...point, mass: (point.mass * total) / sum })) : [];
}

const tubesOf = ({ geometry }: Model): Tube[] => [...geometry.mainTubes, ...geometry.crossTubes];
const steelOf = (model: Model): number[] =>
  tubesOf(model).map(({ section, material }) => material.density * section.nominalArea);
const waterIn = (model: Model): number[] =>
  tubesOf(model).map(({ section, flooded }) => (flooded ? model.mass.waterDensity * section.innerArea : 0));

const totalOf = (points: readonly PointMass[]): number => points.reduce((sum, { mass }) => sum + mass, 0);
