import type { LiftFields } from '../document/recovery-field.ts';
import { legsOf, type Legs } from '../recovery/bridle-of.ts';
import { liftOf, type Lift, type LiftStage } from '../recovery/lift-stages.ts';
import type { Model } from '../model.ts';
import { missing, type Check, type Input, type Reading, type Step } from './check.ts';

const none = ['recovery'] as const;

/** Stages in which something hangs on the hook; a place of its own where the document has no lift. */
export const hangingStages = (model: Model): readonly string[] =>
  liftOf(model)
    ?.stages.filter(({ hook }) => hook > 0)
    .map(({ id }) => id) ?? none;

/** Stages in which the water can take the plate off its hook. */
export const wetStages = (model: Model): readonly string[] =>
  liftOf(model)
    ?.stages.filter(({ slackMargin }) => slackMargin !== null)
    .map(({ id }) => id) ?? none;

export const withLift: Check['applies'] = ({ document }) =>
  document.recovery?.lift !== undefined || 'the document says nothing of how the plate is put down and got back';

/** A value of the lift, or that there is none. */
export const ofLift = (
  unit: string,
  meaning: string,
  from: string,
  read: (lift: Lift, fields: LiftFields) => Reading,
): Input => ({
  unit,
  meaning,
  from,
  read: (model) => {
    const lift = liftOf(model);
    return lift ? read(lift, model.document.recovery!.lift!) : missing('the lift');
  },
});

const ofStage = (unit: string, meaning: string, from: string, read: (stage: LiftStage) => number): Input => ({
  unit,
  meaning,
  from,
  read: (model, place) => {
    const stage = liftOf(model)?.stages.find(({ id }) => id === place);
    return stage ? read(stage) : missing('the stage of the lift');
  },
});

export const stageInputs = {
  F: ofStage(
    'kN',
    'load on the hook in this stage, dynamic load included',
    'loads: stages of the lift',
    ({ hook }) => hook,
  ),
  W: ofStage(
    'kN',
    'weight on the hook in this stage, with the water held',
    'recovery: stages of the lift',
    ({ weight }) => weight,
  ),
} as const;

/** Largest load on the hook, of all stages, N; and the weight in that stage. */
export const mostOnHook = ofLift(
  'kN',
  'largest load on the hook, of all stages',
  'loads: stages of the lift',
  ({ stages }) => Math.max(...stages.map(({ hook }) => hook)),
);

export const ofLegs = (unit: string, meaning: string, read: (legs: Legs) => number): Input => ({
  unit,
  meaning,
  from: 'recovery: bridle',
  read: (model) => {
    const legs = legsOf(model);
    return 'missing' in legs ? legs : read(legs);
  },
});

/** Factors stand in the rule itself, whatever the design basis. */
export const onEitherBasis = (...steps: readonly Step[]): Check['steps'] => ({
  'partial factors': steps,
  'allowable stress': steps,
});

/** What the leg that carries most has of the load on the hook. */
export const legInputs = {
  F_h: mostOnHook,
  k_leg: ofLegs('1', 'largest part of the hook load in a leg, by its angle and place', ({ whole }) =>
    Math.max(...whole.tensions),
  ),
  k_SKL: ofLegs('1', 'skew load factor: legs of unequal length', ({ skew }) => skew),
  n: ofLegs('1', 'legs', ({ ids }) => ids.length),
} as const;

/** Never less than the weight hangs on the hook: statics. */
export const notUnderWeight: Check['second'] = {
  title: 'the hook carries the weight in this stage at the least',
  source: [{ document: 'statics' }],
  steps: [{ symbol: 'F_low', expression: 'W', unit: 'kN', meaning: 'weight alone' }],
  of: 'F',
  low: 'F_low',
};

export const liftCautions = [
  'People stand clear of the load, of loaded ropes and of the space below; nobody works under a suspended plate.',
  'A lift plan is for a licensed or certified person on site: local lifting rules, class and the vessel’s own limits come first.',
] as const;
