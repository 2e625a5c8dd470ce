import { anodeCautions, anodeInputs, anodePlaces, anodesApply, anodeSource } from './anode-inputs.ts';
import type { Check, Step } from './check.ts';
import { constant } from './inputs.ts';

const { A_c, A_b, i_m, f_cm, t_f, N, m_a, epsilon, u } = anodeInputs;

const steps: readonly Step[] = [
  {
    symbol: 'I_m',
    expression: 'i_m * (f_cm * A_c + A_b)',
    unit: 'A',
    meaning: 'mean current over the life',
  },
  { symbol: 'M_Ed', expression: 'I_m * t_f / (u * epsilon)', unit: 'kg', meaning: 'alloy that the life uses up' },
  { symbol: 'M_Rd', expression: 'N * m_a', unit: 'kg', meaning: 'alloy of all anodes' },
];

/** Anodes must last the life. */
export const anodeMass: Check = {
  id: 'anode-mass',
  title: 'Mass of the anodes',
  limitState: 'durability',
  source: [anodeSource('7.7: mass from the mean current')],
  places: anodePlaces,
  applies: anodesApply,
  once: true,
  inputs: {
    ...{ A_c, A_b, i_m, f_cm, t_f, N, m_a, epsilon, u },
    epsilon_0: constant(2980, 'A*hour/kg', 'charge of pure aluminium, which no alloy passes', 'Faraday: 3 F/26.982 g'),
  },
  // The recommended practice is one of demand against supply: no factor of either basis enters.
  steps: { 'partial factors': steps, 'allowable stress': steps },
  demand: 'M_Ed',
  capacity: 'M_Rd',
  second: {
    title: 'below, pure aluminium used to the last; above, all of the steel bare',
    source: [{ document: 'Faraday’s law; areas without a coating' }],
    steps: [
      {
        symbol: 'M_low',
        expression: 'i_m * (f_cm * A_c + A_b) * t_f / epsilon_0',
        unit: 'kg',
        meaning: 'pure aluminium, used to the last',
      },
      { symbol: 'M_high', expression: 'i_m * (A_c + A_b) * t_f / (u * epsilon)', unit: 'kg', meaning: 'no coating' },
    ],
    of: 'M_Ed',
    low: 'M_low',
    high: 'M_high',
  },
  cautions: anodeCautions,
};
