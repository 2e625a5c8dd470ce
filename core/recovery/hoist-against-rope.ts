import type { Model } from '../model.ts';
import { seaSpectrum } from '../water/waves/sea-spectrum.ts';
import { peakOverZeroCrossing, piersonMoskowitz } from '../water/waves/spectrum.ts';
import { waveBand } from '../water/waves/wave-band.ts';
import type { LiftLoad } from './lift-load.ts';
import { liftOf, openLiftOf, type Lift } from './lift-stages.ts';
import { hoistPeriod } from './wave-zone.ts';

/** Natural period of the plate under water on the hoist line, with its panels and without. SI. */
export interface HoistAgainstRope {
  /** Line between hook and plate, m, rising to the depth of the plate. */
  readonly out: readonly number[];
  readonly closed: readonly number[];
  readonly open: readonly number[];
  /** Periods of the waves: of the stated sea, without one of that of the lift. */
  readonly waves: { readonly shortest: number; readonly longest: number };
}

const points = 40;

/**
 * The line alone is the spring, its stiffness as stated at the plate's depth and in inverse proportion to its length; hook, crane and
 * vessel are taken as stiff, which makes the periods no longer than they are. Null where no lift is described.
 */
export function hoistAgainstRope(model: Model): HoistAgainstRope | null {
  const [lift, open] = [liftOf(model), openLiftOf(model)];
  if (!lift || !open) return null;
  const depth = model.document.water.depth.si;
  const out = Array.from({ length: points }, (_, i) => (depth * (i + 1)) / points);
  const period = ({ mass, entrained, addedMass, lineMass, fields }: LiftLoad) => (length: number): number =>
    hoistPeriod(mass + entrained + addedMass, (lineMass * length) / depth, (fields.line.stiffness.si * depth) / length); // prettier-ignore
  return { out, closed: out.map(period(lift.load)), open: out.map(period(open.load)), waves: wavesOf(model, lift) };
}

function wavesOf({ document }: Model, { sea: { Hs, Tz } }: Lift): HoistAgainstRope['waves'] {
  const stated = document.hydrodynamics?.sea;
  if (stated) return waveBand(seaSpectrum(stated), (2 * Math.PI) / stated.peakPeriod.si);
  const Tp = peakOverZeroCrossing * Tz;
  return waveBand(piersonMoskowitz(Hs, Tp), (2 * Math.PI) / Tp);
}
