import { lengthOfRope } from '../recovery/equipment.ts';
import type { Check } from './check.ts';
import { constant } from './inputs.ts';
import { onEitherBasis } from './lift-inputs.ts';
import { canisterPlaces, ofCanister, ofRecovery, withCanisters } from './recovery-inputs.ts';

/** A canister holds the coiled rope with room over it. */
export const recoveryCanister: Check = {
  id: 'recovery-canister',
  title: 'Canister holds its rope',
  limitState: 'handling',
  source: [
    { document: 'geometry of a coil' },
    { document: 'common practice, no source', clause: 'solid part 0.4 to 0.6 of rope that must run free' },
  ],
  places: canisterPlaces,
  applies: withCanisters,
  once: true,
  inputs: {
    d: ofRecovery('mm', 'rope', 'document: recovery', ({ rope }) => rope.diameter.si),
    L: ofRecovery('m', 'its length', 'loads: recovery', (_, { document }) => lengthOfRope(document)),
    k_p: ofRecovery('1', 'part of the space that is rope', 'document: recovery', ({ rope }) => rope.packing.solid),
    D: ofCanister('mm', 'clear diameter', ({ diameter }) => diameter.si),
    D_c: ofCanister('mm', 'cone in the middle', ({ cone }) => cone.si),
    h_c: ofCanister('mm', 'room over the rope', ({ clearance }) => clearance.si),
    H: ofCanister('mm', 'clear height', ({ height }) => height.si),
    k_hex: constant(0.9069, '1', 'densest packing of round rope, pi / (2 sqrt(3))', 'geometry'),
  },
  steps: onEitherBasis(
    { symbol: 'V_s', expression: 'pi * d^2 * L / (4 * k_p)', unit: 'm^3', meaning: 'stowed volume' },
    { symbol: 'h', expression: 'V_s / (pi / 4 * (D^2 - D_c^2)) + h_c', unit: 'mm', meaning: 'height needed' },
    { symbol: 'h_max', expression: 'H', unit: 'mm', meaning: 'height there is' },
  ),
  demand: 'h',
  capacity: 'h_max',
  range: [{ holds: 'D > D_c', otherwise: 'the cone fills the canister' }],
  second: {
    title: 'rope packed as densely as round rope can be',
    source: [{ document: 'geometry: hexagonal packing' }],
    steps: [{ symbol: 'V_low', expression: 'pi * d^2 * L / (4 * k_hex)', unit: 'm^3', meaning: 'densest' }],
    of: 'V_s',
    low: 'V_low',
  },
  cautions: ['Measure how the very rope lies in the very canister, and let it run out in water before sailing.'],
};
