import type { Model } from '../model.ts';
import { missing, type Input } from './check.ts';
import { braceAt, chordAt } from './crossing-inputs.ts';
import { correlationOfParts, ultimateOfParts, type WeldedPart } from './weld-strength.ts';

/** The two tubes that meet, walls as ordered. */
export const tubesAt = (model: Model, id: string): readonly WeldedPart[] =>
  [chordAt(model, id), braceAt(model, id)].map(({ material, section }) => ({
    material,
    thickness: section.nominalWall,
  }));

/** Strength and throat of the weld at a crossing, by symbol. */
export const crossingWeldInputs = {
  a_w: {
    unit: 'mm',
    meaning: 'throat at the end of life',
    from: 'document: grid, corrosion',
    read: (model: Model) => {
      const left = model.document.grid.jointThroat.si - model.document.protection.lossPerFace.tubeOutside.si;
      return left > 0 ? left : missing('a throat: corrosion takes all of it within the life');
    },
  },
  f_u: {
    unit: 'MPa',
    meaning: 'ultimate strength of the weaker tube',
    from: 'catalogue: materials',
    read: (model: Model, id: string) => ultimateOfParts(tubesAt(model, id)),
  },
  beta_w: {
    unit: '1',
    meaning: 'correlation factor of fillet welds',
    from: 'catalogue: materials',
    read: (model: Model, id: string) => correlationOfParts(tubesAt(model, id)),
    only: 'partial factors',
  },
} as const satisfies Readonly<Record<string, Input>>;
