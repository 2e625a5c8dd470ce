import { g } from '../water/sea-water.ts';
import { everySupport, type CaseContext, type CaseResult } from './case-context.ts';
import { holdingFindings } from './holding-findings.ts';
import { liftDynamics } from './lift-dynamic-factor.ts';
import { forceOf } from './loaded.ts';
import { missingCase } from './missing-case.ts';
import { pathWords } from './path-words.ts';
import { Pressures } from './pressures.ts';
import { solveCase } from './solve-case.ts';

const head = {
  id: 'lift-out-down',
  loadCase: 'lifting out',
  direction: 'down',
  title: 'Lifting out of the water',
} as const;

/** The plate leaves the water with what it holds: weight in air with the growth of the stated years, trays full and flooded
 *  tubes full, times a dynamic factor, and the drag of leaving. */
export function liftOutCase(context: CaseContext): CaseResult {
  const { document, plate, mass, factor, geometry, lifting } = context;
  const { liftOut } = document.loads;
  if (!liftOut)
    return missingCase(
      head,
      'the speed at which the plate is lifted out',
      'loads.liftOut',
      'Give loads.liftOut.speed and dragCoefficient with its source.',
    );
  const loadFactor = factor('gamma_F_lift');
  const dragFactor = factor('gamma_F_characteristic');
  const drag = dragFactor * 0.5 * mass.waterDensity * liftOut.dragCoefficient.value * liftOut.speed.si ** 2;
  const onTrays = mass.trays.reduce((sum, { effect }) => sum + effect, 0);
  const { growth } = plate;
  const onHook = plate.mass + (growth?.mass ?? 0) + onTrays - forceOf(plate.frame, plate.heldWater.all) / g;
  const dynamic = liftDynamics(onHook, liftOut.dynamicFactor);
  const times = loadFactor * dynamic.value;
  const trays = new Map(mass.trays.map(({ bay, effect }) => [bay, times * g * effect]));
  const pressures = Float64Array.from(
    plate.fields,
    ({ bay, area, weight }) =>
      -times * (weight.air + (growth?.air.onFields ?? 0)) - drag - (trays.get(bay) ?? 0) / area,
  );
  const terms = [
    { name: 'Weight in air with dynamic factor', force: -times * plate.weight.air },
    { name: 'Marine growth, with dynamic factor', force: -times * (growth?.air.weight ?? 0) },
    { name: 'Water held like on trays, with dynamic factor', force: -times * g * onTrays },
    { name: 'Water still in the tubes, with dynamic factor', force: times * forceOf(plate.frame, plate.heldWater.all) },
    { name: 'Drag of leaving the water', force: -drag * plate.shares.solid },
  ].filter(({ force }) => force !== 0);
  const force = terms.reduce((sum, term) => sum + term.force, 0);
  const solved = solveCase(plate, {
    ...head,
    path: `${pathWords('Weight, held water and drag down on the plate', 'down', geometry)} All tubes and trays are taken as still full${growth ? ', and the growth of the stated years is on the plate' : ''}. Dynamic factor ${dynamic.value.toFixed(3)} on their weight (${dynamic.source}); drag without it, with a coefficient of ${liftOut.dragCoefficient.value} (${liftOut.dragCoefficient.source}) and a load factor of ${dragFactor}.`,
    accidental: false,
    loadFactor,
    force,
    terms,
    pressures,
    relieved: false,
    service: {
      pressures: pressures.map((p) => (p + drag) / loadFactor - drag / dragFactor),
      force: (force + drag * plate.shares.solid) / loadFactor - (drag * plate.shares.solid) / dragFactor,
    },
    loadings: [
      {
        name: 'weight, held water and drag',
        pressures: Pressures.of(pressures),
        onTubes: [
          [plate.weightOfRest.air, times],
          ...(growth ? [[growth.air.onTubes, times] as const] : []),
          [plate.heldWater.all, times],
          [plate.onTubes.area, -drag * plate.shares.solid],
        ],
      },
    ],
    movingMass: plate.movingMass + (growth?.mass ?? 0),
    support: lifting,
    present: [everySupport(lifting)],
  });
  return { situations: [solved.situation], findings: () => holdingFindings(solved, context) };
}
