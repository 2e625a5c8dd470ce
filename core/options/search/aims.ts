import type { PlateDocument, Rates } from '../../document/schema.ts';
import type { Geometry } from '../../geometry/geometry.ts';
import type { MassReport } from '../../mass/mass-report.ts';
import { refusal } from '../../refusal.ts';
import { costOfRates } from '../cost-of-rates.ts';
import { countedWork } from '../counted-work.ts';
import type { WaterGain } from './water-aims.ts';

/** What a search may aim at. `use`: the governing utilisation, so its smallest is the largest margin. */
export const aimIds = ['mass', 'weight', 'cost', 'holes', 'use', 'addedMass', 'drag'] as const;
export type AimId = (typeof aimIds)[number];

export const aimWords: Readonly<Record<AimId, { readonly title: string; readonly unit: string }>> = {
  mass: { title: 'Mass in air', unit: 'kg' },
  weight: { title: 'Weight in water', unit: 'kN' },
  cost: { title: 'Cost by the rates given', unit: '1' },
  holes: { title: 'Holes drilled', unit: '1' },
  use: { title: 'Governing utilisation', unit: '1' },
  addedMass: { title: 'Added mass gained', unit: 'kg' },
  drag: { title: 'Drag area gained', unit: 'm^2' },
};

/** Aims by the water, over the grid without panels: wanted large, and no sum over bays. */
export type WaterAim = keyof WaterGain;
export const isWaterAim = (aim: AimId): aim is WaterAim => aim === 'addedMass' || aim === 'drag';

/** The search compares numbers of which less is better: what is wanted large it takes below zero. Its own inverse. */
export const asSmall = (aim: AimId, value: number): number => (isWaterAim(aim) ? 0 - value : value);

/** Aims that geometry and mass decide, without loads: by these an option is put aside before anything is solved. */
export type PlainAims = Readonly<Record<'mass' | 'weight' | 'cost' | 'holes', number>>;

/** Without rates the cost is no aim, and stands as zero for every option. */
export function plainAims(geometry: Geometry, mass: MassReport, rates: Rates | undefined): PlainAims {
  const work = countedWork(geometry);
  return {
    mass: mass.total,
    weight: mass.submergedWeight.asBuilt,
    cost: costOfRates(work, rates).total ?? 0,
    holes: work.holes,
  };
}

/** An aim's part of the plain aims; zero for the aims that are none of them. */
export const plainPart = (aim: AimId, plain: PlainAims): number => (aim === 'use' || isWaterAim(aim) ? 0 : plain[aim]);

/** Refuses an aim that cannot be had for this document, and says what it waits for. */
export function requireAims(
  aims: readonly AimId[],
  { rates, hydrodynamics }: Pick<PlateDocument, 'rates' | 'hydrodynamics'>,
): void {
  for (const aim of aims) {
    if (aim === 'drag' && !hydrodynamics?.motion)
      throw refusal({
        what: 'The aim “drag” needs the motion that the plate is to resist, and none is stated',
        where: { path: 'hydrodynamics.motion' },
        mend: 'State amplitude and period, or aim at added mass, which still water has too.',
      });
    if (aim === 'cost' && !rates)
      throw refusal({
        what: 'The aim “cost” needs your own rates, and the document has none',
        where: { path: 'rates' },
        mend: 'Give "rates" with its currency and source, or leave the aim out.',
      });
  }
  if (new Set(aims).size !== aims.length)
    throw refusal({ what: 'An aim is named twice', where: { option: 'aims' }, mend: 'Name each aim once.' });
}

/** Aims that differ by less than this part are equal: masses are sums, and sums in another order differ in their last bits. */
export const sameAim = 1e-9;

/** What a comparison of two options looks at. */
export interface Standing {
  /** So that less is better, see `asSmall`. */
  readonly aims: readonly number[];
  /** Ids of the checks that cannot be judged somewhere, sorted: it passes for all that is known, no more. */
  readonly open: readonly string[];
}

/**
 * True where `a` is nowhere worse than `b` and somewhere better. A check that `a` leaves open and `b` does not is worse: what nobody
 * judged puts nothing aside that was. Leaving fewer open is better. For `b` bounds do: the least of its aims with some of what it
 * leaves open, or nothing of it.
 */
export function dominates(a: Standing, b: Standing): boolean {
  if (!a.open.every((check) => b.open.includes(check))) return false;
  let better = a.open.length < b.open.length;
  for (let i = 0; i < a.aims.length; i++) {
    const [own, other] = [a.aims[i]!, b.aims[i]!];
    const slack = sameAim * Math.max(Math.abs(own), Math.abs(other));
    if (own > other + slack) return false;
    if (own < other - slack) better = true;
  }
  return better;
}
