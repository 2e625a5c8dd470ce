import type { Panel } from './geometry.ts';

/** Length to weld on a panel: its runs and their returns round corners, m. */
export const weldLengthOf = ({ weldRuns, weldReturns }: Pick<Panel, 'weldRuns' | 'weldReturns'>): number =>
  [...weldRuns, ...weldReturns].reduce((total, { length }) => total + length, 0);
