import type { Field, Panel, Spans } from '../geometry/geometry.ts';
import type { Situation } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { yieldOf } from '../catalogue/strength-at-thickness.ts';
import { missing, type Input, type Reading } from './check.ts';
import { partialFactor } from './partial-factor.ts';

/** Places of checks on a panel's part over one bay: the bay's id. */
export const fieldPlaces = (model: Model): readonly string[] => [...model.fields.keys()];

export const fieldAt = (model: Model, bay: string): Field => model.fields.get(bay) as Field;
export const panelAt = (model: Model, bay: string): Panel => model.panels.get(fieldAt(model, bay).panel) as Panel;

/**
 * True when the pressure on the field pulls the panel off its tubes; false when it presses it on. The pressure's own sign
 * decides: weight or inertia can turn it against the situation's direction.
 */
export const isPulled = (model: Model, bay: string, situation: Situation): boolean => {
  const pressure = situation.pressures.get(bay) ?? 0;
  const up = pressure === 0 ? situation.direction === 'up' : pressure > 0;
  return (panelAt(model, bay).design.side === 'topside') === up;
};

/** The spans that hold in the situation's direction. */
export const spansAt = (model: Model, bay: string, situation: Situation): Spans => {
  const field = fieldAt(model, bay);
  return isPulled(model, bay, situation) ? field.pulled : field.pressed;
};

const read = (value: (model: Model, bay: string, situation: Situation) => Reading) => value;

/** Inputs that the checks of a panel field share, by symbol. `p` is a size: its direction is in the situation. */
export const fieldInputs = {
  p: {
    unit: 'kPa',
    meaning: 'pressure on the panel field, load factor included',
    from: 'loads: share',
    read: read((_, bay, situation) => Math.abs(situation.pressures.get(bay) ?? NaN)),
  },
  a: {
    unit: 'mm',
    meaning: 'span between cross tubes, along x',
    from: 'geometry',
    read: read((model, bay, situation) => spansAt(model, bay, situation).a),
  },
  b: {
    unit: 'mm',
    meaning: 'span between main tubes, along y',
    from: 'geometry',
    read: read((model, bay, situation) => spansAt(model, bay, situation).b),
  },
  t: {
    unit: 'mm',
    meaning: 'thickness at the end of life',
    from: 'document: designs, corrosion',
    read: read((model, bay) => panelAt(model, bay).thicknessEnd),
  },
  E: {
    unit: 'GPa',
    meaning: 'modulus of elasticity',
    from: 'catalogue: materials',
    read: read((model, bay) => modulusOf(panelAt(model, bay))),
  },
  nu: {
    unit: '1',
    meaning: "Poisson's ratio",
    from: 'catalogue: materials',
    read: read((model, bay) => panelAt(model, bay).material.poisson),
  },
  f_y: {
    unit: 'MPa',
    meaning: 'yield strength of the panel',
    from: 'catalogue: materials',
    read: read((model, bay) => yieldOfPanel(panelAt(model, bay))),
  },
} as const satisfies Readonly<Record<string, Input>>;

/** Materials of the panel over a bay: one. */
export const materialsOfPanel = (model: Model, bay: string) => [panelAt(model, bay).material];

/** Partial factor on yielding of the panel. */
export const panelYieldFactor = partialFactor('gamma_M0', 'partial factor on yielding', materialsOfPanel);

/** Modulus under the load's duration; plastics and laminates need the document's own. */
function modulusOf({ material, design }: Panel): Reading {
  if (material.longTermModulus === undefined) return material.youngModulus;
  return design.longTerm
    ? design.longTerm.modulus.si
    : missing(`the modulus of ${material.title} under the load's duration ("longTerm" of the panel design)`);
}

/** Yield strength; heat-affected beside welds in aluminium; long-term strength of plastics is no yield strength. */
function yieldOfPanel({ material, design, thickness }: Panel): Reading {
  if (material.judged === 'no published rule')
    return missing(`a published design rule for ${material.title}: none is held`);
  if (material.heatAffected && design.fixing.kind === 'welded') return material.heatAffected.yield;
  return yieldOf(material, thickness);
}
