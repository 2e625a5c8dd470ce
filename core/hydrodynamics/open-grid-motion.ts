import { growthOn } from '../mass/growth-on.ts';
import type { MassReport } from '../mass/mass-report.ts';
import type { Model } from '../model.ts';
import type { HeaveSystem } from '../motion/heave-system.ts';
import { naturalPeriods } from '../motion/natural-periods.ts';
import { heaveSystemOf } from './heave-system-of.ts';
import { hydrodynamicsOf } from './hydrodynamics-of.ts';
import { openGrid } from './open-grid.ts';

/** Float and the grid without panels and their growth, added mass at the stated motion and no drag; null without a motion. */
export function openGridSystem(model: Model): HeaveSystem | null {
  const { open } = hydrodynamicsOf(model);
  if (!open) return null;
  const made = heaveSystemOf({ document: model.document, mass: bareMass(model) }, open.bare.addedMass, 0);
  return 'missing' in made ? null : made.system;
}

/** Natural periods in heave of that, s. */
export function openGridPeriods(model: Model): readonly number[] | null {
  const system = openGridSystem(model);
  return system && naturalPeriods(system);
}

function bareMass(model: Model): MassReport {
  const { mass, document } = model;
  const gone = mass.parts.filter(({ kind }) => kind === 'panels' || kind === 'fasteners');
  const sum = (of: (part: (typeof gone)[number]) => number): number => gone.reduce((all, part) => all + of(part), 0);
  return {
    ...mass,
    total: mass.total - sum((part) => part.mass),
    displaced: { ...mass.displaced, asBuilt: mass.displaced.asBuilt - sum(({ volume }) => volume) },
    growth: growthOn(document, openGrid(model).geometry),
  };
}
