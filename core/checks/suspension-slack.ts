import type { Model } from '../model.ts';
import { g } from '../water/sea-water.ts';
import type { Check } from './check.ts';
import { basisFactor } from './inputs.ts';

/** A line cannot push: under the upward force of service the plate's weight in water must keep it taut. */
export const suspensionSlack: Check = {
  id: 'suspension-slack',
  title: 'Suspension stays taut',
  limitState: 'stability',
  source: [
    { document: 'DNV-RP-N103', clause: 'slack sling criterion, F_hyd ≤ 0.9 F_static,min', memory: true },
    { document: 'equilibrium: a line pulls only', clause: 'load without its factor' },
  ],
  places: () => ['suspension'],
  applies: (model, _, situation) => {
    if (model.document.grid.suspension.kind === 'strut') return 'a strut pushes as well as pulls';
    return (situation.loadCase === 'service' && situation.direction === 'up') || 'no force of service lifts the plate';
  },
  inputs: {
    F: {
      unit: 'kN',
      meaning: 'upward force on the plate, load factor included',
      from: 'loads: situation',
      read: (_model, _place, { force }) => force,
    },
    gamma_F: {
      unit: '1',
      meaning: 'load factor, taken off again',
      from: 'loads: situation',
      read: (_model, _place, { loadFactor }) => loadFactor,
    },
    W: {
      unit: 'kN',
      meaning: 'least weight in water: as built, less allowances, coating and what corrodes',
      from: 'mass: least',
      read: ({ mass }) => mass.least.water.weight,
    },
    W_flooded: {
      unit: 'kN',
      meaning: 'weight in water, every tube flooded',
      from: 'mass',
      read: ({ mass }) => mass.submergedWeight.flooded,
    },
    W_sealed: {
      unit: 'kN',
      meaning: 'weight in water, every tube sealed',
      from: 'mass',
      read: ({ mass }) => mass.submergedWeight.sealed,
    },
    W_off: {
      unit: 'kN',
      meaning:
        'most that may be missing: all welds, coating and tolerance; what tubes would lose as boxes, panels as rectangles',
      from: 'mass',
      read: mostMissing,
    },
    i_W: {
      unit: '1',
      meaning: 'the stated force is net of the weight (1) or not (0)',
      from: 'document: loads',
      read: ({ loads }) => (loads.forceHoldsWeight ? 1 : 0),
    },
    k_slack: basisFactor('k_slack', 'part of the weight in water beyond which a line counts as slack'),
  },
  steps: { 'partial factors': steps(), 'allowable stress': steps() },
  demand: 'F_up',
  capacity: 'W_Rd',
  second: {
    title: 'below, every tube sealed and the most taken off; above, every tube flooded and nothing taken off',
    source: [{ document: 'Archimedes' }],
    steps: [
      { symbol: 'W_low', expression: 'W_sealed - W_off', unit: 'kN', meaning: 'every tube sealed, the most missing' },
      { symbol: 'W_high', expression: 'W_flooded', unit: 'kN', meaning: 'every tube flooded, nothing missing' },
    ],
    of: 'W',
    low: 'W_low',
    high: 'W_high',
  },
  cautions: [
    'A line that goes slack comes taut with a jerk: the snap load is not judged here and can exceed every load that is.',
    'Extras count whole: leave out anodes that will have wasted away. Bolts, welds and eyes count without their corrosion.',
    'The water’s own density counts: denser water than stated leaves less weight.',
  ],
};

/** In air, with the water that it displaces: more than can be missing in water, whatever is lighter than water. N */
function mostMissing({ document, geometry, mass }: Model): number {
  const { panel: perFace, tubeOutside, tubeInside } = document.protection.lossPerFace;
  const parts = mass.parts
    .filter(({ kind }) => kind === 'welds' || kind === 'coating' || kind === 'tolerance')
    .reduce((sum, { mass: m, volume }) => sum + Math.abs(m) + mass.waterDensity * Math.abs(volume), 0);
  const tubes = [...geometry.mainTubes, ...geometry.crossTubes].reduce(
    (sum, { section: { height, width }, material, from, to }) =>
      sum + material.density * 2 * (height + width) * (to - from) * (tubeOutside.si + tubeInside.si),
    0,
  );
  const panels = geometry.panels.reduce(
    (sum, { outline: { x0, x1, y0, y1 }, material }) => sum + material.density * (x1 - x0) * (y1 - y0) * 2 * perFace.si,
    0,
  );
  return g * (parts + tubes + panels);
}

function steps() {
  return [
    { symbol: 'F_up', expression: 'F / gamma_F', unit: 'kN', meaning: 'upward force without load factor' },
    {
      symbol: 'W_Rd',
      expression: '(1 - i_W) * k_slack * W',
      unit: 'kN',
      meaning: 'part that keeps the line taut: none of it where the force is net of it already',
    },
  ] as const;
}
