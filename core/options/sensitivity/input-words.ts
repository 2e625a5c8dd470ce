import type { SpreadInput } from '../../document/spreads-field.ts';

/** What a spread is of, in words. */
export const inputWords: Readonly<Record<SpreadInput, string>> = {
  force: 'Stated force of service',
  thickness: 'Thickness of the panels',
  yield: 'Yield strength of panels and tubes',
  overlap: 'Overlap of the panels',
  loss: 'Corrosion by the end of life',
  drag: 'Drag coefficient of lifting through the water',
};
