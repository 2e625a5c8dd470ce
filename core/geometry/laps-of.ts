import type { PanelDesign } from '../document/schema.ts';
import type { Side } from './geometry.ts';

/** Overlap of a panel on each of its sides, m: the side's own where the design states one, else that of the pair. */
export function lapsOf({ overlap: { onMain, onCross, sides } }: Pick<PanelDesign, 'overlap'>): Record<Side, number> {
  return {
    mainLow: (sides?.mainLow ?? onMain).si,
    mainHigh: (sides?.mainHigh ?? onMain).si,
    crossLow: (sides?.crossLow ?? onCross).si,
    crossHigh: (sides?.crossHigh ?? onCross).si,
  };
}
