import type { PlateDocument } from '../document/schema.ts';
import { localGravity } from '../water/sea-water.ts';
import { decay, waveNumber } from '../water/waves/dispersion.ts';
import { extremes, type Extremes } from '../water/waves/extremes.ts';
import { longTermHeight, type StateInTime } from '../water/waves/long-term.ts';
import { seaSpectrum } from '../water/waves/sea-spectrum.ts';
import { jonswap, moment, zeroCrossingOver, type Spectrum } from '../water/waves/spectrum.ts';

/** Water that rises at the surface, and at the plate undisturbed. Heights from trough to crest, m. */
export interface SurfaceAndPlate<T> {
  readonly surface: T;
  readonly plate: T;
}

/** Rise of the water in a sea: standard deviation, m, and mean zero-crossing period, s. */
export interface Rise {
  readonly sigma: number;
  readonly period: number;
}

/** The largest waves of the stated storm, heights. */
export interface StormExtremes {
  /** s. */
  readonly duration: number;
  readonly rise: SurfaceAndPlate<Rise>;
  readonly height: SurfaceAndPlate<Extremes>;
}

/** Of a storm of a sea state, s: common practice, no source. */
export const usualStorm = 3 * 3600;

/** Largest waves of the stated sea by Rayleigh, at the surface and at the plate. Null where no sea is stated. */
export function stormExtremes(document: Pick<PlateDocument, 'water' | 'hydrodynamics'>): StormExtremes | null {
  const sea = document.hydrodynamics?.sea;
  if (!sea) return null;
  const duration = sea.duration?.si ?? usualStorm;
  const S = seaSpectrum(sea);
  const peak = (2 * Math.PI) / sea.peakPeriod.si;
  const rise = { surface: riseOf(S, peak, () => 1), plate: riseOf(S, peak, atPlate(document)) };
  const height = ({ sigma, period }: Rise): Extremes => extremes(2 * sigma, period, duration);
  return { duration, rise, height: { surface: height(rise.surface), plate: height(rise.plate) } };
}

/** What a scatter table says of the long run. */
export interface LongTerm {
  readonly years: number;
  /** Height exceeded once in so many years. */
  readonly height: SurfaceAndPlate<number>;
  /** Significant heights over all states: mean by their counts, and largest. */
  readonly meanHeight: number;
  readonly largestHeight: number;
  /** Part of the time in which the water's significant height at the plate is at most 1/4, 1/2, 1 m. */
  readonly calm: readonly { readonly height: number; readonly part: number }[];
}

/** Null where no scatter table is stated. */
export function longTerm(document: Pick<PlateDocument, 'water' | 'hydrodynamics'>): LongTerm | null {
  const scatter = document.hydrodynamics?.scatter;
  if (!scatter) return null;
  const all = scatter.states.reduce((sum, { count }) => sum + count, 0);
  const peakOf = scatter.period === 'peak' ? 1 : 1 / zeroCrossingOver(scatter.peakedness);
  const down = atPlate(document);
  const perMetre = new Map<number, SurfaceAndPlate<Rise>>();
  const states = scatter.states
    .filter(({ count }) => count > 0)
    .map(({ height, period, count }) => {
      const Tp = peakOf * period.si;
      const S = jonswap(1, Tp, scatter.peakedness);
      const unit = perMetre.get(Tp) ?? { surface: riseOf(S, (2 * Math.PI) / Tp, () => 1), plate: riseOf(S, (2 * Math.PI) / Tp, down) }; // prettier-ignore
      perMetre.set(Tp, unit);
      const of = ({ sigma, period: mean }: Rise): StateInTime => ({ sigma: height.si * sigma, period: mean, part: count / all }); // prettier-ignore
      return { surface: of(unit.surface), plate: of(unit.plate), height: height.si, part: count / all };
    });
  const years = scatter.returnPeriod;
  return {
    years,
    height: {
      surface: longTermHeight(states.map(({ surface }) => surface), years), // prettier-ignore
      plate: longTermHeight(states.map(({ plate }) => plate), years), // prettier-ignore
    },
    meanHeight: states.reduce((sum, { height, part }) => sum + part * height, 0),
    largestHeight: Math.max(...states.map(({ height }) => height)),
    calm: [0.25, 0.5, 1].map((height) => ({ height, part: states.reduce((sum, { plate, part }) => sum + (4 * plate.sigma <= height ? part : 0), 0) })), // prettier-ignore
  };
}

/** Rise at the plate over that at the surface, squared, of each frequency. */
function atPlate(document: Pick<PlateDocument, 'water' | 'hydrodynamics'>): Spectrum {
  const { water, hydrodynamics } = document;
  const [gravity, bed] = [localGravity(document), hydrodynamics?.bed?.si ?? Infinity];
  return (omega) => decay(waveNumber(omega, bed, gravity), bed, -water.depth.si) ** 2;
}

function riseOf(S: Spectrum, near: number, part: Spectrum): Rise {
  const [m0, m2] = [moment(S, 0, near, part), moment(S, 2, near, part)];
  return { sigma: Math.sqrt(m0), period: 2 * Math.PI * Math.sqrt(m0 / m2) };
}
