import { modelOf } from '../../appraise.ts';
import { catalogueWith, type Catalogue } from '../../catalogue/catalogue.ts';
import type { PlateDocument } from '../../document/schema.ts';
import type { SpreadInput } from '../../document/spreads-field.ts';
import { userRows } from '../../document/user-rows.ts';
import type { Model } from '../../model.ts';
import type { Quantity } from '../../quantity/kinds.ts';

/** The model of a document with inputs multiplied by factors, each 1 where it is not named; forces by hand. */
export function variedModel(
  { forces: _forces, ...document }: PlateDocument,
  factors: Readonly<Partial<Record<SpreadInput, number>>>,
): Model {
  const by = (input: SpreadInput) => factors[input] ?? 1;
  const times = (quantity: Quantity, factor: number): Quantity => ({ ...quantity, si: quantity.si * factor });
  const { loads, protection } = document;
  const { liftOut } = loads;
  const varied: PlateDocument = {
    ...document,
    designs: Object.fromEntries(
      Object.entries(document.designs).map(([name, design]) => [
        name,
        {
          ...design,
          thickness: times(design.thickness, by('thickness')),
          overlap: {
            ...design.overlap,
            onMain: times(design.overlap.onMain, by('overlap')),
            onCross: times(design.overlap.onCross, by('overlap')),
          },
        },
      ]),
    ),
    protection: {
      ...protection,
      lossPerFace: {
        ...protection.lossPerFace,
        panel: times(protection.lossPerFace.panel, by('loss')),
        tubeOutside: times(protection.lossPerFace.tubeOutside, by('loss')),
        tubeInside: times(protection.lossPerFace.tubeInside, by('loss')),
      },
    },
    loads: {
      ...loads,
      service: { ...loads.service, force: times(loads.service.force, by('force')) },
      ...(liftOut
        ? { liftOut: { ...liftOut, dragCoefficient: { ...liftOut.dragCoefficient, value: liftOut.dragCoefficient.value * by('drag') } } } // prettier-ignore
        : {}),
    },
  };
  return modelOf(varied, null, withYield(catalogueWith(userRows(varied)), by('yield')));
}

/** A catalogue whose materials yield at a factor of what is tabled. */
const withYield = (catalogue: Catalogue, factor: number): Catalogue =>
  factor === 1
    ? catalogue
    : {
        ...catalogue,
        material: (id) => {
          const material = catalogue.material(id);
          return {
            ...material,
            yieldStrength: material.yieldStrength.map((step) => ({ ...step, value: step.value * factor })),
            ...(material.heatAffected
              ? { heatAffected: { ...material.heatAffected, yield: material.heatAffected.yield * factor } }
              : {}),
          };
        },
      };
