import { boltForceInputs } from './bolt-inputs.ts';
import type { Step } from './check.ts';
import { fieldInputs } from './field-inputs.ts';

const { t, E, nu } = fieldInputs;
const { a_b, b_b, n_x, n_y, i_x, i_y, d_w } = boltForceInputs;

/** A field that hangs on its bolts alone: what its plate follows from, but for the pressure. */
export const boltedPlateInputs = { t, E, nu, a_b, b_b, n_x, n_y, i_x, i_y, d_w };

/** From bolt rows to the plate of the kernels. */
export const boltedPlateSteps: readonly Step[] = [
  { symbol: 'a_p', expression: 'a_b + 2 * i_x', unit: 'mm', meaning: 'plate from edge to edge, along x' },
  { symbol: 'b_p', expression: 'b_b + 2 * i_y', unit: 'mm', meaning: 'plate from edge to edge, along y' },
  {
    symbol: 'r_b',
    expression: 'd_w / 2 + t',
    unit: 'mm',
    meaning: 'washer spread through the plate: nearer to a bolt the checks of its force rule, pull-through first',
  },
];
