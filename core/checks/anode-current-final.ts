import { anodeCautions, anodeInputs, anodePlaces, anodesApply, anodeSource } from './anode-inputs.ts';
import { anodeCurrentBounds, anodeCurrentSteps } from './anode-current-steps.ts';
import type { Check, Step } from './check.ts';

const { A_c, A_b, i_f, f_cf, N, m_a, u, rho_w, dE, rho_a, flush, L, b, d_k, k_d } = anodeInputs;

const steps: readonly Step[] = [
  {
    symbol: 'I_Ed',
    expression: 'i_f * (f_cf * A_c + A_b)',
    unit: 'A',
    meaning: 'current that holds the steel at the end',
  },
  ...anodeCurrentSteps('0.9 * L', '(1 - u)'),
];

/** Anodes used up but for a tenth must still hold the steel, with its coating at its worst. */
export const anodeCurrentFinal: Check = {
  id: 'anode-current-final',
  title: 'Current of the anodes at the end of life',
  limitState: 'durability',
  source: [anodeSource('7.8 to 7.10: current demand, resistance, number of anodes')],
  places: anodePlaces,
  applies: anodesApply,
  once: true,
  inputs: { A_c, A_b, i_f, f_cf, N, m_a, u, rho_w, dE, rho_a, flush, L, b, d_k, k_d },
  // The recommended practice is one of demand against supply: no factor of either basis enters.
  steps: { 'partial factors': steps, 'allowable stress': steps },
  demand: 'I_Ed',
  capacity: 'I_Rd',
  second: anodeCurrentBounds('(1 - u)'),
  cautions: anodeCautions,
};
