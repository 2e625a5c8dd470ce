import type { Model } from '../model.ts';
import type { Check, Missing } from './check.ts';
import type { curveOfCategory, DetailClass } from './fatigue-damage.ts';
import { carbonSteel } from './fatigue-steel.ts';
import { partsAt, weldAt } from './weld-inputs.ts';
import { weldDirectional } from './weld-directional.ts';
import { weldThroat } from './weld-throat.ts';
import { panelAt } from './field-inputs.ts';

/** The strength check that gives the forces of a panel's weld: of whichever method the document judges by. */
export const panelWeld = (model: Model, bay: string): Check =>
  weldAt(model, bay).method === 'throat' ? weldThroat : weldDirectional;

/** A class at a panel's weld, for steel; the panel is the part that is as thick as the detail. */
export const weldClass =
  (category: keyof typeof curveOfCategory) =>
  (model: Model, bay: string): DetailClass | Missing => {
    for (const { material } of partsAt(model, bay)) {
      const other = carbonSteel(material);
      if (other) return other;
    }
    return { category, thickness: panelAt(model, bay).thickness };
  };
