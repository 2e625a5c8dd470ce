import type { Rates } from '../../document/schema.ts';
import type { Geometry } from '../../geometry/geometry.ts';
import type { MassReport } from '../../mass/mass-report.ts';
import { refusal } from '../../refusal.ts';
import { costOfRates } from '../cost-of-rates.ts';
import { countedWork } from '../counted-work.ts';

/** What a search may aim at; each is wanted small. `use`: the governing utilisation, so its smallest is the largest margin. */
export const aimIds = ['mass', 'weight', 'cost', 'holes', 'use', 'drag', 'addedMass'] as const;
export type AimId = (typeof aimIds)[number];

export const aimWords: Readonly<Record<AimId, { readonly title: string; readonly unit: string }>> = {
  mass: { title: 'Mass in air', unit: 'kg' },
  weight: { title: 'Weight in water', unit: 'kN' },
  cost: { title: 'Cost by the rates given', unit: '1' },
  holes: { title: 'Holes drilled', unit: '1' },
  use: { title: 'Governing utilisation', unit: '1' },
  drag: { title: 'Drag', unit: 'N' },
  addedMass: { title: 'Added mass', unit: 'kg' },
};

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

/** Refuses an aim that cannot be had for this document, and says what it waits for. */
export function requireAims(aims: readonly AimId[], rates: Rates | undefined): void {
  for (const aim of aims) {
    if (aim === 'drag' || aim === 'addedMass')
      throw refusal({
        what: `The aim “${aim}” (${aimWords[aim].title.toLowerCase()}) cannot be had yet: loads are those that the document states, and no option is judged by the water it moves`,
        where: { option: 'aims' },
        mend: 'Aim at mass, weight, cost, holes or use.',
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

/** True where `a` is nowhere worse than `b` and somewhere better. */
export function dominates(a: readonly number[], b: readonly number[]): boolean {
  let better = false;
  for (let i = 0; i < a.length; i++) {
    const slack = sameAim * Math.max(Math.abs(a[i]!), Math.abs(b[i]!));
    if (a[i]! > b[i]! + slack) return false;
    if (a[i]! < b[i]! - slack) better = true;
  }
  return better;
}
