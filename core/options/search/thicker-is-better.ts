/**
 * Checks whose utilisation does not rise when a panel gets thicker and all else stays: a fail at one thickness is a fail
 * at every thinner one. Declared here, and held by a property test over all places and situations of the samples; a
 * check that is not named is looked at for each thickness by itself.
 */
export const thickerIsBetter: ReadonlySet<string> = new Set([
  'panel-bending-four-sides',
  'panel-bending-two-sides',
  'panel-shear',
  'panel-deflection-four-sides',
  'panel-deflection-two-sides',
]);
