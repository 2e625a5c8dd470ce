import { hydrodynamicsOf } from '../hydrodynamics/hydrodynamics-of.ts';
import { motionInWave, type MotionInWave } from '../hydrodynamics/motion-in-wave.ts';
import type { Model } from '../model.ts';
import { allowedHeight, liftOf } from '../recovery/lift-stages.ts';
import { heaviestStage } from '../recovery/recovery-report.ts';
import type { Spread } from '../water/spread.ts';
import type { WaterQuantity } from '../water/water-report.ts';
import { costOfRates } from './cost-of-rates.ts';
import { countedWork } from './counted-work.ts';

/** A number that could be had, or why it cannot. */
export type Known<T> = T | { readonly missing: string };

/** What the panels of a model gain in the water, and by what they weigh and cost. SI. */
export interface WaterGains {
  readonly addedMass: Known<Spread>;
  /** On the outline, at the stated motion. */
  readonly dragCoefficient: Known<Spread>;
  readonly dragArea: Known<Spread>;
  /** Peak force of the water on the plate in the stated motion, N. */
  readonly atMotion: Known<Spread>;
  /** Under its float in a wave of the stated sea. */
  readonly atWave: Known<MotionInWave>;
  /** Over the grid without panels in the stated motion: kg, m². */
  readonly gained: Known<Gain>;
  /** For each kg of panels and fasteners. */
  readonly perKg: Known<Gain>;
  /** For each unit of the user's currency. */
  readonly perCost: Known<Gain>;
  /** What it costs on the lines: the heaviest stage of the lift with the sea that all stages allow at the period stated; the pull of service. */
  readonly lift: Known<{ readonly hook: number; readonly stage: string; readonly allowedHeight: number }>;
  readonly line: Known<{ readonly pull: number; readonly direction: 'up' | 'down' }>;
}

export interface Gain {
  readonly addedMass: number;
  /** Null where edges' drag is not known at this motion. */
  readonly dragArea: number | null;
}

export function waterGains(model: Model): WaterGains {
  const { document, mass, geometry } = model;
  const { report, open, curve } = hydrodynamicsOf(model);
  const reasons = new Map(report.unjudged.map(({ id, reason }) => [id, reason]));
  const area = report.quantities['drag.referenceArea']!.value;
  const of = (id: string, needs = id): Known<Spread> => {
    const missing = reasons.get(needs) ?? reasons.get('addedMass.heave');
    return missing === undefined ? spread(report.quantities[id]!) : { missing };
  };
  // Outside the tests behind the edges' drag a coefficient is no answer to compare options by.
  const drag = (id: string): Known<Spread> => of(id, reasons.has('drag.edge') ? 'drag.edge' : id);
  const gained: Known<Gain> = open
    ? {
        addedMass: open.closed.addedMass - open.bare.addedMass,
        dragArea:
          open.closed.drag === null || open.bare.drag === null ? null : area * (open.closed.drag - open.bare.drag),
      }
    : { missing: 'no motion is stated to compare the open grid in' };
  const steel = mass.parts.reduce((sum, { kind, mass: own }) => sum + (kind === 'panels' || kind === 'fasteners' ? own : 0), 0); // prettier-ignore
  const cost = costOfRates(countedWork(geometry), document.rates);
  const per = (by: number, without: string): Known<Gain> =>
    'missing' in gained ? gained : by > 0 ? { addedMass: gained.addedMass / by, dragArea: gained.dragArea === null ? null : gained.dragArea / by } : { missing: without }; // prettier-ignore
  return {
    addedMass: of('addedMass.heave'),
    dragCoefficient: drag('drag.coefficient'),
    dragArea: drag('drag.area'),
    atMotion: drag('force.peak'),
    atWave: motionInWave(model, curve, area),
    gained,
    lift: liftPrice(model),
    line: linePrice(model),
    perKg: per(steel, 'it has no panels'),
    perCost: cost.total === null ? { missing: document.rates ? `rates not stated: ${cost.missing.join(', ')}` : 'no rates are stated' } : per(cost.total, 'nothing of it costs anything'), // prettier-ignore
  };
}

function liftPrice(model: Model): WaterGains['lift'] {
  const lift = liftOf(model);
  if (!lift) return { missing: 'no lift is described' };
  const { hook, title } = heaviestStage(lift);
  return { hook, stage: title.toLowerCase(), allowedHeight: allowedHeight(lift, lift.sea.Tz, () => true) };
}

/** The suspension's whole pull, upright, in the worst case of service without a part lost; load factor counted. The worst of each attachment is added: no less than the true sum. */
function linePrice({ loads }: Model): WaterGains['line'] {
  const pulls = loads.situations
    .filter(({ loadCase, accidental, missing }) => loadCase === 'service' && !accidental && missing === undefined)
    .map(({ direction, attachmentForces }) => ({
      direction,
      pull: Math.abs([...attachmentForces.values()].reduce((sum, force) => sum + force, 0)),
    }));
  if (pulls.length === 0) return { missing: 'no case of service is given' };
  return pulls.reduce((most, one) => (one.pull > most.pull ? one : most));
}

/** In potential flow there is no spread but the lattice's own error. */
function spread({ value, low, high, error = 0 }: WaterQuantity): Spread {
  return { low: low ?? value * (1 - error), best: value, high: high ?? value * (1 + error) };
}
