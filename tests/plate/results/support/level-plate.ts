import type { Model } from '../../../../core/model.ts';
import { plateStructure } from '../../../../core/plate/mesh/plate-structure.ts';
import { factoriser, type ReadyPlate } from '../../../../core/plate/solve-plate.ts';
import { lumpedMasses } from '../../../../core/solve/structure/lumped-mass.ts';
import { partElements } from '../../../../core/solve/structure/part-elements.ts';
import type { Structure } from '../../../../core/solve/structure/structure.ts';

/** A plate whose structure is changed by hand before it is made ready; masses of the tubes and panels alone. */
export function changedPlate(model: Model, size: number, change: (structure: Structure) => Structure): ReadyPlate {
  return plateOf(model, size, change(plateStructure(model, { size, levels: 'as built' })));
}

/** The tubes alone, all in one plane: what the exact grillage of the hand checks is. */
export function levelGrid(model: Model, size: number): ReadyPlate {
  const without = new Set(model.geometry.panels.map(({ id }) => id));
  return plateOf(model, size, plateStructure(model, { size, levels: 'level', without }));
}

function plateOf(model: Model, size: number, structure: Structure): ReadyPlate {
  const { mainTubes, crossTubes, panels } = model.geometry;
  const masses = lumpedMasses(
    structure,
    [...mainTubes, ...crossTubes].map(({ section, material }) => material.density * section.area),
    structure.panels.map(({ id }) => {
      const { material, thickness } = panels.find((panel) => panel.id === id)!;
      return material.density * thickness;
    }),
  );
  return { model, structure, ...partElements(structure), masses, factorise: factoriser(), size };
}
