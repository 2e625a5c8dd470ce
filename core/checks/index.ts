import type { Check } from './check.ts';
import { panelBendingFourSides } from './panel-bending-four-sides.ts';

/** Every check, in the order of the note. */
export const checks: readonly Check[] = [panelBendingFourSides];
