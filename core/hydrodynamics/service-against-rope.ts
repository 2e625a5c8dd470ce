import type { Model } from '../model.ts';
import type { HeaveSystem } from '../motion/heave-system.ts';
import { naturalPeriods } from '../motion/natural-periods.ts';
import { seaSpectrum } from '../water/waves/sea-spectrum.ts';
import { waveBand } from '../water/waves/wave-band.ts';
import { heaveSystemOf } from './heave-system-of.ts';
import { lineStiffness, linkStiffness } from './link-stiffness.ts';
import { openGridSystem } from './open-grid-motion.ts';

/** Natural periods in service under water, s, longest first, against the line between float and plate. SI. */
export interface ServiceAgainstRope {
  /** Line out, m, and with it the periods: one list a mode. */
  readonly out: readonly number[];
  readonly closed: readonly (readonly number[])[];
  /** Of the grid without panels; null where the stated motion does not give its added mass. */
  readonly open: readonly (readonly number[])[] | null;
  /** The longest with panels while the power take-off stands at its stop: the line alone is the spring. */
  readonly stopped: readonly number[];
  /** The stated length, m, and all periods there with the power take-off at its stop. */
  readonly length: number;
  readonly locked: { readonly closed: readonly number[]; readonly open: readonly number[] | null };
  /** Between them lie nine tenths of the stated sea's energy; null without a sea. */
  readonly waves: { readonly shortest: number; readonly longest: number } | null;
}

const points = 40;
/** Of the stated length, the least and the most line out that is shown. */
const [least, most] = [0.05, 1.5];

/**
 * Line and power take-off as springs in a row, the line's in inverse proportion to its length; no added mass changes with the
 * depth. From a plate at the float's draught to one on the bed, within a twentieth and one and a half of the stated line.
 * addedMass: of the plate with its panels, kg. Null where line or system is not stated.
 */
export function serviceAgainstRope(model: Model, addedMass: number): ServiceAgainstRope | null {
  const { system: stated, sea, bed } = model.document.hydrodynamics ?? {};
  if (!stated?.line) return null;
  const made = heaveSystemOf(model, addedMass, 0);
  if ('missing' in made) return null;
  const bare = openGridSystem(model);
  const length = stated.line.length.si;
  const depth = model.document.water.depth.si;
  const from = Math.max(least * length, length - depth + (stated.float?.draught.si ?? 0));
  const to = Math.min(most * length, bed ? length + bed.si - depth : Infinity);
  const out = Array.from({ length: points }, (_, i) => from + (i / (points - 1)) * (to - from));
  const modesOf = (system: HeaveSystem): number[][] => {
    const all = out.map((one) => naturalPeriods(withStiffness(system, linkStiffness(stated, one - length))));
    return all[0]!.map((_, mode) => all.map((periods) => periods[mode]!));
  };
  const { axialStiffness } = stated.line;
  const lockedOf = (system: HeaveSystem) => naturalPeriods(withStiffness(system, lineStiffness(stated)!));
  return {
    ...{ out, length },
    closed: modesOf(made.system),
    open: bare && modesOf(bare),
    stopped: out.map((one) => naturalPeriods(withStiffness(made.system, axialStiffness.si / one))[0]!),
    locked: { closed: lockedOf(made.system), open: bare && lockedOf(bare) },
    waves: sea ? waveBand(seaSpectrum(sea), (2 * Math.PI) / sea.peakPeriod.si) : null,
  };
}

const withStiffness = (system: HeaveSystem, stiffness: number): HeaveSystem => ({
  ...system,
  link: { ...system.link, stiffness },
});
