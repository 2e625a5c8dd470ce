import { everySupport, type CaseContext, type CaseResult, type HeldBy } from './case-context.ts';
import { holdingFindings } from './holding-findings.ts';
import { liftDynamics } from './lift-dynamic-factor.ts';
import { forceOf } from './loaded.ts';
import { missingCase } from './missing-case.ts';
import { pathWords } from './path-words.ts';
import { Pressures } from './pressures.ts';
import { solveCase } from './solve-case.ts';
import { g } from '../water/sea-water.ts';

/** Lift in air from pad eyes, or from the suspension if there are none. */
export function liftInAirCase(context: CaseContext): CaseResult {
  const { document, plate, factor, lifting } = context;
  const onHook = plate.mass - forceOf(plate.frame, plate.heldWater.undrained) / g;
  const dynamic = liftDynamics(onHook, document.loads.liftInAir?.dynamicFactor);
  return underWeight(
    context,
    { id: 'lift-in-air-down', loadCase: 'lift in air', title: 'Lift in air' },
    factor('gamma_F_lift'),
    dynamic,
    lifting,
  );
}

/** The plate stands on deck. */
export function deckCase(context: CaseContext): CaseResult {
  const { document, factor, deck } = context;
  const head = { id: 'deck-down', loadCase: 'support on deck', title: 'Support on deck' } as const;
  const { deck: stated } = document.loads;
  if (!deck || !stated)
    return missingCase(
      { ...head, direction: 'down' },
      'the supports on deck',
      'loads.deck',
      'Give loads.deck.supports under tubes, and a dynamic factor with its source.',
    );
  return underWeight(context, head, factor('gamma_F_permanent'), stated.dynamicFactor, deck);
}

/** Weight in air, with the water that cannot drain, times a dynamic factor. */
function underWeight(
  context: CaseContext,
  head: { readonly id: string; readonly loadCase: 'lift in air' | 'support on deck'; readonly title: string },
  loadFactor: number,
  dynamic: { readonly value: number; readonly source: string },
  support: HeldBy,
): CaseResult {
  const { plate, geometry } = context;
  const times = loadFactor * dynamic.value;
  const pressures = Float64Array.from(plate.fields, ({ weight }) => -times * weight.air);
  const terms = [
    { name: 'Weight in air with dynamic factor', force: -times * plate.weight.air },
    {
      name: 'Water that cannot drain, with dynamic factor',
      force: times * forceOf(plate.frame, plate.heldWater.undrained),
    },
  ].filter(({ force }) => force !== 0);
  const force = terms.reduce((sum, term) => sum + term.force, 0);
  const solved = solveCase(plate, {
    ...head,
    direction: 'down',
    path: `${pathWords('Weight down', 'down', geometry)} Dynamic factor ${dynamic.value.toFixed(3)} (${dynamic.source}).`,
    accidental: false,
    loadFactor,
    force,
    terms,
    pressures,
    relieved: false,
    service: { pressures: pressures.map((p) => p / loadFactor), force: force / loadFactor },
    loadings: [
      {
        name: 'weight',
        pressures: Pressures.of(pressures),
        onTubes: [
          [plate.weightOfRest.air, times],
          [plate.heldWater.undrained, times],
        ],
      },
    ],
    movingMass: plate.movingMass,
    support,
    present: [everySupport(support)],
  });
  return { situations: [solved.situation], findings: () => holdingFindings(solved, context) };
}
