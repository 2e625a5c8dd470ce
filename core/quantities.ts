import type { CheckRow } from './checks/check-row.ts';
import { valuesAt } from './checks/evaluate-check.ts';
import { weldDirectional } from './checks/weld-directional.ts';
import { weldThroat } from './checks/weld-throat.ts';
import { weldLengthOf } from './geometry/weld-length-of.ts';
import { testedWater } from './hydrodynamics/tested-water.ts';
import type { Model } from './model.ts';

/** A computed quantity in SI, by id. */
export interface NamedQuantity {
  readonly value: number;
  readonly unit: string;
  readonly title: string;
  readonly source: string;
}
export type Quantities = Readonly<Record<string, NamedQuantity>>;

/** Quantities that are the largest demand of certain checks at a bay, over all situations. */
const demands: readonly {
  readonly id: string;
  readonly checks: readonly string[];
  readonly unit: string;
  readonly title: string;
}[] = [
  {
    id: 'panel.*.stress',
    checks: ['panel-bending-four-sides', 'panel-bending-two-sides', 'panel-bending-bolts'],
    unit: 'Pa',
    title: 'Largest bending stress of the panel, all situations, load factors included',
  },
  {
    id: 'panel.*.deflection',
    checks: ['panel-deflection-four-sides', 'panel-deflection-two-sides', 'panel-deflection-bolts'],
    unit: 'm',
    title: 'Largest deflection of the panel, all situations, without load factors',
  },
  {
    id: 'bolt.*.shear',
    checks: ['bolt-shear'],
    unit: 'N',
    title: 'Largest shear of a bolt, all situations, load factors included',
  },
  {
    id: 'bolt.*.tension',
    checks: ['bolt-tension'],
    unit: 'N',
    title: 'Largest tension of a bolt, all situations, load factors included',
  },
];

/** Every quantity of a model, SI, with the ids that the command line keeps. */
export function quantitiesOf(model: Model, rows: readonly CheckRow[]): Quantities {
  const { mass, geometry, loads } = model;
  const all: Record<string, NamedQuantity> = {};
  const put = (id: string, value: number, unit: string, title: string, source: string) => {
    all[id] = { value, unit, title, source };
  };
  const { areas, panels } = geometry;
  put('mass.air', mass.total, 'kg', 'Mass in air', 'mass: sum of parts');
  put('mass.panels', mass.panels, 'kg', 'Mass of the panels in air, without fixings', 'mass: net area by thickness');
  put(
    'mass.entrained',
    mass.entrainedWater,
    'kg',
    'Water inside flooded tubes: part of the moving mass, never of the weight',
    'mass: bores of flooded tubes',
  );
  put(
    'volume.displaced',
    mass.displaced.asBuilt,
    'm^3',
    'Displaced volume as built, sealed tubes with their bore',
    'mass: sum of parts',
  );
  put('weight.submerged', mass.submergedWeight.asBuilt, 'N', 'Weight in water as built', 'mass: weight less buoyancy');
  put(
    'weight.submerged.flooded',
    mass.submergedWeight.flooded,
    'N',
    'Weight in water, all tubes flooded',
    'mass: weight less buoyancy',
  );
  put(
    'weight.submerged.sealed',
    mass.submergedWeight.sealed,
    'N',
    'Weight in water, all tubes sealed',
    'mass: weight less buoyancy',
  );
  put(
    'weight.submerged.least',
    mass.least.water.weight,
    'N',
    'Least weight in water, where weight helps: as built, less allowances, coating and what corrodes',
    'mass: weight less buoyancy, less what may be missing',
  );
  put('area.outline', areas.outline, 'm^2', 'Plan area of the outline', 'geometry: rectangle around the tubes');
  put('area.solid', areas.solid, 'm^2', 'Plan area covered by tubes and panels', 'geometry: union of outlines');
  put('area.open', areas.open, 'm^2', 'Open plan area', 'geometry: outline less solid');
  put('ratio.open', areas.open / areas.outline, '1', 'Open part of the outline', 'geometry');
  const tested = testedWater(model);
  if (tested && !('missing' in tested)) {
    const source = `tank test “${tested.test.title}”, record ${tested.test.record.hash.slice(0, 16)}…`;
    put('tested.addedMass', tested.addedMass.value, 'kg', 'Added mass by the test that the design uses', source);
    put('tested.dragCoefficient', tested.dragCoefficient.value, '1', 'Drag coefficient by the test that the design uses', source); // prettier-ignore
    put('tested.dragArea', tested.area, 'm^2', 'Area that this drag coefficient refers to', source);
  }
  const heaviest = panels.reduce(
    (most, panel) => Math.max(most, panel.area * panel.thickness * panel.material.density),
    0,
  );
  const sum = (of: (panel: (typeof panels)[number]) => number) => panels.reduce((total, panel) => total + of(panel), 0);
  put(
    'cost.plateArea',
    sum((panel) => panel.area),
    'm^2',
    'Plate in the panels, net',
    'geometry',
  );
  put(
    'cost.cutLength',
    sum((panel) => panel.cutLength),
    'm',
    'Length of cut edges, contours and holes',
    'geometry',
  );
  put(
    'cost.holes',
    sum((panel) => panel.cutouts.length),
    '1',
    'Holes in the panels',
    'geometry',
  );
  put(
    'cost.bolts',
    sum((panel) => panel.bolts.length),
    '1',
    'Bolts',
    'geometry',
  );
  put('cost.weldLength', sum(weldLengthOf), 'm', 'Weld length of the panels', 'geometry');
  put('cost.heaviestPanel', heaviest, 'kg', 'Heaviest panel to handle', 'mass: net area by thickness');
  for (const panel of panels) {
    for (const { bay } of panel.fields) {
      const area = loads.shares.get(bay)!.solid;
      const load = loads.situations
        .filter(({ loadCase }) => loadCase === 'service')
        .reduce((most, { servicePressures }) => Math.max(most, Math.abs(servicePressures.get(bay) ?? 0) * area), 0);
      put(
        `panel.${bay}.load`,
        load,
        'N',
        `Load on the panel over bay ${bay} in service, without load factor, the worse direction`,
        'loads: the worse of area share and stated shape',
      );
    }
  }
  for (const { id, checks, unit, title } of demands) {
    const largest = new Map<string, CheckRow>();
    for (const row of rows) {
      if (!checks.includes(row.id) || row.demand === null) continue;
      const leader = largest.get(row.place);
      if (!leader || row.demand > (leader.demand as number)) largest.set(row.place, row);
    }
    for (const [bay, row] of largest)
      put(id.replace('*', bay), row.demand as number, unit, title, `check: ${row.id}, ${row.situation ?? 'no load'}`);
  }
  for (const [bay, { stress, row }] of weldStresses(model, rows))
    put(
      `weld.${bay}.stress`,
      stress,
      'Pa',
      'Largest equivalent stress on the throat of the weld, all situations, load factors included',
      `check: ${row.id}, ${row.situation ?? 'no load'}`,
    );
  return all;
}

/** Equivalent stress on the throat where the weld's check is gravest, by bay: a step of that check, which is judged as a ratio. */
function weldStresses(
  model: Model,
  rows: readonly CheckRow[],
): Map<string, { readonly stress: number; readonly row: CheckRow }> {
  const stresses = new Map<string, { stress: number; row: CheckRow }>();
  for (const check of [weldDirectional, weldThroat]) {
    for (const row of rows) {
      if (row.id !== check.id || row.utilisation === null) continue;
      const situation = model.loads.situations.find(({ id }) => id === row.situation);
      const values = situation && valuesAt(check, model, row.place, situation);
      if (!values || 'missing' in values) continue;
      const { sigma_v, f_w, a_w } = values.all as Readonly<Record<string, number | undefined>>;
      const stress = sigma_v ?? (f_w as number) / (a_w as number);
      if (stress > (stresses.get(row.place)?.stress ?? -1)) stresses.set(row.place, { stress, row });
    }
  }
  return stresses;
}
