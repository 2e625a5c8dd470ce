import type { CaseResult } from './case-context.ts';
import type { Situation } from './situation.ts';

/** A case that the document gives no data for: cannot be judged, with what is missing, and a finding at that place. */
export function missingCase(
  input: Pick<Situation, 'id' | 'loadCase' | 'direction' | 'title'>,
  missing: string,
  place: string,
  mend: string,
): CaseResult {
  const situation: Situation = {
    ...input,
    path: 'Not known.',
    accidental: false,
    loadFactor: 1,
    force: 0,
    pressures: new Map(),
    servicePressures: new Map(),
    panelForces: new Map(),
    attachmentForces: new Map(),
    legs: new Map(),
    balance: { by: 'suspension', terms: [], residual: 0, momentResidual: 0, acceleration: 0 },
    tubes: new Map(),
    loadings: [],
    supports: null,
    present: [],
    missing,
  };
  return {
    situations: [situation],
    findings: () => [
      { id: 'case-missing', place, text: `${input.title} cannot be judged: missing is ${missing}.`, mend },
    ],
  };
}
