import type { RecoveryFields, ReleaseFields, CanisterFields } from '../document/recovery-field.ts';
import type { Model } from '../model.ts';
import { floatOf, type FloatReport } from '../recovery/float-of.ts';
import { oncePerModel } from '../once-per-model.ts';
import { missing, type Check, type Input, type Reading } from './check.ts';

export const withRecovery = ({ document }: Model): true | string =>
  document.recovery !== undefined || 'the document says nothing of recovery';

const chosenReleases = ({ recovery }: Model['document']): readonly ReleaseFields[] => {
  const way = recovery?.ways.find(({ id }) => id === recovery.chosen);
  return recovery?.releases.filter(({ id }) => way?.releases.includes(id)) ?? [];
};

/** True where the chosen way lets a float go, or why not. */
export const withReleases: Check['applies'] = (model) => {
  const told = withRecovery(model);
  return told !== true
    ? told
    : chosenReleases(model.document).length > 0 || 'the chosen way of recovery has no release';
};

/** Releases of the chosen way; a place of its own where there are none. */
export const releasePlaces = ({ document }: Model): readonly string[] => {
  const ids = chosenReleases(document).map(({ id }) => id);
  return ids.length > 0 ? ids : ['recovery'];
};

/** Releases of the chosen way that have a canister. */
export const canisterPlaces = ({ document }: Model): readonly string[] => {
  const ids = chosenReleases(document)
    .filter(({ canister }) => canister)
    .map(({ id }) => id);
  return ids.length > 0 ? ids : ['recovery'];
};

export const withCanisters: Check['applies'] = (model, place, situation) => {
  const told = withReleases(model, place, situation);
  return told !== true
    ? told
    : chosenReleases(model.document).some(({ canister }) => canister) || 'no canister is given';
};

export const ofRecovery = (
  unit: string,
  meaning: string,
  from: string,
  read: (recovery: RecoveryFields, model: Model) => Reading,
): Input => ({
  unit,
  meaning,
  from,
  read: (model) =>
    model.document.recovery ? read(model.document.recovery, model) : missing('what recovery is planned'),
});

export const ofRelease = (unit: string, meaning: string, read: (release: ReleaseFields) => Reading): Input => ({
  unit,
  meaning,
  from: 'document: recovery',
  read: ({ document }, place) => {
    const release = document.recovery?.releases.find(({ id }) => id === place);
    return release ? read(release) : missing('the release');
  },
});

export const ofCanister = (unit: string, meaning: string, read: (canister: CanisterFields) => Reading): Input =>
  ofRelease(unit, meaning, ({ canister }) => (canister ? read(canister) : missing('the canister')));

const floatOnce = oncePerModel(({ document }) => floatOf(document));

export const ofFloat = (unit: string, meaning: string, from: string, read: (float: FloatReport) => number): Input => ({
  unit,
  meaning,
  from,
  read: (model) => (model.document.recovery ? read(floatOnce(model)) : missing('what recovery is planned')),
});

export const releaseCautions = [
  'A release holds stored energy: nobody stands over a loaded release or its float, on deck or in the water.',
  'Fouling, tilt and a snagged rope are not in this number: look at both, and prove the chain from end to end before sailing.',
] as const;
