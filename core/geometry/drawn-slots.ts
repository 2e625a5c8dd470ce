import type { DrawnShape } from './drawing.ts';
import type { Cutout } from './geometry.ts';
import { slotRing } from './slot.ts';

/** Outlines of the slots among a panel's holes, mm. */
export const drawnSlots = (cutouts: readonly Cutout[]): DrawnShape<'bolt'>[] =>
  cutouts.flatMap((hole) =>
    hole.slot
      ? [
          {
            role: 'bolt' as const,
            rings: [slotRing(hole.x, hole.y, hole).map(([x, y]) => [1000 * x, 1000 * y] as const)],
          },
        ]
      : [],
  );
