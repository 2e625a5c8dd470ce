import { anodeCautions, anodeInputs, anodePlaces, anodesApply, anodeSource } from './anode-inputs.ts';
import { anodeCurrentBounds, anodeCurrentSteps } from './anode-current-steps.ts';
import type { Check, Step } from './check.ts';

const { A_c, A_b, i_i, f_ci, N, m_a, rho_w, dE, rho_a, flush, L, b, d_k, k_d } = anodeInputs;

const steps: readonly Step[] = [
  {
    symbol: 'I_Ed',
    expression: 'i_i * (f_ci * A_c + A_b)',
    unit: 'A',
    meaning: 'current that polarises the steel',
  },
  ...anodeCurrentSteps('L', '1'),
];

/** New anodes must polarise the steel. */
export const anodeCurrentInitial: Check = {
  id: 'anode-current-initial',
  title: 'Current of the anodes when new',
  limitState: 'durability',
  source: [anodeSource('7.8 to 7.10: current demand, resistance, number of anodes')],
  places: anodePlaces,
  applies: anodesApply,
  once: true,
  inputs: { A_c, A_b, i_i, f_ci, N, m_a, rho_w, dE, rho_a, flush, L, b, d_k, k_d },
  // The recommended practice is one of demand against supply: no factor of either basis enters.
  steps: { 'partial factors': steps, 'allowable stress': steps },
  demand: 'I_Ed',
  capacity: 'I_Rd',
  second: anodeCurrentBounds('1'),
  cautions: anodeCautions,
};
