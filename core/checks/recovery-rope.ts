import type { Check } from './check.ts';
import { liftOf } from '../recovery/lift-stages.ts';
import { ropePartsOf } from '../recovery/rope-of.ts';
import { missing } from './check.ts';
import { onEitherBasis } from './lift-inputs.ts';
import { ofRecovery, withRecovery } from './recovery-inputs.ts';

/** The recovery rope at the end of the deployment. */
export const recoveryRope: Check = {
  id: 'recovery-rope',
  title: 'Recovery rope carries its pull',
  limitState: 'handling',
  source: [
    {
      document: '0027/ND Guidelines for Marine Lifting',
      edition: 'Rev 11',
      clause: '7.7.2, 7.8: bend, and the worse of bend and termination',
    },
    { document: 'Cordage Institute CI 1401', edition: '2006', clause: 'design factor 5 to 12' },
  ],
  places: () => ['recovery rope'],
  applies: withRecovery,
  once: true,
  inputs: {
    F: ofRecovery(
      'kN',
      'pull on the rope: of the line that it hauls in, or of the plate',
      'loads: recovery',
      ({ rope }, model) => {
        if (rope.hauls === 'messenger') return rope.messengerPull!.si;
        return (
          liftOf(model)?.stages.find(({ id }) => id === 'haul')?.hook ?? missing('the lift: the rope hauls the plate')
        );
      },
    ),
    F_br: ofRecovery(
      'kN',
      'breaking strength, new and dry, by its certificate',
      'document: recovery',
      ({ rope }) => rope.breakingStrength.si,
    ),
    k_sp: ofRecovery('1', 'left at the splice', 'document: recovery', (recovery) => ropePartsOf(recovery).splice),
    k_be: ofRecovery(
      '1',
      'left over the bend, 1 - 0.5 / sqrt(D/d)',
      '0027/ND, 7.8',
      (recovery) => ropePartsOf(recovery).bend,
    ),
    k_we: ofRecovery('1', 'left after wear', 'document: recovery', (recovery) => ropePartsOf(recovery).wear),
    k_wet: ofRecovery('1', 'left when wet', 'from memory', (recovery) => ropePartsOf(recovery).wet),
    k_age: ofRecovery(
      '1',
      'left at the end of the deployment',
      'document: recovery',
      (recovery) => ropePartsOf(recovery).age,
    ),
    k_d: ofRecovery('1', 'strength over pull', 'document: recovery', ({ rope }) => rope.designFactor),
  },
  steps: onEitherBasis(
    {
      symbol: 'F_left',
      expression: 'F_br * min(k_sp, k_be) * k_we * k_wet * k_age',
      unit: 'kN',
      meaning: 'strength that is left',
    },
    { symbol: 'F_max', expression: 'F_left / k_d', unit: 'kN', meaning: 'largest pull' },
  ),
  demand: 'F',
  capacity: 'F_max',
  second: {
    title: 'every loss at one place; and the new rope with its splice alone',
    source: [
      { document: 'OCIMF mooring guidelines', edition: '2nd', clause: 'splice about 90 %' },
      { document: 'common practice, no source' },
    ],
    steps: [
      {
        symbol: 'F_low',
        expression: 'F_br * k_sp * k_be * k_we * k_wet * k_age',
        unit: 'kN',
        meaning: 'all at one place',
      },
      { symbol: 'F_high', expression: 'F_br * k_sp', unit: 'kN', meaning: 'new, at its splice' },
    ],
    of: 'F_left',
    low: 'F_low',
    high: 'F_high',
  },
  cautions: [
    'Knots cost up to half of the strength: this rope has none.',
    'A rope under load snaps back: nobody stands in line with it or in its bight.',
  ],
};
