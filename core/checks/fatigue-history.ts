import { designFatigueFactors, designFatigueFactorSource } from '../fatigue/design-fatigue-factor.ts';
import type { LoadHistory } from '../fatigue/load-history.ts';
import type { Environment } from '../fatigue/sn-curve.ts';
import type { PlateDocument } from '../document/schema.ts';
import type { Model } from '../model.ts';
import { oncePerModel } from '../once-per-model.ts';
import { fromUnit } from '../quantity/format-quantity.ts';
import { missing, type Missing } from './check.ts';

const year = fromUnit(1, 'year');
const standardDeviation = 1 / 4; // of the wave elevation over the significant height

/**
 * How often the force of service swings how far within the life, as ratios of the stated swing; or what is missing.
 * Without a loading of its own every cycle of the year is the stated force: safe for an extreme force, no answer for a mean.
 */
export const historyOf = oncePerModel(({ document, loads }): LoadHistory | Missing => {
  const { service } = document.loads;
  const years = document.basis.life.si / year;
  const swing = 2 * loads.swing.amplitude;
  const loading = document.fatigue?.loading;
  if (!loading)
    return service.level === 'mean'
      ? missing(
          'how the ranges of the force are spread (“fatigue.loading”): a mean force, taken for every cycle, would leave the larger ranges out, which do most of the damage',
        )
      : { kind: 'constant', ratio: 1, cycles: service.cyclesPerYear * years };
  if (loading.kind === 'stated')
    return { kind: 'constant', ratio: loading.range.si / swing, cycles: loading.cyclesPerYear * years };
  if (loading.kind === 'weibull')
    return {
      kind: 'weibull',
      largest: loading.largestRange.si / swing,
      inCycles: loading.inCycles,
      shape: loading.shape,
      cycles: loading.cyclesPerYear * years,
    };
  return {
    kind: 'scatter',
    states: loading.states.map(({ height, period, probability, forcePerMetre = loading.forcePerMetre }) => ({
      deviation: (forcePerMetre.si * height.si * standardDeviation) / swing,
      cycles: (probability * document.basis.life.si) / period.si,
    })),
  };
});

/** What surrounds the details: as stated, else by the protection that the document has. */
export const environmentOf = ({ fatigue, protection }: PlateDocument): Environment =>
  fatigue?.environment ?? (protection.cathodic ? 'protected' : 'free');

/** Design fatigue factor with the reason for it: as stated, else by access and consequence, the gravest where they are not. */
export function factorOf({ fatigue }: PlateDocument): { readonly value: number; readonly reason: string } {
  if (fatigue?.factor) return fatigue.factor;
  const access = fatigue?.access ?? 'none';
  const consequence = fatigue?.consequence ?? 'substantial';
  const stated = fatigue?.access && fatigue.consequence ? '' : ', taken where the document does not say';
  const words = {
    none: 'no access for inspection',
    'under water': 'inspected under water',
    'above water': 'inspected above water',
  };
  return {
    value: designFatigueFactors[access][consequence],
    reason: `${words[access]}, ${consequence} consequence${stated} (${designFatigueFactorSource})`,
  };
}

/** Slams and snaps of the life: all of them taken at the largest of their ranges, as a ratio of the swing. */
export function apartOf({ document, loads }: Model): { readonly cycles: number; readonly ratio: number } {
  const events = document.fatigue?.apart ?? [];
  return {
    cycles: events.reduce((sum, { cycles }) => sum + cycles, 0),
    ratio: events.reduce((most, { range }) => Math.max(most, range.si), 0) / (2 * loads.swing.amplitude),
  };
}
